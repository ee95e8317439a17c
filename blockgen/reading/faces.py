"""The faces of a shape as planes and turned surfaces: where they lie, how far they go, where the material is."""

from __future__ import annotations

import math
from collections.abc import Iterable, Iterator, Sequence
from dataclasses import dataclass
from itertools import pairwise

from OCP.BRep import BRep_Tool
from OCP.BRepAdaptor import BRepAdaptor_Curve, BRepAdaptor_Surface
from OCP.BRepTools import BRepTools
from OCP.GeomAbs import (
    GeomAbs_BezierSurface,
    GeomAbs_BSplineSurface,
    GeomAbs_Cone,
    GeomAbs_Cylinder,
    GeomAbs_Plane,
    GeomAbs_SurfaceOfExtrusion,
    GeomAbs_SurfaceOfRevolution,
    GeomAbs_Torus,
)
from OCP.gp import gp_Dir, gp_Pnt, gp_Vec
from OCP.TopAbs import TopAbs_REVERSED, TopAbs_VERTEX
from OCP.TopoDS import TopoDS, TopoDS_Edge, TopoDS_Face, TopoDS_Shape

from blockgen.geometry.kernel import edges_of, faces_of, indexed
from blockgen.reading.recognise import Grid, Kind, axis_of, kind_of, plane_of
from blockgen.reading.vectors import Vector, cross, dot, length, minus, plus, square_to, times, unit

_FREE_FORM = (GeomAbs_BSplineSurface, GeomAbs_BezierSurface)
_SWEPT = (GeomAbs_SurfaceOfExtrusion, GeomAbs_SurfaceOfRevolution)
_STEPS = 16
_SMALL = 1e-7


@dataclass(frozen=True, slots=True)
class PlaneFace:
    """A flat face.

    Args:
        face: The kernel's face.
        normal: Unit normal, out of the material.
        offset: Distance of the plane from the origin along the normal, mm.
    """

    face: TopoDS_Face
    normal: Vector
    offset: float


@dataclass(frozen=True, slots=True)
class TurnedFace:
    """A cylinder, a cone or a part of a torus about an axis.

    Args:
        face: The kernel's face.
        kind: What it is.
        point: A point of the axis, mm.
        direction: Unit direction of the axis.
        low: Where it begins along the axis, from the point, mm.
        high: Where it ends, mm.
        low_radius: Radius at ``low``, mm.
        high_radius: Radius at ``high``, mm.
        hollow: True where the material is outside, as in a hole.
        sweep: How far it goes about the axis, deg.
    """

    face: TopoDS_Face
    kind: Kind
    point: Vector
    direction: Vector
    low: float
    high: float
    low_radius: float
    high_radius: float
    hollow: bool
    sweep: float

    @property
    def area(self) -> float:
        """Area as if it were one piece of a cone, mm2."""
        slant = math.hypot(self.high - self.low, self.high_radius - self.low_radius)
        return math.radians(self.sweep) * (self.low_radius + self.high_radius) / 2 * slant


@dataclass(frozen=True, slots=True)
class Surfaces:
    """All faces of a shape.

    Args:
        planes: Flat ones.
        turned: Cylinders, cones, tori.
        others: Number of faces that are none of these.
        corners: All corners of the shape, mm.
    """

    planes: tuple[PlaneFace, ...]
    turned: tuple[TurnedFace, ...]
    others: int
    corners: tuple[Vector, ...]


def collect(shape: TopoDS_Shape) -> Surfaces:
    """Return the faces of a shape, each with its place, reach and side of the material."""
    planes: list[PlaneFace] = []
    turned: list[TurnedFace] = []
    others = 0
    for face in faces_of(shape):
        found = surface_of(face)
        if isinstance(found, PlaneFace):
            planes.append(found)
        elif found is None:
            others += 1
        else:
            turned.append(found)
    return Surfaces(tuple(planes), tuple(turned), others, tuple(_corners(shape)))


def surface_of(face: TopoDS_Face) -> PlaneFace | TurnedFace | None:
    """Return what a face is; None where it is neither flat nor turned."""
    surface = BRepAdaptor_Surface(face, True)
    kind = surface.GetType()
    if kind == GeomAbs_Plane:
        return _plane(face, surface)
    if kind == GeomAbs_Cylinder:
        return _cylinder(face, surface)
    if kind == GeomAbs_Cone:
        return _cone(face, surface)
    if kind == GeomAbs_Torus:
        return _torus(face, surface)
    return _recognised(face, surface) if kind in _FREE_FORM or kind in _SWEPT else None


def boundary(faces: Iterable[TopoDS_Face], samples: int = 1) -> Iterator[Vector]:
    """Yield points of the edges of some faces, mm.

    Args:
        faces: The faces.
        samples: Points of each edge besides its beginning.
    """
    for face in faces:
        for edge in edges_of(face):
            yield from _edge_points(edge, samples)


def _edge_points(edge: TopoDS_Edge, samples: int) -> Iterator[Vector]:
    if BRep_Tool.Degenerated_s(edge):
        return
    curve = BRepAdaptor_Curve(edge)
    first, last = curve.FirstParameter(), curve.LastParameter()
    for i in range(samples + 1):
        yield _tuple(curve.Value(first + (last - first) * i / max(samples, 1)))


def _corners(shape: TopoDS_Shape) -> Iterator[Vector]:
    found = indexed(shape, TopAbs_VERTEX)
    for i in range(1, found.Extent() + 1):
        yield _tuple(BRep_Tool.Pnt_s(TopoDS.Vertex_s(found.FindKey(i))))


def _tuple(of: gp_Pnt | gp_Dir | gp_Vec) -> Vector:
    return (of.X(), of.Y(), of.Z())


def _is_reversed(face: TopoDS_Face) -> bool:
    return bool(face.Orientation() == TopAbs_REVERSED)


def _plane(face: TopoDS_Face, surface: BRepAdaptor_Surface) -> PlaneFace:
    position = surface.Plane().Position()
    out = _tuple(position.Direction())
    if _is_reversed(face) == position.Direct():
        out = times(out, -1.0)
    return PlaneFace(face, out, dot(out, _tuple(position.Location())))


def _hollow(face: TopoDS_Face, *, direct: bool) -> bool:
    """Tell whether a face about an axis has its material outside; its own normal points away from the axis."""
    return _is_reversed(face) == direct


def _cylinder(face: TopoDS_Face, surface: BRepAdaptor_Surface) -> TurnedFace:
    cylinder = surface.Cylinder()
    position = cylinder.Position()
    u0, u1, v0, v1 = BRepTools.UVBounds_s(face)
    radius = cylinder.Radius()
    return TurnedFace(
        face, "cylinder", _tuple(position.Location()), _tuple(position.Direction()), v0, v1, radius, radius,
        _hollow(face, direct=position.Direct()), math.degrees(u1 - u0),
    )  # fmt: skip


def _cone(face: TopoDS_Face, surface: BRepAdaptor_Surface) -> TurnedFace:
    cone = surface.Cone()
    position = cone.Position()
    u0, u1, v0, v1 = BRepTools.UVBounds_s(face)
    rise, spread, radius = math.cos(cone.SemiAngle()), math.sin(cone.SemiAngle()), cone.RefRadius()
    ends = sorted((v * rise, radius + v * spread) for v in (v0, v1))
    # Beyond the tip the surface's own normal turns over; no face goes through it.
    beyond = ends[0][1] + ends[1][1] < 0
    return TurnedFace(
        face, "cone", _tuple(position.Location()), _tuple(position.Direction()), ends[0][0], ends[1][0],
        abs(ends[0][1]), abs(ends[1][1]), _hollow(face, direct=position.Direct()) != beyond, math.degrees(u1 - u0),
    )  # fmt: skip


def _torus(face: TopoDS_Face, surface: BRepAdaptor_Surface) -> TurnedFace:
    torus = surface.Torus()
    position = torus.Position()
    u0, u1, v0, v1 = BRepTools.UVBounds_s(face)
    ring, tube = torus.MajorRadius(), torus.MinorRadius()
    around = [v0 + (v1 - v0) * i / _STEPS for i in range(_STEPS + 1)]
    ends = sorted((tube * math.sin(v), ring + tube * math.cos(v)) for v in around)
    middle = math.cos((v0 + v1) / 2)  # the own normal leaves the tube, so its inner half looks at the axis
    hollow = _hollow(face, direct=position.Direct()) != (middle < 0)
    return TurnedFace(
        face, "torus", _tuple(position.Location()), _tuple(position.Direction()), ends[0][0], ends[-1][0],
        ends[0][1], ends[-1][1], hollow, math.degrees(u1 - u0),
    )  # fmt: skip


def _recognised(face: TopoDS_Face, surface: BRepAdaptor_Surface) -> PlaneFace | TurnedFace | None:
    """Return a face that was written as a free-form or swept surface, but is a plane or turned."""
    bounds = BRepTools.UVBounds_s(face)
    grid = _grid(surface, bounds)
    normal = plane_of(grid)
    if normal is not None:
        middle, out = _normal(face, surface, bounds)
        normal = normal if dot(normal, out) > 0 else times(normal, -1.0)
        return PlaneFace(face, normal, dot(normal, middle))
    axis = axis_of(grid)
    return None if axis is None else _measured(face, axis, grid, _normal(face, surface, bounds))


def _normal(
    face: TopoDS_Face, surface: BRepAdaptor_Surface, bounds: tuple[float, float, float, float]
) -> tuple[Vector, Vector]:
    """Return a point in the middle of a face and the unit normal there, out of the material."""
    u0, u1, v0, v1 = bounds
    point, along_u, along_v = gp_Pnt(), gp_Vec(), gp_Vec()
    surface.D1(u0 + 0.47 * (u1 - u0), v0 + 0.53 * (v1 - v0), point, along_u, along_v)
    out = cross(_tuple(along_u), _tuple(along_v))
    out = unit(out) if length(out) > _SMALL else (0.0, 0.0, 1.0)
    return _tuple(point), times(out, -1.0) if _is_reversed(face) else out


def _measured(face: TopoDS_Face, axis: tuple[Vector, Vector], grid: Grid, middle: tuple[Vector, Vector]) -> TurnedFace:
    """Return a turned face from points of it, since its parameters are not those of a cylinder or cone."""
    point, direction = axis
    profile = sorted(_along_and_off(p, point, direction) for row in grid for p in row)
    hollow = dot(middle[1], square_to(minus(middle[0], point), direction)) < 0
    columns = list(zip(*grid, strict=True))
    sweep = max(_sweep(line, point, direction) for line in (grid[1], columns[1]))
    return TurnedFace(
        face, kind_of(profile), point, direction, profile[0][0], profile[-1][0], profile[0][1], profile[-1][1],
        hollow, sweep,
    )  # fmt: skip


def _grid(surface: BRepAdaptor_Surface, bounds: tuple[float, float, float, float]) -> list[list[Vector]]:
    u0, u1, v0, v1 = bounds
    parts = [i / _STEPS for i in range(_STEPS + 1)]
    return [[_tuple(surface.Value(u0 + (u1 - u0) * a, v0 + (v1 - v0) * b)) for a in parts] for b in parts]


def _along_and_off(at: Vector, point: Vector, direction: Vector) -> tuple[float, float]:
    off = minus(at, point)
    return dot(off, direction), length(square_to(off, direction))


def _sweep(line: Sequence[Vector], point: Vector, direction: Vector) -> float:
    """Return the angle that a line of points goes about the axis, deg."""
    spokes = [square_to(minus(p, point), direction) for p in line]
    turns = (math.atan2(dot(cross(a, b), direction), dot(a, b)) for a, b in pairwise(spokes))
    return abs(math.degrees(math.fsum(turns)))


def point_at(face: TurnedFace, along: float) -> Vector:
    """Return the point of the axis of a turned face at a distance along it from its own point, mm."""
    return plus(face.point, face.direction, along)
