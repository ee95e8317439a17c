"""Tolerances in the STEP file against a test file of NIST and against the rules that NIST's file analyzer checks.

Source: usnistgov/SFA on GitHub (STEP File Analyzer and Viewer, National Institute of Standards and Technology, in the
public domain), read as stored copies:

- source/nist_ctc_02_asme1_ap242-1.stp, commit 5d175f89e4c897cfb306b839ee7b1d45492ae430: test case CTC-02 of the "MBE
  PMI Validation and Conformance Testing Project" as AP242, first 64 000 characters (entities #10 to #813). Its readme
  says that it is no reference without any error; only forms that many of its entities share are taken.
- source/sfa-dimtol.tcl, commit 0183317b7dc9881935b03c170e4a9f977ce3ec86, first 48 000 characters: checks of dimensions
  with the sections of the "Recommended Practices for the Representation and Presentation of Product Manufacturing
  Information (AP242)" that they follow. The practices themselves were not read.

The part that was read has no limits_and_fits, composite_group_shape_aspect, centre_of_symmetry, dimensional_location
and surface textures; test_step_schema_rules.py has what was found on some of them.
"""

from __future__ import annotations

from pathlib import Path

import pytest

from tests.outputs.part21_reader import Ref, Sign, Typed, of_type, read

pytestmark = pytest.mark.slow

EXAMPLE = Path(__file__).parents[2] / "presets" / "examples" / "spray_carriage_servo.toml"

# Attributes as the test file has them: text, entity, truth, nothing, [list], or the name of a measure.
FORMS = {
    "SHAPE_ASPECT": "text text entity truth",
    "GEOMETRIC_ITEM_SPECIFIC_USAGE": "text text entity entity entity",
    "DATUM_FEATURE": "text text entity truth",
    "DATUM": "text text entity truth text",
    "DATUM_REFERENCE_COMPARTMENT": "text text entity truth entity nothing",
    "DATUM_SYSTEM": "text text entity truth [entity]",
    "SHAPE_ASPECT_RELATIONSHIP": "text text entity entity",
    "FLATNESS_TOLERANCE": "text text entity entity",
    "PERPENDICULARITY_TOLERANCE": "text text entity entity [entity]",
    "GEOMETRIC_TOLERANCE": "text text entity entity",
    "GEOMETRIC_TOLERANCE_WITH_DATUM_REFERENCE": "[entity]",
    "POSITION_TOLERANCE": "",
    "TOLERANCE_ZONE": "text text entity truth [entity] entity",
    "TOLERANCE_ZONE_FORM": "text",
    "DIMENSIONAL_SIZE": "entity text",
    "SHAPE_DIMENSION_REPRESENTATION": "text [entity] entity",
    "DIMENSIONAL_CHARACTERISTIC_REPRESENTATION": "entity entity",
    "PLUS_MINUS_TOLERANCE": "entity entity",
    "TOLERANCE_VALUE": "entity entity",
    "PROPERTY_DEFINITION": "text text entity",
    "PROPERTY_DEFINITION_REPRESENTATION": "entity entity",
    "DESCRIPTIVE_REPRESENTATION_ITEM": "text text",
}


@pytest.fixture(scope="module")
def entities(tmp_path_factory):
    """Entities of the example's block."""
    from blockgen.geometry.block import build_block
    from blockgen.outputs.step import write_block_step
    from blockgen.pipeline import design

    path = tmp_path_factory.mktemp("step") / "block.step"
    plan = design(str(EXAMPLE)).plan
    write_block_step(build_block(plan), plan, path, "", "1")
    return read(path.read_text(encoding="ascii"))


def form(value):
    if isinstance(value, Ref):
        return "entity"
    if isinstance(value, Typed):
        return value.name
    if isinstance(value, Sign):
        return "truth" if value.text in {".T.", ".F."} else value.text
    if value is None:
        return "nothing"
    if isinstance(value, str):
        return "text"
    return f"[{' '.join(sorted({form(item) for item in value}))}]"


def kind(entities, ref):
    return set(entities[ref.number])


@pytest.mark.parametrize("name", FORMS)
def test_attributes_have_the_forms_of_the_test_file(entities, name):
    found = of_type(entities, name)
    assert found
    assert {" ".join(form(value) for value in values) for values in found.values()} == {FORMS[name]}


def test_a_length_is_four_types_at_once(entities):
    """CTC-02 #84: the value of a dimension."""
    found = [leaves for leaves in entities.values() if "REPRESENTATION_ITEM" in leaves and len(leaves) > 1]
    wanted = [
        "LENGTH_MEASURE_WITH_UNIT", "MEASURE_REPRESENTATION_ITEM", "MEASURE_WITH_UNIT", "REPRESENTATION_ITEM"
    ]  # fmt: skip
    assert {tuple(leaves) for leaves in found} == {tuple(wanted)}


def test_nominal_values_are_positive_lengths_and_deviations_lengths(entities):
    """CTC-02 #84 and #173: POSITIVE_LENGTH_MEASURE for the value, LENGTH_MEASURE for the width of a zone."""
    for items in (values[1] for values in of_type(entities, "SHAPE_DIMENSION_REPRESENTATION").values()):
        assert {entities[i.number]["MEASURE_WITH_UNIT"][0].name for i in items} == {"POSITIVE_LENGTH_MEASURE"}
    widths = [values[2] for values in of_type(entities, "FLATNESS_TOLERANCE").values()]
    assert {entities[w.number]["LENGTH_MEASURE_WITH_UNIT"][0].name for w in widths} == {"LENGTH_MEASURE"}


def test_the_lower_deviation_comes_first_and_keeps_its_sign(entities):
    """CTC-02 #42: TOLERANCE_VALUE of #49 (-0.15) and #50 (0.15)."""
    for lower, upper in of_type(entities, "TOLERANCE_VALUE").values():
        low, high = (entities[r.number]["LENGTH_MEASURE_WITH_UNIT"][0].values[0] for r in (lower, upper))
        assert low < 0 < high


def test_a_tolerance_points_at_its_range_and_then_at_its_dimension(entities):
    """CTC-02 #35: PLUS_MINUS_TOLERANCE of a TOLERANCE_VALUE and a DIMENSIONAL_SIZE."""
    for band, dimension in of_type(entities, "PLUS_MINUS_TOLERANCE").values():
        assert kind(entities, band) <= {"TOLERANCE_VALUE", "LIMITS_AND_FITS"}
        assert kind(entities, dimension) <= {"DIMENSIONAL_SIZE", "DIMENSIONAL_LOCATION"}


def test_a_datum_is_established_by_its_feature(entities):
    """CTC-02 #144: the relationship 'datum feature' runs from the feature to the datum, which is .F."""
    links = [v for v in of_type(entities, "SHAPE_ASPECT_RELATIONSHIP").values() if v[1] == "datum feature"]
    assert len(links) == 3
    for _, _, feature, datum in links:
        assert "DATUM_FEATURE" in entities[feature.number]
        assert entities[datum.number]["DATUM"][3] == Sign(".F.")


def test_a_round_zone(entities):
    """CTC-02 #159 and #166."""
    assert {values[0] for values in of_type(entities, "TOLERANCE_ZONE_FORM").values()} == {"cylindrical or circular"}


def test_usage_joins_aspect_representation_and_face(entities):
    """CTC-02 #512: aspect, representation of the solid, its face."""
    for *_, aspect, solid, face in of_type(entities, "GEOMETRIC_ITEM_SPECIFIC_USAGE").values():
        assert kind(entities, aspect) <= {"SHAPE_ASPECT", "DATUM_FEATURE"}
        assert kind(entities, solid) == {"ADVANCED_BREP_SHAPE_REPRESENTATION"}
        assert kind(entities, face) == {"ADVANCED_FACE"}


def test_names_of_sizes_and_distances(entities):
    """Analyzer, sections 5.1.1 (tables 1 and 2) and 5.1.5 (table 4) of the practices."""
    assert {values[1] for values in of_type(entities, "DIMENSIONAL_SIZE").values()} <= {"diameter", "radius"}
    assert {values[0] for values in of_type(entities, "DIMENSIONAL_LOCATION").values()} == {"linear distance"}


def test_representations_of_dimensions_have_no_other_name(entities):
    """Analyzer, section 5.2.1 (table 5): empty, 'independency' or 'envelope requirement'."""
    assert {values[0] for values in of_type(entities, "SHAPE_DIMENSION_REPRESENTATION").values()} == {""}


def test_limits_stand_beside_a_nominal_value_and_in_order(entities):
    """Analyzer, section 5.2.4: a nominal value is there, the upper limit is above both others or level with it."""
    ranges = 0
    for _, items, _ in of_type(entities, "SHAPE_DIMENSION_REPRESENTATION").values():
        leaves = [entities[item.number] for item in items]
        values = {v["REPRESENTATION_ITEM"][0]: v["MEASURE_WITH_UNIT"][0].values[0] for v in leaves}
        assert "nominal value" in values
        if len(values) > 1:
            ranges += 1
            assert set(values) == {"nominal value", "upper limit", "lower limit"}
            assert values["upper limit"] > values["lower limit"]
            assert values["upper limit"] >= values["nominal value"]
    assert ranges == 2


def test_the_schema_has_the_name_of_the_test_file(tmp_path):
    """CTC-02, header: AP242_MANAGED_MODEL_BASED_3D_ENGINEERING_MIM_LF { 1 0 10303 442 ... }."""
    from blockgen.geometry.block import build_block
    from blockgen.outputs.step import write_block_step
    from tests.geometry.sample_plans import usual

    write_block_step(build_block(usual()), usual(), tmp_path / "x.step", "", "1")
    head = (tmp_path / "x.step").read_text(encoding="ascii").partition("DATA;")[0]
    assert "('AP242_MANAGED_MODEL_BASED_3D_ENGINEERING_MIM_LF {1 0 10303 442 1 1 4 }')" in head
