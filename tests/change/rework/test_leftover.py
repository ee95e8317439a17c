"""Tests of holes that stay: cut back with their face, swallowed by wider cavities, walls to what is new."""

import math
from dataclasses import replace

import pytest
from hypothesis import given
from hypothesis import strategies as st

from blockgen.change.rework.leftover import concentric, cut_back, leftover, radius_at, rest_of
from blockgen.mechanics.volume import feature_volume, frustum
from blockgen.plan import Body, Feature
from blockgen.sizing.cavities import BoreSize, Place, TapSize, bore, tapped_hole
from tests.change import blocks

BODY = Body(100.0, 100.0, 100.0, 0.0, 0.0)


def tapped(y=45.0, z=0.0) -> Feature:
    place = Place("hole", "holes", "motor_seat", (100.0, y, 50 + z), (-1.0, 0.0, 0.0))
    return tapped_hole(place, TapSize("M6-6H", 6.0, 5.0, 14.0, 19.5, 1.5))


def pilot(diameter=80.0, depth=4.0, behind=52.0) -> Feature:
    place = Place("motor_bore", "motor_bore", "motor_seat", (100.0, 0.0, 50.0), (-1.0, 0.0, 0.0))
    return bore(place, BoreSize(diameter, depth, behind, 20.0, 0.5, "H7", 0.03, 0.0))


@given(st.floats(0.0, 25.0))
def test_a_hole_that_is_faced_loses_what_lay_in_the_slice(by):
    hole, left = tapped(), cut_back(tapped(), by)
    end = hole.profile[-1].end
    if by >= end:
        assert left is None
        return
    assert left is not None
    lost = 0.0
    for s in hole.profile:
        upto = min(max(by, s.start), s.end)
        share = (upto - s.start) / (s.end - s.start)
        lost += frustum(s.start_radius, s.start_radius + share * (s.end_radius - s.start_radius), upto - s.start)
    assert feature_volume(left, BODY) == pytest.approx(feature_volume(hole, BODY) - lost, abs=1e-3)
    assert left.position[0] == pytest.approx(100 - by)


def test_a_thread_that_is_faced_is_shorter_by_the_slice():
    left = cut_back(tapped(), 4.0)
    assert left is not None
    assert (left.depth, left.thread_depth) == (15.5, 10.0)


def test_radii_along_a_tapped_hole():
    hole = tapped()
    assert radius_at(hole, 0.0) == 3.0
    assert radius_at(hole, 10.0) == 2.5
    assert radius_at(hole, 30.0) == 0.0


def test_a_hole_inside_a_wider_bore_begins_at_its_shoulder():
    left, swallowing = rest_of(tapped(y=35.0), [pilot()])
    assert left is not None
    assert swallowing
    assert left.position[0] == pytest.approx(96.0)


def test_a_hole_inside_the_opening_is_gone():
    left, _ = rest_of(tapped(y=10.0), [pilot()])
    assert left is None or left.profile[-1].part == "point"
    assert left is None or left.position[0] <= 80.0 + 1e-6


def test_a_hole_beside_a_bore_is_whole():
    left, swallowing = rest_of(tapped(y=48.0), [pilot()])
    assert left == tapped(y=48.0)
    assert not swallowing


def test_only_holes_of_one_axis_and_direction_are_concentric():
    assert concentric(tapped(), tapped(y=45.01))
    assert not concentric(tapped(), tapped(y=45.1))
    assert not concentric(tapped(), replace(tapped(), axis=(1.0, 0.0, 0.0)))


@given(st.floats(40.0, 52.0))
def test_walls_beside_a_bore_and_its_contact_ring_are_those_of_hand_calculation(radius):
    """The mouth of the hole has diam 6, the bore's chamfer reaches 0.5 mm further, 3 mm of ring are asked for."""
    plan = blocks.old()
    shaft, length = plan.number("shaft_height"), plan.body.length
    turn = math.radians(20)
    place = Place(
        "odd", "odds", "motor_seat", (length, radius * math.cos(turn), shaft + radius * math.sin(turn)),
        (-1.0, 0.0, 0.0),
    )  # fmt: skip
    hole = tapped_hole(place, TapSize("M6-6H", 6.0, 5.0, 2.0, 3.0, 1.5))
    only_bore = replace(plan, features=(plan.feature("motor_bore"),))
    left = leftover(hole, only_bore)
    assert left is not None
    wall = radius - 3.0 - 35.5
    assert left.sound == (wall >= 3.0 - 1e-6)
    if wall < 10 and "contact ring" in left.beside:
        assert left.wall == pytest.approx(wall, abs=1e-3)


def test_a_hole_that_ends_in_the_corner_of_a_window_is_gone_only_as_far_as_the_corner_reaches():
    """Corner of radius 11 with its centre at y 23.5: the hole's mouth at 34 lies 10.5 beside it."""
    window = blocks.old().feature("window")
    end = window.pocket.high[0]
    place = Place("hole", "holes", "motor_seat", (end + 25.0, 31.0, 65.0), (-1.0, 0.0, 0.0))
    hole = tapped_hole(place, TapSize("M6-6H", 6.0, 5.0, 14.0, 36.0, 0.0))
    left, _ = rest_of(hole, [window])
    assert left is not None
    reached = end - 11 + math.sqrt(11**2 - (31 + 3 - 23.5) ** 2)
    assert end + 25.0 - left.depth == pytest.approx(reached, abs=1e-6)
