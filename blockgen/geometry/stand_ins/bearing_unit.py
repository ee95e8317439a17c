"""The bearing unit: flange, pilot, housing behind it as far as the shaft shoulder, lock nut, bore for the screw."""

from __future__ import annotations

import math

from OCP.TopoDS import TopoDS_Solid

from blockgen.geometry.stand_ins.flange import Places, hole_places, hole_tools, outline
from blockgen.geometry.stand_ins.part import AssemblyPart, Colour
from blockgen.geometry.stand_ins.shapes import Station, circle, cut, joined, moved, prism, turned
from blockgen.geometry.stand_ins.sizes import note_of
from blockgen.plan import Plan
from blockgen.record import Ledger
from blockgen.standards.screws import cap_screw
from blockgen.standards.threads import thread

BEARING: Colour = (0.42, 0.50, 0.60)

_BESIDE_HEADS = 0.5  # between the housing behind the flange and the screw heads, mm


def bearing_unit(plan: Plan, sizes: Ledger) -> AssemblyPart:
    """Return the bearing unit on its seat; its own x axis points to the motor.

    Raises:
        KernelError: the sizes do not make one solid.
    """
    name = f"bearing unit {sizes.text('bearing.name')}".replace("bearing unit bearing", "bearing")
    place, note = moved(plan.frames["bearing_seat"].origin), note_of(sizes, plan, "bearing")
    return AssemblyPart(
        "bearing_unit", name, "bearing", bearing_solid(sizes, hole_places(plan, "bearing")), place, BEARING,
        stand_in=True, frame="centre of the mounting face; x towards the motor", note=note,
    )  # fmt: skip


def bearing_solid(sizes: Ledger, holes: Places) -> TopoDS_Solid:
    """Return the unit about the centre of its mounting face.

    Args:
        sizes: Records with the stand-ins' own.
        holes: Centres (y, z) of the flange's holes, mm.
    """
    thick = sizes.number("bearing.flange_thickness")
    steps, bore = outer_steps(sizes, holes), bore_steps(sizes)
    body = turned([*_stations(steps), *reversed(_stations(bore))])
    # The plate's own opening ends inside the turned body, so that no two surfaces coincide.
    least = max(radius for _, _, radius in bore)
    opening = (least + min(r for low, high, r in steps if low < 0.0 and high > -thick)) / 2
    plate = prism(outline(sizes, "bearing", -thick), thick, circle(opening, -thick))
    whole = joined(plate, [body])
    tools = hole_tools(sizes, "bearing", holes, -thick - 1.0, 1.0)
    if sizes.text("bearing.pilot_form") == "recessed":
        tools.append(_recess(sizes, least))
    return cut(whole, tools)


Step = tuple[float, float, float]
"""Start and end along x, radius, mm."""


def outer_steps(sizes: Ledger, holes: Places) -> list[Step]:
    """Return the turned outside from the rear to the nut."""
    thick, pilot = sizes.number("bearing.flange_thickness"), sizes.number("bearing.pilot_diameter") / 2
    proud, into = sizes.text("bearing.pilot_form") == "proud", sizes.text("bearing.pilot_direction") == "into_wall"
    front = sizes.number("bearing.pilot_length") if proud and into else 0.0
    rear = -thick - (sizes.number("bearing.pilot_length") if proud and not into else 0.0)
    shoulder, nut = -sizes.number("bearing.shoulder_offset"), sizes.number("bearing.nut_outer_diameter") / 2
    steps = [(rear, front, pilot)]
    if shoulder < rear:
        steps.insert(0, (shoulder, rear, _rear_radius(sizes, holes)))
    if sizes.number("bearing.nut_reach") > front:
        steps.append((front, sizes.number("bearing.nut_reach"), nut))
    return steps


def _rear_radius(sizes: Ledger, holes: Places) -> float:
    """Return the radius of the housing behind the flange: that of the pilot, as far as the screw heads leave room."""
    head = cap_screw(thread(sizes.text("bearing_thread")).size).head_diameter / 2 + _BESIDE_HEADS
    inside = min((math.hypot(y, z) - head for y, z in holes), default=math.inf)
    least = sizes.number("screw.seat_diameter") / 2 + 1.0
    return max(min(sizes.number("bearing.pilot_diameter") / 2, inside), least)


def bore_steps(sizes: Ledger) -> list[Step]:
    """Return the bore from the rear to the end of the nut: wider where the shoulder lies inside the unit."""
    seat, offset = sizes.number("screw.seat_diameter") / 2, sizes.number("bearing.shoulder_offset")
    ends = [(low, high) for low, high, _ in outer_steps(sizes, ())]
    rear, front = ends[0][0], ends[-1][1]
    if -offset <= rear:
        return [(rear, front, seat)]
    wide = min(sizes.number("screw.diameter"), sizes.number("bearing.pilot_diameter") - 4.0) / 2
    return [(rear, -offset, max(wide, seat)), (-offset, front, seat)]


def _recess(sizes: Ledger, bore: float) -> TopoDS_Solid:
    outer, deep = sizes.number("bearing.pilot_diameter") / 2, sizes.number("bearing.recess_depth")
    nut = sizes.number("bearing.nut_outer_diameter") / 2
    inner = max(bore, nut if sizes.number("bearing.nut_reach") > 0 else bore)
    return turned(((-deep, inner), (-deep, outer), (1.0, outer), (1.0, inner)))


def _stations(steps: list[Step]) -> list[Station]:
    """Return the corners of a stepped outline."""
    return [corner for low, high, radius in steps for corner in ((low, radius), (high, radius))]
