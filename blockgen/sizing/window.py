"""The window between the end walls: width, corner radius and what its length must give room for."""

from __future__ import annotations

import math

from blockgen.errors import InputError, Problem
from blockgen.record import Ledger
from blockgen.sizing.mating import Flange
from blockgen.sizing.rounding import up
from blockgen.sizing.sources import CP
from blockgen.standards.screws import cap_screw, preferred_length

# Usual end-mill diameters in mm (common practice, no source).
CUTTERS = (6.0, 8.0, 10.0, 12.0, 16.0, 20.0, 25.0)


def decide_window_width(ledger: Ledger, motor: Flange) -> float:
    """Decide the window width in mm: coupling swing, spanner and, for a tapped flange, screw heads."""
    clear = ledger.number("coupling.clearance")
    wants = [("coupling.swing_diameter + 2 x coupling.clearance", ledger.number("coupling.swing_diameter") + 2 * clear)]
    hardware = [key for key in ("bearing.nut_outer_diameter", "bearing.spanner_diameter") if ledger.known(key)]
    wants += [(f"{key} + 2 x coupling.clearance", ledger.number(key) + 2 * clear) for key in hardware]
    if motor.tapped:
        span = _head_span(ledger, motor)
        wants.append((f"{span:.2f}", span))
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


def _head_span(ledger: Ledger, motor: Flange) -> float:
    """Return the width in mm that the screw heads of a tapped motor flange take, with room for the key."""
    across = ledger.text("block.window_axis") == "y"
    reach = max(abs(z) if across else abs(y) for y, z in motor.positions)
    head = cap_screw(motor.thread.size).head_diameter / 2
    return 2 * (reach + head + ledger.number("practice.key_clearance"))


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
        width: Window width, mm.
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
    value = min(up(least, 0.5), math.floor(width))
    rule = "practice.corner_factor x block.cutter_diameter / 2; up to 0.5"
    using = ("block.cutter_diameter", "practice.corner_factor")
    ledger.decide("window_corner_radius", value, "mm", rule, using, CP)
    ledger.decide("window_corner_radius_least", least, "mm", "1.1 x cutter radius", using, CP)
    return value


def _require_corner(ledger: Ledger, width: float) -> None:
    radius = ledger.number("block.window_corner_radius")
    if 2 * radius > width:
        expected = f"at most half the lesser side of the window, {width / 2:g} mm"
        raise InputError([Problem("", None, "block.window_corner_radius", f"{radius:g} mm", expected, "")])


def corner_narrowing(ledger: Ledger) -> float:
    """Return by how many mm a corner radius narrows each side of the window at the coupling's ends.

    Where the bore behind a seat is smaller than the coupling's swing, the coupling ends inside the window, and at a
    distance u from the end wall the corner radius takes r - sqrt(r^2 - (r - u)^2).
    """
    needed = ledger.number("coupling.swing_diameter") + 2 * ledger.number("coupling.clearance")
    start, radius = ledger.number("coupling_position"), ledger.number("window_corner_radius")
    end = ledger.number("length") - start - ledger.number("coupling.length")
    narrowed = 0.0
    for side, free in (
        ("bearing", start - ledger.number("bearing_wall")),
        ("motor", end - ledger.number("motor_wall")),
    ):
        if ledger.number(f"{side}_through_bore") < needed and 0 <= free < radius:
            narrowed = max(narrowed, radius - math.sqrt(radius**2 - (radius - free) ** 2))
    return narrowed


def corner_shortfall(ledger: Ledger, motor: Flange) -> float:
    """Return by how many mm the window must be wider because of its corner radii.

    The coupling keeps its clearance in the corners, and the screw heads of a tapped motor flange sit on the flat part
    of the end wall between them.
    """
    narrowed, width = corner_narrowing(ledger), ledger.number("window_width")
    swing = ledger.number("coupling.swing_diameter") + 2 * ledger.number("coupling.clearance")
    missing = swing + 2 * narrowed - width if narrowed else 0.0
    if motor.tapped:
        flat = _head_span(ledger, motor) + 2 * ledger.number("window_corner_radius")
        missing = max(missing, flat - width)
    return missing


def decide_corner_clearance(ledger: Ledger, motor: Flange) -> None:
    """Enter what the corner radii leave to the coupling's swing and to the screw heads, mm."""
    if motor.tapped:
        flat = ledger.number("window_width") / 2 - ledger.number("window_corner_radius")
        room = flat - _head_span(ledger, motor) / 2 + ledger.number("practice.key_clearance")
        rule = "flat half of the end wall - outermost edge of a screw head"
        using: tuple[str, ...] = ("window_width", "window_corner_radius", "motor.bolt_circle", "motor_thread")
        ledger.decide("motor_head_room", round(room, 6), "mm", rule, using, "geometry of the window")
    half = (ledger.number("window_width") - ledger.number("coupling.swing_diameter")) / 2
    rule = "half window width - half swing, less what a corner radius takes at the coupling's end"
    using = ("window_width", "coupling.swing_diameter", "window_corner_radius", "coupling_position", "bearing_wall")
    value = round(half - corner_narrowing(ledger), 6)
    ledger.decide("coupling_clearance_in_window", value, "mm", rule, using, "geometry of the window")
