"""Tests of what a re-machined block has other than the new design asks."""

import pytest

from blockgen.change.rework.data import Attempt
from blockgen.change.rework.departures import departures
from blockgen.change.rework.rework import rework
from blockgen.change.rework.rows import verdict
from tests.change import blocks
from tests.sizing.strategies import sized

OWN = {
    "kind": "aluminium", "density": "2700 kg/m^3", "youngs_modulus": "70 GPa", "poisson": 0.33,
    "yield_strength": "240 MPa", "tensile_strength": "290 MPa", "shear_strength": "180 MPa",
    "expansion": "23.4e-6 1/K", "bearing_pressure": "300 MPa",
}  # fmt: skip


@pytest.mark.parametrize(
    ("tables", "told"),
    [
        ({"block": {"material": "S355J2"}}, "material EN AW-6082-T6 instead of S355J2"),
        ({"base": {"screw": "M8"}}, "base screws M10 instead of M8"),
        ({"base": {"screw_from": "below"}}, "base screws put in from above instead of below"),
    ],
)
def test_what_the_old_block_has_otherwise_is_told_and_not_called_the_new_one(tables, told):
    found = rework(blocks.old(), sized(**tables), prove=False)
    assert found.feasible
    assert told in found.departures
    assert "is the new one already" not in verdict(found)


def test_another_material_refuses_the_new_design_as_drawn():
    found = rework(blocks.old(), sized(block={"material": "S355J2"}), prove=False)
    assert "material" in {reason.id for reason in found.as_drawn}


def test_a_block_of_a_material_of_its_own_keeps_the_values_of_it():
    old = sized(block={"material": "alloy of our own"}, **{'material."alloy of our own"': OWN})
    found = rework(old, blocks.old(), prove=False)
    assert found.feasible
    assert "material alloy of our own instead of EN AW-6082-T6" in found.departures


def test_a_bearing_seat_that_is_cut_back_moves_the_screw():
    old = blocks.old()
    told = list(departures(old, old, old, Attempt("fitted", 0.0, 2.5, 105.5)))
    assert len(told) == 1
    assert told[0].startswith("the bearing seat stands 2.5 mm nearer to the motor on the same base: screw, its other")


def test_a_finish_that_is_not_wanted_any_longer_stays():
    old = sized(block={"finish": "anodised"})
    assert any("keeps its finish (anodised)" in text for text in rework(old, blocks.old(), prove=False).departures)
