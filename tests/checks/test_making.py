"""Checks of making and assembling: each can hold and each can miss."""

from dataclasses import replace

import pytest

from blockgen.checks.making import making
from tests.sizing.strategies import sized


def verdict(plan, name):
    return next(f for f in making(plan) if f.id == name).verdict


def with_value(plan, **values):
    records = {**plan.records, **{k: replace(plan.records[k], value=v) for k, v in values.items()}}
    return replace(plan, records=records)


def test_bores_in_one_setup():
    plan = sized()
    assert plan.number("motor_through_bore") < plan.number("motor_bore")
    assert verdict(plan, "bores_in_one_setup") == "pass"
    assert verdict(with_value(plan, motor_through_bore=49.0), "bores_in_one_setup") == "warn"


def test_a_smaller_bore_with_a_step_faces_away_from_the_larger_one():
    assert verdict(with_value(sized(), bearing_through_bore=44.0), "bores_in_one_setup") == "warn"


def test_boring_bar():
    assert verdict(sized(), "boring_bar") == "pass"
    assert verdict(with_value(sized(), length=160.0), "boring_bar") == "warn"


def test_nut_spanner():
    assert verdict(sized(), "nut_spanner") == "pass"
    assert verdict(sized(bearing={"spanner_diameter": None}), "nut_spanner") == "not_assessed"
    assert verdict(with_value(sized(), bearing_through_bore=33.0), "nut_spanner") == "warn"


def test_nut_passes_the_bore():
    assert verdict(sized(), "nut_passes") == "pass"
    assert verdict(sized(bearing={"nut_outer_diameter": None}), "nut_passes") == "not_assessed"
    assert verdict(with_value(sized(), bearing_through_bore=29.0), "nut_passes") == "fail"


def test_coupling_leaves_through_a_wide_motor_bore():
    assert verdict(sized(), "coupling_removal") == "pass"


def test_coupling_does_not_leave_through_a_narrow_motor_bore():
    narrow = {"motor": {"pilot_diameter": 40, "bolt_circle": 90}, "bearing": {"pilot_diameter": 50}}
    plan = sized(**narrow)
    free = plan.number("length") - plan.number("motor_wall") - plan.number("coupling_position") - 60
    assert (verdict(plan, "coupling_removal") == "pass") == (free >= plan.number("journal_grip"))
    assert verdict(with_value(plan, journal_grip=60.0), "coupling_removal") == "warn"


def test_a_coating_is_a_warning():
    assert "coating" not in {f.id for f in making(sized())}
    assert verdict(sized(block={"finish": "hard anodised", "coating_thickness": 0.03}), "coating") == "warn"


def test_a_heavy_block_is_pointed_out():
    assert "lifting" not in {f.id for f in making(sized())}
    heavy = sized(motor={"flange_size": 200}, base={"shaft_height": 120}, block={"material": "S355J2"})
    assert verdict(heavy, "lifting") == "pass"


def test_dowels_that_have_no_room_fail():
    plan = sized(base={"dowels": 6})
    assert "dowels" not in {f.id for f in making(plan)}
    without = replace(plan, features=tuple(f for f in plan.features if f.kind != "dowel_hole"))
    assert verdict(without, "dowels") == "fail"


@pytest.mark.parametrize(("shaft", "word"), [(40, "pass"), (250, "warn")])
def test_a_deep_counterbore_is_a_warning(shaft, word):
    assert verdict(sized(base={"shaft_height": shaft + 2}), "counterbore_depth") == word
