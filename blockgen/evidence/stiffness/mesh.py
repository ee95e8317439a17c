"""Meshes of a subject: second-order curved tetrahedra, finer from level to level."""

from __future__ import annotations

import tempfile
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
        rim: Element on the rim of a ring under a head over the diameter of the head.
    """

    body: float
    round: float
    growth: float
    rim: float


LEVELS = (
    Level(1 / 6, 1.1, 0.9, 0.26),
    Level(1 / 8, 1.5, 0.8, 0.15),
    Level(1 / 9, 1.9, 0.75, 0.115),
    Level(1 / 12, 2.4, 0.7, 0.09),
)
"""From coarse to fine, about 1.2 times finer from one to the next."""

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
        except Exception as error:  # noqa: BLE001 # the mesher's own error has no public name
            last = error
            continue
        curve(found)
        return found
    raise KernelError(f"the solid cannot be meshed for the stiffness ({last})")


def curve(mesh: Any) -> int:
    """Bend the edges of a mesh on to the rounds, but for those that would turn an element inside out.

    Where an element is coarse against a round, its bent faces cross: its stiffness is then nonsense, though the solver
    says nothing. The bent edges are therefore put on as a deformation of the straight mesh, and those of bad elements
    stay straight.

    Returns:
        Number of edges that stay straight though they lie on a round.
    """
    ngsolve = library()
    mesh.Curve(ORDER)
    space = ngsolve.VectorH1(mesh, order=ORDER)
    bent = ngsolve.GridFunction(space)
    bent.Set(ngsolve.CF((ngsolve.x, ngsolve.y, ngsolve.z)))
    mesh.Curve(1)
    values = bent.vec.FV().NumPy()
    for component in range(3):
        start = component * (len(values) // 3)
        values[start : start + mesh.nv] = 0.0  # corners lie where they lie
    straight: set[int] = set()
    while bad := _turned(mesh, bent) - straight:
        straight |= bad
        for edge in sorted(bad):
            for dof in space.GetDofNrs(ngsolve.NodeId(ngsolve.EDGE, edge)):
                values[dof] = 0.0
    mesh.SetDeformation(bent)
    return len(straight)


def _turned(mesh: Any, bent: Any) -> set[int]:
    """Return the edges of all elements that a deformation turns inside out, or nearly."""
    import numpy as np

    ngsolve = library()
    mesh.SetDeformation(bent)
    points = mesh.MapToAllElements(ngsolve.IntegrationRule(ngsolve.TET, 6), ngsolve.VOL)
    volumes = np.asarray(ngsolve.Det(ngsolve.specialcf.JacobianMatrix(3))(points)).reshape(mesh.ne, -1)
    mesh.UnsetDeformation()
    bad = np.flatnonzero(volumes.min(axis=1) < LEAST_VOLUME * volumes.max(axis=1))
    return {edge.nr for number in bad for edge in mesh[ngsolve.ElementId(ngsolve.VOL, int(number))].edges}


def _generated(subject: Subject, level: Level, finer: float) -> Any:
    from netgen.meshing import SetMessageImportance
    from netgen.occ import OCCGeometry

    SetMessageImportance(0)
    shape = _shape(subject)
    for name, face in zip(subject.faces, shape.faces, strict=True):
        face.name = name
        if name.startswith("ring_"):
            for edge in face.edges:
                edge.maxh = level.rim * subject.head
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
