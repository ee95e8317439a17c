"""Hostile specs and sheets through ``check`` and ``inspect``.

``python -m tests.hostile.run --count 2000 --seed 1`` prints what came out and each fault, and ends with 1 when
there is one.
"""

from __future__ import annotations

import argparse
import collections
import contextlib
import io
import re
import sys
import tempfile
from pathlib import Path

from blockgen.cli import run as command
from tests.hostile.mutate import sheets, specs

EXAMPLES = Path(__file__).resolve().parents[2] / "presets" / "examples"
GOOD = EXAMPLES / "spray_carriage_servo.toml"
STARTS = [path.read_text(encoding="utf-8") for path in sorted(EXAMPLES.glob("*.toml"))]
MEASURED = (EXAMPLES / "spray_carriage_servo_measured.csv").read_text(encoding="utf-8")


def faults_of(arguments: list[str], file: Path) -> tuple[int, list[str]]:
    """Run a command on a hostile file and return exit code and faults."""
    before = sorted(file.parent.iterdir())
    said, complained = io.StringIO(), io.StringIO()
    with contextlib.redirect_stdout(said), contextlib.redirect_stderr(complained):
        code = command(arguments)
    text = complained.getvalue()
    faults = [] if code in {0, 1, 2} else [f"exit code {code}: {text[:300]}"]
    if "Traceback" in text + said.getvalue():
        faults.append("a traceback")
    if code == 2 and not re.search(rf"{re.escape(file.name)}(:\d+)?(:|$)", text, re.MULTILINE):
        faults.append(f"exit code 2 without the file: {text[:300]}")
    if code == 2 and "expected:" not in text:
        faults.append(f"exit code 2 without what was expected: {text[:300]}")
    if sorted(file.parent.iterdir()) != before:
        faults.append("something was written")
    return code, faults


def tried(folder: Path, seed: int, count: int) -> tuple[collections.Counter, dict[str, list[str]]]:
    """Return how often each exit code came, and the faults by name of the input."""
    codes, faults = collections.Counter(), {}
    spec, sheet = folder / "hostile.toml", folder / "hostile.csv"
    for number, data in enumerate(specs(seed, count, STARTS)):
        spec.write_bytes(data)
        codes, faults = _noted(codes, faults, f"spec {number}", faults_of(["check", str(spec)], spec))
    spec.unlink(missing_ok=True)
    for number, data in enumerate(sheets(seed, count, MEASURED)):
        sheet.write_bytes(data)
        codes, faults = _noted(codes, faults, f"sheet {number}", faults_of(["inspect", str(GOOD), str(sheet)], sheet))
    return codes, faults


def _noted(codes, faults, name, outcome):
    code, found = outcome
    codes[f"{name.split()[0]} {code}"] += 1
    return codes, {**faults, name: found} if found else faults


def main() -> int:
    """Run from the command line."""
    parser = argparse.ArgumentParser(description=__doc__)
    parser.add_argument("--seed", type=int, default=1)
    parser.add_argument("--count", type=int, default=2000)
    given = parser.parse_args()
    with tempfile.TemporaryDirectory() as folder:
        codes, faults = tried(Path(folder), given.seed, given.count)
    for name, found in faults.items():
        print(f"{name}: {'; '.join(found)}")
    print(dict(sorted(codes.items())), f"faults in {len(faults)}")
    return 1 if faults else 0


if __name__ == "__main__":
    sys.exit(main())
