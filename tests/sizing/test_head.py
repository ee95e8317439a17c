"""Washers under the base screws: where the bare head is too much for the block."""

import pytest

from blockgen.standards.din974 import counterbore
from tests.sizing.strategies import sized


def test_aluminium_gets_a_washer_and_the_counterbore_takes_it():
    plan = sized()
    assert plan.text("base_washer") == "ISO 7092 M10 200 HV"
    assert plan.number("base_counterbore_diameter") == counterbore("M10").with_small_washer
    assert next(f for f in plan.fasteners if f.where == "base").washer == "ISO 7092 M10 200 HV"
    assert "> 260 allowed" in plan.records["base_washer"].rule
    assert plan.feature("base_screw_1").counterbore_diameter == 20


@pytest.mark.parametrize("material", ["S355J2", "EN-GJL-250", "EN AW-7075-T6", "EN AW-6061-T6"])
def test_no_washer_where_the_head_does_no_harm_or_nothing_is_known(material):
    plan = sized(block={"material": material})
    assert "base_washer" not in plan.records
    assert plan.number("base_counterbore_diameter") == counterbore("M10").diameter
    assert next(f for f in plan.fasteners if f.where == "base").washer is None


def test_from_below_the_heads_do_not_sit_in_the_block():
    assert "base_washer" not in sized(base={"screw_from": "below"}).records


def test_a_weak_screw_needs_none():
    assert "base_washer" not in sized(base={"property_class": "A2-70"}).records


@pytest.mark.parametrize("height", [50, 65, 120, 200])
def test_the_head_sinks_in_with_its_washer(height):
    from blockgen.standards.screws import cap_screw

    plan = sized(base={"shaft_height": height})
    washer = plan.number("base_washer_thickness")
    assert plan.number("base_counterbore_depth") >= cap_screw("M10").head_height + washer + 0.4
