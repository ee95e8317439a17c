"""Simple solids for stand-ins: prisms along x, turned bodies, cuts and joins that leave one solid."""

from __future__ import annotations

from collections.abc import Iterable, Sequence

from OCP.BRepAlgoAPI import BRepAlgoAPI_BooleanOperation, BRepAlgoAPI_Cut, BRepAlgoAPI_Fuse
from OCP.BRepBuilderAPI import (
    BRepBuilderAPI_MakeEdge,
    BRepBuilderAPI_MakeFace,
    BRepBuilderAPI_MakePolygon,
    BRepBuilderAPI_MakeWire,
)
from OCP.BRepPrimAPI import BRepPrimAPI_MakeBox, BRepPrimAPI_MakeCylinder, BRepPrimAPI_MakePrism, BRepPrimAPI_MakeRevol
from OCP.gp import gp_Ax1, gp_Ax2, gp_Ax3, gp_Circ, gp_Dir, gp_Pnt, gp_Trsf, gp_Vec
from OCP.TopoDS import TopoDS, TopoDS_Shape, TopoDS_Solid, TopoDS_Wire

from blockgen.errors import KernelError
from blockgen.geometry.kernel import shape_list, solids_of
from blockgen.plan import Point

Station = tuple[float, float]
"""Distance along the axis and radius, mm."""

X: Point = (1.0, 0.0, 0.0)
Z: Point = (0.0, 0.0, 1.0)


def circle(radius: float, along: float = 0.0, place: tuple[float, float] = (0.0, 0.0)) -> TopoDS_Wire:
    """Return a circle in the plane x = along about (y, z), mm."""
    axis = gp_Ax2(gp_Pnt(along, *place), gp_Dir(*X), gp_Dir(0.0, 1.0, 0.0))
    return BRepBuilderAPI_MakeWire(BRepBuilderAPI_MakeEdge(gp_Circ(axis, radius)).Edge()).Wire()


def polygon(corners: Iterable[tuple[float, float]], along: float = 0.0) -> TopoDS_Wire:
    """Return a closed polygon of corners (y, z) in the plane x = along, mm."""
    return closed(gp_Pnt(along, y, z) for y, z in corners)


def rectangle(width: float, height: float, along: float = 0.0) -> TopoDS_Wire:
    """Return a rectangle about the axis in the plane x = along: width in y, height in z, mm."""
    y, z = width / 2, height / 2
    return polygon(((y, z), (-y, z), (-y, -z), (y, -z)), along)


def closed(points: Iterable[gp_Pnt]) -> TopoDS_Wire:
    """Return the closed wire through the points."""
    maker = BRepBuilderAPI_MakePolygon()
    for point in points:
        maker.Add(point)
    maker.Close()
    return maker.Wire()


def prism(outline: TopoDS_Wire, length: float, opening: TopoDS_Wire | None = None) -> TopoDS_Solid:
    """Return the outline drawn out along +x, with an opening right through, mm."""
    maker = BRepBuilderAPI_MakeFace(outline, True)
    if opening is not None:
        maker.Add(TopoDS.Wire_s(opening.Reversed()))
    return solids_of(BRepPrimAPI_MakePrism(maker.Face(), gp_Vec(length, 0.0, 0.0)).Shape())[0]


def box(low: Point, high: Point) -> TopoDS_Solid:
    """Return the box between two corners, mm."""
    return BRepPrimAPI_MakeBox(gp_Pnt(*low), gp_Pnt(*high)).Solid()


def rod(start: Point, direction: Point, radius: float, length: float) -> TopoDS_Shape:
    """Return a cylinder, mm."""
    return BRepPrimAPI_MakeCylinder(gp_Ax2(gp_Pnt(*start), gp_Dir(*direction)), radius, length).Shape()


def turned(outline: Sequence[Station], axis: Point = X) -> TopoDS_Solid:
    """Return the body of a closed half section turned about an axis through the origin.

    Args:
        outline: Corners in order, mm; equal neighbours count once.
        axis: x or z axis.
    """
    across = (0.0, 0.0, 1.0) if axis == X else (1.0, 0.0, 0.0)
    corners = [c for i, c in enumerate(outline) if c != outline[i - 1]]
    points = [gp_Pnt(*(a * along + r * radius for a, r in zip(axis, across, strict=True))) for along, radius in corners]
    face = BRepBuilderAPI_MakeFace(closed(points), True).Face()
    shape = BRepPrimAPI_MakeRevol(face, gp_Ax1(gp_Pnt(0.0, 0.0, 0.0), gp_Dir(*axis))).Shape()
    return solids_of(shape)[0]


def joined(first: TopoDS_Shape, others: Sequence[TopoDS_Shape]) -> TopoDS_Solid:
    """Return the shapes as one solid; where they are flush, the joint stays to be seen.

    Raises:
        KernelError: they do not make one solid.
    """
    return _one(BRepAlgoAPI_Fuse(), first, others)


def cut(first: TopoDS_Shape, tools: Sequence[TopoDS_Shape]) -> TopoDS_Solid:
    """Return a shape less the tools.

    Raises:
        KernelError: not one solid is left.
    """
    return _one(BRepAlgoAPI_Cut(), first, tools) if tools else solids_of(first)[0]


def _one(operation: BRepAlgoAPI_BooleanOperation, first: TopoDS_Shape, others: Sequence[TopoDS_Shape]) -> TopoDS_Solid:
    operation.SetArguments(shape_list([first]))
    operation.SetTools(shape_list(others))
    operation.SetUseOBB(True)
    operation.Build()
    solids = solids_of(operation.Shape()) if operation.IsDone() else []
    if len(solids) != 1:
        raise KernelError(f"a stand-in came out as {len(solids)} solids")
    return solids[0]


def moved(origin: Point) -> gp_Trsf:
    """Return the shift from the origin to a point, mm."""
    return standing(origin, Z, X)


def standing(origin: Point, up: Point, along: Point) -> gp_Trsf:
    """Return the transformation that brings origin, z and x axis to a point and two unit vectors."""
    placed = gp_Trsf()
    placed.SetDisplacement(gp_Ax3(), gp_Ax3(gp_Pnt(*origin), gp_Dir(*up), gp_Dir(*along)))
    return placed
