"""What is written on the drawing: title block, notes, edge sign, hole table."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass, replace

from blockgen.mechanics.volume import reference_volume
from blockgen.outputs.drawing import notes
from blockgen.outputs.drawing.box import Box
from blockgen.outputs.drawing.figures import Figures
from blockgen.outputs.drawing.hole_table import COLUMNS, hole_rows
from blockgen.outputs.drawing.moving import moved
from blockgen.outputs.drawing.paper import Paper
from blockgen.outputs.drawing.placement import NoRoomError
from blockgen.outputs.drawing.scales import scale_text
from blockgen.outputs.drawing.strokes import Item, Line, Stroke, Text
from blockgen.outputs.drawing.symbols import SMALL, edge_symbol
from blockgen.outputs.drawing.tables import table, table_height
from blockgen.outputs.drawing.title_block import WIDTH, Titles, title_block
from blockgen.plan import Plan

_GAP = 4.0
_EDGE_SIGN = 34.0


@dataclass(frozen=True, slots=True)
class Words:
    """Words of the drawing.

    Args:
        figures: How numbers are written.
        titles: Title block; size and scale are filled in when they are known.
        paragraphs: Notes.
        edge: Values of the edge sign: outer, inner.
    """

    figures: Figures
    titles: Titles
    paragraphs: tuple[str, ...]
    edge: tuple[str, str]

    def at_foot(self, sheet: Paper, scale: float) -> tuple[tuple[Item, ...], float]:
        """Return the title block of a sheet and its height."""
        titles = replace(self.titles, size=sheet.size, scale=scale_text(scale))
        item, height = title_block((sheet.area.right, sheet.area.bottom), titles)
        return (item,), height

    def in_column(self, plan: Plan, column: Box, foot: float, projection: str) -> tuple[Item, ...]:
        """Return notes and hole table in the right column.

        Raises:
            NoRoomError: they are too high for it.
        """
        left = column.right - WIDTH
        lines = notes.lines(list(self.paragraphs), WIDTH - _EDGE_SIGN - 4.0)
        high = max(len(lines) * notes.leading() + 3.0, 20.0)
        rows = hole_rows(plan.features, self.figures)
        tall = table_height(rows, COLUMNS, SMALL)
        low = column.bottom + (foot if projection == "first" else 0.0) + _GAP
        if low + high + _GAP + tall > column.top:
            raise NoRoomError("notes and hole table")
        text = _notes(lines, (left, low), high)
        sign = moved(_edge_sign(self.edge), (left + WIDTH - _EDGE_SIGN, low + high - 14.0))
        strokes, _ = table((left, low + high + _GAP + tall), COLUMNS, rows, SMALL)
        border = _border(left, low, WIDTH, high)
        return (
            Item("sheet.notes", "note", (*text, *sign, *border)),
            Item("sheet.holes", "table", strokes),
        )


def _border(x: float, y: float, width: float, height: float) -> tuple[Stroke, ...]:
    corners = [(x, y), (x + width, y), (x + width, y + height), (x, y + height)]
    return tuple(Line(a, b) for a, b in zip(corners, [*corners[1:], corners[0]], strict=True))


def _notes(lines: Sequence[str], corner: tuple[float, float], high: float) -> tuple[Stroke, ...]:
    strokes: list[Stroke] = []
    for number, line in enumerate(lines):
        y = corner[1] + high - notes.leading() * (number + 1)
        mark, _, words = line.partition("\t")
        strokes += [Text(mark, (corner[0] + 2.0, y), SMALL)] if mark else []
        strokes.append(Text(words, (corner[0] + 7.0, y), SMALL))
    return tuple(strokes)


def _edge_sign(values: tuple[str, str]) -> tuple[Stroke, ...]:
    outer, inner = values
    return (
        *edge_symbol(),
        Text(f"outside {outer}", (4.2, 4.0), SMALL),
        Text(f"inside {inner}", (4.2, -0.2 - SMALL), SMALL),
    )


def words_of(plan: Plan, status: str, date: str, sheets: int) -> Words:
    """Return the words of a plan's drawing.

    Args:
        plan: What was decided.
        status: Status of the design.
        date: Date of issue; empty for none.
        sheets: Number of all sheets of the document.
    """
    figures = Figures(comma=plan.text("drawing.number_format") == "comma")
    outer, inner = (plan.number(f"practice.edge_{side}") for side in ("outer", "inner"))
    edge = (figures.deviation(outer), figures.deviation(inner))
    mass = reference_volume(plan) * 1e-9 * plan.material_density
    titles = Titles(
        owner=plan.text("job.project"), number=plan.text("job.number"), revision=plan.text("job.revision"),
        title=plan.text("job.title"), kind="Part drawing", status=status, creator=plan.text("job.author"), date=date,
        language=plan.text("drawing.language"), sheet=1, sheets=sheets, size="", scale="",
        projection=plan.text("drawing.projection"), tolerances=notes.general_tolerances(plan),
        mass=f"{figures.number(mass, 2)} kg", material=plan.text("block.material"),
    )  # fmt: skip
    return Words(figures, titles, tuple(notes.notes(plan, figures)), edge)
