"""The whole set, written in a second process, so that a save in between is answered at once.

The process is this file run as a module. It loads the CAD kernel once and is given one task after the other. A save
ends it in the middle of a task; what it was writing then is left in a hidden folder, which the next build clears. It
ends by itself when the first process is gone, however that came.
"""

from __future__ import annotations

import os
import pickle  # our own data between two processes of ours
import queue
import subprocess
import sys
import threading
from contextlib import suppress
from dataclasses import dataclass, field
from pathlib import Path
from typing import IO, Any

from blockgen.errors import BlockgenError
from blockgen.pipeline import BuildResult, build

_PATIENCE = 5.0  # seconds in which the process may put a finished set in place before it is ended for good


@dataclass(frozen=True, slots=True)
class Task:
    """A set to write."""

    spec: str
    out: str
    roles: tuple[str, ...]


@dataclass(slots=True)
class Rest:
    """The second process, whether it has a task, and what it has answered."""

    process: subprocess.Popen[bytes] | None = None
    busy: bool = False
    answers: list[BuildResult | str] = field(default_factory=list)

    def begin(self, task: Task) -> None:
        """Let the process write a set; it is started where none runs."""
        if self.process is None:
            self.process = _started()
            threading.Thread(target=_listen, args=(self.process, self.answers), daemon=True).start()
        self.busy = True
        with suppress(OSError):  # it has ended; the listener tells
            _put(self.process.stdin, task)

    def answer(self) -> BuildResult | str | None:
        """Return what was written, or in words why it was not; None while it goes on."""
        if not self.answers:
            return None
        found, self.busy = self.answers.pop(0), False
        if isinstance(found, str):
            self.stop()
        return found

    def stop(self, *, at_its_next_step: bool = False) -> None:
        """End the process; what stands in the folder stays whole.

        Args:
            at_its_next_step: Let it take away what it was writing; else it ends at once, and the next build does so.
        """
        process, self.process, self.answers, self.busy = self.process, None, [], False
        if process is None:
            return
        with suppress(OSError):
            process.stdin.close()  # type: ignore[union-attr] # it has been opened as a pipe
        if not at_its_next_step:
            process.terminate()
        try:
            process.wait(_PATIENCE)
        except subprocess.TimeoutExpired:
            process.kill()
            process.wait()


def _started() -> subprocess.Popen[bytes]:
    home = str(Path(__file__).resolve().parents[2])
    paths = os.pathsep.join(filter(None, (home, os.environ.get("PYTHONPATH", ""))))
    return subprocess.Popen(  # this Python and this file
        [sys.executable, "-m", "blockgen.watching.rest"],
        stdin=subprocess.PIPE, stdout=subprocess.PIPE, stderr=subprocess.DEVNULL,
        env={**os.environ, "PYTHONPATH": paths},
        start_new_session=True,  # the interrupt key of the terminal is for the first process
    )  # fmt: skip


def _listen(process: subprocess.Popen[bytes], answers: list[BuildResult | str]) -> None:
    """Take the answers of one process until it ends."""
    with process.stdout:  # type: ignore[union-attr] # it has been opened as a pipe
        try:
            while True:
                answers.append(pickle.load(process.stdout))  # type: ignore[arg-type] # noqa: S301 # our own process
        except (EOFError, pickle.UnpicklingError, OSError, ValueError):
            answers.append("the process that writes it has ended; is there memory enough?")


def _put(stream: IO[bytes] | None, thing: Any) -> None:
    if stream is not None:
        pickle.dump(thing, stream)
        stream.flush()


class _LeftAloneError(Exception):
    """The first process has hung up in the middle of a task."""


def _serve() -> None:
    """Write sets until the first process hangs up."""
    out = os.fdopen(os.dup(1), "wb")
    os.dup2(os.open(os.devnull, os.O_WRONLY), 1)  # what libraries print goes nowhere
    tasks: queue.Queue[Task | None] = queue.Queue()
    hung_up = threading.Event()
    threading.Thread(target=_take_tasks, args=(tasks, hung_up), daemon=True).start()
    with suppress(BrokenPipeError, _LeftAloneError):
        while (task := tasks.get()) is not None:
            _put(out, _answer(task, hung_up))


def _take_tasks(tasks: queue.Queue[Task | None], hung_up: threading.Event) -> None:
    with suppress(EOFError, pickle.UnpicklingError, OSError):
        while True:
            tasks.put(pickle.load(sys.stdin.buffer))  # noqa: S301 # from our own process
    hung_up.set()
    tasks.put(None)


def _answer(task: Task, hung_up: threading.Event) -> BuildResult | str:
    def step(_: str) -> None:
        if hung_up.is_set():
            raise _LeftAloneError

    try:
        return build(task.spec, task.out, task.roles, step)
    except _LeftAloneError:
        raise
    except BlockgenError as error:
        return str(error)
    except Exception as error:  # noqa: BLE001 # the set of the first process stands; the fault is told in one line
        return f"a fault in blockgen itself ({type(error).__name__}: {error}); `blockgen build` tells more"


if __name__ == "__main__":
    _serve()
