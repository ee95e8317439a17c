"""Tools for milled openings: a box with rounded corners, each wall named after the end of the block it faces."""

from __future__ import annotations

from collections.abc import Sequence

from OCP.BRepFilletAPI import BRepFilletAPI_MakeFillet
from OCP.BRepPrimAPI import BRepPrimAPI_MakeBox
from OCP.gp import gp_Pnt
from OCP.TopoDS import TopoDS, TopoDS_Face, TopoDS_Shape

from blockgen.geometry.kernel import Named, common_edges, items, kernel_errors
from blockgen.mechanics.volume import pocket_box
from blockgen.plan import Body, Feature, Pocket

OVERSHOOT = 1.0
"""How far a tool stands out of the block where it runs out to the outside, mm."""

WALLS = (("bearing_wall", "motor_wall"), ("side_minus_y", "side_plus_y"), ("floor", "roof"))
"""Names of the faces at the low and the high end of x, y, z."""


def pocket_tool(feature: Feature, pocket: Pocket, body: Body) -> tuple[TopoDS_Shape, list[Named]]:
    """Return the tool of a milled opening and its named faces; walls that run out to the outside have none."""
    low, high, runs_out = pocket_box(pocket, body)
    start = gp_Pnt(*(v - OVERSHOOT * out for v, (out, _) in zip(low, runs_out, strict=True)))
    end = gp_Pnt(*(v + OVERSHOOT * out for v, (_, out) in zip(high, runs_out, strict=True)))
    maker = BRepPrimAPI_MakeBox(start, end)
    shape = maker.Solid()
    pairs = ((maker.BackFace(), maker.FrontFace()), (maker.LeftFace(), maker.RightFace()))
    faces = (*pairs, (maker.BottomFace(), maker.TopFace()))
    named = [
        (feature.face_id(name), face)
        for names, both, open_ends in zip(WALLS, faces, runs_out, strict=True)
        for name, face, open_end in zip(names, both, open_ends, strict=True)
        if not open_end
    ]
    if pocket.corner_radius <= 0:
        return shape, named
    around = faces[:1] + (faces[2:] if pocket.axis == "y" else faces[1:2])
    return _rounded(feature, pocket.corner_radius, shape, named, around)


def _rounded(
    feature: Feature,
    radius: float,
    shape: TopoDS_Shape,
    named: list[Named],
    around: Sequence[tuple[TopoDS_Face, TopoDS_Face]],
) -> tuple[TopoDS_Shape, list[Named]]:
    """Round the four edges along the cutting axis; the names are carried over by the fillet's history."""
    maker = BRepFilletAPI_MakeFillet(shape)
    (back, front), (left, right) = around
    corners = [common_edges(a, b)[0] for a in (back, front) for b in (left, right)]
    for edge in corners:
        maker.Add(radius, edge)
    with kernel_errors(f"{feature.id}: corner radius {radius:g} mm does not fit; make it smaller"):
        maker.Build()
        shape = maker.Shape()
    walls = [(name, TopoDS.Face_s(new)) for name, face in named for new in (items(maker.Modified(face)) or [face])]
    rounds = [
        (feature.face_id(f"corner_{number}"), TopoDS.Face_s(face))
        for number, edge in enumerate(corners, 1)
        for face in items(maker.Generated(edge))
    ]
    return shape, [*walls, *rounds]
