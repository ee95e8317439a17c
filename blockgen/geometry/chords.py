"""Chords for plane curves that are neither lines nor arcs, found again alike where two curves run over one another."""

from __future__ import annotations

import math
from collections.abc import Callable, Sequence
from itertools import pairwise

from blockgen.geometry.carriers import SAME_PLACE
from blockgen.geometry.curves import Place

CHORD_ERROR = 0.004
"""Distance at which a chord is halved, mm; what stays is less than the 0.005 mm that chains promise."""

Path = tuple[Callable[[float], Place], float, float]
"""A curve: its point at a parameter, first and last parameter."""

_SAMPLES = 32
_ON = 1e-4
_ROUNDS = 60


class Vertices:
    """Points of a view, each found again in place of any other that lies as good as there."""

    def __init__(self) -> None:
        """Begin without any point."""
        self._known: list[Place] = []

    def same(self, point: Place) -> Place:
        """Return the known point at a place; an unknown one becomes known."""
        for known in self._known:
            if abs(known[0] - point[0]) < _ON and abs(known[1] - point[1]) < _ON:
                return known
        self._known.append(point)
        return point


def root(value: Callable[[float], float], low: float, high: float) -> float:
    """Return where a value goes from negative to positive, or the other way; the nearer end where it does neither."""
    at_low, at_high = value(low), value(high)
    if at_low * at_high >= 0:
        return low if abs(at_low) < abs(at_high) else high
    for _ in range(_ROUNDS):
        middle = (low + high) / 2
        at_middle = value(middle)
        if at_middle * at_low > 0:
            low = middle
        else:
            high = middle
    return (low + high) / 2


def folds(at: Callable[[float], Place], first: float, last: float) -> list[float]:
    """Return the ends and all parameters between at which a curve turns back, to the side or up and down."""
    step = (last - first) / _SAMPLES
    small = step * 1e-3
    found = [first, last]
    for axis in (0, 1):

        def slope(t: float, axis: int = axis) -> float:
            return at(min(t + small, last))[axis] - at(max(t - small, first))[axis]

        grid = [first + i * step for i in range(_SAMPLES)] + [last]
        slopes = [slope(t) for t in grid]
        for (a, one), (b, other) in pairwise(zip(grid, slopes, strict=True)):
            if one * other < 0:
                found.append(root(slope, a, b))
            elif one == 0 and first < a:
                found.append(a)
    return _apart(sorted(found), at)


def _apart(parameters: list[float], at: Callable[[float], Place]) -> list[float]:
    """Leave out what lies at the place of its neighbour; the ends stay."""
    kept = [parameters[0]]
    kept += [t for t in parameters[1:-1] if min(math.dist(at(t), at(e)) for e in (kept[-1], parameters[-1])) > _ON]
    return [*kept, parameters[-1]]


def chord_points(paths: Sequence[Path]) -> list[list[tuple[float, Place]]]:
    """Return parameters and points of chains that follow the curves within 0.005 mm.

    A curve is cut where it turns back and where another one ends on it; between cuts each chord is halved where its
    perpendicular through the middle meets the curve, whatever the parameter does. So two curves that cover one another
    get equal points wherever they do.
    """
    cuts = [folds(*path) for path in paths]
    ends = [at(t) for (at, _, _), own in zip(paths, cuts, strict=True) for t in own]
    chains = []
    for (at, _, _), own in zip(paths, cuts, strict=True):
        found = [t for pair in pairwise(own) for point in ends for t in _passes(at, *pair, point)]
        parameters = _apart(sorted({*own, *found}), at)
        inner = [t for a, b in pairwise(parameters) for t in (a, *_halvings(at, a, b))]
        chains.append([(t, at(t)) for t in (*inner, parameters[-1])])
    return chains


def _passes(at: Callable[[float], Place], low: float, high: float, point: Place) -> list[float]:
    """Return the parameter at which a stretch without folds passes through a point, if it does."""
    start, end = at(low), at(high)
    if min(math.dist(start, point), math.dist(end, point)) < _ON:
        return []
    x, y = end[0] - start[0], end[1] - start[1]
    aim = point[0] * x + point[1] * y
    found = root(lambda t: at(t)[0] * x + at(t)[1] * y - aim, low, high)
    return [found] if math.dist(at(found), point) < _ON else []


def _halvings(at: Callable[[float], Place], low: float, high: float) -> list[float]:
    """Return the parameters between two ends at which the curve is cut into chords."""
    start, end = at(low), at(high)
    length = math.dist(start, end)
    if length < SAME_PLACE:
        return []
    x, y = (end[0] - start[0]) / length, (end[1] - start[1]) / length
    if max(_aside(at(low + (high - low) * i / 8), start, (x, y)) for i in range(1, 8)) < CHORD_ERROR:
        return []
    aim = (start[0] + end[0]) / 2 * x + (start[1] + end[1]) / 2 * y
    middle = root(lambda t: at(t)[0] * x + at(t)[1] * y - aim, low, high)
    return [*_halvings(at, low, middle), middle, *_halvings(at, middle, high)]


def _aside(point: Place, start: Place, direction: Place) -> float:
    return abs((point[1] - start[1]) * direction[0] - (point[0] - start[0]) * direction[1])
