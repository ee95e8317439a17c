"""What one step tighter means for each kind of cause."""

import pytest

from blockgen.alignment.steps import step_of
from blockgen.alignment.terms import terms_of
from tests.sizing.strategies import sized


def steps(**changes):
    plan = sized(**changes)
    return {term.id: step_of(plan, term) for term in terms_of(plan)}


def test_a_motor_goes_to_the_reduced_class():
    step = steps()["motor_spigot_runout"]  # IEC 60072-1 as reprinted: 40 to 100 mm: 0.08 normal, 0.04 reduced
    assert (step.before, step.after, step.cost) == (0.08, 0.04, "moderate")
    assert step.scatter.size == pytest.approx(0.02)


def test_the_shaft_has_its_own_class():
    step = steps()["motor_shaft_runout"]  # 18 to 30 mm: 0.040 normal, 0.021 reduced
    assert (step.before, step.after) == (0.04, 0.021)


def test_below_the_reduced_class_a_motor_is_selected():
    step = steps(motor={"spigot_runout": 0.03})["motor_spigot_runout"]
    assert (step.after, step.cost) == (0.015, "large")


def test_a_bore_goes_one_grade_finer():
    step = steps()["motor_pilot_clearance"]  # ISO 286-1: 70 H7 0.030, H6 0.019
    assert (step.before, step.after, step.key) == ("H7", "H6", "block.bore_fit")
    assert step.scatter.high == pytest.approx(0.060 - 0.011)
    assert step.scatter.hole_tolerance == pytest.approx(0.019)


def test_a_bore_of_grade_5_has_no_finer_one():
    assert steps(block={"bore_fit": "H5"})["motor_pilot_clearance"] is None


def test_zones_go_down_the_usual_series():
    found = steps(block={"coaxiality": 0.03, "seat_perpendicularity": 0.01})
    assert found["bore_coaxiality"].after == 0.02
    assert found["motor_seat_perpendicularity"].after == 0.005


def test_a_zone_at_the_end_of_the_series_stays():
    assert steps(block={"coaxiality": 0.005})["bore_coaxiality"] is None


def test_a_bearing_unit_goes_to_half():
    step = steps()["bearing_runout"]
    assert (step.before, step.after, step.purchase) == (0.01, 0.005, "bearing class")


def test_no_step_makes_a_cause_greater():
    for term in terms_of(plan := sized()):
        step = step_of(plan, term)
        assert step is None or max(step.scatter.size, step.scatter.high) < max(term.scatter.size, term.scatter.high)
