"""Labels: rows of a number, a call-out, a tolerance frame or a texture, one above the other."""

from __future__ import annotations

import math
from collections.abc import Sequence
from dataclasses import dataclass, field, replace

from blockgen.outputs.drawing.figures import Figures
from blockgen.outputs.drawing.lettering import text_width
from blockgen.outputs.drawing.moving import moved
from blockgen.outputs.drawing.strokes import Arc, Item, Line, Point, Stroke, Text
from blockgen.outputs.drawing.symbols import (
    DATUM_DEPTH,
    DEPTH,
    LETTER,
    SMALL,
    datum_symbol,
    depth_symbol,
    small_texture_symbol,
    tolerance_symbol,
)
from blockgen.plan import Annotation

BALLOON = 3.0
"""Radius of the circle around a characteristic's number, mm."""
_COLUMN = 2 * BALLOON + 1.5
ROW = 7.5
"""Height of a row of a label, mm."""
_CELL = 7.0
_LEG = 6.0 / math.sqrt(3)
FORM = frozenset({"flatness", "parallelism", "perpendicularity", "coaxiality", "position"})


@dataclass(frozen=True, slots=True)
class Row:
    """One row; strokes from its left end at half its height.

    Args:
        id: Id of the characteristic.
        strokes: What is drawn.
        width: mm.
        words: Its text, for exchange files.
        framed: True where a frame ends it, to which a leader runs right up.
        texture: True for a texture, which stands on the frame below it.
    """

    id: str
    strokes: tuple[Stroke, ...]
    width: float
    words: str
    framed: bool = False
    texture: bool = False


@dataclass(frozen=True, slots=True)
class Label:
    """Rows one above the other, with datum symbols hanging from the last; origin at its lower left corner, mm.

    Args:
        rows: From the top.
        datum: Letter of the datum that hangs from it; empty for none.
        width: Width, mm.
        height: Height, mm.
        lead: The row at which a leader arrives: the first one, or the first frame under a texture.
        lead_height: Height of the middle of that row, mm.
    """

    rows: tuple[Row, ...]
    datum: str = ""
    width: float = field(init=False)
    height: float = field(init=False)
    lead: Row = field(init=False)
    lead_height: float = field(init=False)

    def __post_init__(self) -> None:
        """Work out sizes once: thousands of places are tried."""
        frames = [number for number, row in enumerate(self.rows) if row.framed]
        lead = frames[0] if frames and self.rows[0].texture else 0
        height = ROW * len(self.rows) + (DATUM_DEPTH if self.datum else 0.0)
        object.__setattr__(self, "width", max(row.width for row in self.rows))
        object.__setattr__(self, "height", height)
        object.__setattr__(self, "lead", self.rows[lead])
        object.__setattr__(self, "lead_height", height - ROW * (lead + 0.5))

    def items(self, at: Point) -> tuple[Item, ...]:
        """Return an item for each row and for the datum, the label's corner put at a point."""
        made = []
        for number, row in enumerate(self.rows):
            middle = (at[0], at[1] + self.height - ROW * (number + 0.5))
            made.append(Item(row.id, "label", moved(row.strokes, middle), in_model=True))
        if self.datum:
            under = (at[0] + self._hook(), at[1] + DATUM_DEPTH + (ROW - _CELL) / 2)
            made.append(Item(f"datum.{self.datum}", "datum", moved(datum_symbol(self.datum), under), in_model=True))
        return tuple(made)

    def _hook(self) -> float:
        return _COLUMN + 2 * _CELL


def row_of(note: Annotation, figures: Figures) -> Row:
    """Return the row of a characteristic."""
    if note.kind in FORM:
        return _frame_row(note, figures)
    if note.kind == "texture":
        return _texture_row(note, figures)
    return _text_row(note, figures)


def text_row(identifier: str, words: str) -> Row:
    """Return a row of plain words."""
    strokes, width = written(words)
    return Row(identifier, strokes, width, words)


def balloon(number: int, centre: Point) -> tuple[Stroke, ...]:
    """Return the number of a characteristic in its circle."""
    words = str(number)
    at = (centre[0] - text_width(words, SMALL) / 2, centre[1] - SMALL / 2)
    return Arc(centre, BALLOON), Text(words, at, SMALL)


def _numbered(note: Annotation, content: Sequence[Stroke], width: float, words: str, *, framed: bool = False) -> Row:
    head = balloon(note.number, (BALLOON, 0.0)) if note.number else ()
    return Row(note.id, (*head, *moved(content, (_COLUMN, 0.0))), _COLUMN + width, words, framed)


def _text_row(note: Annotation, figures: Figures) -> Row:
    content, width, words = sized_text(note, figures)
    return _numbered(note, content, width, words)


def sized_text(note: Annotation, figures: Figures) -> tuple[tuple[Stroke, ...], float, str]:
    """Return a size with its fit and deviations from its left end at half height, its width in mm, and its text."""
    before, _, after = note.text.partition("{}")
    value = figures.number(note.value or 0.0) if "{}" in note.text else ""
    main = before + value + (f" {note.fit}" if note.fit else "")
    tail, plus = after, ""
    if note.general or note.upper is None or note.lower is None or (note.upper == 0 and note.lower == 0):
        words = main + tail
        return *written(words), words
    if abs(note.upper + note.lower) < 1e-9:
        plus = f" ±{figures.number(note.upper)}"
        words = main + plus + tail
        return *written(words), words
    return _stacked(main, tail, figures.deviation(note.upper), figures.deviation(note.lower))


def written(words: str) -> tuple[tuple[Stroke, ...], float]:
    """Return a line of text from its left end at half height, with the sign for depth drawn, and its width in mm."""
    strokes: list[Stroke] = []
    x = 0.0
    for number, part in enumerate(words.split(DEPTH)):
        if number:
            strokes += moved(depth_symbol(), (x + 1.8, 0.0))
            x += 3.6
        if part:
            strokes.append(Text(part, (x, -LETTER / 2), LETTER))
            x += text_width(part, LETTER)
    return tuple(strokes), x


def _stacked(main: str, tail: str, upper: str, lower: str) -> tuple[tuple[Stroke, ...], float, str]:
    head, wide = written(main)
    start = wide + 0.8
    most = max(text_width(upper, SMALL), text_width(lower, SMALL))
    strokes: list[Stroke] = [
        *head,
        Text(upper, (start, 0.35), SMALL),
        Text(lower, (start, -0.35 - SMALL), SMALL),
    ]
    width = start + most
    if tail:
        strokes.append(Text(tail.strip(), (width + 1.5, -LETTER / 2), LETTER))
        width += 1.5 + text_width(tail.strip(), LETTER)
    return tuple(strokes), width, f"{main} {upper}/{lower}{tail}"


def _frame_row(note: Annotation, figures: Figures) -> Row:
    zone = ("⌀" if note.diametral else "") + figures.number(note.value or 0.0)
    cells = [(zone, text_width(zone, LETTER) + 3.0), *((letter, _CELL) for letter in note.datums)]
    half, x = _CELL / 2, _CELL
    strokes: list[Stroke] = [*moved(tolerance_symbol(note.kind), (half, 0.0)), Line((x, -half), (x, half))]
    for words, width in cells:
        strokes.append(Text(words, (x + (width - text_width(words, LETTER)) / 2, -LETTER / 2), LETTER))
        x += width
        strokes.append(Line((x, -half), (x, half)))
    strokes += [Line((0.0, half), (x, half)), Line((0.0, -half), (x, -half)), Line((0.0, -half), (0.0, half))]
    return _numbered(note, strokes, x, " ".join([note.kind, zone, *note.datums]), framed=True)


def _texture_row(note: Annotation, figures: Figures) -> Row:
    words = note.text.replace("{}", figures.number(note.value or 0.0))
    wide = 6.2 + text_width(words, LETTER)
    sign = (*moved(small_texture_symbol(), (2.0, -3.0)), Line((2.0 + _LEG, 3.0), (wide, 3.0)))
    row = _numbered(note, (*sign, Text(words, (6.2, -LETTER / 2 - 0.3), LETTER)), wide, words)
    return replace(row, texture=True)
