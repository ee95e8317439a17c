"""The block cut open along a plane square to y: what lies behind it, and the areas that were cut."""

from __future__ import annotations

import math
from collections.abc import Iterator
from dataclasses import dataclass
from itertools import pairwise

from OCP.BRepAdaptor import BRepAdaptor_Curve
from OCP.BRepAlgoAPI import BRepAlgoAPI_Common
from OCP.BRepPrimAPI import BRepPrimAPI_MakeBox
from OCP.BRepTools import BRepTools, BRepTools_WireExplorer
from OCP.GeomAbs import GeomAbs_Circle, GeomAbs_Line
from OCP.gp import gp_Pnt
from OCP.TopAbs import TopAbs_REVERSED, TopAbs_WIRE
from OCP.TopoDS import TopoDS, TopoDS_Edge, TopoDS_Face, TopoDS_Shape, TopoDS_Wire

from blockgen.errors import KernelError
from blockgen.geometry.block import BlockSolid
from blockgen.geometry.chords import chord_points
from blockgen.geometry.curves import ArcCurve, Place, Segment
from blockgen.geometry.kernel import bounding_box, faces_of, indexed, kernel_errors, shape_list, solids_of
from blockgen.geometry.loops import Loop, smoothed_loop
from blockgen.geometry.projection import Projection, project_shape
from blockgen.geometry.view_frame import VIEWS

_ON_PLANE = 1e-6
_ROOM = 1.0  # how far the half space stands out of the block, mm

Area = tuple[Loop, ...]


@dataclass(frozen=True, slots=True)
class Section:
    """What is seen along +y when the block in front of the plane is taken away.

    Args:
        projection: Edges of the half that stays, in the coordinates of the front view.
        cut_areas: Areas for hatching: each the loop of its outside, then those of its holes. A loop runs on from piece
            to piece and closes, the outside counter-clockwise, holes clockwise; a clockwise arc is passed from its end
            to its start, since every arc is stated counter-clockwise.
    """

    projection: Projection
    cut_areas: tuple[Area, ...]


def section(block: BlockSolid, y: float = 0.0) -> Section:
    """Return the half of the block behind a plane, as seen along +y.

    Args:
        block: Solid of the block.
        y: Where the plane lies, mm; what lies at a greater y stays.

    Raises:
        KernelError: the plane misses the block, or the half has a face that cannot be drawn.
    """
    with kernel_errors("the kernel gave up while it cut the block open"):
        half = half_behind(block, y)
        areas = [_area(face) for face in faces_of(half) if _lies_at(face, y)]
    return Section(project_shape(half, VIEWS["front"]), tuple(sorted(areas, key=repr)))


def half_behind(block: BlockSolid, y: float) -> TopoDS_Shape:
    """Return the part of the block at a greater y.

    Raises:
        KernelError: the plane misses the block.
    """
    low_x, low_y, low_z, high_x, high_y, high_z = bounding_box(block.shape)
    if not low_y + _ON_PLANE < y < high_y - _ON_PLANE:
        raise KernelError(f"a section at y = {y:g} mm misses the block, which lies from {low_y:g} to {high_y:g} mm")
    low = gp_Pnt(low_x - _ROOM, y, low_z - _ROOM)
    space = BRepPrimAPI_MakeBox(low, gp_Pnt(high_x + _ROOM, high_y + _ROOM, high_z + _ROOM)).Solid()
    common = BRepAlgoAPI_Common()
    common.SetArguments(shape_list([block.shape]))
    common.SetTools(shape_list([space]))
    common.Build()
    if not common.IsDone() or not solids_of(common.Shape()):
        raise KernelError(f"the kernel could not cut the block open at y = {y:g} mm")
    return common.Shape()


def _lies_at(face: TopoDS_Face, y: float) -> bool:
    box = bounding_box(face)
    return abs(box[1] - y) < _ON_PLANE and abs(box[4] - y) < _ON_PLANE


def _area(face: TopoDS_Face) -> Area:
    outer = BRepTools.OuterWire_s(face)
    found = indexed(face, TopAbs_WIRE)
    wires = [TopoDS.Wire_s(found.FindKey(i)) for i in range(1, found.Extent() + 1)]
    holes = [_loop(wire, face, False) for wire in wires if not wire.IsSame(outer)]
    return (_loop(outer, face, True), *sorted(holes, key=repr))


def _loop(wire: TopoDS_Wire, face: TopoDS_Face, counter_clockwise: bool) -> Loop:
    explorer = BRepTools_WireExplorer(wire, face)
    pieces: list[tuple[Segment | ArcCurve, bool]] = []
    while explorer.More():
        pieces.extend(_pieces(explorer.Current()))
        explorer.Next()
    return smoothed_loop(pieces, counter_clockwise)


def _pieces(edge: TopoDS_Edge) -> Iterator[tuple[Segment | ArcCurve, bool]]:
    """Yield the pieces of an edge in the sense of its wire, and whether each is passed from its end to its start."""
    curve = BRepAdaptor_Curve(edge)
    first, last = curve.FirstParameter(), curve.LastParameter()
    turned = edge.Orientation() == TopAbs_REVERSED

    def at(parameter: float) -> Place:
        point = curve.Value(parameter)
        return (point.X(), point.Z())

    if curve.GetType() == GeomAbs_Circle:
        yield _arc(curve, turned)
        return
    path = [at(first), at(last)]
    if curve.GetType() != GeomAbs_Line:
        path = [point for _, point in chord_points([(at, first, last)])[0]]
    steps = path[::-1] if turned else path
    yield from ((Segment(start, end), False) for start, end in pairwise(steps))


def _arc(curve: BRepAdaptor_Curve, turned: bool) -> tuple[ArcCurve, bool]:
    """Return the arc of an edge, and whether the wire passes it clockwise."""
    circle = curve.Circle()
    centre, start = circle.Location(), curve.Value(curve.FirstParameter())
    clockwise = circle.Axis().Direction().Y() > 0  # seen along +y, a turn about +y runs clockwise
    sweep = math.degrees(curve.LastParameter() - curve.FirstParameter())
    from_deg = math.degrees(math.atan2(start.Z() - centre.Z(), start.X() - centre.X())) - (sweep if clockwise else 0.0)
    from_deg %= 360.0
    return ArcCurve((centre.X(), centre.Z()), circle.Radius(), from_deg, from_deg + sweep), clockwise != turned
