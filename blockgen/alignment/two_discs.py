"""The law of the sum of two vectors, each uniform in a disc: a series would need hundreds of waves for so few terms.

The length of the first vector runs over its disc; for each, the share of the second disc that lies within the radius
asked for is the lens of two circles. What is left is one smooth integral.
"""

from __future__ import annotations

from math import acos, cos, fsum, pi, sqrt

_POINTS = 32


def _fejer(count: int) -> tuple[tuple[float, float], ...]:
    """Return points and weights of Fejer's first rule on -1..1, which is exact for polynomials below ``count``."""
    angles = [pi * (i + 0.5) / count for i in range(count)]
    halves = range(1, count // 2 + 1)
    sums = [fsum(cos(2 * k * a) / (4 * k * k - 1) for k in halves) for a in angles]
    return tuple((-cos(a), 2 / count * (1 - 2 * total)) for a, total in zip(angles, sums, strict=True))


_RULE = _fejer(_POINTS)


def lens_share(distance: float, disc: float, radius: float) -> float:
    """Return the share of a disc that lies within a circle.

    Args:
        distance: Of the disc's centre from the circle's, mm.
        disc: Radius of the disc, mm.
        radius: Radius of the circle, mm.

    Source: area common to two circles, elementary geometry.
    """
    if radius >= distance + disc:
        return 1.0
    if distance >= radius + disc:
        return 0.0
    if disc >= distance + radius:
        return (radius / disc) ** 2
    of_disc = acos(_clipped((distance**2 + disc**2 - radius**2) / (2 * distance * disc)))
    of_circle = acos(_clipped((distance**2 + radius**2 - disc**2) / (2 * distance * radius)))
    kite = (
        (-distance + disc + radius)
        * (distance + disc - radius)
        * (distance - disc + radius)
        * (distance + disc + radius)
    )
    area = disc**2 * of_disc + radius**2 * of_circle - 0.5 * sqrt(max(kite, 0.0))
    return area / (pi * disc**2)


def _clipped(cosine: float) -> float:
    return min(1.0, max(-1.0, cosine))


def within_two_discs(first: float, second: float, radius: float) -> float:
    """Return the probability that the sum of two vectors is not longer than a radius.

    Args:
        first: Radius of the first disc, mm.
        second: Radius of the second disc, mm.
        radius: mm.
    """
    if radius <= 0:
        return 0.0
    wide, narrow = max(first, second), min(first, second)
    start, end = min(abs(radius - narrow), wide), min(wide, radius + narrow)
    inner = (start / wide) ** 2 * min(1.0, (radius / narrow) ** 2)
    middle, half = (start + end) / 2, (end - start) / 2
    total = 0.0
    for point, weight in _RULE:
        length = middle + half * point
        total += weight * length * lens_share(length, narrow, radius)
    return min(1.0, inner + 2 / wide**2 * total * half)
