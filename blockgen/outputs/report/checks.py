"""The checks: failures first, each with its margin as a bar, and in full where it unfolds."""

from __future__ import annotations

from collections.abc import Iterator, Mapping
from typing import Any

from blockgen.outputs import show
from blockgen.outputs.report.bars import use_bar
from blockgen.outputs.report.markup import NOTHING, Markup, anchor, element, joined
from blockgen.outputs.report.tables import content, unfolding
from blockgen.outputs.report.values import Document, figure, link, quantity

_GROUPS = (
    ("fail", "Fails", "These must be mended before anything is made."),
    ("warn", "Warnings", "A person may accept these, with a reason."),
    ("not_assessed", "Not assessed", "A value is missing, or an estimate is too rough to tell; that is not passed."),
    ("pass", "Pass", "These hold."),
)
_WORD = {"fail": "FAIL", "warn": "WARNING", "not_assessed": "not assessed", "pass": "pass"}
_LEAD = (
    "A bar shows how much of what is allowed is used, the mark in it stands at 100 %. The margin is what is left: a "
    "check holds at 0 % and above."
)
_ALREADY_SAID = "not assessed: "
"""Begins an explanation beside whose verdict the same words stand."""

Check = Mapping[str, Any]


def checks(document: Document) -> Markup:
    """Return the section."""
    needs = {of: row for row in reversed(document["missing"]) for of in row["checks"]}
    groups = (_group(document, needs, *group) for group in _GROUPS)
    unused = document["not_used"]
    told = element("p", f"Given and not used by this version: {', '.join(unused)}.") if unused else None
    return content(element("p", _LEAD), *groups, told)


def _group(document: Document, needs: Mapping[str, Any], verdict: str, title: str, words: str) -> Markup:
    found = of_verdict(document, verdict)
    if not found and verdict != "fail":
        return NOTHING
    heading = element("h3", f"{title}: {len(found) or 'none'}")
    items = joined(_check(document, check, needs.get(check["id"])) for check in found)
    rest = (element("p", words), element("ol", items, class_="checks")) if found else ()
    return unfolding(heading, *rest, class_="passed", paper=True) if verdict == "pass" else joined((heading, *rest))


def of_verdict(document: Document, verdict: str) -> list[Check]:
    """Return the checks of one verdict, those with the least margin first."""
    return sorted((check for check in document["checks"] if check["verdict"] == verdict), key=_margin)


def _margin(check: Check) -> float:
    return 0.0 if check["margin"] is None else float(check["margin"])


def _check(document: Document, check: Check, need: Mapping[str, Any] | None) -> Markup:
    verdict, because = check["verdict"], check["explanation"]
    told = (
        element("p", because.removeprefix(_ALREADY_SAID), class_="because") if because and verdict != "pass" else None
    )
    bare = " check-bare" if check["value"] is None else ""
    return element(
        "li",
        element("span", _WORD[verdict], class_=f"verdict verdict-{verdict}"),
        element("strong", check["title"], class_="title"),
        _figures(check),
        told,
        element("p", _to_ask(need, because), class_="because") if need else None,
        unfolding("Formula, inputs, source", *_in_full(document, check), paper=verdict != "pass"),
        id=anchor("check", check["id"]), class_=f"check check-{verdict}{bare}",
    )  # fmt: skip


def _to_ask(need: Mapping[str, Any], because: str) -> str:
    """Return whom to ask, and for what where the explanation has not said it."""
    return f"Ask: {need['ask']}." if need["key"] in because else f"Needs {need['key']}; ask: {need['ask']}."


def _figures(check: Check) -> Markup:
    value, margin, unit = check["value"], check["margin"], check["unit"]
    if value is None:
        return NOTHING
    limit = joined((" against ", quantity(check["limit"], unit))) if check["limit"] is not None else None
    compared = element("span", quantity(value, unit), limit, class_="compared")
    if margin is None:
        return compared
    told = element("span", "margin ", figure(margin, show.margin(margin)), class_="margin")
    return joined((compared, use_bar(margin, check["verdict"]), told))


def _in_full(document: Document, check: Check) -> Iterator[Markup]:
    if check["verdict"] == "pass" and check["explanation"]:
        yield element("p", element("b", "Found: "), check["explanation"])
    yield element("p", element("b", "Rule: "), check["formula"])
    inputs = [_input(document, name, of) for name, of in check["inputs"].items()]
    if inputs:
        yield element("p", element("b", "Inputs: "), joined(inputs, "; "))
    yield element("p", element("b", "Source: "), check["source"] or "-")
    yield element("p", element("b", "Id: "), element("code", check["id"]))


def _input(document: Document, name: str, of: Mapping[str, Any]) -> Markup:
    value = of["value"] if not isinstance(of["value"], list) else tuple(map(_tupled, of["value"]))
    shown = figure(value, show.with_unit(value, of["unit"]))
    return joined((link(document, of["ref"] or name, name), " = ", shown, f" ({of['origin']})"))


def _tupled(part: Any) -> Any:
    return tuple(part) if isinstance(part, list) else part
