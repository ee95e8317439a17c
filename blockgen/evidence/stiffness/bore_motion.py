"""How the axes of the two bores move against one another, and how far the bores lose their form."""

from __future__ import annotations

from typing import TYPE_CHECKING, Any

from blockgen.evidence.stiffness.rigid import Patch, moved
from blockgen.plan import Point

if TYPE_CHECKING:
    from blockgen.evidence.stiffness.rigid import Array


def between_axes(bearing: Array, motor: Array, seats: tuple[Point, Point], coupling: Point) -> tuple[Array, Array]:
    """Return offset and slope between the shafts, motor less bearing.

    Args:
        bearing: Motion (6, ...) of the bearing bore about the centre of its seat.
        motor: Motion (6, ...) of the motor bore about the centre of its seat.
        seats: Centres of bearing and motor seat, mm.
        coupling: Centre of the coupling, where the offset is taken, mm.

    Returns:
        Offset (2, ...) in y and z in mm; slope (2, ...) as dy/dx and dz/dx in rad.
    """
    import numpy as np

    there = moved(motor, seats[1], coupling) - moved(bearing, seats[0], coupling)
    return there[1:3], np.stack((there[5], -there[4]))


def across_forces(bores: tuple[Patch, ...], seats: tuple[Point, Point], coupling: Point) -> Array:
    """Return the forces (unknowns, 4) whose work is offset in y and z and slope dy/dx and dz/dx between the shafts.

    Args:
        bores: Bearing and motor bore, each about the centre of its seat.
        seats: Centres of bearing and motor seat, mm.
        coupling: Centre of the coupling, mm.
    """
    import numpy as np

    none, each = np.zeros((6, 6)), np.eye(6)
    wrenches = []
    for index in range(2):
        offset, slope = between_axes(*((none, each) if index else (each, none)), seats, coupling)
        wrenches.append(np.vstack((offset, slope)).T)
    return sum(bore.spread(wrench) for bore, wrench in zip(bores, wrenches, strict=True))  # type: ignore[return-value]


def distortion(displacement: Array, form: Any, bore: Patch) -> Array:
    """Return the mean square (loads, loads) in mm2 of what is no rigid motion of a bore.

    Args:
        displacement: (unknowns, loads), mm.
        form: Form of displacement times displacement over the bore.
        bore: The bore.
    """
    import numpy as np

    given, found = form.mat.CreateRowVector(), form.mat.CreateColVector()
    products = np.empty_like(displacement)
    for index in range(displacement.shape[1]):
        given.FV().NumPy()[:] = displacement[:, index]
        found.data = form.mat * given
        products[:, index] = found.FV().NumPy()
    rigid = bore.columns.T @ displacement
    square: Array = (displacement.T @ products - rigid.T @ np.linalg.solve(bore.gram, rigid)) / bore.area
    return square
