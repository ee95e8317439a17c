"""The window between the end walls: width, corner radius and what its length must give room for."""

from __future__ import annotations

import math
from dataclasses import dataclass

from blockgen.errors import Conflict, Cure, InfeasibleError, InputError, Problem
from blockgen.mechanics.volume import CLEAR_OF_SIDE_WALLS, PLAIN_RUN_OUT
from blockgen.record import Ledger
from blockgen.sizing.mating import Flange
from blockgen.sizing.rounding import up
from blockgen.sizing.sources import CP
from blockgen.standards.screws import cap_screw, preferred_length

# Usual end-mill diameters in mm (common practice, no source).
CUTTERS = (6.0, 8.0, 10.0, 12.0, 16.0, 20.0, 25.0)

FLAT = 0.1
"""Least flat that is left between two corners of the window, mm."""


def decide_window_width(ledger: Ledger, motor: Flange) -> float:
    """Decide the window width in mm: coupling swing, spanner and, for a tapped flange, screw heads."""
    clear = ledger.number("coupling.clearance")
    wants = [("coupling.swing_diameter + 2 x coupling.clearance", ledger.number("coupling.swing_diameter") + 2 * clear)]
    hardware = [key for key in ("bearing.nut_outer_diameter", "bearing.spanner_diameter") if ledger.known(key)]
    wants += [(f"{key} + 2 x coupling.clearance", ledger.number(key) + 2 * clear) for key in hardware]
    if motor.tapped:
        span = head_span(ledger, motor)
        wants.append((_head_formula(ledger, motor), span))
    what, width = max(wants, key=lambda item: item[1])
    if ledger.known("window_corner_room"):
        what, width = f"{what} + window_corner_room", width + ledger.number("window_corner_room")
    if ledger.known("block.window_width"):
        return _take_given(ledger, "window_width", width, what)
    value = up(width, ledger.number("practice.size_step"))
    rule = f"{what}; up to the next {ledger.number('practice.size_step'):g}"
    using = (
        "coupling.swing_diameter", "coupling.clearance", "bearing.nut_outer_diameter", "bearing.spanner_diameter",
        "window_corner_room", "practice.key_clearance", "practice.size_step",
    )  # fmt: skip
    ledger.decide("window_width", value, "mm", rule, using, CP)
    ledger.decide("window_width_least", width, "mm", what, using, CP)
    return value


def _take_given(ledger: Ledger, key: str, least: float, what: str) -> float:
    """Take a given size as it is; the checks compare it with the least one."""
    given = f"block.{key}"
    value = ledger.number(given)
    ledger.decide(key, value, "mm", f"given; at least {least:.2f} for {what}", (given,), origin=ledger[given].origin)
    ledger.decide(f"{key}_least", least, "mm", what, (given,), CP)
    return value


def head_span(ledger: Ledger, motor: Flange) -> float:
    """Return the width in mm that the screw heads of a tapped motor flange take, with room for the key."""
    across = ledger.text("block.window_axis") == "y"
    reach = max(abs(z) if across else abs(y) for y, z in motor.positions)
    head = cap_screw(motor.thread.size).head_diameter / 2
    return 2 * (reach + head + ledger.number("practice.key_clearance"))


def _head_formula(ledger: Ledger, motor: Flange) -> str:
    across = ledger.text("block.window_axis") == "y"
    reach = max(abs(z) if across else abs(y) for y, z in motor.positions)
    head = cap_screw(motor.thread.size).head_diameter / 2
    return f"2 x ({reach:.4g} + {head:.4g} + practice.key_clearance)"


def least_window_length(ledger: Ledger, motor: Flange, wall: float) -> float:
    """Return the window length in mm that heads, key and insertion of a tapped flange's screws need; else 0.

    Args:
        ledger: Completed ledger.
        motor: Motor flange.
        wall: Thickest motor wall that comes into question, mm.
    """
    if not motor.tapped:
        return 0.0
    screw = cap_screw(motor.thread.size)
    length = preferred_length(screw.size, wall + least_flange_engagement(ledger, motor)) or screw.lengths[-1]
    room = max(length + screw.head_height, screw.head_height + screw.key_short_arm)
    return room + ledger.number("practice.key_clearance")


def least_flange_engagement(ledger: Ledger, motor: Flange) -> float:
    """Return the engagement in mm asked for in a tapped motor flange, taken as steel or better aluminium: 1.25 d."""
    return ledger.number("practice.engagement_flange") * motor.thread.diameter


def decide_corner_radius(ledger: Ledger, depth: float, width: float) -> float:
    """Decide the window's corner radius in mm from the cutter that reaches ``depth`` in mm.

    Args:
        ledger: Ledger; block.cutter_diameter is entered where it is not given.
        depth: Depth of cut from one side, mm.
        width: Lesser side of the window, mm.

    Raises:
        InfeasibleError: the given cutter does not go round in the window.
        InputError: the given corner radius is more than half the lesser side.
    """
    ratio = ledger.number("practice.cut_depth_ratio")
    if not ledger.known("block.cutter_diameter"):
        usable = [c for c in CUTTERS if c <= width / 2.5] or [CUTTERS[0]]
        cutter = next((c for c in usable if depth / c <= ratio), usable[-1])
        rule = f"smallest usual cutter that cuts {depth:.1f} deep at {ratio:g} D, at most width / 2.5"
        using = ("window_width", "practice.cut_depth_ratio")
        ledger.decide("block.cutter_diameter", cutter, "mm", rule, using, CP, origin="assumed")
    cutter = ledger.number("block.cutter_diameter")
    least = ledger.number("practice.corner_factor") * cutter / 2
    ledger.decide(
        "window_cut_depth", depth, "mm", "depth of cut, half where the window is cut from both sides",
        ("height", "block.window_floor"), CP,
    )  # fmt: skip
    if ledger.known("block.window_corner_radius"):
        _require_corner(ledger, width)
        return _take_given(ledger, "window_corner_radius", least, "1.1 x cutter radius")
    if 2 * least > width - FLAT:
        raise _too_wide_a_cutter(cutter, width, least)
    value = min(up(least, 0.5), (width - FLAT) / 2)
    rule = "practice.corner_factor x block.cutter_diameter / 2; up to 0.5"
    using = ("block.cutter_diameter", "practice.corner_factor")
    ledger.decide("window_corner_radius", value, "mm", rule, using, CP)
    ledger.decide("window_corner_radius_least", least, "mm", "1.1 x cutter radius", using, CP)
    return value


def _too_wide_a_cutter(cutter: float, width: float, radius: float) -> InfeasibleError:
    """Return the conflict of a cutter with the window, and the next cutter that goes round in it."""
    facts = (
        f"the cutter leaves corners of {radius:.2f} mm radius, 1.1 x {cutter:g} / 2",
        f"the lesser side of the window is {width:.2f} mm",
    )
    missing = 2 * radius + FLAT - width
    keys = ("block.cutter_diameter", "window_length", "window_width")
    conflict = Conflict(f"cutter against the lesser side of the window: {missing:.2f} mm missing", missing, facts, keys)
    narrower = max((c for c in CUTTERS if c * radius / cutter * 2 <= width - FLAT), default=None)
    if narrower is None:
        return InfeasibleError([conflict], [])
    text = f"cutter {narrower:g} mm instead of {cutter:g} mm"
    change = ("block.cutter_diameter", narrower)
    cure = Cure(change[0], "narrower cutter", cutter, narrower, "mm", text, 2, verified=True, changes=(change,))
    return InfeasibleError([conflict], [cure])


def _require_corner(ledger: Ledger, width: float) -> None:
    radius = ledger.number("block.window_corner_radius")
    if 2 * radius > width - FLAT:
        expected = f"less than half the lesser side of the window, at most {(width - FLAT) / 2:g} mm"
        raise InputError([Problem("", None, "block.window_corner_radius", f"{radius:g} mm", expected, "")])


@dataclass(frozen=True, slots=True)
class _Corner:
    """A window corner beside one end of the coupling, mm.

    Args:
        depth: How far the coupling's end stands before the end wall, at the worst of its setting; at least 0.
        bore: Half width of the window at which the bore behind the seat clears the corner away; None where it does not.
        open: Radius of that bore.
    """

    depth: float
    bore: float | None
    open: float


def _corners(ledger: Ledger) -> list[_Corner]:
    setting, start = ledger.number("practice.setting_tolerance"), ledger.number("coupling_position")
    end = ledger.number("length") - start - ledger.number("coupling.length")
    asked = ledger.number("coupling.swing_diameter") / 2 + ledger.number("coupling.clearance")
    found = []
    for side, free in (("bearing", start), ("motor", end)):
        bore = ledger.number(f"{side}_through_bore") / 2
        # The bore always runs on a little past the wall, so nothing of the corner is left there.
        least = PLAIN_RUN_OUT if bore >= asked else 0.0
        depth = max(least, free - setting - ledger.number(f"{side}_wall"))
        found.append(_Corner(depth, bore + CLEAR_OF_SIDE_WALLS if bore >= asked else None, bore))
    return found


def corner_clearance(ledger: Ledger) -> float:
    """Return the least distance in mm from the coupling's swing to the window's sides and corner radii.

    Seen along the window, the coupling's end is a corner of a rectangle; where it stands beside a fillet of radius r,
    their distance is r less the distance from that corner to the fillet's centre.
    """
    half, radius = ledger.number("window_width") / 2, ledger.number("window_corner_radius")
    swing = ledger.number("coupling.swing_diameter") / 2
    room = half - swing
    for corner in _corners(ledger):
        if corner.depth < radius and swing > half - radius:
            fillet = radius - math.hypot(radius - corner.depth, swing - half + radius)
            cleared = corner.bore is not None and corner.bore <= half
            room = min(room, max(fillet, corner.open - swing) if cleared else fillet)
    return room


def _half_width_wanted(ledger: Ledger, corner: _Corner) -> float:
    """Return half the window width in mm at which the coupling keeps its clearance in one corner."""
    swing, clear = ledger.number("coupling.swing_diameter") / 2, ledger.number("coupling.clearance")
    radius = ledger.number("window_corner_radius")
    if corner.depth >= radius:
        return swing + clear
    across, along = radius - clear, radius - corner.depth
    wanted = swing + radius - (math.sqrt(across**2 - along**2) if across > along else 0.0)
    wanted = max(wanted, swing + clear)
    return wanted if corner.bore is None else min(wanted, corner.bore)


def corner_shortfall(ledger: Ledger, motor: Flange) -> float:
    """Return by how many mm the window must be wider because of its corner radii.

    The coupling keeps its clearance in the corners, and the screw heads of a tapped motor flange sit on the flat part
    of the end wall between them.
    """
    wanted = 2 * max(_half_width_wanted(ledger, corner) for corner in _corners(ledger))
    if motor.tapped:
        wanted = max(wanted, head_span(ledger, motor) + 2 * ledger.number("window_corner_radius"))
    return wanted - ledger.number("window_width")


def decide_corner_clearance(ledger: Ledger, motor: Flange) -> None:
    """Enter what the corner radii leave to the coupling's swing and to the screw heads, mm."""
    if motor.tapped:
        flat = ledger.number("window_width") / 2 - ledger.number("window_corner_radius")
        room = flat - head_span(ledger, motor) / 2 + ledger.number("practice.key_clearance")
        rule = "flat half of the end wall - outermost edge of a screw head"
        using: tuple[str, ...] = ("window_width", "window_corner_radius", "motor.bolt_circle", "motor_thread")
        ledger.decide("motor_head_room", round(room, 6), "mm", rule, using, "geometry of the window")
    rule = (
        "least distance from the swing to the window's sides and corner radii, the coupling set as far off as allowed"
    )
    using = (
        "window_width", "coupling.swing_diameter", "window_corner_radius", "coupling_position", "bearing_wall",
        "motor_wall", "practice.setting_tolerance",
    )  # fmt: skip
    value = round(corner_clearance(ledger), 6)
    ledger.decide("coupling_clearance_in_window", value, "mm", rule, using, "geometry of the window")
