"""ISO 273: clearance holes for screws; ASME B18.2.8 for inch sizes."""

from __future__ import annotations

from functools import cache

from blockgen.standards.tables import millimetres, number, one_of, rows_by

SERIES = ("fine", "medium", "coarse")


@cache
def clearance_hole(size: str, series: str = "medium") -> float:
    """Return the clearance hole of a screw in mm.

    Args:
        size: ``M10``, ``#10`` or ``1/4``.
        series: fine, medium or coarse (for inch sizes close, normal, loose).

    Raises:
        TableError: size or series is not in the table.

    Source: ISO 273; ASME B18.2.8 for inch sizes.
    """
    one_of("clearance hole series", series, dict.fromkeys(SERIES))
    metric, inch = rows_by("iso273", "size"), rows_by("inch_clearance_holes", "size")
    row = one_of("screw size", size, {**metric, **inch})
    return millimetres(number(row, series)) if size in inch else number(row, series)
