"""A shape as few flat triangles to look at, with the face of each and the sharp edges between them."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from typing import Any

import numpy as np
from OCP.BRep import BRep_Tool
from OCP.BRepBuilderAPI import BRepBuilderAPI_Copy
from OCP.TopAbs import TopAbs_FACE, TopAbs_REVERSED
from OCP.TopLoc import TopLoc_Location
from OCP.TopoDS import TopoDS_Face, TopoDS_Shape

from blockgen.geometry.block import BlockSolid
from blockgen.geometry.kernel import faces_of, indexed
from blockgen.geometry.mesh import mesh_solid

DEFLECTION = 0.15
"""Greatest distance between triangle and surface, mm."""

ANGLE = 0.3
"""Greatest angle between neighbouring triangles on a round, rad."""

SHARP = 0.94
"""Faces whose triangles meet under a cosine below this (20 degrees) show an edge; rounds that run out do not."""

_SAME = 1e-5

Array = np.ndarray[tuple[int, ...], np.dtype[Any]]


@dataclass(frozen=True, slots=True, eq=False)
class Facets:
    """Triangles of a shape, those of a face one after the other.

    Args:
        points: Corners (n, 3), mm, each once.
        triangles: Indices of corners (m, 3), counter-clockwise from outside.
        faces: Number of the face of each triangle (m,), in the kernel's order of faces.
        edges: Indices of corners (k, 2) of the sharp edges.
    """

    points: Array
    triangles: Array
    faces: Array
    edges: Array


def facets(shape: TopoDS_Shape, deflection: float = DEFLECTION, angle: float = ANGLE) -> Facets:
    """Return a shape as triangles and sharp edges.

    The shape is copied first: a mesh that another file has left on its faces would be used again, and what is shown
    would depend on what was written before.

    Args:
        shape: Solid, in its own coordinates.
        deflection: Greatest distance between triangle and surface, mm.
        angle: Greatest angle between neighbouring triangles, rad.

    Raises:
        KernelError: a face could not be meshed.
    """
    copy = BRepBuilderAPI_Copy(shape, True, False).Shape()
    mesh_solid(copy, deflection, angle)
    return _welded([_of_face(face) for face in faces_of(copy)])


def face_ids(block: BlockSolid) -> tuple[str, ...]:
    """Return the plan's id of each face of a block, in the kernel's order; empty for a face without one."""
    numbers = indexed(block.shape, TopAbs_FACE)
    ids = [""] * numbers.Extent()
    for face_id, faces in block.faces.items():
        for face in faces:
            ids[numbers.FindIndex(face) - 1] = face_id
    return tuple(ids)


def _of_face(face: TopoDS_Face) -> tuple[Array, Array]:
    """Return corners and triangles of one face; none where the kernel has left it without."""
    location = TopLoc_Location()
    mesh = BRep_Tool.Triangulation_s(face, location)
    if mesh is None:
        return np.zeros((0, 3)), np.zeros((0, 3), dtype=np.int64)
    move = location.Transformation()
    nodes = (mesh.Node(i).Transformed(move) for i in range(1, mesh.NbNodes() + 1))
    points = np.array([(node.X(), node.Y(), node.Z()) for node in nodes])
    corners = np.array([mesh.Triangle(i).Get() for i in range(1, mesh.NbTriangles() + 1)], dtype=np.int64) - 1
    return points, corners[:, [0, 2, 1]] if face.Orientation() == TopAbs_REVERSED else corners


def _welded(meshes: Sequence[tuple[Array, Array]]) -> Facets:
    """Join the faces at their common corners; triangles shrunk to a line, as at a cone's tip, are left out."""
    starts = np.cumsum([0, *(len(points) for points, _ in meshes)])
    loose = np.concatenate([points for points, _ in meshes])
    corners = np.concatenate([triangles + first for (_, triangles), first in zip(meshes, starts, strict=False)])
    faces = np.repeat(np.arange(len(meshes)), [len(triangles) for _, triangles in meshes])
    _, first, number = np.unique(np.round(loose / _SAME), axis=0, return_index=True, return_inverse=True)
    triangles, points = number.reshape(-1)[corners], loose[first]
    whole = np.array([len(set(corner)) == 3 for corner in triangles.tolist()], dtype=bool)
    return Facets(points, triangles[whole], faces[whole], sharp_edges(points, triangles[whole], faces[whole]))


def sharp_edges(points: Array, triangles: Array, faces: Array) -> Array:
    """Return the edges (k, 2) between triangles of two faces that meet at an angle, and those of an open border."""
    sides = np.sort(np.concatenate([triangles[:, [0, 1]], triangles[:, [1, 2]], triangles[:, [2, 0]]]), axis=1)
    owner = np.tile(np.arange(len(triangles)), 3)
    order = np.lexsort((owner, sides[:, 1], sides[:, 0]))
    sides, owner = sides[order], owner[order]
    edges, start, count = np.unique(sides, axis=0, return_index=True, return_counts=True)
    one, other = owner[start], owner[start + count - 1]
    normals = _normals(points, triangles)
    apart = (normals[one] * normals[other]).sum(axis=1) < SHARP
    sharp: Array = edges[(count != 2) | (apart & (faces[one] != faces[other]))]
    return sharp


def _normals(points: Array, triangles: Array) -> Array:
    a, b, c = (points[triangles[:, i]] for i in range(3))
    across = np.cross(b - a, c - a)
    normals: Array = across / np.maximum(np.linalg.norm(across, axis=1, keepdims=True), 1e-12)
    return normals
