"""DIN 974-1: counterbores for socket head cap screws, without and with a washer."""

from __future__ import annotations

from dataclasses import dataclass
from functools import cache
from math import ceil

from blockgen.standards.screws import cap_screw
from blockgen.standards.tables import INCH, load_table, millimetres, number, one_of, optional, rows_by


@dataclass(frozen=True, slots=True)
class Counterbore:
    """Counterbore diameters of one screw size, mm.

    Args:
        size: ``M10``.
        diameter: For the head alone (series 1).
        with_small_washer: For the head on an ISO 7092 washer (series 4); None where there is none.
        with_washer: For the head on an ISO 7089 washer (series 5); None where there is none.
        source: Where the diameters come from.
        status: Status of the diameters.
    """

    size: str
    diameter: float
    with_small_washer: float | None
    with_washer: float | None
    source: str
    status: str


@cache
def counterbore(size: str) -> Counterbore:
    """Return the counterbore of a socket head cap screw.

    Inch sizes get the head plus 1/32 in, rounded up to 1/64 in (common practice, no source).

    Args:
        size: ``M10``, ``#10`` or ``1/4``.

    Raises:
        TableError: the size is not in the tables.

    Source: DIN 974-1 series 1; series 4 (made for the small washers of screw and washer assemblies, and wider than an
    ISO 7092 washer at every size); series 5.
    """
    metric = rows_by("din974", "size")
    if not size.startswith("M"):
        return Counterbore(size, _inch_diameter(size), None, None, "common practice, no source", "computed")
    row = one_of("counterbore size", size, metric)
    small, normal = optional(row, "series_4"), optional(row, "series_5")
    info = load_table("din974").info
    return Counterbore(size, number(row, "series_1"), small, normal, info.standard, info.status)


def _inch_diameter(size: str) -> float:
    sixty_fourths = cap_screw(size).head_diameter / INCH * 64 + 2
    return millimetres(ceil(round(sixty_fourths, 2)) / 64)
