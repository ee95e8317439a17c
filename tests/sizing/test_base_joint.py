"""Loads on the base joint: symmetric patterns, senses, and what moves it which way."""

import math

import pytest
from hypothesis import HealthCheck, given, settings
from hypothesis import strategies as st

from blockgen.record import Record
from blockgen.sizing import base_joint as joint
from tests.sizing.strategies import sized

SETTINGS = settings(max_examples=60, derandomize=True, deadline=None, suppress_health_check=list(HealthCheck))
PLAN = sized(motor={"mass": 4.0, "centre_of_mass": 70.0}, base={"screw_count": 4})
FOUR = ((15.0, 40.0), (15.0, -40.0), (90.0, 40.0), (90.0, -40.0))
SIX = (*FOUR, (52.5, 40.0), (52.5, -40.0))


def with_values(**values):
    changed = {key: Record(key, value, "", "sized", "for the test") for key, value in values.items()}
    return {**PLAN.records, **changed}


def test_the_face_is_the_outline_less_the_window():
    face = joint.base_face(PLAN.records)
    window = PLAN.number("window_length") * PLAN.number("window_width")
    assert face.area == pytest.approx(PLAN.number("length") * PLAN.number("width") - window)
    closed = joint.base_face(with_values(**{"block.window_floor": 8.0}))
    assert closed.area == pytest.approx(PLAN.number("length") * PLAN.number("width"))


def test_a_relief_is_not_taken_off_twice():
    start, end, width = PLAN.number("bearing_wall"), PLAN.number("bearing_wall") + 20, PLAN.number("width")
    plain, cut = joint.base_face(PLAN.records), joint.base_face(PLAN.records, (start, end))
    assert plain.area - cut.area == pytest.approx(20 * (width - PLAN.number("window_width")))


def test_tilting_by_hand():
    """Thrust at shaft height over the screws' lever arms, weight and torque aside."""
    records = with_values(**{"motor.mass": 0.0, "motor.peak_torque": 0.0})
    lever = 37.5
    expected = 3000 * PLAN.number("shaft_height") * lever / (4 * lever**2)
    assert joint.base_screw_load(records, FOUR) == pytest.approx(expected)


def test_screws_in_one_row_feel_nothing_of_tilting_along():
    records = with_values(**{"motor.mass": 0.0, "motor.peak_torque": 0.0})
    assert joint.base_screw_load(records, ((50.0, 40.0), (50.0, -40.0))) == 0.0


@SETTINGS
@given(st.floats(100, 1e5), st.floats(1.0, 4.0), st.floats(0.05, 0.5), st.floats(1.0, 2.0))
def test_slip_is_monotone(thrust, more, friction, better):
    base = {"thrust_towards_motor": thrust, "thrust_away": thrust, "base.friction": friction}
    plain = joint.base_slip(with_values(**base), FOUR, 1e4)
    pushed = with_values(**base | {"thrust_towards_motor": thrust * more, "thrust_away": thrust * more})
    assert joint.base_slip(pushed, FOUR, 1e4) <= plain * (1 + 1e-9)
    assert joint.base_slip(with_values(**base | {"base.friction": friction * better}), FOUR, 1e4) >= plain * (1 - 1e-9)
    assert joint.base_slip(with_values(**base), SIX, 1e4) == pytest.approx(1.5 * plain)
    assert joint.base_slip(with_values(**base), FOUR, 1e4 * better) == pytest.approx(better * plain)


@SETTINGS
@given(st.floats(100, 1e5), st.floats(1.0, 4.0))
def test_opening_is_monotone(thrust, more):
    face = joint.base_face(PLAN.records)
    low, high = (
        joint.base_opening(with_values(thrust_towards_motor=t, thrust_away=t), FOUR, 1e4, face)
        for t in (thrust, thrust * more)
    )
    assert high <= low * (1 + 1e-9)
    records = with_values(thrust_towards_motor=thrust, thrust_away=thrust)
    assert joint.base_opening(records, SIX, 1e4, face) > joint.base_opening(records, FOUR, 1e4, face)


@SETTINGS
@given(st.floats(-20, 20))
def test_a_pattern_beside_the_shaft_slips_sooner(aside):
    moved = tuple((x, y + aside) for x, y in FOUR)
    safety = joint.base_slip(PLAN.records, moved, 1e4)
    assert safety <= joint.base_slip(PLAN.records, FOUR, 1e4) + 1e-9
    assert safety == pytest.approx(joint.base_slip(PLAN.records, tuple((x, -y) for x, y in moved), 1e4))


def test_without_loads_nothing_gives_way():
    records = with_values(thrust_towards_motor=0.0, thrust_away=0.0, **{"motor.mass": 0.0, "motor.peak_torque": 0.0})
    assert joint.base_slip(records, FOUR, 1e4) == math.inf
    assert joint.base_opening(records, FOUR, 1e4, joint.base_face(records)) == math.inf


def test_lifted_upside_down_it_slips_sooner():
    hanging = with_values(**{"job.gravity": "+z", "motor.mass": 100.0})
    assert joint.base_slip(hanging, FOUR, 1e4) < joint.base_slip(PLAN.records, FOUR, 1e4)


def test_heat():
    springs = joint.resiliences(PLAN.records)
    assert joint.thermal_gain(PLAN.records, springs) == 0.0
    warm = with_values(**{"thermal.assembly_temperature": 20.0, "thermal.block_temperature": 40.0})
    cold = with_values(**{"thermal.assembly_temperature": 40.0, "thermal.block_temperature": 20.0})
    gain = joint.thermal_gain(warm, springs)
    assert gain > 0
    assert joint.thermal_gain(cold, springs) == pytest.approx(-gain)
    slack = (PLAN.number("block_expansion") - 11.5e-6) * 20 * joint.clamped_length(PLAN.records)
    assert gain == pytest.approx(slack / sum(springs))
    assert joint.screw_state(cold, FOUR, 1e4).sure == pytest.approx(1e4 - gain)


def test_a_screw_feels_a_part_of_a_load():
    assert 0 < joint.screw_state(PLAN.records, FOUR, 1e4).share < 0.5
