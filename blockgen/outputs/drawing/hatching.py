"""Hatched areas: the sense in which their loops run, and the parallel lines that fill them."""

from __future__ import annotations

import math
from collections.abc import Iterable, Iterator
from dataclasses import dataclass
from itertools import pairwise

from blockgen.outputs.drawing.lettering import direction
from blockgen.outputs.drawing.strokes import Arc, Hatch, Line, Point

OPEN = 0.01
"""Gap in mm above which a loop counts as open."""

SHORT = 1e-6
"""Length in mm below which a hatch line is left out."""


@dataclass(frozen=True, slots=True)
class Passed:
    """A piece of a loop as it is passed.

    Args:
        piece: The line or arc.
        start: Where the loop enters it.
        end: Where the loop leaves it: the entry of the next piece, to the last digit.
        forward: False where the piece is passed from its end to its start.
    """

    piece: Line | Arc
    start: Point
    end: Point
    forward: bool


def on_arc(arc: Arc, angle: float) -> Point:
    """Return the point of an arc's circle at an angle in deg."""
    cosine, sine = direction(angle)
    return arc.centre[0] + arc.radius * cosine, arc.centre[1] + arc.radius * sine


def ends(piece: Line | Arc) -> tuple[Point, Point]:
    """Return start and end of a piece."""
    if isinstance(piece, Line):
        return piece.start, piece.end
    return on_arc(piece, piece.start), on_arc(piece, piece.end)


def passed(loop: tuple[Line | Arc, ...]) -> tuple[Passed, ...]:
    """Return the pieces of a loop with the sense in which each is passed.

    Raises:
        ValueError: The loop is empty or has a gap of more than 0.01 mm.
    """
    if not loop:
        raise ValueError("a hatched area has a loop without pieces; each loop needs one piece at least")
    ways = tuple(_ways(loop))
    entries = [_ends(piece, forward)[0] for piece, forward in zip(loop, ways, strict=True)]
    exits = [_ends(piece, forward)[1] for piece, forward in zip(loop, ways, strict=True)]
    following = entries[1:] + entries[:1]
    for out, into in zip(exits, following, strict=True):
        if math.dist(out, into) > OPEN:
            raise ValueError(f"a hatched area has an open loop: {out} does not meet {into}; close it")
    return tuple(Passed(*parts) for parts in zip(loop, entries, following, ways, strict=True))


def _ends(piece: Line | Arc, forward: bool) -> tuple[Point, Point]:
    start, end = ends(piece)
    return (start, end) if forward else (end, start)


def _ways(loop: tuple[Line | Arc, ...]) -> Iterator[bool]:
    """Yield for each piece whether it is passed forwards: the way on which the ends lie nearest."""
    start, end = ends(loop[0])
    forward = True
    if len(loop) > 1:
        following = ends(loop[1])
        forward = _nearest(end, following) <= _nearest(start, following)
    yield forward
    here = end if forward else start
    for piece in loop[1:]:
        start, end = ends(piece)
        forward = math.dist(here, start) <= math.dist(here, end)
        yield forward
        here = end if forward else start


def _nearest(point: Point, others: Iterable[Point]) -> float:
    return min(math.dist(point, other) for other in others)


def hatch_lines(hatch: Hatch) -> tuple[Line, ...]:
    """Return the lines that fill an area, in order, all in one sense.

    They are counted from the origin of the sheet, so that areas of one part that lie apart are hatched alike
    (ISO 128-3, from memory). What lies inside an even number of loops stays free.

    Raises:
        ValueError: A loop is open, or the spacing is not positive.
    """
    if not hatch.spacing > 0:
        raise ValueError(f"the spacing of hatch lines is {hatch.spacing} mm; it must be positive")
    turn = direction(hatch.angle)
    edges = [edge for loop in hatch.loops for part in passed(loop) for edge in _edges(part, hatch.angle, turn)]
    if not edges:
        return ()
    first = math.ceil(min(edge.low for edge in edges) / hatch.spacing)
    last = math.floor(max(edge.high for edge in edges) / hatch.spacing)
    return tuple(line for step in range(first, last + 1) for line in _row(step * hatch.spacing, edges, turn))


@dataclass(frozen=True, slots=True)
class _Edge:
    """A piece of a loop that only rises or only falls, in a frame whose x runs along the hatch lines.

    ``bulge`` is 0 for a line, else +1 or -1: the side of the centre on which the arc lies.
    """

    start: Point
    end: Point
    bulge: int = 0
    centre: Point = (0.0, 0.0)
    radius: float = 0.0

    @property
    def low(self) -> float:
        return min(self.start[1], self.end[1])

    @property
    def high(self) -> float:
        return max(self.start[1], self.end[1])

    def across(self, level: float) -> float:
        """Return x where the edge crosses a level between its ends."""
        if self.bulge:
            return self.centre[0] + self.bulge * math.sqrt(max(self.radius**2 - (level - self.centre[1]) ** 2, 0.0))
        (x, y), (u, v) = self.start, self.end
        return x + (u - x) * (level - y) / (v - y)


def _row(level: float, edges: list[_Edge], turn: Point) -> Iterator[Line]:
    # Lower ends count and upper ones do not: a line through a corner is then crossed once or twice as it must be.
    crossings = sorted(edge.across(level) for edge in edges if edge.low <= level < edge.high)
    for left, right in zip(crossings[::2], crossings[1::2], strict=True):
        if right - left > SHORT:
            yield Line(_turned((left, level), turn), _turned((right, level), turn))


def _turned(point: Point, turn: Point) -> Point:
    (x, y), (cosine, sine) = point, turn
    return x * cosine - y * sine, x * sine + y * cosine


def _edges(part: Passed, angle: float, turn: Point) -> Iterator[_Edge]:
    back = (turn[0], -turn[1])
    start, end = _turned(part.start, back), _turned(part.end, back)
    if isinstance(part.piece, Line):
        yield _Edge(start, end)
        return
    arc = part.piece
    centre = _turned(arc.centre, back)
    sweep = _sweep(arc)
    begin = (arc.start if part.forward else arc.start + sweep) - angle
    angles = _monotone(begin, sweep if part.forward else -sweep)
    points = [start, *(_on_circle(centre, arc.radius, a) for a in angles[1:-1]), end]
    for (a, b), (one, other) in zip(pairwise(angles), pairwise(points), strict=True):
        bulge = 1 if direction((a + b) / 2)[0] > 0 else -1
        yield _Edge(one, other, bulge, centre, arc.radius)


def _sweep(arc: Arc) -> float:
    return 360.0 if arc.end - arc.start == 360 else (arc.end - arc.start) % 360


def _monotone(begin: float, sweep: float) -> list[float]:
    """Return begin, the angles in deg of the highest and lowest points on the way, and the end."""
    end = begin + sweep
    low, high = sorted((begin, end))
    turns = [90.0 + 180 * k for k in range(math.floor((low - 90) / 180), math.ceil((high - 90) / 180) + 1)]
    return [begin, *sorted((a for a in turns if low < a < high), reverse=sweep < 0), end]


def _on_circle(centre: Point, radius: float, angle: float) -> Point:
    cosine, sine = direction(angle)
    return centre[0] + radius * cosine, centre[1] + radius * sine
