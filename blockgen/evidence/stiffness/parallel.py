"""The solver in processes of its own: one thread each, so that every run gives the same, and half of the work each.

Mesher and solver never load in the first process: they bring a CAD kernel of another edition, and two editions in one
process mix their functions without a word. A process is this file run as a module; it loads its libraries while the
first process models the solid, and is then given a task and its steps, or another task. Both always have the same mesh.
"""

from __future__ import annotations

import os
import pickle  # our own data between two processes of ours
import subprocess
import sys
from collections.abc import Iterator, Sequence
from contextlib import ExitStack, contextmanager
from dataclasses import replace
from importlib import import_module
from pathlib import Path
from typing import IO, Any

from blockgen.errors import KernelError, MachineError
from blockgen.evidence.stiffness.answers import Raw, Task
from blockgen.evidence.stiffness.field import Field
from blockgen.evidence.stiffness.library import installed, library
from blockgen.evidence.stiffness.result import MeshUsed
from blockgen.evidence.stiffness.solver import Solver, Step, Wanted

Asked = Task | Step | Wanted
_ENDED = "a process of the stiffness has ended; is there memory enough?"
_ALONE = dict.fromkeys(("OPENBLAS_NUM_THREADS", "OMP_NUM_THREADS", "MKL_NUM_THREADS"), "1")


class Pair:
    """Two solvers of one task after the other, or one where there is one processor only."""

    def __init__(self, processes: Sequence[subprocess.Popen[bytes]]) -> None:
        """Keep the processes."""
        self._processes = processes
        self._home: dict[int, subprocess.Popen[bytes]] = {}

    def give(self, task: Task) -> None:
        """Give both the task that the steps are of; what they know of another is forgotten.

        Raises:
            MachineError: a process has ended.
        """
        self._home = {}
        for process in self._processes:
            _put(process.stdin, task)

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
def two_processes() -> Iterator[Pair]:
    """Yield solvers that wait for a task, two processes where there are two processors.

    Raises:
        MachineError: the finite element library is not installed.
    """
    installed()
    with ExitStack() as stack:
        yield Pair([stack.enter_context(_process()) for _ in range(min(2, os.cpu_count() or 1))])


@contextmanager
def _process() -> Iterator[subprocess.Popen[bytes]]:
    home = str(Path(__file__).resolve().parents[3])
    paths = os.pathsep.join(filter(None, (home, os.environ.get("PYTHONPATH", ""))))
    process = subprocess.Popen(  # this Python and this file
        [sys.executable, "-m", "blockgen.evidence.stiffness.parallel"],
        stdin=subprocess.PIPE, stdout=subprocess.PIPE, env={**os.environ, **_ALONE, "PYTHONPATH": paths},
    )  # fmt: skip
    try:
        yield process
    finally:
        process.kill()
        process.communicate()


def _put(stream: IO[bytes] | None, thing: Any) -> None:
    """Send a thing to a process.

    Raises:
        MachineError: it has ended.
    """
    if stream is None:
        return
    try:
        pickle.dump(thing, stream)
        stream.flush()
    except BrokenPipeError as error:
        raise MachineError(_ENDED) from error


def _taken(process: subprocess.Popen[bytes]) -> Any:
    """Return what a process answers.

    Raises:
        KernelError: the solid cannot be meshed.
        MachineError: it has ended.
    """
    try:
        found = pickle.load(process.stdout)  # type: ignore[arg-type] # noqa: S301 # from our own process
    except EOFError as error:
        raise MachineError(_ENDED) from error
    if isinstance(found, Exception):
        raise found
    return found


def _serve() -> None:
    """Answer until the first process hangs up; what libraries print goes nowhere."""
    out = os.fdopen(os.dup(1), "wb")
    os.dup2(os.open(os.devnull, os.O_WRONLY), 1)
    _load()
    task: Task | None = None
    solver: Solver | None = None
    while (asked := _next_asked()) is not None:
        if isinstance(asked, Task):
            task, solver = asked, None
        elif task is not None:
            try:
                solver = solver or Solver(task)
                _put(out, solver.step(asked) if isinstance(asked, Step) else solver.field(asked))
            except (KernelError, MachineError) as error:
                _put(out, error)


def _load() -> None:
    """Load the libraries while nothing is asked; what is wrong with them is told when it is."""
    try:
        library()
        import_module("netgen.occ")
    except (ImportError, MachineError):
        return


def _next_asked() -> Asked | None:
    try:
        found: Asked = pickle.load(sys.stdin.buffer)  # noqa: S301 # from our own process
    except EOFError:
        return None
    return found


if __name__ == "__main__":
    _serve()
