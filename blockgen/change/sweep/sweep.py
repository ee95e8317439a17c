"""Many variants of a spec: sized and checked, put into a table, the best ones marked and shown."""

from __future__ import annotations

import hashlib
import re
from collections import Counter
from collections.abc import Callable, Generator, Iterator, Mapping, Sequence
from contextlib import closing
from dataclasses import dataclass
from pathlib import Path
from typing import Any

from blockgen import __version__
from blockgen.change.sweep.axes import WHERE, Axis, read_axes
from blockgen.change.sweep.batch import Batch, Job, Row, batches
from blockgen.change.sweep.journal import Journal, open_journal
from blockgen.change.sweep.outcome import FAILED, FEASIBLE, STATUSES, Outcome
from blockgen.change.sweep.pareto import Figures, front
from blockgen.change.sweep.points import Point, Points
from blockgen.change.sweep.pool import here, in_processes, processors
from blockgen.change.sweep.scheduler import distributed, on_cluster
from blockgen.change.sweep.table import headings, in_its_place, lines, usable, write_table
from blockgen.errors import InputError, Problem
from blockgen.spec.fingerprint import spec_hash
from blockgen.spec.load import Loading, Shelf
from blockgen.spec.presets import Preset
from blockgen.spec.read import Document, read_document

Progress = Callable[[str], None]

_LARGEST_BATCH = 100
_LARGEST_BATCH_OF_SOLIDS = 4
_BATCHES_EACH = 8  # at least, so that all processors end about together
_FIGURES = re.compile(r": [0-9.]+ mm missing$")
_WORTH_PROCESSES = 200  # checks of so many variants take less time than processes take to start


@dataclass(frozen=True, slots=True)
class Wishes:
    """What a sweep is asked for.

    Args:
        vary: One ``KEY=A,B,C`` or ``KEY=lo:hi:step`` for each key.
        out: The table, ``.csv`` or ``.parquet``.
        sample: Number of variants to take from the grid; None for all.
        seed: Seed of the sample.
        statistics: Exact statistics of the alignment.
        solids: Folder for STEP and STL of each block; None for none. They come with statistics.
        workers: Processes of this machine; None for as many as it has processors.
        scheduler: Address of a Dask scheduler; None for this machine.
        plot: Draw the front beside the table.
    """

    vary: tuple[str, ...]
    out: Path
    sample: int | None = None
    seed: int = 0
    statistics: bool = False
    solids: Path | None = None
    workers: int | None = None
    scheduler: str | None = None
    plot: bool = True


@dataclass(frozen=True, slots=True)
class Best:
    """A variant on the front: its number counted from 1, its values, and what came of it."""

    number: int
    point: Point
    outcome: Outcome


@dataclass(frozen=True, slots=True)
class Swept:
    """What a sweep found.

    Args:
        spec: The spec as the user named it.
        axes: What was varied.
        count: Number of variants.
        resumed: How many of them an earlier run had done.
        statuses: Number of variants by status.
        obstacles: What stood in the way and how often, the most frequent first.
        front: The variants of the front.
        statistics: True where the alignment is exact.
        table: The table.
        plot: The picture; None where none was asked for.
        solids: Folder of the blocks; None where none was asked for.
    """

    spec: str
    axes: tuple[Axis, ...]
    count: int
    resumed: int
    statuses: Mapping[str, int]
    obstacles: tuple[tuple[str, int], ...]
    front: tuple[Best, ...]
    statistics: bool
    table: Path
    plot: Path | None
    solids: Path | None


@dataclass(frozen=True, slots=True)
class Task:
    """A sweep ready to be run: the job and its variants."""

    job: Job
    points: Points


def sweep(spec: str | Path, wishes: Wishes, told: Progress | None = None) -> Swept:
    """Try every variant and write the table; a sweep that was stopped goes on where it was.

    Args:
        spec: The spec file.
        wishes: What is asked for.
        told: Called with a few words as the work goes on.

    Raises:
        InputError: the spec, a key or a value is wrong.
        MachineError: files cannot be written, a package is missing, or the cluster fails.
    """
    tell = told or (lambda _: None)
    usable(wishes.out)
    if wishes.scheduler:
        distributed()
    task = prepare(spec, wishes)
    with open_journal(wishes.out, task.job.key, len(task.points)) as journal:
        resumed = len(journal)
        _run(task, wishes, journal, tell)
        tell("writing the table")
        return _written(task, wishes, journal, resumed)


def prepare(spec: str | Path, wishes: Wishes) -> Task:
    """Read the spec and what is varied.

    Raises:
        InputError: the spec, a key or a value is wrong.
    """
    document, shelf = read_document(spec), Shelf()
    loaded = Loading(document, shelf).spec()
    sampled = wishes.sample is not None
    if wishes.sample is not None and wishes.sample < 1:
        raise InputError([Problem(WHERE, None, "--sample", str(wishes.sample), "1 or more")])
    axes = read_axes(wishes.vary, document, shelf, sampled=sampled)
    presets = _presets(document, shelf, axes)
    statistics = wishes.statistics or wishes.solids is not None
    solids = "" if wishes.solids is None else str(wishes.solids.resolve())
    parts = (
        __version__, spec_hash(loaded), repr(axes), repr([(p.name, p.document.sha256) for p in presets]),
        f"{wishes.sample} {wishes.seed} {statistics} {solids}",
    )  # fmt: skip
    key = hashlib.sha256("\n".join(parts).encode()).hexdigest()
    job = Job(key, document, presets, axes, statistics, solids)
    return Task(job, Points(axes, wishes.sample, wishes.seed))


def _presets(document: Document, shelf: Shelf, axes: Sequence[Axis]) -> tuple[Preset, ...]:
    """Return every preset that the spec or a value names, so that no worker has to look for them."""
    words = {word.casefold() for word in _words([document.data, [axis.values for axis in axes]])}
    found = (shelf.preset(word) for word in sorted(words) if word in shelf.read or word in shelf.files())
    return tuple(preset for preset in found if preset is not None)


def _words(data: Any) -> Iterator[str]:
    """Yield every text in plain data."""
    if isinstance(data, str):
        yield data
    elif isinstance(data, (list, tuple, Mapping)):
        for part in data.values() if isinstance(data, Mapping) else data:
            yield from _words(part)


def _run(task: Task, wishes: Wishes, journal: Journal, tell: Progress) -> None:
    """Do what the journal does not have."""
    missing = journal.missing()
    if not missing:
        return
    tell(f"{len(journal)} of {len(task.points)} variants")
    with closing(_rows(task, wishes, missing)) as found:
        for rows in found:
            journal.add(rows)
            tell(f"{len(journal)} of {len(task.points)} variants")


def _rows(task: Task, wishes: Wishes, missing: Sequence[int]) -> Generator[list[Row]]:
    """Yield rows from wherever they are worked out."""
    workers = wishes.workers or processors()
    largest = _LARGEST_BATCH_OF_SOLIDS if task.job.solids else _LARGEST_BATCH
    size = max(1, min(largest, len(missing) // (workers * _BATCHES_EACH)))
    work: Iterator[Batch] = batches(missing, task.points, size)
    if wishes.scheduler:
        yield from on_cluster(task.job, work, wishes.scheduler)
    elif workers == 1 or (len(missing) < _WORTH_PROCESSES and not task.job.solids):
        yield from here(task.job, work)
    else:
        yield from in_processes(task.job, work, workers)


def _written(task: Task, wishes: Wishes, journal: Journal, resumed: int) -> Swept:
    """Write table and picture from the journal."""
    statuses: Counter[str] = Counter()
    reasons: Counter[str] = Counter()
    feasible: dict[int, Figures] = {}
    for number, found in enumerate(journal.outcomes()):
        statuses[found.status] += 1
        reasons.update(obstacles(found))
        if found.status == FEASIBLE:
            feasible[number] = figures(found)
    numbers = list(feasible)
    best = [numbers[place] for place in front(list(feasible.values()))]
    job = task.job
    rows = lines(task.points, journal.outcomes(), best)
    write_table(wishes.out, headings(job.axes, statistics=job.statistics), rows, job.axes)
    return Swept(
        spec=job.document.file,
        axes=job.axes,
        count=len(task.points),
        resumed=resumed,
        statuses={status: statuses[status] for status in STATUSES},
        obstacles=tuple(sorted(reasons.items(), key=lambda pair: (-pair[1], pair[0]))),
        front=tuple(Best(number + 1, task.points[number], journal.outcome(number)) for number in best),
        statistics=job.statistics,
        table=wishes.out,
        plot=_drawn(wishes, feasible, best, statistics=job.statistics),
        solids=wishes.solids,
    )


def figures(found: Outcome) -> Figures:
    """Return what shall be small of a feasible variant: mass, stiffness with a minus, offset, base screws."""
    return (found.mass or 0.0, -(found.stiffness or 0.0), found.offset_p95 or 0.0, float(found.screws or 0))


def obstacles(found: Outcome) -> Iterator[str]:
    """Yield what stands in the way of a variant, without its figures, so that alike ones can be counted."""
    if found.status == FAILED:
        yield from (f"failed check {name}" for name in found.reason.split(", "))
    elif found.status != FEASIBLE:
        yield from (f"{found.status}: {_FIGURES.sub('', part)}" for part in found.reason.split("; ")[:1])


def _drawn(wishes: Wishes, feasible: Mapping[int, Figures], best: Sequence[int], *, statistics: bool) -> Path | None:
    """Draw the front beside the table."""
    if not wishes.plot:
        return None
    from blockgen.change.sweep.plot import write_plot

    path = wishes.out.with_suffix(".png")
    with in_its_place(path) as beside:
        write_plot(beside, feasible, best, statistics=statistics)
    return path
