"""The cells of one line of a measured file as numbers in the unit of its row."""

from __future__ import annotations

import re
from collections.abc import Mapping
from math import radians

from blockgen.evidence.characteristics import InspectionRow
from blockgen.evidence.measurement import Measurement
from blockgen.units import UnitProblem, quantity

_NUMBER = re.compile(r"[+-]?(?:[0-9]+\.?[0-9]*|\.[0-9]+)(?:[eE][+-]?[0-9]+)?")
_COMMA = re.compile(r"([+-]?[0-9]*),([0-9]+)")
_SIGNED = frozenset({"offset", "slope"})
_SLOPE = 'a slope such as 0.05 in "mm/m" (or um/m, mrad, deg)'


class CellProblem(ValueError):  # noqa: N818 - what is wrong with a cell, not a failure
    """A cell that says nothing usable.

    Args:
        found: What stands there.
        expected: What should stand there.
        remedy: What to do about it.
    """

    def __init__(self, found: str, expected: str, remedy: str = "") -> None:
        """Keep the parts and make the message from them."""
        self.found, self.expected, self.remedy = found, expected, remedy
        super().__init__(f"found {found}, expected {expected}")


def measurement_of(row: InspectionRow, cells: Mapping[str, str], line: int) -> Measurement | None:
    """Return the measurement that a line holds; None where its value is empty.

    Args:
        row: Row of the inspection sheet.
        cells: Cells by column: value, unit and uncertainty are read.
        line: Line of the file.

    Raises:
        CellProblem: a cell is wrong.
    """
    if not cells["value"]:
        return None
    value = _number(row, "value", cells["value"], cells["unit"])
    if value < 0 and row.kind not in _SIGNED:
        raise CellProblem(f"value {cells['value']}", "0 or more", "only offsets and slopes have a sign")
    if not row.unit and value not in {0.0, 1.0}:
        raise CellProblem(f"value {cells['value']}", "0 or 1", row.convention)
    return Measurement(row, value, _uncertainty(row, cells), line)


def _uncertainty(row: InspectionRow, cells: Mapping[str, str]) -> float:
    """Return the expanded uncertainty; the answer of a gauge needs none."""
    if not cells["uncertainty"]:
        if not row.unit:
            return 0.0
        wanted = f", {row.uncertainty_wanted:g} {row.unit} would do" if row.uncertainty_wanted else ""
        remedy = f"write the expanded uncertainty (k = 2) of the measurement{wanted}"
        raise CellProblem("no uncertainty beside the value", "a number, 0 or more", remedy)
    found = _number(row, "uncertainty", cells["uncertainty"], cells["unit"])
    if found < 0:
        raise CellProblem(f"uncertainty {cells['uncertainty']}", "0 or more", "write its half width without a sign")
    return found


def _number(row: InspectionRow, column: str, text: str, unit: str) -> float:
    comma = _COMMA.fullmatch(text)
    if comma is not None:
        point = f"{comma[1]}.{comma[2]}"
        raise CellProblem(f"{column} {text}", "a number with a decimal point", f"write {point}")
    if _NUMBER.fullmatch(text) is None:
        raise CellProblem(f"{column} {text}", "a finite number such as 45.012", "leave it empty where not measured")
    if row.unit and not unit:
        raise CellProblem("no unit", f"a unit, {row.unit}", "keep the units of the inspection sheet")
    try:
        return in_unit(text, unit, row.unit)
    except UnitProblem as problem:
        expected = _SLOPE if row.unit == "mm/m" else problem.expected
        raise CellProblem(f"{column} {text} {unit}".rstrip(), expected, problem.remedy) from None


def in_unit(text: str, written: str, unit: str) -> float:
    """Return a number with a unit in the unit of a row: mm, um, mm/m, or empty for a plain number.

    Raises:
        UnitProblem: the unit is unknown or measures something else.
    """
    if written == unit:  # as the sheet has it: nothing to convert, and no need to load what does
        return quantity(text, "mm" if unit else "")
    words = f"{text} {written}".rstrip()
    if unit == "um":
        return _tidy(1000 * quantity(words, "mm"))
    if unit != "mm/m":
        return quantity(words, unit)
    try:
        return _tidy(1000 * quantity(words, ""))
    except UnitProblem:
        return _tidy(1000 * radians(quantity(words, "deg")))


def _tidy(value: float) -> float:
    return float(f"{value:.12g}")
