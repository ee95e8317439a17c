"""Bessel functions J0 and J1 of real arguments, and the zeros of J0, without a numerical library.

Up to `_FAR` the midpoint rule on Bessel's integral: its integrand is periodic, so that the rule with M points over a
quarter turn errs by no more than J of order 4 M. Beyond it Hankel's expansion. Both are good to 1e-14.
"""

from __future__ import annotations

from functools import lru_cache
from math import cos, fsum, pi, sin, sqrt

_FAR = 25.0
_POINTS = 15
_SINES = tuple(sin(pi * (i + 0.5) / (2 * _POINTS)) for i in range(_POINTS))
_NEAR_POINTS = 6
_NEAR = 2.5
_NEAR_SINES = tuple(sin(pi * (i + 0.5) / (2 * _NEAR_POINTS)) for i in range(_NEAR_POINTS))


def _hankel_terms(order: int) -> tuple[float, ...]:
    """Return a_k of the expansion in 1/x, with the signs of the even and of the odd series."""
    terms, value = [], 1.0
    for k in range(16):
        terms.append(value * (-1) ** (k // 2))
        value *= (4 * order**2 - (2 * k + 1) ** 2) / (8 * (k + 1))
    return tuple(terms)


_FAR_0, _FAR_1 = _hankel_terms(0), _hankel_terms(1)


def _sines(x: float) -> tuple[float, ...]:
    return _NEAR_SINES if x < _NEAR else _SINES


def bessel_j0(x: float) -> float:
    """Return J0(x).

    Args:
        x: Argument, not negative.

    Source: J0(x) = 2/pi int_0^(pi/2) cos(x sin t) dt; Abramowitz and Stegun 9.1.18 and, far out, 9.2.5 (remembered).
    """
    if x > _FAR:
        return _far(x, _FAR_0, x - 0.25 * pi)
    sines = _sines(x)
    return fsum([cos(x * s) for s in sines]) / len(sines)


def bessel_j1(x: float) -> float:
    """Return J1(x).

    Args:
        x: Argument, not negative.

    Source: J1(x) = 2/pi int_0^(pi/2) sin(x sin t) sin t dt; as `bessel_j0`.
    """
    if x > _FAR:
        return _far(x, _FAR_1, x - 0.75 * pi)
    sines = _sines(x)
    return fsum([s * sin(x * s) for s in sines]) / len(sines)


def bessel_j0_j1(x: float) -> tuple[float, float]:
    """Return J0(x) and J1(x) together, which share their sines; x is not negative."""
    if x > _FAR:
        return _far_both(x)
    sines = _sines(x)
    zeroth = first = 0.0
    for s in sines:
        turn = x * s
        zeroth += cos(turn)
        first += s * sin(turn)
    return zeroth / len(sines), first / len(sines)


def _far_both(x: float) -> tuple[float, float]:
    """Return both by Hankel's expansion; the phase of J1 lags that of J0 by a quarter turn."""
    u = 1 / x
    v = u * u
    size, phase = sqrt(2 * u / pi), x - 0.25 * pi
    c, s = cos(phase), sin(phase)
    even_0, odd_0 = _series(_FAR_0, u, v)
    even_1, odd_1 = _series(_FAR_1, u, v)
    return size * (even_0 * c - odd_0 * s), size * (even_1 * s + odd_1 * c)


def _series(a: tuple[float, ...], u: float, v: float) -> tuple[float, float]:
    even = a[0] + v * (a[2] + v * (a[4] + v * (a[6] + v * (a[8] + v * (a[10] + v * a[12])))))
    odd = u * (a[1] + v * (a[3] + v * (a[5] + v * (a[7] + v * (a[9] + v * a[11])))))
    return even, odd


def _far(x: float, a: tuple[float, ...], phase: float) -> float:
    """Return sqrt(2/(pi x)) (P cos(phase) - Q sin(phase)), P and Q the even and the odd series in 1/x."""
    u = 1 / x
    even, odd = _series(a, u, u * u)
    return sqrt(2 * u / pi) * (even * cos(phase) - odd * sin(phase))


@lru_cache(maxsize=8192)
def zero_of_j0(number: int) -> tuple[float, float]:
    """Return the zero of J0 of a number counted from 1, and J1 there.

    Source: McMahon's expansion as the start (Abramowitz and Stegun 9.5.12, remembered), Newton's rule on it.
    """
    beta = (number - 0.25) * pi
    zero = beta + 1 / (8 * beta) - 124 / (3 * (8 * beta) ** 3)
    for _ in range(3):
        zero += bessel_j0(zero) / bessel_j1(zero)
    return zero, bessel_j1(zero)
