"""Tests of the STEP file: read back by a bare kernel reader and by a small parser of its text."""

from __future__ import annotations

import os
import re
import subprocess
import sys
from dataclasses import replace
from pathlib import Path

import pytest

from blockgen.errors import MachineError
from blockgen.outputs.part21 import quoted
from blockgen.outputs.step import face_colours, face_names, part_description, time_stamp, write_block_step
from blockgen.record import Record
from tests.geometry import sample_plans as samples

ROOT = Path(__file__).parents[2]
STATUS = "PRELIMINARY: motor.bolt_hole is assumed"

INSTANCE = re.compile(r"#(\d+)\s*=\s*((?:'(?:[^']|'')*'|[^';])*);", re.DOTALL)
STRING = re.compile(r"'((?:[^']|'')*)'")

SCRIPT = """
import sys
from pathlib import Path
from blockgen.geometry.block import build_block
from blockgen.outputs.step import write_block_step
from blockgen.outputs.stl import write_block_stl
from tests.geometry.sample_plans import usual
block = build_block(usual())
write_block_step(block, usual(), Path(sys.argv[1] + ".step"), "released for review", "0.0.0")
write_block_stl(block, usual(), Path(sys.argv[1] + ".stl"))
"""


@pytest.fixture(scope="module")
def block():
    """Solid of the usual block."""
    from blockgen.geometry.block import build_block

    return build_block(samples.usual())


@pytest.fixture(scope="module")
def written(block, tmp_path_factory):
    """The usual block as a file."""
    path = tmp_path_factory.mktemp("step") / "block.step"
    write_block_step(block, samples.usual(), path, STATUS, "1.2.3")
    return path


def instances(text):
    """Return the entities of a file by number, with a check that the file has the form of ISO 10303-21."""
    match = re.fullmatch(
        r"ISO-10303-21;\s*HEADER;(.*?)ENDSEC;\s*DATA;(.*?)ENDSEC;\s*END-ISO-10303-21;\s*", text, re.DOTALL
    )
    assert match is not None
    found = {int(number): body for number, body in INSTANCE.findall(match[2])}
    assert INSTANCE.sub("", match[2]).strip() == ""
    return found


@pytest.mark.slow
def test_every_reference_resolves(written):
    found = instances(written.read_text(encoding="ascii"))
    references = {int(n) for body in found.values() for n in re.findall(r"#(\d+)", STRING.sub("", body))}
    assert len(found) > 2000
    assert references <= set(found)
    assert all(body.count("(") == body.count(")") for body in (STRING.sub("", b) for b in found.values()))


@pytest.mark.slow
def test_header(written):
    head = written.read_text(encoding="ascii").partition("DATA;")[0]
    assert f"FILE_DESCRIPTION(('Spray carriage axis, mounting block; {STATUS}'),'2;1');" in head
    assert "FILE_NAME('SC-104_A_block.step','1970-01-01T00:00:00',('not stated'),('not stated')," in head
    assert "'blockgen 1.2.3','blockgen 1.2.3','');" in head
    assert "FILE_SCHEMA(('AP242_MANAGED_MODEL_BASED_3D_ENGINEERING_MIM_LF" in head
    assert "Open CASCADE" not in written.read_text(encoding="ascii")


@pytest.mark.slow
def test_product_material_and_units(written):
    bodies = " ".join(instances(written.read_text(encoding="ascii")).values())
    assert f"PRODUCT('SC-104_A_block','SC-104_A_block','Spray carriage axis, mounting block; {STATUS}'," in bodies
    assert "DESCRIPTIVE_REPRESENTATION_ITEM('aluminium 6082-T6'" in bodies
    assert re.search(r"POSITIVE_RATIO_MEASURE\(2\.7\)", bodies)
    assert re.search(r"LENGTH_UNIT\(\) NAMED_UNIT\(\*\) SI_UNIT\(\.MILLI\.,\.METRE\.\)", bodies)


@pytest.mark.slow
def test_validation_properties_are_those_of_the_solid(written, block):
    bodies = " ".join(instances(written.read_text(encoding="ascii")).values())
    volume = float(re.search(r"VOLUME_MEASURE\(\s*([-+.\dE]+)\)", bodies)[1])
    assert volume == pytest.approx(block.volume, abs=0.01)
    assert re.search(r"AREA_MEASURE\(", bodies)
    assert "'centre point'" in bodies


@pytest.mark.slow
def test_a_bare_reader_finds_the_same_solid(written, block):
    from OCP.BRepAdaptor import BRepAdaptor_Surface
    from OCP.GeomAbs import GeomAbs_Cylinder
    from OCP.STEPControl import STEPControl_Reader

    from blockgen.geometry.kernel import bounding_box, faces_of, is_valid, solids_of, volume_of

    reader = STEPControl_Reader()
    reader.ReadFile(str(written))
    reader.TransferRoots()
    (solid,) = solids_of(reader.OneShape())
    assert is_valid(solid)
    assert bounding_box(solid) == pytest.approx((0.0, -60.0, 0.0, 140.0, 60.0, 110.0), abs=1e-4)
    assert volume_of(solid) == pytest.approx(block.volume, abs=0.5)
    surfaces = [BRepAdaptor_Surface(face) for face in faces_of(solid)]
    diameters = {round(2 * s.Cylinder().Radius(), 6) for s in surfaces if s.GetType() == GeomAbs_Cylinder}
    assert {70.0, 50.0, 44.0, 6.8, 11.0, 18.0, 7.8} <= diameters


@pytest.mark.slow
def test_names_and_colours_survive(written):
    found = read_faces(written)
    assert found["motor_thread_1.thread: M8-6H depth 13"] == pytest.approx((0.85, 0.55, 0.15), abs=1e-3)
    assert found["motor_bore.bore: 70 H7 (+0.030/0)"] == pytest.approx((0.15, 0.40, 0.70), abs=1e-3)
    assert found["base"] == pytest.approx((0.40, 0.65, 0.35), abs=1e-3)
    assert found["window.bearing_wall"] is None
    assert {"top", "side_plus_y", "motor_bore.shoulder", "base_screw_6.counterbore", "dowel_1.point"} <= set(found)


def read_faces(path):
    """Return the colour by face name as another program's document reader finds them."""
    from OCP.Interface import Interface_Static
    from OCP.Quantity import Quantity_Color, Quantity_TOC_sRGB
    from OCP.STEPCAFControl import STEPCAFControl_Reader
    from OCP.TCollection import TCollection_ExtendedString
    from OCP.TDataStd import TDataStd_Name
    from OCP.TDF import TDF_LabelSequence
    from OCP.TDocStd import TDocStd_Document
    from OCP.XCAFDoc import XCAFDoc_ColorSurf, XCAFDoc_ColorTool, XCAFDoc_DocumentTool, XCAFDoc_ShapeTool

    document = TDocStd_Document(TCollection_ExtendedString("XmlXCAF"))
    reader = STEPCAFControl_Reader()
    Interface_Static.SetIVal_s("read.stepcaf.subshapes.name", 1)
    reader.SetNameMode(True)
    reader.SetColorMode(True)
    reader.ReadFile(str(path))
    reader.Transfer(document)
    shapes = XCAFDoc_DocumentTool.ShapeTool_s(document.Main())
    roots, parts = TDF_LabelSequence(), TDF_LabelSequence()
    shapes.GetFreeShapes(roots)
    XCAFDoc_ShapeTool.GetSubShapes_s(roots.Value(1), parts)
    found = {}
    for label in (parts.Value(i) for i in range(1, parts.Length() + 1)):
        name = TDataStd_Name()
        if not label.IsAttribute(TDataStd_Name.GetID_s()):
            continue
        label.FindAttribute(TDataStd_Name.GetID_s(), name)
        colour = Quantity_Color()
        has = XCAFDoc_ColorTool.GetColor_s(label, XCAFDoc_ColorSurf, colour)
        found[name.Get().ToExtString()] = colour.Values(Quantity_TOC_sRGB) if has else None
    return found


@pytest.mark.slow
def test_same_bytes_in_any_process_and_folder(tmp_path):
    seen = set()
    for seed in ("0", "1", "77"):
        folder = tmp_path / f"place {seed}"
        folder.mkdir()
        environment = {**os.environ, "PYTHONHASHSEED": seed, "PYTHONPATH": str(ROOT), "LC_ALL": "C"}
        run = subprocess.run(
            [sys.executable, "-c", SCRIPT, str(folder / "block")],
            cwd=folder, env=environment, check=True, capture_output=True, text=True,
        )  # fmt: skip
        assert run.stdout == ""
        seen.add(((folder / "block.step").read_bytes(), (folder / "block.stl").read_bytes()))
    assert len(seen) == 1


@pytest.mark.slow
def test_same_bytes_when_written_again_after_meshing(block, written, tmp_path):
    from blockgen.geometry.mesh import mesh_solid

    mesh_solid(block.shape)
    write_block_step(block, samples.usual(), tmp_path / "again.step", STATUS, "1.2.3")
    assert (tmp_path / "again.step").read_bytes() == written.read_bytes()


@pytest.mark.slow
def test_the_kernels_options_are_put_back(block, tmp_path):
    from OCP.Interface import Interface_Static
    from OCP.STEPCAFControl import STEPCAFControl_Writer

    STEPCAFControl_Writer()
    Interface_Static.SetCVal_s("write.step.unit", "INCH")
    try:
        write_block_step(block, samples.usual(), tmp_path / "block.step", STATUS, "1")
        assert Interface_Static.CVal_s("write.step.unit") == "INCH"
    finally:
        Interface_Static.SetCVal_s("write.step.unit", "MM")
    assert ".MILLI." in (tmp_path / "block.step").read_text(encoding="ascii")


@pytest.mark.slow
def test_odd_texts_are_escaped_and_read_back(block, tmp_path):
    title = "Träger 'Ω' \\ @1@ \N{ROCKET}\nline 2 " + "x" * 300
    plan = samples.plan_of(samples.full_features(), job_title=title, job_author="Łucja O'Neil")
    path = tmp_path / "Träger.step"
    write_block_step(block, plan, path, STATUS, "1")
    text = path.read_text(encoding="ascii")
    assert f"({quoted('Łucja O' + chr(39) + 'Neil')})" in text
    products = [body for body in instances(text).values() if body.startswith("PRODUCT(")]
    assert quoted(f"{title}; {STATUS}") in products[0]
    assert read_faces(path)


@pytest.mark.slow
def test_a_folder_that_does_not_exist(block, tmp_path):
    with pytest.raises(MachineError, match=r"cannot write .*missing"):
        write_block_step(block, samples.usual(), tmp_path / "missing" / "block.step", STATUS, "1")


@pytest.mark.parametrize(
    ("date", "epoch", "expected"),
    [
        ("2031-04-05", "0", "2031-04-05T00:00:00"),
        ("", "1000000000", "2001-09-09T00:00:00"),
        ("", None, "1970-01-01T00:00:00"),
    ],
)
def test_time_stamp(date, epoch, expected, monkeypatch):
    monkeypatch.delenv("SOURCE_DATE_EPOCH", raising=False)
    if epoch is not None:
        monkeypatch.setenv("SOURCE_DATE_EPOCH", epoch)
    plan = samples.plain()
    record = Record("drawing.date", date or None, "", "given", "given")
    assert time_stamp(replace(plan, records={**plan.records, "drawing.date": record})) == expected


@pytest.mark.slow
def test_a_file_that_was_cut_short_is_refused(block, tmp_path, monkeypatch):
    from blockgen.geometry import step_document

    monkeypatch.setattr(step_document, "write_step_document", lambda _, path: path.write_text("ISO-10303-21;\nHEADER;"))
    with pytest.raises(MachineError, match="cut short while it was written"):
        write_block_step(block, samples.usual(), tmp_path / "block.step", STATUS, "1")


def test_description_without_title():
    assert part_description(samples.plan_of([], job_title=""), "released for review") == "released for review"


def test_call_outs_stand_on_the_faces_of_that_diameter():
    names = face_names(samples.usual())
    assert names["base_screw_1.hole"] == "base_screw_1.hole: 11 through, counterbore 18 depth 12"
    assert "base_screw_1.counterbore" not in names
    assert "window.floor" not in names


def test_colours_by_role():
    colours = face_colours(samples.usual())
    assert colours["dowel_1.hole"] == colours["bearing_bore.bore"]
    assert colours["lifting_thread_1.thread"] != colours["bearing_bore.bore"]
    assert colours["bearing_bore.bore"] == (0.15, 0.40, 0.70)
    assert colours["motor_seat"] == colours["base"]
    assert "top" not in colours
