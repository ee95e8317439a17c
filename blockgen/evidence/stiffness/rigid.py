"""Rigid motion of a face and the wrench on it: by area, dual to one another, so that compliances are symmetric.

A motion is (shift x, y, z in mm; turn about x, y, z in rad) about a place, a wrench (forces in N; moments in N*mm)
about the same place.
"""

from __future__ import annotations

from dataclasses import dataclass
from typing import TYPE_CHECKING, Any

from blockgen.evidence.stiffness.library import library
from blockgen.plan import Point

if TYPE_CHECKING:
    import numpy as np

    Array = np.ndarray[Any, np.dtype[np.floating[Any]]]
    Whole = np.ndarray[Any, np.dtype[np.int64]]


@dataclass(frozen=True, slots=True)
class Patch:
    """A face or several, about a place.

    Args:
        columns: (unknowns, 6): the integral over the patch of the displacement times each rigid motion.
        gram: (6, 6): the integral of each rigid motion times each other.
        area: mm2.
    """

    columns: Array
    gram: Array
    area: float

    def spread(self, wrench: Array) -> Array:
        """Return the nodal forces (unknowns, ...) of wrenches (6, ...), as a linear pressure over the patch."""
        import numpy as np

        spread: Array = self.columns @ np.linalg.solve(self.gram, wrench)
        return spread

    def motion(self, displacement: Array) -> Array:
        """Return the rigid motions (6, ...) that fit displacements (unknowns, ...) best by area (least squares)."""
        import numpy as np

        fit: Array = np.linalg.solve(self.gram, self.columns.T @ displacement)
        return fit


def patch_of(space: Any, faces: tuple[str, ...], place: Point) -> Patch:
    """Return the patch of some faces of a displacement space.

    Args:
        space: An ``ngsolve.VectorH1``.
        faces: Ids of the faces.
        place: Where its motion is taken, mm.
    """
    import numpy as np

    ngsolve = library()
    where = ngsolve.ds(definedon=boundaries(space.mesh, faces))
    motions = rigid_motions(place)
    columns = np.column_stack([_functional(space, motion, where) for motion in motions])
    products = [[ngsolve.Integrate(one * other * where, space.mesh) for other in motions] for one in motions]
    area = ngsolve.Integrate(ngsolve.CF(1) * where, space.mesh)
    return Patch(columns, np.array(products), float(area))


def boundaries(mesh: Any, faces: tuple[str, ...]) -> Any:
    """Return the boundary region of some faces; names are taken as they stand, no pattern."""
    import re

    return mesh.Boundaries("|".join(re.escape(face) for face in faces))


def rigid_motions(place: Point) -> list[Any]:
    """Return the six rigid motions about a place as functions: three shifts, three turns."""
    ngsolve = library()
    x, y, z = (axis - at for axis, at in zip((ngsolve.x, ngsolve.y, ngsolve.z), place, strict=True))
    shifts = [ngsolve.CF((1, 0, 0)), ngsolve.CF((0, 1, 0)), ngsolve.CF((0, 0, 1))]
    return [*shifts, ngsolve.CF((0, -z, y)), ngsolve.CF((z, 0, -x)), ngsolve.CF((-y, x, 0))]


def _functional(space: Any, motion: Any, where: Any) -> Array:
    return linear_form(space, motion * space.TestFunction() * where)


def linear_form(space: Any, integrand: Any) -> Array:
    """Return the vector (unknowns,) of a linear form."""
    ngsolve = library()
    form = ngsolve.LinearForm(space)
    form += integrand
    form.Assemble()
    vector: Array = form.vec.FV().NumPy().copy()
    return vector


def moved(motion: Array, from_place: Point, to_place: Point) -> Array:
    """Return a rigid motion (6, ...) about another place of the same rigid part."""
    import numpy as np

    arm = np.subtract(to_place, from_place)
    turned = np.moveaxis(np.cross(np.moveaxis(motion[3:], 0, -1), arm), -1, 0)
    return np.concatenate((motion[:3] + turned, motion[3:]))
