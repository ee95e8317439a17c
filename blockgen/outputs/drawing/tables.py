"""Tables on a sheet: cells with lines around them, texts that fit."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from math import fsum

from blockgen.outputs.drawing.lettering import text_width
from blockgen.outputs.drawing.strokes import Line, Pen, Point, Stroke, Text

_PAD = 1.2
_LEADING = 1.45


@dataclass(frozen=True, slots=True)
class Column:
    """One column: its heading and width in mm."""

    title: str
    width: float


def wrapped(words: str, width: float, height: float) -> list[str]:
    """Return a text as lines no wider than ``width`` mm; a single word that is wider is cut."""
    lines: list[str] = []
    line = ""
    for word in words.split():
        longer = f"{line} {word}" if line else word
        if text_width(longer, height) <= width:
            line = longer
            continue
        if line:
            lines.append(line)
        line = word
        while text_width(line, height) > width and len(line) > 1:
            cut = next(i for i in range(len(line) - 1, 0, -1) if i == 1 or text_width(line[:i], height) <= width)
            lines.append(line[:cut])
            line = line[cut:]
    return [*lines, line] if line or not lines else lines


def row_height(cells: Sequence[str], columns: Sequence[Column], height: float) -> float:
    """Return the height of a row of wrapped cells, mm."""
    most = max(len(wrapped(c, column.width - 2 * _PAD, height)) for c, column in zip(cells, columns, strict=True))
    return most * height * _LEADING + height * 0.5


def table_height(rows: Sequence[Sequence[str]], columns: Sequence[Column], height: float) -> float:
    """Return the height of a table with its heading, mm."""
    return fsum(row_height(cells, columns, height) for cells in ([c.title for c in columns], *rows))


def table(
    corner: Point, columns: Sequence[Column], rows: Sequence[Sequence[str]], height: float
) -> tuple[tuple[Stroke, ...], float]:
    """Return a table hung from its upper left corner, and the y of its lower edge.

    Args:
        corner: Upper left corner, mm.
        columns: Headings and widths.
        rows: Cells, one for each column.
        height: Height of capitals, mm.
    """
    x, y = corner
    width = fsum(column.width for column in columns)
    strokes: list[Stroke] = [Line((x, y), (x + width, y), "outline")]
    lines = [[column.title for column in columns], *[list(row) for row in rows]]
    for number, cells in enumerate(lines):
        low = y - row_height(cells, columns, height)
        strokes += _row((x, y), columns, cells, height)
        pen: Pen = "outline" if number in {0, len(lines) - 1} else "thin"
        strokes.append(Line((x, low), (x + width, low), pen))
        y = low
    strokes += _uprights(corner, columns, y)
    return tuple(strokes), y


def _row(corner: Point, columns: Sequence[Column], cells: Sequence[str], height: float) -> list[Stroke]:
    x, y = corner
    strokes: list[Stroke] = []
    for column, cell in zip(columns, cells, strict=True):
        for number, line in enumerate(wrapped(cell, column.width - 2 * _PAD, height)):
            if line:
                strokes.append(Text(line, (x + _PAD, y - height * (1.35 + _LEADING * number)), height))
        x += column.width
    return strokes


def _uprights(corner: Point, columns: Sequence[Column], low: float) -> list[Stroke]:
    x, top = corner
    strokes: list[Stroke] = [Line((x, top), (x, low), "outline")]
    for number, column in enumerate(columns, 1):
        x += column.width
        strokes.append(Line((x, top), (x, low), "outline" if number == len(columns) else "thin"))
    return strokes
