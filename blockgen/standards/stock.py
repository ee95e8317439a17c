"""Stock that blocks are cut from: flat and square bars, and plate thicknesses, by family of material."""

from __future__ import annotations

from dataclasses import dataclass
from functools import cache

from blockgen.standards.tables import load_table, number


@dataclass(frozen=True, slots=True)
class BarSection:
    """The section of one bar, mm.

    Args:
        kind: steel or aluminium.
        form: flat bar or square bar.
        standard: Standard of its dimensions.
        thickness: Lesser side.
        width: Greater side.
    """

    kind: str
    form: str
    standard: str
    thickness: float
    width: float


@dataclass(frozen=True, slots=True)
class PlateThickness:
    """One plate thickness in mm, with its standard and the family of material."""

    kind: str
    standard: str
    thickness: float


@cache
def bar_sections(kind: str) -> tuple[BarSection, ...]:
    """Return the bars of a family of material, the thinnest first; empty where the table has none.

    Args:
        kind: steel, aluminium or cast_iron.

    Source: EN 10058, EN 10059, EN 755-4, EN 755-5; sizes usually stocked, from memory.
    """
    return tuple(
        BarSection(kind, row["form"], row["standard"], number(row, "thickness"), float(width))
        for row in load_table("stock_bars").rows
        if row["kind"] == kind
        for width in row["widths"].split("|")
    )


@cache
def plate_thicknesses(kind: str) -> tuple[PlateThickness, ...]:
    """Return the plates of a family of material, the thinnest first; empty where the table has none.

    Args:
        kind: steel, aluminium or cast_iron.

    Source: EN 10029, EN 485-3; thicknesses usually stocked, from memory.
    """
    rows = (row for row in load_table("stock_plates").rows if row["kind"] == kind)
    return tuple(PlateThickness(kind, row["standard"], number(row, "thickness")) for row in rows)
