"""The plan of a family: that of its first motor, with the holes, values and plans of the others beside it."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from dataclasses import replace

from blockgen.plan import Feature, Plan
from blockgen.record import Ledger, Record
from blockgen.sizing.family import entries, graft, is_of_motor, renamed, title_of
from blockgen.sizing.family_pattern import same_hole
from blockgen.sizing.features import seat_features
from blockgen.sizing.mating import Flange
from blockgen.sizing.rounds import Parts

# What the summary shows of each motor beside the block's own sizes.
_SHOWN = ("motor_length_min", "motor_length_max", "coupling_position", "shaft_gap", "journal_grip", "motor_grip",
          "motor_thread", "motor_engagement", "motor_thread_depth", "motor_drill_depth", "motor_screw_length",
          "motor_torque")  # fmt: skip


def further_holes(ledger: Ledger, parts: Parts) -> Iterator[Feature]:
    """Yield the holes of the further motors that are not there already, each motor's as a group of its own."""
    taken: list[tuple[Flange, tuple[float, float]]] = [(parts.motor, place) for place in parts.motor.positions]
    for member in parts.others:
        wanted = member.flange
        free = tuple(at for at in wanted.positions if not any(same_hole(wanted, at, f, there) for f, there in taken))
        yield from seat_features(ledger, replace(wanted, positions=free), member.seat, member.name)
        taken += [(wanted, at) for at in free]


def united(first: Plan, others: Sequence[Plan], turns: Sequence[str]) -> Plan:
    """Return the plan of a family.

    Args:
        first: The block with its first motor.
        others: The same block with each of the further motors, in their order.
        turns: In words, which motors are mounted turned.
    """
    further = entries(first.records)[1:]
    records = dict(first.records)
    for entry, other in zip(further, others, strict=True):
        for record in _own(other):
            records.setdefault(renamed(record.key, entry), graft(record, entry))
    shown = (renamed(key, entry) for entry in further for key in _SHOWN)
    lengths = ("motor_length_min", "motor_length_max")
    dimensions = (*first.dimensions, *(key for key in (*lengths, *shown) if key in records))
    notes = (_taken(first), *turns, *_rings(first), *_hubs(first, others), *first.notes)
    return replace(first, records=records, dimensions=dimensions, notes=notes, others=tuple(others))


def _own(plan: Plan) -> Iterator[Record]:
    """Yield the records of the motor that stands first in a plan."""
    return (r for r in plan.records.values() if is_of_motor(r.key))


def _taken(plan: Plan) -> str:
    titles = [title_of(plan.records, entry) for entry in entries(plan.records)]
    return (
        f"One block for {len(titles)} motors, one at a time: {', '.join(titles)}. The assembly shows {titles[0]}; "
        f"block, drawing and lists have the holes and screws of all."
    )


def _rings(plan: Plan) -> Iterator[str]:
    """Yield which further motors need a loose centring ring; the first one's stands among the notes of the block."""
    for entry in entries(plan.records)[1:]:
        if plan.text(f"{entry}.pilot_form") == "recessed":
            ring = f"a loose centring ring of diam {plan.number('motor_bore'):g} joins it to the bore"
            yield f"The flange of {title_of(plan.records, entry)} has a recess: {ring}."


def _hubs(first: Plan, others: Sequence[Plan]) -> Iterator[str]:
    """Yield that the coupling needs another hub for each shaft diameter, where these differ."""
    shafts = [round(plan.number("motor.shaft_diameter"), 3) for plan in (first, *others)]
    if len(set(shafts)) > 1:
        titles = (title_of(first.records, entry) for entry in entries(first.records))
        told = ", ".join(f"{shaft:g} mm for {title}" for shaft, title in zip(shafts, titles, strict=True))
        yield f"The motor shafts differ, so the coupling needs a motor-side hub bored for each: {told}."
