"""Sheet sizes, frame, centring marks and reference fields.

Source: ISO 5457 as told by de.wikibooks.org/wiki/Technisches_Zeichnen/_Zeichenblätter
(tests/outside/test_sheet_layout.py): trimmed sizes as ISO 216; frame 20 mm from the left edge and 10 mm from the
others, line 0.7; reference fields 50 mm long, counted from the axes of the sheet, an even number along each edge,
line 0.35, letters 3.5 high, downwards without I and O, numerals to the right. Centring marks 5 mm into the frame:
edition of 1980; the later one was not read.
"""

from __future__ import annotations

from dataclasses import dataclass
from itertools import pairwise

from blockgen.outputs.drawing.box import Box
from blockgen.outputs.drawing.lettering import text_width
from blockgen.outputs.drawing.strokes import Item, Line, Stroke, Text

TRIMMED: dict[str, tuple[float, float]] = {
    "A4": (210.0, 297.0),
    "A3": (420.0, 297.0),
    "A2": (594.0, 420.0),
    "A1": (841.0, 594.0),
    "A0": (1189.0, 841.0),
}
"""Width and height in mm; A4 upright, the others lengthwise."""

_FILING_MARGIN, _MARGIN, _FIELD_LENGTH, _FIELD_WIDTH = 20.0, 10.0, 50.0, 5.0
_LETTERS = "ABCDEFGHJKLMNPQRSTUVWXYZ"
_HEIGHT = 3.5


@dataclass(frozen=True, slots=True)
class Paper:
    """A trimmed sheet, mm."""

    size: str
    width: float
    height: float

    @property
    def area(self) -> Box:
        """The drawing space within the frame."""
        return Box(_FILING_MARGIN, _MARGIN, self.width - _MARGIN, self.height - _MARGIN)


def paper(size: str, *, lengthwise: bool | None = None) -> Paper:
    """Return a sheet of a size A4 to A0.

    Args:
        size: Its name.
        lengthwise: True to lay an A4 sheet lengthwise.
    """
    width, height = TRIMMED[size]
    return Paper(size, height, width) if size == "A4" and lengthwise else Paper(size, width, height)


def frame(sheet: Paper) -> Item:
    """Return frame, centring marks and reference fields."""
    area = sheet.area
    outer = area.grown(_FIELD_WIDTH)
    strokes: list[Stroke] = [*_rectangle(area, "border"), *_rectangle(outer, "medium"), *_centring(sheet)]
    strokes += _fields(sheet, outer)
    return Item("sheet.frame", "frame", tuple(strokes))


def _rectangle(box: Box, pen: str) -> list[Stroke]:
    corners = [(box.left, box.bottom), (box.right, box.bottom), (box.right, box.top), (box.left, box.top)]
    return [Line(a, b, pen) for a, b in zip(corners, [*corners[1:], corners[0]], strict=True)]  # type: ignore[arg-type]


def _centring(sheet: Paper) -> list[Stroke]:
    """Return the four marks from the edge of the reference fields to 5 mm inside the frame."""
    area, x, y = sheet.area, sheet.width / 2, sheet.height / 2
    out, into = _FIELD_WIDTH, 5.0
    return [
        Line((area.left - out, y), (area.left + into, y), "border"),
        Line((area.right + out, y), (area.right - into, y), "border"),
        Line((x, area.bottom - out), (x, area.bottom + into), "border"),
        Line((x, area.top + out), (x, area.top - into), "border"),
    ]


def _fields(sheet: Paper, outer: Box) -> list[Stroke]:
    area = sheet.area
    strokes: list[Stroke] = []
    xs, ys = _cuts(sheet.width / 2, area.left, area.right), _cuts(sheet.height / 2, area.bottom, area.top)
    for x in xs[1:-1]:
        strokes += [Line((x, area.top), (x, outer.top), "medium"), Line((x, outer.bottom), (x, area.bottom), "medium")]
    for y in ys[1:-1]:
        strokes += [Line((outer.left, y), (area.left, y), "medium"), Line((area.right, y), (outer.right, y), "medium")]
    for number, (a, b) in enumerate(pairwise(xs), 1):
        strokes += [_mark(str(number), (a + b) / 2, y) for y in (area.top + 2.5, area.bottom - 2.5)]
    for letter, (a, b) in zip(_LETTERS, pairwise(ys[::-1]), strict=False):
        strokes += [_mark(letter, x, (a + b) / 2) for x in (area.left - 2.5, area.right + 2.5)]
    return strokes


def _cuts(middle: float, low: float, high: float) -> list[float]:
    """Return the ends of the fields along one edge; those at its ends take up what is left.

    Args:
        middle: Axis of the sheet: half the length of its edge, mm.
        low: Lower end of the frame, mm.
        high: Upper end of the frame, mm.
    """
    half = round(middle / _FIELD_LENGTH)
    return [low, *(middle + _FIELD_LENGTH * number for number in range(1 - half, half)), high]


def _mark(words: str, x: float, y: float) -> Text:
    return Text(words, (x - text_width(words, _HEIGHT) / 2, y - _HEIGHT / 2), _HEIGHT)
