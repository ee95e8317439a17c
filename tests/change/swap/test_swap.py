import tomllib
from pathlib import Path

import pytest

from blockgen.change.swap.swap import swap
from blockgen.cli import run
from blockgen.errors import InputError
from blockgen.pipeline import design
from blockgen.sizing.size import size
from blockgen.spec.load import load_spec
from blockgen.spec.starter import starter_spec
from tests.examples import EXAMPLES, SERVO, STEPPER

NONE = {"motor": None, "bearing": None, "coupling": None}


def of_kind(plan, *kinds):
    return [f for f in plan.features if f.id.startswith(kinds)]


@pytest.mark.parametrize("spec", [e for e in EXAMPLES if "family" not in e.stem], ids=lambda path: path.stem)
def test_the_base_plate_the_shaft_and_the_bearing_side_stay(spec, tmp_path):
    made = swap(tmp_path / "new.toml", spec, {**NONE, "motor": "servo-100"})
    old, new = size(load_spec(spec)), made.design.plan
    holes = [[f.position[:2] for f in plan.base_features if f.kind != "dowel_hole"] for plan in (old, new)]
    assert holes[0] == holes[1]
    assert old.number("shaft_height") == new.number("shaft_height")
    assert of_kind(old, "bearing") == of_kind(new, "bearing")
    assert old.text("base_screw") == new.text("base_screw")


def test_every_line_stays_or_becomes_a_comment(tmp_path):
    swap(tmp_path / "new.toml", SERVO, {**NONE, "motor": "servo-100"})
    before = SERVO.read_text().splitlines()
    after = (tmp_path / "new.toml").read_text().splitlines()
    kept = iter(after)
    for line in before:
        if not line.startswith("revision"):
            assert any(new in {line, f"# {line}"} for new in kept), line
    assert '# spigot_runout = "0.04 mm"          # full indicator movement, reduced class' in after
    assert 'revision = "B"  # was "A": motor servo-100 put in' in after
    locked = next(number for number, line in enumerate(after) if line.startswith("hole_positions"))
    assert after[locked - 1].startswith("# Locked: the base plate keeps its holes as GL-040-11 A has them; remove")


def test_nothing_of_the_old_motor_is_left(tmp_path):
    swap(tmp_path / "new.toml", SERVO, {**NONE, "motor": "nema-34"})
    assert tomllib.loads((tmp_path / "new.toml").read_text())["motor"] == {"preset": "nema-34"}


def test_another_coupling_locks_both_sides(tmp_path):
    made = swap(tmp_path / "new.toml", STEPPER, {**NONE, "coupling": "jaw-40"})
    assert {f"{lock.table}.{lock.key}" for lock in made.locks} >= {"block.bearing_wall", "block.motor_wall"}


def test_another_bearing_locks_the_motor_side(tmp_path):
    made = swap(tmp_path / "new.toml", SERVO, {**NONE, "bearing": "bearing-unit-17"})
    keys = {f"{lock.table}.{lock.key}" for lock in made.locks}
    assert "block.motor_wall" in keys
    assert not keys & {"block.bearing_wall", "block.bore_fit"}


def test_what_was_given_is_not_locked_a_second_time(tmp_path):
    old = tmp_path / "old.toml"
    old.write_text(SERVO.read_text().replace("[block]", "[block]\nbearing_wall = 30"))
    made = swap(tmp_path / "new.toml", old, {**NONE, "motor": "servo-100"})
    assert "bearing_wall" not in {lock.key for lock in made.locks}
    assert tomllib.loads((tmp_path / "new.toml").read_text())["block"]["bearing_wall"] == 30


def test_free_locks_nothing(tmp_path):
    made = swap(tmp_path / "new.toml", SERVO, {**NONE, "motor": "servo-100"}, free=True)
    assert made.locks == ()
    before, after = (tomllib.loads(path.read_text()) for path in (SERVO, tmp_path / "new.toml"))
    assert before["base"] == after["base"]
    assert before["block"] == after["block"]


def test_without_another_part_it_is_a_copy(tmp_path):
    swap(tmp_path / "new.toml", SERVO, NONE)
    assert (tmp_path / "new.toml").read_bytes() == SERVO.read_bytes()


def test_a_conflict_is_told_and_the_file_is_written(tmp_path):
    old = tmp_path / "old.toml"
    text = SERVO.read_text().replace("[base]", '[base]\nlength_available = "114 mm"')
    old.write_text(text.replace("[block]", "[block]\nmotor_wall = 24.5"))
    made = swap(tmp_path / "new.toml", old, {**NONE, "motor": "servo-130"})
    assert made.design is None
    assert made.conflicts
    assert (tmp_path / "new.toml").exists()


def test_the_locks_that_are_to_blame_are_named_and_freeing_them_helps(tmp_path):
    made = swap(tmp_path / "new.toml", STEPPER, {**NONE, "coupling": "jaw-40"})
    assert made.conflicts
    assert made.freed == (("block.bearing_wall", "block.motor_wall"),)
    keys = {key.partition(".")[2] for key in made.freed[0]}
    kept = [line for line in made.file.read_text().splitlines() if line.partition(" =")[0] not in keys]
    (tmp_path / "freed.toml").write_text("\n".join(kept))
    assert design(tmp_path / "freed.toml")


def test_locks_that_let_checks_fail_are_named(tmp_path):
    made = swap(tmp_path / "new.toml", SERVO, {**NONE, "motor": "iec-71-ft85"})
    assert made.design.status.startswith("NOT FOR MANUFACTURE")
    assert made.freed == (("base.hole_positions",),)
    kept = [line for line in made.file.read_text().splitlines() if not line.startswith("hole_positions")]
    (tmp_path / "freed.toml").write_text("\n".join(kept))
    assert design(tmp_path / "freed.toml").status == "released for review"


def test_an_old_spec_for_which_no_block_exists_locks_nothing(tmp_path):
    short = SERVO.parent / "spray_carriage_too_short.toml"
    made = swap(tmp_path / "new.toml", short, {**NONE, "motor": "servo-80"})
    assert made.locks == ()
    assert "nothing to lock to" in made.remarks[0]


def test_paths_of_makers_models_are_those_of_the_new_folder(tmp_path):
    (tmp_path / "models").mkdir()
    (tmp_path / "models" / "unit.step").write_text("ISO-10303-21;")
    (tmp_path / "next").mkdir()
    old = tmp_path / "old.toml"
    old.write_text(SERVO.read_text().replace("[bearing]", '[bearing]\nmodel = "models/unit.step"  # theirs'))
    swap(tmp_path / "next" / "new.toml", old, {**NONE, "motor": "servo-80"})
    assert 'model = "../models/unit.step"  # theirs' in (tmp_path / "next" / "new.toml").read_text()
    swap(tmp_path / "next" / "copy.toml", old, NONE)
    assert load_spec(tmp_path / "next" / "copy.toml")


def test_a_preset_of_another_kind_writes_nothing(tmp_path):
    with pytest.raises(InputError, match='"bellows-45", a preset of kind coupling'):
        swap(tmp_path / "new.toml", SERVO, {**NONE, "motor": "bellows-45"})
    with pytest.raises(InputError, match="no such file"):
        swap(tmp_path / "new.toml", Path("none.toml"), NONE)
    assert list(tmp_path.iterdir()) == []


def test_a_file_that_exists_is_left_alone(tmp_path):
    (tmp_path / "new.toml").write_text("mine")
    with pytest.raises(InputError, match="choose another name"):
        swap(tmp_path / "new.toml", SERVO, {**NONE, "motor": "servo-100"})
    assert (tmp_path / "new.toml").read_text() == "mine"


def test_the_starter_can_be_swapped(tmp_path):
    (tmp_path / "old.toml").write_text(starter_spec())
    made = swap(tmp_path / "new.toml", tmp_path / "old.toml", {**NONE, "motor": "servo-80"})
    assert made.revision == ("A", "B")
    assert load_spec(tmp_path / "new.toml").records["job.revision"].value == "B"


def test_free_without_an_old_spec_is_refused_and_writes_nothing(tmp_path, capsys):
    assert run(["new", str(tmp_path / "n.toml"), "--free"]) == 2
    assert "name the old spec with --from" in capsys.readouterr().err
    assert not list(tmp_path.iterdir())
