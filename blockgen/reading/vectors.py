"""Vectors of three numbers, as plain tuples."""

from __future__ import annotations

import math

Vector = tuple[float, float, float]

PARALLEL = 1.5e-4
"""Angle below which two directions count as one, rad; some writers round directions to five digits."""


def plus(a: Vector, b: Vector, scale: float = 1.0) -> Vector:
    """Return a + scale * b."""
    return (a[0] + scale * b[0], a[1] + scale * b[1], a[2] + scale * b[2])


def minus(a: Vector, b: Vector) -> Vector:
    """Return a - b."""
    return (a[0] - b[0], a[1] - b[1], a[2] - b[2])


def times(a: Vector, scale: float) -> Vector:
    """Return scale * a."""
    return (a[0] * scale, a[1] * scale, a[2] * scale)


def dot(a: Vector, b: Vector) -> float:
    """Return the scalar product."""
    return a[0] * b[0] + a[1] * b[1] + a[2] * b[2]


def cross(a: Vector, b: Vector) -> Vector:
    """Return the vector product."""
    return (a[1] * b[2] - a[2] * b[1], a[2] * b[0] - a[0] * b[2], a[0] * b[1] - a[1] * b[0])


def length(a: Vector) -> float:
    """Return the length."""
    return math.sqrt(dot(a, a))


def unit(a: Vector) -> Vector:
    """Return the vector with length one; it must not be zero."""
    return times(a, 1.0 / length(a))


def square_to(a: Vector, direction: Vector) -> Vector:
    """Return what is left of a vector without its part along a unit direction."""
    return plus(a, direction, -dot(a, direction))


def any_square_to(direction: Vector) -> Vector:
    """Return a unit vector at right angles to a unit direction."""
    least = min(range(3), key=lambda i: abs(direction[i]))
    return unit(square_to(tuple(float(i == least) for i in range(3)), direction))  # type: ignore[arg-type]


def are_parallel(a: Vector, b: Vector) -> bool:
    """Tell whether two unit vectors have one direction, or opposite ones."""
    return length(cross(a, b)) < PARALLEL


def are_square(a: Vector, b: Vector) -> bool:
    """Tell whether two unit vectors are at right angles."""
    return abs(dot(a, b)) < PARALLEL
