"""A triangulated shape cut by a plane: closed outlines."""

from __future__ import annotations

from typing import Any

import numpy as np

from blockgen.geometry.facets import Facets

Array = np.ndarray[tuple[int, ...], np.dtype[Any]]


def outlines(shape: Facets, axis: int, at: float) -> list[Array]:
    """Return the closed outlines of a cut across an axis, each as points (n, 3) without the first one repeated.

    A corner on the plane counts as below it, so that every outline closes.

    Args:
        shape: Watertight triangles.
        axis: 0, 1 or 2 for a plane across x, y or z.
        at: Where it cuts the axis, mm.
    """
    above = shape.points[:, axis] > at
    follower: dict[tuple[int, int], tuple[int, int]] = {}
    for corners in shape.triangles[_is_cut(above[shape.triangles])].tolist():
        start, end = _crossings(corners, above)
        follower[start] = end
    return _loops(follower, shape.points, axis, at)


def _is_cut(above: Array) -> Array:
    count = above.sum(axis=1)
    cut: Array = (count > 0) & (count < 3)
    return cut


def _crossings(corners: list[int], above: Array) -> tuple[tuple[int, int], tuple[int, int]]:
    """Return the two sides that are cut: the one that goes down first, as the outline runs."""
    sides = [(corners[i], corners[(i + 1) % 3]) for i in range(3)]
    down = next((a, b) for a, b in sides if above[a] and not above[b])
    up = next((a, b) for a, b in sides if above[b] and not above[a])
    return _key(*down), _key(*up)


def _key(a: int, b: int) -> tuple[int, int]:
    return (a, b) if a < b else (b, a)


def _loops(follower: dict[tuple[int, int], tuple[int, int]], points: Array, axis: int, at: float) -> list[Array]:
    found = []
    while follower:
        start = min(follower)
        loop, side = [], start
        while side in follower:
            loop.append(_crossing(side, points, axis, at))
            side = follower.pop(side)
        found.append(np.array(loop))
    return found


def _crossing(side: tuple[int, int], points: Array, axis: int, at: float) -> Array:
    a, b = points[side[0]], points[side[1]]
    share = (at - a[axis]) / (b[axis] - a[axis])
    crossing: Array = a + share * (b - a)
    return crossing
