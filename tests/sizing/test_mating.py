"""Hole places of mating flanges, seen from the motor, counter-clockwise from +y."""

import math

import pytest
from hypothesis import given
from hypothesis import strategies as st

from blockgen.errors import InputError
from blockgen.sizing.mating import circle_positions, flange
from tests.sizing.strategies import REQUIRED, ledger, sized


def test_four_holes_on_the_diagonals():
    half = 90 / 2 / math.sqrt(2)
    expected = [(half, half), (-half, half), (-half, -half), (half, -half)]
    for found, place in zip(circle_positions(90, 4, 45), expected, strict=True):
        assert found == pytest.approx(place, abs=1e-6)


def test_the_first_hole_stands_at_plus_y_and_the_next_is_higher():
    first, second, *_ = circle_positions(100, 8, 0)
    assert first == pytest.approx((50, 0))
    assert second[1] > 0


@given(st.floats(10, 300), st.integers(2, 8), st.floats(-180, 180))
def test_holes_lie_on_the_circle_evenly(circle, count, angle):
    points = circle_positions(circle, count, angle)
    assert len(points) == count
    assert all(math.hypot(y, z) == pytest.approx(circle / 2) for y, z in points)
    assert sum(y for y, _ in points) == pytest.approx(0, abs=1e-6)
    assert sum(z for _, z in points) == pytest.approx(0, abs=1e-6)


def test_spacing_stands_for_a_circle():
    found = flange(ledger(motor={"bolt_circle": None, "bolt_spacing_y": 60, "bolt_spacing_z": 50}), "motor")
    assert set(found.positions) == {(30, 25), (-30, 25), (-30, -25), (30, -25)}


def test_free_positions_are_taken_as_they_are():
    points = [[36, 20], [-36, 20], [0, -37]]
    found = flange(
        ledger(motor={"bolt_circle": None, "bolt_positions": points, "pilot_diameter": 50, "flange_size": 84}), "motor"
    )
    assert found.positions == ((36, 20), (-36, 20), (0, -37))


@pytest.mark.parametrize(("hole", "thread"), [(6.6, "M6"), (9, "M8"), (3.4, "M3"), (5.5, "M5")])
def test_the_thread_follows_the_clearance_hole(hole, thread):
    assert flange(ledger(motor={"bolt_hole": hole}), "motor").thread.size == thread


def test_a_tapped_flange_gives_clearance_holes():
    changes = {"bolt_hole": None, "bolt_thread": "M6", "fastening": "tapped"}
    found = flange(ledger(motor=changes), "motor")
    assert found.tapped
    assert found.hole == 6.6
    plan = sized(motor=changes)
    assert {f.kind for f in plan.features if f.group == "motor_holes"} == {"clearance_hole"}


def test_an_assumed_hole_fits_between_pilot_and_outline():
    start = ledger(REQUIRED)
    found = flange(start, "motor")
    assert start["motor.bolt_hole"].origin == "assumed"
    reach = 45 - found.hole / 2
    assert reach > 70 / 2
    assert max(abs(y) for y, _ in found.positions) + found.hole / 2 < 80 / 2


def test_rectangle_and_round_outlines():
    wide = flange(ledger(motor={"flange_size": None, "flange_shape": "rectangle", "flange_width": 84,
                                "flange_height": 100}), "motor")  # fmt: skip
    assert (wide.half_width, wide.half_height, wide.round) == (42, 50, False)
    assert flange(ledger(motor={"flange_shape": "round", "flange_size": 105}), "motor").round


def test_a_hole_without_a_thread_is_an_input_error():
    with pytest.raises(InputError, match="bolt_hole"):
        sized(motor={"bolt_hole": 1.0})
