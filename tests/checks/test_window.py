"""Checks of the window: each can hold and each can miss."""

from dataclasses import replace

import pytest

from blockgen.checks.window import window
from tests.sizing.strategies import sized

TAPPED = {"bolt_hole": None, "bolt_thread": "M6", "fastening": "tapped"}


def verdict(plan, name):
    return next(f for f in window(plan) if f.id == name).verdict


def test_window_cut():
    assert verdict(sized(block={"cutter_diameter": 20}), "window_cut") == "pass"
    assert verdict(sized(block={"cutter_diameter": 10}), "window_cut") == "warn"


@pytest.mark.parametrize(
    ("width", "corner", "word"), [(70, 9, "pass"), (47, 1, "warn"), (47, 9, "fail"), (44, 9, "fail")]
)
def test_coupling_swing(width, corner, word):
    block = {"window_width": width, "window_corner_radius": corner, "cutter_diameter": corner}
    assert verdict(sized(block=block), "coupling_swing") == word


@pytest.mark.parametrize("floor", [30, 40])
def test_a_pocket_floor_lets_the_coupling_swing(floor):
    assert verdict(sized(block={"window_floor": floor}), "coupling_over_floor") == "pass"


def test_a_pocket_floor_too_high_for_the_clearance():
    assert verdict(sized(block={"window_floor": 41}), "coupling_over_floor") in {"warn", "fail"}  # 1.5 mm are left


def test_a_pocket_floor_that_the_coupling_touches():
    assert verdict(sized(block={"window_floor": 44}), "coupling_over_floor") == "fail"


def test_a_thin_floor_is_a_warning():
    assert verdict(sized(block={"window_floor": 20}), "window_floor") == "pass"
    assert verdict(sized(block={"window_floor": 2}), "window_floor") == "warn"


def test_a_through_window_has_no_floor():
    assert "window_floor" not in {f.id for f in window(sized())}


def test_a_low_shaft_lets_the_coupling_swing_over_the_base_or_fails():
    plan = sized(coupling={"outer_diameter": 84, "bore_max": 40}, bearing={"pilot_diameter": 60, "bolt_circle": 84})
    assert verdict(plan, "coupling_over_floor") == "pass"
    records = {**plan.records, "shaft_height": replace(plan.records["shaft_height"], value=40.0)}
    assert verdict(replace(plan, records=records), "coupling_over_floor") == "fail"


def test_heads_of_a_tapped_flange_on_the_flat_of_the_wall():
    plan = sized(motor=TAPPED)
    assert verdict(plan, "motor_screw_heads") == "pass"
    assert verdict(sized(motor=TAPPED, block={"window_width": 60}), "motor_screw_heads") == "fail"
    assert "motor_screw_heads" not in {f.id for f in window(sized())}


def test_the_key_passes_the_coupling_or_the_screws_go_in_first():
    assert verdict(sized(motor=TAPPED), "motor_screw_key") == "pass"
    records = {**sized(motor=TAPPED).records}
    records["coupling.swing_diameter"] = replace(records["coupling.swing_diameter"], value=84.0)
    assert verdict(replace(sized(motor=TAPPED), records=records), "motor_screw_key") == "warn"
