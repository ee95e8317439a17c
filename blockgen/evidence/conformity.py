"""Whether a measured value conforms: in, out, or cannot be told.

Sources: ISO 14253-1 in its older editions (from memory), and ILAC-G8:09/2019, 4.2.3 (tests/outside). It conforms where
it lies inside the limits by its expanded uncertainty, it does not where it lies outside by it; between them neither can
be told. The edition of 2017 takes less of the uncertainty; this is the cautious side.
"""

from __future__ import annotations

from dataclasses import dataclass
from typing import Literal

from blockgen.evidence.characteristics import ZONES, InspectionRow, inspection_rows
from blockgen.evidence.derived import derived
from blockgen.evidence.measurement import Measured
from blockgen.plan import Plan

Told = Literal["in", "out", "cannot be told", "not measured", "no limit"]
Side = Literal["", "below", "above"]
_HAIR = 1e-9
_FROM_ZERO = ZONES | {"runout"}  # their lower limit of 0 is no limit: nothing can be flatter than flat


@dataclass(frozen=True, slots=True)
class Conformity:
    """What is known of one row.

    Args:
        row: Row of the inspection sheet.
        value: Measured or derived value in the row's unit; None where there is none.
        uncertainty: Expanded uncertainty, k = 2, in the row's unit; None without a value.
        told: in, out, cannot be told; not measured without a value, no limit where the row has none.
        side: At which limit it is out or in doubt.
        rule: How a derived value came about; empty for a measured one.
    """

    row: InspectionRow
    value: float | None
    uncertainty: float | None
    told: Told
    side: Side = ""
    rule: str = ""


def value_words(one: Conformity) -> str:
    """Return the value as it is shown; a derived one to four digits, since nobody read it off."""
    if one.value is None:
        return ""
    return f"{one.value:.4g}" if one.rule else f"{one.value:.8g}"


def limit_words(row: InspectionRow) -> str:
    """Return the limits as they are shown."""
    lower = None if row.kind in _FROM_ZERO else row.lower
    if row.upper is None:
        return "-" if lower is None else f"{lower:g}"
    return f"to {row.upper:g}" if lower is None else f"{lower:g} to {row.upper:g}"


def conformities(plan: Plan, measured: Measured) -> tuple[Conformity, ...]:
    """Return one entry for each row of the inspection sheet, in its order."""
    return tuple(_one(plan, measured, row) for row in inspection_rows(plan))


def _one(plan: Plan, measured: Measured, row: InspectionRow) -> Conformity:
    found = measured.values.get(row.id)
    if found is not None:
        told, side = judged(row, found.value, found.uncertainty)
        return Conformity(row, found.value, found.uncertainty, told, side)
    made = derived(plan, measured.values, row.id)
    if made is None:
        return Conformity(row, None, None, "not measured")
    told, side = judged(row, made.value, made.uncertainty)
    return Conformity(row, made.value, made.uncertainty, told, side, made.rule)


def judged(row: InspectionRow, value: float, uncertainty: float) -> tuple[Told, Side]:
    """Return what can be told of a value, and at which limit.

    Args:
        row: Row with limits.
        value: In the row's unit.
        uncertainty: Expanded uncertainty, k = 2, in the row's unit.

    Source: ISO 14253-1 (from memory).
    """
    lower = None if row.kind in _FROM_ZERO else row.lower
    if lower is None and row.upper is None:
        return "no limit", ""
    below = -1.0 if lower is None else _beyond(lower - value, uncertainty)
    above = -1.0 if row.upper is None else _beyond(value - row.upper, uncertainty)
    if max(below, above) < 0:
        return "in", ""
    side: Side = "below" if below > above or (below == above and _nearer_to_lower(row, value)) else "above"
    return ("out" if max(below, above) > 0 else "cannot be told"), side


def _beyond(distance: float, uncertainty: float) -> float:
    """Return 1 for beyond a limit by the uncertainty, -1 for inside it by that, 0 between.

    Args:
        distance: How far the value lies beyond the limit; negative inside.
        uncertainty: Expanded uncertainty.
    """
    if distance > uncertainty + _HAIR:
        return 1.0
    return -1.0 if distance <= _HAIR - uncertainty else 0.0


def _nearer_to_lower(row: InspectionRow, value: float) -> bool:
    return row.upper is None or row.lower is None or value - row.lower < row.upper - value
