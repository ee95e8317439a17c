"""Tools for turned cavities: the plan's profile revolved about the feature's axis, each face named after its piece."""

from __future__ import annotations

import math

from OCP.BRepBuilderAPI import BRepBuilderAPI_MakeFace, BRepBuilderAPI_MakePolygon
from OCP.BRepPrimAPI import BRepPrimAPI_MakeRevol
from OCP.gp import gp_Ax1, gp_Dir, gp_Pnt
from OCP.TopoDS import TopoDS_Shape, TopoDS_Wire

from blockgen.geometry.kernel import Named, faces_of
from blockgen.plan import Feature, Point, Segment

MOUTH_OVERSHOOT = 1.0
"""How far a tool stands out of the face in which its mouth lies, mm: coplanar faces are left to nobody."""

Station = tuple[str, float, float]


def turned_tool(feature: Feature, run_out: float) -> tuple[TopoDS_Shape, list[Named]]:
    """Return the tool of a turned cavity and its named faces.

    Args:
        feature: Feature with a profile.
        run_out: How far the tool goes on past the far end, mm; 0 for a blind cavity.

    Returns:
        The solid tool, and its faces as ``<feature>.<part>``; the end of a blind cavity without a point is
        ``<feature>.bottom``, what the tool cuts past its far end is ``<feature>.run_out``.
    """
    stations = _stations(feature, run_out)
    outline = _closed_wire([_point(feature, along, radius) for _, along, radius in stations])
    shape = BRepPrimAPI_MakeRevol(BRepBuilderAPI_MakeFace(outline, True).Face(), _axis(feature)).Shape()
    # The kernel's history knows no flat rings, but it turns the edges one by one; the last one lies on the axis.
    pieces = zip(stations[:-1], faces_of(shape), strict=True)
    return shape, [(feature.face_id(part), face) for (part, _, _), face in pieces if part]


def _stations(feature: Feature, run_out: float) -> list[Station]:
    """Return the corners of the half section: the name is that of the piece that starts there; no name, no face."""
    first, last = feature.profile[0], feature.profile[-1]
    # A mouth piece that is a cylinder is one face with its overshoot; a cone must keep its own edge.
    straight = first.start_radius == first.end_radius
    pieces = [(s.part, s.start, s.start_radius) for s in feature.profile]
    mouth = (first.part if straight else "", -MOUTH_OVERSHOOT, first.start_radius)
    return [("", -MOUTH_OVERSHOOT, 0.0), mouth, *(pieces[1:] if straight else pieces), *_far_stations(last, run_out)]


def _far_stations(last: Segment, run_out: float) -> list[Station]:
    """Return the corners from the end of the last piece to the axis."""
    end, radius = last.end + run_out, last.end_radius
    if radius == 0:
        return [("", end, 0.0)]
    if run_out == 0:
        return [("bottom", end, radius), ("", end, 0.0)]
    onwards = [] if last.start_radius == radius else [("run_out", last.end, radius)]
    return [*onwards, ("run_out", end, radius), ("", end, 0.0)]


def _point(feature: Feature, along: float, radius: float) -> gp_Pnt:
    across = across_axis(feature.axis)
    return gp_Pnt(*(p + along * a + radius * c for p, a, c in zip(feature.position, feature.axis, across, strict=True)))


def across_axis(axis: Point) -> Point:
    """Return a unit vector across the axis in which the seam of a turned face lies.

    It stands at an odd angle, so that a seam does not run along an edge of a window wall by chance.
    """
    x, y, z = axis
    first = (0.0, 1.0, 0.0) if abs(y) < 0.5 else (0.0, 0.0, 1.0)
    second = (y * first[2] - z * first[1], z * first[0] - x * first[2], x * first[1] - y * first[0])
    turn = math.radians(37.0)
    return (
        math.cos(turn) * first[0] + math.sin(turn) * second[0],
        math.cos(turn) * first[1] + math.sin(turn) * second[1],
        math.cos(turn) * first[2] + math.sin(turn) * second[2],
    )


def _closed_wire(points: list[gp_Pnt]) -> TopoDS_Wire:
    maker = BRepBuilderAPI_MakePolygon()
    for point in points:
        maker.Add(point)
    maker.Close()
    return maker.Wire()


def _axis(feature: Feature) -> gp_Ax1:
    return gp_Ax1(gp_Pnt(*feature.position), gp_Dir(*feature.axis))
