"""Batches on the processors of this machine; each process reads the spec once, and a process that dies is replaced."""

from __future__ import annotations

import os
import signal
from collections.abc import Iterable, Iterator
from concurrent.futures import FIRST_COMPLETED, Future, ProcessPoolExecutor, wait
from concurrent.futures.process import BrokenProcessPool
from multiprocessing import get_context

from blockgen.change.sweep.batch import Batch, Job, Row, run_batch
from blockgen.errors import MachineError

_AHEAD = 3  # batches a process that are handed out and not back
_DEATHS = 3


def processors() -> int:
    """Return how many processors this process may use."""
    return len(os.sched_getaffinity(0)) if hasattr(os, "sched_getaffinity") else os.cpu_count() or 1


def here(job: Job, work: Iterable[Batch]) -> Iterator[list[Row]]:
    """Yield the rows of each batch, worked out in this process."""
    for batch in work:
        yield run_batch(job, batch)


def in_processes(job: Job, work: Iterable[Batch], count: int) -> Iterator[list[Row]]:
    """Yield the rows of each batch as it comes back, from a number of processes.

    A batch that was out when a process died is tried again in new ones.

    Raises:
        MachineError: processes die again and again.
    """
    left, again = iter(work), list[Batch]()
    for _ in range(_DEATHS):
        out: dict[Future[list[Row]], Batch] = {}
        try:
            yield from _until_empty(job, left, again, out, count)
        except BrokenProcessPool:
            again.extend(out.values())
        else:
            return
    raise MachineError("processes of the sweep die again and again; is there memory enough? Try --workers 1")


def _until_empty(
    job: Job, left: Iterator[Batch], again: list[Batch], out: dict[Future[list[Row]], Batch], count: int
) -> Iterator[list[Row]]:
    """Yield rows until nothing is left; ``again`` and ``out`` hold what is not done, also after a process has died."""
    with ProcessPoolExecutor(count, get_context("spawn"), _leave_interrupts_to_the_first) as pool:
        try:
            while True:
                while len(out) < count * _AHEAD and (batch := again.pop() if again else next(left, None)):
                    again.append(batch)  # until it is handed out
                    out[pool.submit(run_batch, job, batch)] = again.pop()
                if not out:
                    return
                for done in wait(out, return_when=FIRST_COMPLETED).done:
                    rows = done.result()
                    del out[done]
                    yield rows
        finally:
            pool.shutdown(wait=False, cancel_futures=True)


def _leave_interrupts_to_the_first() -> None:
    """Let the interrupt key reach the first process only, which then ends the others in order."""
    signal.signal(signal.SIGINT, signal.SIG_IGN)
