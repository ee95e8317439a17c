"""The flange: its outline, its thickness, and the body behind it."""

from __future__ import annotations

import math
from collections.abc import Iterable, Iterator, Sequence
from dataclasses import dataclass
from itertools import combinations
from typing import Literal

from blockgen.geometry.kernel import area_of
from blockgen.reading.along import Along, AxisLine, Band
from blockgen.reading.faces import PlaneFace, boundary
from blockgen.reading.holes import HolePattern
from blockgen.reading.vectors import Vector, cross, dot, length, minus, square_to, times

Shape = Literal["square", "round", "rectangle"]

_EDGE = 3.0  # chamfer or fillet at the flange's edge, mm
_TOUCH = 0.05
_SAME_SIDE = 0.1  # sides that differ by less make a square, mm
_MOSTLY_ROUND = 200.0  # sweep from which an outline is round, deg
_THICKEST = 80.0
_LONG = 0.3  # of the length behind the mounting face


@dataclass(frozen=True, slots=True)
class Side:
    """A straight side of the flange: its outward direction, its distance from the axis, how many faces."""

    out: Vector
    distance: float
    faces: int


@dataclass(frozen=True, slots=True)
class Outline:
    """The outline of a flange, as ``across`` and ``upwards`` see it.

    Args:
        shape: square, round or rectangle.
        width: Across, or the diameter, mm.
        height: Upwards, or the diameter, mm.
        faces: Number of faces that it was read from.
        sweep: What the round part covers, deg; 0 without one.
        rule: How it was found, in words.
    """

    shape: Shape
    width: float
    height: float
    faces: int
    sweep: float
    rule: str


def sides_of(view: Along, foot: Vector, height: float, beyond: float) -> tuple[Side, ...]:
    """Return the straight sides of a flange, the furthest in each direction.

    Args:
        view: The shape along the axis.
        foot: A point of the axis, mm.
        height: Height of the mounting face, mm.
        beyond: Least distance from the axis, mm.
    """
    found: list[Side] = []
    for plane in view.sides:
        distance = plane.offset - dot(plane.normal, foot)
        if distance > beyond and _touches_edge(plane, view.direction, height):
            found.append(Side(plane.normal, distance, 1))
    return _furthest(found)


def _touches_edge(plane: PlaneFace, direction: Vector, height: float) -> bool:
    heights = [dot(p, direction) for p in boundary([plane.face])]
    return height - _EDGE <= max(heights) <= height + _TOUCH and min(heights) < height - 1.0


def _furthest(sides: Iterable[Side]) -> tuple[Side, ...]:
    kept: list[list[Side]] = []
    for side in sorted(sides, key=lambda s: -s.distance):
        same = next((g for g in kept if dot(g[0].out, side.out) > 1 - 1e-6), None)
        if same is None:
            kept.append([side])
        elif same[0].distance - side.distance < _TOUCH:
            same.append(side)
    return tuple(Side(g[0].out, g[0].distance, len(g)) for g in kept)


def rim_of(line: AxisLine, height: float, beyond: float) -> tuple[Band, ...]:
    """Return the turned outside of a flange, the bands of its greatest radius."""
    touching = [
        b for b in line.bands
        if not b.hollow and b.kind == "cylinder" and b.radius > beyond
        and height - _EDGE <= b.high <= height + _TOUCH and b.low < height - 1.0
    ]  # fmt: skip
    most = max((b.radius for b in touching), default=0.0)
    return tuple(b for b in touching if most - b.radius < 0.01)


def outline_of(rim: Sequence[Band], sides: Sequence[Side], up: Vector, axis: Vector) -> Outline | None:
    """Return the outline from its turned and its straight sides; None where they do not close.

    Args:
        rim: Turned outside.
        sides: Straight sides.
        up: Up on the flange.
        axis: Out of the flange.
    """
    sweep = min(math.fsum(b.sweep for b in rim), 360.0)
    if sweep >= _MOSTLY_ROUND:
        diameter = 2 * rim[0].radius
        return Outline("round", diameter, diameter, sum(len(b.faces) for b in rim), sweep, "turned outside")
    right = cross(axis, up)
    spans = [_span(sides, of) for of in (right, up)]
    if None in spans:
        return None
    (width, wide), (tall, high) = spans  # type: ignore[misc]
    shape: Shape = "square" if abs(width - tall) < _SAME_SIDE else "rectangle"
    return Outline(shape, width, tall, wide + high, sweep, "pairs of straight sides")


def _span(sides: Sequence[Side], out: Vector) -> tuple[float, int] | None:
    """Return the distance between the two sides that look out and back, and their number."""
    ends = [[s for s in sides if dot(s.out, way) > 1 - 1e-5] for way in (out, times(out, -1.0))]
    if not all(ends):
        return None
    return sum(max(s.distance for s in end) for end in ends), sum(s.faces for end in ends for s in end)


def bounds_of(faces: Sequence[PlaneFace], foot: Vector, up: Vector, axis: Vector) -> Outline:
    """Return the extent of the mounting face, where sides say nothing."""
    right = cross(axis, up)
    arms = [minus(p, foot) for p in boundary((f.face for f in faces), 8)]
    width, tall = (2 * max(abs(dot(a, way)) for a in arms) for way in (right, up))
    reach = max(length(square_to(a, axis)) for a in arms)
    if abs(width - tall) < _SAME_SIDE and abs(2 * reach - width) < _SAME_SIDE:
        return Outline("round", 2 * reach, 2 * reach, len(faces), 0.0, "extent of the mounting face")
    shape: Shape = "square" if abs(width - tall) < _SAME_SIDE else "rectangle"
    return Outline(shape, width, tall, len(faces), 0.0, "extent of the mounting face")


@dataclass(frozen=True, slots=True)
class Thickness:
    """Thickness of the flange under the screw heads, mm, and how it was found."""

    value: float
    at_holes: bool
    faces: int
    residual: float
    rule: str


def thickness_of(view: Along, foot: Vector, height: float, holes: HolePattern, reach: float) -> Thickness | None:
    """Return the thickness of a flange.

    Args:
        view: The shape along the axis.
        foot: A point of the axis, mm.
        height: Height of the mounting face, mm.
        holes: Pattern of the screws.
        reach: Half the flange's size, mm.
    """
    if not holes.blind:
        return _at_holes(view, height, holes)
    for level in sorted(view.levels, key=lambda one: -one.height):
        depth = height - level.height
        if not level.up and 1.0 < depth < _THICKEST and _reaches(view, level.faces, foot, reach):
            return Thickness(depth, False, len(level.faces), 0.0, "next face that looks back, at the flange's edge")
    return None


def _reaches(view: Along, faces: Sequence[PlaneFace], foot: Vector, reach: float) -> bool:
    points = boundary((f.face for f in faces), 2)
    return any(length(minus(square_to(p, view.direction), foot)) > 0.97 * reach for p in points)


def _at_holes(view: Along, height: float, holes: HolePattern) -> Thickness | None:
    """Return the thickness at the holes: to the floor of a counterbore, else to their far ends."""
    stepped = [b.narrow_low > b.low + _TOUCH and b.low_radius > 1.25 * b.diameter / 2 for b in holes.bores]
    backs = [_back(view, b.narrow_low, b.low) if s else b.low for s, b in zip(stepped, holes.bores, strict=True)]
    depths = [height - back for back in backs]
    mean = math.fsum(depths) / len(depths)
    spread = max(abs(d - mean) for d in depths)
    if spread > 0.5 or mean > _THICKEST:
        return None
    rule = "to the floors of the counterbores" if all(stepped) else "length of the through holes"
    return Thickness(mean, True, sum(b.faces for b in holes.bores), spread, rule)


def _back(view: Along, narrow: float, far: float) -> float:
    """Return where the head rests: the floor where a counterbore's narrow part begins, else the far end (a chamfer)."""
    floors = [level.height for level in view.levels_at(narrow) if not level.up]
    return floors[0] if floors else far


@dataclass(frozen=True, slots=True)
class Body:
    """The body behind the flange: size across, length behind the mounting face, mm; size None where unclear."""

    size: float | None
    length: float
    faces: int


def body_of(view: Along, line: AxisLine, height: float, flange: Sequence[Side]) -> Body | None:
    """Return the body behind a flange: its size is that of the long outside, round or straight, with the most area.

    Args:
        view: The shape along the axis.
        line: What is turned about the axis.
        height: Height of the mounting face, mm.
        flange: Straight sides of the flange; behind them the sides of a body lie the same way.
    """
    deep = height - view.span[0]
    if deep < 1.0:
        return None
    found = [*_round_bodies(line, height, deep), *_flat_bodies(view, line.foot, height, deep, flange)]
    if not found:
        return Body(None, deep, 0)
    _, size, faces = max(found, key=lambda one: (round(one[0], 1), one[1]))
    return Body(size, deep, faces)


_Size = tuple[float, float, int]  # area, size across, number of faces


def _round_bodies(line: AxisLine, height: float, deep: float) -> Iterator[_Size]:
    for b in line.bands:
        long = b.kind == "cylinder" and not b.hollow and b.high < height + _TOUCH and b.height > _LONG * deep
        if long and b.sweep > _MOSTLY_ROUND:
            yield math.radians(b.sweep) * b.radius * b.height, 2 * b.radius, len(b.faces)


def _flat_bodies(view: Along, foot: Vector, height: float, deep: float, flange: Sequence[Side]) -> Iterator[_Size]:
    """Yield pairs of long straight sides that lie opposite, as far from the axis; corner cuts have less area."""
    sides = [p for p in view.sides if p.offset > dot(p.normal, foot) and _is_long(p, view, height, deep)]
    along_flange = [p for p in sides if any(dot(p.normal, s.out) > 1 - 1e-5 for s in flange)]
    for one, other in combinations(along_flange or sides, 2):
        distances = [p.offset - dot(p.normal, foot) for p in (one, other)]
        if dot(one.normal, other.normal) < -1 + 1e-5 and abs(distances[0] - distances[1]) < _TOUCH:
            yield 2 * (area_of(one.face) + area_of(other.face)), math.fsum(distances), 2


def _is_long(plane: PlaneFace, view: Along, height: float, deep: float) -> bool:
    heights = [dot(p, view.direction) for p in boundary([plane.face])]
    return bool(heights) and max(heights) < height + _TOUCH and max(heights) - min(heights) > _LONG * deep
