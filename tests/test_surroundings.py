"""The whole set is the same byte for byte, whatever surrounds the process that builds it."""

import os
import subprocess
import sys
from pathlib import Path

import pytest

ROOT = Path(__file__).resolve().parents[1]
SPEC = ROOT / "presets" / "examples" / "spray_carriage_stepper.toml"
ONE = {"PYTHONHASHSEED": "1", "TZ": "UTC", "LC_ALL": "C", "COLUMNS": "80"}
OTHER = {
    "PYTHONHASHSEED": "4711", "TZ": "Pacific/Kiritimati", "LC_ALL": "tr_TR.UTF-8", "COLUMNS": "133",
    "LANG": "de_DE.UTF-8", "PYTHONUTF8": "0", "OMP_NUM_THREADS": "1", "HOME": "/nowhere",
}  # fmt: skip


def built(place, surroundings, spec):
    """Build in a folder of its own and return the bytes by name."""
    place.mkdir(parents=True)
    environment = {**os.environ, "PYTHONPATH": str(ROOT), **surroundings}
    command = [sys.executable, "-m", "blockgen", "build", spec, "--out", "here", "--quiet"]
    subprocess.run(command, cwd=place, env=environment, check=True, capture_output=True)
    return {path.name: path.read_bytes() for path in sorted((place / "here").rglob("*")) if path.is_file()}


@pytest.mark.slow
def test_the_same_bytes_in_other_surroundings(tmp_path):
    one = built(tmp_path / "one", ONE, str(SPEC))
    copy = tmp_path / "a folder with blanks, Ümläute" / "axis.toml"
    other = built(copy.parent, OTHER, os.path.relpath(SPEC, copy.parent))
    assert len(one) >= 13
    assert one.keys() == other.keys()
    assert [name for name in one if one[name] != other[name]] == []
