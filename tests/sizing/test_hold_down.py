"""Base screws are enlarged or added until the joint holds, and the derivation says so."""

import pytest
from hypothesis import HealthCheck, given, settings

from blockgen.checks import check
from tests.sizing.strategies import sized, sized_or_left, tables

FEW = settings(max_examples=40, derandomize=True, deadline=None, suppress_health_check=list(HealthCheck))


def verdict(plan, name):
    return next(f.verdict for f in check(plan) if f.id == name)


def free(thrust, **changes):
    base = {"screw": None} | changes.pop("base", {})
    motor = {"mass": 4.0, "centre_of_mass": 70.0}
    return sized(base=base, screw={"thrust": thrust}, motor=motor, **changes)


def strength(plan):
    return plan.number("base_screw_count") * plan.number("base_preload")


@pytest.mark.parametrize("thrust", [500, 2000, 4000, 6000, 9000])
def test_what_the_tool_chooses_holds(thrust):
    plan = free(thrust)
    assert verdict(plan, "base_slip") == verdict(plan, "base_opening") == "pass"


def test_more_thrust_never_clamps_less():
    clamps = [strength(free(n)) for n in (200, 1000, 3000, 5000, 8000, 11000)]
    assert clamps == sorted(clamps)


def test_a_given_screw_is_kept_and_more_of_them_are_taken():
    plan = sized(base={"screw": "M8"}, screw={"thrust": 2500})
    assert plan.text("base_screw") == "M8"
    assert len(plan.records["base_pattern"].value) == plan.number("base_screw_count") == 6
    assert "more than the usual number" in plan.records["base_screw_count"].rule
    assert verdict(plan, "base_slip") == "pass"


def test_a_given_count_is_kept():
    plan = sized(base={"screw": "M8", "screw_count": 4}, screw={"thrust": 2500})
    assert plan.number("base_screw_count") == 4
    assert verdict(plan, "base_slip") == "fail"


def test_a_joint_that_would_gape_gets_stronger_screws():
    tall = {"shaft_height": 140, "friction": 0.5}
    short = free(3500, base=tall, limits={"separation_safety": 1.0})
    plan = free(3500, base=tall, limits={"separation_safety": 2.2})
    assert strength(plan) > strength(short)
    assert verdict(plan, "base_opening") == "pass"
    assert any("gape" in note for note in plan.notes)
    assert "gape" in plan.records["base_screw"].rule


def test_given_positions_lock_the_count():
    places = [[20, 50], [20, -50], [90, 50], [90, -50]]
    plan = free(9000, base={"hole_positions": places})
    assert plan.number("base_screw_count") == 4


def test_six_that_find_no_place_are_not_promised():
    plan = sized(base={"screw": "M20"}, screw={"thrust": 60000})
    assert plan.number("base_screw_count") == len(plan.records["base_pattern"].value)
    assert verdict(plan, "base_slip") == "fail"


def test_across_there_are_four():
    plan = sized(base={"screw": None}, block={"window_axis": "y"}, screw={"thrust": 2000})
    assert plan.number("base_screw_count") == 4


@FEW
@given(tables())
def test_what_is_promised_is_there(spec):
    plan = sized_or_left(spec)
    base = next(f for f in plan.fasteners if f.where == "base")
    assert base.count == plan.number("base_screw_count") == len(plan.records["base_pattern"].value)
    if "thrust" not in spec["screw"]:
        assert verdict(plan, "base_slip") == verdict(plan, "base_opening") == "not_assessed"
