"""Closed loops: sense, area, straight pieces in one, the least corner first."""

import math

import pytest
from hypothesis import given
from hypothesis import strategies as st

from blockgen.geometry.curves import ArcCurve, Segment
from blockgen.geometry.loops import ends_of, loop_area, passed_in_turn, smoothed_loop


def sides(*corners):
    return [(Segment(a, b), False) for a, b in zip(corners, (*corners[1:], corners[0]), strict=True)]


@given(st.integers(0, 5), st.booleans(), st.booleans())
def test_a_rectangle_from_any_corner_either_way(first, backwards, counter_clockwise):
    corners = [(0.0, 0.0), (4.0, 0.0), (10.0, 0.0), (10.0, 3.0), (10.0, 5.0), (0.0, 5.0)]
    corners = corners[first:] + corners[:first]
    loop = smoothed_loop(sides(*(corners[::-1] if backwards else corners)), counter_clockwise)
    assert len(loop) == 4
    assert loop[0].start == (0.0, 0.0)
    assert loop_area(loop) == pytest.approx(50.0 if counter_clockwise else -50.0)
    assert all(a.end == b.start for a, b in zip(loop, (*loop[1:], loop[0]), strict=True))


@pytest.mark.parametrize(("counter_clockwise", "sign"), [(True, 1), (False, -1)])
def test_a_slot_with_round_ends(counter_clockwise, sign):
    right, left = ArcCurve((10.0, 0.0), 2.0, 270.0, 450.0), ArcCurve((0.0, 0.0), 2.0, 90.0, 270.0)
    low, high = Segment((0.0, -2.0), (10.0, -2.0)), Segment((10.0, 2.0), (0.0, 2.0))
    loop = smoothed_loop([(low, False), (right, False), (high, False), (left, False)], counter_clockwise)
    assert loop_area(loop) == pytest.approx(sign * (40 + 4 * math.pi))
    passed = passed_in_turn(loop)
    for one, other in zip(passed, [*passed[1:], passed[0]], strict=True):
        assert math.dist(ends_of(one)[1], ends_of(other)[0]) < 1e-6


def test_an_arc_that_bites_into_a_square():
    bite = ArcCurve((10.0, 5.0), 2.0, 90.0, 270.0)
    pieces = [
        (Segment((0.0, 0.0), (10.0, 0.0)), False), (Segment((10.0, 0.0), (10.0, 3.0)), False), (bite, True),
        (Segment((10.0, 7.0), (10.0, 10.0)), False), (Segment((10.0, 10.0), (0.0, 10.0)), False),
        (Segment((0.0, 10.0), (0.0, 0.0)), False),
    ]  # fmt: skip
    assert loop_area(smoothed_loop(pieces, True)) == pytest.approx(100 - 2 * math.pi)
