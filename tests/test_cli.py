"""The commands as a user meets them: what they print, where, and with which exit code."""

from __future__ import annotations

import json
import os
import re
import signal
import subprocess
import sys
import time
from pathlib import Path

import pytest

from blockgen import __version__, pipeline
from blockgen.checks.finding import Finding
from blockgen.cli import run
from blockgen.spec.starter import starter_spec

EXAMPLES = Path(__file__).parents[1] / "presets" / "examples"
COMMANDS = ("new", "check", "build", "explain", "inspect", "presets", "lookup", "read-motor", "read-bearing")
HEAVY = {"OCP", "vtk", "cadquery", "numpy", "scipy", "rich", "tomlkit", "ezdxf"}


def finding(verdict):
    return Finding("made_up", "a made-up check", 1.0, 2.0, "mm", 0.5, verdict, "made up")


@pytest.fixture
def spec(tmp_path, monkeypatch):
    monkeypatch.chdir(tmp_path)
    Path("axis.toml").write_text(starter_spec())
    return "axis.toml"


@pytest.fixture
def verdicts(monkeypatch):
    """Let the checks end as a test wants."""

    def set_to(*wanted):
        monkeypatch.setattr(pipeline, "check", lambda *_: tuple(finding(v) for v in wanted))

    set_to("pass")
    return set_to


def process(*arguments, **options):
    """Run the command in a process of its own."""
    command = [sys.executable, "-m", "blockgen", *arguments]
    return subprocess.run(command, capture_output=True, text=True, check=False, timeout=60, **options)


def test_version_and_help(capsys):
    assert run(["--version"]) == 0
    assert capsys.readouterr().out == f"blockgen {__version__}\n"
    assert run([]) == run(["--help"]) == run(["-h"]) == 0
    out = capsys.readouterr().out
    assert all(re.search(rf"^  {name} ", out, re.MULTILINE) for name in COMMANDS)
    assert "Exit codes: 0 done; 1 the design fails; 2 the input is wrong" in " ".join(out.split())


@pytest.mark.parametrize("command", COMMANDS)
def test_each_command_has_help_with_an_example(command, capsys):
    assert run([command, "--help"]) == 0
    assert f"Example: blockgen {command} " in " ".join(capsys.readouterr().out.split()) + " "


def test_help_says_where_own_presets_go_and_what_can_be_written(capsys):
    for command, told in (
        ("presets", "BLOCKGEN_PRESETS"),
        ("lookup", "blockgen presets --help"),
        ("build", "block, stl"),
    ):
        run([command, "--help"])
        assert told in " ".join(capsys.readouterr().out.split())


@pytest.mark.parametrize(
    ("arguments", "found"),
    [
        (["chek"], "chek"),
        (["check"], "SPEC"),
        (["check", "a.toml", "--jsn"], "--jsn"),
        (["lookup", "fit"], "WHAT"),
        (["build", "a.toml", "--out"], "--out"),
    ],
)
def test_wrong_usage_is_wrong_input(arguments, found, capsys):
    assert run(arguments) == 2
    captured = capsys.readouterr()
    assert captured.out == ""
    assert found in captured.err
    assert "--help shows what it takes" in captured.err


# new


def test_new_writes_a_spec_once(tmp_path, monkeypatch, capsys):
    monkeypatch.chdir(tmp_path)
    assert run(["new", "axis.toml", "--motor", "servo-80"]) == 0
    text = Path("axis.toml").read_text()
    assert 'preset = "servo-80"' in text
    assert "blockgen check axis.toml" in capsys.readouterr().out
    assert run(["new", "axis.toml"]) == 2
    assert "choose another name" in capsys.readouterr().err
    assert Path("axis.toml").read_text() == text


@pytest.mark.parametrize("more", [[], ["--from", "axis.toml"]])
def test_new_refuses_a_preset_of_another_kind(spec, capsys, more):
    assert run(["new", "next.toml", "--motor", "bellows-45", *more]) == 2
    assert '"bellows-45", a preset of kind coupling' in capsys.readouterr().err
    assert not Path("next.toml").exists()


def test_new_from_an_old_spec(spec, capsys):
    assert run(["new", "next.toml", "--from", spec, "--coupling", "bellows-45", "--quiet"]) == 0
    assert 'preset = "bellows-45"' in Path("next.toml").read_text()
    assert capsys.readouterr().out == ""


# check


@pytest.mark.parametrize(
    ("wanted", "options", "code"),
    [
        (["pass", "warn", "not_assessed"], [], 0),
        (["pass", "fail"], [], 1),
        (["pass", "warn"], ["--strict"], 1),
        (["pass", "not_assessed"], ["--strict"], 0),
    ],
)
def test_exit_codes_follow_the_checks(spec, verdicts, capsys, wanted, options, code):
    verdicts(*wanted)
    assert run(["check", spec, *options]) == code
    assert capsys.readouterr().out.startswith("Status: ")
    assert run(["build", spec, "--only", "summary", *options]) == code
    assert Path("out/J-001_A/manifest.json").exists()


@pytest.mark.parametrize("columns", ["80", "120"])
def test_a_pipe_gets_plain_text_of_the_width_asked_for(spec, verdicts, columns, capsys, monkeypatch):
    monkeypatch.setenv("COLUMNS", columns)
    run(["check", spec])
    out = capsys.readouterr().out
    assert "\x1b" not in out
    assert max(map(len, out.splitlines())) <= int(columns)
    for word in ("Key sizes", "Axial layout", "Seat to seat", "a made-up check", "Thinnest walls", "1 checks: 1 pass"):
        assert word in out


def test_quiet_prints_nothing(spec, verdicts, capsys):
    assert run(["check", spec, "--quiet"]) == 0
    assert run(["build", spec, "--only", "summary", "--quiet"]) == 0
    assert capsys.readouterr() == ("", "")


@pytest.mark.parametrize(
    ("wanted", "options", "told"),
    [(["pass", "fail"], [], "- FAIL a made-up check"), (["pass", "warn"], ["--strict"], "- WARN a made-up check")],
)
def test_quiet_still_tells_failures(spec, verdicts, capsys, wanted, options, told):
    verdicts(*wanted)
    for command in (["check", spec], ["build", spec, "--only", "summary"]):
        assert run([*command, "--quiet", *options]) == 1
        captured = capsys.readouterr()
        assert captured.out == ""
        assert captured.err.startswith("Status: ")
        assert told in captured.err
        assert "pass" not in captured.err


def test_json_is_the_summary_and_nothing_else(spec, verdicts, capsys):
    assert run(["check", spec, "--json", "--arrangement", "plate"]) == 0  # a build always compares them
    captured = capsys.readouterr()
    assert captured.err == ""
    document = json.loads(captured.out)
    run(["build", spec, "--only", "summary", "--quiet"])
    assert document == json.loads(Path("out/J-001_A/summary.json").read_text())


def test_the_separate_arrangement_stands_beside_the_block(spec, verdicts, capsys):
    assert run(["check", spec]) == 0
    alone = capsys.readouterr().out
    assert run(["check", spec, "--arrangement", "plate"]) == 0
    out = capsys.readouterr().out
    heading = "This block beside a separate motor plate and a foot-mounted unit"
    assert heading in out
    assert heading not in alone
    for told in ("one-piece block", "motor plate and foot-mounted unit, dowelled", "to be held", "Setups", "Fitted"):
        assert told in out
    assert run(["check", spec, "--arrangement", "block"]) == 0
    assert capsys.readouterr().out == alone


@pytest.mark.parametrize("options", [[], ["--json"], ["--quiet"]])
def test_an_arrangement_that_is_not_known_is_wrong_input(spec, verdicts, capsys, options):
    assert run(["check", spec, "--arrangement", "nonsense", *options]) == 2
    captured = capsys.readouterr()
    told = " ".join((captured.out + captured.err).split())
    for word in ("--arrangement", "nonsense", "plate"):
        assert word in told


def test_keys_of_the_separate_arrangement_change_its_row_and_not_the_block_s(spec, verdicts, capsys):
    def p95():
        assert run(["check", spec, "--arrangement", "plate", "--json"]) == 0
        rows = json.loads(capsys.readouterr().out)["alignment"]["arrangements"]
        return {row["id"]: row["p95"] for row in rows}

    before = p95()
    Path(spec).write_text(starter_spec() + "\n[plate]\nplate_height_tolerance = 0.2\n")
    after = p95()
    assert after["block"] == before["block"]
    assert after["plate_dowelled"] > before["plate_dowelled"]


def test_json_has_the_arrangements_where_they_are_asked_for(spec, verdicts, capsys):
    assert run(["check", spec, "--json"]) == 0
    alone = json.loads(capsys.readouterr().out)
    assert run(["check", spec, "--json", "--arrangement", "plate"]) == 0
    captured = capsys.readouterr()
    assert captured.err == ""
    document = json.loads(captured.out)
    rows = document["alignment"].pop("arrangements")
    assert document == alone
    assert [row["id"] for row in rows] == ["block", "plate_dowelled", "plate_screwed"]
    assert [row["p95"] for row in rows] == sorted(row["p95"] for row in rows)
    assert all(row["held"] and row["setups"] and row["fitted_features"] for row in rows)


def test_what_cannot_exist_tells_the_cure(capsys):
    too_short = str(EXAMPLES / "spray_carriage_too_short.toml")
    assert run(["check", too_short]) == 1
    captured = capsys.readouterr()
    assert captured.out == ""
    assert "No block can exist" in captured.err
    assert "the least trouble first" in captured.err
    assert run(["check", too_short, "--json"]) == 1
    document = json.loads(capsys.readouterr().out)
    assert document["status"] == "infeasible"
    assert document["conflicts"]
    assert document["cures"][0]["verified"] is True


def test_wrong_input_as_json(spec, capsys):
    Path(spec).write_text(starter_spec().replace("pilot_diameter", "pilot_diametre"))
    assert run(["check", spec, "--json"]) == 2
    captured = capsys.readouterr()
    document = json.loads(captured.out)
    assert captured.err == ""
    assert document["status"] == "wrong_input"
    assert any("pilot_diameter" in p["remedy"] for p in document["problems"])
    assert set(document["problems"][0]) == {"file", "line", "key", "found", "expected", "remedy"}


@pytest.mark.parametrize("path", ["missing.toml", ".", "x" * 5000])
def test_specs_that_are_not_there(spec, path, capsys):
    assert run(["check", path]) == 2
    assert "expected:" in capsys.readouterr().err


# build


def test_build_names_status_and_files(spec, verdicts, capsys):
    assert run(["build", spec, "--only", "summary", "--out", "elsewhere"]) == 0
    out = capsys.readouterr().out
    assert out.startswith("Status: ")
    assert str(Path("elsewhere/J-001_A/summary.md")) in out


def test_no_role_at_all_is_wrong_input(spec, capsys):
    assert run(["build", spec, "--only", ""]) == 2
    assert "--only summary writes nothing else" in capsys.readouterr().err
    assert not Path("out").exists()


def test_roles_of_later_versions_are_wrong_input(spec, capsys):
    assert run(["build", spec, "--only", "block,poster"]) == 2
    assert "block, stl" in capsys.readouterr().err
    assert not Path("out").exists()


def test_an_out_that_cannot_be_written_is_the_machine_s_fault(spec, verdicts, capsys):
    Path("out").write_text("a file")
    assert run(["build", spec, "--only", "summary"]) == 3
    err = capsys.readouterr().err
    assert "cannot be written" in err
    assert "--out" in err
    assert Path("out").read_text() == "a file"


@pytest.mark.parametrize("name", ["../../x", "a/b", "..", "con", "x" * 300])
def test_a_path_as_job_number_is_wrong_input(spec, name, capsys):
    Path(spec).write_text(starter_spec().replace("J-001", name))
    assert run(["build", spec]) == 2
    assert "job.number" in capsys.readouterr().err
    assert [p.name for p in Path.cwd().iterdir()] == ["axis.toml"]


def test_control_characters_of_a_spec_never_reach_the_terminal(spec, capsys):
    Path(spec).write_text('schema = 1\n"\\u001b[2J" = 1\n[job]\nnumber = "\\u001b]0;x\\u0007"\n')
    assert run(["check", spec]) == 2
    assert "\x1b" not in capsys.readouterr().err


# explain, presets, lookup


def test_explain_lists_keys_and_shows_a_tree(spec, capsys):
    assert run(["explain", spec]) == 0
    assert "bearing.pilot_diameter" in capsys.readouterr().out
    assert run(["explain", spec, "length"]) == 0
    out = capsys.readouterr().out
    assert out.startswith("length = ")
    assert "motor.shaft_length = " in out
    assert "the spec, line " in out
    assert run(["explain", spec, "length", "--json"]) == 0
    assert json.loads(capsys.readouterr().out)["derivation"]["inputs"]
    assert run(["explain", spec, "lenght"]) == 2
    assert "did you mean length" in capsys.readouterr().err


def test_explain_knows_checks_and_features(spec, capsys):
    assert run(["explain", spec, "motor_thread_1"]) == 0
    assert "call-out: M6-6H" in capsys.readouterr().out
    assert run(["explain", spec, "base_slip", "--json"]) == 0
    document = json.loads(capsys.readouterr().out)
    assert document["check"]["verdict"] == "not_assessed"
    assert document["derivation"] is None


def test_a_broken_preset_is_named_and_the_others_are_listed(tmp_path, monkeypatch, capsys):
    (tmp_path / "mine.toml").write_text("not toml")
    monkeypatch.setenv("BLOCKGEN_PRESETS", str(tmp_path))
    assert run(["presets"]) == 2
    captured = capsys.readouterr()
    assert "servo-80" in captured.out
    assert f"{tmp_path / 'mine.toml'}:1" in captured.err


def test_presets_lists_and_shows(capsys):
    assert run(["presets"]) == 0
    assert "servo-80" in capsys.readouterr().out
    assert run(["presets", "SERVO-80"]) == 0
    out = capsys.readouterr().out
    assert re.search(r"^pilot_diameter +\d+ mm$", out, re.MULTILINE)
    assert "representative" in out
    assert run(["presets", "servo-8"]) == 2
    assert "servo-80" in capsys.readouterr().err


@pytest.mark.parametrize(
    ("what", "expected"),
    [
        (["fit", "60H7/h6"], "0.03 mm"),
        (["thread", "M10"], "1.5 mm"),
        (["thread", "1/4-20", "UNC"], "1.27 mm"),
        (["screw", "M10"], "16 mm"),
        (["material", "EN AW-6082-T6"], "2700 kg/m3"),
    ],
)
def test_lookup(what, expected, capsys):
    assert run(["lookup", *what]) == 0
    assert expected in capsys.readouterr().out
    assert run(["lookup", *what, "--json"]) == 0
    document = json.loads(capsys.readouterr().out)
    assert document["kind"] == what[0]
    assert set(document["rows"][0]) == {"label", "value", "unit", "source"}


@pytest.mark.parametrize("what", [["fit", "60H99"], ["thread", "M11"], ["gear", "M2"]])
def test_lookup_of_what_is_not_there(what, capsys):
    assert run(["lookup", *what]) == 2
    assert "expected:" in capsys.readouterr().err


# failures of the machine and of the tool


@pytest.mark.parametrize(
    ("error", "code", "told"),
    [
        (KeyboardInterrupt(), 130, "Interrupted"),
        (ZeroDivisionError("division by zero"), 3, "Please report it"),
        (MemoryError(), 3, "MemoryError"),
        (RecursionError("too deep"), 3, "RecursionError"),
        (PermissionError(13, "Permission denied", "axis.toml"), 3, "axis.toml: Permission denied"),
    ],
)
def test_no_traceback_ever(spec, monkeypatch, capsys, error, code, told):
    def failing(*_):
        raise error

    monkeypatch.setattr(pipeline, "design", failing)
    assert run(["check", spec]) == code
    captured = capsys.readouterr()
    assert told in captured.err
    assert "Traceback" not in captured.err
    assert len(captured.err.splitlines()) == 1


def test_a_reader_that_goes_away_is_no_fault(spec):
    command = f"{sys.executable} -m blockgen presets | head -n 1; exit ${{PIPESTATUS[0]}}"
    done = subprocess.run(["bash", "-c", command], capture_output=True, text=True, check=False, timeout=60)
    assert done.returncode == 0
    assert done.stderr == ""


@pytest.mark.skipif(not Path("/dev/full").exists(), reason="no /dev/full here")
def test_a_full_disk_behind_standard_output(spec):
    command = [sys.executable, "-m", "blockgen", "lookup", "fit", "60H7"]
    with Path("/dev/full").open("w") as full:
        done = subprocess.run(command, stdout=full, stderr=subprocess.PIPE, text=True, check=False)
    assert done.returncode == 3
    assert done.stderr == "blockgen could not finish: standard output cannot be written: No space left on device\n"


def test_an_ascii_pipe_gets_all_it_can_show(spec):
    done = process("check", spec, "--json", env={**os.environ, "PYTHONIOENCODING": "ascii", "PYTHONUTF8": "0"})
    assert json.loads(done.stdout)["schema"] == 1
    done = process("check", spec, env={**os.environ, "PYTHONIOENCODING": "ascii", "PYTHONUTF8": "0"})
    assert done.stdout.startswith("Status: ")
    assert done.stderr == ""


@pytest.mark.parametrize(
    "arguments",
    [
        ["--help"],
        ["check", "axis.toml"],
        ["check", "inches.toml"],
        ["explain", "axis.toml", "length"],
        ["lookup", "thread", "1/4-20 UNC"],
        ["presets"],
    ],
)
def test_nothing_heavy_is_loaded(spec, arguments):
    Path("inches.toml").write_text(starter_spec("nema-23") + '[thermal]\nblock_temperature = "95 degF"\n')
    code = (
        "import sys; from blockgen.cli import run; run(sys.argv[1:]);"
        "print(sorted({m.split('.')[0] for m in sys.modules}), file=sys.stderr)"
    )
    done = subprocess.run([sys.executable, "-c", code, *arguments], capture_output=True, text=True, check=True)
    assert HEAVY & set(re.findall(r"\w+", done.stderr.splitlines()[-1])) == set()


@pytest.mark.slow
def test_the_interrupt_key_ends_a_build_cleanly(spec):
    build = subprocess.Popen(
        [sys.executable, "-m", "blockgen", "build", spec], stdout=subprocess.PIPE, stderr=subprocess.PIPE, text=True
    )
    deadline = time.monotonic() + 20
    while not list(Path.cwd().glob("out/.*.part")) and time.monotonic() < deadline:
        time.sleep(0.01)
    time.sleep(0.2)
    build.send_signal(signal.SIGINT)
    out, err = build.communicate(timeout=30)
    assert build.returncode == 130
    assert (out, err) == ("", "Interrupted; nothing was left half written.\n")
    assert [p.name for p in Path.cwd().iterdir()] == ["axis.toml"]
