"""The endless line or whole circle on which a plane curve lies, and where such carriers cross. No CAD kernel.

A place on a carrier is a length in mm: along a line from the foot of the origin, along a circle counter-clockwise from
its rightmost point. So one tolerance does for both.
"""

from __future__ import annotations

import math
from dataclasses import dataclass

from blockgen.geometry.curves import ArcCurve, Curve, Place, Segment

SAME_PLACE = 1e-5
"""Distance below which two points of a view count as one, mm."""

_CELL = 1e-4
_DIRECTION_CELL = 1e-6
_UPRIGHT = 1e-8
_OFF = 0.1737  # no size on a drawing ends in these digits, so that rounding noise does not part alike values


@dataclass(frozen=True, slots=True)
class Line:
    """An endless line: a unit direction to the right (or straight up), and its distance to the left of the origin."""

    direction: Place
    offset: float

    @property
    def period(self) -> float:
        """Return the length after which places come again, mm."""
        return math.inf

    def place(self, point: Place) -> float:
        """Return the place of a point, or of the point nearest to it."""
        return point[0] * self.direction[0] + point[1] * self.direction[1]

    def at(self, place: float, aside: float = 0.0) -> Place:
        """Return the point at a place, moved to the left by ``aside`` mm."""
        (x, y), left = self.direction, self.offset + aside
        return (place * x - left * y, place * y + left * x)

    def key(self) -> tuple[int, ...]:
        """Return what is alike for lines that are one but for rounding."""
        return (*(_cell(v, _DIRECTION_CELL) for v in self.direction), _cell(self.offset, _CELL))

    def curve(self, low: float, high: float) -> Segment:
        """Return the part between two places."""
        return Segment(self.at(low), self.at(high))


@dataclass(frozen=True, slots=True)
class Circle:
    """A whole circle."""

    centre: Place
    radius: float

    @property
    def period(self) -> float:
        """Return the circumference, mm."""
        return 2 * math.pi * self.radius

    def place(self, point: Place) -> float:
        """Return the place of a point, from 0 to below the circumference."""
        angle = math.atan2(point[1] - self.centre[1], point[0] - self.centre[0])
        return self.radius * (angle % (2 * math.pi))

    def at(self, place: float, aside: float = 0.0) -> Place:
        """Return the point at a place, moved outwards by ``aside`` mm."""
        angle, radius = place / self.radius, self.radius + aside
        return (self.centre[0] + radius * math.cos(angle), self.centre[1] + radius * math.sin(angle))

    def key(self) -> tuple[int, ...]:
        """Return what is alike for circles that are one but for rounding."""
        return (*(_cell(v, _CELL) for v in (*self.centre, self.radius)), 0)

    def curve(self, low: float, high: float) -> ArcCurve:
        """Return the part between two places; the whole circle where they lie a circumference apart."""
        if high - low >= self.period - SAME_PLACE:
            return ArcCurve(self.centre, self.radius, 0.0, 360.0)
        start = math.degrees(low / self.radius) % 360.0
        return ArcCurve(self.centre, self.radius, start, start + math.degrees((high - low) / self.radius))


Carrier = Line | Circle
Span = tuple[float, float]


def _cell(value: float, width: float) -> int:
    return math.floor(value / width + _OFF)


def line_through(start: Place, end: Place) -> Line:
    """Return the line through two points, which must not be one."""
    length = math.dist(start, end)
    x, y = (end[0] - start[0]) / length, (end[1] - start[1]) / length
    x, y = (round(x), round(y)) if min(abs(x), abs(y)) < _UPRIGHT else (x, y)  # short pieces are turned by rounding
    if x < 0 or (x == 0 and y < 0):
        x, y = -x, -y
    return Line((x, y), start[1] * x - start[0] * y)


def carried(curve: Curve) -> tuple[Carrier, Span]:
    """Return the carrier of a line or arc, and the span of it that the curve covers.

    Raises:
        TypeError: the curve is a chain, which has no carrier.
    """
    if isinstance(curve, Segment):
        line = line_through(curve.start, curve.end)
        low, high = sorted((line.place(curve.start), line.place(curve.end)))
        return line, (low, high)
    if isinstance(curve, ArcCurve):
        low, high = (curve.radius * math.radians(deg) for deg in (curve.start_deg, curve.end_deg))
        return Circle(curve.centre, curve.radius), (low, high)
    raise TypeError("a chain lies on no single line or circle")


def crossings(first: Carrier, second: Carrier) -> list[Place]:
    """Return the points that two carriers share; none for parallel lines and for circles about one centre."""
    if isinstance(first, Line):
        return _of_lines(first, second) if isinstance(second, Line) else _of_line_and_circle(first, second)
    return _of_line_and_circle(second, first) if isinstance(second, Line) else _of_circles(first, second)


def _of_lines(first: Line, second: Line) -> list[Place]:
    (a, b), (c, d) = first.direction, second.direction
    across = a * d - b * c
    if abs(across) < _DIRECTION_CELL:
        return []
    return [first.at((first.offset * (a * c + b * d) - second.offset) / across)]


def _of_line_and_circle(line: Line, circle: Circle) -> list[Place]:
    middle = line.place(circle.centre)
    distance = math.dist(line.at(middle), circle.centre)
    return [line.at(middle + half) for half in _halves(circle.radius, distance)]


def _of_circles(first: Circle, second: Circle) -> list[Place]:
    apart = math.dist(first.centre, second.centre)
    if apart < SAME_PLACE:
        return []
    along = (apart * apart + first.radius**2 - second.radius**2) / (2 * apart)
    x, y = ((b - a) / apart for a, b in zip(first.centre, second.centre, strict=True))
    foot = (first.centre[0] + along * x, first.centre[1] + along * y)
    return [(foot[0] - half * y, foot[1] + half * x) for half in _halves(first.radius, abs(along))]


def _halves(radius: float, distance: float) -> tuple[float, ...]:
    """Return half the chord at a distance from the centre, both ways; one 0 where the line just touches."""
    if distance > radius + SAME_PLACE:
        return ()
    half = math.sqrt(max(0.0, radius * radius - distance * distance))
    return (0.0,) if half < SAME_PLACE else (-half, half)
