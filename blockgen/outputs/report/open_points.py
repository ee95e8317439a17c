"""What is open: values to ask for, what was assumed, notes of the sizing."""

from __future__ import annotations

from collections.abc import Iterator, Mapping
from typing import Any

from blockgen.outputs import show
from blockgen.outputs.report.markup import Child, Markup, anchor, element, joined
from blockgen.outputs.report.tables import bullets, content, table
from blockgen.outputs.report.values import Document, figure, link

_ASK = ("Value", "Who knows it", "What waits for it")
_ASSUMED = ("Key", "Assumed", "From", "Source")


def missing(document: Document) -> Markup:
    """Return the section of what to ask for."""
    lead = element("p", "Values that would settle what is open, what weighs most first.")
    return content(lead, table("Values to ask for", _ASK, _rows(document)))


def _rows(document: Document) -> Iterator[tuple[Child, ...]]:
    titles = {check["id"]: check["title"] for check in document["checks"]}
    for row in document["missing"]:
        waiting = (_waiting(of, titles) for of in row["checks"])
        yield (row["key"], row["ask"], joined(waiting, "; "))


def _waiting(of: str, titles: Mapping[str, str]) -> Child:
    """Return a link to a check, or the words of what waits and is none: the status of the design."""
    return element("a", titles[of], href=f"#{anchor('check', of)}") if of in titles else of


def assumptions(document: Document) -> Markup:
    """Return the section of assumptions: what mates first, since it makes the design preliminary."""
    mating = table("Assumed mating geometry", _ASSUMED, _assumed(document, mates=True), right=("Assumed",))
    others = table("Other values that were not given", _ASSUMED, _assumed(document, mates=False), right=("Assumed",))
    notes = document["notes"]
    told = joined((element("h3", "Notes of the sizing"), bullets(notes))) if notes else None
    return content(mating, others, told)


def _assumed(document: Document, *, mates: bool) -> Iterator[tuple[Child, ...]]:
    for one in document["assumptions"]:
        if one["mates"] is mates:
            value = _tupled(one["value"])
            shown = figure(value, show.with_unit(value, one["unit"]))
            yield (link(document, one["key"]), shown, one["rule"], one["source"])


def _tupled(value: Any) -> Any:
    return tuple(_tupled(part) for part in value) if isinstance(value, list) else value
