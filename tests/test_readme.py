"""README: what it shows is what comes out, its links lead somewhere, and its commands work."""

from __future__ import annotations

import re
import shlex
import subprocess
import sys
import tomllib

import pytest

from blockgen import load_spec, size
from blockgen.cli import run as run_here
from blockgen.spec.presets import list_presets
from tests import readme_blocks
from tests.readme_blocks import README, ROOT, environment, remade, shown_commands

TEXT = README.read_text(encoding="utf-8")
FENCE = re.compile(r"^```(\w+)\n(.*?)^```$", re.MULTILINE | re.DOTALL)
HEADING = re.compile(r"^#+ (.+)$", re.MULTILINE)
DEMO_BUILD = "blockgen build presets/examples/spray_carriage_servo.toml"


@pytest.fixture
def clone(tmp_path):
    """A folder that looks like a clone to a reader, so that nothing is written into this one."""
    (tmp_path / "presets").symlink_to(ROOT / "presets", target_is_directory=True)
    return tmp_path


def fences(language):
    return [body for found, body in FENCE.findall(TEXT) if found == language]


def anchors(text):
    """Return the anchors of the headings as a forge makes them."""
    return {re.sub(r"[^\w\- ]", "", title.lower()).replace(" ", "-") for title in HEADING.findall(text)}


def shown_part(command):
    """Return the part of README that shows the output of one command."""
    start = TEXT.index(f"<!-- shown: {command} -->")
    end = "<!-- end -->"
    return TEXT[start : TEXT.index(end, start) + len(end)]


def test_what_is_shown_is_what_comes_out(clone):
    fast = TEXT.replace(shown_part(DEMO_BUILD), "")
    assert fast == remade(fast, lambda command: readme_blocks.run(command, clone)), "run python -m tests.readme_blocks"


@pytest.mark.slow
def test_the_demo_build_prints_what_is_shown(clone):
    part = shown_part(DEMO_BUILD)
    assert part == remade(part, lambda command: readme_blocks.run(command, clone)), "run python -m tests.readme_blocks"


def test_it_opens_with_one_paragraph_and_two_commands():
    title, paragraph, heading = TEXT.split("\n\n")[:3]
    assert title == "# blockgen"
    assert paragraph.startswith("blockgen ")
    assert heading == "## Start"
    demo, tests = fences("sh")[:2]
    assert demo == f"pip install . && {DEMO_BUILD}\n"
    assert re.fullmatch(r'pip install .*"\.\[test\]" && python -m pytest -n 2 --dist loadfile\n', tests)


def test_the_test_command_stands_where_continuous_integration_looks():
    script = (ROOT / ".ci" / "run").read_text(encoding="utf-8")
    assert "<!-- test command -->" in script
    after = TEXT.split("<!-- test command -->\n", 1)[1]
    assert re.match(r"```sh\npip install [^\n]*pytest[^\n]*\n```\n", after)


def named_commands():
    """Return the commands that README names with all their words, between backticks or with their output."""
    named = {*re.findall(r"`(blockgen [^`]+)`", TEXT), *shown_commands(TEXT)}
    pattern = re.compile(
        r" \[?(FILE|SPEC|NAME|KIND|OLD|DIR)\b|^blockgen (?!presets)\w+$|^blockgen (-|watch)|--stiffness"
    )
    return sorted(command for command in named if command.startswith("blockgen ") and not pattern.search(command))


def stories():
    """Return the fences whose commands follow one another in an empty folder; what takes long is left out."""
    bodies = [body for body in fences("sh") if body.startswith("blockgen ")]
    return [[line for line in body.splitlines() if "--advise" not in line] for body in bodies]


@pytest.mark.parametrize("command", [c for c in named_commands() if not c.startswith("blockgen build")])
def test_each_command_works(command, clone, monkeypatch, capsys):
    monkeypatch.chdir(clone)
    monkeypatch.setenv("BLOCKGEN_PRESETS", "my_presets")
    words = shlex.split(command)[1:]
    if "axis.toml" in words and words[0] != "new":
        assert run_here(["new", "axis.toml"]) == 0
    expected = 1 if "too_short" in command else 0
    assert run_here(words) == expected
    assert "Traceback" not in capsys.readouterr().err


@pytest.mark.slow
@pytest.mark.parametrize("lines", stories(), ids=lambda lines: lines[0])
def test_commands_that_follow_one_another_work(lines, tmp_path, monkeypatch, capsys):
    monkeypatch.chdir(tmp_path)
    if " axis.toml" in lines[0] and not lines[0].startswith("blockgen new"):
        assert run_here(["new", "axis.toml"]) == 0
    for line in lines:
        assert run_here(shlex.split(line)[1:]) == 0, line
    assert "Traceback" not in capsys.readouterr().err


@pytest.mark.slow
def test_the_python_example_runs(clone):
    (code,) = fences("python")
    done = subprocess.run(
        [sys.executable, "-c", code], cwd=clone, env=environment(), check=True, capture_output=True, text=True
    )
    assert done.stdout.endswith("out/GL-040-11_A released for review\n")


def test_the_shortest_spec_holds_the_required_keys_and_no_others():
    from blockgen.spec.keys import key_table

    spec = tomllib.loads((ROOT / "tests" / "required_keys.toml").read_text(encoding="utf-8"))
    given = {f"{table}.{key}" for table, keys in spec.items() if isinstance(keys, dict) for key in keys}
    assert given == {info.key for info in key_table() if info.required}
    assert size(load_spec(ROOT / "tests" / "required_keys.toml")).number("length") > 0


def test_the_example_preset_is_one(tmp_path):
    (text,) = (body for body in fences("toml") if body.startswith("kind ="))
    (tmp_path / f"{tomllib.loads(text)['name']}.toml").write_text(text)
    mine = {preset.name: preset for preset in list_presets(tmp_path)}["my-coupling"]
    assert mine.status == "read"
    assert mine.values["length"] == 58


def test_every_command_and_exit_code_is_told():
    from blockgen.commands import names

    table = TEXT.split("## Commands", 1)[1].split("### ", 1)[0]
    assert re.findall(r"^\| `blockgen ([\w-]+) ", table, re.MULTILINE) == list(names())
    assert re.findall(r"^\| (\d+) \|", table, re.MULTILINE) == ["0", "1", "2", "3", "130"]


def test_links_lead_somewhere():
    targets = re.findall(r"\]\(([^)\s]+)\)", TEXT)
    assert ".pictures/block.png" in targets
    for target in targets:
        name, _, anchor = target.partition("#")
        path = ROOT / (name or "README.md")
        assert path.exists(), target
        if anchor:
            assert anchor in anchors(path.read_text(encoding="utf-8")), target
