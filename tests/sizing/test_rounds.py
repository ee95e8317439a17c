"""The window is widened, or its cutter changed, until coupling and screw heads have their room."""

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


def test_a_coupling_that_ends_in_wide_bores_needs_no_wider_window():
    plan = sized()
    assert plan.number("window_width") == 49.0  # swing and two clearances
    assert not any("wider because" in note for note in plan.notes)


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
