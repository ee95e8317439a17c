"""Plain arithmetic on the curves of a view, for tests: distance of a point, points along a curve."""

import math
from itertools import pairwise

from blockgen.geometry.curves import ArcCurve, Segment, arc_point


def distance(curve, point):
    """Return the distance of a point from a curve, mm."""
    if isinstance(curve, Segment):
        return from_line(curve.start, curve.end, point)
    if isinstance(curve, ArcCurve):
        return _from_arc(curve, point)
    return min(from_line(a, b, point) for a, b in pairwise(curve.points))


def from_line(start, end, point):
    """Return the distance of a point from a straight line between two points, mm."""
    x, y = end[0] - start[0], end[1] - start[1]
    share = ((point[0] - start[0]) * x + (point[1] - start[1]) * y) / (x * x + y * y)
    share = max(0.0, min(1.0, share))
    return math.dist(point, (start[0] + share * x, start[1] + share * y))


def _from_arc(arc, point):
    angle = math.degrees(math.atan2(point[1] - arc.centre[1], point[0] - arc.centre[0]))
    if (angle - arc.start_deg) % 360 <= arc.end_deg - arc.start_deg:
        return abs(math.dist(point, arc.centre) - arc.radius)
    return min(math.dist(point, arc_point(arc, deg)) for deg in (arc.start_deg, arc.end_deg))


def farthest(points, curves):
    """Return how far the points lie from the curves, each from the nearest, mm."""
    return max((min((distance(c, p) for c in curves), default=math.inf) for p in points), default=0.0)


def along(curve, count=8):
    """Return points inside a curve: of a chain the middles of its chords."""
    shares = [(i + 0.5) / count for i in range(count)]
    if isinstance(curve, Segment):
        return [tuple(a + s * (b - a) for a, b in zip(curve.start, curve.end, strict=True)) for s in shares]
    if isinstance(curve, ArcCurve):
        return [arc_point(curve, curve.start_deg + s * (curve.end_deg - curve.start_deg)) for s in shares]
    return [tuple((p + q) / 2 for p, q in zip(a, b, strict=True)) for a, b in pairwise(curve.points)]
