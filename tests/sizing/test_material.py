"""Materials: from the table, or the user's own."""

import pytest

from blockgen.errors import InputError
from tests.sizing.strategies import sized

OWN = {"kind": "steel", "density": 7900, "youngs_modulus": 200000, "yield_strength": 300, "tensile_strength": 450,
       "expansion": 1.2e-5}  # fmt: skip


def test_a_material_of_the_table():
    assert sized(block={"material": "S355J2"}).material_density == pytest.approx(7850, rel=0.01)


def test_a_material_of_the_user_s_own():
    plan = sized(**{"block": {"material": "Own"}, "material.Own": OWN})
    assert plan.material_density == 7900
    assert plan.number("motor_engagement_least") < sized().number("motor_engagement_least")


def test_an_unknown_material_lists_the_known_ones():
    with pytest.raises(InputError, match=r"block\.material"):
        sized(block={"material": "wood"})
