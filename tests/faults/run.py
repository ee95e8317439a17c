"""Real builds under faults: killed at random moments, two at once, with a reader looking on, with a full disk.

``python -m tests.faults.run --kills 200 --seed 1`` prints what came out; ends with 1 when a set was not whole, a
file of somebody else was touched or something was left behind. Needs a system that can fork.

Two specs of one job take turns, so that an old and a new set can be told apart. After each kill a reader must find
the one or the other, whole by the hashes of its manifest.
"""

from __future__ import annotations

import argparse
import collections
import hashlib
import json
import os
import random
import signal
import subprocess
import sys
import tempfile
import time
from collections.abc import Callable
from contextlib import suppress
from pathlib import Path

from blockgen.cli import run as command
from blockgen.outputs.manifest import set_is_whole

SPEC = Path(__file__).resolve().parents[2] / "presets" / "examples" / "spray_carriage_servo.toml"
ROLES = "block,stl,base_holes,inspection"
FOREIGN = {"notes of the fitter.txt": b"shim 0.02", "GL-040-11_A_photo.jpg": bytes(range(256))}


def prepared(place: Path) -> tuple[Path, Path]:
    """Write two specs of one job that differ in a tolerance, load the kernel, and build the first."""
    one, other = place / "one.toml", place / "other.toml"
    text = SPEC.read_text(encoding="utf-8")
    one.write_text(text, encoding="utf-8")
    other.write_text(text.replace("[block]", "[block]\nlength_tolerance = 0.03", 1), encoding="utf-8")
    assert one.read_text(encoding="utf-8") != other.read_text(encoding="utf-8")
    load_kernel()
    assert built(one, place) == 0
    for name, data in FOREIGN.items():
        (folder(place) / name).write_bytes(data)
    return one, other


def folder(place: Path) -> Path:
    """Return the folder of the set."""
    return place / "out" / "GL-040-11_A"


def build(spec: Path, place: Path) -> int:
    """Build a spec in this process."""
    return command(["build", str(spec), "--out", str(place / "out"), "--only", ROLES, "--quiet"])


def load_kernel() -> None:
    """Load what a build needs, so that a child starts at once; the kernel's threads must not run yet at a fork."""
    import blockgen.geometry.block
    import blockgen.geometry.mesh
    import blockgen.outputs.step
    import blockgen.outputs.stl  # noqa: F401


def built(spec: Path, place: Path) -> int:
    """Build a spec in a child and return its exit code."""
    return os.waitstatus_to_exitcode(os.waitpid(in_child(lambda: build(spec, place)), 0)[1])


def in_child(work: Callable[[], int]) -> int:
    """Fork, do something in the child, and return the child's process id."""
    child = os.fork()
    if child == 0:
        code = 99
        with suppress(BaseException):
            code = work()
        os._exit(code)
    return child


def standing(place: Path) -> str | None:
    """Return the hash of the spec of the set that stands whole, or None."""
    target = folder(place)
    if not set_is_whole(target):
        return None
    return str(json.loads((target / "manifest.json").read_text(encoding="utf-8"))["spec_sha256"])


def foreign_faults(place: Path) -> list[str]:
    """Return which files of others were touched."""
    target = folder(place)
    return [n for n, data in FOREIGN.items() if not (target / n).is_file() or (target / n).read_bytes() != data]


def remains(place: Path) -> list[str]:
    """Return what a build left beside the set."""
    return sorted(p.name for p in (place / "out").iterdir() if p.name.startswith(".GL"))


def killed(place: Path, dice: random.Random, specs: tuple[Path, Path], longest: float) -> tuple[str, list[str]]:
    """Kill one build at a random moment; return outcome and faults."""
    before = standing(place)
    child = in_child(lambda: build(dice.choice(specs), place))
    time.sleep(dice.uniform(0, longest))
    with suppress(ProcessLookupError):
        os.kill(child, signal.SIGKILL)
    _, state = os.waitpid(child, 0)
    after = standing(place)
    old = "killed, old stands" if after == before else "killed, new stands"
    outcome = "ended before" if os.WIFEXITED(state) else old
    faults = [] if after else ["no whole set"]
    return outcome, faults + [f"touched: {name}" for name in foreign_faults(place)]


def kills(place: Path, seed: int, count: int) -> tuple[collections.Counter, list[str]]:
    """Kill builds at random moments, then build once more: nothing may be left behind."""
    specs = prepared(place)
    started = time.perf_counter()
    assert built(specs[1], place) == 0
    longest = 1.2 * (time.perf_counter() - started)
    outcomes, faults, dice = collections.Counter(), [], random.Random(seed)
    for number in range(count):
        outcome, found = killed(place, dice, specs, longest)
        outcomes[outcome] += 1
        faults += [f"kill {number}: {fault}" for fault in found]
    assert built(specs[0], place) == 0
    faults += [f"left behind: {name}" for name in remains(place)]
    return outcomes, faults


def together(place: Path, rounds: int) -> tuple[collections.Counter, list[str]]:
    """Build two specs of one job at once, over and over, with a reader looking on."""
    specs = prepared(place)
    looks, faults = collections.Counter(), []
    for number in range(rounds):
        children = [in_child(lambda spec=spec: build(spec, place)) for spec in specs]
        codes: list[int] = []
        while children:
            looks["reader looked"] += 1
            if not (_seen_whole(folder(place)) or _seen_whole(folder(place))):  # at the change itself, look again
                faults.append(f"round {number}: the reader found no whole set")
            done, state = os.waitpid(-1, os.WNOHANG)
            if done:
                children.remove(done)
                codes.append(os.waitstatus_to_exitcode(state))
            time.sleep(0.002)
        faults += [f"round {number}: exit codes {codes}"] if codes != [0, 0] else []
    faults += [f"touched: {name}" for name in foreign_faults(place)] + [f"left: {name}" for name in remains(place)]
    return looks, faults


def _seen_whole(target: Path) -> bool:
    """Look as a reader does who holds the folder open: files are those of one set."""
    handle = os.open(target, os.O_RDONLY | os.O_DIRECTORY)
    try:
        listed = json.loads(_read(handle, "manifest.json"))["files"]
        rows = listed.items() if isinstance(listed, dict) else ((row["name"], row) for row in listed)
        return all(hashlib.sha256(_read(handle, name)).hexdigest() == row["sha256"] for name, row in rows)
    except (OSError, ValueError):
        return False
    finally:
        os.close(handle)


def _read(handle: int, name: str) -> bytes:
    with os.fdopen(os.open(name, os.O_RDONLY, dir_fd=handle), "rb") as file:
        return file.read()


def full_disk(place: Path, megabytes: float) -> list[str] | None:
    """Build onto a small disk that already holds a set; None where none can be mounted."""
    disk = place / "disk"
    disk.mkdir()
    mount = ["mount", "-t", "tmpfs", "-o", f"size={int(megabytes * 1024)}k", "tmpfs", str(disk)]
    if subprocess.run(mount, capture_output=True, check=False).returncode:
        return None
    try:
        return _filled(disk)
    finally:
        subprocess.run(["umount", str(disk)], check=True)


def _filled(disk: Path) -> list[str]:
    one, other = prepared(disk)
    before, faults = standing(disk), []
    free = os.statvfs(disk)
    ballast = disk / "ballast"
    for left in (4096, 60_000, 200_000, 600_000):
        ballast.write_bytes(bytes(max(0, free.f_bavail * free.f_bsize - left)))
        code = built(other, disk)
        ballast.unlink()
        if code == 0:
            before = standing(disk)
            assert built(one, disk) == 0
            before = standing(disk)
        elif code != 3:
            faults.append(f"{left} bytes free: exit code {code}")
        if standing(disk) != before or foreign_faults(disk) or remains(disk):
            found = (standing(disk), foreign_faults(disk), remains(disk))
            faults.append(f"{left} bytes free: not as before: {found}")
    return faults


def main() -> int:
    """Run from the command line."""
    parser = argparse.ArgumentParser(description=__doc__)
    parser.add_argument("--kills", type=int, default=200)
    parser.add_argument("--rounds", type=int, default=10)
    parser.add_argument("--seed", type=int, default=1)
    given = parser.parse_args()
    bad = []
    with tempfile.TemporaryDirectory() as place:
        outcomes, faults = kills(Path(place), given.seed, given.kills)
        print("kills:", dict(outcomes), faults or "no fault")
        bad += faults
    with tempfile.TemporaryDirectory() as place:
        looks, faults = together(Path(place), given.rounds)
        print("two at once:", dict(looks), faults[:5] or "no fault")
        bad += faults
    with tempfile.TemporaryDirectory() as place:
        found = full_disk(Path(place), 12)
        print("full disk:", "cannot be mounted here" if found is None else found or "no fault")
        bad += found or []
    return 1 if bad else 0


if __name__ == "__main__":
    sys.exit(main())
