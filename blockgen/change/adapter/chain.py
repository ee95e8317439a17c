"""What an adapter does to the shafts: its own clearance, coaxiality and parallelism beside the causes of the motor."""

from __future__ import annotations

from collections.abc import Iterable, Mapping, Sequence
from dataclasses import replace

from blockgen.alignment.chain import allowances, spread
from blockgen.alignment.scatter import clearance, disc, scaled, worst_case
from blockgen.alignment.terms import Term, angles, coupling_centre, offsets, shift, terms_of, tilt
from blockgen.change.adapter.data import ChainShare
from blockgen.plan import Plan
from blockgen.record import Ledger, Record
from blockgen.sizing.contributors import contributors, measuring_diameter
from blockgen.standards.iso286 import limits

_OF_THE_BLOCK = ("bearing_bore", "block.coaxiality", "block.seat_perpendicularity")


def spigot_clearance(bore: Record, diameter: float, shaft_class: str) -> tuple[float, float]:
    """Return least and greatest diametral clearance in mm of an adapter's outside in the bore of the block."""
    outside = limits(diameter, shaft_class)
    return round((bore.lower or 0.0) - outside.upper, 6), round((bore.upper or 0.0) - outside.lower, 6)


def clearance_term(name: str, bore: Record, diameter: float, shaft_class: str) -> Term:
    """Return the term of the clearance between adapter and block."""
    low, high = spigot_clearance(bore, diameter, shaft_class)
    hole = min((bore.upper or 0.0) - (bore.lower or 0.0), high - low)
    return shift(name, "motor", clearance(low, high, hole), "adapter.outside")


def coaxiality_term(name: str, zone: float) -> Term:
    """Return the term of the bore's coaxiality to the outside: a disc of half the zone, mm."""
    return shift(name, "motor", disc(zone / 2), "adapter.coaxiality")


def parallelism_term(plan: Plan, zone: float, length: float) -> Term:
    """Return the term of faces that are not parallel: zone over the measuring diameter of the motor.

    Args:
        plan: The arrangement with its coupling.
        zone: mm.
        length: x of the motor seat, mm.
    """
    across = measuring_diameter(Ledger(plan.records.values()), "motor")
    return tilt(
        "adapter_parallelism", "motor", disc(zone / across), coupling_centre(plan) - length, "adapter.parallelism"
    )


def on_old_block(old: Plan, new: Plan, seat: float, lies: tuple[float, float]) -> Plan:
    """Return the new arrangement on the old block with a plate before its motor seat.

    What the block adds is what the old one was made to; its motor seat tilts the plate about that seat.

    Args:
        old: Plan of the block that exists.
        new: Plan of the block that is wanted.
        seat: x of the block's motor seat, mm.
        lies: x of the seat of the motor and of the coupling's end towards the bearing, mm.
    """
    length, position = lies
    moved = {
        "length": replace(new.records["length"], value=length),
        "coupling_position": replace(new.records["coupling_position"], value=position),
    }
    records = {**new.records, **moved, **{key: old.records[key] for key in _OF_THE_BLOCK}}
    zone = old.number("block.seat_perpendicularity")
    tilted = zone / measuring_diameter(Ledger(old.records.values()), "motor")
    causes = tuple(
        replace(cause, seat_x=seat, size=tilted) if cause.id == "motor_seat_perpendicularity" else cause
        for cause in contributors(Ledger(records.values()))
    )
    return replace(new, records=records, contributors=causes)


def share(new: Plan, with_adapter: Iterable[Term], added: Sequence[Term]) -> ChainShare:
    """Return the shafts before and after.

    Args:
        new: The new motor on a block of its own.
        with_adapter: Terms of the arrangement with the adapter, its own among them.
        added: The adapter's own terms.
    """
    before, after = terms_of(new), tuple(with_adapter)
    limit = allowances(new).parallel
    alone, joined = spread(offsets(before), limit), spread(offsets(after), limit)
    greatest: Mapping[str, float] = {
        term.id: round(worst_case([scaled(term.scatter, term.offset_factor)]), 6) for term in added
    }
    return ChainShare(
        worst_before=alone.worst,
        worst_after=joined.worst,
        p95_before=alone.p95,
        p95_after=joined.p95,
        angle_before=worst_case(angles(before)),
        angle_after=worst_case(angles(after)),
        terms=greatest,
        limit=limit,
    )
