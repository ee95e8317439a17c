"""Dowel pins: ISO 8734 (hardened) and ISO 2338 (unhardened)."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass
from functools import cache, lru_cache
from math import inf

from blockgen.standards.tables import Row, load_table, number, one_of


@dataclass(frozen=True, slots=True)
class DowelPin:
    """One diameter of dowel pin, mm.

    Args:
        standard: ISO 8734 or ISO 2338.
        diameter: Nominal diameter.
        tolerance_class: Class of the pin, m6.
        lengths: Preferred lengths.
        status: Status of the figures.
    """

    standard: str
    diameter: float
    tolerance_class: str
    lengths: tuple[float, ...]
    status: str


@lru_cache(maxsize=4096)
def dowel_pin(diameter: float, standard: str = "ISO 8734") -> DowelPin:
    """Return a dowel pin.

    Args:
        diameter: Nominal diameter, mm.
        standard: ``ISO 8734`` or ``ISO 2338``.

    Raises:
        TableError: no such standard or diameter in the table.

    Source: ISO 8734, ISO 2338.
    """
    row = one_of("dowel pin diameter", f"{diameter:g}", one_of("dowel pin standard", standard, _by_standard()))
    info = load_table("dowel_pins").info
    return DowelPin(standard, diameter, row["tolerance_class"], _lengths(row), info.status)


def pin_diameters(standard: str = "ISO 8734") -> tuple[float, ...]:
    """Return the diameters of a standard, mm.

    Raises:
        TableError: no such standard in the table.
    """
    return tuple(float(d) for d in one_of("dowel pin standard", standard, _by_standard()))


def pin_length(diameter: float, at_least: float, at_most: float = inf, standard: str = "ISO 8734") -> float | None:
    """Return the shortest preferred length within bounds, mm; None when there is none.

    Raises:
        TableError: no such standard or diameter in the table.
    """
    return next((n for n in dowel_pin(diameter, standard).lengths if at_least <= n <= at_most), None)


def _lengths(row: Row) -> tuple[float, ...]:
    every = (number(r, "length") for r in load_table("dowel_pin_lengths").rows)
    return tuple(n for n in every if number(row, "shortest") <= n <= number(row, "longest"))


@cache
def _by_standard() -> Mapping[str, Mapping[str, Row]]:
    found: dict[str, dict[str, Row]] = {}
    for row in load_table("dowel_pins").rows:
        found.setdefault(row["standard"], {})[row["diameter"]] = row
    return found
