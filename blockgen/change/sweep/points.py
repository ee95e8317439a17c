"""Which combinations a sweep tries: all of a grid, or a Latin hypercube that is the same on every run."""

from __future__ import annotations

import math
import random
from collections.abc import Iterator, Sequence

from blockgen.change.sweep.axes import WHERE, Axis
from blockgen.errors import InputError, Problem
from blockgen.record import Value

MOST = 1_000_000
"""Greatest number of variants of one sweep."""

_DIGITS = 5
_MOST_ROUNDS = 200
Point = tuple[Value, ...]


class Points:
    """The combinations in their order; the last key varies fastest in a grid.

    A grid is worked out as it is asked for, so that a large one takes no memory.
    """

    def __init__(self, axes: Sequence[Axis], sample: int | None = None, seed: int = 0) -> None:
        """Take the grid, or a sample of it.

        Args:
            axes: What is varied.
            sample: Number of combinations to take; None for all. A grid that has no more is taken whole.
            seed: Seed of the sample.

        Raises:
            InputError: there would be more than ``MOST``.
        """
        self._axes = tuple(axes)
        self._chosen: list[Point] | None = None
        grid = None if any(axis.continuous for axis in axes) else math.prod(len(axis.values) for axis in axes)
        count = grid if sample is None or (grid is not None and sample >= grid) else sample
        if count is None or count > MOST:
            raise InputError([Problem(WHERE, None, "--vary", f"{count} variants", f"at most {MOST}", "--sample N")])
        if count != grid:
            self._chosen = self._distinct(count, grid, random.Random(seed))  # noqa: S311 # nothing secret
        self._count = count

    def __len__(self) -> int:
        return self._count

    def __getitem__(self, number: int) -> Point:
        """Return one combination, counted from 0."""
        return self._of_grid(number) if self._chosen is None else self._chosen[number]

    def __iter__(self) -> Iterator[Point]:
        return (self[number] for number in range(len(self)))

    def _of_grid(self, number: int) -> Point:
        values: list[Value] = []
        for axis in reversed(self._axes):
            number, place = divmod(number, len(axis.values))
            values.append(axis.values[place])
        return tuple(reversed(values))

    def _distinct(self, count: int, grid: int | None, draws: random.Random) -> list[Point]:
        """Return different combinations: of one hypercube after another, or of a shuffled grid where most are taken."""
        if grid is not None and 2 * count > grid:
            return [self._of_grid(number) for number in shuffled(grid, draws)[:count]]
        found: dict[Point, None] = {}
        for _ in range(_MOST_ROUNDS):
            for place in latin_hypercube(count, len(self._axes), draws):
                found.setdefault(tuple(_at(axis, share) for axis, share in zip(self._axes, place, strict=True)))
            if len(found) >= count:
                return list(found)[:count]
        expected = f"ranges with {count} values that differ in {_DIGITS} digits"
        raise InputError([Problem(WHERE, None, "--sample", f"{count}", expected, "take wider ranges or fewer samples")])


def _at(axis: Axis, share: float) -> Value:
    """Return the value at a share of the axis, 0 to 1."""
    if not axis.continuous:
        return axis.values[int(share * len(axis.values))]
    low, high = (value for value in axis.values if isinstance(value, (int, float)))
    return float(f"{low + share * (high - low):.{_DIGITS}g}")


def latin_hypercube(count: int, width: int, draws: random.Random) -> Iterator[tuple[float, ...]]:
    """Yield points in the unit cube of which each slice along each axis holds one.

    Only ``draws.random()`` is used: of it Python promises the same numbers for a seed in every version.

    Source: McKay, Beckman, Conover 1979, from memory.
    """
    slices = [shuffled(count, draws) for _ in range(width)]
    for row in zip(*slices, strict=True):
        yield tuple((place + draws.random()) / count for place in row)


def shuffled(count: int, draws: random.Random) -> list[int]:
    """Return 0 to count - 1 in a random order."""
    keys = [draws.random() for _ in range(count)]
    return sorted(range(count), key=keys.__getitem__)
