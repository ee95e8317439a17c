"""Reading the makers' models that a spec names; the files are written by the kernel's plain writer."""

from dataclasses import replace

import pytest

from blockgen.errors import InputError
from blockgen.outputs.makers_models import makers_models
from blockgen.record import Record
from tests.geometry.stand_ins.sums import box_of
from tests.sizing.strategies import sized

pytestmark = pytest.mark.slow


def naming(plan, key, file):
    return replace(plan, records={**plan.records, key: Record(key, file, "", "given", "given in the spec")})


def write(shape, path):
    from OCP.STEPControl import STEPControl_AsIs, STEPControl_Writer

    from blockgen.geometry.step_document import kernel_settings

    with kernel_settings():
        writer = STEPControl_Writer()
        writer.Transfer(shape, STEPControl_AsIs)
        writer.Write(str(path))


def parts_of(plan, models=None):
    from blockgen.geometry.block import build_block
    from blockgen.geometry.stand_ins.parts import parts

    return {part.id: part for part in parts(plan, build_block(plan), models or {})}


def test_nothing_is_read_where_the_spec_names_no_model():
    assert makers_models(sized(), "spec.toml") == {}


@pytest.mark.parametrize(("end", "part"), [("motor", "motor"), ("bearing", "bearing_unit")])
def test_a_model_beside_the_spec_takes_the_place_of_the_stand_in(end, part, tmp_path):
    from OCP.BRepBuilderAPI import BRepBuilderAPI_Transform
    from OCP.gp import gp_Ax1, gp_Dir, gp_Pnt, gp_Trsf

    plan = sized()
    stand_ins = parts_of(plan)
    turned = gp_Trsf()
    turned.SetRotation(gp_Ax1(gp_Pnt(10, 20, 30), gp_Dir(1, 1, 1)), 2.0)
    (tmp_path / "parts").mkdir()
    write(BRepBuilderAPI_Transform(stand_ins[part].shape, turned, True).Shape(), tmp_path / "parts" / "own.step")
    plan = naming(plan, f"{end}.model", "parts/own.step")
    found = parts_of(plan, makers_models(plan, str(tmp_path / "spec.toml")))
    assert found[part].warning == ""
    assert found[part].note == "maker's model own.step"
    assert box_of(found[part]) == pytest.approx(box_of(stand_ins[part]), abs=1e-5)


def test_a_pilot_of_another_size_is_told(tmp_path):
    plan = sized()
    write(parts_of(sized(motor={"pilot_diameter": 68}))["motor"].shape, tmp_path / "other.step")
    plan = naming(plan, "motor.model", "other.step")
    warning = parts_of(plan, makers_models(plan, str(tmp_path / "spec.toml")))["motor"].warning
    assert warning == "other.step: its pilot is 68.000 mm, motor.pilot_diameter is 70 mm"


@pytest.mark.parametrize(
    ("content", "told"),
    [(None, "no such file"), (b"", "empty"), (b"solid cube\nendsolid\n", "does not start with ISO-10303-21")],
)
def test_files_that_are_no_model_are_told_with_their_key(content, told, tmp_path):
    if content is not None:
        (tmp_path / "bad.step").write_bytes(content)
    plan = naming(sized(), "motor.model", "bad.step")
    with pytest.raises(InputError, match=told) as caught:
        makers_models(plan, str(tmp_path / "spec.toml"))
    assert caught.value.problems[0].key == "motor.model"


def test_a_part_without_a_mounting_face_is_told(tmp_path):
    from blockgen.geometry.stand_ins.shapes import box

    write(box((0.0, 0.0, 0.0), (10.0, 20.0, 30.0)), tmp_path / "brick.step")
    plan = naming(sized(), "bearing.model", "brick.step")
    with pytest.raises(InputError, match="mounting face") as caught:
        makers_models(plan, str(tmp_path / "spec.toml"))
    assert caught.value.problems[0].key == "bearing.model"
