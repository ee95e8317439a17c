"""Planes and turned surfaces that were written as free-form, revolved or extruded ones, found from points of them."""

from __future__ import annotations

import math
from collections.abc import Sequence
from typing import Literal

from blockgen.reading.vectors import Vector, cross, dot, length, minus, plus, times, unit

RECOGNISED_WITHIN = 2e-3
"""How far a free-form face may lie off the plane or turned surface that it is taken for, mm."""

Kind = Literal["cylinder", "cone", "torus"]
Grid = Sequence[Sequence[Vector]]
Axis = tuple[Vector, Vector]

_SMALL = 1e-9


def plane_of(grid: Grid) -> Vector | None:
    """Return the unit normal of the plane on which a grid of points lies; None where it lies on none."""
    points = [p for row in grid for p in row]
    first = points[0]
    far = max(points, key=lambda p: length(minus(p, first)))
    aside = max(points, key=lambda p: length(cross(minus(p, first), minus(far, first))))
    normal = cross(minus(far, first), minus(aside, first))
    if length(normal) < _SMALL:
        return None
    normal = unit(normal)
    return normal if all(abs(dot(minus(p, first), normal)) < RECOGNISED_WITHIN for p in points) else None


def axis_of(grid: Grid) -> Axis | None:
    """Return a point and the direction of the axis about which a grid of points is turned.

    Its rows, or its columns, must be arcs about that one axis, so that cylinders, cones and fillets are found.

    Returns:
        None where there is no such axis.
    """
    columns = list(zip(*grid, strict=True))
    return _axis_of_rows(grid) or _axis_of_rows(columns)


def _axis_of_rows(rows: Grid) -> Axis | None:
    circles = [_circle(row) for row in (rows[0], rows[len(rows) // 2], rows[-1])]
    found = [circle for circle in circles if circle is not None]
    if len(found) < 2:
        return None
    centre, direction, _ = found[0]
    sound = all(
        length(cross(minus(other, centre), direction)) < RECOGNISED_WITHIN and length(cross(way, direction)) < 1e-4
        for other, way, _ in found[1:]
    )
    return (centre, direction) if sound and all(_keeps_off(row, centre, direction) for row in rows) else None


def _keeps_off(row: Sequence[Vector], centre: Vector, direction: Vector) -> bool:
    """Tell whether all points of a row have one height and one distance from the axis."""
    heights = [dot(minus(p, centre), direction) for p in row]
    radii = [length(cross(minus(p, centre), direction)) for p in row]
    return max(max(of) - min(of) for of in (heights, radii)) < RECOGNISED_WITHIN


def _circle(row: Sequence[Vector]) -> tuple[Vector, Vector, float] | None:
    """Return centre, direction and radius of the circle through a row of points; None for a straight one."""
    a, b, c = row[0], row[len(row) // 3], row[2 * len(row) // 3]
    ab, ac = minus(b, a), minus(c, a)
    out = cross(ab, ac)
    square = dot(out, out)
    if square < _SMALL * max(dot(ab, ab), _SMALL) * max(dot(ac, ac), _SMALL):
        return None
    to_centre = plus(times(cross(out, ab), dot(ac, ac)), cross(ac, out), dot(ab, ab))
    to_centre = times(to_centre, 0.5 / square)
    return plus(a, to_centre), times(out, 1 / math.sqrt(square)), length(to_centre)


def kind_of(profile: Sequence[tuple[float, float]]) -> Kind:
    """Return cylinder, cone or torus for heights and radii of a turned surface, in order of height."""
    (low, low_radius), (high, high_radius) = profile[0], profile[-1]
    if max(r for _, r in profile) - min(r for _, r in profile) < RECOGNISED_WITHIN:
        return "cylinder"
    rise = high - low
    if rise < RECOGNISED_WITHIN:
        return "torus"
    straight = (low_radius + (high_radius - low_radius) * (h - low) / rise for h, _ in profile)
    off = max(abs(r - s) for (_, r), s in zip(profile, straight, strict=True))
    return "cone" if off < RECOGNISED_WITHIN else "torus"
