"""Random vectors in the y-z plane of the coupling: how far a cause may throw the shaft, and in which direction.

A scatter is isotropic (disc, gaussian, clearance), stands along one axis (uniform or gaussian in y or z), or is a
known vector. Lengths in mm where it is an offset, angles in rad.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from math import fsum, hypot, sqrt
from typing import Literal

Law = Literal["disc", "gaussian", "clearance", "known", "uniform_y", "uniform_z", "gaussian_y", "gaussian_z"]
ISOTROPIC = frozenset({"disc", "gaussian", "clearance"})
SIGMAS_OF_WORST = 3.0  # a Gaussian has no worst case; the trade reads it as three standard deviations


@dataclass(frozen=True, slots=True)
class Scatter:
    """One random vector.

    Args:
        law: Kind of its distribution.
        size: Radius of a disc, standard deviation of a Gaussian, half width of a uniform line.
        low: Least diametral clearance; negative where the fit may be tight, which counts as no clearance.
        high: Greatest diametral clearance.
        hole_tolerance: Part of ``high - low`` that comes from the hole; the rest comes from the shaft.
        vector: (y, z) of a known vector.
    """

    law: Law
    size: float = 0.0
    low: float = 0.0
    high: float = 0.0
    hole_tolerance: float = 0.0
    vector: tuple[float, float] = (0.0, 0.0)

    @property
    def shaft_tolerance(self) -> float:
        """Part of the spread of a clearance that comes from the shaft."""
        return max(self.high - self.low - self.hole_tolerance, 0.0)


def disc(radius: float) -> Scatter:
    """Return a vector uniform in a disc: any direction, any place inside a tolerance zone."""
    return Scatter("disc", radius)


def gaussian(deviation: float) -> Scatter:
    """Return a vector with the same normal distribution along both axes."""
    return Scatter("gaussian", deviation)


def clearance(low: float, high: float, hole_tolerance: float | None = None) -> Scatter:
    """Return the place of a shaft that touches its hole in a random direction, both sizes uniform over tolerances.

    Args:
        low: Least diametral clearance; negative where it may be tight.
        high: Greatest diametral clearance.
        hole_tolerance: Tolerance of the hole; half of the spread where it is not known.

    Raises:
        ValueError: low lies above high, or the hole's tolerance is wider than the spread.
    """
    spread = high - low
    hole = spread / 2 if hole_tolerance is None else hole_tolerance
    if spread < 0 or not -1e-9 <= hole <= spread + 1e-9:
        raise ValueError(f"clearance {low:g} to {high:g} with a hole tolerance of {hole:g}: give low <= high and hole")
    return Scatter("clearance", 0.0, low, high, min(max(hole, 0.0), spread))


def known(y: float, z: float) -> Scatter:
    """Return a vector that is known, not random."""
    return Scatter("known", vector=(y, z))


def scaled(scatter: Scatter, factor: float) -> Scatter:
    """Return the scatter times a factor; only a known vector cares for the factor's sign."""
    if factor == 1:
        return scatter
    size = abs(factor)
    y, z = scatter.vector
    return Scatter(
        scatter.law, scatter.size * size, scatter.low * size, scatter.high * size, scatter.hole_tolerance * size,
        (y * factor, z * factor),
    )  # fmt: skip


def mean_square(scatter: Scatter) -> float:
    """Return E[r^2] of a scatter.

    Source: disc R^2/2; Gaussian 2 sigma^2; uniform line of half width h: h^2/3; clearance as `clearance_mean_square`.
    """
    if scatter.law == "disc":
        return scatter.size**2 / 2
    if scatter.law == "clearance":
        return clearance_mean_square(scatter)
    if scatter.law == "known":
        return scatter.vector[0] ** 2 + scatter.vector[1] ** 2
    if scatter.law == "gaussian":
        return 2 * scatter.size**2
    return scatter.size**2 / 3 if scatter.law.startswith("uniform") else scatter.size**2


def clearance_mean_square(scatter: Scatter) -> float:
    """Return E[r^2] of a clearance: (mean c^2 + (T_hole^2 + T_shaft^2)/12)/4 where it is never tight.

    Where it may be tight, c below 0 counts as 0 and E[max(c, 0)^2] is the third integral of the distribution.
    """
    low, hole, shaft = scatter.low, scatter.hole_tolerance, scatter.shaft_tolerance
    if scatter.high <= 0:
        return 0.0
    if low >= 0 or min(hole, shaft) <= 0:
        return _plain_square(low, scatter.high, hole, shaft) / 4
    ramps = ((scatter.high, 1), (low + hole, -1), (low + shaft, -1), (low, 1))
    return fsum(sign * max(c, 0.0) ** 4 for c, sign in ramps) / (12 * hole * shaft) / 4


def _plain_square(low: float, high: float, hole: float, shaft: float) -> float:
    """Return E[max(c, 0)^2] of a clearance that is never tight, or that has one tolerance only."""
    if low >= 0:
        return ((low + high) / 2) ** 2 + (hole**2 + shaft**2) / 12
    return high**3 / (3 * (high - low))


def greatest(scatter: Scatter) -> float:
    """Return the greatest length of a scatter; three standard deviations of a Gaussian."""
    if scatter.law == "clearance":
        return max(scatter.high, 0.0) / 2
    if scatter.law == "known":
        return hypot(*scatter.vector)
    return scatter.size * (SIGMAS_OF_WORST if scatter.law.startswith("gaussian") else 1.0)


def worst_case(scatters: Sequence[Scatter]) -> float:
    """Return the greatest length of a sum: discs in line, with the far corner of what stands along the axes."""
    radius = across = up = y = z = 0.0
    for scatter in scatters:
        if scatter.law == "known":
            y, z = y + scatter.vector[0], z + scatter.vector[1]
        elif scatter.law.endswith("_y"):
            across += greatest(scatter)
        elif scatter.law.endswith("_z"):
            up += greatest(scatter)
        else:
            radius += greatest(scatter)
    return radius + hypot(abs(y) + across, abs(z) + up)


def known_sum(scatters: Sequence[Scatter]) -> tuple[float, float]:
    """Return the sum of the known vectors."""
    vectors = [s.vector for s in scatters if s.law == "known"]
    return fsum(y for y, _ in vectors), fsum(z for _, z in vectors)


def root_mean_square(scatters: Sequence[Scatter]) -> float:
    """Return sqrt(E[r^2]) of a sum: random parts add by squares, known vectors as vectors first."""
    y, z = known_sum(scatters)
    return sqrt(fsum(mean_square(s) for s in scatters if s.law != "known") + y * y + z * z)
