"""What each law makes of a plane wave: characteristic functions, and how fast they die out."""

from __future__ import annotations

from functools import lru_cache
from itertools import pairwise
from math import ceil, cos, exp, fsum, pi, sqrt

from blockgen.alignment.bessel import bessel_j0, bessel_j1
from blockgen.alignment.scatter import Scatter

_HAIR = 1e-12


def transform(scatter: Scatter, wave: float) -> float:
    """Return E[exp(i k.r)] of an isotropic scatter or of a known vector averaged over directions.

    Args:
        scatter: disc, gaussian, clearance or known.
        wave: Wave number k, 1/mm (1/rad for an angle).

    Source: disc 2 J1(ka)/(ka); Gaussian exp(-k^2 sigma^2/2); a ring of radius r or a vector of length r: J0(k r).
    """
    if scatter.law == "disc":
        x = wave * scatter.size
        return 2 * bessel_j1(x) / x if x > _HAIR else 1.0
    if scatter.law == "gaussian":
        return exp(-0.5 * (wave * scatter.size) ** 2)
    if scatter.law == "clearance":
        rings = rings_of(scatter, ring_points(scatter, wave))
        return fsum([weight * bessel_j0(wave * radius) for radius, weight in rings])
    y, z = scatter.vector
    return bessel_j0(wave * sqrt(y * y + z * z))


def envelope(scatter: Scatter, wave: float) -> float:
    """Return about how great the transform can still be at this wave number and beyond; a guide for cutting sums."""
    if scatter.law == "disc":
        x = wave * scatter.size
        return 1.6 * x**-1.5 if x > 1.37 else 1.0
    if scatter.law.startswith("gaussian"):
        return exp(-0.5 * (wave * scatter.size) ** 2)
    if scatter.law == "clearance" and scatter.high > 0:
        tight = clearance_share(scatter, 0.0)
        return tight + (1 - tight) * _clearance_envelope(scatter, wave)
    return 1.0


def _clearance_envelope(scatter: Scatter, wave: float) -> float:
    x = wave * scatter.high / 2
    ring = min(1.0, 1.2 / sqrt(x)) if x > 0 else 1.0
    for width in (scatter.hole_tolerance, scatter.shaft_tolerance):
        ring *= min(1.0, 4 / (wave * width)) if wave * width > 0 else 1.0
    return ring


def ring_points(scatter: Scatter, wave: float) -> int:
    """Return how many points a stretch of clearances needs so that the wave is followed to 1e-10."""
    half = max(scatter.hole_tolerance, scatter.shaft_tolerance) / 4
    return min(4 + ceil(1.2 * wave * half), 48)


def clearance_share(scatter: Scatter, diametral: float) -> float:
    """Return the probability that a diametral clearance is not greater than a value.

    Source: sum of two independent uniform sizes (trapezoidal distribution).
    """
    c, hole, shaft = diametral - scatter.low, scatter.hole_tolerance, scatter.shaft_tolerance
    if diametral >= scatter.high - _HAIR:
        return 1.0
    if min(hole, shaft) > _HAIR:
        return fsum(s * max(x, 0.0) ** 2 for x, s in _corners(c, hole, shaft)) / (2 * hole * shaft)
    return max(c, 0.0) / max(hole + shaft, _HAIR)


def _corners(c: float, hole: float, shaft: float) -> tuple[tuple[float, int], ...]:
    return (c, 1), (c - hole, -1), (c - shaft, -1), (c - hole - shaft, 1)


def _density(scatter: Scatter, diametral: float) -> float:
    hole, shaft = scatter.hole_tolerance, scatter.shaft_tolerance
    if min(hole, shaft) <= _HAIR:
        return 1 / (hole + shaft)
    return fsum(s * max(x, 0.0) for x, s in _corners(diametral - scatter.low, hole, shaft)) / (hole * shaft)


@lru_cache(maxsize=512)
def rings_of(scatter: Scatter, points: int) -> tuple[tuple[float, float], ...]:
    """Return radii and weights of the rings that stand for a clearance; a tight fit is a ring of radius 0."""
    low, high, hole, shaft = scatter.low, scatter.high, scatter.hole_tolerance, scatter.shaft_tolerance
    if high <= 0:
        return ((0.0, 1.0),)
    if high - low <= _HAIR:
        return ((high / 2, 1.0),)
    tight = clearance_share(scatter, 0.0)
    rings = [(0.0, tight)] if tight > 0 else []
    breaks = sorted({max(c, 0.0) for c in (low, low + hole, low + shaft, high)})
    for start, end in pairwise(breaks):
        rings += _stretch(scatter, start, end, points)
    return tuple(rings)


def _stretch(scatter: Scatter, start: float, end: float, points: int) -> list[tuple[float, float]]:
    middle, half = (start + end) / 2, (end - start) / 2
    places = [(middle + half * x, w) for x, w in legendre_points(points)]
    return [(c / 2, half * w * _density(scatter, c)) for c, w in places]


@lru_cache(maxsize=64)
def legendre_points(count: int) -> tuple[tuple[float, float], ...]:
    """Return abscissas in (-1, 1) and weights of Gauss-Legendre integration.

    Source: roots of the Legendre polynomial by Newton's rule (Abramowitz and Stegun 25.4.29, remembered).
    """
    points = []
    for i in range(count):
        x = cos(pi * (i + 0.75) / (count + 0.5))
        for _ in range(6):
            value, slope = _legendre(count, x)
            x -= value / slope
        points.append((x, 2 / ((1 - x * x) * _legendre(count, x)[1] ** 2)))
    return tuple(points)


def _legendre(count: int, x: float) -> tuple[float, float]:
    before, value = 1.0, x
    for n in range(2, count + 1):
        before, value = value, ((2 * n - 1) * x * value - (n - 1) * before) / n
    return value, count * (x * value - before) / (x * x - 1)
