"""The pilot: the turned spigot that stands on a mounting face, or the bore that is sunk into it."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from math import fsum
from typing import Literal

from blockgen.reading.along import AxisLine, Band
from blockgen.reading.faces import TurnedFace

LEAST_LENGTH = 0.4
"""A shorter step is no pilot, mm."""

_FOOT = 2.5  # undercut, fillet or gap between mounting face and pilot, mm
_TOUCH = 0.05
_LEAST_SWEEP = 90.0  # pilots may be interrupted by pockets


@dataclass(frozen=True, slots=True)
class Pilot:
    """A pilot.

    Args:
        form: proud or recessed.
        diameter: mm.
        length: From the mounting face to its end or floor, mm.
        faces: Its cylinder faces.
        sweep: Angle that they cover, deg.
        runout: Height of its foot above the mounting face, mm; negative for an undercut.
    """

    form: Literal["proud", "recessed"]
    diameter: float
    length: float
    faces: tuple[TurnedFace, ...]
    sweep: float
    runout: float


def proud_pilot(line: AxisLine, height: float, widest: float) -> Pilot | None:
    """Return the spigot that stands on a face.

    Args:
        line: The bands about the axis.
        height: Height of the mounting face, mm.
        widest: Greatest radius that it may have, mm.
    """
    solid = [b for b in line.bands if not b.hollow]
    standing = [b for b in solid if _stands(b, height) and b.radius < widest]
    if not standing:
        return None
    radius = max(b.radius for b in standing)
    same = [b for b in standing if radius - b.radius < 0.01]
    sweep = min(fsum(b.sweep for b in same), 360.0)
    if sweep < _LEAST_SWEEP:
        return None
    top = _end(solid, max(b.high for b in same), radius)
    faces = tuple(f for b in same for f in b.faces)
    return Pilot("proud", 2 * radius, top - height, faces, sweep, min(b.low for b in same) - height)


def _stands(band: Band, height: float) -> bool:
    return (
        band.kind == "cylinder"
        and -_FOOT <= band.low - height <= _FOOT
        and band.high - height >= LEAST_LENGTH
        and band.height >= min(LEAST_LENGTH, 0.3)
    )


def _end(bands: Sequence[Band], top: float, radius: float) -> float:
    """Return where a spigot ends, with the chamfer or fillet at its edge."""
    edges = [b for b in bands if b.kind != "cylinder" and abs(b.low - top) < _TOUCH and abs(b.radius - radius) < _TOUCH]
    return max((b.high for b in edges), default=top)


def recessed_pilot(line: AxisLine, height: float, narrowest: float, widest: float) -> Pilot | None:
    """Return the bore that is sunk into a face.

    Args:
        line: The bands about the axis.
        height: Height of the mounting face, mm.
        narrowest: Least radius that it may have, mm; a narrower one lets the shaft through.
        widest: Greatest radius that it may have, mm.
    """
    sunk = [b for b in line.bands if b.hollow and _is_sunk(b, line.bands, height) and narrowest < b.radius < widest]
    if not sunk:
        return None
    radius = max(b.radius for b in sunk)
    same = [b for b in sunk if radius - b.radius < 0.01]
    sweep = min(fsum(b.sweep for b in same), 360.0)
    if sweep < _LEAST_SWEEP:
        return None
    faces = tuple(f for b in same for f in b.faces)
    return Pilot(
        "recessed", 2 * radius, height - min(b.low for b in same), faces, sweep, max(b.high for b in same) - height
    )


def _is_sunk(band: Band, bands: Sequence[Band], height: float) -> bool:
    if band.kind != "cylinder" or band.low > height - LEAST_LENGTH:
        return False
    mouth = [b.high for b in bands if b.hollow and b.kind != "cylinder" and abs(b.low - band.high) < _TOUCH]
    return any(abs(top - height) < _TOUCH for top in [band.high, *mouth])
