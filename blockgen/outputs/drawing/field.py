"""What stands on the sheet already: the one list of obstacles that every text, leader, frame and symbol is placed by.

Boxes (text, frames, symbols, tables) may not be touched by anything that comes later. Lines may not be touched by a
box; other lines may cross them at a cost.
"""

from __future__ import annotations

import math
from collections.abc import Iterable, Iterator
from itertools import pairwise

from blockgen.outputs.drawing.box import Box
from blockgen.outputs.drawing.lettering import text_box
from blockgen.outputs.drawing.strokes import Arc, Fill, Hatch, Line, Point, Stroke, Text

Piece = tuple[Point, Point]

GEOMETRY, CENTRE, EXTENSION, THIN = 6.0, 1.0, 40.0, 60.0
"""Cost of crossing a line of the part, a centre line, an extension line, a dimension line or leader.

Extension lines may cross one another, and those of neighbours may run in one.
"""

_CELL = 12.0
_CHORD_DEG = 12.0
_ALONG = 40.0  # a line that runs along another cannot be told from it


class Field:
    """Obstacles of one sheet, found by cells."""

    def __init__(self) -> None:
        """Start with an empty sheet."""
        self._boxes: dict[tuple[int, int], list[Box]] = {}
        self._lines: dict[tuple[int, int], list[tuple[int, Point, Point, float]]] = {}
        self._count = 0

    def add_box(self, box: Box) -> None:
        """Add a box that nothing may touch."""
        for cell in _cells(box):
            self._boxes.setdefault(cell, []).append(box)

    def add_line(self, piece: Piece, weight: float) -> None:
        """Add a line that boxes may not touch and that costs ``weight`` to cross."""
        self._count += 1
        for cell in _line_cells(piece):
            self._lines.setdefault(cell, []).append((self._count, *piece, weight))

    def add(self, strokes: Iterable[Stroke], weight: float) -> None:
        """Add strokes: letters and fills as boxes, the rest as lines."""
        for stroke in strokes:
            if isinstance(stroke, Text):
                self.add_box(text_box(stroke))
            elif isinstance(stroke, Fill):
                self.add_box(Box.around(stroke.outline))
            else:
                for piece in pieces(stroke):
                    self.add_line(piece, weight)

    def is_free(self, box: Box, gap: float = 0.8) -> bool:
        """Tell whether a box with a gap around it touches neither box nor line."""
        wide = box.grown(gap)
        for cell in _cells(wide):
            if any(wide.touches(other) for other in self._boxes.get(cell, ())):
                return False
            if any(meets(line[1], line[2], wide) for line in self._lines.get(cell, ())):
                return False
        return True

    def cost(self, lines: Iterable[Piece], gap: float = 0.5, *, extension: bool = False) -> float:
        """Return what the lines cost in crossings; infinite where one meets a box."""
        total = 0.0
        for start, end in lines:
            seen: set[int] = set()
            for cell in _line_cells((start, end)):
                if any(meets(start, end, box.grown(gap)) for box in self._boxes.get(cell, ())):
                    return math.inf
                for number, a, b, weight in self._lines.get(cell, ()):
                    if number not in seen:
                        seen.add(number)
                        if not (extension and weight == EXTENSION):
                            total += weight * _crossing(start, end, a, b)
        return total


def pieces(stroke: Line | Arc | Hatch) -> Iterator[Piece]:
    """Yield a stroke as straight pieces; a hatched area by its boundary."""
    if isinstance(stroke, Line):
        yield stroke.start, stroke.end
    elif isinstance(stroke, Arc):
        steps = max(2, math.ceil((stroke.end - stroke.start) / _CHORD_DEG))
        angles = (math.radians(stroke.start + (stroke.end - stroke.start) * i / steps) for i in range(steps + 1))
        x, y = stroke.centre
        yield from pairwise((x + stroke.radius * math.cos(a), y + stroke.radius * math.sin(a)) for a in angles)
    else:
        for loop in stroke.loops:
            for part in loop:
                yield from pieces(part)


def meets(start: Point, end: Point, box: Box) -> bool:
    """Tell whether a straight line meets a box (clipping by its four sides)."""
    low, high = 0.0, 1.0
    for a, b, least, most in ((start[0], end[0], box.left, box.right), (start[1], end[1], box.bottom, box.top)):
        step = b - a
        if abs(step) < 1e-12:
            if not least < a < most:
                return False
            continue
        first, last = (least - a) / step, (most - a) / step
        low, high = max(low, min(first, last)), min(high, max(first, last))
    return low < high


def _crossing(a: Point, b: Point, c: Point, d: Point) -> float:
    """Return 1 where two lines cross, more where they run along one another, 0 where they stay apart."""
    one, two = _side(a, b, c), _side(a, b, d)
    three, four = _side(c, d, a), _side(c, d, b)
    flat = 1e-6
    if abs(one) < flat and abs(two) < flat:
        return _ALONG if _overlap(a, b, c, d) > 1.0 else 0.0
    return 1.0 if one * two < 0 and three * four < 0 else 0.0


def _side(a: Point, b: Point, c: Point) -> float:
    return (b[0] - a[0]) * (c[1] - a[1]) - (b[1] - a[1]) * (c[0] - a[0])


def _overlap(a: Point, b: Point, c: Point, d: Point) -> float:
    """Return how far two lines in one line run along one another, mm."""
    axis = 0 if abs(b[0] - a[0]) >= abs(b[1] - a[1]) else 1
    return min(max(a[axis], b[axis]), max(c[axis], d[axis])) - max(min(a[axis], b[axis]), min(c[axis], d[axis]))


def _cells(box: Box) -> Iterator[tuple[int, int]]:
    for i in range(int(box.left // _CELL), int(box.right // _CELL) + 1):
        for j in range(int(box.bottom // _CELL), int(box.top // _CELL) + 1):
            yield i, j


def _line_cells(piece: Piece) -> Iterator[tuple[int, int]]:
    """Yield the cells of a line, long slanted ones part by part."""
    (x, y), (u, v) = piece
    parts = max(1, math.ceil(min(abs(u - x), abs(v - y)) / _CELL))
    seen = set()
    for i in range(parts):
        a = (x + (u - x) * i / parts, y + (v - y) * i / parts)
        b = (x + (u - x) * (i + 1) / parts, y + (v - y) * (i + 1) / parts)
        for cell in _cells(Box.around((a, b))):
            if cell not in seen:
                seen.add(cell)
                yield cell
