"""The volume of a block on paper: frustums, rounded boxes and edge breaks summed from the plan, without a kernel.

The sum is exact where cavities lie apart. Where they meet on purpose (a bore that runs into the corner radius of the
window, a relief that crosses base screws or window) the common part is integrated along one axis. Any other overlap is
counted twice, so that the comparison with the solid fails and nothing is hidden.
"""

from __future__ import annotations

import math
from collections.abc import Callable, Sequence
from functools import lru_cache
from itertools import pairwise

from blockgen.plan import Body, Feature, Plan, Pocket, Point, Segment

Extent = tuple[float, float]
Sides = tuple[tuple[bool, bool], tuple[bool, bool], tuple[bool, bool]]

PLAIN_RUN_OUT = 1.0
"""How far a through tool runs past its far end, mm."""

CLEAR_OF_SIDE_WALLS = 0.5
"""A bore nearer than this to a side wall of the window grazes it, mm."""

SAME_PLACE = 1e-6
"""Two coordinates closer than this are one place, mm."""


def reference_volume(plan: Plan) -> float:
    """Return the volume of the block, mm3.

    Args:
        plan: Plan with body and features. Mouths of turned cavities lie inside the edge breaks of their face, no more
            than two cavities meet at one place.
    """
    body = plan.body
    removed = math.fsum(feature_volume(feature, body) + run_out_volume(feature, plan) for feature in plan.features)
    return body_volume(body) - removed + _relief_overlaps(plan)


def volume_tolerance(plan: Plan) -> float:
    """Return how far solid and reference may differ, mm3: a tenth of the smallest cavity."""
    volumes = [feature_volume(feature, plan.body) for feature in plan.features]
    return min(volumes) / 10 if volumes else body_volume(plan.body) * 1e-9


@lru_cache(maxsize=64)
def body_volume(body: Body) -> float:
    """Return the volume of the uncut block with its edge breaks, mm3.

    Each layer of the broken edge is the outline moved inwards. With rounded upright edges the outline is a rounded
    rectangle. With chamfered ones its corners are cut at 45 degrees, and where three chamfers meet a flat takes another
    tip of c^3 / 12.
    """
    chamfer, height = body.edge_chamfer, body.height
    tips = 0.0 if body.outer_fillet > 0 else 8 * chamfer**3 / 12
    layers = 2 * integral(lambda inset: _layer_area(body, inset), (0.0, chamfer / 2, chamfer))
    return _layer_area(body, 0.0) * (height - 2 * chamfer) + layers - tips


def _layer_area(body: Body, inset: float) -> float:
    """Return the area of the outline moved inwards, mm2."""
    area = (body.length - 2 * inset) * (body.width - 2 * inset)
    if body.outer_fillet > 0:
        return area - (4 - math.pi) * (body.outer_fillet - inset) ** 2
    return area - 2 * max(0.0, body.edge_chamfer - 2 * inset) ** 2


def frustum(start_radius: float, end_radius: float, length: float) -> float:
    """Return the volume of a truncated cone, mm3; a cylinder when both radii agree."""
    return math.pi * length * (start_radius**2 + start_radius * end_radius + end_radius**2) / 3


def feature_volume(feature: Feature, body: Body) -> float:
    """Return what one cavity takes out of the uncut block up to its nominal end, mm3."""
    if feature.pocket is not None:
        return _pocket_volume(feature.pocket, body)
    return math.fsum(frustum(s.start_radius, s.end_radius, s.end - s.start) for s in feature.profile)


def pocket_box(pocket: Pocket, body: Body) -> tuple[Point, Point, Sides]:
    """Return the part of a pocket's box that lies in the block, and at which ends it runs out to the outside.

    Returns:
        Least corner and greatest corner, mm; for x, y and z whether the low and the high end are open.
    """
    block_low, block_high = (0.0, -body.width / 2, 0.0), (body.length, body.width / 2, body.height)
    axis = axis_index(pocket)
    low, high, open_ends = [], [], []
    for i in range(3):
        opens = (pocket.low[i] <= block_low[i] + SAME_PLACE, pocket.high[i] >= block_high[i] - SAME_PLACE)
        open_ends.append((pocket.open_low, pocket.open_high) if i == axis else opens)
        low.append(max(pocket.low[i], block_low[i]))
        high.append(min(pocket.high[i], block_high[i]))
    return (low[0], low[1], low[2]), (high[0], high[1], high[2]), (open_ends[0], open_ends[1], open_ends[2])


def axis_index(pocket: Pocket) -> int:
    """Return 1 for a pocket cut along y, 2 for one cut along z."""
    return 1 if pocket.axis == "y" else 2


def _pocket_volume(pocket: Pocket, body: Body) -> float:
    low, high, open_ends = pocket_box(pocket, body)
    sizes = [h - lo for lo, h in zip(low, high, strict=True)]
    corners = (4 - math.pi) * pocket.corner_radius**2 * sizes[axis_index(pocket)]
    return math.prod(sizes) - corners - _edge_breaks_in(body, sizes, open_ends)


def _edge_breaks_in(body: Body, sizes: Sequence[float], open_ends: Sides) -> float:
    """Return the volume of the edge breaks that a box open at two neighbouring faces takes in, mm3."""
    volume = 0.0
    for first, second, along in ((0, 2, 1), (1, 2, 0)):
        depth = min(body.edge_chamfer, sizes[second])
        section = body.edge_chamfer * depth - depth**2 / 2
        volume += sum(open_ends[first]) * sum(open_ends[second]) * section * sizes[along]
    return volume


# Through cavities that end in a pocket


def run_out(feature: Feature, plan: Plan) -> float:
    """Return how far the tool of a turned cavity runs past its far end, mm; 0 where it ends in the material.

    Into a window it runs on past the corner radius, so that a bore wider than the flat part of the wall clears the
    corners. A bore about as wide as the window, or wider, would cut deep into the side walls that way: it runs on just
    far enough to leave no feather edge. No tool runs past the middle of the window.
    """
    if not feature.through or not feature.profile:
        return 0.0
    pocket = _entered_pocket(feature, plan)
    if pocket is None:
        return PLAIN_RUN_OUT if _ends_outside(feature, plan.body) else 0.0
    axis = direction_index(feature.axis)
    corner = pocket.corner_radius if _fits_between_side_walls(feature, pocket) else 0.0
    return min(corner + PLAIN_RUN_OUT, (pocket.high[axis] - pocket.low[axis]) / 2)


def _fits_between_side_walls(feature: Feature, pocket: Pocket) -> bool:
    axis, along = direction_index(feature.axis), axis_index(pocket)
    if axis == along:
        return False
    across = 3 - along - axis
    centre, room = far_end(feature)[across], feature.profile[-1].end_radius + CLEAR_OF_SIDE_WALLS
    return pocket.low[across] + room <= centre <= pocket.high[across] - room


def direction_index(axis: Point) -> int:
    """Return 0, 1 or 2 for a vector along x, y or z."""
    return max(range(3), key=lambda i: abs(axis[i]))


def far_end(feature: Feature) -> Point:
    """Return the centre of the far end of a turned cavity, mm."""
    depth = feature.profile[-1].end
    x, y, z = (p + depth * a for p, a in zip(feature.position, feature.axis, strict=True))
    return (x, y, z)


def _ends_outside(feature: Feature, body: Body) -> bool:
    """Tell whether a turned cavity comes out of the block at its far end."""
    axis, end = direction_index(feature.axis), far_end(feature)
    low, high = ((0.0, body.length), (-body.width / 2, body.width / 2), (0.0, body.height))[axis]
    return end[axis] <= low + SAME_PLACE or end[axis] >= high - SAME_PLACE


def _entered_pocket(feature: Feature, plan: Plan) -> Pocket | None:
    """Return the pocket at whose wall a through cavity ends, as a whole or in part."""
    for other in plan.features:
        if other.pocket is not None and other.id in feature.opens_into and _reached(other.pocket, feature):
            return other.pocket
    return None


def _reached(pocket: Pocket, feature: Feature) -> bool:
    along, end, radius = direction_index(feature.axis), far_end(feature), feature.profile[-1].end_radius
    beside = [0.0 if i == along else radius for i in range(3)]
    return all(
        low - wide - SAME_PLACE < value < high + wide + SAME_PLACE
        for low, value, high, wide in zip(pocket.low, end, pocket.high, beside, strict=True)
    )


def run_out_volume(feature: Feature, plan: Plan) -> float:
    """Return what a through cavity takes out of the block past its nominal end, mm3.

    A chord of the bore meets as much of the corner as the corner stands out of the wall there; beside, above or below
    the window it meets the full run-out.
    """
    pocket = _entered_pocket(feature, plan) if feature.through and feature.profile else None
    if pocket is None or direction_index(feature.axis) == axis_index(pocket):
        return 0.0
    along = axis_index(pocket)
    across = 3 - along - direction_index(feature.axis)
    end = far_end(feature)
    low, high = (edge[across] - end[across] for edge in (pocket.low, pocket.high))
    below, above = (edge - end[along] for edge in _opening(pocket, along))
    return _cut_past_wall(
        feature.profile[-1].end_radius, (low, high), (below, above), pocket.corner_radius, run_out(feature, plan)
    )


@lru_cache(maxsize=1024)
def _cut_past_wall(radius: float, window: Extent, opening: Extent, corner_radius: float, reach: float) -> float:
    """Return what a bore cuts past the wall of a window, mm3; blocks that vary in other sizes share it.

    Args:
        radius: Radius of the bore, mm.
        window: Side walls of the window from the bore's axis, mm.
        opening: Where the window is empty along its cutting axis, from the bore's axis, mm.
        corner_radius: Of the window, mm.
        reach: How far the tool runs out, mm.
    """
    low, high = window

    def cut(u: float) -> float:
        half = math.sqrt(max(0.0, radius**2 - u**2))
        inside = _overlap((-half, half), opening)
        corner = corner_height(min(u - low, high - u), corner_radius, reach)
        return corner * inside + reach * (2 * half - inside)

    bends = [bend for depth in corner_bends(corner_radius, reach) for bend in (low + depth, high - depth)]
    return integral(cut, _breaks(0.0, radius, (*bends, *_crossings(0.0, 0.0, radius, opening))))


def _opening(pocket: Pocket, along: int) -> Extent:
    """Return where a pocket is empty along its cutting axis; an open end has no limit."""
    low = -math.inf if pocket.open_low else pocket.low[along]
    return low, math.inf if pocket.open_high else pocket.high[along]


def corner_height(from_side: float, corner_radius: float, limit: float) -> float:
    """Return how far the material stands out of a window's end wall at a distance from its side wall, mm."""
    if from_side <= 0:
        return limit
    if from_side >= corner_radius:
        return 0.0
    return min(limit, corner_radius - math.sqrt(corner_radius**2 - (corner_radius - from_side) ** 2))


def corner_bends(corner_radius: float, limit: float) -> tuple[float, float, float]:
    """Return the distances from the side wall at which ``corner_height`` is not smooth, mm."""
    capped = min(limit, corner_radius)
    return 0.0, corner_radius - math.sqrt(capped * (2 * corner_radius - capped)), corner_radius


# A relief and what it crosses


def _relief_overlaps(plan: Plan) -> float:
    """Return the volume that reliefs share with windows and with holes along z, mm3."""
    total = 0.0
    for relief in plan.features:
        if relief.kind == "relief" and relief.pocket is not None:
            low, high, _ = pocket_box(relief.pocket, plan.body)
            total += math.fsum(_shared(low, high, other) for other in plan.features if other.kind != "relief")
    return total


def _shared(low: Point, high: Point, other: Feature) -> float:
    if other.pocket is not None:
        return _shared_with_window(low, high, other.pocket) if other.pocket.axis == "z" else 0.0
    if direction_index(other.axis) != 2:
        return 0.0
    return math.fsum(_shared_with_piece(low, high, other, piece) for piece in other.profile)


def _shared_with_window(low: Point, high: Point, window: Pocket) -> float:
    depth = _overlap((low[2], high[2]), (window.low[2], window.high[2]))
    radius, middle = window.corner_radius, (window.low[1] + window.high[1]) / 2
    half_width = (window.high[1] - window.low[1]) / 2

    def width(x: float) -> float:
        lost = corner_height(min(x - window.low[0], window.high[0] - x), radius, radius)
        return _overlap((low[1], high[1]), (middle - half_width + lost, middle + half_width - lost))

    left, right = max(low[0], window.low[0]), min(high[0], window.high[0])
    if depth <= 0 or right <= left:
        return 0.0
    rounds = (window.low[0] + radius, window.high[0] - radius)
    return depth * integral(width, _breaks((left + right) / 2, (right - left) / 2, rounds))


def _shared_with_piece(low: Point, high: Point, hole: Feature, piece: Segment) -> float:
    """Return what a box shares with one turned piece of a hole along z, mm3."""
    sense = hole.axis[2]
    near, far = sorted((hole.position[2] + sense * piece.start, hole.position[2] + sense * piece.end))
    bottom, top = max(near, low[2]), min(far, high[2])
    if top <= bottom:
        return 0.0

    def area(z: float) -> float:
        share = (sense * (z - hole.position[2]) - piece.start) / (piece.end - piece.start)
        radius = piece.start_radius + share * (piece.end_radius - piece.start_radius)
        return circle_in_rectangle(hole.position, radius, (low[0], high[0]), (low[1], high[1]))

    return integral(area, (bottom, top))


def circle_in_rectangle(centre: Sequence[float], radius: float, x: Extent, y: Extent) -> float:
    """Return the area that a circle shares with a rectangle, mm2."""
    cx, cy = centre[0], centre[1]
    if x[0] <= cx - radius and cx + radius <= x[1] and y[0] <= cy - radius and cy + radius <= y[1]:
        return math.pi * radius**2

    def chord(u: float) -> float:
        half = math.sqrt(max(0.0, radius**2 - (u - cx) ** 2))
        return _overlap((cy - half, cy + half), y) if x[0] <= u <= x[1] else 0.0

    return integral(chord, _breaks(cx, radius, (*x, *_crossings(cx, cy, radius, y))))


# Integration


def _overlap(first: Extent, second: Extent) -> float:
    return max(0.0, min(first[1], second[1]) - max(first[0], second[0]))


def _crossings(centre: float, height: float, radius: float, limits: Extent) -> tuple[float, ...]:
    """Return where a circle crosses two lines across it."""
    halves = [math.sqrt(radius**2 - (v - height) ** 2) for v in limits if abs(v - height) < radius]
    return tuple(centre + sign * half for half in halves for sign in (-1, 1))


def _breaks(centre: float, half: float, places: Sequence[float]) -> tuple[float, ...]:
    """Return the ends of an interval and the places inside it, in order."""
    inner = sorted(place for place in places if abs(place - centre) < half)
    return (centre - half, *inner, centre + half)


def integral(function: Callable[[float], float], breaks: Sequence[float]) -> float:
    """Return the integral of a function that is smooth between the given places.

    At the places it may start like a square root: the substitution u = s^2 (3 - 2 s) takes that away, and the
    24-point Gauss rule is then exact to rounding for our shapes.
    """
    total = 0.0
    for start, end in pairwise(breaks):
        width = end - start
        for s, weight in _gauss(24):
            total += weight * 6 * s * (1 - s) * width * function(start + width * s * s * (3 - 2 * s))
    return total


@lru_cache(maxsize=4)
def _gauss(count: int) -> tuple[tuple[float, float], ...]:
    """Return places and weights of Gauss's rule on 0..1 (roots of the Legendre polynomial by Newton's method)."""
    rule = []
    for i in range(count):
        root = math.cos(math.pi * (i + 0.75) / (count + 0.5))
        for _ in range(50):
            value, slope = _legendre(count, root)
            root -= value / slope
        _, slope = _legendre(count, root)
        rule.append(((1 - root) / 2, 1 / ((1 - root**2) * slope**2)))
    return tuple(rule)


def _legendre(degree: int, x: float) -> tuple[float, float]:
    before, value = 1.0, x
    for n in range(2, degree + 1):
        before, value = value, ((2 * n - 1) * x * value - (n - 1) * before) / n
    return value, degree * (x * value - before) / (x * x - 1)
