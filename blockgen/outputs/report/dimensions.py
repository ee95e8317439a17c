"""Dimensions and other values, each unfolding to its rule, inputs, source and limits."""

from __future__ import annotations

from collections.abc import Iterable, Iterator

from blockgen.outputs import show
from blockgen.outputs.report.markup import Markup, anchor, element, joined
from blockgen.outputs.report.tables import content, table, unfolding
from blockgen.outputs.report.values import AT_A_GLANCE, Document, amount, figure, link, record_of, words
from blockgen.record import Record

_LEAD = (
    "Open a line to see the rule, the rule with its numbers put in, and the result. Inputs are links to where they "
    "come from. [read] marks a table whose figures were read in a reprint or in another table, [memory] one that was "
    "written down from memory; the standard itself wins."
)


_ON_PAPER = (
    "On paper the derivations of the sizes at a glance stand in full, and the checks that do not pass. Whoever wants "
    "others there unfolds them before printing; all of them are in summary.md."
)


def dimensions(document: Document) -> Markup:
    """Return the section of the dimensions."""
    lines = joined(_unfolding(document, record, "dimension") for record in records(document, "dimensions"))
    leads = element("p", _LEAD), element("p", _ON_PAPER, class_="on-paper")
    return content(*leads, element("div", lines, class_="values"), _features(document))


def records(document: Document, place: str) -> Iterator[Record]:
    """Yield the records of one part of the summary."""
    for key, entry in document.get(place, {}).items():
        yield record_of(key, entry)


def values(document: Document, of: Iterable[Record]) -> Markup:
    """Return other values in the same form."""
    return element("div", joined(_unfolding(document, record, "value") for record in of), class_="values")


def _unfolding(document: Document, record: Record, kind: str) -> Markup:
    """Return one line that unfolds; the id stands inside, so that a link to it opens the line."""
    name = words(record.key) if kind == "dimension" else record.key
    line = (
        element("span", name, class_="name"), " ",
        element("span", amount(record), class_="amount"), " ",
        element("span", show.limits(record), class_="limits"), " ",
        element("span", record.origin, class_="origin"),
    )  # fmt: skip
    inside = element("div", *_derivation(document, record), class_="derivation", id=anchor(kind, record.key))
    return unfolding(joined(line), inside, paper=kind == "dimension" and record.key in AT_A_GLANCE)


def _derivation(document: Document, record: Record) -> Iterator[Markup]:
    yield element("p", show.derivation(record), class_="rule")
    inputs = [_input(document, record, name) for name in record.inputs]
    if inputs:
        yield element("p", element("b", "Inputs: "), joined(inputs, "; "))
    yield from _limits(record)
    source = record.source or "follows from its inputs"
    yield element("p", element("b", "Source: "), source, " \u00b7 ", element("b", "Key: "), element("code", record.key))


def _input(document: Document, record: Record, name: str) -> Markup:
    of = record.inputs[name]
    shown = figure(of.value, show.with_unit(of.value, of.unit))
    return joined((link(document, of.ref or name, name), " = ", shown, f" ({of.origin})"))


def _limits(record: Record) -> Iterator[Markup]:
    """Yield least and greatest size, for who measures."""
    value, low, high = record.value, record.lower, record.upper
    if low is not None and high is not None and isinstance(value, (int, float)):
        least, greatest = (show.with_unit(round(value + end, 6), record.unit) for end in (low, high))
        yield element("p", element("b", "From "), least, element("b", " to "), greatest)


def _features(document: Document) -> Markup:
    """Return holes, bores and window of the block and of the base plate."""
    columns = ("Feature", "Call-out", "On face", "Mouth x, y, z mm")
    block = ((_name(f, "feature"), f["call_out"], words(f["face"]), _place(f)) for f in document["features"])
    plate = ((_name(f, "feature"), f["call_out"], words(f["face"]), _place(f)) for f in document["base_features"])
    tables = (
        table("Holes, bores and window of the block", columns, block),
        table("Holes in the base plate, in the block's coordinates", columns, plate),
    )
    lead = "x runs from the bearing seat to the motor, z up from the base; seen from the motor, y is to the right."
    return joined((element("h3", "Holes, bores and window"), element("p", lead), *tables))


def _name(feature: dict[str, str], kind: str) -> Markup:
    return element("span", words(feature["id"]), id=anchor(kind, feature["id"]))


def _place(feature: dict[str, list[float]]) -> str:
    return ", ".join(show.number(c, 3) for c in feature["position"])
