"""Loads on the block: seven unit loads, and the cases of service as sums of them.

Unit loads: a thrust of 1 N along x on the bearing seat, and the six forces and moments on the motor seat (1 N, 1 N*mm).
"""

from __future__ import annotations

from dataclasses import dataclass

from blockgen.mechanics.loads import DOWN, weight
from blockgen.plan import Plan

UNITS = ("thrust", "motor_fx", "motor_fy", "motor_fz", "motor_mx", "motor_my", "motor_mz")


@dataclass(frozen=True, slots=True)
class Case:
    """Loads that act at one time.

    Args:
        title: In words.
        thrust: Force along x on the bearing seat, N.
        factors: Factor of each unit load, in the order of UNITS.
    """

    title: str
    thrust: float
    factors: tuple[float, ...]


def cases_of(plan: Plan) -> tuple[Case, ...]:
    """Return the cases: thrust either way and none, each with the motor's torque either way and with its weight."""
    thrusts = [("towards the motor", _known(plan, "thrust_towards_motor")), ("away", -_known(plan, "thrust_away"))]
    thrusts = [*((name, value) for name, value in thrusts if value), ("at rest", 0.0)]
    torque, hanging = motor_torque(plan), motor_wrench(plan)
    found = []
    for name, thrust in thrusts:
        for sign, turn in ((1, "+"), (-1, "-")) if torque else ((0, ""),):
            fx, fy, fz, mx, my, mz = hanging
            words = f"{'' if not thrust else 'thrust '}{name}" + (f", torque {turn}" if turn else "")
            found.append(Case(words, thrust, (thrust, fx, fy, fz, mx + sign * torque, my, mz)))
    return tuple(found)


def motor_wrench(plan: Plan) -> tuple[float, float, float, float, float, float]:
    """Return the weight of the motor about the centre of its seat: N and N*mm; zero where its mass is not given."""
    x, y, z = DOWN[plan.text("job.gravity") or "-z"]
    pull, arm = weight(_known(plan, "motor.mass")), _known(plan, "motor.centre_of_mass")
    return x * pull, y * pull, z * pull, 0.0, -arm * z * pull, arm * y * pull


def motor_torque(plan: Plan) -> float:
    """Return the greatest torque of the motor, N*mm; the rated one where no other is given."""
    return 1000 * (_known(plan, "motor.peak_torque") or _known(plan, "motor.rated_torque"))


def _known(plan: Plan, key: str) -> float:
    record = plan.records.get(key)
    return 0.0 if record is None or record.value is None else plan.number(key)
