from dataclasses import replace

import pytest

from blockgen.making.material import material_kind
from tests.sizing.strategies import sized


@pytest.mark.parametrize(
    ("name", "kind"), [("EN AW-6082-T6", "aluminium"), ("S355J2", "steel"), ("EN-GJL-250", "cast_iron")]
)
def test_family_of_a_listed_material(name, kind):
    assert material_kind(sized(block={"material": name})) == kind


def test_own_table_goes_before_the_standards_table():
    own = {"kind": "cast_iron", "density": 7100, "youngs_modulus": 169000, "yield_strength": 250,
           "tensile_strength": 400, "expansion": 12e-6}  # fmt: skip
    assert material_kind(sized(block={"material": "own"}, **{"material.own": own})) == "cast_iron"


def test_unknown_family_is_told():
    plan = sized()
    own = replace(plan.records["block.material"], key="material.EN AW-6082-T6.kind", value="brass")
    with pytest.raises(ValueError, match="material kind 'brass': expected steel, aluminium, cast_iron"):
        material_kind(replace(plan, records={**plan.records, own.key: own}))
