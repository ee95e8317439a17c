"""The work of a sweep in pieces that any process can do: a job with all it needs, batches of variants, their rows."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from dataclasses import dataclass, field
from functools import lru_cache
from typing import Any

from blockgen import __version__
from blockgen.change.sweep.axes import Axis
from blockgen.change.sweep.outcome import Outcome, no_block, outcome
from blockgen.change.sweep.points import Point, Points
from blockgen.change.sweep.variants import Variants
from blockgen.errors import MachineError
from blockgen.spec.load import Shelf
from blockgen.spec.presets import Preset
from blockgen.spec.read import Document

Row = tuple[Any, ...]
"""Number of a variant, counted from 0, and its outcome."""


@dataclass(frozen=True, slots=True)
class Job:
    """What every batch of a sweep shares; plain data, so that it can go to another machine.

    Args:
        key: Hash of all that decides the rows; jobs with the same key are the same.
        document: The spec.
        presets: Presets that the spec and the values name.
        axes: What is varied.
        statistics: Exact statistics of the alignment.
        solids: Folder for STEP and STL of each block, as an absolute path; empty for none.
        version: Version of blockgen that asks.
    """

    key: str
    document: Document = field(compare=False)
    presets: tuple[Preset, ...] = field(compare=False)
    axes: tuple[Axis, ...] = field(compare=False)
    statistics: bool = field(compare=False)
    solids: str = field(compare=False)
    version: str = field(compare=False, default=__version__)


@dataclass(frozen=True, slots=True)
class Batch:
    """Some variants: their numbers and their values."""

    numbers: tuple[int, ...]
    points: tuple[Point, ...]


def batches(numbers: Sequence[int], points: Points, size: int) -> Iterator[Batch]:
    """Yield the variants in batches of a size, in their order."""
    for start in range(0, len(numbers), size):
        some = tuple(numbers[start : start + size])
        yield Batch(some, tuple(points[number] for number in some))


def run_batch(job: Job, batch: Batch) -> list[Row]:
    """Return the rows of some variants, in their order.

    Raises:
        MachineError: another version of blockgen asks, or files cannot be written.
    """
    if job.version != __version__:
        raise MachineError(f"blockgen {job.version} asks, but blockgen {__version__} is installed on the worker")
    variants = _variants(job)
    return [
        (number, *_one(job, variants, number, point)) for number, point in zip(batch.numbers, batch.points, strict=True)
    ]


@lru_cache(maxsize=2)
def _variants(job: Job) -> Variants:
    return Variants(job.document, Shelf(read={p.name.casefold(): p for p in job.presets}, paths={}), job.axes)


def _one(job: Job, variants: Variants, number: int, point: Point) -> Outcome:
    """Return the outcome of one variant; what goes wrong with it is told in its row and stops no other."""
    try:
        spec = variants.spec(point)
        if not job.solids:
            return outcome(spec, statistics=job.statistics)
        from blockgen.change.sweep.solids import with_solid

        return with_solid(spec, job.solids, number)
    except MachineError:
        raise
    except Exception as error:  # noqa: BLE001 # one variant out of thousands; its row says what happened
        return no_block(error)
