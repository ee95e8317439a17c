"""The top level of the project holds what it should and nothing else."""

from __future__ import annotations

import subprocess
from pathlib import Path
from shutil import which

import pytest

ROOT = Path(__file__).resolve().parents[1]
WANTED = {"README.md", "DEVELOPERS.md", "pyproject.toml", "blockgen", "tests", "presets", "out"}


pytestmark = pytest.mark.skipif(not (ROOT / ".git").exists() or not which("git"), reason="not a clone")


def git(*arguments):
    done = subprocess.run(["git", "-C", str(ROOT), *arguments], capture_output=True, text=True, check=True)
    return done.stdout


def kept_files():
    """Return the files that are kept, those not yet committed included and those ignored left out."""
    files = git("ls-files", "-z", "--cached", "--others", "--exclude-standard").split("\0")
    return [name for name in files if name and (ROOT / name).exists()]


def test_the_top_level():
    tops = {name.partition("/")[0] for name in kept_files()}
    assert {name for name in tops if not name.startswith(".")} == WANTED


def test_only_the_demo_s_set_is_kept_in_out():
    folders = {name.split("/")[1] for name in kept_files() if name.startswith("out/")}
    assert folders == {"GL-040-11_A"}
    ignored = git("check-ignore", "--no-index", "out/J-001_A/summary.md", "out/GL-040-11_A/summary.md")
    assert ignored.splitlines() == ["out/J-001_A/summary.md"]
