"""The title block.

Source: ISO 7200 as told by de.wikipedia.org/wiki/ISO_7200 (tests/outside/test_title_block_fields.py): its eight
fields that must be there; width 180 mm, lower right corner of the frame.
"""

from __future__ import annotations

from dataclasses import dataclass

from blockgen.outputs.drawing.lettering import text_width
from blockgen.outputs.drawing.moving import moved
from blockgen.outputs.drawing.strokes import Item, Line, Point, Stroke, Text
from blockgen.outputs.drawing.symbols import projection_symbol
from blockgen.outputs.drawing.tables import wrapped

WIDTH = 180.0
_CAPTION, _VALUE = 1.8, 2.5
_HEAD = 1.0 + _CAPTION + 1.2  # from the upper edge of a cell to its value
_LEADING, _MOST_LINES = 1.5, 6
_HEIGHTS = (5.0, 3.5, 2.5, 1.8)
"""Heights of letters of ISO 3098, mm; no others are used."""


@dataclass(frozen=True, slots=True)
class Titles:
    """What stands in the title block.

    Args:
        owner: Legal owner or project.
        number: Identification number.
        revision: Revision.
        title: Title.
        kind: Type of document.
        status: Document status.
        creator: Who made it.
        date: Date of issue; empty for none.
        language: Language code.
        sheet: Number of this sheet.
        sheets: Number of all sheets.
        size: Sheet size.
        scale: Scale as text; empty where nothing is drawn.
        projection: ``first`` or ``third``; empty where nothing is drawn.
        tolerances: General tolerances.
        mass: Mass of the part as text.
        material: Material.
    """

    owner: str
    number: str
    revision: str
    title: str
    kind: str
    status: str
    creator: str
    date: str
    language: str
    sheet: int
    sheets: int
    size: str
    scale: str
    projection: str
    tolerances: str
    mass: str
    material: str


@dataclass(frozen=True, slots=True)
class _Cell:
    caption: str
    words: str
    width: float
    height: float = _VALUE


def title_block(corner: Point, titles: Titles) -> tuple[Item, float]:
    """Return the title block and its height.

    Args:
        corner: Its lower right corner, mm.
        titles: What stands in it.
    """
    left, y = corner[0] - WIDTH, corner[1]
    strokes: list[Stroke] = []
    for cells, height in _rows(titles):
        strokes += _row((left, y), cells, height)
        y += height
    strokes += [Line((left, y), (corner[0], y), "border"), Line((left, corner[1]), (left, y), "border")]
    if titles.projection:
        strokes += moved(projection_symbol(titles.projection), (left + 22.0 + 17.0, y - _status_height(titles) - 6.5))
    return Item("sheet.title_block", "frame", tuple(strokes)), y - corner[1]


def _rows(titles: Titles) -> list[tuple[list[_Cell], float]]:
    """Return the rows from below."""
    return [
        ([_Cell("Identification number", titles.number, 98.0, 5.0), _Cell("Revision", titles.revision, 20.0, 5.0),
          _Cell("Size", titles.size, 16.0, 3.5), _Cell("Sheet", f"{titles.sheet}/{titles.sheets}", 22.0, 3.5),
          _Cell("Language", titles.language, 24.0, 3.5)], 11.0),
        ([_Cell("Title", titles.title, 98.0, 3.5), _Cell("Document type", titles.kind, 82.0, 3.5)], 9.0),
        ([_Cell("Owner, project", titles.owner, 98.0), _Cell("Created by", titles.creator, 30.0),
          _Cell("Approved by", "", 26.0), _Cell("Date of issue", titles.date, 26.0)], 8.5),
        ([_Cell("Scale", titles.scale, 22.0, 3.5), _Cell("", "", 34.0),
          _Cell("General tolerances", titles.tolerances, 42.0), _Cell("Mass", titles.mass, 30.0),
          _Cell("Material", titles.material, 52.0)], 13.0),
        ([_Cell("Document status", titles.status, WIDTH, _status_letters(titles))], _status_height(titles)),
    ]  # fmt: skip


def _status_letters(titles: Titles) -> float:
    return 3.5 if titles.status.startswith(("NOT FOR", "PRELIM")) else _VALUE


def _status_height(titles: Titles) -> float:
    letters = _status_letters(titles)
    return 4.5 + _LEADING * letters * min(_MOST_LINES, len(wrapped(titles.status, WIDTH - 3.0, letters)))


def _row(corner: Point, cells: list[_Cell], height: float) -> list[Stroke]:
    x, y = corner
    strokes: list[Stroke] = []
    for number, cell in enumerate(cells):
        if number:
            strokes.append(Line((x, y), (x, y + height)))
        strokes += _words(cell, (x, y + height), height)
        x += cell.width
    return [*strokes, Line((corner[0], y + height), (x, y + height))]


def _words(cell: _Cell, top: Point, height: float) -> list[Stroke]:
    """Return caption and value of a cell."""
    x, y = top[0] + 1.5, top[1]
    strokes: list[Stroke] = [Text(cell.caption, (x, y - 1.0 - _CAPTION), _CAPTION)] if cell.caption else []
    lines, letters = _fitted(cell, height - _HEAD - 0.2) if cell.words else ([], 0.0)
    for number, line in enumerate(lines):
        strokes.append(Text(line, (x, y - _HEAD - letters * (1.0 + _LEADING * number)), letters))
    return strokes


def _fitted(cell: _Cell, high: float) -> tuple[list[str], float]:
    """Return the lines of a value and the height of their letters: smaller until they fit, at last cut with dots."""
    room, letters = cell.width - 3.0, cell.height
    while len(lines := wrapped(cell.words, room, letters)) > _count(high, letters) and letters > _CAPTION:
        letters = next(height for height in _HEIGHTS if height < letters)
    most = max(1, _count(high, letters))
    if len(lines) <= most:
        return lines, letters
    last = lines[most - 1]
    while last and text_width(f"{last}...", letters) > room:
        last = last[:-1]
    return [*lines[: most - 1], f"{last.rstrip()}..."], letters


def _count(high: float, letters: float) -> int:
    """Return how many lines find room, the tails of the last one's letters too."""
    return int((high / letters - 1.3) / _LEADING + 1.0 + 1e-9)
