"""The clean-up: pieces in any order and cut anywhere give back the whole, covered pieces go."""

import math
from itertools import pairwise

import pytest
from hypothesis import assume, given
from hypothesis import strategies as st

from blockgen.geometry.curves import ArcCurve, Chain, Segment, length_of
from blockgen.geometry.tidy_curves import joined_spans, merged, spans_less, tidy, within_period
from tests.geometry.plane import along, farthest

numbers = st.integers(-4000, 4000).map(lambda n: n / 40)
points = st.tuples(numbers, numbers)
shares = st.lists(st.floats(0.001, 0.999), max_size=6)


@st.composite
def segments(draw):
    start, end = sorted((draw(points), draw(points)))
    assume(math.dist(start, end) > 1.0)
    return Segment(start, end)


@st.composite
def arcs(draw):
    start, sweep = draw(st.integers(0, 359)), draw(st.integers(1, 359))
    return ArcCurve(draw(points), draw(st.integers(40, 2000)) / 40, float(start), float(start + sweep))


def part(curve, low, high):
    """Return the part of a curve between two shares of its length."""
    if isinstance(curve, Segment):
        start, end = (tuple(a + s * (b - a) for a, b in zip(curve.start, curve.end, strict=True)) for s in (low, high))
        return Segment(start, end)
    sweep = curve.end_deg - curve.start_deg
    return ArcCurve(curve.centre, curve.radius, *(curve.start_deg + s * sweep for s in (low, high)))


def is_alike(curve, other):
    if isinstance(curve, Segment):
        return math.dist(curve.start, other.start) < 1e-5 and math.dist(curve.end, other.end) < 1e-5
    return (
        math.dist(curve.centre, other.centre) < 1e-5
        and abs(curve.radius - other.radius) < 1e-5
        and abs(math.remainder(curve.start_deg - other.start_deg, 360)) * curve.radius < 1e-3
        and abs(length_of(curve) - length_of(other)) < 1e-4
    )


@given(st.one_of(segments(), arcs()), shares, shares, st.randoms())
def test_a_curve_cut_anywhere_comes_back_whole(curve, cuts, more_cuts, random):
    pieces = [part(curve, *pair) for way in (cuts, more_cuts) for pair in pairwise(sorted({0.0, 1.0, *way}))]
    pieces = [p for p in pieces if length_of(p) > 1e-4]
    random.shuffle(pieces)
    (again,) = merged(pieces)
    assert is_alike(again, curve)


@given(points, st.integers(40, 2000).map(lambda n: n / 40), st.lists(st.integers(0, 359), min_size=2, unique=True))
def test_the_arcs_of_a_circle_make_the_circle(centre, radius, cuts):
    turns = sorted(cuts)
    pieces = [ArcCurve(centre, radius, a, b) for a, b in pairwise([*turns, turns[0] + 360])]
    (circle,) = merged(pieces)
    assert (circle.start_deg, circle.end_deg) == (0.0, 360.0)
    assert circle.radius == pytest.approx(radius)


@given(st.lists(st.one_of(segments(), arcs()), max_size=6), st.randoms())
def test_order_changes_nothing_and_twice_is_once(curves, random):
    once = merged(curves)
    shuffled = list(curves)
    random.shuffle(shuffled)
    assert all(is_alike(a, b) for a, b in zip(once, merged(shuffled), strict=True))
    assert merged([*curves, *curves]) == once
    assert all(is_alike(a, b) for a, b in zip(once, merged(once), strict=True))


@given(st.one_of(segments(), arcs()), st.floats(0.1, 0.4), st.floats(0.6, 0.9))
def test_what_is_covered_goes(curve, low, high):
    cover = part(curve, low, high)
    left = merged([curve], [cover])
    assert sum(map(length_of, left)) == pytest.approx(length_of(curve) - length_of(cover), abs=1e-4)
    assert farthest([p for piece in left for p in along(piece)], [curve]) < 1e-5
    assert merged([cover], [curve]) == ()


def test_hidden_goes_under_visible_and_smooth():
    edge = Segment((0.0, 0.0), (10.0, 0.0))
    visible, hidden, smooth = tidy([part(edge, 0.0, 0.3)], [edge], [part(edge, 0.2, 0.5)])
    assert visible == (Segment((0.0, 0.0), (3.0, 0.0)),)
    assert smooth == (Segment((3.0, 0.0), (5.0, 0.0)),)
    assert hidden == (Segment((5.0, 0.0), (10.0, 0.0)),)


def test_short_pieces_and_rounding():
    pieces = [Segment((0.0, 0.0), (0.00009, 0.0)), Segment((-0.0000001, 5.0), (1.00000049, 5.0))]
    assert repr(merged(pieces)) == "(Segment(start=(0.0, 5.0), end=(1.0, 5.0)),)"


def test_what_lies_apart_stays_apart():
    pieces = [Segment((0.0, 0.0), (1.0, 0.0)), Segment((1.001, 0.0), (2.0, 0.0)), Segment((0.0, 0.001), (1.0, 0.001))]
    assert len(merged(pieces)) == 3
    rings = [ArcCurve((0.0, 0.0), r, 0.0, 360.0) for r in (5.0, 5.001)]
    assert len(merged(rings)) == 2


def test_chains_are_linked_and_lose_what_is_covered():
    corners = [(0.0, 0.0), (1.0, 0.2), (2.0, 0.6), (3.0, 1.2), (4.0, 2.0)]
    chords = [Chain(pair) for pair in pairwise(corners)]
    assert merged([chords[2], chords[0], chords[3], chords[1]]) == (Chain(tuple(corners)),)
    assert merged([Chain(tuple(corners)), Chain(tuple(corners[::-1]))]) == (Chain(tuple(corners)),)
    assert merged([Chain(tuple(corners))], chords[1:2]) == (Chain(tuple(corners[:2])), Chain(tuple(corners[2:])))


def test_a_closed_chain_ends_where_it_begins():
    corners = [(0.0, 0.0), (1.0, -1.0), (2.0, 0.0), (1.0, 1.0)]
    (ring,) = merged([Chain((*corners, corners[0]))])
    assert ring.points[0] == ring.points[-1] == (0.0, 0.0)
    assert set(ring.points) == set(corners)


spans = st.lists(st.tuples(numbers, st.integers(1, 400).map(lambda n: n / 40)).map(lambda s: (s[0], s[0] + s[1])))


@given(spans, spans, numbers.map(lambda n: n + 0.0125))
def test_spans_as_sets_of_points(first, second, place):
    def holds(some):
        return any(low <= place <= high for low, high in some)

    one, other = joined_spans(first), joined_spans(second)
    assert holds(one) == holds(first)
    assert holds(spans_less(one, other)) == (holds(first) and not holds(second))
    assert all(a[1] < b[0] for a, b in pairwise(one))


@given(st.floats(-50, 50), st.floats(0.1, 9.9))
def test_spans_on_a_circle_keep_their_length(low, length):
    pieces = within_period((low, low + length), 10.0)
    assert sum(b - a for a, b in pieces) == pytest.approx(length)
    assert all(0.0 <= a <= b <= 10.0 for a, b in pieces)
