"""Profiles and boxes of single cavities."""

import pytest

from blockgen.plan import Pocket
from blockgen.sizing.cavities import BoreSize, Place, TapSize, bore, counterbored_hole, dowel_hole, tapped_hole, window

SEAT = Place("a_bore", "a_bore", "bearing_seat", (0.0, 0.0, 50.0), (1.0, 0.0, 0.0))
TOP = Place("a_hole", "holes", "top", (10.0, 20.0, 90.0), (0.0, 0.0, -1.0))
TAP = TapSize("M8-6H", 8.0, 6.8, 16.0, 22.0, 2.0)


def parts(feature):
    return [s.part for s in feature.profile]


def test_a_stepped_bore_has_a_shoulder():
    found = bore(SEAT, BoreSize(50, 6, 40, 20, 0.5, "H7", 0.025, 0.0))
    assert parts(found) == ["mouth_chamfer", "bore", "shoulder", "through"]
    assert found.profile[-1].end == 20
    assert found.profile[-1].end_radius == 20
    assert "window" in found.opens_into


def test_a_plain_bore_has_none():
    found = bore(SEAT, BoreSize(50, 20, 50, 20, 0.5, "H7", 0.025, 0.0))
    assert parts(found) == ["mouth_chamfer", "bore"]
    assert found.depth == 20


def test_a_blind_thread():
    found = tapped_hole(TOP, TAP)
    assert parts(found) == ["mouth_chamfer", "thread", "point"]
    assert found.profile[-1].end == pytest.approx(24.0)
    assert found.call_out == "M8-6H depth 16 / drill 22"
    assert not found.through


def test_a_through_thread():
    found = tapped_hole(TOP, TAP, "window", 12.0)
    assert parts(found) == ["mouth_chamfer", "thread"]
    assert (found.depth, found.thread_depth, found.through) == (12.0, 12.0, True)
    assert "window" in found.opens_into


def test_a_counterbored_hole():
    found = counterbored_hole(TOP, 11.0, (18.0, 10.5), 90.0, 0.5, "base")
    assert parts(found) == ["mouth_chamfer", "counterbore", "seat", "hole"]
    assert (found.counterbore_diameter, found.counterbore_depth, found.depth) == (18.0, 10.5, 90.0)
    seat = found.profile[2]
    assert seat.start == seat.end == 10.5


def test_a_dowel_hole_is_relieved_over_the_pin():
    found = dowel_hole(TOP, 8.0, 7.5, 16.0, 90.0)
    assert found.profile[0].start_radius > 4.0
    assert found.profile[-1].end - found.profile[-1].start == pytest.approx(16.0)
    assert found.diameter == 7.5


def test_a_window_across_opens_on_both_sides():
    box = Pocket("y", (20, -40, 30), (80, 40, 70), 8.0, open_low=True, open_high=True)
    found = window(box, 40.0, {})
    assert {"side_plus_y", "side_minus_y"} <= set(found.opens_into)
    assert (found.depth, found.axis) == (80, (0.0, -1.0, 0.0))


def test_a_pocket_does_not_open_into_the_base():
    box = Pocket("z", (20, -20, 15), (80, 20, 90), 8.0, open_low=False, open_high=True)
    found = window(box, 40.0, {})
    assert "base" not in found.opens_into
    assert found.depth == 75
