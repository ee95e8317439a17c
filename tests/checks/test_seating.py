"""Checks of the seats: each can hold and each can miss."""

import pytest

from blockgen.checks.seating import half_sizes, seating
from tests.sizing.strategies import sized


def verdict(plan, name):
    return next(f for f in seating(plan) if f.id == name).verdict


def test_flanges_wholly_seated():
    plan = sized()
    assert verdict(plan, "motor_flange_seated") == verdict(plan, "bearing_flange_seated") == "pass"


@pytest.mark.parametrize(
    "change", [{"block": {"width": 80}}, {"block": {"height": 104}}, {"base": {"shaft_height": 38}}]
)
def test_a_flange_over_the_edge(change):
    plan = sized(**change)
    assert verdict(plan, "motor_flange_seated") == "fail"


def test_a_flange_on_the_fillet_is_not_seated():
    plan = sized(block={"width": 97, "outer_fillet": 9}, motor={"flange_size": 80})
    assert verdict(plan, "motor_flange_seated") == "fail"


def test_contact_ring():
    assert verdict(sized(), "motor_contact_ring") == "pass"
    assert (
        verdict(sized(motor={"pilot_diameter": 78, "bolt_circle": 97, "bolt_hole": 5.5}), "motor_contact_ring")
        != "pass"
    )


@pytest.mark.parametrize(("length", "word"), [(3, "pass"), (1.5, "warn")])
def test_pilot_engagement(length, word):
    assert verdict(sized(motor={"pilot_length": length}), "motor_pilot_engagement") == word


def test_a_pilot_that_points_away_centres_nothing():
    assert verdict(sized(bearing={"pilot_direction": "away"}), "bearing_pilot_engagement") == "warn"


@pytest.mark.parametrize(("fit", "count"), [("H7", 0), ("N7", 1)])
def test_a_tight_pilot_is_a_warning(fit, count):
    found = [f for f in seating(sized(block={"bore_fit": fit})) if f.id == "motor_pilot_fit"]
    assert [f.verdict for f in found] == ["warn"] * count


def test_the_wall_carries_the_bearing_pilot():
    assert verdict(sized(), "bearing_pilot_carried") == "pass"
    assert verdict(sized(block={"bearing_wall": 10}), "bearing_pilot_carried") == "warn"


@pytest.mark.parametrize(("size", "word"), [(80, "pass"), (128, "pass"), (129, "warn"), (None, "not_assessed")])
def test_motor_body_above_the_base(size, word):
    assert verdict(sized(motor={"body_size": size} if size else {"body_size": None}), "motor_above_base") == word


def test_half_sizes_of_a_rectangle():
    plan = sized(motor={"flange_size": None, "flange_shape": "rectangle", "flange_width": 84, "flange_height": 100})
    assert half_sizes(plan, "motor") == (42, 50)
