"""What stands in the way of a tool, and how much of its length or swing is free."""

from __future__ import annotations

from collections.abc import Collection, Iterable, Sequence
from math import fsum

from blockgen.geometry.kernel import bounding_box
from blockgen.geometry.meeting import common_solids, meets
from blockgen.geometry.solid_part import SolidPart
from blockgen.geometry.tool_sweeps import Axis


def in_the_way(tool: SolidPart, solids: Iterable[SolidPart], but: Collection[str]) -> list[SolidPart]:
    """Return the parts that a tool meets.

    Args:
        tool: What the tool sweeps.
        solids: Parts where they stand.
        but: Ids of parts that do not count.
    """
    return [solid for solid in solids if solid.id not in but and meets(tool, solid)]


def free_length(axis: Axis, tool: SolidPart, start: float, needed: float, blocking: Iterable[SolidPart]) -> float:
    """Return how far a tool gets along its axis before it meets a part, mm; ``needed`` where nothing blocks.

    Args:
        axis: Axis of the tool.
        tool: What it sweeps.
        start: Station from which its way is counted, mm.
        needed: Whole way, mm.
        blocking: Parts that it meets.
    """
    stations = [_first(axis, bounding_box(solid)) for part in blocking for solid in common_solids(tool, part)]
    return max(0.0, min([needed, *(station - start for station in stations)]))


def _first(axis: Axis, box: Sequence[float]) -> float:
    """Return the least station of a box along an axis that lies along x, y or z, mm; near enough for others."""
    return fsum(
        min((box[i] - axis.origin[i]) * axis.up[i], (box[i + 3] - axis.origin[i]) * axis.up[i]) for i in range(3)
    )


def longest_run(free: Sequence[bool]) -> int:
    """Return the greatest number of neighbours that are free on a ring."""
    if all(free):
        return len(free)
    best = run = 0
    for one in (*free, *free):
        run = run + 1 if one else 0
        best = max(best, run)
    return best


def runs(free: Sequence[bool]) -> list[tuple[int, int]]:
    """Return the runs of free places on a ring: first and last, the last at or beyond the end where it wraps."""
    count = len(free)
    if all(free):
        return [(0, count - 1)]
    starts = [i for i in range(count) if free[i] and not free[i - 1]]
    return [(start, start + _length(free, start) - 1) for start in starts]


def _length(free: Sequence[bool], start: int) -> int:
    count = len(free)
    return next(i for i in range(count) if not free[(start + i) % count])
