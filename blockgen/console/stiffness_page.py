"""How the stiffness is printed: all supports side by side."""

from __future__ import annotations

from collections.abc import Iterator, Sequence

from blockgen.advise import Advice
from blockgen.console.page import BLANK, Line, Part, Row, Table, title
from blockgen.evidence.stiffness.result import Stiffness
from blockgen.outputs import advice_rows, stiffness_rows


def stiffness_parts(stiffness: Stiffness) -> Iterator[Part]:
    """Yield the table of all supports and the forces at the screws."""
    yield from title("Stiffness by finite elements")
    rows = tuple(Row(cells) for cells in stiffness_rows.variant_rows(stiffness))
    yield Table(stiffness_rows.COLUMNS, rows, right=stiffness_rows.COLUMNS[2:])
    yield Line(stiffness_rows.lead(stiffness), "quiet")
    yield BLANK
    shares = tuple(Row(cells) for cells in stiffness_rows.share_rows(stiffness))
    yield Table(stiffness_rows.SHARE_COLUMNS, shares, right=stiffness_rows.SHARE_COLUMNS[1:3])


def advice_parts(advice: Sequence[Advice]) -> Iterator[Part]:
    """Yield what would make the block stiffer or lighter."""
    yield from title("What would make it stiffer or lighter")
    if not advice:
        yield Line(advice_rows.NOTHING)
        return
    yield Table(advice_rows.COLUMNS, tuple(Row(r) for r in advice_rows.advice_rows(advice)), advice_rows.COLUMNS[1:5])
    yield Line(advice_rows.lead(advice), "quiet")
