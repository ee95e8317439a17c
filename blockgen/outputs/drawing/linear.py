"""Linear dimensions: extension lines, dimension line, arrow heads and the text above the line.

Source: ISO 129-1 (from memory): text above the line and read from below or from the right; extension lines start at
the feature and run a little past the dimension line; arrow heads outside where there is no room.
"""

from __future__ import annotations

import math
from collections.abc import Iterator
from dataclasses import dataclass
from functools import partial

from blockgen.outputs.drawing.box import Box
from blockgen.outputs.drawing.field import Piece
from blockgen.outputs.drawing.figures import Figures
from blockgen.outputs.drawing.label import BALLOON, balloon, sized_text
from blockgen.outputs.drawing.moving import moved, turned, turned_back, turned_point
from blockgen.outputs.drawing.placement import Candidate
from blockgen.outputs.drawing.strokes import Item, Line, Measure, Point, Stroke
from blockgen.outputs.drawing.symbols import arrow
from blockgen.plan import Annotation

FIRST, STEP, LEVELS = 10.0, 9.0, 9
"""Distance of the first dimension line from the view, that of the next ones, and how many are tried, mm."""
_GAP, _PAST, _ABOVE = 0.8, 1.8, 0.9
_ROW = 2 * BALLOON
_TIGHT = 9.0  # below this length the arrow heads stand outside, mm
_TAIL = 6.0


@dataclass(frozen=True, slots=True)
class Span:
    """What a dimension measures.

    Args:
        note: The characteristic.
        first: One foot on the sheet, mm.
        second: The other one.
        angle: 0 for a horizontal, 90 for a vertical distance, deg.
        sides: Sides of the view on which it may stand: 1 above or left, -1 below or right; the favourite first.
    """

    note: Annotation
    first: Point
    second: Point
    angle: int
    sides: tuple[int, ...]


@dataclass(frozen=True, slots=True)
class _Local:
    """The dimension turned so that it lies horizontally: feet by rising x, level of its line, place of its text."""

    a: Point
    b: Point
    level: float
    text_at: float
    width: float
    angle: int

    @property
    def outside(self) -> bool:
        return not self.a[0] <= self.text_at <= self.b[0] - self.width

    @property
    def tight(self) -> bool:
        return self.b[0] - self.a[0] < _TIGHT


def candidates(span: Span, outline: Box, figures: Figures) -> Iterator[Candidate]:
    """Yield ways to place a dimension beside a view, the nearest level first."""
    content, width, words = _content(span.note, figures)
    feet = [_local(point, span.angle) for point in (span.first, span.second)]
    a, b = sorted(feet)
    corners = [_local(point, span.angle) for point in ((outline.left, outline.bottom), (outline.right, outline.top))]
    low, high = sorted(point[1] for point in corners)
    middle = math.fsum(point[0] for point in corners) / 2
    for rank, side in enumerate(span.sides):
        for number in range(LEVELS):
            level = high + FIRST + STEP * number if side > 0 else low - FIRST - STEP * number
            for cost, text_at in _places(a[0], b[0], width, middle):
                local = _Local(a, b, level, text_at, width, span.angle)
                yield _candidate(span, local, content, words, cost + 12.0 * rank + STEP * number)


def _content(note: Annotation, figures: Figures) -> tuple[tuple[Stroke, ...], float, str]:
    """Return text and number of a dimension from its left end at half height, its width and its words."""
    text, width, words = sized_text(note, figures)
    if note.number is None:
        return text, width, words
    return (*text, *balloon(note.number, (width + 1.5 + BALLOON, 0.0))), width + 1.5 + 2 * BALLOON, words


def _places(a: float, b: float, width: float, centre: float) -> Iterator[tuple[float, float]]:
    """Yield cost and left end of the text along the line: the middle, beside it, then beyond the ends.

    The end that is farther from the centre of the view comes first: the other one is in the way of the next dimension.
    """
    room = b - a - width
    if room >= 1.0:
        middle = (a + b - width) / 2
        for shift in range(0, int(room / 2), 4):
            yield shift / 4, middle + shift
            yield shift / 4, middle - shift
    outer = (a + b) / 2 > centre
    yield 5.0 if outer else 7.0, b + _TAIL
    yield 7.0 if outer else 5.0, a - _TAIL - width


def _candidate(span: Span, local: _Local, content: tuple[Stroke, ...], words: str, cost: float) -> Candidate:
    middle = (local.text_at, local.level + _ABOVE + _ROW / 2)
    box = Box(middle[0], middle[1] - _ROW / 2, middle[0] + local.width, middle[1] + _ROW / 2)
    lines = tuple((_sheet(p, local.angle), _sheet(q, local.angle)) for p, q in _lines(local))
    build = partial(_items, span, local, content, words, lines)
    return Candidate(cost, (_turned_box(box, local.angle),), lines[2:], build, lines[:2])


def _lines(local: _Local) -> list[Piece]:
    """Return extension lines and dimension line of a turned dimension."""
    found: list[Piece] = []
    for x, y in (local.a, local.b):
        way = math.copysign(1.0, local.level - y)
        found.append(((x, y + way * _GAP), (x, local.level + way * _PAST)))
    left, right = local.a[0], local.b[0]
    if local.tight:
        left, right = left - _TAIL, right + _TAIL
    if local.outside:
        left, right = min(left, local.text_at), max(right, local.text_at + local.width)
    found.append(((left, local.level), (right, local.level)))
    return found


def _items(
    span: Span, local: _Local, content: tuple[Stroke, ...], words: str, lines: tuple[Piece, ...]
) -> tuple[Item, ...]:
    ends = ((local.a[0], local.level), (local.b[0], local.level))
    outwards = 1.0 if local.tight else -1.0
    heads = (arrow(ends[0], (ends[0][0] - outwards, local.level)), arrow(ends[1], (ends[1][0] + outwards, local.level)))
    text = moved(content, (local.text_at, local.level + _ABOVE + _ROW / 2))
    upright = (*heads, *text)
    strokes = (*(Line(a, b) for a, b in lines), *(turned(upright) if local.angle else upright))
    measure = Measure("linear", span.first, span.second, _sheet(ends[1], local.angle), float(local.angle), words)
    return (Item(span.note.id, "dimension", strokes, in_model=True, measure=measure),)


def _local(point: Point, angle: int) -> Point:
    return turned_back(point) if angle else point


def _sheet(point: Point, angle: int) -> Point:
    return turned_point(point) if angle else point


def _turned_box(box: Box, angle: int) -> Box:
    return Box.around([_sheet((box.left, box.bottom), angle), _sheet((box.right, box.top), angle)])
