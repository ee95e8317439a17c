"""Plane curves of a view: straight lines, arcs of circles and, as a last resort, chains of points; all in mm."""

from __future__ import annotations

import math
from dataclasses import dataclass
from itertools import pairwise

Place = tuple[float, float]
"""A point of a view: to the right, upwards, mm."""


@dataclass(frozen=True, slots=True)
class Segment:
    """A straight line from ``start`` to ``end``."""

    start: Place
    end: Place


@dataclass(frozen=True, slots=True)
class ArcCurve:
    """A part of a circle, counter-clockwise from ``start_deg`` to ``end_deg``; 0 and 360 make the whole circle.

    ``start_deg`` lies from 0 to below 360, ``end_deg`` above it, by 360 at most.
    """

    centre: Place
    radius: float
    start_deg: float
    end_deg: float


@dataclass(frozen=True, slots=True)
class Chain:
    """Points of a curve that is neither line nor circle, such as the one in which two cylinders meet.

    The curve lies within 0.005 mm of the chords. A closed curve ends at its first point.
    """

    points: tuple[Place, ...]


Curve = Segment | ArcCurve | Chain


def arc_point(arc: ArcCurve, deg: float) -> Place:
    """Return the point of an arc's circle at an angle in deg."""
    angle = math.radians(deg)
    return (arc.centre[0] + arc.radius * math.cos(angle), arc.centre[1] + arc.radius * math.sin(angle))


def length_of(curve: Curve) -> float:
    """Return the length of a curve, mm."""
    if isinstance(curve, Segment):
        return math.dist(curve.start, curve.end)
    if isinstance(curve, ArcCurve):
        return curve.radius * math.radians(curve.end_deg - curve.start_deg)
    return math.fsum(math.dist(*pair) for pair in pairwise(curve.points))
