"""The report as a build writes it, with solids, drawing and 3D view."""

import json
import os
import subprocess
import sys

import pytest

from tests.examples import SERVO
from tests.outputs.report.built import folder_of_the_demo
from tests.outputs.report.reading import Page, Strict, local

pytestmark = pytest.mark.slow


@pytest.fixture(scope="module")
def folder():
    return folder_of_the_demo()


@pytest.fixture(scope="module")
def built(folder):
    return (folder / f"{folder.name}_report.html").read_text(encoding="utf-8")


def test_only_the_report_and_what_always_comes_is_written(folder):
    files = {path.name for path in folder.iterdir()}
    assert files == {f"{folder.name}_report.html", "summary.md", "summary.json", "spec.toml", "manifest.json"}


def test_it_is_well_formed_and_below_three_megabytes(built):
    Strict(built)
    assert len(built.encode()) < 3_000_000


def test_its_summary_is_the_one_beside_it(folder, built):
    made = Page(built)
    beside = json.loads((folder / "summary.json").read_text(encoding="utf-8"))
    assert json.loads("".join(made.by_id["summary-data"].itertext())) == beside
    for key, entry in beside["dimensions"].items():
        line = made.parents[made.by_id[f"dimension-{key}"]][0]
        wanted = [entry["value"]] if isinstance(entry["value"], (int, float)) else []
        assert [number for number, _ in made.figures(line)] == wanted


def test_its_spec_is_the_one_beside_it(folder, built):
    made = Page(built)
    (text,) = [of for of in made.by_id["spec"].iter() if local(of) == "pre"]
    assert "".join(text.itertext()) == (folder / "spec.toml").read_text(encoding="utf-8")


def test_solids_were_set_against_each_other_for_it_too(folder, built):
    beside = json.loads((folder / "summary.json").read_text(encoding="utf-8"))
    assert {"clash_free", "key_access_base"} <= {check["id"] for check in beside["checks"]}
    made = Page(built)
    assert len(made.rows("Clearances with a name")) == len(beside["clearances"]["named"])


def test_drawing_and_view_are_inside(built):
    made = Page(built)
    drawings = [of for of in made.by_id["drawing"].iter() if local(of) == "svg"]
    assert [of.get("role") for of in drawings] == ["img"]
    assert len(list(drawings[0].iter())) > 500
    assert made.by_id["scene-data"] in list(made.by_id["view"].iter())
    for of in made.root.iter():
        for name, value in of.attrib.items():
            if name.rpartition("}")[2] in {"src", "href"}:
                assert value.startswith(("#", "data:image/")) or "/" not in value, value[:80]


def test_bytes_are_the_same_in_another_process_seed_and_locale(folder, built, tmp_path):
    code = "import sys; from blockgen import build; build(sys.argv[1], sys.argv[2], only=['report'])"
    environment = {**os.environ, "PYTHONHASHSEED": "4711", "LC_ALL": "C", "TZ": "Asia/Tokyo"}
    subprocess.run([sys.executable, "-c", code, str(SERVO), str(tmp_path)], check=True, env=environment, timeout=120)
    assert (tmp_path / folder.name / f"{folder.name}_report.html").read_text(encoding="utf-8") == built
