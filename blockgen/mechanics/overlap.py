"""Common volume of two turned bodies on one axis, such as a screw in its tap drill hole."""

from __future__ import annotations

import math
from collections.abc import Sequence

Piece = tuple[float, float, float, float]
"""Start along the axis, radius there, end, radius there; mm."""


def overlap_volume(body: Sequence[Piece], hole: Sequence[Piece]) -> float:
    """Return the volume of a turned body that lies outside a turned hole on the same axis, along the hole, mm3.

    Args:
        body: Pieces of the body.
        hole: Pieces of the hole; where it has none, nothing is counted.

    Source: frustum of a cone, pi h / 3 (a^2 + a b + b^2).
    """
    total = 0.0
    for start, r0, end, r1 in body:
        for low, h0, high, h1 in hole:
            a, b = max(start, low), min(end, high)
            if b > a:
                ends = [_at(x, (start, r0, end, r1)) for x in (a, b)], [_at(x, (low, h0, high, h1)) for x in (a, b)]
                total += _ring(b - a, (ends[0][0], ends[0][1]), (ends[1][0], ends[1][1]))
    return total


def _at(x: float, piece: Piece) -> float:
    """Return the radius of a piece at x, mm."""
    start, r0, end, r1 = piece
    return r0 + (r1 - r0) * (x - start) / (end - start)


def _ring(length: float, outer: tuple[float, float], inner: tuple[float, float]) -> float:
    """Return the volume between two cones where the outer one is the larger, mm3."""
    first, last = outer[0] - inner[0], outer[1] - inner[1]
    if first <= 0.0 and last <= 0.0:
        return 0.0
    if first * last < 0.0:
        share = first / (first - last)
        middle = outer[0] + share * (outer[1] - outer[0])
        if first > 0:
            return _ring(length * share, (outer[0], middle), (inner[0], middle))
        return _ring(length * (1 - share), (middle, outer[1]), (middle, inner[1]))
    return _frustum(length, *outer) - _frustum(length, *inner)


def _frustum(length: float, first: float, last: float) -> float:
    return math.pi * length / 3 * (first**2 + first * last + last**2)
