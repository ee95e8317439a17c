"""The watch itself, with summary and spec only, so that no CAD kernel is needed."""

import json
import queue

import pytest

from blockgen.errors import InfeasibleError, InputError
from blockgen.outputs.manifest import set_is_whole
from blockgen.pipeline import build
from blockgen.watching import watch as watching
from blockgen.watching.events import Built, Ended, Wrong
from tests.examples import FOLDER, SERVO
from tests.watching.following import PATIENCE, watched

TEXT = SERVO.read_text(encoding="utf-8")
REACH = 'journal_reach = "46 mm"'


@pytest.fixture
def spec(tmp_path, monkeypatch):
    monkeypatch.setenv("BLOCKGEN_PRESETS", str(tmp_path / "presets"))
    (tmp_path / "presets").mkdir()
    path = tmp_path / "axis.toml"
    path.write_text(TEXT, encoding="utf-8")
    return path


def with_reach(millimetres):
    return TEXT.replace(REACH, f'journal_reach = "{millimetres} mm"')


def reach_in(folder):
    return json.loads((folder / "summary.json").read_text())["inputs"]["screw.journal_reach"]["value"]


def files_of(folder):
    return {path.name: path.read_bytes() for path in folder.iterdir()}


def test_a_save_is_built_as_a_build_does_and_compared_with_the_one_before(spec, tmp_path):
    with watched(spec, tmp_path / "out") as told:
        first = told.next(Built)
        assert (first.before, first.roles, first.later, first.retired) == (None, (), (), ())
        spec.write_text(with_reach(47), encoding="utf-8")
        second = told.next(Built)
        assert second.before is first.made
        assert reach_in(second.made.folder) == 47
        assert told.nothing_but_the_end().folder == second.made.folder
    assert files_of(second.made.folder) == files_of(build(spec, tmp_path / "other", ()).folder)


def test_a_wrong_spec_is_told_with_its_line_and_the_set_stands(spec, tmp_path):
    with watched(spec, tmp_path / "out") as told:
        folder = told.next(Built).made.folder
        before = files_of(folder)
        spec.write_text(TEXT.replace(REACH, 'journal_reach = "46 N"'), encoding="utf-8")
        wrong = told.next(Wrong)
        assert isinstance(wrong.error, InputError)
        assert (wrong.error.problems[0].key, wrong.folder) == ("screw.journal_reach", folder)
        assert wrong.error.problems[0].line == 1 + TEXT[: TEXT.index(REACH)].count("\n")
        assert files_of(folder) == before
        spec.write_text(TEXT, encoding="utf-8")
        assert told.next(Built).made.status == "released for review"
        told.nothing_but_the_end()


def test_a_block_that_cannot_exist_is_told_and_the_set_stands(spec, tmp_path):
    with watched(spec, tmp_path / "out") as told:
        folder = told.next(Built).made.folder
        spec.write_text((FOLDER / "spray_carriage_too_short.toml").read_text(encoding="utf-8"), encoding="utf-8")
        assert isinstance(told.next(Wrong).error, InfeasibleError)
        assert set_is_whole(folder)
        told.nothing_but_the_end()


def test_a_watch_can_begin_with_a_wrong_spec(spec, tmp_path):
    spec.write_text("", encoding="utf-8")
    with watched(spec, tmp_path / "out") as told:
        assert told.next(Wrong).folder is None
        assert not (tmp_path / "out").exists()
        spec.write_text(TEXT, encoding="utf-8")
        told.next(Built)
        told.nothing_but_the_end()


def test_a_spec_half_written_or_gone_for_a_moment_is_not_told(spec, tmp_path, monkeypatch):
    monkeypatch.setattr(watching, "SETTLED", 3600)
    doubted, real = queue.Queue(), watching.load_spec

    def loaded(path):
        try:
            return real(path)
        except InputError as error:
            doubted.put(error.problems[0].found)
            raise

    with watched(spec, tmp_path / "out") as told:
        told.next(Built)
        monkeypatch.setattr(watching, "load_spec", loaded)
        spec.write_text(with_reach(47)[:700], encoding="utf-8")
        assert doubted.get(timeout=PATIENCE)
        spec.unlink()
        while doubted.get(timeout=PATIENCE) != "no such file":
            pass
        spec.write_text(with_reach(47), encoding="utf-8")
        assert reach_in(told.next(Built).made.folder) == 47
        told.nothing_but_the_end()


def test_a_spec_that_stays_away_is_told(spec, tmp_path):
    with watched(spec, tmp_path / "out") as told:
        told.next(Built)
        spec.unlink()
        assert "no such file" in str(told.next(Wrong).error)
        told.nothing_but_the_end()


def test_two_saves_in_a_row_end_with_the_second(spec, tmp_path):
    with watched(spec, tmp_path / "out") as told:
        told.next(Built)
        spec.write_text(with_reach(47), encoding="utf-8")
        spec.write_text(with_reach(48), encoding="utf-8")
        made = told.next(Built).made
        while reach_in(made.folder) != 48:
            made = told.next(Built).made
        told.nothing_but_the_end()


def test_a_save_by_renaming_is_a_save(spec, tmp_path):
    with watched(spec, tmp_path / "out") as told:
        told.next(Built)
        spec.rename(tmp_path / "axis.toml~")
        (tmp_path / "new").write_text(with_reach(47), encoding="utf-8")
        (tmp_path / "new").replace(spec)
        assert reach_in(told.next(Built).made.folder) == 47
        told.nothing_but_the_end()


def test_a_preset_of_the_spec_is_watched_too(spec, tmp_path):
    shipped = FOLDER.parent / "servo-80.toml"
    with watched(spec, tmp_path / "out") as told:
        first = told.next(Built)
        text = shipped.read_text(encoding="utf-8")
        (tmp_path / "presets" / shipped.name).write_text(text.replace("Invented", "Dreamt"), encoding="utf-8")
        told.next(Built)
        (tmp_path / "presets" / shipped.name).write_text("kind", encoding="utf-8")
        assert told.next(Wrong).error.problems[0].file.endswith("servo-80.toml")
        (tmp_path / "presets" / shipped.name).unlink()
        assert told.next(Built).made.plan.records == first.made.plan.records
        told.nothing_but_the_end()


def test_a_makers_model_is_watched_too(spec, tmp_path):
    (tmp_path / "motor.step").write_text("one")
    spec.write_text(TEXT.replace("[motor]", '[motor]\nmodel = "motor.step"'), encoding="utf-8")
    with watched(spec, tmp_path / "out") as told:
        first = hash_in(told.next(Built).made.folder)
        (tmp_path / "motor.step").write_text("two")
        assert hash_in(told.next(Built).made.folder) != first
        (tmp_path / "motor.step").unlink()
        assert told.next(Wrong).error.problems[0].key == "motor.model"
        told.nothing_but_the_end()


def hash_in(folder):
    return json.loads((folder / "manifest.json").read_text())["spec_sha256"]


def test_another_number_goes_to_another_folder_and_the_old_set_stays(spec, tmp_path):
    with watched(spec, tmp_path / "out") as told:
        first = told.next(Built).made.folder
        spec.write_text(TEXT.replace('revision = "A"', 'revision = "B"'), encoding="utf-8")
        second = told.next(Built).made.folder
        assert (first.name, second.name) == ("GL-040-11_A", "GL-040-11_B")
        assert set_is_whole(first)
        assert set_is_whole(second)
        told.nothing_but_the_end()


def test_files_that_only_leaves_out_are_told(spec, tmp_path):
    build(spec, tmp_path / "out", ("base_holes", "inspection"))
    with watched(spec, tmp_path / "out", ("inspection",)) as told:
        made = told.next(Built)
        assert (made.roles, made.later, made.retired) == (("inspection",), (), ("base_holes",))
        spec.write_text(with_reach(47), encoding="utf-8")
        assert told.next(Built).retired == ()
        told.nothing_but_the_end()


def test_a_set_with_stiffness_loses_it_and_that_is_told(spec, tmp_path):
    folder = build(spec, tmp_path / "out", ()).folder
    summary = json.loads((folder / "summary.json").read_text())
    (folder / "summary.json").write_text(json.dumps({**summary, "stiffness": {"band": 0.05}}))
    with watched(spec, tmp_path / "out") as told:
        assert told.next(Built).unstiff
        spec.write_text(with_reach(47), encoding="utf-8")
        assert not told.next(Built).unstiff
        told.nothing_but_the_end()


def test_a_disk_that_fails_is_told_and_the_watch_goes_on(spec, tmp_path):
    (tmp_path / "out").write_text("a file where the folder should be")
    with watched(spec, tmp_path / "out") as told:
        assert "cannot be written" in str(told.next(Wrong).error)
        (tmp_path / "out").unlink()
        spec.write_text(with_reach(47), encoding="utf-8")
        told.next(Built)
        told.nothing_but_the_end()


def test_whatever_one_save_brings_the_watch_goes_on(spec, tmp_path, monkeypatch):
    real = watching.build
    monkeypatch.setattr(watching, "build", lambda *_: 1 / 0)
    with watched(spec, tmp_path / "out") as told:
        assert isinstance(told.next(Wrong).error, ZeroDivisionError)
        monkeypatch.setattr(watching, "build", real)
        spec.write_text(with_reach(47), encoding="utf-8")
        told.next(Built)
        told.nothing_but_the_end()


def test_a_build_stops_at_its_next_step_once_the_user_has_had_enough(spec, tmp_path, monkeypatch):
    with watched(spec, tmp_path / "out") as told:
        folder = told.next(Built).made.folder
        before = files_of(folder)
        real = watching.build

        def ended_in_the_middle(*arguments):
            told.ending.watching.set()
            return real(*arguments)

        monkeypatch.setattr(watching, "build", ended_in_the_middle)
        spec.write_text(with_reach(47), encoding="utf-8")
        assert told.next(Ended).folder == folder
    assert files_of(folder) == before
    assert [path.name for path in (tmp_path / "out").iterdir()] == [folder.name]
