"""The demo's own files in ``out/``: whole, and what the tool makes of the demo's spec today.

Bytes of STEP and STL differ between versions of the kernel and are not compared. When one of these fails, run
``blockgen build presets/examples/spray_carriage_servo.toml``, then ``python -m tests.measured_example``,
``python tests/pictures/render.py`` and ``python -m tests.readme_blocks``, and look at what has changed.
"""

from __future__ import annotations

import hashlib
import json
import struct
import zlib
from pathlib import Path
from xml.etree import ElementTree

import pytest

from blockgen.making.setup_sheet import setup_sheet
from blockgen.outputs import names
from blockgen.outputs.alignment_json import with_arrangements
from blockgen.outputs.drawing.strokes import Text
from blockgen.outputs.inspection_csv import inspection_csv
from blockgen.outputs.layout_json import with_layout
from blockgen.outputs.making_json import with_making
from blockgen.outputs.manifest import set_is_whole
from blockgen.outputs.spec_toml import spec_toml
from blockgen.outputs.summary_json import summary
from blockgen.outputs.tidy import as_json
from blockgen.pipeline import build, compare_arrangements, design
from blockgen.spec.fingerprint import spec_hash
from blockgen.spec.load import load_spec
from tests import measured_example
from tests.pictures.shape_hash import shape_hash

ROOT = Path(__file__).resolve().parents[1]
SPEC = ROOT / "presets" / "examples" / "spray_carriage_servo.toml"
DEMO = ROOT / "out" / "GL-040-11_A"


@pytest.fixture(scope="module")
def made():
    return design(SPEC)


@pytest.fixture(scope="module")
def listed():
    return json.loads((DEMO / names.MANIFEST).read_text(encoding="utf-8"))


def read(name):
    return (DEMO / name).read_text(encoding="utf-8")


def test_the_set_is_whole_and_complete(listed):
    assert set_is_whole(DEMO)
    assert {entry["name"] for entry in listed["files"]} | {names.MANIFEST} == {p.name for p in DEMO.iterdir()}
    assert {entry["role"] for entry in listed["files"]} == {*names.CHOOSABLE, *names.ALWAYS.values()}


def test_it_comes_from_today_s_spec(made, listed):
    assert DEMO.name == names.stem(made.plan)
    assert listed["spec_sha256"] == made.spec_sha256
    assert listed["status"] == made.status


def test_the_summary_is_today_s(made):
    """What the solids showed is left to the slow test below."""
    document = summary(made.plan, made.findings, made.status, made.spec_sha256, made.alignment)
    document = with_layout(with_arrangements(document, compare_arrangements(made, "plate")), made.plan)
    today = json.loads(as_json(with_making(document, setup_sheet(made.plan))))
    kept = json.loads(read(names.SUMMARY_JSON))
    assert {kind["distance"] > 0 for kind in kept.pop("clearances")["pairs"] if kind["kind"] == "clear"} == {True}
    judged = {finding.id for finding in made.findings}
    kept["checks"] = [one for one in kept["checks"] if one["id"] in judged]
    assert kept == today


@pytest.mark.slow
def test_both_summaries_are_what_a_build_writes_today(tmp_path, listed):
    written = build(SPEC, tmp_path)
    assert written.files == {entry["name"]: entry["role"] for entry in listed["files"]}
    for name in (names.SUMMARY_MD, names.SUMMARY_JSON):
        assert (written.folder / name).read_text(encoding="utf-8") == read(name)


def test_the_resolved_spec_is_today_s_and_means_the_same(made):
    assert read(names.SPEC_TOML) == spec_toml(made.spec, made.plan, DEMO)
    assert spec_hash(load_spec(DEMO / names.SPEC_TOML)) == made.spec_sha256


def test_the_models_carry_the_job_and_the_status(made):
    step = read(f"{DEMO.name}_block.step")
    assert step.startswith("ISO-10303-21;")
    assert DEMO.name.split("_")[0] in step
    assert made.status in step
    assert b"GL-040-11" in (DEMO / f"{DEMO.name}_block.stl").read_bytes()[:80]


@pytest.mark.parametrize("name", ["block.png", "axial_layout.png"])
def test_the_pictures_show_the_demo_s_shape(name):
    texts = png_texts((ROOT / ".pictures" / name).read_bytes())
    assert texts["Shape"] == shape_hash(DEMO / names.SUMMARY_JSON), "run python tests/pictures/render.py"


def test_the_picture_of_the_drawing_is_that_of_the_kept_one():
    texts = png_texts((ROOT / ".pictures" / "drawing.png").read_bytes())
    kept = hashlib.sha256((DEMO / f"{DEMO.name}_drawing.svg").read_bytes()).hexdigest()
    assert texts["Sheet"] == kept, "run python tests/pictures/render.py"


@pytest.mark.slow
def test_the_drawing_says_what_it_says_today(made):
    from blockgen.geometry.block import build_block
    from blockgen.outputs.drawing_set import drawing_set, pictures

    sheet = drawing_set(made.plan, pictures(build_block(made.plan)), made.status).drawing
    today = sorted(s.words for item in sheet.items for s in item.strokes if isinstance(s, Text))
    root = ElementTree.fromstring(read(f"{DEMO.name}_drawing.svg"))
    assert sorted(element.get("aria-label") for element in root.iter() if element.get("aria-label")) == today


def test_the_inspection_sheet_is_today_s(made):
    assert read(f"{DEMO.name}_inspection.csv") == inspection_csv(made.plan, made.spec_sha256, made.status)


def test_the_measured_example_is_today_s_sheet_filled_in():
    assert measured_example.MEASURED.read_text(encoding="utf-8") == measured_example.measured_sheet(), (
        "run python -m tests.measured_example"
    )


def png_texts(data):
    """Return the texts in a PNG by keyword; every chunk's check sum must hold."""
    assert data.startswith(b"\x89PNG\r\n\x1a\n")
    texts, at = {}, 8
    while at < len(data):
        length, kind = struct.unpack_from(">I4s", data, at)
        body = data[at + 8 : at + 8 + length]
        assert struct.unpack_from(">I", data, at + 8 + length)[0] == zlib.crc32(kind + body)
        if kind == b"tEXt":
            keyword, _, text = body.partition(b"\0")
            texts[keyword.decode("latin-1")] = text.decode("latin-1")
        at += 12 + length
    return texts
