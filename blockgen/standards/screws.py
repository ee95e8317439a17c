"""Socket head cap screws: ISO 4762 and, for inch sizes, ASME B18.3; preferred lengths; reach of their keys."""

from __future__ import annotations

from dataclasses import dataclass
from functools import cache, lru_cache
from math import inf

from blockgen.standards.tables import Row, load_table, millimetres, number, one_of, rows_by


@dataclass(frozen=True, slots=True)
class CapScrew:
    """One size of socket head cap screw, mm.

    Args:
        size: ``M10``, ``#10``, ``1/4``.
        standard: ISO 4762 or ASME B18.3.
        diameter: Nominal diameter.
        head_diameter: Greatest diameter of a plain (not knurled) head.
        head_height: Greatest height of the head.
        key_size: Across flats of the key.
        washer_face: Least outer diameter of the face under the head (dw).
        thread_length: Reference thread length b; shorter screws are threaded to the head.
        lengths: Preferred lengths under the head.
        key_short_arm: Length of the short arm of the key.
        status: Status of the figures.
    """

    size: str
    standard: str
    diameter: float
    head_diameter: float
    head_height: float
    key_size: float
    washer_face: float
    thread_length: float
    lengths: tuple[float, ...]
    key_short_arm: float
    status: str


@cache
def cap_screw(size: str) -> CapScrew:
    """Return a socket head cap screw.

    Args:
        size: ``M10``, ``#10`` or ``1/4``.

    Raises:
        TableError: the size is not in the tables.

    Source: ISO 4762, ISO 2936; ASME B18.3 for inch sizes.
    """
    metric, inch = rows_by("iso4762", "size"), rows_by("asme_b18_3", "size")
    row = one_of("screw size", size, {**metric, **inch})
    return _inch(row) if size in inch else _metric(row)


def cap_screw_sizes() -> tuple[str, ...]:
    """Return all sizes in the tables, metric first."""
    return (*rows_by("iso4762", "size"), *rows_by("asme_b18_3", "size"))


@lru_cache(maxsize=4096)
def preferred_length(size: str, at_least: float, at_most: float = inf) -> float | None:
    """Return the shortest preferred length within bounds, mm.

    Args:
        size: ``M10``, ``#10`` or ``1/4``.
        at_least: Least length under the head, mm.
        at_most: Greatest length, mm.

    Returns:
        The length, or None when no preferred length lies within the bounds.

    Raises:
        TableError: the size is not in the tables.
    """
    return next((n for n in cap_screw(size).lengths if at_least <= n <= at_most), None)


def _lengths(table: str, row: Row) -> tuple[float, ...]:
    every = (number(r, "length") for r in load_table(table).rows)
    return tuple(n for n in every if number(row, "shortest") <= n <= number(row, "longest"))


def _metric(row: Row) -> CapScrew:
    key = rows_by("hex_keys", "key_size")[row["key_size"]]
    return CapScrew(
        size=row["size"],
        standard="ISO 4762",
        diameter=float(row["size"].removeprefix("M")),
        head_diameter=number(row, "head_diameter"),
        head_height=number(row, "head_height"),
        key_size=number(row, "key_size"),
        washer_face=number(row, "washer_face"),
        thread_length=number(row, "thread_length"),
        lengths=_lengths("iso4762_lengths", row),
        key_short_arm=number(key, "short_arm"),
        status=load_table("iso4762").info.status,
    )


def _inch(row: Row) -> CapScrew:
    """Return an inch screw; the head is as high as the screw is thick, the washer face 0.93 of the least head."""
    return CapScrew(
        size=row["size"],
        standard="ASME B18.3",
        diameter=millimetres(number(row, "diameter")),
        head_diameter=millimetres(number(row, "head_diameter")),
        head_height=millimetres(number(row, "diameter")),
        key_size=millimetres(number(row, "key_size")),
        washer_face=millimetres(0.93 * number(row, "head_diameter_min")),
        thread_length=millimetres(number(row, "thread_length")),
        lengths=tuple(millimetres(n) for n in _lengths("asme_b18_3_lengths", row)),
        key_short_arm=millimetres(number(row, "key_short_arm")),
        status=load_table("asme_b18_3").info.status,
    )
