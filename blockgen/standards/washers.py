"""Plain washers: ISO 7089 (normal) and ISO 7092 (small, for socket head cap screws)."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass
from functools import cache

from blockgen.standards.tables import Row, load_table, number, one_of


@dataclass(frozen=True, slots=True)
class Washer:
    """One plain washer, mm.

    Args:
        size: Screw size, ``M10``.
        standard: ISO 7089 or ISO 7092.
        inner: Nominal (least) inner diameter.
        outer: Nominal (greatest) outer diameter.
        thickness: Nominal thickness.
    """

    size: str
    standard: str
    inner: float
    outer: float
    thickness: float


@cache
def washer(size: str, standard: str = "ISO 7089") -> Washer:
    """Return a plain washer.

    Args:
        size: Screw size, ``M10``.
        standard: ``ISO 7089`` or ``ISO 7092``.

    Raises:
        TableError: no such standard or size in the table.

    Source: ISO 7089, ISO 7092.
    """
    row = one_of("washer size", size, one_of("washer standard", standard, _by_standard()))
    return Washer(size, standard, number(row, "inner"), number(row, "outer"), number(row, "thickness"))


def washer_sizes(standard: str) -> tuple[str, ...]:
    """Return the screw sizes that have a washer of a standard.

    Raises:
        TableError: no such standard in the table.
    """
    return tuple(one_of("washer standard", standard, _by_standard()))


@cache
def _by_standard() -> Mapping[str, Mapping[str, Row]]:
    found: dict[str, dict[str, Row]] = {}
    for row in load_table("washers").rows:
        found.setdefault(row["standard"], {})[row["size"]] = row
    return found
