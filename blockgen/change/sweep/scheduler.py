"""Batches on a Dask cluster; a batch whose worker is lost is done again by another one."""

from __future__ import annotations

import logging
from collections.abc import Callable, Iterable, Iterator
from contextlib import contextmanager
from typing import Any

from blockgen.change.sweep.batch import Batch, Job, Row, run_batch
from blockgen.errors import BlockgenError, MachineError

EXTRA = 'pip install ".[sweep]"'
"""What installs the packages for clusters and Parquet, from the folder of the sources."""

_RETRIES = 3
_AHEAD = 4  # batches a thread of the cluster that are handed out and not back
_SECONDS = 30


def on_cluster(job: Job, work: Iterable[Batch], address: str) -> Iterator[list[Row]]:
    """Yield the rows of each batch as it comes back from a cluster.

    Args:
        job: What the batches share; goes along with each of them, since a worker that held it may be lost.
        work: The batches.
        address: Address of the scheduler, such as ``tcp://10.0.0.5:8786``.

    Raises:
        MachineError: distributed is not installed, nobody answers, no worker comes, or a batch fails again and again.
    """
    library = distributed()
    with _quiet(), _client(library, address) as client:
        threads = _threads(client, address)
        done = library.as_completed(loop=client.loop)
        left = iter(work)
        for batch in _some(left, threads * _AHEAD):
            done.add(_handed_out(client, job, batch))
        for future in done:
            rows = _rows(future, address)
            for batch in _some(left, 1):
                done.add(_handed_out(client, job, batch))
            yield rows


def distributed() -> Any:
    """Return the module ``distributed``.

    Raises:
        MachineError: it is not installed.
    """
    try:
        import distributed as library
    except ImportError as error:
        raise MachineError(f"--scheduler needs the package distributed ({error}): install it with {EXTRA}") from error
    return library


def _some(left: Iterator[Batch], count: int) -> Iterator[Batch]:
    for _ in range(count):
        batch = next(left, None)
        if batch is None:
            return
        yield batch


def _handed_out(client: Any, job: Job, batch: Batch) -> Any:
    return client.submit(run_batch, job, batch, retries=_RETRIES, pure=False)


def _rows(future: Any, address: str) -> list[Row]:
    rows: list[Row] = _or_machine_error(future.result, address)
    future.release()
    return rows


def _or_machine_error(action: Callable[[], Any], address: str) -> Any:
    """Do something with the cluster; what goes wrong there is told as an error of the machine."""
    try:
        return action()
    except BlockgenError:
        raise
    except Exception as error:  # what a cluster raises has no common base
        text = f"{type(error).__name__}: {error}".splitlines()[0]
        raise MachineError(f"the cluster at {address} failed: {text}; the same command goes on where it was") from error


@contextmanager
def _client(library: Any, address: str) -> Iterator[Any]:
    try:
        client = library.Client(address, timeout=_SECONDS, set_as_default=False)
    except (OSError, ValueError) as error:
        raise MachineError(f"no scheduler answers at {address}: {error}") from error
    try:
        yield client
    finally:
        client.close(timeout=_SECONDS)


def _threads(client: Any, address: str) -> int:
    """Return how many threads the cluster has, after the first worker has come."""
    _or_machine_error(lambda: client.wait_for_workers(1, timeout=_SECONDS), address)
    return sum(client.nthreads().values())


@contextmanager
def _quiet() -> Iterator[None]:
    """Keep the library's own messages off the terminal: what counts becomes an error of ours."""
    log = logging.getLogger("distributed")
    level = log.level
    log.setLevel(logging.CRITICAL + 1)
    try:
        yield
    finally:
        log.setLevel(level)
