import json
import os
import subprocess
import sys
import tomllib
from pathlib import Path

import pytest

import blockgen
from blockgen import pipeline
from blockgen.errors import InfeasibleError, InputError, KernelError
from blockgen.outputs.manifest import set_is_whole
from blockgen.outputs.names import CHOOSABLE, file_names
from blockgen.spec.load import load_spec
from blockgen.spec.starter import starter_spec

ALWAYS = {"summary.md", "summary.json", "spec.toml", "manifest.json"}
FOLDER = "J-001_A"


@pytest.fixture
def spec(tmp_path):
    path = tmp_path / "axis.toml"
    path.write_text(starter_spec())
    return path


def names(folder):
    return {p.name for p in folder.iterdir()}


def test_the_public_functions_are_there_when_asked_for(spec):
    from blockgen import build, check, load_spec, size

    plan = size(load_spec(spec))
    assert {f.verdict for f in check(plan)} <= {"pass", "warn", "fail", "not_assessed"}
    assert build is pipeline.build
    assert set(blockgen.__all__) <= set(dir(blockgen))
    with pytest.raises(AttributeError, match=r"no attribute 'biuld'; it offers .*build"):
        blockgen.biuld  # noqa: B018


def test_summary_spec_and_manifest_are_always_written(spec, tmp_path):
    made = pipeline.build(spec, tmp_path / "out", only=[])
    assert made.folder == tmp_path / "out" / FOLDER
    assert names(made.folder) == ALWAYS
    assert set_is_whole(made.folder)
    assert made.files == {"summary.md": "summary", "summary.json": "summary", "spec.toml": "spec"}


def test_status_and_hash_are_the_same_everywhere(spec, tmp_path):
    made = pipeline.build(spec, tmp_path / "out", only=[])
    summary = json.loads((made.folder / "summary.json").read_text())
    manifest = json.loads((made.folder / "manifest.json").read_text())
    assert summary["status"] == manifest["status"] == made.status
    assert summary["spec_sha256"] == manifest["spec_sha256"] == pipeline.design(spec).spec_sha256
    assert f"**Status: {made.status.split(':', maxsplit=1)[0]}" in (made.folder / "summary.md").read_text()


def test_a_loaded_spec_serves_as_well(spec):
    assert pipeline.design(load_spec(spec)).plan == pipeline.design(spec).plan


def test_steps_are_told(spec, tmp_path):
    steps = []
    pipeline.build(spec, tmp_path / "out", only=[], progress=steps.append)
    assert steps == ["sizing and checking", "checking the files"]


def test_an_unknown_role_comes_before_all_else(tmp_path):
    with pytest.raises(InputError, match="--only"):
        pipeline.build(tmp_path / "no-such-spec.toml", tmp_path / "out", only=["poster"])
    assert names(tmp_path) == set()


def test_wrong_input_writes_nothing(spec, tmp_path):
    spec.write_text(spec.read_text().replace("mm", "N"))
    with pytest.raises(InputError, match=r"axis\.toml:\d+: "):
        pipeline.build(spec, tmp_path / "out")
    assert names(tmp_path) == {"axis.toml"}


def test_what_cannot_exist_writes_nothing(tmp_path):
    example = Path(__file__).parents[1] / "presets" / "examples" / "spray_carriage_too_short.toml"
    with pytest.raises(InfeasibleError, match="missing"):
        pipeline.build(example, tmp_path / "out")
    assert names(tmp_path) == set()


def test_a_failing_kernel_leaves_the_old_set(spec, tmp_path, monkeypatch):
    made = pipeline.build(spec, tmp_path / "out", only=[])
    before = (made.folder / "manifest.json").read_bytes()

    def failing(*_, **__):
        raise KernelError("two solids")

    monkeypatch.setattr(pipeline, "_solids", failing)
    with pytest.raises(KernelError, match="two solids"):
        pipeline.build(spec, tmp_path / "out")
    assert (made.folder / "manifest.json").read_bytes() == before
    assert set_is_whole(made.folder)
    assert names(tmp_path / "out") == {FOLDER}


def test_the_resolved_spec_builds_the_same_block(spec, tmp_path):
    one = pipeline.build(spec, tmp_path / "one", only=[])
    two = pipeline.build(one.folder / "spec.toml", tmp_path / "two", only=[])
    first, second = (json.loads((made.folder / "summary.json").read_text()) for made in (one, two))
    assert without_origins(first) == without_origins(second)
    assert two.status == one.status


def test_a_rebuilt_set_still_warns_of_data_that_no_data_sheet_has_shown(tmp_path):
    demo = Path(blockgen.__file__).parents[1] / "presets" / "examples" / "spray_carriage_servo.toml"
    one = pipeline.build(demo, tmp_path / "one", only=[])
    two = pipeline.build(one.folder / "spec.toml", tmp_path / "two", only=[])
    warned = [
        {f.id: f.explanation for f in made.findings if f.id.endswith("_data_sheet") and f.verdict == "warn"}
        for made in (one, two)
    ]
    assert set(warned[0]) == {"motor_data_sheet", "bearing_data_sheet", "coupling_data_sheet"}
    assert warned[0] == warned[1]
    resolved = tomllib.loads((two.folder / "spec.toml").read_text(encoding="utf-8"))
    for table, preset in (("motor", "servo-80"), ("bearing", "bearing-unit-15"), ("coupling", "bellows-45")):
        assert resolved[table]["data_source"].startswith(f"preset {preset}: ")
        assert resolved[table]["data_source"].endswith("(representative)")
        assert "preset" not in resolved[table]


def test_a_data_source_of_one_s_own_ends_the_warning(tmp_path):
    demo = Path(blockgen.__file__).parents[1] / "presets" / "examples" / "spray_carriage_servo.toml"
    text = demo.read_text(encoding="utf-8")
    named = text.replace('preset = "servo-80"', 'preset = "servo-80"\ndata_source = "data sheet of 2024-05-02"')
    assert named != text
    (tmp_path / "axis.toml").write_text(named, encoding="utf-8")
    made = pipeline.build(tmp_path / "axis.toml", tmp_path / "out", only=[])
    again = pipeline.build(made.folder / "spec.toml", tmp_path / "again", only=[])
    for one in (made, again):
        assert {f.id for f in one.findings if f.id.endswith("_data_sheet")} == {
            "bearing_data_sheet", "coupling_data_sheet",
        }  # fmt: skip


def without_origins(of):
    if isinstance(of, dict):
        return {k: without_origins(v) for k, v in of.items() if k not in {"origin", "source", "rule"}}
    return [without_origins(v) for v in of] if isinstance(of, list) else of


BUILD = "import sys; from blockgen import build; build(sys.argv[1], sys.argv[2], only=sys.argv[3:])"


def built(spec, out, *roles, **environment):
    """Build in a process of its own and return the bytes by file name."""
    command = [sys.executable, "-c", BUILD, str(spec), str(out), *roles]
    subprocess.run(command, check=True, env={**os.environ, **environment})
    return {p.name: p.read_bytes() for p in (out / FOLDER).iterdir()}


@pytest.mark.slow
@pytest.mark.parametrize("roles", [(), ("block", "stl")])
def test_bytes_are_the_same_in_any_process_seed_locale_and_folder(spec, tmp_path, roles):
    other = tmp_path / "deeper" / "folder"
    other.mkdir(parents=True)
    (other / "axis.toml").write_bytes(spec.read_bytes())
    one = built(spec, tmp_path / "out", *roles, PYTHONHASHSEED="1", LC_ALL="C")
    two = built(other / "axis.toml", other / "out", *roles, PYTHONHASHSEED="2", LC_ALL="C.UTF-8", TZ="Asia/Tokyo")
    assert set(one) == ALWAYS | {f"{FOLDER}_block.{'step' if r == 'block' else 'stl'}" for r in roles}
    assert one == two


@pytest.mark.slow
def test_all_files_of_this_version_are_written_and_retired(spec, tmp_path):
    made = pipeline.build(spec, tmp_path / "out")
    block, mesh = f"{FOLDER}_block.step", f"{FOLDER}_block.stl"
    written = {name for role in CHOOSABLE for name in file_names(FOLDER, role)}
    assert {block, mesh} < written
    assert names(made.folder) == {*ALWAYS, *written}
    assert made.files[block] == "block"
    assert made.status.split(":", maxsplit=1)[0] in (made.folder / block).read_text()
    pipeline.build(spec, tmp_path / "out", only=["stl"])
    assert names(made.folder) == {*ALWAYS, mesh}
    assert set_is_whole(made.folder)
