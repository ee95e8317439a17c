"""What counts as a change: contents, never times; and which files a spec uses."""

import itertools
import os
import time

import pytest

from blockgen.watching import files
from blockgen.watching.files import MISSING, Look, Named, named_in

SPEC = """
[motor]
preset = "my-motor"
model = "motor.step"
[bearing]
model = "maker/bearing.step"
[block]
material = "my-alloy"
[[family]]
preset = "other-motor"
[material.own]
preset = "own-alloy"
"""


@pytest.fixture
def spec(tmp_path, monkeypatch):
    monkeypatch.setenv("BLOCKGEN_PRESETS", str(tmp_path / "presets"))
    (tmp_path / "presets").mkdir()
    path = tmp_path / "axis.toml"
    path.write_text(SPEC)
    return path


def test_presets_materials_and_models_are_found_wherever_they_are_named(spec):
    found = named_in(spec)
    assert set(found.presets) == {"my-motor", "my-alloy", "other-motor", "own-alloy"}
    assert found.models == ("motor.step", "maker/bearing.step")


@pytest.mark.parametrize("text", ["[motor\n", "\xff", "a = " + "[" * 5000], ids=["broken", "no UTF-8", "deep"])
def test_what_cannot_be_read_names_nothing(tmp_path, text):
    path = tmp_path / "axis.toml"
    path.write_bytes(text.encode("latin-1"))
    assert named_in(path) == Named()
    assert named_in(tmp_path) == Named()


def test_the_same_contents_saved_again_are_no_change(spec):
    look = Look(spec)
    before = look.contents()
    spec.write_text(SPEC)
    os.utime(spec, (1, 1))
    assert look.contents() == before


def test_a_save_by_a_new_file_under_the_old_name_is_seen(spec):
    look = Look(spec)
    before = look.contents()
    new = spec.with_suffix(".new")
    new.write_text(SPEC + "# a word\n")
    new.replace(spec)
    assert look.contents() != before


def test_same_size_and_time_do_not_hide_a_change_at_first(spec):
    look = Look(spec)
    before, found = look.contents(), spec.stat()
    spec.write_text(SPEC.replace("my-alloy", "my-allox"))
    os.utime(spec, ns=(found.st_atime_ns, found.st_mtime_ns))
    assert look.contents() != before


def test_a_file_that_has_stood_for_a_while_is_not_read_again(spec, monkeypatch):
    look = Look(spec)
    before = look.contents()
    ahead = time.monotonic() + 2 * files.SURE
    monkeypatch.setattr(files.time, "monotonic", lambda: ahead)
    monkeypatch.setattr(files, "_sha256", lambda path: pytest.fail(f"{path} is read"))
    assert look.contents() == before


def test_a_preset_and_a_model_count_as_they_come_change_and_go(spec, tmp_path):
    look = Look(spec)
    seen = [look.contents()]
    for path in (tmp_path / "presets" / "MY-motor.toml", tmp_path / "motor.step"):
        for text in ("one", "two"):
            path.write_text(text)
            seen.append(look.contents())
        path.unlink()
        seen.append(look.contents())
    assert all(a != b for a, b in itertools.pairwise(seen))
    assert seen[0] == seen[3] == seen[6]


def test_presets_that_the_spec_does_not_use_count_for_nothing(spec, tmp_path):
    look = Look(spec)
    before = look.contents()
    (tmp_path / "presets" / "another.toml").write_text("x")
    assert look.contents() == before


def test_the_users_preset_displaces_the_shipped_one(spec, tmp_path):
    spec.write_text('[motor]\npreset = "servo-80"\n')
    look = Look(spec)
    before = look.contents()
    assert len(before) == 2
    (tmp_path / "presets" / "servo-80.toml").write_text("x")
    assert look.contents() != before


def test_a_spec_that_is_gone_or_broken_still_stands_for_the_files_it_named(spec, tmp_path):
    (tmp_path / "motor.step").write_text("one")
    look = Look(spec)
    look.contents()
    spec.unlink()
    gone = look.contents()
    assert gone[spec] == MISSING
    assert gone[tmp_path / "motor.step"] != MISSING


def test_a_folder_in_place_of_a_file_is_no_file(tmp_path):
    assert Look(tmp_path).contents() == {tmp_path: MISSING}
