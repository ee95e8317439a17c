"""What the answer of a mesh lacks: the energy of the gap between its stress, which jumps, and a smooth one.

For the energy lacking in a pair of answers u and z, a(u - u_h, z - z_h), the true stress is put in place by the one
averaged at the corners. As the answers of unit loads and of the forces that measure a quantity are such pairs, it is
what the quantity lacks, and its parts tell which elements are to blame.

Source: Zienkiewicz and Zhu, recovery of stress (1987); dual weighting as in Becker and Rannacher (2001); from memory.
"""

from __future__ import annotations

from typing import TYPE_CHECKING, Any

from blockgen.evidence.stiffness.library import library

if TYPE_CHECKING:
    from blockgen.evidence.stiffness.rigid import Array
    from blockgen.evidence.stiffness.stress import Probe

CORNERS = 4


class Recovery:
    """Smooth stresses on a mesh; ``places`` are its corners (corners, 3), mm.

    Args:
        mesh: An ``ngsolve.Mesh``.
        probe: Its points, four an element.
        modulus: Modulus of elasticity, MPa.
        poisson: Poisson's ratio.
    """

    def __init__(self, mesh: Any, probe: Probe, modulus: float, poisson: float) -> None:
        """Note corners, weights and volumes of the elements."""
        import numpy as np

        ngsolve = library()
        places = np.array([list(point)[:3] for point in probe.rule.points])
        self._share = np.column_stack((places, 1 - places.sum(axis=1)))  # (points, corners)
        self._corners = mesh.ngmesh.Elements3D().NumPy()["nodes"][:, :4].astype(np.int64) - 1
        self._volumes = np.array(ngsolve.Integrate(ngsolve.CF(1), mesh, ngsolve.VOL, element_wise=True))
        self.places = np.array(mesh.ngmesh.Coordinates())  # as long as the mesh is not refined
        self._count, self._root = mesh.nv, compliance_root(modulus, poisson)

    def smooth(self, stress: Array) -> Array:
        """Return the stress (corners of the mesh, 6, ...) averaged over the elements about each corner.

        Args:
            stress: (points, 6, ...), MPa.
        """
        import numpy as np

        columns = stress.reshape(-1, CORNERS, stress[0].size)
        at_corners = np.linalg.inv(self._share) @ columns * self._volumes[:, None, None]
        total, weight = np.zeros((self._count, columns.shape[2])), np.zeros(self._count)
        for corner in range(CORNERS):
            np.add.at(total, self._corners[:, corner], at_corners[:, corner])
            np.add.at(weight, self._corners[:, corner], self._volumes)
        found: Array = (total / weight[:, None]).reshape(self._count, *stress.shape[1:])
        return found

    def at_points(self, smooth: Array) -> Array:
        """Return a smooth stress (corners of the mesh, 6) at the points, (points, 6)."""
        found: Array = (self._share @ smooth[self._corners]).reshape(-1, smooth.shape[1])
        return found

    def gaps(self, stress: Array, smooth: Array) -> Array:
        """Return the gap (elements, parts, loads), scaled so that the energy of two loads is the sum of products.

        Args:
            stress: (points, 6, loads), MPa.
            smooth: The same stress averaged at the corners, (corners of the mesh, 6, loads).
        """
        import numpy as np

        loads = stress.shape[2]
        filled = self._share @ smooth[self._corners].reshape(-1, CORNERS, 6 * loads)
        gap = filled.reshape(-1, CORNERS, 6, loads) - stress.reshape(-1, CORNERS, 6, loads)
        scaled = self._root @ gap * np.sqrt(self._volumes / CORNERS)[:, None, None, None]
        found: Array = scaled.reshape(len(self._volumes), CORNERS * 6, loads)
        return found


def compliance_root(modulus: float, poisson: float) -> Array:
    """Return the root R (6, 6) of Hooke's law turned round, R' R: stress xx, yy, zz, xy, xz, yz to energy."""
    import numpy as np

    law = np.diag([1.0] * 3 + [2 * (1 + poisson)] * 3)
    law[:3, :3] -= poisson * (1 - np.eye(3))
    root: Array = np.linalg.cholesky(law / modulus).T
    return root
