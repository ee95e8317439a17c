"""Half of the supports in a second process: the solver uses one thread, so that every run gives the same.

The second process is this file run as a module. It is given a task and then levels, and answers in the same form as the
first one; both mesh for themselves, which is cheap.
"""

from __future__ import annotations

import os
import pickle  # our own data between two processes of ours
import subprocess
import sys
from collections.abc import Callable, Iterator
from contextlib import contextmanager
from dataclasses import replace
from pathlib import Path
from typing import IO, Any

from blockgen.errors import MachineError
from blockgen.evidence.stiffness.answers import Raw, Task, answers
from blockgen.evidence.stiffness.result import MeshUsed

Solved = Callable[[int], tuple[MeshUsed, list[Raw]]]


@contextmanager
def two_processes(task: Task) -> Iterator[Solved]:
    """Yield a function that answers a task on the mesh of a level, by two processes where there are two processors."""
    if (os.cpu_count() or 1) < 2 or len(task.kinds) < 2:
        yield lambda level: answers(task, level)
        return
    half = len(task.kinds) // 2
    mine, other = replace(task, kinds=task.kinds[:half]), replace(task, kinds=task.kinds[half:])
    with _second(other) as process:

        def both(level: int) -> tuple[MeshUsed, list[Raw]]:
            _put(process.stdin, level)
            used, found = answers(mine, level)
            return used, [*found, *_taken(process)]

        yield both


@contextmanager
def _second(task: Task) -> Iterator[subprocess.Popen[bytes]]:
    home = str(Path(__file__).resolve().parents[3])
    paths = os.pathsep.join(filter(None, (home, os.environ.get("PYTHONPATH", ""))))
    process = subprocess.Popen(  # this Python and this file
        [sys.executable, "-m", "blockgen.evidence.stiffness.parallel"],
        stdin=subprocess.PIPE, stdout=subprocess.PIPE, env={**os.environ, "PYTHONPATH": paths},
    )  # fmt: skip
    try:
        _put(process.stdin, task)
        yield process
    finally:
        process.kill()
        process.communicate()


def _put(stream: IO[bytes] | None, thing: Any) -> None:
    if stream is not None:
        pickle.dump(thing, stream)
        stream.flush()


def _taken(process: subprocess.Popen[bytes]) -> list[Raw]:
    """Return the answers of the second process.

    Raises:
        MachineError: it has ended.
    """
    try:
        found: list[Raw] = pickle.load(process.stdout)  # type: ignore[arg-type] # noqa: S301 # from our own process
    except EOFError as error:
        raise MachineError("the second process of the stiffness has ended; is there memory enough?") from error
    return found


def _serve() -> None:
    """Answer until the first process hangs up; what libraries print goes nowhere."""
    out = os.fdopen(os.dup(1), "wb")
    os.dup2(os.open(os.devnull, os.O_WRONLY), 1)
    task: Task = pickle.load(sys.stdin.buffer)  # noqa: S301 # from our own process
    while True:
        try:
            level: int = pickle.load(sys.stdin.buffer)  # noqa: S301 # from our own process
        except EOFError:
            return
        _put(out, answers(task, level)[1])


if __name__ == "__main__":
    _serve()
