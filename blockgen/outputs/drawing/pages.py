"""Documents in tables: A4 sheets lengthwise with a heading, tables that run on from page to page, and a foot."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from dataclasses import dataclass
from math import fsum

from blockgen.outputs.drawing.lettering import text_width
from blockgen.outputs.drawing.paper import Paper, paper
from blockgen.outputs.drawing.strokes import Item, Line, Sheet, Stroke, Text
from blockgen.outputs.drawing.symbols import LETTER, SMALL
from blockgen.outputs.drawing.tables import Column, row_height, table, wrapped
from blockgen.outputs.drawing.title_block import Titles

_FOOT, _GAP = 17.0, 3.0
_CAPTION = 1.8
FINE = 2.0
"""Height of capitals in the tables of a page, mm."""


@dataclass(frozen=True, slots=True)
class Part:
    """One table with its heading, or a paragraph where it has no columns.

    Args:
        heading: Stands above it, also where it runs on.
        columns: Columns; empty for paragraphs.
        rows: Cells; for paragraphs one cell a row.
    """

    heading: str
    columns: tuple[Column, ...]
    rows: tuple[tuple[str, ...], ...]


@dataclass(frozen=True, slots=True)
class Page:
    """What stands on one page: parts with those of their rows that find room."""

    parts: tuple[Part, ...]


def width() -> float:
    """Return the width of a page's tables, mm."""
    area = _sheet().area
    return area.right - area.left


def _sheet() -> Paper:
    return paper("A4", lengthwise=True)


def paginated(parts: Sequence[Part]) -> list[Page]:
    """Return pages; a table that is too long goes on with its heading on the next."""
    area = _sheet().area
    room = area.top - area.bottom - _FOOT - _GAP
    pages: list[list[Part]] = [[]]
    left = room
    for part in parts:
        waiting = list(part.rows)
        while waiting:
            taken = _taken(part, waiting, left)
            if not taken:
                pages.append([])
                left = room
                taken = max(1, _taken(part, waiting, left))
            pages[-1].append(Part(part.heading, part.columns, tuple(waiting[:taken])))
            left -= _height(part, waiting[:taken])
            waiting = waiting[taken:]
    return [Page(tuple(found)) for found in pages if found]


def _taken(part: Part, rows: Sequence[tuple[str, ...]], room: float) -> int:
    """Return how many rows find room; none where not even two of them would."""
    count = next((n for n in range(len(rows), 0, -1) if _height(part, rows[:n]) <= room), 0)
    return count if count >= min(2, len(rows)) else 0


def _height(part: Part, rows: Sequence[tuple[str, ...]]) -> float:
    head = LETTER * 1.6 + 1.0
    if not part.columns:
        return head + fsum(len(wrapped(row[0], width() - 2.0, FINE)) * FINE * 1.6 for row in rows) + _GAP
    titles = [column.title for column in part.columns]
    return head + fsum(row_height(row, part.columns, FINE) for row in (titles, *rows)) + _GAP


def sheet(page: Page, name: str, titles: Titles) -> Sheet:
    """Return a page as a sheet.

    Args:
        page: What stands on it.
        name: Name of the sheet.
        titles: Words of the foot; its sheet number is that of this page.
    """
    size = _sheet()
    items = [_frame(size), _foot(size, titles)]
    y = size.area.top - _GAP
    for number, part in enumerate(page.parts):
        strokes, y = _part(part, size.area.left, y)
        items.append(Item(f"{name}.part_{number}", "table", strokes))
    return Sheet(name, f"{titles.number} {titles.kind}", size.size, size.width, size.height, 1.0, tuple(items))


def _part(part: Part, left: float, top: float) -> tuple[tuple[Stroke, ...], float]:
    heading = Text(part.heading, (left + 1.0, top - LETTER * 1.2), LETTER)
    y = top - LETTER * 1.6 - 1.0
    if part.columns:
        strokes, y = table((left, y), part.columns, part.rows, FINE)
        return (heading, *strokes), y - _GAP
    lines = [line for row in part.rows for line in wrapped(row[0], width() - 2.0, FINE)]
    texts = [Text(line, (left + 1.0, y - FINE * (1.3 + 1.6 * n)), FINE) for n, line in enumerate(lines) if line]
    return (heading, *texts), y - len(lines) * FINE * 1.6 - _GAP


def _frame(size: Paper) -> Item:
    area = size.area
    corners = [(area.left, area.bottom), (area.right, area.bottom), (area.right, area.top), (area.left, area.top)]
    lines = tuple(Line(a, b, "border") for a, b in zip(corners, [*corners[1:], corners[0]], strict=True))
    return Item("sheet.frame", "frame", lines)


def _foot(size: Paper, titles: Titles) -> Item:
    area = size.area
    y = area.bottom + _FOOT
    cells = (
        ("Identification number", f"{titles.number}", 62.0), ("Revision", titles.revision, 16.0),
        ("Document type", titles.kind, 44.0), ("Title", titles.title, 78.0), ("Created by", titles.creator, 28.0),
        ("Date of issue", titles.date, 21.0), ("Sheet", f"{titles.sheet}/{titles.sheets}", 18.0),
    )  # fmt: skip
    middle = area.bottom + 7.0
    strokes: list[Stroke] = [Line((area.left, y), (area.right, y), "outline"),
                             Line((area.left, middle), (area.right, middle))]  # fmt: skip
    x = area.left
    for number, (caption, words, wide) in enumerate(cells):
        if number:
            strokes.append(Line((x, middle), (x, y)))
        strokes += _fitted(caption, words, (x + 1.5, y), wide - 3.0)
        x += wide
    strokes += _fitted("", f"Status: {titles.status}", (area.left + 1.5, middle + 1.5), area.right - area.left - 3.0)
    return Item("sheet.foot", "frame", tuple(strokes))


def _fitted(caption: str, words: str, top: tuple[float, float], room: float) -> Iterator[Text]:
    """Yield caption and words of a cell of the foot; words too long are written smaller, then cut with dots."""
    x, y = top
    if caption:
        yield Text(caption, (x, y - 1.0 - _CAPTION), _CAPTION)
    letters = next((h for h in (LETTER, 3.0, SMALL, 2.0) if text_width(words, h) <= room), _CAPTION)
    while len(words) > 4 and text_width(words, letters) > room:
        words = words[:-4].rstrip() + "..."
    if words:
        yield Text(words, (x, y - 4.6 - letters if caption else y - 2.2 - letters), letters)
