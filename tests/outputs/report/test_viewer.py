"""Tests of the view's markup, style and script as text; what it does in a browser stands in tests/browser/."""

from __future__ import annotations

import hashlib
import json
import re
import subprocess
import xml.etree.ElementTree as ET
from importlib.resources import files
from pathlib import Path
from shutil import which

import pytest

import blockgen
from blockgen.outputs.report import viewer as of
from blockgen.outputs.report.viewer import viewer

ASSETS = files("blockgen.outputs.report") / "assets"
PART = {
    "id": "block", "label": "block", "name": "X", "colour": "#c3c8cc", "mesh": 0, "place": [0.0] * 12, "box": [0.0] * 6,
    "shift": [0.0] * 3, "stand_in": False, "note": "",
}  # fmt: skip
SCENE = {"schema": 1, "unit": "mm", "meshes": [], "parts": [PART], "faces": [], "still": None, "field": None}


def root(markup):
    return ET.fromstring(f"<div>{markup}</div>")


def test_the_head_of_the_library_states_version_hash_and_licence():
    text = (ASSETS / "three.js").read_text(encoding="utf-8")
    head, code = re.match(r"(/\*!.*?\*/\n)(.*)", text, re.DOTALL).groups()
    wanted = json.loads((ASSETS / "bundling" / "package.json").read_text(encoding="utf-8"))["devDependencies"]["three"]
    assert f"three {wanted}," in head
    assert hashlib.sha256(code.encode()).hexdigest() in head
    assert "The MIT License" in head
    assert "three.js authors" in head
    assert "WITHOUT WARRANTY OF ANY KIND" in head


def test_the_bundle_is_made_from_exact_versions():
    package = json.loads((ASSETS / "bundling" / "package.json").read_text(encoding="utf-8"))
    assert package["scripts"]["build"] == "node build.js"
    assert all(re.fullmatch(r"\d+\.\d+\.\d+", version) for version in package["devDependencies"].values())


def test_what_our_scripts_take_from_the_library_is_in_it():
    exported = (ASSETS / "bundling" / "entry.js").read_text(encoding="utf-8")
    own = "".join((ASSETS / "view" / name).read_text(encoding="utf-8") for name in of.SCRIPTS)
    used = set(re.findall(r"THREE\.(\w+)", own))
    assert used
    assert used == set(re.findall(r"\b([A-Z]\w+)\b", exported.partition("{")[2].partition("}")[0]))


def test_all_scripts_in_the_folder_are_put_in():
    assert {path.name for path in (ASSETS / "view").iterdir() if path.name.endswith(".js")} == set(of.SCRIPTS)


@pytest.mark.parametrize("name", ["eval(", "new Function", "innerHTML", "document.write"])
def test_our_scripts_do_nothing_that_a_careful_page_forbids(name):
    assert name not in viewer(SCENE).script


def test_script_and_style_can_stand_in_html_and_in_xml():
    made = viewer(SCENE)
    for sign in ("</script", "]]>", "<!--"):
        assert sign not in made.script.lower()
    assert not re.search(r"[<&]", made.style)
    assert not re.search(r"@import|url\(|https?:", made.style)
    assert set(re.findall(r"https?://[^\"'` )]+", made.script)) == {"http://www.w3.org/1999/xhtml"}


@pytest.mark.skipif(which("node") is None, reason="needs node to parse the script")
def test_the_script_parses(tmp_path):
    place = tmp_path / "view.js"
    place.write_text(viewer(SCENE).script, encoding="utf-8")
    done = subprocess.run(["node", "--check", str(place)], check=False, capture_output=True, text=True)
    assert done.returncode == 0, done.stderr


def test_the_markup_is_well_formed_and_every_control_has_a_name():
    made = root(viewer(SCENE).markup)
    for control in made.iter():
        if control.tag == "button":
            assert control.text
        inside = any(control in list(label) for label in made.iter("label"))
        if control.tag in {"select", "canvas"} or (control.tag == "input" and not inside):
            assert control.get("aria-label"), control.attrib
    assert [legend.text for legend in made.iter("legend")] == [
        "Look", "Feature of the block", "Cut", "Draw apart", "Parts shown",
    ]  # fmt: skip
    assert made.find(".//*[@class='view-controls']").get("hidden") == "hidden"  # until there is a script


def test_hostile_names_stay_text():
    evil = '</script><script>alert(1)</script> & "x" ]]> <!-- \u202e'
    scene = {**SCENE, "parts": [{**PART, "label": evil, "note": evil}]}
    markup = viewer(scene).markup
    assert "<script>alert" not in markup
    data = root(markup).find("script[@id='scene-data']")
    assert json.loads(data.text) == scene
    box = next(label for label in root(markup).iter("label") if "alert" in "".join(label.itertext()))
    assert "".join(box.itertext()) == evil.replace("\u202e", "")
    assert "]]>" not in data.text


def test_alike_parts_have_one_box_with_their_number():
    parts = [{**PART, "id": f"pin_{i}", "label": "pin: 8 x 32"} for i in (1, 2, 3)]
    shown = ["".join(label.itertext()) for label in root(viewer({**SCENE, "parts": parts}).markup).iter("label")]
    assert [text for text in shown if "pin" in text] == ["pin: 8 x 32 (3)"]


def test_a_field_brings_its_controls_and_names_case_and_support():
    field = {"words": "thrust away from the motor; tied under the heads"}
    text = "".join(root(viewer({**SCENE, "field": field}).markup).itertext())
    assert "Under load" in text
    assert "thrust away from the motor; tied under the heads" in text


def test_the_still_picture_has_a_text_in_its_place():
    made = root(viewer({**SCENE, "still": "data:image/png;base64,AA=="}).markup)
    assert made.find(".//img").get("src").startswith("data:image/png")
    assert made.find(".//img").get("alt")


def test_the_first_look_is_that_of_the_still_picture():
    from blockgen.outputs.report import scene_still as still

    camera = (ASSETS / "view" / "camera.js").read_text(encoding="utf-8")
    assert f"START = {{ turn: {still.TURN:g}, tilt: {still.TILT:g} }}" in camera
    assert f"MARGIN = {still.MARGIN:g};" in camera
    lamps = ", ".join(f"[{', '.join(f'{part:g}' for part in lamp)}]" for lamp in still.LAMPS)
    assert f"[{lamps}].map" in (ASSETS / "view" / "viewer.js").read_text(encoding="utf-8")


def test_a_wheel_holds_the_assets():
    builder = pytest.importorskip("hatchling.builders.wheel")
    package = Path(blockgen.__file__).parent
    included = {Path(file.path) for file in builder.WheelBuilder(str(package.parent)).recurse_included_files()}
    wanted = {path for path in (package / "outputs" / "report" / "assets").rglob("*") if path.is_file()}
    assert wanted
    assert wanted <= included
