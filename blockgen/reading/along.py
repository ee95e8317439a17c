"""The faces of a shape as seen along one direction: turned bands about common axes, flat levels square to it."""

from __future__ import annotations

import math
from collections import defaultdict
from collections.abc import Iterable, Iterator, Sequence
from dataclasses import dataclass, replace
from functools import cached_property

from blockgen.reading.faces import PlaneFace, Surfaces, TurnedFace, point_at
from blockgen.reading.recognise import Kind
from blockgen.reading.vectors import (
    Vector,
    any_square_to,
    are_parallel,
    cross,
    dot,
    length,
    minus,
    square_to,
    times,
    unit,
)

SAME_AXIS = 0.02
"""Distance below which two axes count as one, mm; files of some makers are rounded to 0.01 mm."""
SAME_LEVEL = 0.01
"""Difference of height below which two flat faces are one level, mm."""

_CELL = 0.1
_MOST_AXES = 10
_LEAST_SHARE = 0.03  # of the area about the first axis; without it every small hole would be one


@dataclass(frozen=True, slots=True)
class Band:
    """A turned face, or several that continue one another about the axis.

    Args:
        kind: cylinder, cone or torus.
        low: Least height along the direction, mm.
        high: Greatest height, mm.
        low_radius: Radius at ``low``, mm.
        high_radius: Radius at ``high``, mm.
        hollow: True where the material is outside.
        sweep: Angle covered, deg, 360 at most.
        faces: The faces.
    """

    kind: Kind
    low: float
    high: float
    low_radius: float
    high_radius: float
    hollow: bool
    sweep: float
    faces: tuple[TurnedFace, ...]

    @property
    def radius(self) -> float:
        """Greatest radius, mm."""
        return max(self.low_radius, self.high_radius)

    @property
    def height(self) -> float:
        """Length along the direction, mm."""
        return self.high - self.low


@dataclass(frozen=True, slots=True)
class AxisLine:
    """All bands about one axis; ``foot`` is where it meets the plane through the origin, mm."""

    foot: Vector
    bands: tuple[Band, ...]


@dataclass(frozen=True, slots=True)
class Level:
    """Flat faces of one height that look one way.

    Args:
        height: Along the direction, mm.
        up: True where they look along the direction, False where they look back.
        faces: The faces.
    """

    height: float
    up: bool
    faces: tuple[PlaneFace, ...]


@dataclass(frozen=True)
class Along:
    """A shape seen along a direction; heights grow towards the one who looks."""

    direction: Vector
    lines: tuple[AxisLine, ...]
    levels: tuple[Level, ...]
    sides: tuple[PlaneFace, ...]
    corners: tuple[Vector, ...]

    @cached_property
    def _by_height(self) -> dict[int, list[Level]]:
        found = defaultdict(list)
        for level in self.levels:
            found[round(level.height / _CELL)].append(level)
        return found

    @cached_property
    def span(self) -> tuple[float, float]:
        """Least and greatest height of a corner, mm."""
        heights = [dot(c, self.direction) for c in self.corners]
        return (min(heights), max(heights)) if heights else (0.0, 0.0)

    def levels_at(self, height: float, within: float = 0.05) -> Iterator[Level]:
        """Yield the levels at a height."""
        cell = round(height / _CELL)
        for level in (one for c in (cell - 1, cell, cell + 1) for one in self._by_height.get(c, ())):
            if abs(level.height - height) <= within:
                yield level

    def line_at(self, point: Vector) -> AxisLine | None:
        """Return the axis that goes through a point."""
        foot = square_to(point, self.direction)
        near = min(self.lines, key=lambda line: length(minus(line.foot, foot)), default=None)
        return near if near is not None and length(minus(near.foot, foot)) <= SAME_AXIS else None


def along(surfaces: Surfaces, direction: Vector) -> Along:
    """Return a shape as it is seen along a unit direction."""
    turned = [f for f in surfaces.turned if are_parallel(f.direction, direction)]
    tilt = [(p, dot(p.normal, direction)) for p in surfaces.planes]
    square = [p for p, cosine in tilt if are_parallel(p.normal, direction) and abs(cosine) > 0.5]
    sides = tuple(p for p, cosine in tilt if abs(cosine) < 1e-3)
    return Along(direction, _lines(turned, direction), _levels(square, direction), sides, surfaces.corners)


def likely_axes(surfaces: Surfaces) -> tuple[tuple[Vector, Vector], ...]:
    """Return direction and a point of the axes about which most is turned, the greatest area first."""
    areas: dict[tuple[int, ...], float] = defaultdict(float)
    first: dict[tuple[int, ...], TurnedFace] = {}
    for face in surfaces.turned:
        key = _axis_key(face)
        areas[key] += face.area
        if key not in first or face.area > first[key].area:
            first[key] = face
    ranked = sorted(areas, key=lambda key: (-round(areas[key], 3), key))
    best = [key for key in ranked[:_MOST_AXES] if areas[key] >= _LEAST_SHARE * areas[ranked[0]]]
    return tuple((unit(first[key].direction), point_at(first[key], 0.0)) for key in best)


def _axis_key(face: TurnedFace) -> tuple[int, ...]:
    direction = _upwards(face.direction)
    foot = square_to(face.point, unit(direction))
    return (*(round(c * 1000) for c in direction), *(round(c / _CELL) for c in foot))


def _upwards(direction: Vector) -> Vector:
    """Return a direction or its opposite, so that both have one name."""
    greatest = max(direction, key=lambda c: (round(abs(c), 6), c))
    return times(direction, -1.0) if greatest < 0 else direction


def _lines(turned: Sequence[TurnedFace], direction: Vector) -> tuple[AxisLine, ...]:
    right = any_square_to(direction)
    ahead = cross(direction, right)
    cells: dict[tuple[int, int], list[tuple[Vector, list[TurnedFace]]]] = defaultdict(list)
    for face in sorted(turned, key=lambda f: -f.area):
        foot = square_to(point_at(face, (face.low + face.high) / 2), direction)
        x, y = round(dot(foot, right) / _CELL), round(dot(foot, ahead) / _CELL)
        near = [entry for i in (-1, 0, 1) for j in (-1, 0, 1) for entry in cells.get((x + i, y + j), ())]
        same = next((faces for other, faces in near if length(minus(other, foot)) <= SAME_AXIS), None)
        if same is None:
            cells[x, y].append((foot, [face]))
        else:
            same.append(face)
    found = [entry for entries in cells.values() for entry in entries]
    return tuple(AxisLine(foot, _bands(faces, direction)) for foot, faces in found)


def _bands(faces: Iterable[TurnedFace], direction: Vector) -> tuple[Band, ...]:
    """Return the bands of one axis from below; faces that differ in nothing but their place about it are one."""
    merged: dict[tuple[object, ...], Band] = {}
    for face in faces:
        band = _band(face, direction)
        ends = (band.low, band.high, band.low_radius, band.high_radius)
        key = (band.kind, band.hollow, *(round(e / 0.02) for e in ends))
        known = merged.get(key)
        if known is not None:
            band = replace(known, sweep=min(known.sweep + band.sweep, 360.0), faces=(*known.faces, face))
        merged[key] = band
    return tuple(sorted(merged.values(), key=lambda b: (b.low, b.high, b.radius)))


def _band(face: TurnedFace, direction: Vector) -> Band:
    same_way = dot(face.direction, direction) > 0
    base, sign = dot(face.point, direction), 1.0 if same_way else -1.0
    ends = [(base + sign * face.low, face.low_radius), (base + sign * face.high, face.high_radius)]
    (low, low_radius), (high, high_radius) = ends if same_way else ends[::-1]
    return Band(face.kind, low, high, low_radius, high_radius, face.hollow, min(face.sweep, 360.0), (face,))


def _levels(planes: Sequence[PlaneFace], direction: Vector) -> tuple[Level, ...]:
    found: list[Level] = []
    for up in (False, True):
        one_way = ((_height(p, direction), p) for p in planes if (dot(p.normal, direction) > 0) == up)
        gathered: list[list[tuple[float, PlaneFace]]] = []
        for height, plane in sorted(one_way, key=lambda entry: entry[0]):
            if gathered and height - gathered[-1][0][0] <= SAME_LEVEL:
                gathered[-1].append((height, plane))
            else:
                gathered.append([(height, plane)])
        found += [Level(math.fsum(h for h, _ in g) / len(g), up, tuple(p for _, p in g)) for g in gathered]
    return tuple(sorted(found, key=lambda level: (level.height, level.up)))


def _height(plane: PlaneFace, direction: Vector) -> float:
    return math.copysign(1.0, dot(plane.normal, direction)) * plane.offset
