"""The head of the page: what it is, its status, for whom, the figures to see first, and the cautions."""

from __future__ import annotations

from collections.abc import Iterator, Mapping, Sequence
from typing import Any
from urllib.parse import quote

from blockgen.outputs import show
from blockgen.outputs.report.checks import of_verdict
from blockgen.outputs.report.markup import Child, Markup, anchor, element, joined
from blockgen.outputs.report.tables import bullets, content, facts
from blockgen.outputs.report.values import Document, amount, entry_of, figure, none_left, record_of

FOR_WHOM = (
    "For those who decide, make, measure and assemble this block. Every figure is that of summary.json beside this "
    "page and tells its rule and source where it unfolds."
)
_SHOP = (
    (".pdf", "drawing", "drawing"), (".step", "block", "model"), (".csv", "inspection", "inspection sheet"),
    (".dxf", "base_holes", "holes of the base plate"),
)  # fmt: skip
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
    unfold = element("button", "Unfold everything", type="button", id="unfold", aria_pressed="false", hidden=True)
    return element(
        "header",
        element("p", element("strong", "Status: "), status, class_=f"status status-{kind}", id="status"),
        element("h1", title_of(document)),
        element("p", FOR_WHOM, class_="lead"),
        element("p", joined((f"{name}: {value}" for name, value in about), " \u00b7 "), class_="about"),
        element("nav", element("ul", links), aria_label="Sections"), unfold,
    )  # fmt: skip


def first_figures(document: Document, files: Mapping[str, str]) -> Markup:
    """Return the figures to see first, what the shop opens, and what is not in order.

    Args:
        document: The summary.
        files: Role by name of the files in the set.
    """
    pairs = *_sizes(document), *_shafts(document), *_for_the_shop(document, files)
    return content(facts(pairs), *_trouble(document))


def _sizes(document: Document) -> Iterator[tuple[str, Child]]:
    sides = joined((_size(document, key) for key in ("length", "width", "height")), " \u00d7 ")
    yield "Length \u00d7 width \u00d7 height", sides
    for name, key in (("Shaft height", "shaft_height"), ("Bearing bore", "bearing_bore"), ("Motor bore", "motor_bore")):
        yield name, _size(document, key)
    lengths = joined((_size(document, "length_low"), " to ", _size(document, "length_high")))
    yield "Possible length, with tolerances", none_left(document) or lengths


def _shafts(document: Document) -> Iterator[tuple[str, Child]]:
    """Yield what the fitter sets and what comes of it; of a family, with its first motor."""
    whose = f", {document['family'][0]['motor']}" if "family" in document else ""
    yield f"Coupling from the bearing seat{whose}", _size(document, "coupling_position")
    alignment = document["alignment"]
    for name, key in (("Shaft offset", "offset"), ("Shaft angle", "angle")):
        if key in alignment:
            yield f"{name}{whose}", _spread(alignment[key])


def _for_the_shop(document: Document, files: Mapping[str, str]) -> Iterator[tuple[str, Child]]:
    mass, material = document["mass"], entry_of(document, "block.material")
    assumed = " (assumed)" if material is not None and material["origin"] == "assumed" else ""
    weight = figure(mass["value"], f"{show.significant(mass['value'], 3)} kg")
    yield "Material, mass", joined((f"{mass['material'] or 'material not named'}{assumed}, ", weight))
    stock = entry_of(document, "making.stock_form")
    if stock is not None:
        yield "Stock, mm", str(stock["value"])
    opened = [element("a", shown, href=quote(name)) for shown, name in _to_open(files)]
    if opened:
        yield "For the shop", joined(opened, " \u00b7 ")
    yield "Checks", ", ".join(f"{len(of_verdict(document, verdict))} {name}" for verdict, name in VERDICTS)


def _to_open(files: Mapping[str, str]) -> Iterator[tuple[str, str]]:
    """Yield words and name of the files that a shop opens first."""
    for ending, role, shown in _SHOP:
        yield from ((shown, name) for name, of in files.items() if of == role and name.endswith(ending))


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


def _trouble(document: Document) -> Iterator[Markup]:
    """Yield what fails with its cure, the warnings, and where to read what is assumed and missing."""
    for verdict, title in (("fail", "What fails:"), ("warn", "What a person must look at:")):
        items = [_named(check) for check in of_verdict(document, verdict)]
        if items:
            yield joined((element("p", element("strong", title)), bullets(items)))
    mating, missing = sum(one["mates"] for one in document["assumptions"]), len(document["missing"])
    counted = ((mating, "assumptions", "assumed for what mates"), (missing, "missing", "to ask for"))
    links = [element("a", _values(count, words), href=f"#{place}") for count, place, words in counted if count]
    if links:
        yield element("p", element("strong", "What is open: "), joined(links, ", "))


def _named(check: Mapping[str, Any]) -> Markup:
    link = element("a", check["title"], href=f"#{anchor('check', check['id'])}")
    return joined((link, f": {check['explanation']}")) if check["verdict"] == "fail" else link


def _values(count: int, words: str) -> str:
    return f"{count} {'value' if count == 1 else 'values'} {words}"


def cautions(document: Document) -> Markup:
    """Return the cautions."""
    return content(bullets(document["cautions"], "cautions"))
