"""The outside of the block: a box with rounded or chamfered edges and named faces."""

from __future__ import annotations

from OCP.BRepFilletAPI import BRepFilletAPI_MakeChamfer, BRepFilletAPI_MakeFillet
from OCP.BRepPrimAPI import BRepPrimAPI_MakeBox
from OCP.gp import gp_Pnt
from OCP.TopAbs import TopAbs_VERTEX
from OCP.TopoDS import TopoDS, TopoDS_Edge, TopoDS_Shape, TopoDS_Solid

from blockgen.errors import KernelError
from blockgen.geometry.kernel import Named, common_edges, edges_of, indexed, items, kernel_errors, solids_of
from blockgen.plan import Body

UPRIGHT = (
    ("bearing_seat", "side_minus_y"),
    ("bearing_seat", "side_plus_y"),
    ("motor_seat", "side_minus_y"),
    ("motor_seat", "side_plus_y"),
)
"""The pairs of faces that meet in an edge parallel to z, in the order of corner.1 to corner.4."""


def body_solid(body: Body) -> tuple[TopoDS_Solid, list[Named]]:
    """Return the uncut block and its named faces.

    The edges parallel to z give corner.1 to corner.4, all others edge_break.1 and so on.

    Raises:
        KernelError: a fillet or chamfer does not fit on the box.
    """
    if 0 < body.outer_fillet <= body.edge_chamfer:
        raise KernelError(
            f"edge_chamfer {body.edge_chamfer:g} mm does not fit on outer_fillet {body.outer_fillet:g} mm; "
            "make the chamfer smaller than the fillet, or the fillet 0"
        )
    shape, named = _box(body)
    if body.outer_fillet > 0:
        shape, named = _rounded(shape, named, body.outer_fillet)
    if body.edge_chamfer > 0:
        shape, named = _chamfered(shape, named, body)
    return solids_of(shape)[0], named


def _box(body: Body) -> tuple[TopoDS_Shape, list[Named]]:
    maker = BRepPrimAPI_MakeBox(gp_Pnt(0.0, -body.width / 2, 0.0), body.length, body.width, body.height)
    shape = maker.Solid()
    return shape, [
        ("bearing_seat", maker.BackFace()),
        ("motor_seat", maker.FrontFace()),
        ("side_minus_y", maker.LeftFace()),
        ("side_plus_y", maker.RightFace()),
        ("base", maker.BottomFace()),
        ("top", maker.TopFace()),
    ]


def _rounded(shape: TopoDS_Shape, named: list[Named], radius: float) -> tuple[TopoDS_Shape, list[Named]]:
    maker = BRepFilletAPI_MakeFillet(shape)
    corners = _upright_edges(named)
    for edge in corners:
        maker.Add(radius, edge)
    return _built(maker, named, list(_numbered("corner", corners)), f"outer_fillet {radius:g} mm")


def _chamfered(shape: TopoDS_Shape, named: list[Named], body: Body) -> tuple[TopoDS_Shape, list[Named]]:
    maker = BRepFilletAPI_MakeChamfer(shape)
    corners = [] if body.outer_fillet > 0 else _upright_edges(named)
    upright = set(corners)
    breaks = [edge for edge in _rim_edges(named) if edge not in upright]
    for edge in [*corners, *breaks]:
        maker.Add(body.edge_chamfer, edge)
    vertices = indexed(shape, TopAbs_VERTEX)
    tips = [vertices.FindKey(i) for i in range(1, vertices.Extent() + 1)] if corners else []
    made_from = [*_numbered("corner", corners), *_numbered("edge_break", [*breaks, *tips])]
    return _built(maker, named, made_from, f"edge_chamfer {body.edge_chamfer:g} mm")


def _numbered(name: str, sources: list[TopoDS_Shape]) -> list[tuple[str, TopoDS_Shape]]:
    return [(f"{name}.{number}", source) for number, source in enumerate(sources, 1)]


def _upright_edges(named: list[Named]) -> list[TopoDS_Edge]:
    faces = dict(named)
    return [edge for one, other in UPRIGHT for edge in common_edges(faces[one], faces[other])]


def _rim_edges(named: list[Named]) -> list[TopoDS_Edge]:
    faces = dict(named)
    return [*edges_of(faces["base"]), *edges_of(faces["top"])]


def _built(
    maker: BRepFilletAPI_MakeFillet | BRepFilletAPI_MakeChamfer,
    named: list[Named],
    made_from: list[tuple[str, TopoDS_Shape]],
    what: str,
) -> tuple[TopoDS_Shape, list[Named]]:
    """Run a fillet or chamfer and carry the names over by its history."""
    with kernel_errors(f"the outside edges cannot be cut: {what} does not fit the block; make it smaller"):
        maker.Build()
        shape = maker.Shape()
    kept = [(name, TopoDS.Face_s(new)) for name, face in named for new in (items(maker.Modified(face)) or [face])]
    made = [(name, TopoDS.Face_s(new)) for name, source in made_from for new in items(maker.Generated(source))]
    return shape, [*kept, *made]
