"""Loads as records: what is given, what is added, what is missing."""

import pytest

from blockgen.sizing.loads import (
    decide_loads,
    missing_for_opening,
    missing_for_pull,
    missing_for_slip,
    motor_torque,
    motor_weight,
)
from tests.sizing.strategies import ledger


def decided(**changes):
    found = ledger(**changes)
    decide_loads(found)
    return found


@pytest.mark.parametrize(
    ("direction", "towards", "away"), [("both", 3000, 3000), ("towards_motor", 3000, 0), ("away", 0, 3000)]
)
def test_direction(direction, towards, away):
    found = decided(screw={"thrust_direction": direction})
    assert (found.number("thrust_towards_motor"), found.number("thrust_away")) == (towards, away)


@pytest.mark.parametrize(("gravity", "key"), [("+x", "thrust_towards_motor"), ("-x", "thrust_away")])
def test_what_hangs_on_a_vertical_axis_pulls_down(gravity, key):
    found = decided(job={"gravity": gravity}, screw={"moved_mass": 100, "thrust_direction": "both"})
    other = {"thrust_towards_motor", "thrust_away"} - {key}
    assert found.number(key) == pytest.approx(3980.665)
    assert found.number(other.pop()) == 3000
    assert "screw.moved_mass x 9.80665" in found[key].rule


@pytest.mark.parametrize("thrust", [None, 0])
def test_without_a_thrust_there_is_no_load(thrust):
    found = decided(screw={"thrust": thrust})
    assert not [record.key for record in found if record.key.startswith(("thrust_", "slip_safety_"))]


@pytest.mark.parametrize(
    ("change", "wanted"),
    [
        ({}, 1.8),
        ({"screw": {"reversing": False}}, 1.5),
        ({"limits": {"slip_safety": 2.0}}, 2.0),
    ],
)
def test_safety_asked_of_friction(change, wanted):
    assert decided(**change).number("slip_safety_wanted") == pytest.approx(wanted)


def test_weight_points_down():
    heavy = ledger(motor={"mass": 10}, job={"gravity": "+y"}).frozen()
    assert motor_weight(heavy) == pytest.approx((0.0, 98.0665, 0.0))
    assert motor_weight(ledger().frozen()) == (0.0, 0.0, 0.0)


def test_peak_torque_before_rated():
    assert motor_torque(ledger(motor={"rated_torque": 3}).frozen()) == 8
    assert motor_torque(ledger(motor={"rated_torque": 3, "peak_torque": None}).frozen()) == 3
    assert motor_torque(ledger(motor={"peak_torque": None}).frozen()) == 0


def test_what_is_missing():
    flat, upright, side = (ledger(job={"gravity": g}).frozen() for g in ("-z", "+x", "+y"))
    assert missing_for_slip(flat) == missing_for_pull(flat) == ()
    assert missing_for_slip(upright) == ("screw.moved_mass", "motor.mass")
    assert missing_for_slip(side) == ("motor.mass", "motor.centre_of_mass")
    assert missing_for_pull(upright) == ("screw.moved_mass",)
    assert missing_for_opening(flat) == ("motor.mass", "motor.centre_of_mass")
    assert "screw.thrust" in missing_for_opening(ledger(screw={"thrust": None}).frozen())
