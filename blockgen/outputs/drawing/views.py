"""Views on the sheet: where each stands and how its curves get there."""

from __future__ import annotations

from collections.abc import Iterable, Iterator
from dataclasses import dataclass
from itertools import pairwise

from blockgen.geometry.curves import ArcCurve, Curve, Segment
from blockgen.outputs.drawing.box import Box
from blockgen.outputs.drawing.dashes import dashed
from blockgen.outputs.drawing.strokes import DASHES, Arc, Line, Pen, Point, Stroke

Point3 = tuple[float, float, float]

AXES: dict[str, tuple[Point3, Point3]] = {
    "front": ((1.0, 0.0, 0.0), (0.0, 0.0, 1.0)),
    "section": ((1.0, 0.0, 0.0), (0.0, 0.0, 1.0)),
    "motor_end": ((0.0, 1.0, 0.0), (0.0, 0.0, 1.0)),
    "bearing_end": ((0.0, -1.0, 0.0), (0.0, 0.0, 1.0)),
    "top": ((1.0, 0.0, 0.0), (0.0, 1.0, 0.0)),
    "bottom": ((1.0, 0.0, 0.0), (0.0, -1.0, 0.0)),
}
"""Directions to the right and upwards of each view in the block's coordinates."""


@dataclass(frozen=True, slots=True)
class View:
    """One view.

    Args:
        name: front, section, motor_end, bearing_end, top or bottom.
        corner: Lower left corner of its outline on the sheet, mm.
        low: Least coordinates of the outline in the view, true mm.
        size: Width and height of the outline, true mm.
        scale: Size on paper over true size.
    """

    name: str
    corner: Point
    low: Point
    size: Point
    scale: float

    @property
    def box(self) -> Box:
        """Outline on the sheet."""
        (x, y), (w, h) = self.corner, self.size
        return Box(x, y, x + w * self.scale, y + h * self.scale)

    def at(self, u: float, v: float) -> Point:
        """Return where a point of the view lies on the sheet."""
        return (self.corner[0] + (u - self.low[0]) * self.scale, self.corner[1] + (v - self.low[1]) * self.scale)

    def point(self, x: float, y: float, z: float) -> Point:
        """Return where a point of the block lies on the sheet."""
        return self.at(*self.flat(x, y, z))

    def flat(self, x: float, y: float, z: float) -> Point:
        """Return a point of the block in the view's own coordinates, true mm."""
        right, up = AXES[self.name]
        return x * right[0] + y * right[1] + z * right[2], x * up[0] + y * up[1] + z * up[2]

    def strokes(self, curves: Iterable[Curve], pen: Pen) -> tuple[Stroke, ...]:
        """Return curves of the view as strokes."""
        return tuple(stroke for curve in curves for stroke in self._stroke(curve, pen))

    def _stroke(self, curve: Curve, pen: Pen) -> Iterator[Line | Arc]:
        if isinstance(curve, Segment):
            yield Line(self.at(*curve.start), self.at(*curve.end), pen)
        elif isinstance(curve, ArcCurve):
            yield Arc(self.at(*curve.centre), curve.radius * self.scale, curve.start_deg, curve.end_deg, pen)
        else:
            points = [self.at(*point) for point in curve.points]
            pieces = dashed(points, DASHES[pen]) if pen in DASHES else pairwise(points)
            yield from (Line(a, b, pen) for a, b in pieces)


def extent(name: str, length: float, width: float, height: float) -> tuple[Point, Point]:
    """Return least coordinates and size of the block's outline in a view, true mm."""
    if name in {"front", "section"}:
        return (0.0, 0.0), (length, height)
    if name in {"motor_end", "bearing_end"}:
        return (-width / 2, 0.0), (width, height)
    return (0.0, -width / 2), (length, width)
