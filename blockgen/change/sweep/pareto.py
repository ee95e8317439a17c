"""The front of many variants: those than which no other one is better in everything."""

from __future__ import annotations

from collections.abc import Sequence
from operator import le

Figures = tuple[float, ...]


def front(rows: Sequence[Figures]) -> list[int]:
    """Return the places of the rows on the front, in order.

    A row is off the front where another one is nowhere worse and somewhere better. Equal rows stand on it together.

    Args:
        rows: Figures of each row, all of which shall be small.
    """
    best: list[Figures] = []
    for row in sorted(set(rows)):  # whoever beats a row comes before it
        beaten_by = next((i for i, other in enumerate(best) if _nowhere_worse(other, row)), None)
        if beaten_by is None:
            best.append(row)
        else:
            best.insert(0, best.pop(beaten_by))  # it will probably beat the next one too
    kept = set(best)
    return [place for place, row in enumerate(rows) if row in kept]


def _nowhere_worse(first: Figures, second: Figures) -> bool:
    return all(map(le, first, second))
