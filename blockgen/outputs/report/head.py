"""The head of the page: what it is, its status, for whom, the figures to see first, and the cautions."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from typing import Any

from blockgen.outputs import show
from blockgen.outputs.report.markup import Child, Markup, anchor, element, joined
from blockgen.outputs.report.tables import bullets, content, facts
from blockgen.outputs.report.values import Document, amount, entry_of, figure, record_of

FOR_WHOM = (
    "For those who decide, make, measure and assemble this block. Every figure is that of summary.json beside this "
    "page and tells its rule and source where it unfolds."
)
VERDICTS = (("fail", "fail"), ("warn", "warnings"), ("not_assessed", "not assessed"), ("pass", "pass"))


def title_of(document: Document) -> str:
    """Return number, revision and title in one line."""
    job = document["job"]
    return show.joined((f"{job['number']} {job['revision'] or ''}".strip(), job["title"] or ""), ": ")


def status_kind(status: str) -> str:
    """Return the kind of a status for its colour: good, open or bad."""
    if status.startswith("NOT"):
        return "bad"
    return "open" if status.startswith("PRELIMINARY") else "good"


def head(document: Document, sections: Sequence[tuple[str, str]]) -> Markup:
    """Return the head of the page with the list of its sections."""
    job, status = document["job"], document["status"]
    kind = status_kind(status)
    about = ((name, job[key]) for name, key in (("Project", "project"), ("Author", "author")) if job[key])
    links = joined(element("li", element("a", title, href=f"#{name}")) for name, title in sections)
    return element(
        "header",
        element("p", element("strong", "Status: "), status, class_=f"status status-{kind}", id="status"),
        element("h1", title_of(document)),
        element("p", FOR_WHOM, class_="lead"),
        element("p", joined((f"{name}: {value}" for name, value in about), " \u00b7 "), class_="about"),
        element("nav", element("ul", links), aria_label="Sections"),
    )


def first_figures(document: Document) -> Markup:
    """Return the figures to see first."""
    return content(facts(_first(document)), _trouble(document))


def _first(document: Document) -> Iterator[tuple[str, Child]]:
    sides = joined((_size(document, key) for key in ("length", "width", "height")), " \u00d7 ")
    yield "Length \u00d7 width \u00d7 height", sides
    mass = document["mass"]
    of = f"{show.significant(mass['value'], 3)} kg"
    yield "Mass", joined((figure(mass["value"], of), f" {mass['material'] or 'material not named'}"))
    for name, key in (("Shaft height", "shaft_height"), ("Bearing bore", "bearing_bore"), ("Motor bore", "motor_bore")):
        yield name, _size(document, key)
    yield (
        "Possible length, with tolerances",
        joined((_size(document, "length_low"), " to ", _size(document, "length_high"))),
    )
    alignment = document["alignment"]
    for name, key in (("Shaft offset", "offset"), ("Shaft angle", "angle")):
        if key in alignment:
            yield name, _spread(alignment[key])
    yield "Checks", ", ".join(f"{_count(document, verdict)} {name}" for verdict, name in VERDICTS)


def _size(document: Document, key: str) -> Markup:
    entry = entry_of(document, key)
    if entry is None:
        return element("span", "-")
    record = record_of(key, entry)
    limits = show.limits(record)
    return joined((amount(record), f" {limits}" if limits else None))


def _spread(spread: dict[str, Any]) -> Markup:
    unit, limit = spread["unit"], spread["limit"]
    allowed = joined((", allowed ", _short(limit, unit))) if limit is not None else ", allowance not given"
    return joined(("95 % below ", _short(spread["p95"], unit), ", worst ", _short(spread["worst"], unit), allowed))


def _short(value: float, unit: str) -> Markup:
    return figure(value, f"{show.significant(value, 3)} {unit}")


def _count(document: Document, verdict: str) -> int:
    return sum(check["verdict"] == verdict for check in document["checks"])


def _trouble(document: Document) -> Markup | None:
    bad = [check for check in document["checks"] if check["verdict"] == "fail"]
    if not bad:
        return None
    items = (element("a", check["title"], href=f"#{anchor('check', check['id'])}") for check in bad)
    return joined((element("p", element("strong", "What fails:")), bullets(items)))


def cautions(document: Document) -> Markup:
    """Return the cautions."""
    return content(bullets(document["cautions"], "cautions"))
