import json

import pytest

from blockgen.cli import run
from blockgen.console import plain
from blockgen.console.sweep_page import sweep_page
from tests.sizing.strategies import COMPLETE, toml

VARY = ("--vary", "base.shaft_height=60:70:5", "--vary", "motor.shaft_length=40,12")


@pytest.fixture
def spec(tmp_path, monkeypatch):
    monkeypatch.chdir(tmp_path)
    (tmp_path / "axis.toml").write_text(toml(COMPLETE), encoding="utf-8")
    return "axis.toml"


def test_json_is_one_document_and_the_code_is_0_when_all_was_tried(tmp_path, spec, capsys):
    assert run(["sweep", spec, *VARY, "--no-plot", "--json"]) == 0
    said = json.loads(capsys.readouterr().out)
    assert said["variants"] == 6
    assert said["statuses"]["feasible"] == said["statuses"]["infeasible"] == 3
    assert said["plot"] is None
    assert said["front"][0]["base.shaft_height [mm]"] == 60.0
    assert sorted(path.name for path in tmp_path.iterdir()) == ["axis.toml", "sweep.csv"]


def test_the_page_tells_what_holds_and_what_stands_in_the_way(spec, capsys):
    assert run(["sweep", spec, *VARY, "--no-plot"]) == 0
    page = capsys.readouterr().out
    assert "6 variants of axis.toml: base.shaft_height, motor.shaft_length" in page
    assert "- 3 hold" in page
    assert "- 3 x infeasible: " in page
    assert "mm missing" not in page


@pytest.mark.parametrize("width", [80, 120])
def test_the_page_fits(spec, width, tmp_path):
    from blockgen.change.sweep.sweep import Wishes, sweep

    found = sweep(spec, Wishes((VARY[1], VARY[3]), tmp_path / "t.csv", plot=False))
    assert max(map(len, plain.lines(sweep_page(found), width))) <= width


@pytest.mark.parametrize(
    ("arguments", "said"),
    [
        (("--vary", "base.shaft_heigt=1,2"), "base.shaft_heigt"),
        (("--vary", "base.screw=M8,X9"), "base.screw"),
        ((), "--vary"),
        ((*VARY, "--out", "t.txt"), "--out"),
    ],
)
def test_wrong_input_ends_with_2_and_its_key(spec, capsys, arguments, said):
    assert run(["sweep", spec, *arguments]) == 2
    assert said in capsys.readouterr().err


@pytest.mark.slow
def test_the_picture_is_the_same_again_and_none_needs_a_variant_that_holds(tmp_path):
    from blockgen.change.sweep.plot import write_plot

    rows = {
        number: (2.0 + number / 10, -700.0 - 50 * (number % 3), 0.06, 4.0 + 2 * (number % 2)) for number in range(9)
    }
    for name in ("a.png", "b.png"):
        write_plot(tmp_path / name, rows, [0, 2, 5], statistics=True)
    first = (tmp_path / "a.png").read_bytes()
    assert first.startswith(b"\x89PNG")
    assert first == (tmp_path / "b.png").read_bytes()
    write_plot(tmp_path / "none.png", {}, [], statistics=False)
    assert (tmp_path / "none.png").read_bytes() != first
