"""The solid for finite elements: without threads and edge breaks, its faces split where heads and flanges press."""

from __future__ import annotations

import tempfile
from collections.abc import Iterator, Sequence
from dataclasses import dataclass, replace
from pathlib import Path

from OCP.BRepAlgoAPI import BRepAlgoAPI_Splitter
from OCP.BRepBuilderAPI import (
    BRepBuilderAPI_MakeEdge,
    BRepBuilderAPI_MakeFace,
    BRepBuilderAPI_MakePolygon,
    BRepBuilderAPI_MakeWire,
)
from OCP.BRepTools import BRepTools
from OCP.gp import gp_Ax2, gp_Circ, gp_Dir, gp_Pnt
from OCP.TopAbs import TopAbs_FACE
from OCP.TopoDS import TopoDS_Face, TopoDS_Solid

from blockgen.errors import KernelError
from blockgen.geometry.block import BlockSolid, build_block
from blockgen.geometry.kernel import Named, indexed, items, kernel_errors, shape_list, solids_of
from blockgen.plan import Feature, Plan, Point

_FILLED = ("tapped_hole", "clearance_hole")
"""Holes that screws fill; leaving them out changes stiffness by less than 1 %."""


@dataclass(frozen=True, slots=True)
class AnalysisShape:
    """A solid as text.

    Args:
        brep: The solid in the kernel's exchange text, mm.
        faces: Id of each face in the order of the solid.
    """

    brep: bytes
    faces: tuple[str, ...]


def analysis_shape(plan: Plan) -> AnalysisShape:
    """Return a plan's solid for finite elements.

    The base face is split into ``ring_1`` .. under the heads of the base screws, the seats into ``bearing_flange`` and
    ``motor_flange`` where the flanges lie on them.

    Raises:
        KernelError: the kernel cannot build or split the solid.
    """
    block = build_block(plain_plan(plan))
    with kernel_errors("the kernel gave up while it split the faces of the block"):
        solid, faces = _split(block, [*_rings(plan), *_footprints(plan)])
        return AnalysisShape(_text(solid), faces)


def plain_plan(plan: Plan) -> Plan:
    """Return a plan without threads, edge breaks and mouth chamfers: they stiffen nothing and cost many elements."""
    kept = tuple(_without_mouth(f) for f in plan.features if f.kind not in _FILLED)
    return replace(plan, features=kept, body=replace(plan.body, edge_chamfer=0.0))


def _without_mouth(feature: Feature) -> Feature:
    if not feature.profile or feature.profile[0].part != "mouth_chamfer":
        return feature
    _, first, *others = feature.profile
    return replace(feature, profile=(replace(first, start=0.0), *others))


def _rings(plan: Plan) -> Iterator[Named]:
    """Yield a disc on the base face under each head; its hole is cut already."""
    places = plan.records["base_pattern"].value
    for index, place in enumerate(places if isinstance(places, tuple) else (), 1):
        if isinstance(place, tuple):
            radius = plan.number("base_bearing_diameter") / 2
            yield f"ring_{index}", _disc((float(place[0]), float(place[1]), 0.0), (0.0, 0.0, 1.0), radius)


def _footprints(plan: Plan) -> Iterator[Named]:
    """Yield the outline of each flange on its seat."""
    for end, x in (("bearing", 0.0), ("motor", plan.body.length)):
        width, height = (_half(plan, end, name) for name in ("flange_width", "flange_height"))
        centre = (x, 0.0, plan.number("shaft_height"))
        circular = plan.text(f"{end}.flange_shape") == "round"
        yield f"{end}_flange", _disc(centre, (1.0, 0.0, 0.0), width) if circular else _panel(centre, width, height)


def _half(plan: Plan, end: str, name: str) -> float:
    key = f"{end}.{name}"
    return plan.number(key if plan.text(key) else f"{end}.flange_size") / 2


def _disc(centre: Point, normal: Point, radius: float) -> TopoDS_Face:
    circle = gp_Circ(gp_Ax2(gp_Pnt(*centre), gp_Dir(*normal)), radius)
    edge = BRepBuilderAPI_MakeEdge(circle).Edge()
    return BRepBuilderAPI_MakeFace(BRepBuilderAPI_MakeWire(edge).Wire()).Face()


def _panel(centre: Point, half_width: float, half_height: float) -> TopoDS_Face:
    maker = BRepBuilderAPI_MakePolygon()
    for across, up in ((-1, -1), (1, -1), (1, 1), (-1, 1)):
        maker.Add(gp_Pnt(centre[0], centre[1] + across * half_width, centre[2] + up * half_height))
    maker.Close()
    return BRepBuilderAPI_MakeFace(maker.Wire()).Face()


def _split(block: BlockSolid, patches: Sequence[Named]) -> tuple[TopoDS_Solid, tuple[str, ...]]:
    """Split the faces of a solid along patches that lie in them, and name all of them, a patch before its face."""
    cut = BRepAlgoAPI_Splitter()
    cut.SetArguments(shape_list([block.shape]))
    cut.SetTools(shape_list([face for _, face in patches]))
    cut.Build()
    solids = solids_of(cut.Shape())
    if not cut.IsDone() or len(solids) != 1:
        raise KernelError("the kernel could not split the faces of the block where heads and flanges press")
    faces = [(face_id, face) for face_id, parts in block.faces.items() for face in parts]
    present = indexed(solids[0], TopAbs_FACE)
    names = [""] * present.Extent()
    for face_id, face in [*faces, *patches]:
        for part in items(cut.Modified(face)) or [face]:
            if index := present.FindIndex(part):
                names[index - 1] = face_id
    return solids[0], tuple(names)


def _text(solid: TopoDS_Solid) -> bytes:
    with tempfile.TemporaryDirectory() as place:
        path = Path(place) / "solid.brep"
        BRepTools.Write_s(solid, str(path))
        return path.read_bytes()
