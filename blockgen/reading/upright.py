"""Which way is up on a flange: from its sides, its bolt pattern, and what sticks out on one side."""

from __future__ import annotations

import math
from collections.abc import Sequence

from blockgen.reading.along import Along, AxisLine
from blockgen.reading.holes import HolePattern
from blockgen.reading.outline import Side
from blockgen.reading.vectors import Vector, are_square, cross, dot, minus, plus, square_to, times, unit

_LOPSIDED = 0.5  # what sticks out less to one side says nothing, mm
_WAYS = 16


def up_of(view: Along, line: AxisLine, origin: Vector, holes: HolePattern, sides: Sequence[Side]) -> tuple[Vector, str]:
    """Return up on a flange, and in words what it was taken from.

    Up is one of the directions about which flange and holes are symmetric: square to a straight side, else between
    two holes. Of these it is the one towards what sticks out on one side, such as a connector; where nothing does, the
    one nearest to the file's own z, then y, then x is taken. The
    choice between two holes is common practice, no source: no hole stands straight up.

    Args:
        view: The shape along the axis.
        line: What is turned about the axis.
        origin: Centre of the mounting face, mm.
        holes: The screw holes.
        sides: Straight sides of the flange.
    """
    axis = view.direction
    ways, told = _ways(origin, axis, holes, sides)
    lean = _lean(view, line, origin, ways[0])
    size = math.sqrt(dot(lean, lean))
    if size > _LOPSIDED:
        return max(ways, key=lambda w: round(dot(w, lean), 3)), f"up: {told}, towards what sticks out on one side"
    return max(ways, key=lambda w: tuple(round(c, 4) for c in w[::-1])), f"up: {told}; nothing sticks out on one side"


def _ways(origin: Vector, axis: Vector, holes: HolePattern, sides: Sequence[Side]) -> tuple[list[Vector], str]:
    straight = _paired(sides)
    arms = [unit(square_to(minus(b.foot, origin), axis)) for b in holes.bores]
    if holes.form == "rectangle":
        return _of_rectangle(arms, axis), "square to a row of holes"
    if straight:
        return straight, "square to a straight side"
    if holes.form == "circle":
        return _between(arms, axis), "between two holes"
    return [arms[0], times(arms[0], -1.0)], "towards a hole"


def _paired(sides: Sequence[Side]) -> list[Vector]:
    """Return the outward directions of sides that have one opposite: one pair, and the pair square to it."""
    outs = [s.out for s in sides if any(dot(s.out, o.out) < -1 + 1e-5 for o in sides)]
    if not outs:
        return []
    first = max(outs, key=lambda w: tuple(round(c, 4) for c in w[::-1]))
    return [o for o in outs if o == first or dot(o, first) < -1 + 1e-5 or are_square(o, first)]


def _of_rectangle(arms: Sequence[Vector], axis: Vector) -> list[Vector]:
    """Return the directions square to the longer rows of a rectangle of holes, so that these lie across."""
    near = max(arms[1:], key=lambda a: dot(a, arms[0]))
    across = unit(plus(arms[0], near))  # between the two nearest holes: along the greater spacing
    up = unit(cross(axis, across))
    return [up, times(up, -1.0)]


def _between(arms: Sequence[Vector], axis: Vector) -> list[Vector]:
    """Return the directions half way between neighbouring holes."""
    count = len(arms)
    half = math.pi / count
    return [_turned(arms[0], axis, (2 * i + 1) * half) for i in range(count)]


def _turned(arm: Vector, axis: Vector, angle: float) -> Vector:
    return unit(plus(times(arm, math.cos(angle)), cross(axis, arm), math.sin(angle)))


def _lean(view: Along, line: AxisLine, origin: Vector, start: Vector) -> Vector:
    """Return how far the part sticks out to one side, as a vector square to the axis, mm.

    It is the first harmonic of how far the corners reach in all directions; what is turned about the axis has few
    corners, so that its radius counts in all directions.
    """
    round_ = max((b.radius for b in line.bands if not b.hollow and b.sweep > 200.0), default=0.0)
    right, ahead = start, cross(view.direction, start)
    spread = [(dot(a, right), dot(a, ahead)) for a in (minus(c, origin) for c in view.corners)]
    lean = (0.0, 0.0, 0.0)
    for i in range(_WAYS):
        x, y = math.cos(2 * math.pi * i / _WAYS), math.sin(2 * math.pi * i / _WAYS)
        reach = max(max((x * u + y * v for u, v in spread), default=0.0), round_)
        lean = plus(plus(lean, right, reach * x * 2 / _WAYS), ahead, reach * y * 2 / _WAYS)
    return lean
