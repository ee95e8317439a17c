"""read-motor and read-bearing as a user meets them."""

import json
import tomllib
from pathlib import Path

import pytest

from blockgen.cli import run
from tests.reading.made_motors import Motor, made
from tests.reading.units import write_in

pytestmark = pytest.mark.slow


@pytest.fixture
def motor(tmp_path, monkeypatch):
    monkeypatch.chdir(tmp_path)
    write_in("MM", made(Motor()), Path("motor.step"))
    return "motor.step"


@pytest.mark.parametrize("columns", ["80", "120"])
def test_a_page_for_people(motor, columns, capsys, monkeypatch):
    monkeypatch.setenv("COLUMNS", columns)
    assert run(["read-motor", motor]) == 0
    out = capsys.readouterr().out
    assert max(map(len, out.splitlines())) <= int(columns)
    assert out.startswith("Motor in motor.step (in mm, 1 solid)")
    assert "pilot_diameter" in out
    assert "Not found" in out
    assert "--out FILE writes the table [motor]" in " ".join(out.split())


def test_one_json_document(motor, capfd):
    assert run(["read-motor", motor, "--json"]) == 0
    document = json.loads(capfd.readouterr().out)
    values = {v["key"]: v for v in document["values"]}
    assert values["pilot_diameter"]["value"] == 70.0
    assert values["pilot_diameter"]["confidence"] == "high"
    assert tomllib.loads(document["draft"])["motor"]["shaft_diameter"] == "19 mm"
    assert {m["key"] for m in document["not_found"]} >= {"pilot_fit", "mass"}


def test_the_draft_is_written_once_and_names_the_model(motor, capsys):
    Path("specs").mkdir()
    assert run(["read-motor", motor, "--out", "specs/motor.toml", "--quiet"]) == 0
    assert capsys.readouterr().out == ""
    text = Path("specs/motor.toml").read_text()
    assert tomllib.loads(text)["motor"]["model"] == "../motor.step"
    assert run(["read-motor", motor, "--out", "specs/motor.toml"]) == 2
    assert "choose another name" in capsys.readouterr().err
    assert Path("specs/motor.toml").read_text() == text


def test_no_mounting_face_is_wrong_input(tmp_path, capsys):
    import cadquery as cq

    file = write_in("MM", cq.Solid.makeBox(10, 20, 30).wrapped, tmp_path / "box.step")
    assert run(["read-bearing", str(file)]) == 2
    captured = capsys.readouterr()
    assert captured.out == ""
    assert "no mounting face: 6 flat" in " ".join(captured.err.split())
    assert run(["read-bearing", str(file), "--json"]) == 2
    assert json.loads(capsys.readouterr().out)["status"] == "wrong_input"


@pytest.mark.parametrize("command", ["read-motor", "read-bearing"])
def test_help_has_an_example(command, capsys):
    assert run([command, "--help"]) == 0
    assert f"Example: blockgen {command} " in " ".join(capsys.readouterr().out.split()) + " "
