"""The window is widened, or its cutter changed, until coupling and screw heads have their room."""

import math

import pytest

from blockgen.checks import check
from tests.sizing.strategies import REQUIRED, sized

TAPPED = {"bolt_hole": None, "bolt_thread": "M6", "fastening": "tapped"}


def verdict(plan, name):
    return next(f for f in check(plan) if f.id == name).verdict


def test_the_window_is_widened_for_its_corners_and_says_so():
    plan = sized(REQUIRED)
    swing, clear = plan.number("coupling.swing_diameter"), plan.number("coupling.clearance")
    assert plan.number("window_width") > swing + 2 * clear
    assert any("wider" in note for note in plan.notes)


def test_the_coupling_clears_sides_and_corners_by_its_clearance():
    plan = sized()
    half, radius = plan.number("window_width") / 2, plan.number("window_corner_radius")
    swing, setting = plan.number("coupling.swing_diameter") / 2, plan.number("practice.setting_tolerance")
    depth = max(0.0, plan.number("coupling_position") - setting - plan.number("bearing_wall"))
    corner = radius - math.hypot(radius - depth, max(0.0, swing - half + radius)) if swing > half - radius else half
    assert min(half - swing, corner) >= plan.number("coupling.clearance")


def test_holes_that_straddle_the_edge_do_not_make_a_layout_impossible():
    plan = sized(coupling={"swing_diameter": 50})  # 54 wide, the edge would cut the motor's holes at y = 31.8
    assert plan.number("window_width") >= 54
    assert not any(f.verdict == "fail" for f in check(plan))


@pytest.mark.parametrize("axis", ["z", "y"])
def test_a_tapped_flange_does_not_double_the_block(axis):
    plan = sized(motor=TAPPED, block={"window_axis": axis})
    assert verdict(plan, "motor_screw_heads") == "pass"
    heads = 2 * (90 / 2 * 0.7071 + 10 / 2)
    assert plan.number("window_width") <= heads + 25


def test_a_given_width_is_never_widened():
    plan = sized(REQUIRED, block={"window_width": 51})
    assert plan.number("window_width") == 51


def test_a_given_cutter_is_kept():
    assert sized(REQUIRED, block={"cutter_diameter": 16}).number("block.cutter_diameter") == 16
