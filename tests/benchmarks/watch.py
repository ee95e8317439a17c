"""Time from a save to the set that fits it, beside a whole process of ``blockgen build``.

Run as ``python tests/benchmarks/watch.py`` (``--runs``). The spec of the demo is saved with one key to and
fro; each save is followed by a build of the same spec into another folder, A B A B. Three times are printed: until the
new manifest stands, until the message is out, and of the peer. The files of both are compared each time.
"""

from __future__ import annotations

import argparse
import statistics
import subprocess
import sys
import tempfile
import threading
import time
from collections.abc import Callable, Iterator
from contextlib import contextmanager
from pathlib import Path

from timing import blockgen

SPEC = Path(__file__).resolve().parents[2] / "presets" / "examples" / "spray_carriage_servo.toml"
KEY = 'journal_reach = "{} mm"'
GOAL = 0.5
ROLES = "block,stl"
_PATIENCE = 120.0


class Watch:
    """A watch in a process, and the moments at which its messages came."""

    def __init__(self, *arguments: str) -> None:
        """Start it and note each line with the time at which it comes."""
        command = [sys.executable, "-u", "-m", "blockgen", "watch", *arguments]
        self.process = subprocess.Popen(command, stdout=subprocess.PIPE, text=True)
        self.moments: list[float] = []
        threading.Thread(target=self._listen, daemon=True).start()

    def _listen(self) -> None:
        for line in self.process.stdout or ():
            if " built in " in line:
                self.moments.append(time.perf_counter())

    def message(self, count: int) -> float:
        """Wait for a message and return the moment at which it came."""
        _until(lambda: len(self.moments) >= count)
        return self.moments[count - 1]


@contextmanager
def watching(*arguments: str) -> Iterator[Watch]:
    """Yield a watch and end it."""
    watch = Watch(*arguments)
    try:
        yield watch
    finally:
        watch.process.terminate()
        watch.process.wait()


def measure(runs: int) -> Iterator[tuple[float, float, float]]:
    """Yield for each save the seconds until the set stands, until the message is out, and of a whole build."""
    with tempfile.TemporaryDirectory() as name:
        place = Path(name)
        spec, text = place / "axis.toml", SPEC.read_text(encoding="utf-8")
        spec.write_text(text, encoding="utf-8")
        with watching(str(spec), "--out", str(place / "out"), "--only", ROLES) as watch:
            watch.message(1)
            for run in range(runs + 1):
                saved = text.replace(KEY.format(46), KEY.format((47, 46)[run % 2]))
                times = _one(watch, run + 2, spec, saved, place)
                if run:  # the first does not count
                    yield times


def _one(watch: Watch, count: int, spec: Path, text: str, place: Path) -> tuple[float, float, float]:
    folder = next((place / "out").iterdir())
    before = (folder / "manifest.json").read_bytes()
    time.sleep(0.7 + 0.013 * (count % 7))  # at no fixed moment between two looks, and after the last work is done
    start = time.perf_counter()
    spec.write_text(text, encoding="utf-8")
    _until(lambda: (folder / "manifest.json").read_bytes() != before)
    stands = time.perf_counter() - start
    told = watch.message(count) - start
    start = time.perf_counter()
    blockgen("build", str(spec), "--out", str(place / "peer"), "--only", ROLES, "--quiet")()
    peer = time.perf_counter() - start
    _insist_on_the_same(folder, place / "peer" / folder.name)
    return stands, told, peer


def _insist_on_the_same(one: Path, other: Path) -> None:
    files = [{path.name: path.read_bytes() for path in folder.iterdir()} for folder in (one, other)]
    if files[0] != files[1]:
        sys.exit(f"{one} and {other} differ")


def _until(condition: Callable[[], bool]) -> None:
    end = time.monotonic() + _PATIENCE
    while not condition():
        if time.monotonic() > end:
            sys.exit("waited too long")
        time.sleep(0.002)


def main() -> None:
    """Print the table."""
    parser = argparse.ArgumentParser(description="Time from a save to the set that fits it.")
    parser.add_argument("--runs", type=int, default=11, help="saves (default 11)")
    found = list(zip(*measure(parser.parse_args().runs), strict=True))
    names = ("save to set", "save to message", "blockgen build, whole process")
    for what, times in zip(names, found, strict=True):
        quickest, median, slowest = min(times), statistics.median(times), max(times)
        print(f"{what:<32} quickest {quickest:.3f} s   median {median:.3f} s   slowest {slowest:.3f} s")
    print(f"ratio of the medians, save to message over build: {_median(found[1]) / _median(found[2]):.2f}")
    print(f"goal, quickest message within {GOAL} s: {'met' if min(found[1]) <= GOAL else 'NOT met'}")


def _median(times: tuple[float, ...]) -> float:
    return statistics.median(times)


if __name__ == "__main__":
    main()
