"""The axial layout with a plate between block and motor: the block ends, the shafts' distance goes on."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass, replace

from blockgen.plan import Plan
from blockgen.record import Ledger
from blockgen.sizing.axial import Bound, Layout, solve
from blockgen.sizing.layout import AxialTask, axial_task

_HAIR = 1e-6
_OF_THE_BLOCK = frozenset(
    {"key to motor-side clamp screw", "coupling clear of motor wall", "window length", "given window length"}
)


@dataclass(frozen=True, slots=True)
class PlateRoom:
    """What block and plate leave along the shaft, mm.

    Args:
        bearing_wall: Bearing wall of the block.
        bearing_opening: Opening of the bearing wall, diameter.
        window_end: x at which its window ends towards the motor.
        block_length: Length of the block, faced where it is.
        spigot: Length of the plate's spigot.
        behind_window: Opening of the motor wall, diameter.
        opening: Opening of the plate, diameter.
        thickness_tolerance: Of the plate, either way.
    """

    bearing_wall: float
    bearing_opening: float
    window_end: float
    block_length: float
    spigot: float
    behind_window: float
    opening: float
    thickness_tolerance: float


def plate_layout(new: Plan, room: PlateRoom) -> tuple[Layout, Layout]:
    """Return the layouts of nominal and of toleranced values; their length runs from seat to seat, plate included."""
    opening = replace(new.records["bearing_through_bore"], value=room.bearing_opening)
    ledger = Ledger({**new.records, opening.key: opening}.values())
    task = axial_task(ledger, (0.0, 0.0), (room.bearing_wall, 0.0), 0.0)
    facts = {**task.facts, "window_end": room.window_end, "plate_begin": room.block_length - room.spigot}
    bounds = (*(b for b in task.bounds if b.name not in _OF_THE_BLOCK), *_plate_bounds(new, room))
    length = task.tolerances["l"] + room.thickness_tolerance
    tolerances = {**task.tolerances, "l": length, "d": task.tolerances["c"] + length}
    moved = AxialTask(bounds, facts, tolerances, task.floors)
    return solve(moved.bounds, moved.facts), solve(moved.bounds, moved.facts, moved.tolerances)


def too_narrow(old: Plan, new: Plan) -> str:
    """Return what does not go into the window or through the bearing wall of the block, in words; empty where all does.

    Args:
        old: Plan of the block that exists.
        new: Plan of the block that is wanted.
    """
    window, clear = old.number("window_width"), new.number("coupling.clearance")
    for key in ("coupling.swing_diameter", "bearing.nut_outer_diameter", "bearing.spanner_diameter"):
        if key in new.records and new.records[key].value is not None:
            needed = new.number(key) + 2 * clear
            if window < needed - _HAIR:
                return f"no plate: {key} with its clearance asks for a window {needed:g} mm wide, it is {window:g} mm"
    opening = old.number("bearing_through_bore")
    nut = new.records.get("bearing.nut_outer_diameter")
    if nut is not None and nut.value is not None and new.number(nut.key) > opening - _HAIR:
        return (
            f"no plate: the lock nut of {new.number(nut.key):g} mm does not pass the bearing wall, {opening:g} mm open"
        )
    return ""


def _plate_bounds(new: Plan, room: PlateRoom) -> Iterator[Bound]:
    """Yield what bounds the coupling's place now that the window ends at a fixed x."""
    swing = new.number("coupling.swing_diameter") + 2 * new.number("coupling.clearance")
    end, length, clear = ("window_end", 1.0), ("coupling.length", -1.0), ("coupling.clearance", -1.0)
    position, key = ("coupling.clamp_position", 1.0), ("coupling.clamp_access_radius", -1.0)
    words = "the key must reach the motor-side clamp screw inside the window"
    yield Bound("key to motor-side clamp screw", "c_max", (end, length, position, key), words, removable=True)
    if room.behind_window < swing:
        words = "the opening of the motor wall is smaller than the coupling's swing"
        yield Bound("coupling clear of motor wall", "c_max", (end, length, clear), words)
    elif room.opening < swing:
        words = "the opening of the plate is smaller than the coupling's swing"
        yield Bound("coupling clear of plate", "c_max", (("plate_begin", 1.0), length, clear), words)
