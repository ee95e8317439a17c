"""Edges and faces of a solid as a view needs them: curves by kind, normals, which edges are no edges to the eye."""

from __future__ import annotations

import math
from collections.abc import Callable
from dataclasses import dataclass
from typing import Literal

from OCP.BRep import BRep_Tool
from OCP.BRepAdaptor import BRepAdaptor_Curve, BRepAdaptor_Surface
from OCP.GeomAbs import GeomAbs_Circle, GeomAbs_Cone, GeomAbs_Cylinder, GeomAbs_Line, GeomAbs_Plane
from OCP.gp import gp_Dir, gp_Pnt
from OCP.TopAbs import TopAbs_EDGE, TopAbs_FACE
from OCP.TopExp import TopExp
from OCP.TopoDS import TopoDS, TopoDS_Face, TopoDS_Shape
from OCP.TopTools import TopTools_IndexedDataMapOfShapeListOfShape

from blockgen.errors import KernelError
from blockgen.geometry.kernel import faces_of, indexed
from blockgen.geometry.view_frame import dot
from blockgen.plan import Point

TANGENT = 1e-4
"""Sine of the angle below which two faces run into one another, as the kernel's own fillets do."""

_SAME = 1e-6


@dataclass(frozen=True, slots=True)
class Surface:
    """A face with its surface.

    Args:
        face: The kernel's face.
        kind: Kind of surface.
        origin: Point of the plane or of the axis, mm.
        axis: Normal of the plane; direction of the axis.
        radius: Radius at the origin, mm; 0 for a plane.
        half_angle: Angle between cone and axis, rad.
    """

    face: TopoDS_Face
    kind: Literal["plane", "cylinder", "cone"]
    origin: Point
    axis: Point
    radius: float
    half_angle: float

    def normal(self, point: Point) -> Point:
        """Return the unit normal at a point of the surface, inwards or outwards; a zero vector at a cone's tip."""
        if self.kind == "plane":
            return self.axis
        from_origin = tuple(p - o for p, o in zip(point, self.origin, strict=True))
        along = math.fsum(v * a for v, a in zip(from_origin, self.axis, strict=True))
        x, y, z = (v - along * a for v, a in zip(from_origin, self.axis, strict=True))
        size = math.hypot(x, y, z)
        if size < _SAME:
            return (0.0, 0.0, 0.0)
        lean, rise = math.cos(self.half_angle) / size, math.sin(self.half_angle)
        a, b, c = self.axis
        return (lean * x - rise * a, lean * y - rise * b, lean * z - rise * c)


@dataclass(frozen=True, slots=True)
class Arc3:
    """The circle of an edge in space: C(t) = centre + radius (cos t x + sin t y)."""

    centre: Point
    radius: float
    x: Point
    y: Point


@dataclass(frozen=True, slots=True)
class Edge:
    """An edge between two faces.

    Args:
        at: Point of the edge at a parameter, mm.
        first: Parameter of the start.
        last: Parameter of the end.
        kind: Kind of curve.
        arc: The circle, where it is one.
        faces: Indices of the two faces.
        smooth: True where the faces run into one another.
        normal: Normal half way along, of the first face.
    """

    at: Callable[[float], Point]
    first: float
    last: float
    kind: Literal["line", "circle", "other"]
    arc: Arc3 | None
    faces: tuple[int, int]
    smooth: bool
    normal: Point


@dataclass(frozen=True, slots=True)
class Wireframe:
    """All of a shape that can show up as a line: its faces, its edges, and the edges of each face by index."""

    surfaces: tuple[Surface, ...]
    edges: tuple[Edge, ...]

    def of_face(self, index: int) -> list[Edge]:
        """Return the edges of one face."""
        return [edge for edge in self.edges if index in edge.faces]


def wireframe(shape: TopoDS_Shape) -> Wireframe:
    """Return the faces and edges of a shape; seams and edges that part one surface are left out.

    Raises:
        KernelError: a face is neither plane nor cylinder nor cone.
    """
    surfaces = tuple(_surface(face) for face in faces_of(shape))
    numbers = indexed(shape, TopAbs_FACE)
    pairs = TopTools_IndexedDataMapOfShapeListOfShape()
    TopExp.MapShapesAndAncestors_s(shape, TopAbs_EDGE, TopAbs_FACE, pairs)
    edges = []
    for i in range(1, pairs.Extent() + 1):
        faces = pairs.FindFromIndex(i)  # read without the kernel's iterator, which takes 0.2 ms to end
        beside = sorted({numbers.FindIndex(face) - 1 for face in (faces.First(), faces.Last())})
        if len(beside) == 2 and not BRep_Tool.Degenerated_s(TopoDS.Edge_s(pairs.FindKey(i))):
            curve = BRepAdaptor_Curve(TopoDS.Edge_s(pairs.FindKey(i)))
            edges.append(_edge(curve, (beside[0], beside[1]), surfaces))
    return Wireframe(surfaces, tuple(e for e in edges if not _parts_one_surface(e, surfaces)))


def _surface(face: TopoDS_Face) -> Surface:
    adaptor = BRepAdaptor_Surface(face, False)
    kind = adaptor.GetType()
    if kind == GeomAbs_Plane:
        plane = adaptor.Plane()
        return Surface(face, "plane", _xyz(plane.Location()), _xyz(plane.Axis().Direction()), 0.0, 0.0)
    if kind == GeomAbs_Cylinder:
        round_ = adaptor.Cylinder()
        axis = round_.Axis()
        return Surface(face, "cylinder", _xyz(axis.Location()), _xyz(axis.Direction()), round_.Radius(), 0.0)
    if kind == GeomAbs_Cone:
        cone = adaptor.Cone()
        axis = cone.Axis()
        where = (_xyz(axis.Location()), _xyz(axis.Direction()))
        return Surface(face, "cone", *where, cone.RefRadius(), cone.SemiAngle())
    raise KernelError("a face of the solid is neither plane, cylinder nor cone; no view can be drawn of it")


def _edge(curve: BRepAdaptor_Curve, faces: tuple[int, int], surfaces: tuple[Surface, ...]) -> Edge:
    def at(parameter: float) -> Point:
        return _xyz(curve.Value(parameter))

    first, last = curve.FirstParameter(), curve.LastParameter()
    middle = at((first + last) / 2)
    one, other = (surfaces[i].normal(middle) for i in faces)
    smooth = dot(one, one) > 0 and dot(other, other) > 0 and _sine(one, other) < TANGENT
    kind: Literal["line", "circle", "other"] = "other"
    arc = None
    if curve.GetType() == GeomAbs_Line:
        kind = "line"
    elif curve.GetType() == GeomAbs_Circle:
        kind, circle = "circle", curve.Circle()
        frame = circle.Position()
        arc = Arc3(_xyz(circle.Location()), circle.Radius(), _xyz(frame.XDirection()), _xyz(frame.YDirection()))
    return Edge(at, first, last, kind, arc, faces, smooth, one)


def _parts_one_surface(edge: Edge, surfaces: tuple[Surface, ...]) -> bool:
    """Tell whether an edge only parts a face, as the seam of a cavity's tool may do."""
    one, other = (surfaces[i] for i in edge.faces)
    if not edge.smooth or one.kind != other.kind or _sine(one.axis, other.axis) > TANGENT:
        return False
    if one.kind == "plane":
        return True
    apart = [b - a for a, b in zip(one.origin, other.origin, strict=True)]
    along = math.fsum(v * a for v, a in zip(apart, one.axis, strict=True))
    aside = math.dist(apart, [along * a for a in one.axis])
    same_radius = one.kind == "cone" or abs(one.radius - other.radius) < _SAME
    return aside < _SAME and same_radius


def _sine(first: Point, second: Point) -> float:
    (a, b, c), (d, e, f) = first, second
    return math.hypot(b * f - c * e, c * d - a * f, a * e - b * d)


def _xyz(vector: gp_Pnt | gp_Dir) -> Point:
    return (vector.X(), vector.Y(), vector.Z())
