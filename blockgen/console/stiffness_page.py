"""How the stiffness is printed: all supports side by side."""

from __future__ import annotations

from collections.abc import Iterator

from blockgen.console.page import BLANK, Line, Part, Row, Table, title
from blockgen.evidence.stiffness.result import Stiffness
from blockgen.outputs import stiffness_rows

_LAST = stiffness_rows.SHARE_COLUMNS[-1:]


def stiffness_parts(stiffness: Stiffness) -> Iterator[Part]:
    """Yield the table of all supports and the forces at the screws."""
    yield from title("Stiffness by finite elements")
    rows = tuple(Row(cells) for cells in stiffness_rows.variant_rows(stiffness))
    yield Table(stiffness_rows.COLUMNS, rows, right=stiffness_rows.COLUMNS[2:])
    yield Line(stiffness_rows.lead(stiffness), "quiet")
    yield BLANK
    shares = tuple(Row(cells) for cells in stiffness_rows.share_rows(stiffness))
    yield Table(stiffness_rows.SHARE_COLUMNS, shares, right=stiffness_rows.SHARE_COLUMNS[1:3])
