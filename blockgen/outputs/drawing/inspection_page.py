"""The inspection sheet: numbered characteristics with limits, instrument, wanted uncertainty, and room to write."""

from __future__ import annotations

from collections.abc import Sequence

from blockgen.evidence.characteristics import ZONES, InspectionRow
from blockgen.outputs.drawing.figures import Figures
from blockgen.outputs.drawing.pages import Part
from blockgen.outputs.drawing.tables import Column

COLUMNS = (
    Column("No.", 10.0), Column("id", 53.0), Column("Characteristic", 52.0), Column("Nominal", 15.0),
    Column("Lower", 15.0), Column("Upper", 15.0), Column("Unit", 11.0), Column("Instrument", 41.0),
    Column("U wanted", 14.0), Column("Value", 17.0), Column("U", 12.0), Column("In/out", 12.0),
)  # fmt: skip

_WHO = (
    Column("Serial number of the block", 60.0), Column("Measured by", 60.0), Column("Date", 37.0),
    Column("Temperature", 30.0), Column("Instruments, their numbers", 80.0),
)  # fmt: skip

_SCHEME = (
    """Datum scheme: A the bearing seat plane (primary, gives the direction of the shaft), B the bearing bore
    (secondary, gives its centre at A), C the base face (level). A short pilot cannot define an axis, so every
    direction is taken from a seat plane, and bores are measured as centres near their seats.""",
    """Signs: x along the shaft from the bearing seat to the motor; seen from the motor y to the right and z up. Slopes
    are rise over run along x, in mm/m.""",
    """U is the expanded uncertainty (k = 2) in the unit of the row. A value counts as in when it lies within the limits
    by at least U, as out when it lies beyond them by more than U (ISO 14253-1).""",
    """Measure at 20 °C, unclamped. Type values with U into the CSV beside this sheet; leave what was not measured
    empty. blockgen inspect then tells what this block will do.""",
)


def inspection_parts(rows: Sequence[InspectionRow], figures: Figures) -> list[Part]:
    """Return the tables of the inspection sheet."""
    block = tuple(_cells(row, figures) for row in rows if row.needed == "block")
    bought = tuple(_cells(row, figures) for row in rows if row.needed == "bought")
    parts = [Part("This block", _WHO, (("",) * len(_WHO),)), Part("Block", COLUMNS, block)]
    if bought:
        parts.append(Part("Bought parts, where they can be measured", COLUMNS, bought))
    wide = (Column("id", 90.0), Column("What the value means", 177.0))
    return [
        *parts,
        Part("Conventions", wide, _conventions(rows)),
        Part("How to measure", (), tuple((s,) for s in _SCHEME)),
    ]


def _conventions(rows: Sequence[InspectionRow]) -> tuple[tuple[str, str], ...]:
    """Return what values mean, equal words once."""
    found: dict[str, list[str]] = {}
    for row in rows:
        if row.convention:
            found.setdefault(row.convention, []).append(row.id)
    return tuple((", ".join(identifiers), words) for words, identifiers in found.items())


_NO_NOMINAL = {*ZONES, "texture"}


def _cells(row: InspectionRow, figures: Figures) -> tuple[str, ...]:
    def number(value: float | None) -> str:
        return "" if value is None else figures.number(value, 4)

    nominal = "" if row.kind in _NO_NOMINAL else number(row.nominal)
    return (
        row.number, row.id, row.title, nominal, number(row.lower), number(row.upper), row.unit, row.instrument,
        number(row.uncertainty_wanted), "", "", "",
    )  # fmt: skip
