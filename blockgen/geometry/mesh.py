"""Triangles of a solid: as a binary STL file, and face by face with the plan's face ids."""

from __future__ import annotations

from collections.abc import Mapping
from pathlib import Path

from OCP.BRep import BRep_Tool
from OCP.BRepMesh import BRepMesh_IncrementalMesh
from OCP.StlAPI import StlAPI_Writer
from OCP.TopAbs import TopAbs_REVERSED
from OCP.TopLoc import TopLoc_Location
from OCP.TopoDS import TopoDS_Face, TopoDS_Shape

from blockgen.errors import KernelError, MachineError
from blockgen.geometry.block import BlockSolid
from blockgen.geometry.kernel_path import to_write
from blockgen.plan import Point

DEFLECTION = 0.05
"""Greatest distance between triangle and surface, mm."""

ANGLE = 0.1
"""Greatest angle between neighbouring triangles on a round, rad."""

FAILED = 4 | 32 | 256
"""Status bits of the mesher that mean a missing mesh: failure, too few points, broken off."""

DOUBTFUL = 1 | 2 | 16
"""Status bits that may mean a bad mesh: open, crossing or unoriented outline. Where surfaces just touch, one is set
though the mesh is closed. The bits left tell that a mesh was found, and used again or not."""

Triangle = tuple[int, int, int]
FaceMesh = tuple[tuple[Point, ...], tuple[Triangle, ...]]


def mesh_solid(shape: TopoDS_Shape, deflection: float = DEFLECTION, angle: float = ANGLE) -> bool:
    """Put triangles on every face of a solid; the kernel keeps them with the faces.

    Args:
        shape: Solid.
        deflection: Greatest distance between triangle and surface, mm.
        angle: Greatest angle between neighbouring triangles, rad.

    Returns:
        False where the kernel doubts its mesh, so that the triangles ought to be looked at.

    Raises:
        KernelError: a face could not be meshed.
    """
    status = BRepMesh_IncrementalMesh(shape, deflection, False, angle, True).GetStatusFlags()
    if status & FAILED:
        raise KernelError(f"the kernel could not mesh a face of the solid (status {status})")
    return not status & DOUBTFUL


def write_solid_stl(shape: TopoDS_Shape, path: Path, header: bytes) -> None:
    """Write a solid as binary STL.

    Args:
        shape: Solid.
        path: File to write.
        header: The 80 bytes at the head of the file.

    Raises:
        KernelError: a face could not be meshed, or the triangles do not close.
        MachineError: the file could not be written.
    """
    sure = mesh_solid(shape)
    writer = StlAPI_Writer()
    writer.ASCIIMode = False
    with to_write(path) as name:
        written = writer.Write(shape, name)
    if not written:
        raise MachineError(f"cannot write {path}: is there room on the disk, and may you write there?")
    raw = path.read_bytes()
    if len(raw) != 84 + 50 * int.from_bytes(raw[80:84], "little"):
        raise MachineError(f"{path} was cut short while it was written; is there room on the disk?")
    stl = without_needles(raw)
    if not sure and not is_closed(stl):
        raise KernelError("the triangles of the solid do not close; two cavities may touch along a line")
    path.write_bytes(header + stl[len(header) :])


def is_closed(stl: bytes) -> bool:
    """Tell whether every edge of a binary STL is run through as often one way as the other."""
    balance: dict[tuple[bytes, bytes], int] = {}
    for at in range(84, len(stl), 50):
        a, b, c = (stl[at + offset : at + offset + 12] for offset in (12, 24, 36))
        for start, end in ((a, b), (b, c), (c, a)):
            key, sign = ((start, end), 1) if start < end else ((end, start), -1)
            balance[key] = balance.get(key, 0) + sign
    return not any(balance.values())


def without_needles(stl: bytes) -> bytes:
    """Return a binary STL without the triangles that have two equal corners.

    The kernel puts one at the tip of every cone. Without it the two neighbours share an edge, the surface is closed.
    """
    records = (stl[at : at + 50] for at in range(84, len(stl), 50))
    kept = [r for r in records if not (r[12:24] == r[24:36] or r[24:36] == r[36:48] or r[12:24] == r[36:48])]
    return stl[:80] + len(kept).to_bytes(4, "little") + b"".join(kept)


def face_meshes(block: BlockSolid) -> Mapping[str, FaceMesh]:
    """Return vertices (mm) and triangles (indices of vertices, outward) by face id, in the order of ``block.faces``."""
    mesh_solid(block.shape)
    return {face_id: _joined([_face_mesh(face) for face in faces]) for face_id, faces in block.faces.items()}


def _face_mesh(face: TopoDS_Face) -> FaceMesh:
    triangulation = BRep_Tool.Triangulation_s(face, TopLoc_Location())
    nodes = (triangulation.Node(i) for i in range(1, triangulation.NbNodes() + 1))
    corners = (triangulation.Triangle(i).Get() for i in range(1, triangulation.NbTriangles() + 1))
    turned = face.Orientation() == TopAbs_REVERSED
    triangles = tuple((a - 1, c - 1, b - 1) if turned else (a - 1, b - 1, c - 1) for a, b, c in corners)
    return tuple((n.X(), n.Y(), n.Z()) for n in nodes), triangles


def _joined(meshes: list[FaceMesh]) -> FaceMesh:
    vertices: list[Point] = []
    triangles: list[Triangle] = []
    for more_vertices, more_triangles in meshes:
        first = len(vertices)
        vertices.extend(more_vertices)
        triangles.extend((a + first, b + first, c + first) for a, b, c in more_triangles)
    return tuple(vertices), tuple(triangles)
