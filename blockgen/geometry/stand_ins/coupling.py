"""The coupling: two hubs bored for both shafts to their grips, what flexes between them, holes of the clamp screws."""

from __future__ import annotations

import math

from OCP.TopoDS import TopoDS_Shape, TopoDS_Solid

from blockgen.geometry.stand_ins.motor import key_box
from blockgen.geometry.stand_ins.part import AssemblyPart, Colour
from blockgen.geometry.stand_ins.shapes import Station, box, cut, moved, rod, turned
from blockgen.geometry.stand_ins.sizes import HEAD_POCKET, note_of
from blockgen.plan import Plan
from blockgen.record import Ledger

COUPLING: Colour = (0.80, 0.47, 0.20)

_LEAST_WALL = 1.0  # of a hub about its bore, mm
_LEAST_HOLE = 1.5  # below it the holes of the clamp screws are left out, mm


def coupling(plan: Plan, sizes: Ledger) -> AssemblyPart:
    """Return the coupling between both shafts; its own origin is its centre, x towards the motor.

    Raises:
        KernelError: the sizes do not make one solid.
    """
    name = f"coupling {sizes.text('coupling.name')}".replace("coupling coupling", "coupling")
    across = sizes.text("block.window_axis") == "y"
    return AssemblyPart(
        "coupling", name, "coupling", coupling_solid(sizes, across=across),
        moved(plan.frames["coupling_centre"].origin), COUPLING, stand_in=True,
        frame="centre of the coupling; x towards the motor", note=note_of(sizes, plan, "coupling"),
    )  # fmt: skip


def coupling_solid(sizes: Ledger, *, across: bool = False) -> TopoDS_Solid:
    """Return the coupling about its centre.

    Args:
        sizes: Records with the stand-ins' own.
        across: True where the clamp screws are reached along y, else along z.
    """
    body = turned([*outer_stations(sizes), *reversed(bore_stations(sizes))])
    return cut(body, [*clamp_tools(sizes, across=across), *_keyway(sizes)])


def outer_stations(sizes: Ledger) -> list[Station]:
    """Return the outside of hubs and waist from the bearing's end on."""
    half, radius = sizes.number("coupling.length") / 2, sizes.number("coupling.outer_diameter") / 2
    middle = half - sizes.number("coupling.hub_length")
    if middle <= 0 or not sizes.known("coupling.waist_diameter"):
        return [(-half, radius), (half, radius)]
    waist = sizes.number("coupling.waist_diameter") / 2
    return [(-half, radius), (-middle, radius), (-middle, waist), (middle, waist), (middle, radius), (half, radius)]


def bore_stations(sizes: Ledger) -> list[Station]:
    """Return the bores for journal and motor shaft, and the gap between the shaft ends as wide as the larger one.

    A shaft too thick for the coupling finds a bore that leaves a wall, so that the two are seen to share room.
    """
    half = sizes.number("coupling.length") / 2
    most = sizes.number("coupling.outer_diameter") / 2 - _LEAST_WALL
    shafts = (sizes.number(key) / 2 for key in ("screw.journal_diameter", "motor.shaft_diameter"))
    journal, shaft = (min(radius, most) for radius in shafts)
    low, high = -half + sizes.number("journal_grip"), half - sizes.number("motor_grip")
    change = low if shaft >= journal else high
    return [(-half, journal), (change, journal), (change, shaft), (half, shaft)]


def clamp_tools(sizes: Ledger, *, across: bool) -> list[TopoDS_Shape]:
    """Return a pocket for the head of the clamp screw beside each shaft, and its hole to the plane of the axis."""
    if sizes.number("coupling.clamp_hole") < _LEAST_HOLE:
        return []
    half, at = sizes.number("coupling.length") / 2, sizes.number("coupling.clamp_position")
    shafts = (sizes.number("screw.journal_diameter"), sizes.number("motor.shaft_diameter"))
    ends = zip((at - half, half - at), shafts, strict=True)
    return [tool for x, shaft in ends for tool in _clamp(sizes, x, shaft / 2, across=across)]


def _clamp(sizes: Ledger, x: float, shaft: float, *, across: bool) -> tuple[TopoDS_Shape, TopoDS_Shape]:
    """Return pocket and hole of the clamp screw at x: along z beside the shaft in y, or along y beside it in z."""
    outer, hole = sizes.number("coupling.outer_diameter") / 2, sizes.number("coupling.clamp_hole") / 2
    beside, wide = (shaft + outer) / 2, HEAD_POCKET * hole
    floor = math.sqrt(outer**2 - (beside + wide) ** 2) / 2
    low, high = (beside - wide, floor), (beside + wide, outer + 1.0)
    if across:
        low, high = low[::-1], high[::-1]
    start = (x, 0.0, beside) if across else (x, beside, 0.0)
    way = (0.0, 1.0, 0.0) if across else (0.0, 0.0, 1.0)
    return box((x - wide, *low), (x + wide, *high)), rod(start, way, hole, floor + hole)


def _keyway(sizes: Ledger) -> list[TopoDS_Shape]:
    """Return the slot for the motor's key."""
    if sizes.text("motor.shaft_end") != "keyed":
        return []
    end = sizes.number("coupling.length") / 2 - sizes.number("motor_grip")
    return [key_box(sizes, end)]
