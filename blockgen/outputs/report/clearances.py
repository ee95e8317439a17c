"""The section of clearances: what the solids of block and parts leave to one another."""

from __future__ import annotations

from typing import Any

from blockgen.evidence.clearances import Access, Clearance, Clearances, Pair
from blockgen.outputs import clearances_rows, show
from blockgen.outputs.report.markup import Markup, element
from blockgen.outputs.report.tables import content, table
from blockgen.outputs.report.values import Document, words


def clearances(document: Document) -> Markup:
    """Return the section."""
    walls = (
        (
            words(w["first"]),
            words(w["second"]),
            f"{show.number(w['wall'], 2)} mm",
            f"{show.number(w['required'], 2)} mm",
        )
        for w in document["thinnest_walls"]
    )
    thin = table("Thinnest walls", ("Between", "and", "Wall", "Asked for"), walls, right=("Wall", "Asked for"))
    if "clearances" not in document:
        return content(element("p", "The solids were not set against each other."), thin)
    found = _clearances(document["clearances"])
    rows = clearances_rows
    named, tight = rows.NAMED_COLUMNS, rows.TIGHT_COLUMNS
    return content(
        element("p", rows.counts(found)),
        table("Clearances with a name", named, rows.named_rows(found), right=named[1:3]),
        table("Clashes", rows.CLASH_COLUMNS, rows.clash_rows(found), right=rows.CLASH_COLUMNS[1:]),
        table("Parts that are clear by least", tight, rows.tight_rows(found), right=tight[1:]),
        table("Tools and what they reach", rows.ACCESS_COLUMNS, rows.access_rows(found)), thin,
    )  # fmt: skip


def _clearances(found: dict[str, Any]) -> Clearances:
    """Return the evidence as it stands in the summary."""
    pairs = tuple(Pair(**{name: value for name, value in pair.items() if name != "beyond"}) for pair in found["pairs"])
    access = tuple(Access(**{**one, "directions": tuple(map(tuple, one["directions"]))}) for one in found["access"])
    named = tuple(Clearance(**one) for one in found["named"])
    return Clearances(pairs, named, access, found["pairs_apart"], tuple(found["not_made"]))
