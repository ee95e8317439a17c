"""The solver in processes of its own: one thread each, so that every run gives the same, and half of the supports each.

Mesher and solver never load in the first process: they bring a CAD kernel of another edition, and two editions in one
process mix their functions without a word. A process is this file run as a module; it is given a task and then levels.
"""

from __future__ import annotations

import os
import pickle  # our own data between two processes of ours
import subprocess
import sys
from collections.abc import Callable, Iterator
from contextlib import ExitStack, contextmanager
from dataclasses import replace
from pathlib import Path
from typing import IO, Any

from blockgen.errors import KernelError, MachineError
from blockgen.evidence.stiffness.answers import Raw, Task, answers
from blockgen.evidence.stiffness.library import installed
from blockgen.evidence.stiffness.result import MeshUsed

Solved = Callable[[int], tuple[MeshUsed, list[Raw]]]


@contextmanager
def two_processes(task: Task) -> Iterator[Solved]:
    """Yield a function that answers a task on the mesh of a level, by two processes where there are two processors.

    Raises:
        MachineError: the finite element library is not installed, or a process has ended.
    """
    installed()
    half = len(task.kinds) // 2 if (os.cpu_count() or 1) > 1 else 0
    shares = [kinds for kinds in (task.kinds[:half], task.kinds[half:]) if kinds]
    with ExitStack() as stack:
        processes = [stack.enter_context(_process(replace(task, kinds=kinds))) for kinds in shares]

        def all_of(level: int) -> tuple[MeshUsed, list[Raw]]:
            for process in processes:
                _put(process.stdin, level)
            answered = [_taken(process) for process in processes]
            return answered[0][0], [raw for _, found in answered for raw in found]

        yield all_of


@contextmanager
def _process(task: Task) -> Iterator[subprocess.Popen[bytes]]:
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


def _taken(process: subprocess.Popen[bytes]) -> tuple[MeshUsed, list[Raw]]:
    """Return the mesh and the answers of a process.

    Raises:
        KernelError: the solid cannot be meshed.
        MachineError: it has ended.
    """
    try:
        found: tuple[MeshUsed, list[Raw]] | Exception = pickle.load(process.stdout)  # type: ignore[arg-type] # noqa: S301 # from our own process
    except EOFError as error:
        raise MachineError("a process of the stiffness has ended; is there memory enough?") from error
    if isinstance(found, Exception):
        raise found
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
        try:
            _put(out, answers(task, level))
        except (KernelError, MachineError) as error:
            _put(out, error)


if __name__ == "__main__":
    _serve()
