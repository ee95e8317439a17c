"""Tests of the assembly file: read back by a bare kernel reader, and its text by a small parser."""

from __future__ import annotations

import os
import re
import subprocess
import sys
from dataclasses import replace
from pathlib import Path

import pytest

from blockgen.errors import MachineError
from blockgen.outputs.assembly_step import coupling_centre, write_assembly_step
from blockgen.outputs.part21_order import references
from tests.geometry.stand_ins.sums import box_of
from tests.sizing.strategies import REQUIRED, sized

ROOT = Path(__file__).parents[2]
STATUS = "PRELIMINARY: motor.bolt_hole is assumed"
DOWELS = {"base": {"dowels": 6}}

pytestmark = pytest.mark.slow

SCRIPT = """
import sys
from pathlib import Path
from blockgen.geometry.block import build_block
from blockgen.geometry.stand_ins.parts import parts
from blockgen.outputs.assembly_step import write_assembly_step
from tests.sizing.strategies import sized
plan = sized(base={"dowels": 6})
made = parts(plan, build_block(plan))
for name in sys.argv[1:]:
    write_assembly_step(made, plan, Path(name), "released for review", "0.0.0")
"""


def made(plan):
    from blockgen.geometry.block import build_block
    from blockgen.geometry.stand_ins.parts import parts

    return parts(plan, build_block(plan))


@pytest.fixture(scope="module")
def plan():
    return sized(**DOWELS)


@pytest.fixture(scope="module")
def parts(plan):
    return made(plan)


@pytest.fixture(scope="module")
def written(parts, plan, tmp_path_factory):
    path = tmp_path_factory.mktemp("step") / "assembly.step"
    write_assembly_step(parts, plan, path, STATUS, "1.2.3")
    return path


def entities(path):
    """Return the entities by number, with a check that the file has the form of ISO 10303-21."""
    text = path.read_text(encoding="ascii")
    match = re.fullmatch(
        r"ISO-10303-21;\s*HEADER;(.*?)ENDSEC;\s*DATA;(.*?)ENDSEC;\s*END-ISO-10303-21;\s*", text, re.DOTALL
    )
    assert match is not None
    form = re.compile(r"#(\d+) = ((?:'(?:[^']|'')*'|[^';])*);")
    assert form.sub("", match[2]).strip() == ""
    return {int(number): body for number, body in form.findall(match[2])}


def read_tree(path):
    """Return (path of occurrence names, product name, colour, located shape) for each leaf, as a reader finds them."""
    from OCP.STEPCAFControl import STEPCAFControl_Reader
    from OCP.TCollection import TCollection_ExtendedString
    from OCP.TDF import TDF_LabelSequence
    from OCP.TDocStd import TDocStd_Document
    from OCP.TopLoc import TopLoc_Location
    from OCP.XCAFDoc import XCAFDoc_DocumentTool

    document = TDocStd_Document(TCollection_ExtendedString("XmlXCAF"))
    reader = STEPCAFControl_Reader()
    reader.SetNameMode(True)
    reader.SetColorMode(True)
    reader.ReadFile(str(path))
    reader.Transfer(document)
    roots = TDF_LabelSequence()
    XCAFDoc_DocumentTool.ShapeTool_s(document.Main()).GetFreeShapes(roots)
    assert roots.Length() == 1
    return list(leaves(roots.Value(1), TopLoc_Location(), ()))


def leaves(label, location, path):
    from OCP.TDF import TDF_Label, TDF_LabelSequence
    from OCP.XCAFDoc import XCAFDoc_ShapeTool

    target = TDF_Label()
    if XCAFDoc_ShapeTool.GetReferredShape_s(label, target):
        location = location.Multiplied(XCAFDoc_ShapeTool.GetLocation_s(label))
    else:
        target = label
    path = (*path, name_of(label))
    if not XCAFDoc_ShapeTool.IsAssembly_s(target):
        yield path, name_of(target), colour_of(target), XCAFDoc_ShapeTool.GetShape_s(target).Located(location)
        return
    members = TDF_LabelSequence()
    XCAFDoc_ShapeTool.GetComponents_s(target, members)
    for i in range(1, members.Length() + 1):
        yield from leaves(members.Value(i), location, path)


def name_of(label):
    from OCP.TDataStd import TDataStd_Name

    name = TDataStd_Name()
    assert label.FindAttribute(TDataStd_Name.GetID_s(), name)
    return name.Get().ToExtString()


def colour_of(label):
    from OCP.Quantity import Quantity_Color, Quantity_TOC_sRGB
    from OCP.XCAFDoc import XCAFDoc_ColorSurf, XCAFDoc_ColorTool

    colour = Quantity_Color()
    return colour.Values(Quantity_TOC_sRGB) if XCAFDoc_ColorTool.GetColor_s(label, XCAFDoc_ColorSurf, colour) else None


@pytest.fixture(scope="module")
def tree(written):
    return read_tree(written)


def test_a_bare_reader_finds_every_part_with_its_name_and_colour(tree, parts):
    found = {path[-1]: (name, colour) for path, name, colour, _ in tree if "frames" not in path}
    assert len(found) == len(parts)
    for part in parts:
        name, colour = found[part.id]
        assert name == part.name
        assert colour == pytest.approx(part.colour, abs=1e-3)


def test_a_bare_reader_finds_every_part_in_its_place_with_its_volume(tree, parts):
    from blockgen.geometry.kernel import bounding_box, volume_of

    found = {path[-1]: shape for path, _, _, shape in tree}
    for part in parts:
        assert volume_of(found[part.id]) == pytest.approx(volume_of(part.shape), rel=1e-6), part.id
        assert bounding_box(found[part.id]) == pytest.approx(box_of(part), abs=1e-3), part.id


def test_the_tree_has_a_branch_for_each_group(tree, parts):
    root = "T-2_A_assembly"
    places = {path[-1]: path[:-1] for path, *_ in tree}
    assert places["block"] == places["coupling"] == places["journal"] == places["base_plate"] == (root,)
    assert places["motor"] == places["motor_screw_4"] == (root, "drive")
    assert places["bearing_unit"] == places["bearing_screw_1"] == (root, "bearing")
    assert places["base_screw_1"] == places["base_washer_1"] == places["dowel_2"] == (root, "base_fasteners")
    assert [path[-1] for path, *_ in tree if len(path) == 2 or path[1] != "frames"] == [
        part.id for group in dict.fromkeys(p.group for p in parts) for part in parts if part.group == group
    ]


def test_frames_stand_where_the_plan_has_them(tree, plan):
    from OCP.BRep import BRep_Tool
    from OCP.TopAbs import TopAbs_VERTEX
    from OCP.TopoDS import TopoDS

    from blockgen.geometry.kernel import edges_of, indexed

    found = {path[-1]: shape for path, _, _, shape in tree if path[1] == "frames"}
    assert list(found) == ["bearing_seat", "motor_seat", "base", "coupling_centre"]
    for name, frame in plan.frames.items():
        corners = indexed(found[name], TopAbs_VERTEX)
        points = [BRep_Tool.Pnt_s(TopoDS.Vertex_s(corners.FindKey(i))) for i in range(1, corners.Extent() + 1)]
        x, y, z = frame.origin
        seen = {(round(p.X() - x, 6), round(p.Y() - y, 6), round(p.Z() - z, 6)) for p in points}
        assert seen == {(0, 0, 0), (30, 0, 0), (0, 20, 0), (0, 0, 20)}, name
        assert len(edges_of(found[name])) == 3


def test_coupling_centre_without_a_frame_of_the_plan(plan):
    frames = {name: frame for name, frame in plan.frames.items() if name != "coupling_centre"}
    assert coupling_centre(replace(plan, frames=frames)) == plan.frames["coupling_centre"]


def test_alike_parts_are_one_product(written, parts):
    products = [body for body in entities(written).values() if body.startswith("PRODUCT(")]
    names = {part.name for part in parts}
    groups = {"T-2_A_assembly", "bearing", "drive", "base_fasteners", "frames"}
    assert len(products) == len(names) + len(groups) + 4
    screws = [body for body in products if body.startswith("PRODUCT('ISO 4762 M10 x")]
    assert len(screws) == 1


def test_every_reference_resolves_and_no_number_is_left_out(written):
    found = entities(written)
    assert list(found) == list(range(1, len(found) + 1))
    assert all(number in found for body in found.values() for number in references(body))
    assert "@" not in written.read_text(encoding="ascii")


def test_header_units_and_descriptions(written):
    head, _, data = written.read_text(encoding="ascii").partition("DATA;")
    assert f"FILE_DESCRIPTION(('Mounting block; {STATUS}'),'2;1');" in head
    assert "FILE_NAME('T-2_A_assembly.step','1970-01-01T00:00:00'," in head
    assert "'blockgen 1.2.3','blockgen 1.2.3','');" in head
    assert "FILE_SCHEMA(('AP242_MANAGED_MODEL_BASED_3D_ENGINEERING_MIM_LF" in head
    assert f"PRODUCT('T-2_A_assembly','T-2_A_assembly','Mounting block; {STATUS}'," in data
    assert "PRODUCT('motor','motor','stand-in, built from the sizes of the spec; assumed: motor.body_length" in data
    assert re.search(r"SI_UNIT\(\.MILLI\.,\.METRE\.\)", data)
    assert "Open CASCADE" not in head + data


def test_occurrences_have_their_own_names_as_ids(written, parts):
    found = [body for body in entities(written).values() if body.startswith("NEXT_ASSEMBLY_USAGE_OCCURRENCE(")]
    ids = [re.match(r"NEXT_ASSEMBLY_USAGE_OCCURRENCE\('([^']*)','([^']*)'", body).groups() for body in found]
    assert all(one == other for one, other in ids)
    assert {part.id for part in parts} <= {one for one, _ in ids}


def test_validation_properties_have_the_volumes(written, parts):
    from blockgen.geometry.kernel import volume_of

    text = " ".join(entities(written).values())
    written_volumes = sorted(float(v) for v in re.findall(r"VOLUME_MEASURE\(\s*([-+.\dE]+)\)", text))
    volumes = sorted({part.name: volume_of(part.shape) for part in parts}.values())
    assert written_volumes == pytest.approx(volumes, rel=1e-6)


def test_odd_texts_survive(plan, parts, tmp_path):
    odd = replace(parts[2], name="Lager 'Größe 15' #1; Ω", note="x\\y")
    write_assembly_step((parts[0], odd), plan, tmp_path / "odd.step", STATUS, "0")
    assert {name for _, name, _, _ in read_tree(tmp_path / "odd.step")} >= {odd.name}
    assert "'stand-in, built from the sizes of the spec; assumed: x\\\\y'" in (tmp_path / "odd.step").read_text("ascii")


def test_warnings_of_a_makers_model_stand_in_the_file(plan, parts, tmp_path):
    model = replace(parts[3], stand_in=False, note="maker's model m.step", warning="m.step: its pilot is 68.000 mm")
    write_assembly_step((model,), plan, tmp_path / "model.step", STATUS, "0")
    assert "'maker''s model m.step; m.step: its pilot is 68.000 mm'" in (tmp_path / "model.step").read_text("ascii")


def test_same_bytes_in_any_process_and_when_written_again(tmp_path):
    seen = set()
    for seed in ("0", "1", "77"):
        folder = tmp_path / f"place {seed}"
        folder.mkdir()
        environment = {**os.environ, "PYTHONHASHSEED": seed, "PYTHONPATH": str(ROOT), "LC_ALL": "C"}
        names = [str(folder / "one.step"), str(folder / "two.step")]
        command = [sys.executable, "-c", SCRIPT, *names]
        run = subprocess.run(command, cwd=folder, env=environment, check=True, capture_output=True, text=True)
        assert run.stdout == ""
        seen |= {Path(name).read_bytes() for name in names}
    assert len(seen) == 1


def test_least_spec_and_block_alone_make_a_file(tmp_path):
    plan = sized(REQUIRED)
    found = made(plan)
    write_assembly_step(found, plan, tmp_path / "all.step", STATUS, "0")
    write_assembly_step(found[:1], plan, tmp_path / "block.step", STATUS, "0")
    assert len(read_tree(tmp_path / "all.step")) == len(found) + 4
    assert len(read_tree(tmp_path / "block.step")) == 5


def test_a_place_that_cannot_be_written_is_told(parts, plan, tmp_path):
    with pytest.raises(MachineError, match="cannot write"):
        write_assembly_step(parts, plan, tmp_path / "missing" / "a.step", STATUS, "0")
