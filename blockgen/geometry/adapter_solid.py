"""The solid of an adapter, a ring or a plate with its spigot, every face named; checked against its sum on paper."""

from __future__ import annotations

import math
from collections.abc import Iterable, Mapping, Sequence
from dataclasses import dataclass

from OCP.BRepAlgoAPI import BRepAlgoAPI_BooleanOperation, BRepAlgoAPI_Cut, BRepAlgoAPI_Fuse
from OCP.BRepBuilderAPI import BRepBuilderAPI_MakeFace, BRepBuilderAPI_MakePolygon, BRepBuilderAPI_Transform
from OCP.BRepPrimAPI import BRepPrimAPI_MakeRevol
from OCP.gp import gp_Ax1, gp_Dir, gp_Pnt, gp_Trsf, gp_Vec
from OCP.TopAbs import TopAbs_FACE
from OCP.TopoDS import TopoDS, TopoDS_Face, TopoDS_Shape, TopoDS_Solid

from blockgen.errors import KernelError
from blockgen.geometry.body import body_solid
from blockgen.geometry.kernel import (
    Named,
    faces_of,
    gathered,
    indexed,
    is_valid,
    items,
    kernel_errors,
    shape_list,
    solids_of,
    volume_of,
)
from blockgen.geometry.turned import across_axis, turned_tool
from blockgen.mechanics.volume import body_volume, feature_volume, frustum
from blockgen.plan import Body, Feature

_RUN_OUT = 1.0
_ALLOWED = 0.01
"""How far solid and sum on paper may differ, mm3."""

_PLATE_FACES = {"bearing_seat": "block_face", "motor_seat": "motor_face", "base": "bottom"}
Corner = tuple[str, float, float]


@dataclass(frozen=True, slots=True)
class AdapterSolid:
    """A solid and its faces by id.

    Args:
        shape: The kernel's solid.
        faces: Faces by id.
        volume: mm3.
    """

    shape: TopoDS_Solid
    faces: Mapping[str, tuple[TopoDS_Face, ...]]
    volume: float


@dataclass(frozen=True, slots=True)
class Outline:
    """The outside of a plate: body with its shaft at a height above its lower edge, and the spigot, mm."""

    body: Body
    shaft: float
    spigot_diameter: float
    spigot_length: float


def ring_solid(outer: float, inner: float, length: float, edge: float) -> AdapterSolid:
    """Return a ring about the x axis from x = 0 to its length, its edges broken outside and at the mouth, mm.

    Raises:
        KernelError: the solid does not come out as planned.
    """
    out, bore = outer / 2, inner / 2
    corners = (
        ("block_face", 0.0, bore), ("edge_break.1", 0.0, out - edge), ("outside", edge, out),
        ("edge_break.2", length - edge, out), ("motor_face", length, out - edge),
        ("bore.mouth_chamfer", length, bore + edge), ("bore.bore", length - edge, bore),
    )  # fmt: skip
    with kernel_errors("the kernel gave up while it built the ring"):
        shape, named = _revolved(corners)
        ends = 2 * frustum(out - edge, out, edge) + math.pi * out**2 * (length - 2 * edge)
        hole = frustum(bore + edge, bore, edge) + math.pi * bore**2 * (length - edge)
        return _checked(solids_of(shape)[0], named, ends - hole)


def plate_solid(outline: Outline, features: Sequence[Feature]) -> AdapterSolid:
    """Return a plate: x = 0 on its face towards the block, its spigot towards -x, the shaft on the x axis.

    Args:
        outline: Its outside.
        features: Turned cavities, all of them through.

    Raises:
        KernelError: the solid does not come out as planned.
    """
    edge, radius = outline.body.edge_chamfer, outline.spigot_diameter / 2
    with kernel_errors("the kernel gave up while it built the plate"):
        box, named = body_solid(outline.body)
        box, named = _lowered(box, named, outline.shaft)
        spigot, of_spigot = _spigot(radius, outline.spigot_length, outline.body.length / 2, edge)
        fuse = BRepAlgoAPI_Fuse(box, spigot)
        fuse.Build()
        whole = _only(fuse)
        named = _traced(fuse, whole, [*((_PLATE_FACES.get(i, i), f) for i, f in named), *of_spigot])
        solid, named = _cut(whole, named, features)
    spigot_volume = frustum(radius - edge, radius, edge) + math.pi * radius**2 * (outline.spigot_length - edge)
    holes = math.fsum(feature_volume(feature, outline.body) for feature in features)
    return _checked(solid, named, body_volume(outline.body) + spigot_volume - holes)


def _lowered(shape: TopoDS_Shape, named: Iterable[Named], by: float) -> tuple[TopoDS_Shape, list[Named]]:
    """Return a solid and its faces moved down, mm."""
    step = gp_Trsf()
    step.SetTranslation(gp_Vec(0.0, 0.0, -by))
    mover = BRepBuilderAPI_Transform(shape, step, True)
    return mover.Shape(), [(face_id, TopoDS.Face_s(mover.ModifiedShape(face))) for face_id, face in named]


def _spigot(radius: float, length: float, into: float, edge: float) -> tuple[TopoDS_Shape, list[Named]]:
    """Return the spigot; it reaches into the plate, so that no faces of both lie in one plane."""
    return _revolved(
        (("spigot_face", -length, 0.0), ("edge_break.spigot", -length, radius - edge),
         ("outside", edge - length, radius), ("", into, radius), ("", into, 0.0))
    )  # fmt: skip


def _revolved(corners: Sequence[Corner]) -> tuple[TopoDS_Shape, list[Named]]:
    """Return a half section turned about the x axis; each name is that of the face that starts at its corner."""
    across = across_axis((1.0, 0.0, 0.0))
    maker = BRepBuilderAPI_MakePolygon()
    for _, along, radius in corners:
        maker.Add(gp_Pnt(along, radius * across[1], radius * across[2]))
    maker.Close()
    axis = gp_Ax1(gp_Pnt(0.0, 0.0, 0.0), gp_Dir(1.0, 0.0, 0.0))
    shape = BRepPrimAPI_MakeRevol(BRepBuilderAPI_MakeFace(maker.Wire(), True).Face(), axis).Shape()
    pieces = zip(corners, faces_of(shape), strict=False)  # an edge on the axis gives no face; it is the last one
    return shape, [(name, face) for (name, _, _), face in pieces if name]


def _cut(solid: TopoDS_Solid, named: Sequence[Named], features: Sequence[Feature]) -> tuple[TopoDS_Solid, list[Named]]:
    tools = [turned_tool(feature, _RUN_OUT) for feature in features]
    cut = BRepAlgoAPI_Cut()
    cut.SetArguments(shape_list([solid]))
    cut.SetTools(shape_list([tool for tool, _ in tools]))
    cut.Build()
    left = _only(cut)
    return left, _traced(cut, left, [*named, *(face for _, faces in tools for face in faces)])


def _only(operation: BRepAlgoAPI_BooleanOperation) -> TopoDS_Solid:
    solids = solids_of(operation.Shape()) if operation.IsDone() else []
    if len(solids) != 1:
        raise KernelError(f"the adapter came out in {len(solids)} pieces")
    return solids[0]


def _traced(operation: BRepAlgoAPI_BooleanOperation, solid: TopoDS_Solid, named: Iterable[Named]) -> list[Named]:
    """Return what has become of the named faces, as they lie in the solid."""
    present = indexed(solid, TopAbs_FACE)
    found: dict[int, Named] = {}
    for face_id, face in named:
        for successor in items(operation.Modified(face)) or [face]:
            index = present.FindIndex(successor)
            if index:
                found.setdefault(index, (face_id, TopoDS.Face_s(present.FindKey(index))))
    return list(found.values())


def _checked(solid: TopoDS_Solid, named: Sequence[Named], expected: float) -> AdapterSolid:
    """Return the solid with its faces, or refuse one that is not as planned."""
    volume = volume_of(solid)
    if not is_valid(solid) or abs(volume - expected) > _ALLOWED:
        raise KernelError(f"volume of the adapter is {volume:.3f} mm3, the sum on paper is {expected:.3f} mm3")
    if len(named) != len(faces_of(solid)):
        raise KernelError(f"{len(faces_of(solid)) - len(named)} faces of the adapter have no name")
    return AdapterSolid(solid, gathered(named), volume)
