"""The draft is a table of a spec: it parses, it loads, each line says how sure it is and why."""

import tomllib

import pytest

from blockgen.errors import InputError
from blockgen.outputs.escape import one_line, toml_string
from blockgen.reading.draft import draft, write_draft
from blockgen.reading.found import Found, Missing, Reading
from blockgen.spec.load import parse_spec
from blockgen.spec.tables import MODELS
from tests.sizing.strategies import COMPLETE, changed, toml

FOUND = (
    Found("pilot_diameter", 73.025, "mm", "high", "outside of a cylinder; 1 face; = 2.875 in", 1, 0.0),
    Found("pilot_form", "proud", "", "high", "outside", 1, None),
    Found("bolt_count", 4, "", "fair", "holes", 4, 0.0),
    Found("bolt_positions", ((10.0, -5.5), (-10.0, 5.5)), "mm", "fair", "2 holes", 2, 0.0),
)
READING = Reading(
    "motor", 'a "b"\n.step', "in", 1, FOUND, (Missing("pilot_fit", "not in a STEP model"),), ("A note.",),
    (0.0, 0.0, 0.0), (0.0, 0.0, 1.0), (0.0, 1.0, 0.0), ("1 flat face",),
)  # fmt: skip


def text(reading=READING):
    return draft(reading, reading.file, toml_string, one_line)


def test_it_parses_and_each_line_has_its_reason():
    lines = text().splitlines()
    table = tomllib.loads(text())["motor"]
    assert table["pilot_diameter"] == "73.025 mm"
    assert table["bolt_positions"] == [[10, -5.5], [-10, 5.5]]
    assert table["model"] == 'a "b"\n.step'
    assert 'pilot_diameter = "73.025 mm"  # high: outside of a cylinder; 1 face; = 2.875 in' in lines
    assert '# pilot_fit = ""  # not found: not in a STEP model' in lines
    assert any(line.startswith("# Note: A note.") for line in lines)


@pytest.mark.parametrize("part", ["motor", "bearing"])
def test_all_keys_are_keys_of_the_spec(part):
    import inspect
    import re

    from blockgen.reading import bearing_values, flange_values, motor_values
    from blockgen.reading import part as part_module

    own = motor_values if part == "motor" else bearing_values
    source = inspect.getsource(flange_values) + inspect.getsource(own)
    keys = set(re.findall(r'(?:sized|Found|Missing)\(\s*"(\w+)"', source)) | set(part_module._UNKNOWN[part])
    only_motor = {"fastening", "bolt_thread"} if part == "bearing" else set()
    assert keys - only_motor <= set(MODELS[part].model_fields)


@pytest.mark.slow
def test_a_spec_loads_with_the_draft(tmp_path):
    from blockgen.reading.part import reading_of
    from blockgen.reading.read_file import StepModel
    from tests.reading.made_motors import Motor, made

    reading = reading_of(StepModel(made(Motor()), "mm", 1), "motor.step", "motor")
    drafted = "\n".join(line for line in text(reading).splitlines() if not line.startswith("model"))
    others = changed(COMPLETE)
    del others["motor"]
    spec = parse_spec("schema = 1\n" + toml(others) + drafted)
    assert spec.records["motor.pilot_diameter"].value == 70.0


def test_a_file_is_never_overwritten(tmp_path):
    file = tmp_path / "motor.toml"
    write_draft("one\n", file)
    with pytest.raises(InputError, match="choose another name"):
        write_draft("two\n", file)
    assert file.read_text() == "one\n"
    with pytest.raises(InputError, match="make it first"):
        write_draft("one\n", tmp_path / "none" / "motor.toml")
