"""Adapters that join a block that exists to another motor: which fit, in order of pain, and why others do not."""

from __future__ import annotations

from blockgen.change.adapter.data import Adapter
from blockgen.change.adapter.plate import plate
from blockgen.change.adapter.ring import ring
from blockgen.change.rework.fit import turns
from blockgen.plan import Plan
from blockgen.record import Ledger
from blockgen.sizing.mating import hole_positions

_TURNS = 8
"""How many angles are tried for a plate whose holes come too near one another."""


def adapters(old: Plan, new: Plan) -> tuple[tuple[Adapter, ...], tuple[str, ...]]:
    """Return the adapters that fit, the least pain first, and why others do not.

    Args:
        old: Plan of the block that exists.
        new: Plan of the block that is wanted.
    """
    height = abs(old.number("shaft_height") - new.number("shaft_height"))
    if height > 1e-6:
        return (), (f"no adapter: the shafts stand {height:g} mm apart in height",)
    if _bearing_side(old) != _bearing_side(new):
        return (), ("no adapter: the bearing side is another one too, and an adapter helps at the motor only",)
    tried = [ring(old, new), *_plates(old, new)]
    found = sorted((each for each in tried if not isinstance(each, str)), key=lambda each: (each.pain, each.title))
    return tuple(found), tuple(dict.fromkeys(each for each in tried if isinstance(each, str)))


def _bearing_side(plan: Plan) -> tuple[object, ...]:
    """Return what the bearing unit asks of the block."""
    places = hole_positions(Ledger(plan.records.values()), "bearing")
    return plan.number("bearing_bore"), plan.text("bearing_thread"), plan.text("bearing.fastening"), places


def _plates(old: Plan, new: Plan) -> list[Adapter | str]:
    """Return the plate with the motor as it is, else turned by the least angle that helps."""
    first = plate(old, new)
    if not isinstance(first, str) or " beside " not in first:
        return [first]
    for turn in turns(new)[:_TURNS]:
        other = plate(old, new, turn)
        if not isinstance(other, str):
            return [other]
    return [first]
