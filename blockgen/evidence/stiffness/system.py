"""The elastic system of one mesh: assembled once, then held by one support after the other."""

from __future__ import annotations

from collections.abc import Iterable
from typing import TYPE_CHECKING, Any

from blockgen.evidence.stiffness.library import library
from blockgen.evidence.stiffness.rigid import boundaries

if TYPE_CHECKING:
    from blockgen.evidence.stiffness.rigid import Array


class System:
    """Stiffness matrix of a mesh, to which beds on faces are added, and its factors.

    Args:
        mesh: An ``ngsolve.Mesh``.
        modulus: Modulus of elasticity, MPa.
        poisson: Poisson's ratio.
        fixed: Parts that do not move, as ``ngsolve.VectorH1`` takes them; a block needs none.
    """

    def __init__(self, mesh: Any, modulus: float, poisson: float, **fixed: str) -> None:
        """Assemble the stiffness of the solid."""
        ngsolve = library()
        from blockgen.evidence.stiffness.mesh import ORDER

        self.space = ngsolve.VectorH1(mesh, order=ORDER, **fixed)
        self.modulus, self.poisson = modulus, poisson
        trial, test = self.space.TnT()
        form = ngsolve.BilinearForm(self.space, symmetric=True, symmetric_storage=True)
        form += ngsolve.InnerProduct(self.stress(trial), strain(test)) * ngsolve.dx
        form.Assemble()
        self._form, self._factors = form, None
        self._solid = form.mat.AsVector().FV().NumPy().copy()
        self._keys = _keys(form.mat)

    def stress(self, displacement: Any) -> Any:
        """Return the stress of a displacement as a function, MPa. Source: Hooke's law of an isotropic solid."""
        ngsolve = library()
        shear = self.modulus / (2 * (1 + self.poisson))
        lame = self.modulus * self.poisson / ((1 + self.poisson) * (1 - 2 * self.poisson))
        return 2 * shear * strain(displacement) + lame * ngsolve.div(displacement) * ngsolve.Id(3)

    def area_form(self, faces: tuple[str, ...]) -> Any:
        """Return the assembled form of displacement times displacement over some faces, mm2."""
        ngsolve = library()
        trial, test = self.space.TnT()
        form = ngsolve.BilinearForm(self.space, symmetric=True, symmetric_storage=True, check_unused=False)
        form += trial * test * ngsolve.ds(definedon=boundaries(self.space.mesh, faces))
        form.Assemble()
        return form

    def hold(self, beds: Iterable[tuple[Any, float]]) -> None:
        """Put springs on faces and factor the system.

        Args:
            beds: Forms of ``area_form`` with their stiffness in N/mm3.
        """
        import numpy as np

        values = self._solid.copy()
        for form, bed in beds:
            places = np.searchsorted(self._keys, _keys(form.mat))
            values[places] += bed * np.asarray(form.mat.AsVector().FV().NumPy())
        self._form.mat.AsVector().FV().NumPy()[:] = values
        if self._factors is None:
            self._factors = self._form.mat.Inverse(self.space.FreeDofs(), "sparsecholesky")
        else:
            self._factors.Update()

    @property
    def stiffness_matrix(self) -> Any:
        """The matrix as it is held now."""
        return self._form.mat

    def solve(self, forces: Array) -> Array:
        """Return displacements (unknowns, loads) in mm under nodal forces (unknowns, loads) in N."""
        import numpy as np

        given, found = self._form.mat.CreateColVector(), self._form.mat.CreateColVector()
        answers = np.empty_like(forces)
        for index in range(forces.shape[1]):
            given.FV().NumPy()[:] = forces[:, index]
            found.data = self._factors * given
            answers[:, index] = found.FV().NumPy()
        return answers


def strain(displacement: Any) -> Any:
    """Return the strain of a displacement as a function."""
    ngsolve = library()
    slope = ngsolve.Grad(displacement)
    return (slope + slope.trans) / 2


def _keys(matrix: Any) -> Any:
    """Return row times width plus column of each entry of a sparse matrix, in its order."""
    import numpy as np

    _, columns, starts = matrix.CSR()
    starts = np.asarray(starts, dtype=np.int64)
    rows = np.repeat(np.arange(len(starts) - 1, dtype=np.int64), np.diff(starts))
    return rows * matrix.width + np.asarray(columns, dtype=np.int64)
