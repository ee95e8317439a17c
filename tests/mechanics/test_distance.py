"""Distances are bracketed by two facts that hold for any convex bodies.

A pair of points, one in each body, is never nearer than the distance; a plane between them never shows a wider gap
than the distance. Alternating projections supply the pair, its direction the plane.
"""

import math
from itertools import pairwise

import pytest
from hypothesis import assume, given, settings
from hypothesis import strategies as st

from blockgen.mechanics.distance import (
    Piece,
    box_distance,
    distance,
    distance_bound,
    extent,
    interval_gap,
    rounded_box,
    turned_piece,
)

ROUNDS = 400
EXACT = 1e-6


def _radius_at(piece, place):
    start, end = piece.low[piece.axis], piece.high[piece.axis]
    share = (place - start) / (end - start)
    return piece.low_radius + share * (piece.high_radius - piece.low_radius)


def _nearest_under(piece, place, height):
    """Nearest point of the outline's inside (place along the axis, distance from the inner rectangle)."""
    start, end = piece.low[piece.axis], piece.high[piece.axis]
    corners = [(start, 0.0), (start, piece.low_radius), (end, piece.high_radius), (end, 0.0)]
    if start <= place <= end and height <= _radius_at(piece, place):
        return place, height
    best = None
    for (x0, y0), (x1, y1) in pairwise(corners):
        dx, dy = x1 - x0, y1 - y0
        length = dx * dx + dy * dy
        share = 0.0 if length == 0 else min(1.0, max(0.0, ((place - x0) * dx + (height - y0) * dy) / length))
        x, y = x0 + share * dx, y0 + share * dy
        gap = math.hypot(place - x, height - y)
        if best is None or gap < best[0]:
            best = gap, x, y
    return best[1], best[2]


def project(piece, point):
    """Nearest point of a piece."""
    axis = piece.axis
    inner = [min(max(c, lo), hi) for c, lo, hi in zip(point, piece.low, piece.high, strict=True)]
    inner[axis] = point[axis]
    height = math.dist(inner, point)
    place, reach = _nearest_under(piece, point[axis], height)
    grow = reach / height if height > 0 else 0.0
    nearest = [i + grow * (p - i) for i, p in zip(inner, point, strict=True)]
    nearest[axis] = place
    return nearest


def furthest(piece, direction):
    """Greatest scalar product of a point of the piece with a direction."""
    axis = piece.axis
    across = math.sqrt(max(0.0, sum(d * d for i, d in enumerate(direction) if i != axis)))
    rectangle = sum(
        max(d * lo, d * hi)
        for i, (d, lo, hi) in enumerate(zip(direction, piece.low, piece.high, strict=True))
        if i != axis
    )
    ends = ((piece.low, piece.low_radius), (piece.high, piece.high_radius))
    return rectangle + max(direction[axis] * end[axis] + radius * across for end, radius in ends)


def bracket(first, second):
    """Least gap shown by planes and least distance of point pairs."""
    lower, upper = 0.0, math.inf
    point = [(lo + hi) / 2 for lo, hi in zip(second.low, second.high, strict=True)]
    for _ in range(ROUNDS):
        mine = project(first, point)
        point = project(second, mine)
        gap = math.dist(mine, point)
        upper = min(upper, gap)
        if gap < 1e-12:
            break
        direction = [(p - m) / gap for m, p in zip(mine, point, strict=True)]
        back = [-d for d in direction]
        lower = max(lower, -furthest(second, back) - furthest(first, direction))
        if upper - lower < EXACT / 10:
            break
    return lower, upper


coordinates = st.integers(-300, 300).map(lambda n: n / 10)
lengths = st.integers(1, 300).map(lambda n: n / 10)
axes = st.integers(0, 2)


@st.composite
def turned(draw):
    low = (draw(coordinates), draw(coordinates), draw(coordinates))
    first = draw(lengths)
    second = first if draw(st.booleans()) else draw(st.just(0.0) | lengths)
    return turned_piece(draw(axes), low, draw(lengths), first, second)


@st.composite
def boxes(draw):
    low = (draw(coordinates), draw(coordinates), draw(coordinates))
    sides = (draw(lengths), draw(lengths), draw(lengths))
    axis = draw(axes)
    most = min(side for i, side in enumerate(sides) if i != axis) / 2
    high = tuple(a + b for a, b in zip(low, sides, strict=True))
    return rounded_box(axis, low, high, draw(st.floats(0, 0.999)) * most)


shapes = turned() | boxes()


def moved(piece, shift):
    low = tuple(a + b for a, b in zip(piece.low, shift, strict=True))
    high = tuple(a + b for a, b in zip(piece.high, shift, strict=True))
    return Piece(piece.axis, low, high, piece.low_radius, piece.high_radius)


@settings(max_examples=150, deadline=None)
@given(shapes, shapes)
def test_distance_lies_between_planes_and_point_pairs(first, second):
    lower, upper = bracket(first, second)
    assert lower - EXACT <= distance(first, second) <= upper + EXACT


@settings(max_examples=60, deadline=None)
@given(shapes, shapes)
def test_distance_is_symmetric(first, second):
    assert distance(first, second) == pytest.approx(distance(second, first), abs=EXACT)


@settings(max_examples=60, deadline=None)
@given(shapes, shapes, st.tuples(coordinates, coordinates, coordinates))
def test_distance_ignores_where_both_stand(first, second, shift):
    assert distance(moved(first, shift), moved(second, shift)) == pytest.approx(distance(first, second), abs=EXACT)


@settings(max_examples=60, deadline=None)
@given(shapes, shapes)
def test_distance_is_zero_only_where_the_pieces_meet(first, second):
    lower, upper = bracket(first, second)
    assume(lower > 1e-5 or upper < 1e-9)
    assert (distance(first, second) <= EXACT) == (upper < 1e-9)


@settings(max_examples=60, deadline=None)
@given(turned(), shapes, lengths)
def test_longer_hole_is_never_further(hole, other, more):
    high = list(hole.high)
    high[hole.axis] += more
    longer = hole._replace(high=tuple(high), high_radius=hole.low_radius)
    straight = hole._replace(high_radius=hole.low_radius)
    assert distance(longer, other) <= distance(straight, other) + EXACT


@settings(max_examples=60, deadline=None)
@given(shapes, shapes)
def test_bounds_never_exceed_the_distance(first, second):
    true = distance(first, second)
    assert box_distance(*extent(first), *extent(second)) <= true + EXACT
    assert distance_bound(first, second) <= true + EXACT


def test_bracket_is_tight_on_a_general_pair():
    cone = turned_piece(0, (0.0, 0.0, 0.0), 10.0, 4.0, 1.0)
    box = rounded_box(2, (8.0, 9.0, 3.0), (30.0, 40.0, 20.0), 6.0)
    lower, upper = bracket(cone, box)
    assert upper - lower < 1e-5
    assert distance(cone, box) == pytest.approx(upper, abs=1e-5)


def test_crossed_cylinders_inside_both_spans():
    along_x = turned_piece(0, (0.0, 0.0, 0.0), 100.0, 5.0, 5.0)
    along_z = turned_piece(2, (50.0, 20.0, -50.0), 100.0, 7.0, 7.0)
    assert distance(along_x, along_z) == 8.0


def test_crossed_cylinder_ends_short_of_the_other():
    along_x = turned_piece(0, (0.0, 0.0, 0.0), 40.0, 5.0, 5.0)
    along_z = turned_piece(2, (50.0, 0.0, -50.0), 100.0, 7.0, 7.0)
    assert distance(along_x, along_z) == 3.0


def test_rims_of_crossed_cylinders_in_one_plane():
    along_x = turned_piece(0, (0.0, 0.0, 0.0), 10.0, 3.0, 3.0)
    along_z = turned_piece(2, (18.0, 0.0, 7.0), 10.0, 5.0, 5.0)
    assert distance(along_x, along_z) == pytest.approx(5.0, abs=1e-9)  # 3-4-5: 18 - 5 - 10 and 7 - 3


def test_drill_point_of_parallel_hole_passes_closer_than_its_tip():
    point = turned_piece(0, (0.0, 0.0, 0.0), 4.0, 4.0, 0.0)
    other = turned_piece(0, (4.0, 10.0, 0.0), 10.0, 4.0, 4.0)
    assert distance(point, other) == pytest.approx(6 / math.sqrt(2), abs=1e-9)  # the corner (4, 6) over the flank


def test_coaxial_point_over_a_flat_bottom():
    point = turned_piece(2, (0.0, 0.0, 0.0), 3.0, 5.0, 0.0)
    flat = turned_piece(2, (0.0, 0.0, 5.0), 3.0, 6.0, 6.0)
    assert distance(point, flat) == 2.0


def test_pocket_corner_radius_leaves_more_wall():
    hole = turned_piece(2, (-5.0, -5.0, 0.0), 10.0, 2.0, 2.0)
    low, high = (0.0, 0.0, 0.0), (50.0, 40.0, 10.0)
    assert distance(rounded_box(2, low, high, 0.0), hole) == pytest.approx(5 * math.sqrt(2) - 2)
    assert distance(rounded_box(2, low, high, 10.0), hole) == pytest.approx(15 * math.sqrt(2) - 12)


def test_interval_gap_counts_from_either_side():
    assert interval_gap(0, 1, 3, 4) == interval_gap(3, 4, 0, 1) == 2
    assert interval_gap(0, 2, 1, 4) == 0


def test_corner_radius_over_half_of_the_side_is_refused():
    with pytest.raises(ValueError, match=r"corner radius 6 mm is more than half of the side 10 mm"):
        rounded_box(2, (0.0, 0.0, 0.0), (10.0, 40.0, 5.0), 6.0)
