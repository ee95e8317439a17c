"""Meshes of a subject: second-order curved tetrahedra, coarse at first, then finer where it counts."""

from __future__ import annotations

import tempfile
from collections.abc import Mapping, Sequence
from dataclasses import dataclass
from pathlib import Path
from typing import Any

from blockgen.errors import KernelError
from blockgen.evidence.stiffness.library import library, silence
from blockgen.evidence.stiffness.subject import Subject

ORDER = 2
LEAST_VOLUME = 0.1
"""Least ratio of volume within one element, so that it is far from inside out."""


@dataclass(frozen=True, slots=True)
class Level:
    """How fine a mesh is.

    Args:
        body: Largest element over the greatest outside dimension.
        round: Elements on a round: its radius of curvature over this is the size there.
        growth: How fast elements grow, 0 to 1.
    """

    body: float
    round: float
    growth: float


COARSE = Level(1 / 6, 1.1, 0.9)
"""The first mesh: seven elements about a hole; with fewer, what the rounds lose in volume tells."""

EVEN = Level(1 / 8, 1.5, 0.8)
"""Finer everywhere; used where the first mesh cannot be refined."""

_EASED, _EASINGS = 0.6, 3  # an edge keeps so much of its bend at each try, so many times
_TRIES = (1.0, 1.25, 1.6)  # a surface that is too coarse on a round may cross itself


def mesh_of(subject: Subject, level: Level) -> Any:
    """Return the mesh of a subject, an ``ngsolve.Mesh`` whose boundaries have the ids of the faces.

    The text is read anew for every mesh: a solid that was meshed before gives another mesh.

    Raises:
        KernelError: no mesh can be made.
    """
    ngsolve = library()
    for finer in _TRIES:
        try:
            with silence():
                found = ngsolve.Mesh(_generated(subject, level, finer))
                curve(found)
        except Exception as error:  # noqa: BLE001 # the mesher's own error has no public name
            last = error
            continue
        return found
    raise KernelError(f"the solid cannot be meshed for the stiffness ({last})")


def refine(mesh: Any, marked: Sequence[int]) -> None:
    """Cut some elements of a mesh in place, and those beside them as far as it must be; corners keep their numbers.

    Args:
        mesh: A mesh of ``mesh_of``.
        marked: Numbers of the elements.

    Raises:
        KernelError: an element is inside out even with straight edges; the mesh is of no more use then.
    """
    ngsolve = library()
    chosen = set(marked)
    mesh.UnsetDeformation()
    for number in range(mesh.ne):
        mesh.SetRefinementFlag(ngsolve.ElementId(ngsolve.VOL, number), number in chosen)
    with silence():
        mesh.Refine()
    curve(mesh)


def curve(mesh: Any) -> int:
    """Bend the edges of a mesh on to the rounds, less so where an element would turn inside out.

    Where an element is coarse against a round, its bent faces cross: its stiffness is then nonsense, though the solver
    says nothing. The bent edges are therefore put on as a deformation of the straight mesh, and those of bad elements
    are bent less and less, and at last stay straight. Where that is not enough, corners that came of a cut and were put
    on to a round go back in the same way to the middle of the edge that was cut.

    Returns:
        Number of edges and corners that lie off the round they belong to.

    Raises:
        KernelError: an element is inside out all the same.
    """
    space, bent = _bent(mesh)
    values = bent.vec.FV().NumPy().reshape(3, -1)
    tries: dict[int, int] = {}  # by the place of an edge or a corner in the values
    volumes = _volumes(mesh, bent)
    while bad := _turned(mesh, space, volumes, tries):
        for node in sorted(bad):
            tries[node] = tries.get(node, 0) + 1
            kept = _EASED if tries[node] <= _EASINGS else 0.0
            values[:, node] = kept * values[:, node] + (1 - kept) * _unbent(mesh, values, node)
        volumes = _volumes(mesh, bent)
    if volumes.min() <= 0:
        raise KernelError("the solid cannot be meshed for the stiffness (an element is inside out)")
    mesh.SetDeformation(bent)
    return len(tries)


def _bent(mesh: Any) -> tuple[Any, Any]:
    """Straighten a mesh; return a space and in it how far each edge is bent on to its round."""
    ngsolve = library()
    mesh.Curve(ORDER)
    space = ngsolve.VectorH1(mesh, order=ORDER)
    bent = ngsolve.GridFunction(space)
    bent.Set(ngsolve.CF((ngsolve.x, ngsolve.y, ngsolve.z)))
    mesh.Curve(1)
    bent.vec.FV().NumPy().reshape(3, -1)[:, : mesh.nv] = 0.0  # corners lie where they lie
    return space, bent


def _unbent(mesh: Any, values: Any, node: int) -> Any:
    """Return the deformation (3,) at which an edge is straight, or a corner lies in the middle of the edge cut."""
    import numpy as np

    parents = mesh.GetParentVertices(node) if node < mesh.nv else ()
    if len(parents) < 2 or min(parents) < 0:
        return np.zeros(3)
    places = [np.array(mesh.vertices[n].point) + values[:, n] for n in parents]
    return sum(places) / 2 - np.array(mesh.vertices[node].point)


def _turned(mesh: Any, space: Any, volumes: Any, tries: Mapping[int, int]) -> set[int]:
    """Return what may still be eased of elements that are inside out, or nearly: their edges, then their corners."""
    import numpy as np

    ngsolve = library()
    found: set[int] = set()
    for number in np.flatnonzero(volumes.min(axis=1) < LEAST_VOLUME * volumes.max(axis=1)):
        nodes = space.GetDofNrs(ngsolve.ElementId(ngsolve.VOL, int(number)))
        left = [node for node in nodes if node < space.ndof // 3 and tries.get(node, 0) <= _EASINGS]
        found |= {node for node in left if node >= mesh.nv} or set(left)
    return found


def _volumes(mesh: Any, bent: Any) -> Any:
    """Return the ratio of volume (elements, points) under a deformation."""
    import numpy as np

    ngsolve = library()
    mesh.SetDeformation(bent)
    points = mesh.MapToAllElements(ngsolve.IntegrationRule(ngsolve.TET, 6), ngsolve.VOL)
    volumes = np.asarray(ngsolve.Det(ngsolve.specialcf.JacobianMatrix(3))(points)).reshape(mesh.ne, -1)
    mesh.UnsetDeformation()
    return volumes


def _generated(subject: Subject, level: Level, finer: float) -> Any:
    from netgen.meshing import SetMessageImportance
    from netgen.occ import OCCGeometry

    SetMessageImportance(0)
    shape = _shape(subject)
    for name, face in zip(subject.faces, shape.faces, strict=True):
        face.name = name
    return OCCGeometry(shape).GenerateMesh(
        maxh=level.body * subject.size / finer, curvaturesafety=level.round * finer, grading=level.growth,
        optsteps3d=2, parallel_meshing=False,
    )  # fmt: skip


def _shape(subject: Subject) -> Any:
    from netgen.occ import OCCGeometry

    with tempfile.TemporaryDirectory() as place:
        path = Path(place) / "solid.brep"
        path.write_bytes(subject.brep)
        return OCCGeometry(str(path)).shape
