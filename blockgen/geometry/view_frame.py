"""The directions from which the block is drawn, and coordinates of a view."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass

from blockgen.geometry.curves import Place
from blockgen.plan import Point


@dataclass(frozen=True, slots=True)
class ViewFrame:
    """A direction of view, by the unit vectors to its right and upwards; the origin is the block's."""

    right: Point
    up: Point

    @property
    def back(self) -> Point:
        """Return the unit vector towards the viewer."""
        (a, b, c), (d, e, f) = self.right, self.up
        return (b * f - c * e, c * d - a * f, a * e - b * d)

    def place(self, point: Point) -> Place:
        """Return a point's coordinates in the view, mm."""
        return (dot(point, self.right), dot(point, self.up))


VIEWS: Mapping[str, ViewFrame] = {
    "front": ViewFrame((1.0, 0.0, 0.0), (0.0, 0.0, 1.0)),
    "motor_end": ViewFrame((0.0, 1.0, 0.0), (0.0, 0.0, 1.0)),
    "bearing_end": ViewFrame((0.0, -1.0, 0.0), (0.0, 0.0, 1.0)),
    "top": ViewFrame((1.0, 0.0, 0.0), (0.0, 1.0, 0.0)),
    "bottom": ViewFrame((1.0, 0.0, 0.0), (0.0, -1.0, 0.0)),
}
"""The views by name: front looks along +y, motor_end along -x, bearing_end along +x, top along -z, bottom along +z."""


def dot(first: Point, second: Point) -> float:
    """Return the scalar product."""
    return first[0] * second[0] + first[1] * second[1] + first[2] * second[2]
