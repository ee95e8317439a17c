"""What was measured: values with their expanded uncertainties, and the vectors that they make."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass

from blockgen.evidence.characteristics import InspectionRow


@dataclass(frozen=True, slots=True)
class Measurement:
    """One measured value.

    Args:
        row: Row of the inspection sheet.
        value: In the row's unit.
        uncertainty: Expanded uncertainty, k = 2, in the row's unit.
        line: Line of the file; 0 where it comes from elsewhere.
    """

    row: InspectionRow
    value: float
    uncertainty: float
    line: int = 0


@dataclass(frozen=True, slots=True)
class Vector:
    """A measured vector across the shaft: mm for an offset, mm/m for a slope.

    Args:
        y: Across.
        z: Up.
        uncertainty_y: Expanded uncertainty of y, k = 2.
        uncertainty_z: Expanded uncertainty of z, k = 2.
    """

    y: float
    z: float
    uncertainty_y: float
    uncertainty_z: float


@dataclass(frozen=True, slots=True)
class Measured:
    """A filled inspection sheet.

    Args:
        file: Its path as it was given.
        values: Measurements by id; what was not measured is not there.
    """

    file: str
    values: Mapping[str, Measurement]


def vector(values: Mapping[str, Measurement], stem: str) -> Vector | None:
    """Return the vector whose components are ``<stem>_y`` and ``<stem>_z``; None where one of them is missing."""
    y, z = values.get(f"{stem}_y"), values.get(f"{stem}_z")
    return None if y is None or z is None else Vector(y.value, z.value, y.uncertainty, z.uncertainty)
