"""What the block presses on its base: the share of each screw, and the whole."""

from __future__ import annotations

from dataclasses import dataclass
from typing import TYPE_CHECKING, Any

from blockgen.evidence.stiffness.library import library
from blockgen.evidence.stiffness.rigid import boundaries, linear_form, patch_of
from blockgen.evidence.stiffness.subject import Subject
from blockgen.evidence.stiffness.supports import HEADS, Support, nearest
from blockgen.evidence.stiffness.system import System

if TYPE_CHECKING:
    from blockgen.evidence.stiffness.rigid import Array


@dataclass(frozen=True, slots=True)
class Grip:
    """The springs of a support.

    Args:
        bed: N/mm3.
        by_screw: (screws, 3, unknowns): the integral of each component of the displacement nearest to each screw.
        all_of_it: (unknowns, 6): the integral of the displacement times each rigid motion.
    """

    bed: float
    by_screw: Array
    all_of_it: Array

    def shares(self, displacement: Array) -> Array:
        """Return the force (screws, 3, loads) in N of the block on the base nearest to each screw."""
        share: Array = self.bed * (self.by_screw @ displacement)
        return share

    def whole(self, displacement: Array) -> Array:
        """Return the wrench (6, loads) of the block on the base about the centre of the bearing seat."""
        wrench: Array = self.bed * (self.all_of_it.T @ displacement)
        return wrench


def grip_of(system: System, subject: Subject, support: Support) -> Grip:
    """Return the springs of a support: under the heads each ring is a screw's, else what lies nearest to it."""
    import numpy as np

    patch = patch_of(system.space, support.faces, subject.bearing_seat)
    integrals = []
    for index, planes in enumerate(nearest(subject.screws), 1):
        if support.id == HEADS:
            integrals.append(_components(system.space, (f"ring_{index}",), None))
        else:
            integrals.append(_components(system.space, support.faces, _inside(planes)))
    return Grip(support.per_area(patch.area), np.array(integrals), patch.columns)


def _components(space: Any, faces: tuple[str, ...], weight: Any) -> list[Array]:
    ngsolve = library()
    where = ngsolve.ds(definedon=boundaries(space.mesh, faces))
    test = space.TestFunction()
    return [linear_form(space, test[axis] * (1 if weight is None else weight) * where) for axis in range(3)]


def _inside(planes: list[tuple[float, float, float]]) -> Any:
    """Return a function that is 1 nearest to one screw and 0 elsewhere; 1/2 on the border belongs to neither."""
    ngsolve = library()
    found = ngsolve.CF(1)
    for a, b, c in planes:
        found = found * ngsolve.IfPos(a * ngsolve.x + b * ngsolve.y - c, 0, 1)
    return found
