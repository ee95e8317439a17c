"""Two things timed in turn, A B A B ..., so that a machine that slows down slows both; medians of what came out."""

from __future__ import annotations

import statistics
import subprocess
import sys
import time
from collections.abc import Callable, Sequence
from dataclasses import dataclass

Action = Callable[[], object]


@dataclass(frozen=True, slots=True)
class Pair:
    """Medians of A and B in s, and the median of A over B taken pair by pair."""

    first: float
    second: float
    ratio: float


def in_turn(first: Action, second: Action, runs: int) -> Pair:
    """Return the times of two actions after one run of each that does not count."""
    first()
    second()
    times = [(_seconds(first), _seconds(second)) for _ in range(runs)]
    return Pair(
        statistics.median(a for a, _ in times),
        statistics.median(b for _, b in times),
        statistics.median(a / b for a, b in times),
    )


def many(action: Action, times: int) -> Action:
    """Return an action that does another one so often that the clock can tell its time."""

    def repeated() -> None:
        for _ in range(times):
            action()

    return repeated


def python(*arguments: str) -> Action:
    """Return the action of running this Python as a whole process."""

    def run() -> None:
        _finished(arguments)

    return run


def blockgen(*arguments: str) -> Action:
    """Return the action of running one command of blockgen as a whole process."""
    return python("-m", "blockgen", *arguments)


def modules_of(*arguments: str) -> set[str]:
    """Return the names of the top-level modules that one command of blockgen loads."""
    code = "import sys; from blockgen.cli import run; run(sys.argv[1:]); sys.stderr.write(' '.join(sys.modules))"
    return {name.partition(".")[0] for name in _finished(("-c", code, *arguments)).stderr.split()}


def _finished(arguments: Sequence[str]) -> subprocess.CompletedProcess[str]:
    return subprocess.run([sys.executable, *arguments], check=True, capture_output=True, text=True)


def _seconds(action: Action) -> float:
    start = time.perf_counter()
    action()
    return time.perf_counter() - start
