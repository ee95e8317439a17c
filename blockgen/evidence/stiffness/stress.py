"""The greatest stress away from edges where the solid of theory has none: there it grows without limit."""

from __future__ import annotations

import math
from dataclasses import dataclass
from typing import TYPE_CHECKING, Any

from blockgen.evidence.stiffness.library import library
from blockgen.evidence.stiffness.outside import Edges, Outside, edges_of, outside_of, parts_at
from blockgen.evidence.stiffness.subject import Subject

if TYPE_CHECKING:
    from blockgen.evidence.stiffness.rigid import Array
    from blockgen.evidence.stiffness.system import System

AWAY = 2.0
"""Stress nearer than this to a re-entrant edge or to the edge of a held or pressed face is left out, mm."""

_BEND = math.cos(math.radians(20))  # an edge that turns by less is a seam of a round
_SPACING = 0.5  # points on an edge, mm


@dataclass(frozen=True, slots=True)
class Probe:
    """Points of a mesh at which the stress is taken.

    Args:
        rule: Points of an element, ``ngsolve.IntegrationRule``.
        mapped: The points in the mesh.
        places: (points, 3), mm.
        edges: (edge points, 3) along all singular edges, mm.
    """

    rule: Any
    mapped: Any
    places: Array
    edges: Array

    def stresses(self, system: System, displacement: Array) -> Array:
        """Return the stress (points, 6, loads) in MPa: xx, yy, zz, xy, xz, yz."""
        import numpy as np

        ngsolve = library()
        fields = [ngsolve.GridFunction(system.space) for _ in range(displacement.shape[1])]
        parts = []
        for index, field in enumerate(fields):
            field.vec.FV().NumPy()[:] = displacement[:, index]
            stress = system.stress(field)
            parts += [stress[i, j] for i, j in ((0, 0), (1, 1), (2, 2), (0, 1), (0, 2), (1, 2))]
        found = np.asarray(ngsolve.CF(tuple(parts)).Compile()(self.mapped))
        shaped: Array = np.moveaxis(found.reshape(len(self.places), len(fields), 6), 1, 2)
        return shaped

    def greatest(self, stress: Array, smooth: Array) -> tuple[float, tuple[float, float, float], float]:
        """Return the greatest comparative stress (von Mises) in MPa away from singular edges.

        Args:
            stress: (points, 6), MPa.
            smooth: The same averaged at the corners, (points, 6), MPa.

        Returns:
            The stress, its place in mm, and by how much the averaged one differs from it there.
        """
        import numpy as np

        comparative = von_mises(stress)
        for index in np.argsort(-comparative, kind="stable"):
            if self._away(self.places[index]):
                x, y, z = (float(c) for c in self.places[index])
                gap = abs(float(von_mises(smooth[index])) - float(comparative[index]))
                return float(comparative[index]), (x, y, z), gap
        return 0.0, (0.0, 0.0, 0.0), 0.0

    def _away(self, place: Array) -> bool:
        import numpy as np

        return bool(np.min(np.sum((self.edges - place) ** 2, axis=1), initial=math.inf) > AWAY**2)


def von_mises(stress: Array) -> Array:
    """Return the comparative stress (...,) of stresses (..., 6). Source: von Mises, distortion energy."""
    import numpy as np

    xx, yy, zz, xy, xz, yz = np.moveaxis(stress, -1, 0)
    normal = (xx - yy) ** 2 + (yy - zz) ** 2 + (zz - xx) ** 2
    found: Array = np.sqrt(normal / 2 + 3 * (xy**2 + xz**2 + yz**2))
    return found


def probe_of(subject: Subject, mesh: Any) -> Probe:
    """Return the points of a mesh at which the stress is taken."""
    import numpy as np

    ngsolve = library()
    rule = ngsolve.IntegrationRule(ngsolve.TET, 2)
    mapped = mesh.MapToAllElements(rule, ngsolve.VOL)
    places = ngsolve.CF((ngsolve.x, ngsolve.y, ngsolve.z))(mapped)
    return Probe(rule, mapped, np.asarray(places), singular_points(subject, outside_of(mesh)))


def singular_points(subject: Subject, outside: Outside) -> Array:
    """Return points (points, 3) along the edges where stress has no limit: re-entrant, or borders of pressed faces."""
    import numpy as np

    pressed = {name for name in subject.faces if name.startswith("ring_") or name.endswith("_flange") or name == "base"}
    edges = edges_of(outside)
    held = np.array([name in pressed for name in outside.names])[outside.faces[edges.sides]].any(axis=1)
    parts = parts_at(outside, edges)
    chosen = (parts[:, 0] != parts[:, 1]) & (held | _inwards(outside, edges))
    return _along(outside.corners[edges.ends[chosen]])


def _inwards(outside: Outside, edges: Edges) -> Any:
    """Tell which edges (edges,) are re-entrant and bent by more than a seam."""
    import numpy as np

    one, other = np.moveaxis(outside.normals()[edges.sides], 1, 0)
    over = outside.corners[edges.tips[:, 1]] - outside.corners[edges.ends[:, 0]]
    bent = np.einsum("ij,ij->i", one, other) < _BEND
    return bent & (np.einsum("ij,ij->i", one, over) > 0)


def _along(edges: Array) -> Array:
    """Return points (points, 3) along edges (edges, 2, 3)."""
    import numpy as np

    if not len(edges):
        return np.empty((0, 3))
    steps = np.maximum(2, np.ceil(np.linalg.norm(edges[:, 1] - edges[:, 0], axis=1) / _SPACING)).astype(int)
    return np.vstack([np.linspace(a, b, n) for (a, b), n in zip(edges, steps, strict=True)])
