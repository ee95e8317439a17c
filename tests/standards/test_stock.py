from itertools import pairwise

import pytest

from blockgen.standards.stock import bar_sections, plate_thicknesses


@pytest.mark.parametrize("kind", ["steel", "aluminium"])
def test_sections_are_no_thicker_than_wide_and_differ(kind):
    bars = bar_sections(kind)
    assert all(0 < bar.thickness <= bar.width for bar in bars)
    assert len({(bar.form, bar.thickness, bar.width) for bar in bars}) == len(bars)
    assert all(bar.thickness == bar.width for bar in bars if bar.form == "square bar")


@pytest.mark.parametrize("kind", ["steel", "aluminium"])
def test_plates_come_thinnest_first(kind):
    plates = [plate.thickness for plate in plate_thicknesses(kind)]
    assert plates
    assert all(thin < thick for thin, thick in pairwise(plates))


def test_steel_and_aluminium_have_lists_of_their_own():
    steel, aluminium = ({bar.standard for bar in bar_sections(kind)} for kind in ("steel", "aluminium"))
    assert steel == {"EN 10058", "EN 10059"}
    assert aluminium == {"EN 755-4", "EN 755-5"}


def test_cast_iron_has_no_list():
    assert bar_sections("cast_iron") == ()
    assert plate_thicknesses("cast_iron") == ()
