"""Exact least distance between the convex pieces that cavities are made of.

A piece is a right cylinder, a frustum or a box with four rounded edges; its axis is parallel to x, y or z. One
record holds all three: an inner rectangle across the axis, grown by a radius that may change along the axis. For a
turned piece the inner rectangle is a point.

Pieces with parallel axes have a closed form. So have crossed cylinders and boxes, save where two rims lie nearest to
each other: there one convex function of one variable is minimised. A crossed frustum beside the end of the other piece
is searched slice by slice, since the distance of a slice from a convex body is a convex function of its place.
"""

from __future__ import annotations

import math
from collections.abc import Callable
from typing import NamedTuple

Point = tuple[float, float, float]
Outline = tuple[float, float, float, float]  # place, radius, place, radius
GOLDEN = (math.sqrt(5) - 1) / 2
ANGLE_TOLERANCE = 1e-10  # rad
SLICE_TOLERANCE = 1e-7  # mm along the axis


class Piece(NamedTuple):
    """One convex piece of a cavity.

    Args:
        axis: Direction of its axis: 0, 1 or 2 for x, y or z.
        low: Least corner of the inner rectangle at the low end, mm.
        high: Greatest corner of the inner rectangle at the high end, mm.
        low_radius: Radius about the inner rectangle at the low end, mm.
        high_radius: Radius about the inner rectangle at the high end, mm.
    """

    axis: int
    low: Point
    high: Point
    low_radius: float
    high_radius: float

    @property
    def radius(self) -> float:
        """Greatest radius, mm."""
        return max(self.low_radius, self.high_radius)

    @property
    def tapered(self) -> bool:
        """True where the radius changes along the axis."""
        return self.low_radius != self.high_radius


def turned_piece(axis: int, low: Point, length: float, low_radius: float, high_radius: float) -> Piece:
    """Return a cylinder or frustum.

    Args:
        axis: 0, 1 or 2.
        low: Centre of the end with the least coordinate, mm.
        length: mm.
        low_radius: Radius at ``low``, mm.
        high_radius: Radius at the other end, mm.
    """
    high = list(low)
    high[axis] += length
    return Piece(axis, low, (high[0], high[1], high[2]), low_radius, high_radius)


def rounded_box(axis: int, low: Point, high: Point, corner_radius: float) -> Piece:
    """Return a box whose four edges parallel to ``axis`` are rounded.

    Args:
        axis: 0, 1 or 2.
        low: Least corner, mm.
        high: Greatest corner, mm.
        corner_radius: mm; 0 is sharp.

    Raises:
        ValueError: the corner radius is more than half of a side.
    """
    sides = [high[i] - low[i] for i in range(3) if i != axis]
    if 2 * corner_radius > min(sides):
        raise ValueError(
            f"corner radius {corner_radius:g} mm is more than half of the side {min(sides):g} mm: reduce it"
        )
    shrink = [0.0 if i == axis else corner_radius for i in range(3)]
    inner_low = (low[0] + shrink[0], low[1] + shrink[1], low[2] + shrink[2])
    inner_high = (high[0] - shrink[0], high[1] - shrink[1], high[2] - shrink[2])
    return Piece(axis, inner_low, inner_high, corner_radius, corner_radius)


def extent(piece: Piece) -> tuple[Point, Point]:
    """Return least and greatest corner of the box around a piece, mm."""
    axis, low, high, _, _ = piece
    reach = [piece.radius] * 3
    reach[axis] = 0.0
    x, y, z = reach
    return (low[0] - x, low[1] - y, low[2] - z), (high[0] + x, high[1] + y, high[2] + z)


def interval_gap(low_a: float, high_a: float, low_b: float, high_b: float) -> float:
    """Return the gap between two intervals; 0 where they touch or overlap."""
    if low_b > high_a:
        return low_b - high_a
    if low_a > high_b:
        return low_a - high_b
    return 0.0


def box_distance(low_a: Point, high_a: Point, low_b: Point, high_b: Point) -> float:
    """Return the distance between two boxes parallel to the axes, mm; 0 where they overlap."""
    x_a, y_a, z_a = low_a
    x_b, y_b, z_b = low_b
    x = x_b - high_a[0] if x_b > high_a[0] else x_a - high_b[0] if x_a > high_b[0] else 0.0
    y = y_b - high_a[1] if y_b > high_a[1] else y_a - high_b[1] if y_a > high_b[1] else 0.0
    z = z_b - high_a[2] if z_b > high_a[2] else z_a - high_b[2] if z_a > high_b[2] else 0.0
    return math.sqrt(x * x + y * y + z * z)


def distance(first: Piece, second: Piece) -> float:
    """Return the least distance between two pieces, mm; 0 where they touch or overlap."""
    if first.axis == second.axis:
        return _parallel(first, second)
    if first.tapered:
        return _crossed_frustum(first, second)
    if second.tapered:
        return _crossed_frustum(second, first)
    return _crossed(first, second)


def distance_bound(first: Piece, second: Piece) -> float:
    """Return a quick lower bound of the distance, mm: frusta are taken as their widest cylinders.

    It is the distance itself where neither piece is tapered.
    """
    if first.axis == second.axis:
        return _parallel_straight(first, second)
    return _crossed(first, second)


def _gaps(first: Piece, second: Piece) -> list[float]:
    """Return the gaps between the inner boxes along x, y and z."""
    return list(map(interval_gap, first.low, first.high, second.low, second.high))


def _parallel_straight(first: Piece, second: Piece) -> float:
    gaps = _gaps(first, second)
    along = gaps.pop(first.axis)
    return math.hypot(max(0.0, math.hypot(*gaps) - first.radius - second.radius), along)


def _parallel(first: Piece, second: Piece) -> float:
    """Distance with parallel axes: a problem in the half plane of axial place and radius."""
    if not (first.tapered or second.tapered):
        return _parallel_straight(first, second)
    axis = first.axis
    gaps = _gaps(first, second)
    del gaps[axis]
    mine = (first.low[axis], first.low_radius, first.high[axis], first.high_radius)
    other = (second.low[axis], second.low_radius, second.high[axis], second.high_radius)
    return _facing(mine, other, math.hypot(*gaps))


def _facing(mine: Outline, other: Outline, between: float) -> float:
    """Distance between all that lies under one outline and over the other, which faces it from ``between`` away."""
    return min(
        _above(other, mine[0], between - mine[1]),
        _above(other, mine[2], between - mine[3]),
        _above(mine, other[0], between - other[1]),
        _above(mine, other[2], between - other[3]),
    )


def _above(outline: Outline, place: float, height: float) -> float:
    """Distance of a point from all that lies under an outline."""
    start, low_radius, end, high_radius = outline
    rise, run = high_radius - low_radius, end - start
    if run == 0:
        return math.hypot(place - start, max(0.0, height - low_radius))
    nearest = min(max(place, start), end)
    if height <= low_radius + rise * (nearest - start) / run:
        return abs(place - nearest)
    share = ((place - start) * run + (height - low_radius) * rise) / (run * run + rise * rise)
    share = min(1.0, max(0.0, share))
    return math.hypot(place - start - share * run, height - low_radius - share * rise)


def _crossed(first: Piece, second: Piece) -> float:
    """Distance of two straight pieces with perpendicular axes.

    Across the common normal the gap closes by the radii; along each axis it closes by the half chord of the
    other piece, which shrinks as the nearest point moves away from its centre.
    """
    a, b = first.axis, second.axis
    gaps = _gaps(first, second)
    normal = gaps[3 - a - b]
    radius_a, radius_b = first.radius, second.radius
    past_a, past_b = gaps[a], gaps[b]
    if past_a == 0 and past_b == 0:
        return max(0.0, normal - radius_a - radius_b)
    if past_a == 0:
        return max(0.0, math.hypot(past_b, max(0.0, normal - radius_b)) - radius_a)
    if past_b == 0:
        return max(0.0, math.hypot(past_a, max(0.0, normal - radius_a)) - radius_b)
    return _rims(past_b, radius_a, past_a, radius_b, normal)


def _rims(past: float, radius: float, other_past: float, other_radius: float, normal: float) -> float:
    """Distance where both end rims count.

    A point of the first rim lies at (radius sin, radius cos) towards the other piece. The square of its distance from
    the other rim is convex in the sine; where its slope changes sign the distance is least.
    """

    def parts(angle: float) -> tuple[float, float, float, float, float]:
        sine, cosine = radius * math.sin(angle), radius * math.cos(angle)
        reach = math.hypot(other_past, normal - sine)
        return sine, cosine, reach, max(0.0, past - cosine), max(0.0, reach - other_radius)

    def slope(angle: float) -> float:
        sine, cosine, reach, axial, radial = parts(angle)
        return axial * sine * reach - radial * (normal - sine) * cosine

    *_, axial, radial = parts(_sign_change(slope, 0.0, math.pi / 2))
    return math.hypot(axial, radial)


def _sign_change(function: Callable[[float], float], low: float, high: float) -> float:
    """Return where a function goes from below to above 0, or the end nearest to that.

    False position with the Illinois correction; each third step halves, so that the interval surely shrinks.
    """
    at_low, at_high = function(low), function(high)
    if at_low >= 0 or at_high <= 0:
        return low if at_low >= 0 else high
    step = 0
    while high - low > ANGLE_TOLERANCE:
        step += 1
        place = (low + high) / 2 if step % 3 == 0 else low + (high - low) * at_low / (at_low - at_high)
        value = function(place)
        if value == 0:
            return place
        if value < 0:
            low, at_low, at_high = place, value, at_high / 2
        else:
            high, at_high, at_low = place, value, at_low / 2
    return (low + high) / 2


def _crossed_frustum(frustum: Piece, other: Piece) -> float:
    """Distance of a frustum from any piece across its axis.

    Where the other piece passes the axis of the frustum, the section through that axis holds the nearest points.
    """
    axis, across = frustum.axis, other.axis
    gaps = _gaps(frustum, other)
    if gaps[across] > 0 or other.tapered:
        return _sliced(frustum, other)
    outline = (frustum.low[axis], frustum.low_radius, frustum.high[axis], frustum.high_radius)
    core = (other.low[axis], 0.0, other.high[axis], 0.0)
    return max(0.0, _facing(outline, core, gaps[3 - axis - across]) - other.radius)


def _sliced(frustum: Piece, other: Piece) -> float:
    """Distance of a frustum from any piece across its axis, slice by slice."""
    axis, low, high, low_radius, high_radius = frustum
    start, end = low[axis], high[axis]

    def from_slice(place: float) -> float:
        radius = low_radius + (high_radius - low_radius) * (place - start) / (end - start)
        foot = (low[0], low[1], place) if axis == 2 else (low[0], place, low[2]) if axis == 1 else (place, *low[1:])
        return distance(other, Piece(axis, foot, foot, radius, radius))

    return _least_of_convex(from_slice, start, end)


def _least_of_convex(function: Callable[[float], float], low: float, high: float) -> float:
    """Return the least value of a convex function: at an end that it rises from, else by golden section."""
    for end, inwards in ((low, SLICE_TOLERANCE), (high, -SLICE_TOLERANCE)):
        at_end = function(end)
        if at_end <= function(end + inwards):
            return at_end
    left, right = high - GOLDEN * (high - low), low + GOLDEN * (high - low)
    at_left, at_right = function(left), function(right)
    while high - low > SLICE_TOLERANCE:
        if at_left <= at_right:
            high, right, at_right = right, left, at_left
            left = high - GOLDEN * (high - low)
            at_left = function(left)
        else:
            low, left, at_left = left, right, at_right
            right = low + GOLDEN * (high - low)
            at_right = function(right)
    return min(at_left, at_right)
