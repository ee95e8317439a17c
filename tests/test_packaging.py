"""What an installation holds: presets, tables and the type marker, from a wheel and from an editable install."""

from __future__ import annotations

import os
import subprocess
import sys
import sysconfig
import venv
import zipfile
from pathlib import Path

import pytest

ROOT = Path(__file__).resolve().parents[1]
PACKAGE, PRESETS = ROOT / "blockgen", ROOT / "presets"
EXAMPLE = "spray_carriage_servo.toml"

pytestmark = [pytest.mark.wheel, pytest.mark.slow]


def run(*command, **options):
    """Run a command away from this environment's own settings."""
    kept = {name: value for name, value in os.environ.items() if not name.startswith(("PYTHON", "BLOCKGEN"))}
    done = subprocess.run([*map(str, command)], check=False, capture_output=True, text=True, env=kept, **options)
    assert done.returncode == 0, done.stdout + done.stderr
    return done.stdout


def files_below(folder, ending=""):
    """Return the files below a folder as slash-separated names."""
    paths = (path for path in folder.rglob(f"*{ending}") if path.is_file() and "__pycache__" not in path.parts)
    return {path.relative_to(folder).as_posix() for path in paths}


@pytest.fixture(scope="module")
def wheel(tmp_path_factory):
    place = tmp_path_factory.mktemp("wheel")
    run(sys.executable, "-m", "pip", "wheel", "--quiet", "--no-deps", "--no-build-isolation", "-w", place, ROOT)
    (built,) = place.glob("*.whl")
    return built


@pytest.fixture(scope="module", params=["wheel", "editable"])
def installed(request, wheel, tmp_path_factory):
    """Return kind and folder of a fresh environment that has only blockgen itself and borrows its libraries."""
    place = tmp_path_factory.mktemp(request.param)
    venv.create(place)
    python = program(place, "python")
    here = run(python, "-c", "import sysconfig; print(sysconfig.get_path('purelib'))").strip()
    borrowed = {sysconfig.get_path(name) for name in ("purelib", "platlib")}
    (Path(here) / "borrowed.pth").write_text("\n".join(sorted(borrowed)), encoding="utf-8")
    what = (wheel,) if request.param == "wheel" else ("--no-build-isolation", "--editable", ROOT)
    run(python, "-m", "pip", "install", "--quiet", "--no-deps", "--no-index", "--ignore-installed", *what)
    return request.param, place


def program(place, name):
    """Return the path of a program of an environment."""
    folder = sysconfig.get_path("scripts", "venv", {"base": str(place), "platbase": str(place)})
    return Path(folder) / (name + sysconfig.get_config_var("EXE"))


def test_the_wheel_holds_the_package_and_the_presets_and_nothing_else(wheel):
    names = set(zipfile.ZipFile(wheel).namelist())
    about = {name for name in names if name.split("/")[0].endswith(".dist-info")}
    package = {f"blockgen/{name}" for name in files_below(PACKAGE)}
    presets = {f"blockgen/shipped_presets/{name}" for name in files_below(PRESETS)}
    assert names - about == package | presets


def test_the_wheel_holds_tables_examples_and_the_type_marker(wheel):
    names = set(zipfile.ZipFile(wheel).namelist())
    assert {f"blockgen/shipped_presets/examples/{EXAMPLE}", "blockgen/py.typed"} <= names
    tables = {f"blockgen/{name}" for name in files_below(PACKAGE, ".csv")}
    assert len(tables) > 20
    assert tables <= names


def test_the_presets_are_found_where_the_package_has_them(installed):
    kind, place = installed
    code = "from blockgen.spec.presets import shipped_folder; print(shipped_folder())"
    folder = Path(run(program(place, "python"), "-c", code, cwd=place).strip()).resolve()
    assert (folder == PRESETS) if kind == "editable" else folder.is_relative_to(place.resolve())


def test_the_command_lists_every_preset(installed):
    _, place = installed
    shown = set(run(program(place, "blockgen"), "presets", cwd=place).split())
    assert {path.stem for path in PRESETS.glob("*.toml")} <= shown


def test_an_example_that_uses_presets_passes(installed, tmp_path):
    _, place = installed
    (tmp_path / EXAMPLE).write_bytes((PRESETS / "examples" / EXAMPLE).read_bytes())
    assert "Status: released for review" in run(program(place, "blockgen"), "check", EXAMPLE, cwd=tmp_path)
