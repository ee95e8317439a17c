"""First frequencies of the motor as a rigid body on its elastic seat; the block's own mass is left out."""

from __future__ import annotations

import math
from typing import TYPE_CHECKING

from blockgen.plan import Plan

if TYPE_CHECKING:
    from blockgen.evidence.stiffness.rigid import Array

COUNT = 3


def motor_mass(plan: Plan) -> Array | None:
    """Return the mass matrix (6, 6) of the motor about the centre of its seat in t, mm; None without its mass.

    A body whose size is not given counts as a point.

    Source: rigid body; a square bar has m a^2 / 6 about its length and m (a^2 + l^2) / 12 across it.
    """
    import numpy as np

    if not (_known(plan, "motor.mass") and _known(plan, "motor.centre_of_mass")):
        return None
    mass, arm = plan.number("motor.mass") / 1000, plan.number("motor.centre_of_mass")
    inertia = np.zeros(3)
    if _known(plan, "motor.body_size") and _known(plan, "motor.body_length"):
        side, length = plan.number("motor.body_size"), plan.number("motor.body_length")
        inertia[:] = mass * side**2 / 6, *[mass * (side**2 + length**2) / 12] * 2
    return body_mass(mass, inertia, arm)


def body_mass(mass: float, inertia: Array, arm: float) -> Array:
    """Return the mass matrix (6, 6) of a body about a place.

    Args:
        mass: t.
        inertia: (3,) about its centre of mass, t*mm2.
        arm: Centre of mass from the place along x, mm.
    """
    import numpy as np

    matrix = np.diag([mass, mass, mass, *inertia])
    matrix[[4, 5], [4, 5]] += mass * arm**2
    matrix[1, 5] = matrix[5, 1] = mass * arm
    matrix[2, 4] = matrix[4, 2] = -mass * arm
    return matrix


def frequencies(compliance: Array, mass: Array) -> list[float]:
    """Return the first frequencies in Hz of a body on an elastic seat.

    Args:
        compliance: (6, 6) of the seat, mm/N and so on.
        mass: (6, 6) of the body about the same place, t and mm.

    Source: C M v = v / omega^2.
    """
    import numpy as np

    values = np.linalg.eigvals(((compliance + compliance.T) / 2) @ mass).real
    greatest = sorted((float(v) for v in values), reverse=True)[:COUNT]
    return [1 / (2 * math.pi * math.sqrt(v)) for v in greatest if v > greatest[0] * 1e-9]


def first_force(compliance: Array, mass: Array) -> Array:
    """Return the inertia forces (6,) of the first frequency on the seat, of any length."""
    import numpy as np

    values, modes = np.linalg.eig(((compliance + compliance.T) / 2) @ mass)
    force: Array = mass @ modes[:, int(np.argmax(values.real))].real
    return force


def _known(plan: Plan, key: str) -> bool:
    record = plan.records.get(key)
    return record is not None and record.value is not None
