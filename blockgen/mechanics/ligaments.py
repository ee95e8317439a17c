"""The ligament map: the least wall between cavities, and between each cavity and the outside of the block.

Distances are those of the nominal cavities with all their pieces: mouth chamfers, counterbores, drill points, corner
radii. Cavities that open into one another on purpose have no wall between them. Walls to outside faces are counted to
the plane of the face; a cavity near a rounded edge of the block has its wall to the rounding too. Chamfers of
outside edges are not counted: the rule for the rim must hold them.

The map measures exactly only where it must: a box around each cavity gives a lower bound, the pairs are taken in
the order of that bound, and the search ends when no pair left can be too thin or among the thinnest.
"""

from __future__ import annotations

import heapq
import math
import re
from bisect import insort
from collections.abc import Sequence
from dataclasses import dataclass
from functools import lru_cache

from blockgen.mechanics.distance import (
    Piece,
    Point,
    box_distance,
    distance,
    distance_bound,
    extent,
    rounded_box,
    turned_piece,
)
from blockgen.plan import Body, Feature, Ligament

FACES = ("bearing_seat", "motor_seat", "side_minus_y", "side_plus_y", "base", "top")
ROUNDED_EDGE = "outer_fillet"
Box = tuple[Point, Point]  # least and greatest corner
Boxed = tuple[Piece, Point, Point]
Entry = tuple[float, str, str, float, float]  # margin, first, second, wall, required
MM_PER_INCH = 25.4
MARGIN_DIGITS = 6  # distances are good to 1e-6 mm
ALONG_AXIS = 1 - 1e-9  # an axis this near to x, y or z is parallel to it
NUMBER_SIZE = re.compile(r"#(\d+)")
FRACTION_SIZE = re.compile(r"(?:(\d+)\s+)?(\d+)/(\d+)")
METRIC_SIZE = re.compile(r"M(\d+(?:\.\d+)?)")


@dataclass(frozen=True, slots=True)
class LigamentRule:
    """The least walls asked for.

    Args:
        cavity_factor: Wall from a tapped hole to any other cavity over the diameter of the (lesser) thread.
        cavity_floor: Least wall from a tapped hole to any other cavity, mm.
        rim: Least wall between cavities without thread, and from any cavity to the outside, mm.
    """

    cavity_factor: float
    cavity_floor: float
    rim: float


@dataclass(frozen=True, slots=True)
class Measured:
    """A cavity made ready to be measured, so that this is done once for all its walls.

    Args:
        feature: The cavity.
        parts: Its convex pieces, each with the box around it.
        box: Least and greatest corner (x, y, z) of the box around all of them, mm.
    """

    feature: Feature
    parts: Sequence[Boxed]
    box: Box


@lru_cache(maxsize=256)
def thread_diameter(designation: str) -> float | None:
    """Return the nominal diameter of a metric or unified thread, mm; None where the text says none.

    Reads ``M8-6H``, ``M8x1``, ``1/4-20 UNC`` and ``#10-24 UNC``.

    Source: ISO 261 designations; ASME B1.1 number sizes, 0.060 in + 0.013 in for each number, from memory.
    """
    if match := METRIC_SIZE.match(designation):
        return float(match[1])
    if match := NUMBER_SIZE.match(designation):
        return (0.060 + 0.013 * int(match[1])) * MM_PER_INCH
    if match := FRACTION_SIZE.match(designation):
        return (int(match[1] or 0) + int(match[2]) / int(match[3])) * MM_PER_INCH
    return None


def nominal_diameter(feature: Feature) -> float:
    """Return the thread diameter of a tapped hole, else the diameter of the cavity, mm."""
    size = thread_diameter(feature.thread) if feature.thread else None
    return feature.diameter if size is None else size


def required_wall(first: Feature, second: Feature, rule: LigamentRule) -> float:
    """Return the least wall between two cavities, mm: by the lesser thread where one is tapped, else the rim."""
    threads = [nominal_diameter(feature) for feature in (first, second) if feature.thread]
    return max(rule.cavity_factor * min(threads), rule.cavity_floor) if threads else rule.rim


def pieces(feature: Feature) -> tuple[Piece, ...]:
    """Return the convex pieces of a cavity; flat rings add none.

    Raises:
        ValueError: its axis is not parallel to x, y or z, a corner radius is too large, or it has no shape at all.
    """
    pocket = feature.pocket
    if pocket is not None:
        axis = 2 if pocket.axis == "z" else 1
        return (rounded_box(axis, pocket.low, pocket.high, pocket.corner_radius),)
    turned = _turned_pieces(feature)
    if not turned:
        raise ValueError(f"{feature.id}: neither profile nor pocket, so no wall can be measured")
    return turned


def measured(feature: Feature) -> Measured:
    """Return a cavity made ready to be measured.

    Raises:
        ValueError: as for `pieces`.
    """
    parts = _boxed(pieces(feature))
    return Measured(feature, parts, _extent_of(parts))


def least_wall(feature_a: Feature, feature_b: Feature) -> float:
    """Return the least distance between two cavities, mm; 0 where they meet.

    Raises:
        ValueError: an axis is not parallel to x, y or z, or a corner radius is too large.
    """
    return wall_between(measured(feature_a), measured(feature_b))


def wall_between(first: Measured, second: Measured) -> float:
    """Return the least distance between two cavities, mm; 0 where they meet."""
    return _least_distance(first.parts, second.parts)


def wall_to_face(feature: Feature, body: Body, face_id: str) -> float:
    """Return the least distance from a cavity to an outside face or a rounded edge, mm; 0 where it breaks out.

    Args:
        feature: The cavity.
        body: The outside.
        face_id: An outside face, or ``outer_fillet`` for the rounded edges; infinite where the cavity is not near them.

    Raises:
        ValueError: there is no such face, or the axis is not parallel to x, y or z.
    """
    cavity = measured(feature)
    if face_id == ROUNDED_EDGE:
        return _rounded_edge_wall(cavity.parts, body)
    if face_id not in FACES:
        raise ValueError(f"no outside face {face_id!r}: one of {', '.join(FACES)}, {ROUNDED_EDGE}")
    return face_walls(cavity.box, body)[FACES.index(face_id)]


def ligament_map(
    features: Sequence[Feature], body: Body, rule: LigamentRule, thinnest: int = 5
) -> tuple[Ligament, ...]:
    """Return every wall that is too thin, and the thinnest ones of the rest, all exact.

    Args:
        features: Cavities of the block.
        body: The outside.
        rule: Least walls.
        thinnest: How many walls to return at least, where there are so many.

    Returns:
        Walls with the least margin first, where the margin is wall less required; a margin within half of 1e-6 mm
        counts as 0.

    Raises:
        ValueError: an axis is not parallel to x, y or z, or a corner radius is too large.
    """
    return map_of([measured(feature) for feature in features], body, rule, thinnest)


def map_of(cavities: Sequence[Measured], body: Body, rule: LigamentRule, thinnest: int = 5) -> tuple[Ligament, ...]:
    """Return the same as `ligament_map` for cavities made ready before."""
    found = [entry for cavity in cavities for entry in _outside_walls(cavity, body, rule)]
    found.sort()
    queue = _bounded_pairs(cavities, rule, _cut_off(found, thinnest))
    while queue and queue[0][0] <= (cut_off := _cut_off(found, thinnest)):
        _, first, second, required = heapq.heappop(queue)
        wall = _least_distance(cavities[first].parts, cavities[second].parts, cut_off + required)
        if wall < math.inf:
            insort(found, _entry(cavities[first].feature.id, cavities[second].feature.id, wall, required))
    kept = max(thinnest, sum(1 for entry in found if entry[0] < 0))
    return tuple(Ligament(*entry[1:]) for entry in found[:kept])


def worst(ligaments: Sequence[Ligament], count: int = 5) -> tuple[Ligament, ...]:
    """Return the walls with the least margin, least first."""
    ranked = sorted(_entry(each.first, each.second, each.wall, each.required) for each in ligaments)
    return tuple(Ligament(*entry[1:]) for entry in ranked[:count])


def _entry(first: str, second: str, wall: float, required: float) -> Entry:
    """Return a wall with its margin, rounded so that names rank walls that are alike by design."""
    return round(wall - required, MARGIN_DIGITS), first, second, wall, required


def _axis_of(feature: Feature) -> tuple[int, bool]:
    """Return the direction 0, 1 or 2 of the axis, and whether it points that way."""
    for index, part in enumerate(feature.axis):
        if abs(part) > ALONG_AXIS:
            return index, part > 0
    raise ValueError(f"{feature.id}: axis {feature.axis} is not parallel to x, y or z; no wall can be measured")


def _turned_pieces(feature: Feature) -> tuple[Piece, ...]:
    axis, forward = _axis_of(feature)
    found = []
    for _, start, start_radius, end, end_radius in _runs(feature):
        low = list(feature.position)
        low[axis] += start if forward else -end
        ends = (start_radius, end_radius) if forward else (end_radius, start_radius)
        found.append(turned_piece(axis, (low[0], low[1], low[2]), end - start, *ends))
    return tuple(found)


def _runs(feature: Feature) -> list[tuple[bool, float, float, float, float]]:
    """Return the segments as (straight, start, radius, end, radius), alike neighbouring cylinders joined."""
    runs: list[tuple[bool, float, float, float, float]] = []
    for segment in feature.profile:
        if segment.end == segment.start:
            continue
        straight = segment.start_radius == segment.end_radius
        run = (straight, segment.start, segment.start_radius, segment.end, segment.end_radius)
        if straight and runs and runs[-1][0] and runs[-1][4] == segment.start_radius and runs[-1][3] == segment.start:
            run = (*runs.pop()[:3], segment.end, segment.end_radius)
        runs.append(run)
    return runs


def _boxed(parts: Sequence[Piece]) -> list[Boxed]:
    """Return each piece with the box around it."""
    return [(part, *extent(part)) for part in parts]


def _extent_of(parts: Sequence[Boxed]) -> Box:
    """Return least and greatest corner of the box around all pieces, mm."""
    if len(parts) == 1:
        return parts[0][1], parts[0][2]
    _, lows, highs = zip(*parts, strict=True)
    low_x, low_y, low_z = map(min, *lows)
    high_x, high_y, high_z = map(max, *highs)
    return (low_x, low_y, low_z), (high_x, high_y, high_z)


def _least_distance(first: Sequence[Boxed], second: Sequence[Boxed], limit: float = math.inf) -> float:
    """Return the least distance between two groups of pieces, or infinity where it is beyond the limit.

    Bounds say which pairs need no exact measure.
    """
    pairs = [(box_distance(*box_a, *box_b), a, b) for a, *box_a in first for b, *box_b in second]
    pairs.sort()
    least = math.inf
    for bound, a, b in pairs:
        if bound >= least or bound > limit:
            break
        straight = distance_bound(a, b)
        if straight < least and straight <= limit:
            least = min(least, distance(a, b)) if a.tapered or b.tapered else straight
    return least if least <= limit else math.inf


def face_walls(box: Box, body: Body) -> tuple[float, ...]:
    """Return the walls in mm from a box around a cavity to the six outside faces, in the order of `FACES`."""
    (low_x, low_y, low_z), (high_x, high_y, high_z) = box
    side = body.width / 2
    walls = (low_x, body.length - high_x, low_y + side, side - high_y, low_z, body.height - high_z)
    return tuple([wall if wall > 0 else 0.0 for wall in walls])


def _rounded_edge_wall(parts: Sequence[Boxed], body: Body) -> float:
    """Return the least wall to a rounded edge of the block, mm; infinite where no piece reaches behind one.

    The distance of a point from the outside is least at a corner of the inner rectangle, since it is concave.
    """
    radius = body.outer_fillet
    if radius <= 0:
        return math.inf
    least = math.inf
    for part, box_low, box_high in parts:
        low, high, grown = (part.low, part.high, part.radius) if part.axis == 2 else (box_low, box_high, 0.0)
        past_x = radius - min(low[0], body.length - high[0])
        past_y = radius - min(low[1] + body.width / 2, body.width / 2 - high[1])
        if past_x > 0 and past_y > 0:
            least = min(least, radius - math.hypot(past_x, past_y) - grown)
    return max(0.0, least)


def _outside_walls(cavity: Measured, body: Body, rule: LigamentRule) -> list[Entry]:
    """Return margin, cavity, face, wall and required wall for each face that a cavity does not open into."""
    feature = cavity.feature
    opens = feature.opens_into
    found = [
        _entry(feature.id, face, wall, rule.rim)
        for face, wall in zip(FACES, face_walls(cavity.box, body), strict=True)
        if face != feature.face and face not in opens
    ]
    if body.outer_fillet > 0 and ROUNDED_EDGE not in opens:
        wall = _rounded_edge_wall(cavity.parts, body)
        if wall < math.inf:
            found.append(_entry(feature.id, ROUNDED_EDGE, wall, rule.rim))
    return found


def _cut_off(found: Sequence[Entry], thinnest: int) -> float:
    """Return the greatest margin that still matters, mm: below 0 all do, else as far as the thinnest few reach."""
    if thinnest <= 0:
        return 0.0
    return math.inf if len(found) < thinnest else max(0.0, found[thinnest - 1][0]) + 10.0**-MARGIN_DIGITS


def _bounded_pairs(
    cavities: Sequence[Measured], rule: LigamentRule, cut_off: float
) -> list[tuple[float, int, int, float]]:
    """Return a heap of least margin, first, second and required wall over the pairs that do not meet on purpose."""
    threads = [nominal_diameter(each.feature) if each.feature.thread else math.inf for each in cavities]
    queue = []
    for second, cavity in enumerate(cavities):
        low, high = cavity.box
        for first in range(second):
            thread = min(threads[first], threads[second])
            required = rule.rim if thread == math.inf else max(rule.cavity_factor * thread, rule.cavity_floor)
            other_low, other_high = cavities[first].box
            far = required + cut_off
            if other_low[0] - high[0] > far or low[0] - other_high[0] > far:
                continue  # most pairs: one at the motor, one at the bearing
            margin = box_distance(low, high, other_low, other_high) - required
            if margin <= cut_off and not _meet_on_purpose(cavity.feature, cavities[first].feature):
                queue.append((margin, first, second, required))
    heapq.heapify(queue)
    return queue


def _meet_on_purpose(first: Feature, second: Feature) -> bool:
    return second.id in first.opens_into or first.id in second.opens_into
