"""Tests of textures, call-outs and the general tolerance."""

from blockgen.outputs.step_tolerances.records import CallOut, Texture
from tests.outputs.part21_reader import Ref, Sign, Typed, of_type
from tests.outputs.step_tolerances.written import BASE, HOLES, items, only, written

THREAD = CallOut("holes.thread", "thread", HOLES, {"designation": "M6-6H"}, {"depth": 16.0, "lower deviation": 0.0})


def test_a_texture_is_ra_in_micrometres():
    entities = written(Texture("base.texture", BASE, 1.6))
    title, refs, context = only(entities, "SURFACE_TEXTURE_REPRESENTATION")
    assert (title, context) == ("surface texture parameter", Ref(3))
    method, value = (entities[ref.number] for ref in refs)
    assert method["DESCRIPTIVE_REPRESENTATION_ITEM"] == ("measuring method", "Ra")
    name, measure, unit = value["MEASURE_REPRESENTATION_ITEM"]
    assert (name, measure) == ("characteristic value", Typed("LENGTH_MEASURE", (1.6,)))
    assert entities[unit.number]["SI_UNIT"] == (Sign(".MICRO."), Sign(".METRE."))


def test_textures_share_the_unit():
    entities = written(Texture("base.texture", BASE, 1.6), Texture("block.texture", None, 3.2))
    assert len(of_type(entities, "SI_UNIT")) == 1


def test_the_texture_of_all_other_faces_belongs_to_the_part():
    entities = written(Texture("block.texture", None, 3.2))
    assert {values[2] for values in of_type(entities, "PROPERTY_DEFINITION").values()} == {Ref(1)}


def test_a_property_and_its_general_one_bear_the_same_name():
    entities = written(THREAD, Texture("base.texture", BASE, 1.6))
    for *_, general, definition in of_type(entities, "GENERAL_PROPERTY_ASSOCIATION").values():
        assert entities[general.number]["GENERAL_PROPERTY"][1] == entities[definition.number]["PROPERTY_DEFINITION"][0]


def test_a_thread_is_a_property_of_all_its_holes():
    entities = written(THREAD)
    name, description, on = only(entities, "PROPERTY_DEFINITION")
    assert (name, description) == ("thread", "user defined attribute")
    assert entities[on.number]["COMPOSITE_GROUP_SHAPE_ASPECT"][1] == "holes"
    shown = only(entities, "REPRESENTATION")
    assert shown[0] == "holes.thread"
    assert items(entities, shown) == {
        "depth": Typed("LENGTH_MEASURE", (16.0,)),
        "lower deviation": Typed("LENGTH_MEASURE", (0.0,)),
    }
    assert only(entities, "DESCRIPTIVE_REPRESENTATION_ITEM") == ("designation", "M6-6H")


def test_the_general_tolerance_is_that_of_the_part():
    entities = written(general="ISO 2768-mK")
    assert only(entities, "PROPERTY_DEFINITION") == ("default tolerances", "", Ref(1))
    assert only(entities, "DESCRIPTIVE_REPRESENTATION_ITEM") == ("tolerance class", "ISO 2768-mK")
