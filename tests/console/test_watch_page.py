"""What a watch prints."""

from pathlib import Path

import pytest

from blockgen.console.plain import lines
from blockgen.console.watch_page import MOST, started, watch_text
from blockgen.errors import InputError, Problem
from blockgen.pipeline import BuildResult, design
from blockgen.spec.load import parse_spec
from blockgen.watching.events import Built, Ended, Finishing, Unfinished, Wrong
from tests.examples import SERVO

TEXT = SERVO.read_text(encoding="utf-8")
SPEC = Path("axis.toml")
FOLDER = Path("out/GL-040-11_A")


def built(*swaps):
    text = TEXT
    for old, new in swaps:
        assert old in text
        text = text.replace(old, new)
    made = design(parse_spec(text, str(SERVO)))
    return BuildResult(FOLDER, {}, made.plan, made.findings, made.status)


@pytest.fixture(scope="module")
def demo():
    return built()


@pytest.fixture(scope="module")
def small_screws():
    return built(('screw = "M8"', 'screw = "M6"'))


def told(event, width=100):
    return watch_text(event, SPEC, "14:03:21", width).split("\n")


def events(demo, other):
    yield Built(demo, None, 0.4, ("block", "stl"), ("drawing", "report"))
    yield Built(other, demo, 0.4, ("block", "stl"), ("drawing", "report"), ("assembly", "inspection"))
    yield Built(other, None, 4.2, ("assembly", "drawing", "base_holes", "inspection", "report"), follows=demo)
    yield Wrong(InputError([Problem("axis.toml", 7, "motor.mass", "x " * 90, "y " * 90)]), FOLDER, ("drawing",))
    yield Unfinished("z " * 90, ("drawing",))
    yield Finishing(("assembly", "drawing", "base_holes", "inspection", "report"))
    yield Ended(FOLDER, ("assembly", "drawing", "base_holes", "inspection", "report"))


@pytest.mark.parametrize("width", [80, 120])
def test_it_fits(demo, small_screws, width):
    for event in events(demo, small_screws):
        assert max(map(len, told(event, width))) <= width


def test_the_first_build_tells_where_it_stands_and_what_speaks_against_it(small_screws):
    text = told(Built(small_screws, None, 0.42, ("block", "stl")))
    assert text[1] == f"14:03:21 axis.toml: block, stl built in 0.42 s, in {FOLDER}"
    assert any("FAIL" in line and "Base joint" in line for line in text)


def test_a_change_tells_key_sizes_verdict_and_status(demo, small_screws):
    text = told(Built(small_screws, demo, 0.42, ("block", "stl"), ("drawing",)))
    assert any(line.split() == ["base.screw", "M8", "M6"] for line in text)
    assert any(line.startswith("width") and "104 mm" in line and "98 mm" in line for line in text)
    assert any(line.startswith("- pass -> FAIL Base joint holds the thrust by friction (base_slip)") for line in text)
    assert f"(was: {demo.status})" in " ".join(text)
    assert text[-1] == "To follow when the spec is left alone: drawing."


def test_many_rows_are_counted(demo, small_screws):
    text = told(Built(small_screws, demo, 0.42, ()))
    start = next(i for i, line in enumerate(text) if line.startswith("Sizes"))
    rows = text[start + 2 : start + 2 + MOST]
    assert all("  " in row for row in rows)
    assert text[start + 2 + MOST].startswith("and ")


def test_nothing_changed_is_said(demo):
    text = told(Built(built(), demo, 0.42, ("stl",)))
    assert text[-1] == "No value, size, screw or verdict has changed."


def test_another_folder_is_said(demo):
    moved = BuildResult(Path("out/GL-040-11_B"), {}, demo.plan, demo.findings, demo.status)
    assert "now in out/GL-040-11_B" in told(Built(moved, demo, 0.4, ("stl",)))[1]


def test_what_follows_tells_only_checks_that_were_not_told(demo, small_screws):
    new = [finding for finding in demo.findings if finding.verdict == "pass"][:3]
    heard = [finding for finding in demo.findings if finding not in new]
    quick = BuildResult(FOLDER, {}, demo.plan, tuple(heard), demo.status)
    text = told(Built(demo, None, 4.2, ("drawing",), follows=quick))
    assert text[1:] == [
        "14:03:21 The set is whole, 4.2 s after the save: drawing too.",
        f"Status: {demo.status}",
        "Checks that were not made before: 3 pass.",
    ]
    assert told(Built(small_screws, demo, 4.2, ("drawing",), follows=small_screws))[4:] == []


def test_files_taken_away_are_named(demo):
    text = told(Built(demo, None, 0.4, ("stl",), retired=("drawing", "report")))
    assert text[-1] == "Taken away, since --only does not name them: drawing, report."


def test_the_stiffness_that_is_out_is_named(demo):
    text = " ".join(told(Built(demo, None, 0.4, ("stl",), unstiff=True)))
    assert "`blockgen build axis.toml --stiffness`" in text


@pytest.mark.parametrize(
    ("error", "said"),
    [
        (InputError([Problem("axis.toml", 7, "motor.mass", "-1 kg", "more than nothing")]), "axis.toml:7: motor.mass"),
        (OSError(28, "No space left on device", "x.step"), "x.step: No space left on device"),
        (ZeroDivisionError("division by zero"), "a fault in blockgen itself (ZeroDivisionError"),
    ],
)
def test_an_error_is_told_as_by_every_command(error, said):
    text = told(Wrong(error, FOLDER))
    assert text[1] == f"14:03:21 axis.toml cannot be built; the set in {FOLDER} stands as it was"
    assert any(said in line for line in text)
    assert "nothing stands yet" in told(Wrong(error, None))[1]


def test_the_end_says_what_is_lacking():
    assert told(Ended(FOLDER))[1:] == [f"Watch ended; the set in {FOLDER} is whole."]
    assert told(Ended(None))[1:] == ["Watch ended."]
    text = " ".join(told(Ended(FOLDER, ("drawing",))))
    assert "It lacks drawing" in text
    assert "`blockgen build axis.toml`" in text


def test_it_begins_with_the_way_to_end_it():
    text = list(lines(started(SPEC, "http://127.0.0.1:8000/"), 80))
    assert "Ctrl-C" in text[0]
    assert text[1] == "Shown at http://127.0.0.1:8000/ on this computer only."
    assert len(started(SPEC, None)) == 1
