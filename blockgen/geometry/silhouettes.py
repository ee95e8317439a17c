"""Lines at which a round face turns away from the viewer."""

from __future__ import annotations

import math
from collections.abc import Iterator
from itertools import pairwise

from OCP.BRepClass import BRepClass_FaceClassifier
from OCP.gp import gp_Pnt
from OCP.TopAbs import TopAbs_IN

from blockgen.geometry.chords import root
from blockgen.geometry.lifted import EDGE_ON, Lifted, straight
from blockgen.geometry.shape_edges import Arc3, Edge, Surface, Wireframe
from blockgen.geometry.view_frame import ViewFrame, dot
from blockgen.plan import Point

_SAMPLES = 32
_TOLERANCE = 1e-6
_SHORTEST = 1e-4


def silhouettes(frame: ViewFrame, wires: Wireframe) -> list[Lifted]:
    """Return the outlines of cylinders and cones that lie across the line of sight, where they are no edges anyway."""
    return [
        piece
        for index, surface in enumerate(wires.surfaces)
        if surface.kind != "plane" and abs(dot(surface.axis, frame.back)) < EDGE_ON
        for start, end in _outlines(surface, wires.of_face(index), frame)
        for piece in straight(start, end, frame)
    ]


def _outlines(surface: Surface, edges: list[Edge], frame: ViewFrame) -> Iterator[tuple[Point, Point]]:
    """Yield both outlines of a face, in the pieces that lie inside it.

    They lie in the plane through the axis that is square to the line of sight, so they end where edges pass through it.
    """
    side = ViewFrame(frame.back, surface.axis).back
    level = dot(surface.origin, frame.back)
    ends = [point for edge in edges for point in _through(edge, frame.back, level)]
    base = dot(surface.origin, surface.axis)
    for sense in (1.0, -1.0):
        across = (sense * side[0], sense * side[1], sense * side[2])
        near = [p for p in ends if dot(p, across) > dot(surface.origin, across)]
        heights = sorted({round(dot(p, surface.axis) - base, 9) for p in near + _tips(surface, ends)})
        for low, high in pairwise(heights):
            if high - low > _SHORTEST and _inside(surface, _on(surface, across, (low + high) / 2)):
                yield _on(surface, across, low), _on(surface, across, high)


def _tips(surface: Surface, ends: list[Point]) -> list[Point]:
    """Return the tip of a cone that has its tip: no edge ends there."""
    if surface.kind != "cone" or not ends:
        return []
    height = -surface.radius / math.tan(surface.half_angle)
    return [_on(surface, (0.0, 0.0, 0.0), height)]


def _on(surface: Surface, across: Point, height: float) -> Point:
    """Return the point of a surface at a height along its axis, to one side."""
    radius = surface.radius + height * math.tan(surface.half_angle)
    x, y, z = (o + height * a + radius * c for o, a, c in zip(surface.origin, surface.axis, across, strict=True))
    return (x, y, z)


def _inside(surface: Surface, point: Point) -> bool:
    return bool(BRepClass_FaceClassifier(surface.face, gp_Pnt(*point), _TOLERANCE).State() == TopAbs_IN)


def _through(edge: Edge, direction: Point, level: float) -> list[Point]:
    """Return the points at which an edge meets the plane where ``direction`` has a level."""
    if edge.arc is not None:
        return [edge.at(t) for t in _arc_parameters(edge, edge.arc, direction, level)]

    def height(t: float) -> float:
        return dot(edge.at(t), direction) - level

    count = 1 if edge.kind == "line" else _SAMPLES
    grid = [edge.first + (edge.last - edge.first) * i / count for i in range(count + 1)]
    heights = [height(t) for t in grid]
    touching = [edge.at(t) for t, h in zip(grid, heights, strict=True) if abs(h) <= _TOLERANCE]
    passing = [
        edge.at(root(height, a, b))
        for (a, one), (b, other) in pairwise(zip(grid, heights, strict=True))
        if one * other < 0 and min(abs(one), abs(other)) > _TOLERANCE
    ]
    return [*touching, *passing]


def _arc_parameters(edge: Edge, arc: Arc3, direction: Point, level: float) -> list[float]:
    a, b = arc.radius * dot(arc.x, direction), arc.radius * dot(arc.y, direction)
    size, rise = math.hypot(a, b), level - dot(arc.centre, direction)
    if size < _TOLERANCE or abs(rise) > size + _TOLERANCE:
        return []
    middle, half = math.atan2(b, a), math.acos(max(-1.0, min(1.0, rise / size)))
    turns = (middle + sense * half + 2 * math.pi * n for sense in (-1, 1) for n in (-2, -1, 0, 1, 2))
    slack = _TOLERANCE / arc.radius
    return [t for t in turns if edge.first - slack <= t <= edge.last + slack]
