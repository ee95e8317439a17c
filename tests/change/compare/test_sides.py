import json
import shutil

import pytest

from blockgen.change.compare.compare import compare
from blockgen.change.compare.sides import folder_side, read_side
from blockgen.errors import InputError
from blockgen.pipeline import build
from tests.change.sides import side
from tests.examples import SERVO


@pytest.fixture(scope="module")
def once(tmp_path_factory):
    return build(SERVO, tmp_path_factory.mktemp("sets"), ("base_holes", "inspection")).folder


@pytest.fixture
def folder(once, tmp_path):
    return shutil.copytree(once, tmp_path / once.name)


def edit(folder, change):
    file = folder / "summary.json"
    document = json.loads(file.read_text())
    change(document)
    file.write_text(json.dumps(document))


def test_a_built_set_is_the_same_as_the_spec_it_was_built_from(folder):
    found = compare(side(), read_side(folder))
    assert found.same
    assert found.new.whole
    assert found.new.remarks == ()
    assert found.new.files["GL-040-11_A_base_holes.dxf"] == "base_holes"
    assert found.old.document["spec_sha256"] == found.new.document["spec_sha256"]


def test_a_missing_and_an_altered_file_are_named(folder):
    (folder / "GL-040-11_A_base_holes.dxf").unlink()
    (folder / "GL-040-11_A_inspection.csv").write_text("")
    found = folder_side(folder)
    assert found.whole is False
    assert found.remarks[0].endswith("has them: GL-040-11_A_base_holes.dxf, GL-040-11_A_inspection.csv")
    assert "GL-040-11_A_inspection.csv" not in found.hashes
    assert found.damaged == ("GL-040-11_A_base_holes.dxf", "GL-040-11_A_inspection.csv")


@pytest.mark.parametrize("manifest", [None, "[]", '{"files": [{"name": "../x", "sha256": ""}]}'])
def test_without_a_manifest_that_can_be_used_nothing_was_verified(folder, manifest):
    (folder / "manifest.json").unlink()
    if manifest is not None:
        (folder / "manifest.json").write_text(manifest)
    found = folder_side(folder)
    assert found.whole is False
    assert "no file could be verified" in found.remarks[0]


def test_sizes_are_those_that_were_built_and_a_difference_is_told(folder):
    edit(folder, lambda document: document["dimensions"]["length"].update(value=120.0))
    found = folder_side(folder)
    assert found.document["dimensions"]["length"]["value"] == 120.0
    assert "this version sizes it otherwise (length)" in found.remarks[-1]


@pytest.mark.parametrize(
    ("change", "message"),
    [
        (lambda d: d.pop("dimensions"), r"dimensions\n.*\n.*it is missing"),
        (lambda d: d.update(features=7), r"features\n.*\n.*a list"),
        (lambda d: d["features"][0].update(position="here"), r"features\[0\].position\n.*\n.*a list"),
        (lambda d: d["checks"][0].update(verdict="fine"), "verdict\n.*fine"),
        (lambda d: d["features"][0].update(position=[1.0]), r"bearing_bore.position\n.*\n.*x, y and z"),
        (lambda d: d["mass"].update(value=True), r"mass.value\n.*\n.*a number"),
        (lambda d: d["job"].update(number=None), r"job.number\n.*\n.*a text"),
        (lambda d: d.update(schema=2), "schema\n.*2\n.*schema 1"),
        (lambda d: d.update(volume=float("nan")), "no JSON document"),
    ],
)
def test_a_summary_that_was_tampered_with_is_wrong_input(folder, change, message):
    edit(folder, change)
    with pytest.raises(InputError, match=message):
        folder_side(folder)


@pytest.mark.parametrize("text", ["", "[1]", "{", '{"schema": 1}', "[" * 100_000])
def test_what_is_no_summary_is_wrong_input(folder, text):
    (folder / "summary.json").write_text(text)
    with pytest.raises(InputError, match=r"summary.json"):
        folder_side(folder)


def test_a_set_without_its_spec_is_wrong_input(folder):
    (folder / "spec.toml").unlink()
    with pytest.raises(InputError, match=r"spec.toml\n.*no such file"):
        folder_side(folder)
