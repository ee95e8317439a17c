"""The greatest stress away from edges where the solid of theory has none: there it grows without limit."""

from __future__ import annotations

import math
from dataclasses import dataclass
from typing import TYPE_CHECKING, Any

from blockgen.evidence.stiffness.library import library
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

    def greatest(self, stress: Array) -> tuple[float, tuple[float, float, float]]:
        """Return the greatest comparative stress (von Mises) in MPa away from singular edges, and its place in mm.

        Args:
            stress: (points, 6), MPa.
        """
        import numpy as np

        comparative = von_mises(stress)
        for index in np.argsort(-comparative, kind="stable"):
            if self._away(self.places[index]):
                x, y, z = (float(c) for c in self.places[index])
                return float(comparative[index]), (x, y, z)
        return 0.0, (0.0, 0.0, 0.0)

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
    return Probe(rule, mapped, np.asarray(places), singular_points(subject, mesh))


def singular_points(subject: Subject, mesh: Any) -> Array:
    """Return points (points, 3) along the edges where stress has no limit: re-entrant, or borders of pressed faces."""
    import numpy as np

    corners = np.array([vertex.point for vertex in mesh.vertices])
    pressed = {name for name in subject.faces if name.startswith("ring_") or name.endswith("_flange") or name == "base"}
    sides: dict[tuple[int, int], list[tuple[str, int]]] = {}
    for element in mesh.Elements(library().BND):
        nodes = [vertex.nr for vertex in element.vertices]
        for opposite in range(3):
            pair = sorted(nodes[:opposite] + nodes[opposite + 1 :])
            sides.setdefault((pair[0], pair[1]), []).append((element.mat, nodes[opposite]))
    inside = _inner_corners(mesh)
    chosen = [pair for pair, both in sides.items() if _singular(pair, both, corners, pressed, inside)]
    return _along([(corners[a], corners[b]) for a, b in chosen])


def _inner_corners(mesh: Any) -> dict[tuple[int, ...], int]:
    """Return for each triangle of the outside the corner of its tetrahedron that lies inside."""
    outside = {tuple(sorted(v.nr for v in e.vertices)) for e in mesh.Elements(library().BND)}
    found = {}
    for element in mesh.Elements(library().VOL):
        nodes = [vertex.nr for vertex in element.vertices]
        for index in range(4):
            face = tuple(sorted(nodes[:index] + nodes[index + 1 :]))
            if face in outside:
                found[face] = nodes[index]
    return found


def _singular(
    pair: tuple[int, int],
    both: list[tuple[str, int]],
    corners: Array,
    pressed: set[str],
    inside: dict[tuple[int, ...], int],
) -> bool:
    """Tell whether an edge of two triangles is re-entrant, or borders a held or pressed face."""
    import numpy as np

    (first, one), (second, other) = both
    if first == second:
        return False
    if first in pressed or second in pressed:
        return True
    a, b = corners[pair[0]], corners[pair[1]]
    normals = []
    for tip in (one, other):
        normal = np.cross(b - a, corners[tip] - a)
        within = corners[inside[tuple(sorted((*pair, tip)))]] - a
        normals.append(-np.sign(normal @ within) * normal / np.linalg.norm(normal))
    bent = normals[0] @ normals[1] < _BEND
    return bool(bent and normals[0] @ (corners[other] - a) > 0)


def _along(edges: list[tuple[Array, Array]]) -> Array:
    import numpy as np

    if not edges:
        return np.empty((0, 3))
    steps = [max(2, math.ceil(float(np.linalg.norm(b - a)) / _SPACING)) for a, b in edges]
    return np.vstack([np.linspace(a, b, n) for (a, b), n in zip(edges, steps, strict=True)])
