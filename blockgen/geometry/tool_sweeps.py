"""Tools as the solids that they sweep: a head drawn out, a key pushed in, its arm swung, a spanner put on."""

from __future__ import annotations

import math
from dataclasses import dataclass

from OCP.BRepAlgoAPI import BRepAlgoAPI_Cut
from OCP.BRepBuilderAPI import BRepBuilderAPI_MakeFace
from OCP.BRepPrimAPI import BRepPrimAPI_MakeCylinder, BRepPrimAPI_MakePrism
from OCP.gp import gp_Ax2, gp_Dir, gp_Pnt, gp_Vec
from OCP.TopoDS import TopoDS_Shape

from blockgen.geometry.solid_part import SolidPart, solid_part
from blockgen.geometry.stand_ins.shapes import closed
from blockgen.plan import Point

SLACK = 0.01
"""By how much tools are smaller than their sizes, so that a tool that just passes is not taken for blocked, mm."""


@dataclass(frozen=True, slots=True)
class Axis:
    """A point and a unit vector; ``across`` is a unit vector square to it."""

    origin: Point
    up: Point
    across: Point

    def at(self, along: float, sideways: float = 0.0, beside: float = 0.0) -> Point:
        """Return the point ``along`` the axis, ``sideways`` along across, ``beside`` along the third direction."""
        third = cross(self.up, self.across)
        x, y, z = (
            o + along * u + sideways * a + beside * t
            for o, u, a, t in zip(self.origin, self.up, self.across, third, strict=True)
        )
        return (x, y, z)


def cross(first: Point, second: Point) -> Point:
    """Return the vector product."""
    (a, b, c), (d, e, f) = first, second
    return (b * f - c * e, c * d - a * f, a * e - b * d)


def axis_along(origin: Point, up: Point) -> Axis:
    """Return an axis; across lies along y, or along x for an axis in the plane square to the shaft."""
    return Axis(origin, up, (0.0, 1.0, 0.0) if abs(up[0]) > 0.5 else (1.0, 0.0, 0.0))


def rod(axis: Axis, start: float, end: float, radius: float) -> SolidPart:
    """Return a cylinder about an axis between two stations, mm."""
    place = gp_Ax2(gp_Pnt(*axis.at(start)), gp_Dir(*axis.up))
    return solid_part("tool", BRepPrimAPI_MakeCylinder(place, radius - SLACK, end - start).Shape())


def tube(axis: Axis, start: float, end: float, radii: tuple[float, float]) -> SolidPart:
    """Return a tube about an axis between two stations, inner and outer radius, mm."""
    outer = rod(axis, start, end, radii[1]).shape
    inner = rod(axis, start - 1.0, end + 1.0, radii[0] + 2 * SLACK).shape
    return solid_part("tool", BRepAlgoAPI_Cut(outer, inner).Shape())


def swung(axis: Axis, levels: tuple[float, float], arm: tuple[float, float], turn: tuple[float, float]) -> SolidPart:
    """Return what an arm square to the axis sweeps between two directions.

    Args:
        axis: Axis about which it is swung.
        levels: Lower and upper side of the arm along the axis, mm.
        arm: Length from the axis and half width, mm.
        turn: First and last direction, rad, from across; less than half a turn apart.
    """
    length, half = arm[0], arm[1] - SLACK
    first, last = turn
    reach = length / math.cos((last - first) / 2)
    corners = [
        _corner(first, 0.0, -half), _corner(first, length, -half), _corner((first + last) / 2, reach, 0.0),
        _corner(last, length, half), _corner(last, 0.0, half),
    ]  # fmt: skip
    low, high = levels[0] + SLACK, levels[1] - SLACK
    outline = closed(gp_Pnt(*axis.at(low, x, y)) for x, y in corners)
    face = BRepBuilderAPI_MakeFace(outline, True).Face()
    height = gp_Vec(*(u * (high - low) for u in axis.up))
    return solid_part("tool", _prism(face, height))


def _prism(face: TopoDS_Shape, height: gp_Vec) -> TopoDS_Shape:
    return BRepPrimAPI_MakePrism(face, height).Shape()


def _corner(direction: float, along: float, beside: float) -> tuple[float, float]:
    """Return a point of the arm's plane: along a direction and to its left, mm."""
    c, s = math.cos(direction), math.sin(direction)
    return (along * c - beside * s, along * s + beside * c)
