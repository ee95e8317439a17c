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
    """Medians of A and B in s, the median of A over B taken pair by pair, and the quickest A in s."""

    first: float
    second: float
    ratio: float
    quickest: float


def in_turn(first: Action, second: Action, runs: int, each: int = 1) -> Pair:
    """Return the times of two actions after a first turn that does not count.

    Args:
        first: A.
        second: B.
        runs: Number of pairs.
        each: How often each is done in one turn, so that the clock can tell short times.
    """
    times = [(_seconds(first, each), _seconds(second, each)) for _ in range(runs + 1)][1:]
    return Pair(
        statistics.median(a for a, _ in times),
        statistics.median(b for _, b in times),
        statistics.median(a / b for a, b in times),
        min(a for a, _ in times),
    )


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
    done = subprocess.run([sys.executable, *arguments], check=False, capture_output=True, text=True)
    if done.returncode:
        sys.exit(f"python {' '.join(arguments)}\nended with {done.returncode}: {done.stderr}")
    return done


def _seconds(action: Action, each: int) -> float:
    start = time.perf_counter()
    for _ in range(each):
        action()
    return (time.perf_counter() - start) / each
