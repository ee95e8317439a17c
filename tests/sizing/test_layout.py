"""Walls shrink only as far as a layout needs, and never below their floor."""

import pytest

from blockgen.checks import check
from blockgen.errors import InfeasibleError
from tests.sizing.strategies import sized


def test_walls_keep_their_usual_thickness_where_there_is_room():
    plan = sized(block={"material": "S355J2"})
    assert plan.number("motor_wall") == 20.0
    assert not [note for note in plan.notes if "thinned" in note]


def test_a_wall_is_thinned_for_a_short_shaft_and_says_so():
    plan = sized(motor={"shaft_length": 28}, block={"material": "S355J2"})
    assert plan.number("motor_wall_least") <= plan.number("motor_wall") < 20.0
    assert any("motor wall" in note and "thinned" in note for note in plan.notes)


def test_a_thinned_wall_is_not_thinner_than_needed():
    plan = sized(motor={"shaft_length": 28}, block={"material": "S355J2"})
    thicker = sized(
        motor={"shaft_length": 28},
        block={"material": "S355J2", "motor_wall": plan.number("motor_wall") + 1.0,
               "bearing_wall": plan.number("bearing_wall")},
    )  # fmt: skip
    assert next(f for f in check(thicker) if f.id == "axial_layout").verdict == "warn"


def test_a_given_wall_is_not_thinned():
    assert sized(block={"bearing_wall": 28}).number("bearing_wall") == 28.0
    with pytest.raises(InfeasibleError, match="key to bearing-side clamp screw"):
        sized(block={"bearing_wall": 34})


def test_length_available_bounds_the_length():
    plan = sized(base={"length_available": 103})
    assert plan.number("length_max") == 103.0
    assert plan.number("length") <= 103.0


def test_a_given_window_length_fixes_the_length():
    plan = sized(block={"window_length": 62})
    assert plan.number("window_length") == 62.0
    assert plan.number("length") == pytest.approx(plan.number("bearing_wall") + plan.number("motor_wall") + 62)
