"""Estimates of stiffness: marked as such, and never a failure."""

import pytest

from blockgen.checks.wall import block_stiffness, wall
from tests.sizing.strategies import sized

STIFF = {"screw": {"axial_stiffness": 95}, "bearing": {"axial_stiffness": 150}}
MOTOR = {"mass": 4.0, "centre_of_mass": 70.0, "body_length": 140}


def found(plan, name):
    return next(f for f in wall(plan) if f.id == name)


def test_estimates_say_so_and_are_never_called_safe():
    plan = sized(motor=MOTOR, limits={"first_frequency": 100}, **STIFF)
    for finding in wall(plan):
        assert "estimate" in finding.title
        assert "until finite elements confirm" in finding.explanation
        assert "conservative" not in finding.explanation + finding.source


def test_the_ratio_by_hand():
    plan = sized(**STIFF, limits={"block_stiffness_ratio": 1})
    drive = 1 / (1 / 95 + 1 / 150)
    assert found(plan, "block_stiffness").value == pytest.approx(block_stiffness(plan)[1] / 1000 / drive, rel=1e-4)


def test_a_ratio_that_only_the_side_walls_reach_is_not_passed():
    plan = sized(**STIFF)
    alone, whole = (k / 1000 * (1 / 95 + 1 / 150) for k in block_stiffness(plan))
    assert alone < plan.number("limits.block_stiffness_ratio") <= whole
    finding = found(plan, "block_stiffness")
    assert finding.verdict == "not_assessed"
    assert "too rough to tell" in finding.explanation


def test_a_stiff_screw_makes_the_block_look_soft():
    stiff = {"screw": {"axial_stiffness": 2000}, "bearing": {"axial_stiffness": 2000}}
    assert found(sized(**stiff), "block_stiffness").verdict == "warn"


def test_a_thicker_wall_and_a_lower_shaft_are_stiffer():
    plain, thick = (block_stiffness(sized(block={"bearing_wall": t})) for t in (26, 30))
    assert thick[0] > plain[0]
    assert thick[1] > plain[1]
    assert block_stiffness(sized(base={"shaft_height": 90}))[0] < block_stiffness(sized())[0]


def test_with_a_window_across_the_wall_stands_alone():
    alone, whole = block_stiffness(sized(block={"window_axis": "y"}))
    assert alone == whole


def test_stiffness_is_not_assessed_without_data():
    finding = found(sized(), "block_stiffness")
    assert finding.missing == ("screw.axial_stiffness", "bearing.axial_stiffness")
    assert "N/um" in finding.explanation


@pytest.mark.parametrize(("least", "word"), [(50, "pass"), (5000, "warn")])
def test_frequency(least, word):
    assert found(sized(motor=MOTOR, limits={"first_frequency": least}), "motor_frequency").verdict == word


def test_a_heavier_motor_is_slower():
    light, heavy = (
        found(sized(motor=MOTOR | {"mass": m}, limits={"first_frequency": 50}), "motor_frequency").value
        for m in (4.0, 8.0)
    )
    assert light == pytest.approx(heavy * 2**0.5, rel=1e-3)


def test_without_a_limit_the_frequency_is_told_and_not_judged():
    finding = found(sized(motor=MOTOR), "motor_frequency")
    assert finding.verdict == "not_assessed"
    assert "Hz" in finding.explanation
    assert found(sized(), "motor_frequency").missing == ("motor.mass", "motor.centre_of_mass")
