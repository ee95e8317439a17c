"""The end of the ball screw: shoulder, bearing seat with the thread of the lock nut, journal for the coupling."""

from __future__ import annotations

from OCP.TopoDS import TopoDS_Solid

from blockgen.geometry.stand_ins.part import AssemblyPart, Colour
from blockgen.geometry.stand_ins.shapes import moved, turned
from blockgen.geometry.stand_ins.sizes import note_of
from blockgen.plan import Plan
from blockgen.record import Ledger

JOURNAL: Colour = (0.80, 0.81, 0.82)


def screw_journal(plan: Plan, sizes: Ledger) -> AssemblyPart:
    """Return the end of the ball screw; its own origin is the centre of the bearing seat, x towards the motor."""
    name = f"ball screw end, journal {sizes.number('screw.journal_diameter'):g}"
    return AssemblyPart(
        "journal", name, "screw", journal_solid(sizes), moved(plan.frames["bearing_seat"].origin), JOURNAL,
        stand_in=True, frame="shaft axis in the bearing seat plane; x towards the motor",
        note=note_of(sizes, plan, "screw"),
    )  # fmt: skip


def journal_steps(sizes: Ledger) -> list[tuple[float, float, float]]:
    """Return start, end and radius of each cylinder along x, mm, from the screw's thread to the journal's end."""
    reach, shoulder = sizes.number("screw.journal_reach"), -sizes.number("bearing.shoulder_offset")
    seat_end = min(shoulder + sizes.number("screw.seat_length"), reach)
    thread_end = min(max(reach - sizes.number("screw.journal_smooth_length"), seat_end), reach)
    seat, journal = sizes.number("screw.seat_diameter") / 2, sizes.number("screw.journal_diameter") / 2
    steps = [
        (shoulder - sizes.number("screw.shown_length"), shoulder, sizes.number("screw.diameter") / 2),
        (shoulder, thread_end, seat),
        (thread_end, reach, journal),
    ]
    return [(low, high, radius) for low, high, radius in steps if high > low]


def journal_solid(sizes: Ledger) -> TopoDS_Solid:
    """Return the stepped end as one turned body."""
    steps = journal_steps(sizes)
    corners = [corner for low, high, radius in steps for corner in ((low, radius), (high, radius))]
    return turned([(steps[0][0], 0.0), *corners, (steps[-1][1], 0.0)])
