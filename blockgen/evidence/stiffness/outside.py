"""The outside of a mesh: its triangles, and the edges between its faces."""

from __future__ import annotations

from dataclasses import dataclass
from typing import TYPE_CHECKING, Any

if TYPE_CHECKING:
    from blockgen.evidence.stiffness.rigid import Array, Whole


_SHARP = 0.64  # cosine of 50 degrees: coarse triangles turn by nearly as much on a round


@dataclass(frozen=True, slots=True)
class Outside:
    """Triangles of the outside.

    Args:
        corners: Places of all corners of the mesh (corners, 3), mm.
        triangles: (triangles, 3): numbers of corners, counter-clockwise as seen from outside.
        faces: (triangles,): number of the face of the solid, from 0.
        names: Ids of these faces.
    """

    corners: Array
    triangles: Whole
    faces: Whole
    names: tuple[str, ...]

    def normals(self) -> Array:
        """Return the unit normals (triangles, 3), outwards."""
        import numpy as np

        a, b, c = (self.corners[self.triangles[:, i]] for i in range(3))
        across = np.cross(b - a, c - a)
        found: Array = across / np.linalg.norm(across, axis=1)[:, None]
        return found


def outside_of(mesh: Any) -> Outside:
    """Return the outside of a mesh."""
    import numpy as np

    raw = mesh.ngmesh
    corners = np.array(raw.Coordinates())
    solids, flats = raw.Elements3D().NumPy(), raw.Elements2D().NumPy()
    tetrahedra, triangles = solids["nodes"][:, :4].astype(np.int64) - 1, flats["nodes"][:, :3].astype(np.int64) - 1
    inner = _inner(tetrahedra, triangles, len(corners))
    a, b, c = (corners[triangles[:, i]] for i in range(3))
    inwards = np.einsum("ij,ij->i", np.cross(b - a, c - a), corners[inner] - a) > 0
    triangles[inwards] = triangles[inwards][:, [0, 2, 1]]
    return Outside(corners, triangles, flats["index"].astype(np.int64) - 1, tuple(mesh.GetBoundaries()))


def _inner(tetrahedra: Whole, triangles: Whole, count: int) -> Whole:
    """Return for each triangle the corner of its tetrahedron that lies inside."""
    import numpy as np

    sides = np.vstack([np.delete(tetrahedra, index, axis=1) for index in range(4)])
    tips = np.hstack([tetrahedra[:, index] for index in range(4)])
    keys, wanted = _key(sides, count), _key(triangles, count)
    order = np.argsort(keys, kind="stable")
    found: Whole = tips[order[np.searchsorted(keys[order], wanted)]]
    return found


def _key(rows: Whole, count: int) -> Whole:
    """Return one whole number for each set of corners (rows, n)."""
    import numpy as np

    keys = np.zeros(len(rows), dtype=np.int64)
    for column in np.sort(rows, axis=1).T:
        keys = keys * count + column
    return keys


@dataclass(frozen=True, slots=True)
class Edges:
    """Edges of the outside, each between two triangles.

    Args:
        ends: (edges, 2): numbers of corners.
        sides: (edges, 2): the two triangles.
        tips: (edges, 2): the corner of each triangle that is not on the edge.
    """

    ends: Whole
    sides: Whole
    tips: Whole


def edges_of(outside: Outside) -> Edges:
    """Return the edges of an outside, in an order that depends on its numbers only."""
    import numpy as np

    count = len(outside.triangles)
    ends = np.vstack([np.delete(outside.triangles, index, axis=1) for index in range(3)])
    tips = np.hstack([outside.triangles[:, index] for index in range(3)])
    order = np.argsort(_key(ends, len(outside.corners)), kind="stable").reshape(-1, 2)
    return Edges(np.sort(ends[order[:, 0]], axis=1), order % count, tips[order])


def parts_at(outside: Outside, edges: Edges) -> Whole:
    """Return the number of the face (edges, 2) on both sides; parts of a face with one id have one number."""
    import numpy as np

    numbers = {name: number for number, name in enumerate(outside.names)}
    found: Whole = np.array([numbers[name] for name in outside.names])[outside.faces[edges.sides]]
    return found


def sharp_edges(outside: Outside) -> Whole:
    """Return the ends (edges, 2) of the edges at which two faces meet at an angle, not flat and not as a seam."""
    import numpy as np

    edges = edges_of(outside)
    parts = parts_at(outside, edges)
    one, other = np.moveaxis(outside.normals()[edges.sides], 1, 0)
    found: Whole = edges.ends[(parts[:, 0] != parts[:, 1]) & (np.einsum("ij,ij->i", one, other) < _SHARP)]
    return found
