"""Pilot bores with their fits, openings behind them, and depths."""

import pytest

from tests.sizing.strategies import sized


def test_fit_and_limits_of_the_motor_bore():
    record = sized().records["motor_bore"]
    assert (record.value, record.fit, record.upper, record.lower) == (70, "H7", 0.030, 0.0)


def test_the_fit_follows_the_spec():
    assert sized(block={"bore_fit": "G7"}).records["bearing_bore"].lower == pytest.approx(0.009)


def test_the_pilot_does_not_touch_the_bottom():
    plan = sized()
    for end in ("bearing", "motor"):
        assert plan.number(f"{end}_bore_depth") > plan.number(f"{end}.pilot_length")


def test_the_opening_lets_the_coupling_swing_where_the_pilot_is_wide_enough():
    plan = sized()
    assert plan.number("motor_through_bore") >= 45 + 2 * 2
    assert plan.number("motor_through_bore") < plan.number("motor_bore")


def test_the_smaller_bore_is_reached_through_the_larger_one():
    plan = sized(coupling={"outer_diameter": 32, "bore_max": 20})
    assert plan.number("motor_through_bore") > plan.number("bearing_bore")


def test_without_a_shoulder_the_bore_goes_through_plain():
    plan = sized(bearing={"pilot_diameter": 49, "bolt_circle": 72})
    assert plan.number("bearing_through_bore") == plan.number("bearing_bore")
    assert plan.number("bearing_bore_depth") == plan.number("bearing_wall")
    assert "shoulder" not in {s.part for s in plan.feature("bearing_bore").profile}


@pytest.mark.parametrize("length", [3, 5, 8])
def test_a_longer_pilot_asks_for_a_deeper_bore(length):
    plan = sized(motor={"pilot_length": length})
    assert length + 0.5 <= plan.number("motor_bore_depth") <= length + 1.0


def test_a_pilot_that_points_away_asks_for_no_seat():
    for pilot, direction in ((50, "into_wall"), (62, "into_wall"), (62, "away")):
        bore = sized(
            bearing={"pilot_direction": direction, "pilot_diameter": pilot, "flange_size": 92, "bolt_circle": 86}
        ).feature("bearing_bore")
        starts = [s.start for s in bore.profile]
        assert starts == sorted(starts)
        assert all(s.end >= s.start for s in bore.profile), bore.profile
