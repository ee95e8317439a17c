"""How far the viewer sees: the first face of a shape that a line of sight meets."""

from __future__ import annotations

import math
from collections.abc import Callable, Sequence
from functools import cache

from OCP.Bnd import Bnd_Box
from OCP.BRepBndLib import BRepBndLib
from OCP.gp import gp_Dir, gp_Lin, gp_Pnt, gp_Vec
from OCP.IntCurvesFace import IntCurvesFace_Intersector
from OCP.Standard import Standard_NullObject

from blockgen.geometry.curves import Place
from blockgen.geometry.lifted import EDGE_ON
from blockgen.geometry.shape_edges import Surface
from blockgen.geometry.view_frame import ViewFrame, dot
from blockgen.plan import Point

_TOLERANCE = 1e-6
_HAIR = 2e-5
_BESIDE = ((0.0, 0.0, 0.0), (_HAIR, _HAIR, _HAIR), (-_HAIR, -_HAIR, _HAIR), (_HAIR, -_HAIR, -_HAIR))
_ROOM = 1.0  # how far before the foremost face a line of sight starts, mm

Sight = Callable[[Place], float]


def line_of_sight(frame: ViewFrame, surfaces: Sequence[Surface]) -> Sight:
    """Return a function that gives the depth of the first face seen at a place; minus infinity where there is none."""
    boxes = sorted(
        ((*_box(surface, frame), number) for number, surface in enumerate(surfaces) if not _edge_on(surface, frame)),
        key=lambda box: -box[4],
    )
    start = _ROOM + max((box[4] for box in boxes), default=0.0)
    away = gp_Dir(*(-v for v in frame.back))

    @cache
    def intersector(number: int) -> IntCurvesFace_Intersector:
        return IntCurvesFace_Intersector(surfaces[number].face, _TOLERANCE)

    def first_depth(place: Place) -> float:
        found = -math.inf
        ray = gp_Lin(gp_Pnt(*_point(frame, place, start)), away)
        for left, low, right, high, near, number in boxes:
            if near < found:
                break
            if left <= place[0] <= right and low <= place[1] <= high:
                found = max(found, start - _first_hit(intersector(number), ray))
        return found

    return first_depth


def _first_hit(intersector: IntCurvesFace_Intersector, ray: gp_Lin) -> float:
    """Return the way to the first hit, mm; infinity where there is none.

    The kernel gives up on some lines that touch a face right at its rim; one a hair beside it is looked along instead.
    """
    for x, y, z in _BESIDE:
        try:
            intersector.Perform(ray.Translated(gp_Vec(x, y, z)), 0.0, 1e6)
        except Standard_NullObject:
            continue
        ways = [intersector.WParameter(i) for i in range(1, intersector.NbPnt() + 1)]
        return min(ways, default=math.inf)
    return math.inf


def _edge_on(surface: Surface, frame: ViewFrame) -> bool:
    across = abs(dot(surface.axis, frame.back))
    return (surface.kind == "plane" and across < EDGE_ON) or (surface.kind == "cylinder" and across > 1 - EDGE_ON)


def _box(surface: Surface, frame: ViewFrame) -> tuple[float, float, float, float, float]:
    """Return left, low, right, high and nearest depth of a face in a view; its own gap of the kernel's included."""
    box = Bnd_Box()
    BRepBndLib.Add_s(surface.face, box, False)
    low, high = box.CornerMin(), box.CornerMax()
    corners = [(x, y, z) for x in (low.X(), high.X()) for y in (low.Y(), high.Y()) for z in (low.Z(), high.Z())]
    rights, ups, depths = ([dot(c, way) for c in corners] for way in (frame.right, frame.up, frame.back))
    return min(rights), min(ups), max(rights), max(ups), max(depths)


def _point(frame: ViewFrame, place: Place, depth: float) -> Point:
    x, y, z = (
        place[0] * r + place[1] * u + depth * b for r, u, b in zip(frame.right, frame.up, frame.back, strict=True)
    )
    return (x, y, z)
