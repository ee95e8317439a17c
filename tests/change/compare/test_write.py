import json
from dataclasses import replace

import pytest

from blockgen.change.compare.compare import compare, with_rework
from blockgen.change.compare.write import change_stem, write_change
from blockgen.cli import run
from blockgen.errors import InputError, MachineError
from tests.change.sides import SERVO_TEXT, WIDER, altered, laid, side

NEXT = SERVO_TEXT.replace('revision = "A"', 'revision = "B"').replace("[motor]", "[motor]\npilot_diameter = 72")
STEM = "GL-040-11_A_to_GL-040-11_B_change"


@pytest.fixture(scope="module")
def found():
    over = laid(SERVO_TEXT, WIDER)  # revision B has the same solid
    return with_rework(replace(compare(side(), side(NEXT)), volumes=over.volumes), prove=False), over


@pytest.mark.slow
def test_document_data_and_picture_are_written_with_the_same_bytes_each_time(found, tmp_path):
    files = write_change(*found, tmp_path / "new" / "one")
    again = write_change(*found, tmp_path / "two")
    assert [path.name for path in files] == [f"{STEM}.md", f"{STEM}.json", f"{STEM}.png"]
    assert [path.read_bytes() for path in files] == [path.read_bytes() for path in again]
    assert sorted(path.name for path in (tmp_path / "two").iterdir()) == sorted(path.name for path in files)
    text = files[0].read_text()
    assert text.startswith("# Change from GL-040-11_A to GL-040-11_B\n")
    assert f"![Removed and added volume](<{STEM}.png>)" in text
    document = json.loads(files[1].read_text())
    assert document["volumes"]["removed"] == pytest.approx(892.998, abs=0.001)
    assert document["rework"]["feasible"] is True
    assert files[2].read_bytes().startswith(b"\x89PNG")
    assert str(tmp_path) not in text + files[1].read_text()


@pytest.mark.slow
def test_a_writer_that_fails_leaves_nothing(found, tmp_path, monkeypatch):
    def full(*_):
        raise OSError(28, "No space left on device")

    monkeypatch.setattr("blockgen.change.compare.write.write_picture", full)
    with pytest.raises(MachineError, match="No space left on device; free some space"):
        write_change(*found, tmp_path / "changes")
    assert list(tmp_path.iterdir()) == []


def test_a_name_that_is_too_long_is_told_before_anything_is_made():
    def long(document):
        document["job"]["number"] = "X" * 240

    with pytest.raises(InputError, match=r"shorten job\.number"):
        change_stem(compare(side(), altered(long)))


@pytest.fixture
def specs(tmp_path, monkeypatch):
    monkeypatch.chdir(tmp_path)
    (tmp_path / "old.toml").write_text(SERVO_TEXT)
    (tmp_path / "new.toml").write_text(NEXT)
    return tmp_path


def test_json_is_one_document_and_differing_designs_give_0(specs, capsys):
    assert run(["compare", "old.toml", "new.toml", "--json"]) == 0
    document = json.loads(capsys.readouterr().out)
    assert [e["id"] for e in document["dimensions"]["changed"]] == ["motor_bore"]
    assert document["dimensions"]["changed"][0]["because"] == ["motor.pilot_diameter"]
    assert document["volumes"] is None
    assert "bearing_bore" in document["dimensions"]["unchanged"]
    assert len({document["old"]["spec_sha256"], document["new"]["spec_sha256"]}) == 2


def test_the_same_design_says_so(specs, capsys):
    assert run(["compare", "old.toml", "old.toml"]) == 0
    out = capsys.readouterr().out
    assert "Nothing differs." in out
    assert "OBSOLETE" not in out


def test_wrong_input_gives_2_and_writes_nothing(specs, capsys):
    assert run(["compare", "old.toml", "none.toml", "--out", "changes"]) == 2
    assert "no such file" in capsys.readouterr().err
    assert not (specs / "changes").exists()


def test_a_design_that_cannot_exist_gives_1_with_its_conflict(specs, capsys):
    (specs / "new.toml").write_text(SERVO_TEXT.replace("[base]", '[base]\nlength_available = "90 mm"'))
    assert run(["compare", "old.toml", "new.toml", "--json"]) == 1
    document = json.loads(capsys.readouterr().out)
    assert document["status"] == "infeasible"
    assert document["conflicts"][0]["title"].startswith("new.toml: ")


@pytest.mark.slow
def test_out_writes_and_quiet_says_nothing(specs, capsys, monkeypatch):
    over = laid(SERVO_TEXT, WIDER)
    monkeypatch.setattr(
        "blockgen.change.compare.compare.with_volumes", lambda told: (replace(told, volumes=over.volumes), over)
    )
    monkeypatch.setattr("blockgen.change.compare.compare.with_rework", lambda told, *, prove: told)
    assert run(["compare", "old.toml", "new.toml", "--out", "changes", "--quiet"]) == 0
    assert capsys.readouterr() == ("", "")
    assert (specs / "changes" / f"{STEM}.md").is_file()


@pytest.mark.slow
def test_the_model_of_an_adapter_comes_with_the_document(tmp_path):
    narrower = SERVO_TEXT.replace("[motor]", "[motor]\npilot_diameter = 60").replace('revision = "A"', 'revision = "C"')
    told = with_rework(compare(side(), side(narrower)), prove=False)
    assert told.rework.adapters
    over = laid(SERVO_TEXT, WIDER)  # its picture is not looked at here
    files = write_change(replace(told, volumes=over.volumes), over, tmp_path)
    assert files[3].name == "GL-040-11_C_adapter.step"
    assert files[3].read_text().startswith("ISO-10303-21;")
    assert [path.name for path in sorted(tmp_path.iterdir())] == sorted(path.name for path in files)
