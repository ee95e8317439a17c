"""Tests of whole files: their text, the kernel's reading of it against the plan, and the geometry that stays."""

from __future__ import annotations

import os
import re
import subprocess
import sys
from functools import cache
from pathlib import Path

import pytest

from blockgen.outputs.step import write_block_step
from blockgen.outputs.step_tolerances.from_plan import tolerances_of
from blockgen.outputs.step_tolerances.records import Distance, Size, Zone
from blockgen.pipeline import design
from tests.outputs import part21_reader as reader
from tests.outputs.step_tolerances import kernel_reader
from tests.sizing.strategies import sized
from tests.sizing.test_annotations import WAYS

pytestmark = pytest.mark.slow

ROOT = Path(__file__).parents[3]
EXAMPLES = ("spray_carriage_servo", "spray_carriage_large", "spray_carriage_stepper")
CASES = (*WAYS, *EXAMPLES)
MEASURES = {"LENGTH_MEASURE", "POSITIVE_LENGTH_MEASURE"}

SCRIPT = """
import sys
from pathlib import Path
from blockgen.geometry.block import build_block
from blockgen.outputs.step import write_block_step
from tests.sizing.strategies import sized
plan = sized(block={"relief": 0.5})
write_block_step(build_block(plan), plan, Path(sys.argv[1]), "released for review", "0.0.0")
"""


@cache
def built(case):
    """Return plan and solid of a case."""
    from blockgen.geometry.block import build_block

    path = ROOT / "presets" / "examples" / f"{case}.toml"
    plan = design(str(path)).plan if case in EXAMPLES else sized(**WAYS[case])
    return plan, build_block(plan)


@pytest.fixture(scope="module")
def folder(tmp_path_factory):
    return tmp_path_factory.mktemp("step")


@pytest.fixture
def written(folder):
    """Return a function that writes a case once and gives its path."""

    def write(case, *, tolerances=True):
        path = folder / f"{case}_{tolerances}.step"
        if not path.exists():
            plan, block = built(case)
            write_block_step(block, plan, path, "released for review", "1.2.3", tolerances=tolerances)
        return path

    return write


def text(path):
    return path.read_text(encoding="ascii")


def new_entities(written, case):
    """Return the entities that the tolerances bring, by number, and all of them."""
    bare = reader.read(text(written(case, tolerances=False)))
    whole = reader.read(text(written(case)))
    return {number: leaves for number, leaves in whole.items() if number not in bare}, whole


@pytest.mark.parametrize("case", CASES)
def test_references_resolve_and_no_list_is_empty(written, case):
    new, whole = new_entities(written, case)
    assert len(new) > 300
    for number, leaves in new.items():
        for values in leaves.values():
            assert set(reader.references(values)) <= set(whole), number
            assert () not in [part for value in values for part in reader.lists(value)], number


@pytest.mark.parametrize("case", CASES)
def test_measures_are_typed_and_in_millimetres(written, case):
    new, whole = new_entities(written, case)
    for leaves in new.values():
        for name in ("LENGTH_MEASURE_WITH_UNIT", "MEASURE_WITH_UNIT"):
            if leaves.get(name):
                measure, unit = leaves[name]
                assert measure.name in MEASURES
                assert whole[unit.number]["SI_UNIT"] == (reader.Sign(".MILLI."), reader.Sign(".METRE."))


@pytest.mark.parametrize("case", CASES)
def test_each_new_entity_is_held_by_another_or_holds_a_claim_itself(written, case):
    """Nothing hangs loose: what nobody points at is a statement about something, not a leftover."""
    new, whole = new_entities(written, case)
    held = {n for leaves in whole.values() for values in leaves.values() for n in reader.references(values)}
    statements = {name for number, leaves in new.items() if number not in held for name in leaves}
    assert {name for name in statements if not name.endswith(("_TOLERANCE", "_REFERENCE"))} <= {
        "GEOMETRIC_ITEM_SPECIFIC_USAGE", "SHAPE_ASPECT_RELATIONSHIP", "SHAPE_ASPECT_DERIVING_RELATIONSHIP",
        "TOLERANCE_ZONE", "DIMENSIONAL_CHARACTERISTIC_REPRESENTATION", "PROPERTY_DEFINITION_REPRESENTATION",
        "PROPERTY_DEFINITION_RELATIONSHIP", "GENERAL_PROPERTY_ASSOCIATION",
    }  # fmt: skip


@pytest.mark.parametrize("case", CASES)
def test_the_geometry_is_the_same_text_without_tolerances(written, case):
    bare, whole = text(written(case, tolerances=False)), text(written(case))
    end = bare.rindex("ENDSEC;")
    assert whole.startswith(bare[:end])
    assert whole.endswith(bare[end:])
    new, _ = new_entities(written, case)
    assert not re.search(r"TOLERANCE|DATUM|LIMITS_AND_FITS|DIMENSIONAL_SIZE|TEXTURE", bare)
    assert not {"ADVANCED_FACE", "CARTESIAN_POINT", "PRODUCT"} & {name for leaves in new.values() for name in leaves}


@pytest.mark.parametrize("case", CASES)
def test_nothing_of_the_plan_is_left_out(case):
    plan, block = built(case)
    assert tolerances_of(plan, tuple(block.faces)).left_out == ()


def faces_of(block, target):
    return sum(len(block.faces[face]) for face in target.faces)


def expected(case):
    """Return the records of a case, and its solid."""
    plan, block = built(case)
    return tolerances_of(plan, tuple(block.faces)).records, block


def surfaces(block, target):
    from OCP.BRepAdaptor import BRepAdaptor_Surface

    return [BRepAdaptor_Surface(face) for face_id in target.faces for face in block.faces[face_id]]


def place(surface):
    """Return a point of a plane, or of the axis of a cylinder, and its direction."""
    from OCP.GeomAbs import GeomAbs_Plane

    if surface.GetType() == GeomAbs_Plane:
        plane = surface.Plane()
        return plane.Location(), plane.Axis().Direction()
    axis = surface.Cylinder().Axis()
    return axis.Location(), axis.Direction()


@pytest.mark.parametrize("case", CASES)
def test_the_faces_have_the_sizes_that_are_written_on_them(case):
    records, block = expected(case)
    for record in records:
        if isinstance(record, Size):
            factor = 2 if record.name == "diameter" else 1
            radii = {round(surface.Cylinder().Radius(), 6) for surface in surfaces(block, record.target)}
            assert radii == {round(record.value / factor, 6)}, record.id


@pytest.mark.parametrize("case", CASES)
def test_the_faces_have_the_distances_that_are_written_between_them(case):
    from OCP.gp import gp_Vec

    records, block = expected(case)
    for record in records:
        if isinstance(record, Distance):
            base, normal = place(surfaces(block, record.start)[0])
            for surface in surfaces(block, record.end):
                point, direction = place(surface)
                assert abs(direction.Dot(normal)) == pytest.approx(0.0 if record.end.axis else 1.0, abs=1e-9), record.id
                away = abs(gp_Vec(base, point).Dot(gp_Vec(normal)))
                assert away == pytest.approx(record.value, abs=1e-6), record.id


@pytest.mark.parametrize("case", CASES)
def test_the_kernel_reads_every_dimension_as_planned(written, case):
    records, block = expected(case)
    wanted = [record for record in records if isinstance(record, (Size, Distance))]
    found = kernel_reader.dimensions(kernel_reader.open_document(written(case)))
    assert len(found) == len(wanted)
    for record, read in zip(wanted, found, strict=True):
        limits = None if record.upper is None else (record.value + record.lower, record.value + record.upper)
        assert (read.limits is None) == (limits is None), record.id
        if limits:
            assert read.limits == pytest.approx(limits, abs=1e-6), record.id
        if isinstance(record, Size):
            assert (read.kind, read.first) == (record.name, faces_of(block, record.target)), record.id
            assert (read.fit is None) == (record.fit is None), record.id
        else:
            ends = (faces_of(block, record.start), faces_of(block, record.end))
            assert (read.kind, read.first, read.second) == ("distance", *ends), record.id
        if not getattr(record, "fit", None):
            assert read.value == pytest.approx(record.value), record.id


@pytest.mark.parametrize("case", CASES)
def test_the_kernel_reads_every_zone_as_planned(written, case):
    records, block = expected(case)
    wanted = {record.id: record for record in records if isinstance(record, Zone)}
    found = kernel_reader.zones(kernel_reader.open_document(written(case)))
    assert set(found) == set(wanted)
    for name, record in wanted.items():
        read = found[name]
        assert (read.kind, read.datums, read.diametral) == (record.kind, record.datums, record.diametral), name
        assert read.value == pytest.approx(record.width), name
        assert read.first == faces_of(block, record.target), name


@pytest.mark.parametrize("case", CASES)
def test_the_kernel_reads_datums_and_one_material(written, case):
    document = kernel_reader.open_document(written(case))
    assert kernel_reader.datum_letters(document) == {"A", "B", "C"}
    assert len(kernel_reader.materials(document)) == 1


def test_the_solid_is_the_same_without_tolerances(written):
    from OCP.STEPControl import STEPControl_Reader

    from blockgen.geometry.kernel import area_of, bounding_box, faces_of, volume_of

    shapes = []
    for tolerances in (True, False):
        bare = STEPControl_Reader()
        bare.ReadFile(str(written("usual", tolerances=tolerances)))
        bare.TransferRoots()
        shapes.append(bare.OneShape())
    first, second = shapes
    assert bounding_box(first) == bounding_box(second)
    assert (volume_of(first), area_of(first)) == (volume_of(second), area_of(second))
    assert len(faces_of(first)) == len(faces_of(second))


@pytest.mark.parametrize("case", CASES)
def test_grades_and_letters_are_those_of_the_plan(written, case):
    new, _ = new_entities(written, case)
    records, _ = expected(case)
    wanted = [record.fit for record in records if isinstance(record, Size) and record.fit]
    found = [f"{letter}{grade}" for letter, _, grade, _ in reader.of_type(new, "LIMITS_AND_FITS").values()]
    assert found == wanted
    assert wanted


@pytest.mark.parametrize("case", CASES)
def test_names_of_tolerances_are_unique_and_no_dimension_has_two(written, case):
    new, _ = new_entities(written, case)
    names = [values[0] for leaves in new.values() for name, values in leaves.items()
             if name == "GEOMETRIC_TOLERANCE" or (name.endswith("_TOLERANCE") and len(values) >= 4)]  # fmt: skip
    assert len(names) == len(set(names)) > 5
    dimensions = [values[1] for values in reader.of_type(new, "PLUS_MINUS_TOLERANCE").values()]
    assert len(dimensions) == len(set(dimensions))


@pytest.mark.parametrize("case", CASES)
def test_an_aspect_has_one_usage_of_a_face(written, case):
    new, whole = new_entities(written, case)
    usages = list(reader.of_type(new, "GEOMETRIC_ITEM_SPECIFIC_USAGE").values())
    assert len({values[2] for values in usages}) == len(usages)
    assert len({values[4] for values in usages}) == len(usages)
    assert all("ADVANCED_FACE" in whole[values[4].number] for values in usages)


def test_a_spec_in_inches_gives_millimetres_for_shape_and_tolerances(tmp_path):
    from blockgen.geometry.block import build_block
    from blockgen.geometry.kernel import bounding_box

    millimetres = sized(base={"shaft_height": 69.85, "screw": "M10"})
    inches = sized(base={"shaft_height": "2.75 in", "screw": "M10"})
    texts = []
    for plan in (millimetres, inches):
        write_block_step(build_block(plan), plan, tmp_path / "x.step", "", "1")
        texts.append(text(tmp_path / "x.step"))
    assert texts[0] == texts[1]
    dimensions = kernel_reader.dimensions(kernel_reader.open_document(tmp_path / "x.step"))
    heights = [d for d in dimensions if d.kind == "distance" and d.limits and d.value == pytest.approx(69.85)]
    assert heights[0].limits == pytest.approx((69.83, 69.87))
    assert bounding_box(build_block(inches).shape)[5] == pytest.approx(inches.number("height"))


def test_same_bytes_in_any_process(tmp_path):
    seen = set()
    for seed in ("0", "1", "77"):
        environment = {**os.environ, "PYTHONHASHSEED": seed, "PYTHONPATH": str(ROOT), "LC_ALL": "C"}
        path = tmp_path / f"{seed}.step"
        subprocess.run([sys.executable, "-c", SCRIPT, str(path)], cwd=tmp_path, env=environment, check=True)
        seen.add(path.read_bytes())
    assert len(seen) == 1


def test_the_schema_is_that_of_managed_model_based_engineering(written):
    assert "FILE_SCHEMA(('AP242_MANAGED_MODEL_BASED_3D_ENGINEERING_MIM_LF" in text(written("usual"))
