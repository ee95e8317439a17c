"""The evidence: what was found out about a block's stiffness; plain frozen data."""

from __future__ import annotations

import math
from dataclasses import dataclass

from blockgen.evidence.stiffness.estimate import Estimate
from blockgen.evidence.stiffness.field import Field
from blockgen.plan import Point


@dataclass(frozen=True, slots=True)
class Across:
    """A known vector across the shaft, (y, z) in mm or rad, and half the width of the band of its length."""

    y: float
    z: float
    half: float

    @property
    def length(self) -> float:
        """Its length."""
        return math.hypot(self.y, self.z)

    @property
    def most(self) -> float:
        """Its length at the unfavourable end of the band."""
        return self.length + self.half


@dataclass(frozen=True, slots=True)
class CaseResult:
    """What loads that act at one time do.

    Args:
        title: The loads in words.
        thrust: N.
        offset: Offset of the bores' axes at the coupling's centre, motor less bearing, mm.
        slope: Slope of the bores' axes, motor less bearing, rad.
        shares: Force (x, y, z) in N of the block on the base at each screw; z upwards pulls on the screw.
        stress: Greatest comparative stress away from singular edges, MPa.
        stress_place: Where it is, mm.
        distortion: Root mean square of what of a bore's displacement is no rigid motion, bearing and motor, mm.
    """

    title: str
    thrust: float
    offset: Across
    slope: Across
    shares: tuple[Point, ...]
    stress: Estimate
    stress_place: Point
    distortion: tuple[float, float]


@dataclass(frozen=True, slots=True)
class Variant:
    """A block on one support with one kind of flanges.

    Args:
        support: heads, bonded or bed.
        title: The support in words.
        flanges: free (they bend with the seats) or rigid.
        axial_stiffness: Thrust over what the bearing seat gives way along it, N/um.
        frequencies: First frequencies of the motor on its seat, Hz; empty where its mass is not given.
        cases: Loads of service.
        unknowns: Unknowns of the finest mesh on which it was solved; where that is not the last of all, its bands are
            wider, since no quantity is judged by it.
    """

    support: str
    title: str
    flanges: str
    axial_stiffness: Estimate
    frequencies: tuple[Estimate, ...]
    cases: tuple[CaseResult, ...]
    unknowns: int


@dataclass(frozen=True, slots=True)
class MeshUsed:
    """Size of a mesh."""

    elements: int
    unknowns: int


@dataclass(frozen=True, slots=True)
class Stiffness:
    """Stiffness of a block as an envelope over supports and flanges.

    Args:
        variants: All of them.
        meshes: Meshes from coarse to fine; all variants are solved on the first, those that decide on all.
        band_asked: Half the band over the value that was asked for, of the ends that are judged.
        band: What was reached.
        point_mass: True where the motor counts as a point, since the size of its body is not given.
        field: What the load and support with the greatest slope do to the outside, for pictures.
    """

    variants: tuple[Variant, ...]
    meshes: tuple[MeshUsed, ...]
    band_asked: float
    band: float
    point_mass: bool
    field: Field | None = None
