"""What was assumed about this machine, apart into what mates and what does not."""

from __future__ import annotations

from blockgen.plan import Plan
from blockgen.record import Record
from blockgen.sizing.defaults import mates


def assumed(plan: Plan) -> tuple[Record, ...]:
    """Return the assumed facts about this machine: what mates first, then the others in the order of the plan.

    Values of practice, the same for every block, are no facts about this one; they stand with the inputs.
    """
    return (*assumed_mating(plan), *assumed_otherwise(plan))


def assumed_mating(plan: Plan) -> tuple[Record, ...]:
    """Return the assumed geometry that mates with a bought part; while there is any, the design is preliminary."""
    return tuple(r for r in _assumed(plan) if mates(r.key))


def assumed_otherwise(plan: Plan) -> tuple[Record, ...]:
    """Return the other assumed facts."""
    return tuple(r for r in _assumed(plan) if not mates(r.key))


def _assumed(plan: Plan) -> list[Record]:
    of_this_machine = (r for r in plan.records.values() if not r.key.startswith("practice."))
    return [r for r in of_this_machine if r.origin == "assumed" and r.value is not None]
