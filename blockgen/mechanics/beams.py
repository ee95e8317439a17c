"""Quick stiffness of an end wall as a beam: estimates for a first look, neither safe nor unsafe.

Strips of constant section carry bending and shear. How the strips of a real block share the load, how corners and
bolts give way, only finite elements tell.
"""

from __future__ import annotations

import math

SHEAR_SHARE = 5 / 6


def shear_modulus(modulus: float, poisson: float) -> float:
    """Return the shear modulus, MPa. Source: isotropic elasticity, G = E / (2 (1 + nu))."""
    return modulus / (2 * (1 + poisson))


def cantilever_stiffness(width: float, height: float, thickness: float, modulus: float, shear: float) -> float:
    """Return the stiffness of a strip that stands on its foot and is pushed at its top, N/mm.

    Args:
        width: Net width beside the bore, mm.
        height: From the foot to the force, mm.
        thickness: mm, along the force.
        modulus: Modulus of elasticity, MPa.
        shear: Shear modulus, MPa.

    Source: Timoshenko beam: 1/k = h^3/(3 E I) + h/(5/6 G A).
    """
    area, inertia = width * thickness, width * thickness**3 / 12
    return 1 / (height**3 / (3 * modulus * inertia) + height / (SHEAR_SHARE * shear * area))


def spanning_stiffness(width: float, span: float, thickness: float, modulus: float, shear: float) -> float:
    """Return the stiffness of a strip that is held at both ends and pushed in its middle, N/mm.

    Args:
        width: Net width above and below the bore, mm.
        span: Between the walls that hold it, mm.
        thickness: mm, along the force.
        modulus: Modulus of elasticity, MPa.
        shear: Shear modulus, MPa.

    Source: Timoshenko beam, both ends clamped: 1/k = s^3/(192 E I) + s/(4 * 5/6 G A).
    """
    area, inertia = width * thickness, width * thickness**3 / 12
    return 1 / (span**3 / (192 * modulus * inertia) + span / (4 * SHEAR_SHARE * shear * area))


def in_series(*stiffnesses: float) -> float:
    """Return the stiffness of springs in series, in the unit of the parts."""
    return 1 / math.fsum(1 / k for k in stiffnesses)


def strip_rotation_stiffness(width: float, height: float, thickness: float, modulus: float) -> float:
    """Return the stiffness of a standing strip against a moment at its top, N*mm/rad.

    Source: cantilever with an end moment: k = E I / h.
    """
    return modulus * width * thickness**3 / 12 / height


def strip_torsion_stiffness(width: float, span: float, thickness: float, shear: float) -> float:
    """Return the stiffness of a strip held at both ends against twisting in its middle, N*mm/rad.

    Source: k = 4 G J / s, J = a b^3 (1/3 - 0.21 b/a) for a rectangle of sides a >= b (handbook form, from memory).
    """
    long, short = max(width, thickness), min(width, thickness)
    return 4 * shear * long * short**3 * (1 / 3 - 0.21 * short / long) / span


def nodding_frequency(rotation_stiffness: float, mass: float, arm: float, inertia: float) -> float:
    """Return the first frequency of a rigid body that nods on an elastic seat, Hz.

    Args:
        rotation_stiffness: Of the seat, N*mm/rad.
        mass: kg.
        arm: Centre of mass from the seat, mm.
        inertia: About the centre of mass, kg*mm2.

    Source: single degree of freedom: f = sqrt(k / (m l^2 + I)) / (2 pi).
    """
    return math.sqrt(rotation_stiffness * 1000 / (mass * arm**2 + inertia)) / (2 * math.pi)


def body_inertia(mass: float, size: float, length: float) -> float:
    """Return the moment of inertia of a square bar about its middle, across its length, kg*mm2.

    Source: rigid body: m (a^2 + l^2) / 12.
    """
    return mass * (size**2 + length**2) / 12
