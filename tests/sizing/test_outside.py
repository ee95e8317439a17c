"""Width and height: flanges wholly on their seats, off edge breaks and fillets."""

import pytest

from tests.sizing.strategies import sized


@pytest.mark.parametrize("size", [60, 80, 95, 110])
def test_the_width_holds_the_motor_flange(size):
    plan = sized(motor={"flange_size": size + 20, "flange_shape": "square", "bolt_circle": 90})
    assert plan.number("width") >= size + 20 + 2 * 0.5


def test_a_fillet_makes_the_block_wider_and_lies_outside_the_flange():
    plan = sized(block={"outer_fillet": 12}, motor={"flange_size": 100})
    assert plan.number("width") >= 100 + 2 * 12
    assert plan.number("width") > sized(motor={"flange_size": 100}).number("width")


def test_the_height_holds_the_higher_flange():
    plan = sized(motor={"flange_size": None, "flange_shape": "rectangle", "flange_width": 80, "flange_height": 104})
    assert plan.number("height") >= 65 + 52 + 0.5


def test_a_window_across_has_a_roof():
    plan = sized(block={"window_axis": "y"}, bearing={"spanner_diameter": 80})
    roof = plan.number("height") - plan.number("shaft_height") - plan.number("window_width") / 2
    assert roof >= 5


def test_side_walls_and_window_make_the_width():
    plan = sized()
    assert 2 * plan.number("side_wall") + plan.number("window_width") == pytest.approx(plan.number("width"))


def test_given_width_and_height_are_kept():
    plan = sized(block={"width": 130, "height": 120})
    assert (plan.number("width"), plan.number("height")) == (130, 120)


def test_a_given_side_wall_is_kept():
    assert sized(block={"side_wall": 40}).number("side_wall") == 40.0
