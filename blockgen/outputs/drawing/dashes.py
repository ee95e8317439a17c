"""Dashes along a chain of short lines, each too short to hold a dash of its own."""

from __future__ import annotations

import math
from collections.abc import Iterator, Sequence
from itertools import cycle, pairwise

from blockgen.outputs.drawing.strokes import Point


def dashed(points: Sequence[Point], pattern: Sequence[float]) -> Iterator[tuple[Point, Point]]:
    """Yield the pieces of a chain that its dashes cover.

    Args:
        points: Points of the chain on the sheet, mm.
        pattern: Dash, gap, dash, gap, in mm.
    """
    lengths = cycle(pattern)
    left, drawn = next(lengths), True
    for start, end in pairwise(points):
        place, far = 0.0, math.dist(start, end)
        while place < far:
            step = min(left, far - place)
            if drawn:
                yield _between(start, end, place / far), _between(start, end, (place + step) / far)
            place, left = place + step, left - step
            if left <= 1e-9:
                left, drawn = next(lengths), not drawn


def _between(a: Point, b: Point, share: float) -> Point:
    return (a[0] + share * (b[0] - a[0]), a[1] + share * (b[1] - a[1]))
