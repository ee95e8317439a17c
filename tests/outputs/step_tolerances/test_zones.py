"""Tests of geometrical tolerances: width, feature, datums in order, form of the zone."""

from dataclasses import replace

import pytest

from blockgen.outputs.step_tolerances.records import Zone
from tests.outputs.part21_reader import Ref, Typed, of_type
from tests.outputs.step_tolerances.written import BORE, HOLES, MM, SEAT, A, C, only, written

POSITION = Zone("holes.position", "position", HOLES, 0.3, ("C", "A"), diametral=True)
COAXIAL = Zone("bore.coaxiality", "coaxiality", BORE, 0.02, ("A",), diametral=True)


def letters(entities, system):
    places = entities[system.number]["DATUM_SYSTEM"][4]
    datums = [entities[p.number]["DATUM_REFERENCE_COMPARTMENT"][4] for p in places]
    return [entities[d.number]["DATUM"][4] for d in datums]


def test_flatness_has_no_datum():
    entities = written(A, Zone("bearing_seat.flatness", "flatness", SEAT, 0.01, (), diametral=False))
    name, _, width, aspect = only(entities, "FLATNESS_TOLERANCE")
    assert name == "bearing_seat.flatness"
    assert entities[width.number]["LENGTH_MEASURE_WITH_UNIT"] == (Typed("LENGTH_MEASURE", (0.01,)), MM)
    assert "DATUM_FEATURE" in entities[aspect.number]
    assert not of_type(entities, "TOLERANCE_ZONE")


@pytest.mark.parametrize("kind", ["perpendicularity", "parallelism", "coaxiality"])
def test_orientation_and_location_bring_their_datum_system(kind):
    entities = written(A, replace(COAXIAL, kind=kind))
    found = only(entities, f"{kind.upper()}_TOLERANCE")
    assert letters(entities, found[4][0]) == ["A"]


def test_a_position_is_three_types_at_once_and_keeps_the_order_of_its_datums():
    entities = written(A, C, POSITION)
    ((_, leaves),) = [(n, v) for n, v in entities.items() if "POSITION_TOLERANCE" in v]
    assert set(leaves) == {"GEOMETRIC_TOLERANCE", "GEOMETRIC_TOLERANCE_WITH_DATUM_REFERENCE", "POSITION_TOLERANCE"}
    (system,) = leaves["GEOMETRIC_TOLERANCE_WITH_DATUM_REFERENCE"][0]
    assert letters(entities, system) == ["C", "A"]
    aspect = leaves["GEOMETRIC_TOLERANCE"][3]
    assert entities[aspect.number]["COMPOSITE_GROUP_SHAPE_ASPECT"][0] == "pattern of features"


def test_a_position_may_stand_without_datums():
    assert len(only(written(replace(POSITION, datums=())), "POSITION_TOLERANCE")) == 4


def test_a_zone_that_is_a_cylinder_is_said_to_be_one():
    entities = written(A, COAXIAL, replace(COAXIAL, id="flat", kind="parallelism", diametral=False))
    (number,) = of_type(entities, "COAXIALITY_TOLERANCE")
    *_, tolerances, form = only(entities, "TOLERANCE_ZONE")
    assert tolerances == (Ref(number),)
    assert entities[form.number]["TOLERANCE_ZONE_FORM"] == ("cylindrical or circular",)


def test_equal_datum_systems_are_written_once_and_places_are_never_shared():
    entities = written(A, C, POSITION, replace(POSITION, id="again"), replace(POSITION, id="other", datums=("A", "C")))
    systems = of_type(entities, "DATUM_SYSTEM")
    assert sorted(values[0] for values in systems.values()) == ["A|C", "C|A"]
    places = [ref for values in systems.values() for ref in values[4]]
    assert len(places) == len(set(places)) == 4
