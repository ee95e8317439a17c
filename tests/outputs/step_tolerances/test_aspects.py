"""Tests of the aspects: one for a face, one usage for an aspect, compositions of the same members."""

from blockgen.outputs.part21 import Entities, Ref
from blockgen.outputs.step_tolerances.aspects import Aspects
from blockgen.outputs.step_tolerances.records import Datum, Target
from tests.outputs import part21_reader as reader
from tests.outputs.step_tolerances.faces import model_of

FACES = ("base", "top", "hole_1.hole", "hole_2.hole")


def made(pieces=None):
    entities = Entities(5000)
    return entities, Aspects(entities, model_of(FACES, pieces))


def read(entities):
    return reader.Reader(entities.text()).entities()


def test_a_face_has_one_aspect_and_one_usage():
    entities, aspects = made()
    assert aspects.of(Target("top", ("top",))) == aspects.of(Target("other", ("top",)))
    found = read(entities)
    assert reader.of_type(found, "SHAPE_ASPECT") == {5001: ("top", "", reader.Ref(1), reader.Sign(".T."))}
    usages = list(reader.of_type(found, "GEOMETRIC_ITEM_SPECIFIC_USAGE").values())
    assert usages == [("", "", reader.Ref(5001), reader.Ref(2), reader.Ref(1002))]


def test_a_pattern_is_composed_of_the_aspects_of_its_holes():
    entities, aspects = made()
    single = aspects.of(Target("hole_1", ("hole_1.hole",)))
    group = aspects.of(Target("holes", ("hole_1.hole", "hole_2.hole"), pattern=True))
    found = read(entities)
    assert found[group.number]["COMPOSITE_GROUP_SHAPE_ASPECT"][:2] == ("pattern of features", "holes")
    members = [v[3].number for v in reader.of_type(found, "SHAPE_ASPECT_RELATIONSHIP").values() if v[2] == group.number
               or v[2] == reader.Ref(group.number)]  # fmt: skip
    assert members[0] == single.number
    assert len(members) == 2


def test_a_face_in_pieces_is_composed_too():
    entities, aspects = made({"top": 3})
    whole = aspects.of(Target("top", ("top",)))
    found = read(entities)
    assert found[whole.number]["COMPOSITE_GROUP_SHAPE_ASPECT"][:2] == ("multiple elements", "top")
    assert len(reader.of_type(found, "GEOMETRIC_ITEM_SPECIFIC_USAGE")) == 3


def test_what_stands_on_a_datum_face_points_at_the_datum_feature():
    entities, aspects = made()
    letter = aspects.datum(Datum("datum.C", "C", Target("base", ("base",))))
    feature = aspects.of(Target("base", ("base",)))
    found = read(entities)
    assert "DATUM_FEATURE" in found[feature.number]
    assert found[letter.number]["DATUM"] == ("", "", reader.Ref(1), reader.Sign(".F."), "C")
    (link,) = reader.of_type(found, "SHAPE_ASPECT_RELATIONSHIP").values()
    assert link[2:] == (reader.Ref(feature.number), reader.Ref(letter.number))


def test_a_datum_in_pieces_is_a_datum_feature_and_a_composition():
    entities, aspects = made({"base": 2})
    aspects.datum(Datum("datum.C", "C", Target("base", ("base",))))
    whole = aspects.of(Target("base", ("base",)))
    leaves = read(entities)[whole.number]
    assert set(leaves) == {"COMPOSITE_SHAPE_ASPECT", "DATUM_FEATURE", "SHAPE_ASPECT"}


def test_an_axis_is_derived_once_from_the_surface():
    entities, aspects = made()
    hole = Target("hole", ("hole_1.hole",), axis=True)
    axis = aspects.of(hole)
    assert aspects.of(hole) == axis
    found = read(entities)
    assert "CENTRE_OF_SYMMETRY" in found[axis.number]
    (link,) = reader.of_type(found, "SHAPE_ASPECT_DERIVING_RELATIONSHIP").values()
    surface = aspects.of(Target("hole", ("hole_1.hole",)))
    assert link[2:] == (reader.Ref(axis.number), reader.Ref(surface.number))
    assert isinstance(axis, Ref)
