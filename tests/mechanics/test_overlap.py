"""Common volume of two turned bodies on one axis."""

import math

import pytest
from hypothesis import given
from hypothesis import strategies as st

from blockgen.mechanics.overlap import overlap_volume

sizes = st.floats(0.5, 20).map(lambda x: round(x, 3))


def test_a_screw_in_its_tap_drill_hole_is_a_tube():
    found = overlap_volume(((0.0, 4.0, 12.0, 4.0),), ((0.0, 3.4, 20.0, 3.4),))
    assert found == pytest.approx(math.pi * (16 - 3.4**2) * 12)


def test_a_mouth_wider_than_the_screw_counts_for_nothing():
    with_mouth = overlap_volume(((0.0, 4.0, 12.0, 4.0),), ((0.0, 5.0, 1.0, 4.0), (1.0, 3.4, 20.0, 3.4)))
    assert with_mouth == pytest.approx(math.pi * (16 - 3.4**2) * 11)


def test_nothing_overlaps_in_a_clearance_hole():
    assert overlap_volume(((0.0, 4.0, 12.0, 4.0),), ((0.0, 4.5, 20.0, 4.5),)) == 0.0


@given(sizes, sizes, sizes, sizes, sizes)
def test_cones_against_a_sum_of_thin_slices(length, r0, r1, h0, h1):
    found = overlap_volume(((0.0, r0, length, r1),), ((0.0, h0, length, h1),))
    count, total = 4000, 0.0
    for i in range(count):
        t = (i + 0.5) / count
        body, hole = r0 + (r1 - r0) * t, h0 + (h1 - h0) * t
        total += math.pi * max(0.0, body**2 - hole**2) * length / count
    assert found == pytest.approx(total, rel=1e-4, abs=1e-4)


@given(sizes, sizes, sizes)
def test_cutting_a_hole_in_two_pieces_changes_nothing(length, radius, drill):
    body = ((0.0, radius, length, radius),)
    whole = overlap_volume(body, ((0.0, drill, 2 * length, drill),))
    halves = ((0.0, drill, length / 3, drill), (length / 3, drill, 2 * length, drill))
    assert overlap_volume(body, halves) == pytest.approx(whole, abs=1e-9)
