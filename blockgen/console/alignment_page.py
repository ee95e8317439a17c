"""How the alignment is printed: spread, contributors, what tightening buys, arrangements side by side."""

from __future__ import annotations

from collections.abc import Iterable, Iterator

from blockgen.alignment.arrangements import Arrangement
from blockgen.alignment.chain import Alignment
from blockgen.console.page import BLANK, Line, Part, Row, Table, title
from blockgen.outputs import alignment_rows

_SHOWN = 6


def alignment_parts(alignment: Alignment) -> Iterator[Part]:
    """Yield offset and angle, the greatest contributors and what one step tighter buys."""
    yield from title("Alignment of the shafts at the coupling")
    yield _table(alignment_rows.SPREAD_COLUMNS, alignment_rows.spread_rows(alignment))
    yield BLANK
    shares = list(alignment_rows.share_rows(alignment))
    yield _table(alignment_rows.SHARE_COLUMNS, shares[:_SHOWN])
    if len(shares) > _SHOWN:
        yield Line(f"and {len(shares) - _SHOWN} smaller ones, all in the summary.", "quiet")
    yield BLANK
    yield _table(alignment_rows.DECISION_COLUMNS, alignment_rows.decision_rows(alignment), right=("P95 then", "Gain"))


def arrangement_parts(rows: tuple[Arrangement, ...]) -> Iterator[Part]:
    """Yield the arrangements side by side."""
    yield from title("This block beside a separate motor plate and a foot-mounted unit, cold and without load")
    cells = (row[:6] for row in alignment_rows.arrangement_rows(rows))
    yield _table(alignment_rows.ARRANGEMENT_COLUMNS[:6], cells)
    for row in alignment_rows.arrangement_rows(rows):
        yield Line(f"- to be held, {row[0].partition(' (')[0]}: {row[6]}", hang=2)


def _table(columns: tuple[str, ...], rows: Iterable[tuple[str, ...]], right: tuple[str, ...] = ()) -> Table:
    return Table(columns, tuple(Row(cells) for cells in rows), right=right or columns[1:])
