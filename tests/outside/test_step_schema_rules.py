"""Rules of the schema that the tolerances in the STEP file keep.

Sources, read as stored copies:

- STEP Tools, "ENTITY datum" (www.steptools.com/docs/stp_aim/html/t_datum.html) and "ENTITY geometric_tolerance"
  (steptools.com/docs/stp_aim/html/t_geometric_tolerance.html): EXPRESS of both for AP203e2, AP214, AP224, AP238 and
  AP242, with their rules.
- JSDAI, "geometric_tolerance" of shape_tolerance_schema (www.jsdai.net, xim-library v1.130, part 1): the older edition,
  in which names are unique within a shape.
- STEP Tools, ISO/TS 10303-1110:2019 "Surface conditions", EXPRESS of the reference model
  (steptools.com/stds/smrl/data/modules/surface_conditions/sys/e_exp_arm.htm): names of parameters and of the ways to
  make a surface.
- docs.rs, iso-10303-parts 0.5.0, "Trait ap203::ILimitsAndFits": the attributes of limits_and_fits in order, all texts.
- STEP Tools, "AP242e3 notes" (www.steptools.com/docs/stp_aim/notes_ap242e3.html): identifiers of the editions.
"""

from __future__ import annotations

from pathlib import Path

import pytest

from tests.outputs.part21_reader import Sign, of_type, read

pytestmark = pytest.mark.slow

EXAMPLE = Path(__file__).parents[2] / "presets" / "examples" / "spray_carriage_servo.toml"
FIRST_EDITION = "{1 0 10303 442 1 1 4 }"
REMOVAL = {"any_process_allowed", "material_removal_required", "no_material_removal"}
PARAMETERS = {"Rp", "Rv", "Rz", "Rc", "Rt", "Ra", "Rq"}  # the first seven of the list


@pytest.fixture(scope="module")
def text(tmp_path_factory):
    """The example's block as a file."""
    from blockgen.geometry.block import build_block
    from blockgen.outputs.step import write_block_step
    from blockgen.pipeline import design

    path = tmp_path_factory.mktemp("step") / "block.step"
    plan = design(str(EXAMPLE)).plan
    write_block_step(build_block(plan), plan, path, "", "1")
    return path.read_text(encoding="ascii")


@pytest.fixture(scope="module")
def entities(text):
    """Entities by number."""
    return read(text)


def tolerances(entities):
    """Return name, description, magnitude and aspect of every geometrical tolerance."""
    found = []
    for leaves in entities.values():
        for name, values in leaves.items():
            if name == "GEOMETRIC_TOLERANCE" or (name.endswith("_TOLERANCE") and len(values) >= 4):
                found.append(values[:4])
    return found


def test_a_datum_has_no_name_and_is_no_part_of_the_product(entities):
    """Entity datum, WR3 and WR4."""
    for name, _, _, definitional, _ in of_type(entities, "DATUM").values():
        assert (name, definitional) == ("", Sign(".F."))


def test_letters_are_unique_within_a_shape(entities):
    """Entity datum, UR1: identification, of_shape."""
    letters = [(values[4], values[2]) for values in of_type(entities, "DATUM").values()]
    assert len(letters) == len(set(letters)) == 3


def test_a_datum_has_one_feature(entities):
    """Entity datum, WR1 and WR2: established by at least one feature or target, and by one feature at the most."""
    links = of_type(entities, "SHAPE_ASPECT_RELATIONSHIP").values()
    for number in of_type(entities, "DATUM"):
        relating = [entities[link[2].number] for link in links if link[3].number == number]
        assert len(relating) == 1
        assert "DATUM_FEATURE" in relating[0]


def test_names_of_tolerances_are_unique_within_a_shape(entities):
    """Entity geometric_tolerance, UR1 of the older edition: name, controlling_shape."""
    names = [name for name, *_ in tolerances(entities)]
    assert len(names) == len(set(names)) == 10


def test_no_magnitude_is_negative(entities):
    """Entity geometric_tolerance, WR1."""
    for _, _, magnitude, _ in tolerances(entities):
        assert entities[magnitude.number]["LENGTH_MEASURE_WITH_UNIT"][0].values[0] > 0


def test_tolerance_and_feature_belong_to_one_shape(entities):
    """Entity geometric_tolerance, WR2: the shape follows from the aspect; all aspects here are of the one part."""
    (shape,) = of_type(entities, "PRODUCT_DEFINITION_SHAPE")
    for *_, aspect in tolerances(entities):
        leaves = entities[aspect.number]
        assert next(values for values in leaves.values() if values)[2].number == shape


def test_a_class_has_letter_zone_and_grade(entities):
    """limits_and_fits: form_variance, zone_variance, grade, source."""
    fits = list(of_type(entities, "LIMITS_AND_FITS").values())
    assert fits == [("H", "hole", "7", ""), ("H", "hole", "7", "")]


def test_textures_use_the_names_of_the_standard(entities):
    """ISO/TS 10303-1110, surface_texture_characteristic_type and ..._material_removal_condition_enumeration."""
    found = list(of_type(entities, "DESCRIPTIVE_REPRESENTATION_ITEM").values())
    assert {text for name, text in found if name == "measuring method"} <= PARAMETERS
    assert {text.replace(" ", "_") for name, text in found if name == "material removal condition"} <= REMOVAL
    assert len(of_type(entities, "SURFACE_TEXTURE_REPRESENTATION")) == 6


def test_the_file_names_the_first_edition(text):
    """AP242e3 notes: { 1 0 10303 442 1 1 4 } stands for the first edition."""
    assert FIRST_EDITION in text.partition("DATA;")[0]
