"""Check of the drive: the thrust that the motor can make against the thrust that was given."""

from __future__ import annotations

from collections.abc import Iterator

from blockgen.checks.finding import Finding, Question, at_most, not_assessed
from blockgen.mechanics.loads import thrust_of_torque
from blockgen.plan import Plan
from blockgen.sizing.loads import known

_NEEDED = ("motor.peak_torque", "screw.lead", "screw.efficiency", "screw.thrust")


def drive(plan: Plan) -> Iterator[Finding]:
    """Compare the thrust at the motor's peak torque with the thrust given: a crash brings all of it."""
    missing = tuple(key for key in _NEEDED if not known(plan.records, key))
    ask = Question(
        "drive_thrust", "Thrust at the motor's peak torque against the thrust given", _NEEDED,
        "the motor can push harder than the joints are checked for: limit its torque, or give that thrust",
        "work of one turn: F = 2 pi eta M / lead", "warn",
    )  # fmt: skip
    if missing:
        yield not_assessed(plan, ask, " and ".join(missing), *missing)
        return
    torque, lead, efficiency, thrust = (plan.number(key) for key in _NEEDED)
    text = "the motor cannot push harder than the joints are checked for"
    yield at_most(plan, ask, thrust_of_torque(torque, lead, efficiency), abs(thrust), "N", text)
