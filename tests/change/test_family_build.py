"""A family block as it is built: one valid solid with the holes of all motors, drawings on which nothing touches."""

import json
import tomllib

import pytest

from blockgen.change.family import told_of_family
from blockgen.cli import run
from blockgen.errors import FamilyError
from blockgen.geometry.block import build_block
from blockgen.mechanics.volume import reference_volume
from blockgen.outputs.drawing.paper import paper
from blockgen.outputs.drawing_set import drawing_set, pictures
from blockgen.pipeline import build
from blockgen.sizing.size import plan_from
from blockgen.spec.load import load_spec
from tests.examples import FOLDER
from tests.outputs.drawing.touching import outside_frame, over_fixed, overlaps
from tests.sizing.families import family_records, family_text

pytestmark = pytest.mark.slow
EXAMPLE = FOLDER / "spray_carriage_family.toml"
FAMILIES = {
    "two circles": [{}, {"bolt_circle": 112, "flange_size": 98, "bolt_hole": 5.5, "shaft_length": 42}],
    "turned": [{}, {"bolt_circle": 96, "flange_size": 86, "bolt_hole": 5.5}],
    "tapped and not": [{}, {"bolt_circle": 116, "flange_size": 100, "bolt_hole": None, "bolt_thread": "M6",
                            "fastening": "tapped", "flange_thickness": 12}],
    "three": [{}, {"pilot_length": 5}, {"bolt_circle": 112, "flange_size": 98, "bolt_hole": 4.5}],
}  # fmt: skip


@pytest.mark.parametrize("name", FAMILIES)
def test_a_family_is_one_solid_with_all_holes_and_its_drawing_has_room(name):
    plan = plan_from(family_records(FAMILIES[name]))
    block = build_block(plan)  # one valid solid, or it raises
    assert block.volume == pytest.approx(reference_volume(plan), rel=1e-3)
    wanted = {f.id for f in plan.features if f.face == "motor_seat" and f.kind != "bore"}
    assert len(wanted) == 8
    assert wanted <= {face.partition(".")[0] for face in block.faces}
    found = drawing_set(plan, pictures(block), "released for review")
    area = paper(found.drawing.size).area
    assert overlaps(found.drawing) == []
    assert outside_frame(found.drawing, (area.left, area.bottom, area.right, area.top)) == []
    assert over_fixed(found.drawing) == []
    for sheet in (*found.inspection, *found.setup):
        assert overlaps(sheet) == []


def test_a_family_is_built_and_its_resolved_spec_builds_the_same_block(tmp_path):
    made = build(EXAMPLE, tmp_path / "a", ["block", "inspection"])
    again = build(made.folder / "spec.toml", tmp_path / "b", ["block", "inspection"])
    assert len(tomllib.loads((made.folder / "spec.toml").read_text(encoding="utf-8"))["family"]) == 1
    first, second = (json.loads((m.folder / "summary.json").read_text(encoding="utf-8")) for m in (made, again))
    for key in ("features", "family", "bounding_box", "volume", "fasteners", "torque_card"):
        assert first[key] == second[key]
    steps = [next(m.folder.glob("*_block.step")).read_bytes() for m in (made, again)]
    assert steps[0] == steps[1]
    sheet = next(made.folder.glob("*_inspection.csv")).read_text(encoding="utf-8")
    assert "motor_2_threads.position" in sheet


def test_two_blocks_are_told_and_nothing_is_written(tmp_path, capsys):
    spec = tmp_path / "axis.toml"
    spec.write_text(family_text([{}, {"pilot_diameter": 80, "bolt_circle": 112, "flange_size": 98}]), encoding="utf-8")
    assert run(["build", str(spec), "--out", str(tmp_path / "out"), "--quiet"]) == 1
    told = capsys.readouterr()
    assert not told.out
    assert "2 blocks are the fewest that take them:" in told.err
    assert not list((tmp_path / "out").glob("*/*"))


def test_every_command_that_sizes_tells_the_blocks(tmp_path, capsys):
    spec = tmp_path / "axis.toml"
    spec.write_text(family_text([{}, {"shaft_length": 64}]), encoding="utf-8")
    for arguments in (["check"], ["explain"], ["check", "--json"]):
        assert run([*arguments, str(spec)]) == 1
        told = capsys.readouterr()
        assert "groups" in told.out if "--json" in arguments else "2 blocks are the fewest" in told.err


def test_the_groups_of_the_document_are_specs_that_check(tmp_path, capsys):
    motors = [{}, {"shaft_length": 64}, {"shaft_length": 42}]
    spec = tmp_path / "axis.toml"
    spec.write_text(family_text(motors), encoding="utf-8")
    assert run(["check", str(spec), "--json"]) == 1
    document = json.loads(capsys.readouterr().out)
    assert document["status"] == "infeasible"
    assert document["conflicts"]
    groups = document["family"]["groups"]
    assert [group["entries"] for group in groups] == [["motor", "family.1"], ["family.0"]]
    for group in groups:
        own = [motors[0 if entry == "motor" else int(entry[7:]) + 1] for entry in group["entries"]]
        plan = plan_from(family_records(own))
        assert (plan.number("length_min"), plan.number("length_max")) == (group["length_min"], group["length_max"])


def test_the_example_is_one_block_for_both_motors():
    with told_of_family(EXAMPLE):
        plan = plan_from(load_spec(EXAMPLE).records)
    assert len(plan.others) == 1
    assert not any(note.startswith("Motor 1 is mounted turned") for note in plan.notes)


def test_a_third_motor_of_another_pilot_divides_the_example(tmp_path):
    spec = tmp_path / "axis.toml"
    spec.write_text(EXAMPLE.read_text(encoding="utf-8") + '\n[[family]]\npreset = "servo-100"\n', encoding="utf-8")
    with pytest.raises(FamilyError) as caught, told_of_family(spec):
        plan_from(load_spec(spec).records)
    assert [group.entries for group in caught.value.groups] == [("motor", "family.0"), ("family.1",)]
