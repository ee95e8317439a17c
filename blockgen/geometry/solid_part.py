"""A part where it stands, with the boxes of its faces, edges and corners: what is far away is never measured."""

from __future__ import annotations

import math
from collections.abc import Callable, Iterable, Sequence
from dataclasses import dataclass

import numpy as np
from OCP.Bnd import Bnd_Box
from OCP.BRep import BRep_Builder, BRep_Tool
from OCP.BRepBndLib import BRepBndLib
from OCP.gp import gp_Trsf
from OCP.TopAbs import TopAbs_EDGE, TopAbs_FACE, TopAbs_VERTEX
from OCP.TopLoc import TopLoc_Location
from OCP.TopoDS import TopoDS, TopoDS_Compound, TopoDS_Face, TopoDS_Shape

from blockgen.geometry.kernel import bounding_box, faces_of, indexed

Box = tuple[float, float, float, float, float, float]
Boxes = np.ndarray[tuple[int, ...], np.dtype[np.float64]]


@dataclass(frozen=True, slots=True)
class Element:
    """A face, edge or corner.

    Args:
        shape: The kernel's shape.
        rank: 2 for a face, 1 for an edge, 0 for a corner.
        bounds: The kernel's box about it.
    """

    shape: TopoDS_Shape
    rank: int
    bounds: Bnd_Box


@dataclass(frozen=True, slots=True, eq=False)
class SolidPart:
    """A shape, or some of its faces, in the block's coordinates.

    Args:
        id: Plain id.
        shape: The shape; a compound of faces where only some are meant.
        elements: Its faces, edges and corners.
        boxes: Their boxes, (n, 6): least x, y, z, greatest x, y, z, mm.
        box: Box about all, mm.
        solid: True for solids, False for faces alone.
    """

    id: str
    shape: TopoDS_Shape
    elements: tuple[Element, ...]
    boxes: Boxes
    box: Box
    solid: bool = True


def solid_part(part_id: str, shape: TopoDS_Shape, location: gp_Trsf | None = None) -> SolidPart:
    """Return a shape where it stands."""
    placed = shape if location is None else shape.Moved(TopLoc_Location(location))
    return _part(part_id, placed, solid=True)


def some_faces(part_id: str, faces: Iterable[TopoDS_Face]) -> SolidPart | None:
    """Return faces as a part; None where there are none."""
    kept = tuple(faces)
    return _part(part_id, _compound(kept), solid=False) if kept else None


def faces_where(part: SolidPart, wanted: Callable[[Box], bool]) -> SolidPart | None:
    """Return the faces of a part whose box fulfils a condition; None where there are none."""
    return some_faces(part.id, (face for face in faces_of(part.shape) if wanted(bounding_box(face))))


def _part(part_id: str, shape: TopoDS_Shape, *, solid: bool) -> SolidPart:
    kinds = ((TopAbs_FACE, 2), (TopAbs_EDGE, 1), (TopAbs_VERTEX, 0))
    elements = tuple(Element(sub, rank, _bounds(sub)) for kind, rank in kinds for sub in _subs(shape, kind))
    boxes = np.array([_corners(element.bounds) for element in elements])
    low, high = boxes[:, :3].min(axis=0), boxes[:, 3:].max(axis=0)
    box = (float(low[0]), float(low[1]), float(low[2]), float(high[0]), float(high[1]), float(high[2]))
    return SolidPart(part_id, shape, elements, boxes, box, solid)


def _subs(shape: TopoDS_Shape, kind: object) -> list[TopoDS_Shape]:
    """Return the parts of one kind, each once; edges that are a point only, as on a cone's tip, are left out."""
    found = indexed(shape, kind)
    subs = [found.FindKey(i) for i in range(1, found.Extent() + 1)]
    return [sub for sub in subs if kind != TopAbs_EDGE or not BRep_Tool.Degenerated_s(TopoDS.Edge_s(sub))]


def _bounds(shape: TopoDS_Shape) -> Bnd_Box:
    bounds = Bnd_Box()
    BRepBndLib.AddOptimal_s(shape, bounds, False, False)
    return bounds


def _corners(bounds: Bnd_Box) -> tuple[float, ...]:
    low, high = bounds.CornerMin(), bounds.CornerMax()
    return (low.X(), low.Y(), low.Z(), high.X(), high.Y(), high.Z())


def _compound(shapes: Iterable[TopoDS_Shape]) -> TopoDS_Compound:
    builder, made = BRep_Builder(), TopoDS_Compound()
    builder.MakeCompound(made)
    for shape in shapes:
        builder.Add(made, shape)
    return made


def around(parts: Iterable[SolidPart]) -> Box:
    """Return the box around parts, mm."""
    boxes = [part.box for part in parts]
    low = [min(box[i] for box in boxes) for i in range(3)]
    high = [max(box[i] for box in boxes) for i in range(3, 6)]
    return (low[0], low[1], low[2], high[0], high[1], high[2])


def gap(first: Sequence[float], second: Sequence[float]) -> float:
    """Return the distance of two boxes, mm; 0 where they meet. No shapes inside them can be nearer."""
    return math.hypot(*(max(first[i] - second[i + 3], second[i] - first[i + 3], 0.0) for i in range(3)))


def gaps(first: Boxes, second: Boxes) -> Boxes:
    """Return the distances between two lists of boxes (n, 6) and (m, 6) as (n, m), mm."""
    one, other = first[:, None, :], second[None, :, :]
    apart = np.maximum(np.maximum(one[..., :3] - other[..., 3:], other[..., :3] - one[..., 3:]), 0.0)
    return np.asarray(np.sqrt((apart**2).sum(axis=2)))


def holds(outer: Box, inner: Box) -> bool:
    """Tell whether a box lies within another one."""
    return all(outer[i] <= inner[i] and inner[i + 3] <= outer[i + 3] for i in range(3))
