"""Stripping of engaged screw threads.

Model: the threads shear off on a cylinder, every turn of the engagement carries its full share, and the shear
areas are the least ones that the thread limits allow. The internal thread shears at the least major diameter of
the screw, the external thread at the greatest minor diameter of the hole. Shear strength is a share of the tensile
strength (0.6 here). No allowance is made for the hole widening under load, for bending of the turns or for unequal
sharing between them: published calculators that allow for these, or that take nominal diameters, differ up to twofold.

Source of the areas: FED-STD-H28/2, as reprinted in handbooks and written down from memory.
"""

from __future__ import annotations

import math
from dataclasses import dataclass

SHEAR_RATIO = 0.6
SQRT_3 = math.sqrt(3)


@dataclass(frozen=True, slots=True)
class ThreadLimits:
    """The limits of a thread pair that give the least shear areas, mm.

    Args:
        pitch: Pitch P.
        external_major_min: Least major diameter of the screw, dmin.
        external_pitch_min: Least pitch diameter of the screw, d2min.
        internal_pitch_max: Greatest pitch diameter of the hole, D2max.
        internal_minor_max: Greatest minor diameter of the hole, D1max.
    """

    pitch: float
    external_major_min: float
    external_pitch_min: float
    internal_pitch_max: float
    internal_minor_max: float


def internal_shear_area(limits: ThreadLimits, engagement: float) -> float:
    """Return the shear area of the internal thread, mm2.

    Args:
        limits: Thread limits, mm.
        engagement: Length of full thread in engagement Le, mm.

    Source: FED-STD-H28/2, from memory: ASn = pi dmin Le/P (P/2 + (dmin - D2max)/sqrt 3).
    """
    height = limits.pitch / 2 + (limits.external_major_min - limits.internal_pitch_max) / SQRT_3
    return math.pi * limits.external_major_min * engagement / limits.pitch * height


def external_shear_area(limits: ThreadLimits, engagement: float) -> float:
    """Return the shear area of the external thread, mm2.

    Args:
        limits: Thread limits, mm.
        engagement: Length of full thread in engagement Le, mm.

    Source: FED-STD-H28/2, from memory: ASs = pi D1max Le/P (P/2 + (d2min - D1max)/sqrt 3).
    """
    height = limits.pitch / 2 + (limits.external_pitch_min - limits.internal_minor_max) / SQRT_3
    return math.pi * limits.internal_minor_max * engagement / limits.pitch * height


def shear_force(area: float, tensile_strength: float, shear_ratio: float = SHEAR_RATIO) -> float:
    """Return the force that shears an area off, N.

    Args:
        area: Shear area, mm2.
        tensile_strength: Rm of the thread that shears, MPa.
        shear_ratio: Shear strength over tensile strength.
    """
    return area * shear_ratio * tensile_strength


def stripping_force(
    limits: ThreadLimits,
    engagement: float,
    internal_tensile_strength: float,
    external_tensile_strength: float,
    shear_ratio: float = SHEAR_RATIO,
) -> float:
    """Return the force at which the weaker of the two threads strips, N.

    Args:
        limits: Thread limits, mm.
        engagement: Length of full thread in engagement, mm.
        internal_tensile_strength: Rm of the tapped part, MPa.
        external_tensile_strength: Rm of the screw, MPa.
        shear_ratio: Shear strength over tensile strength.

    Source: FED-STD-H28/2 areas, from memory; see the module for the model.
    """
    internal = shear_force(internal_shear_area(limits, engagement), internal_tensile_strength, shear_ratio)
    external = shear_force(external_shear_area(limits, engagement), external_tensile_strength, shear_ratio)
    return min(internal, external)


def least_engagement_against_stripping(
    force: float,
    safety: float,
    limits: ThreadLimits,
    internal_tensile_strength: float,
    external_tensile_strength: float,
    shear_ratio: float = SHEAR_RATIO,
) -> float:
    """Return the least length of full thread that holds a force with a safety, mm.

    Args:
        force: Greatest force in the screw, N.
        safety: Stripping force over force.
        limits: Thread limits, mm.
        internal_tensile_strength: Rm of the tapped part, MPa.
        external_tensile_strength: Rm of the screw, MPa.
        shear_ratio: Shear strength over tensile strength.

    Source: `stripping_force` solved for the engagement, in which it is linear.
    """
    per_mm = stripping_force(limits, 1.0, internal_tensile_strength, external_tensile_strength, shear_ratio)
    return safety * force / per_mm
