"""The solver in processes of its own: one thread each, so that every run gives the same, and half of the work each.

Mesher and solver never load in the first process: they bring a CAD kernel of another edition, and two editions in one
process mix their functions without a word. A process is this file run as a module; it is given a task and then steps.
Both have the same mesh at all times.
"""

from __future__ import annotations

import os
import pickle  # our own data between two processes of ours
import subprocess
import sys
from collections.abc import Iterator, Sequence
from contextlib import ExitStack, contextmanager
from dataclasses import replace
from pathlib import Path
from typing import IO, Any

from blockgen.errors import KernelError, MachineError
from blockgen.evidence.stiffness.answers import Raw, Task
from blockgen.evidence.stiffness.field import Field
from blockgen.evidence.stiffness.library import installed
from blockgen.evidence.stiffness.result import MeshUsed
from blockgen.evidence.stiffness.solver import Solver, Step, Wanted

Asked = Step | Wanted
_ALONE = dict.fromkeys(("OPENBLAS_NUM_THREADS", "OMP_NUM_THREADS", "MKL_NUM_THREADS"), "1")


class Pair:
    """Two solvers of one task, or one where there is one processor only."""

    def __init__(self, processes: Sequence[subprocess.Popen[bytes]]) -> None:
        """Keep the processes; each has been given the task."""
        self._processes = processes
        self._home: dict[int, subprocess.Popen[bytes]] = {}

    def step(self, step: Step) -> tuple[MeshUsed, dict[int, Raw]]:
        """Return the mesh and the answers of the kinds that are asked for, turn by turn from both.

        Raises:
            KernelError: the solid cannot be meshed.
            MachineError: a process has ended.
        """
        count = len(self._processes)
        for index, process in enumerate(self._processes):
            kinds = step.kinds[index::count]
            self._home |= dict.fromkeys(kinds, process)
            _put(process.stdin, replace(step, kinds=kinds))
        answered = [_taken(process) for process in self._processes]
        return answered[0][0], {kind: raw for _, found in answered for kind, raw in found.items()}

    def field(self, wanted: Wanted) -> Field:
        """Return a field from the process that solved its kind last.

        Raises:
            MachineError: a process has ended.
        """
        process = self._home[wanted.kind]
        _put(process.stdin, wanted)
        found: Field = _taken(process)
        return found


@contextmanager
def two_processes(task: Task) -> Iterator[Pair]:
    """Yield the solvers of a task, two processes where there are two processors.

    Raises:
        MachineError: the finite element library is not installed, or a process has ended.
    """
    installed()
    count = min(2, os.cpu_count() or 1, len(task.kinds))
    with ExitStack() as stack:
        yield Pair([stack.enter_context(_process(task)) for _ in range(count)])


@contextmanager
def _process(task: Task) -> Iterator[subprocess.Popen[bytes]]:
    home = str(Path(__file__).resolve().parents[3])
    paths = os.pathsep.join(filter(None, (home, os.environ.get("PYTHONPATH", ""))))
    process = subprocess.Popen(  # this Python and this file
        [sys.executable, "-m", "blockgen.evidence.stiffness.parallel"],
        stdin=subprocess.PIPE, stdout=subprocess.PIPE, env={**os.environ, **_ALONE, "PYTHONPATH": paths},
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


def _taken(process: subprocess.Popen[bytes]) -> Any:
    """Return what a process answers.

    Raises:
        KernelError: the solid cannot be meshed.
        MachineError: it has ended.
    """
    try:
        found = pickle.load(process.stdout)  # type: ignore[arg-type] # noqa: S301 # from our own process
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
    solver: Solver | None = None
    while True:
        try:
            asked: Asked = pickle.load(sys.stdin.buffer)  # noqa: S301 # from our own process
        except EOFError:
            return
        try:
            solver = solver or Solver(task)
            _put(out, solver.step(asked) if isinstance(asked, Step) else solver.field(asked))
        except (KernelError, MachineError) as error:
            _put(out, error)


if __name__ == "__main__":
    _serve()
