"""Another version of Python gives the same bytes, as far as the CAD kernel has no part in them."""

import os
import shutil
import subprocess
import sys
from pathlib import Path

import pytest

ROOT = Path(__file__).resolve().parents[1]
SPEC = ROOT / "presets" / "examples" / "spray_carriage_servo.toml"
LIGHT = ("pydantic", "pint", "platformdirs", "typer", "rich", "numpy", "ezdxf", "fonttools", "reportlab")
OTHERS = [f"3.{minor}" for minor in (12, 13) if minor != sys.version_info.minor]


def usable(version):
    """Return the command of another Python, or None where none runs."""
    side_by_side = sorted(Path.home().glob(f".pyenv/versions/{version}.*/bin/python3"))
    for name in (shutil.which(f"python{version}"), *map(str, side_by_side)):
        if name and subprocess.run([name, "-c", "import ensurepip"], capture_output=True, check=False).returncode == 0:
            return name
    return None


def files(python, out):
    """Build what needs no kernel, and return the bytes of every file."""
    command = [
        python,
        "-m",
        "blockgen",
        "build",
        str(SPEC),
        "--only",
        "base_holes,inspection",
        "--out",
        str(out),
        "--quiet",
    ]
    subprocess.run(command, check=True, env={**os.environ, "PYTHONPATH": str(ROOT)}, capture_output=True)
    return {p.name: p.read_bytes() for p in sorted(out.rglob("*")) if p.is_file() and p.name != "manifest.json"}


@pytest.mark.wheel
@pytest.mark.parametrize("version", OTHERS)
def test_another_python_gives_the_same_bytes(version, tmp_path):
    other = usable(version)
    if other is None:
        pytest.skip(f"Python {version} is not here")
    subprocess.run([other, "-m", "venv", str(tmp_path / "venv")], check=True)
    python = str(tmp_path / "venv" / ("Scripts" if os.name == "nt" else "bin") / "python")
    subprocess.run([python, "-m", "pip", "install", "--quiet", *LIGHT], check=True, capture_output=True)
    mine, others = files(sys.executable, tmp_path / "mine"), files(python, tmp_path / "others")
    assert mine.keys() == others.keys()
    assert [name for name in mine if mine[name] != others[name]] == []
