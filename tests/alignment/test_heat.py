"""Heat: growth of clearances, height of the screw against its guide."""

import pytest

from blockgen.alignment.heat import Expansions, clearance_growth, heat_effect, heat_term, height_error, temperatures_of
from tests.sizing.strategies import sized

ALUMINIUM, STEEL = 23.4e-6, 11.5e-6
PARTS = Expansions(ALUMINIUM, STEEL, STEEL, STEEL)
WARM = {"assembly_temperature": 20, "block_temperature": 50, "nut_side_temperature": 35}


def test_steel_70_in_aluminium_30_k_warmer():
    assert clearance_growth(70.0, ALUMINIUM, STEEL, 30.0) == pytest.approx(0.025, abs=0.0005)


def test_like_materials_stay_as_they_are():
    assert clearance_growth(70.0, STEEL, STEEL, 30.0) == 0.0
    assert height_error(65.0, STEEL, 10.0, STEEL, 10.0) == 0.0


def test_a_warmer_block_lifts_the_screw():
    assert height_error(100.0, ALUMINIUM, 30.0, STEEL, 15.0) == pytest.approx(100 * (23.4e-6 * 30 - 11.5e-6 * 15))


def test_no_temperatures_no_heat():
    assert temperatures_of(sized()) is None
    assert temperatures_of(sized(thermal={"assembly_temperature": 20, "block_temperature": 50})) is None


def test_the_height_reaches_the_coupling_as_an_angle_over_the_distance_to_the_nut():
    plan = sized(thermal=WARM, screw={"nut_distance_min": 200})
    effect = heat_effect(plan, PARTS, temperatures_of(plan))
    assert effect.angle == pytest.approx(effect.height_error / 200)
    term = heat_term(plan, effect)
    assert abs(term.offset_factor * term.scatter.vector[1]) < effect.height_error
    assert term.angle_factor == -1.0


def test_without_a_distance_there_is_no_angle():
    plan = sized(thermal=WARM)
    effect = heat_effect(plan, PARTS, temperatures_of(plan))
    assert effect.angle is None
    assert heat_term(plan, effect) is None


def test_growth_counts_from_20_degrees():
    plan = sized(thermal=WARM | {"assembly_temperature": 30})
    effect = heat_effect(plan, PARTS, temperatures_of(plan))
    assert effect.motor_growth == pytest.approx(clearance_growth(70.0, ALUMINIUM, STEEL, 30.0))
