import pytest

from blockgen.standards.materials import material, material_names

DENSITY = {"steel": (7700, 8100), "aluminium": (2600, 2850), "cast_iron": (7000, 7400)}
MODULUS = {"steel": (190e3, 215e3), "aluminium": (68e3, 73e3), "cast_iron": (90e3, 180e3)}
EXPANSION = {"steel": (11e-6, 17e-6), "aluminium": (23e-6, 24e-6), "cast_iron": (10e-6, 13e-6)}


@pytest.mark.parametrize("name", material_names())
def test_every_material_is_plausible_and_has_a_source(name):
    found = material(name)
    for value, ranges in ((found.density, DENSITY), (found.youngs_modulus, MODULUS), (found.expansion, EXPANSION)):
        low, high = ranges[found.kind]
        assert low <= value <= high
    assert 0.2 < found.poisson < 0.35
    assert found.yield_strength < found.tensile_strength
    assert found.shear_strength == pytest.approx(0.6 * found.tensile_strength)
    assert "no source" in found.shear_rule
    assert found.source
    assert found.status in {"read", "memory"}


@pytest.mark.parametrize("written", ["6082", "en aw-6082-t6", "EN AW - 6082 - T6", "6082-T651"])
def test_spellings(written):
    assert material(written).name == "EN AW-6082-T6"


def test_values_of_thick_6082_plate():
    found = material("6082")
    assert (found.yield_strength, found.tensile_strength, found.bearing_pressure) == (240, 295, 260)


@pytest.mark.parametrize(("name", "printed"), [("S355", "Eurocode 3 prints 490"), ("6061", "276/310")])
def test_sources_that_disagree_are_named(name, printed):
    assert printed in material(name).source


def test_pressure_may_be_unknown():
    assert material("6061").bearing_pressure is None


@pytest.mark.parametrize(("written", "near"), [("6028", "6082"), ("S335", "S355"), ("EN AW-6028-T6", "EN AW-6082-T6")])
def test_unknown_material_suggests_the_nearest(written, near):
    with pytest.raises(ValueError, match=f'material "{written}".*nearest: .*{near}'):
        material(written)
