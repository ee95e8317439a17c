"""Forces on a rigid part, summed about a point. Forces in N, places in mm, moments in N*m.

Axes as everywhere: x along the shaft towards the motor, z up from the base; moments turn right-handed.
"""

from __future__ import annotations

import math
from collections.abc import Mapping, Sequence
from dataclasses import dataclass

Vector = tuple[float, float, float]

STANDARD_GRAVITY = 9.80665  # m/s2, ISO 80000-3, from memory

DOWN: Mapping[str, Vector] = {
    "-z": (0.0, 0.0, -1.0), "+z": (0.0, 0.0, 1.0), "-y": (0.0, -1.0, 0.0), "+y": (0.0, 1.0, 0.0),
    "-x": (-1.0, 0.0, 0.0), "+x": (1.0, 0.0, 0.0),
}  # fmt: skip
"""Unit vectors by the word for the way that is down."""


@dataclass(frozen=True, slots=True)
class Force:
    """A force in N and the place in mm where it acts."""

    vector: Vector
    place: Vector


def weight(mass: float) -> float:
    """Return the weight in N of a mass in kg."""
    return mass * STANDARD_GRAVITY


def resultant(forces: Sequence[Force], about: Vector) -> tuple[Vector, Vector]:
    """Return sum of forces in N and of their moments about a place in N*m.

    Args:
        forces: Forces with their places.
        about: Place, mm.

    Source: elementary statics: sum F, sum r x F.
    """
    along = across = up = about_x = about_y = about_z = 0.0
    for force in forces:
        (fx, fy, fz), place = force.vector, force.place
        x, y, z = place[0] - about[0], place[1] - about[1], place[2] - about[2]
        along, across, up = along + fx, across + fy, up + fz
        about_x, about_y, about_z = about_x + y * fz - z * fy, about_y + z * fx - x * fz, about_z + x * fy - y * fx
    return (along, across, up), (about_x / 1000, about_y / 1000, about_z / 1000)


def thrust_of_torque(torque: float, lead: float, efficiency: float) -> float:
    """Return the thrust in N of a screw driven with a torque.

    Args:
        torque: At the screw, N*m.
        lead: mm.
        efficiency: Of the screw, 0 to 1.

    Source: work of one turn: F lead = 2 pi eta M.
    """
    return 2 * math.pi * efficiency * 1000 * torque / lead
