"""What was read from a maker's file: values with confidence and evidence, and what could not be found."""

from __future__ import annotations

from dataclasses import dataclass
from typing import Literal

from blockgen.reading.confidence import Confidence
from blockgen.reading.vectors import Vector

Part = Literal["motor", "bearing"]
Value = float | int | str | tuple[tuple[float, float], ...]


@dataclass(frozen=True, slots=True)
class Found:
    """A value.

    Args:
        key: Key of the spec, without its table.
        value: In ``unit``.
        unit: mm, deg, or empty.
        confidence: high, fair or low.
        evidence: Which faces, how many, how well they agree.
        faces: Number of faces that it was read from.
        residual: Greatest difference between them, mm; None where it means nothing.
    """

    key: str
    value: Value
    unit: str
    confidence: Confidence
    evidence: str
    faces: int
    residual: float | None


@dataclass(frozen=True, slots=True)
class Missing:
    """A key for which nothing was found, and why."""

    key: str
    why: str


@dataclass(frozen=True, slots=True)
class Reading:
    """What a maker's file says about a part.

    Args:
        part: motor or bearing; also the table of the spec.
        file: Path as the user gave it.
        unit: Length unit of the file.
        solids: Number of solids in it.
        found: What was found, in the order of a data sheet.
        missing: What was not.
        notes: What else to know: rivals, second patterns, surfaces that could not be read.
        origin: Centre of the pilot on the mounting face, mm in the file's coordinates.
        axis: Out of the flange, towards the shaft end or the nut.
        up: Up on the flange.
        evidence: What speaks for the mounting face.
    """

    part: Part
    file: str
    unit: str
    solids: int
    found: tuple[Found, ...]
    missing: tuple[Missing, ...]
    notes: tuple[str, ...]
    origin: Vector
    axis: Vector
    up: Vector
    evidence: tuple[str, ...]

    def value(self, key: str) -> Value | None:
        """Return the value of a key; None where it was not found."""
        return next((f.value for f in self.found if f.key == key), None)
