"""Holes of the base plate that belong to the block's base screws and dowels."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import replace

from blockgen.plan import Feature
from blockgen.record import Ledger
from blockgen.sizing.base_screws import BaseScrew
from blockgen.sizing.cavities import Place, TapSize, clearance_hole, tapped_hole
from blockgen.sizing.rounding import up
from blockgen.sizing.seats import point_length
from blockgen.sizing.sources import CP, cited
from blockgen.standards.din76 import drill_runout

DOWN = (0.0, 0.0, -1.0)


def decide_plate_thread(ledger: Ledger, screw: BaseScrew) -> None:
    """Decide full thread and drill depth of the tapped holes in the base plate, mm."""
    if screw.from_below:
        return
    pitches = ledger.number("practice.thread_extra_pitches") * screw.thread.pitch
    depth = min(up(ledger.number("base_engagement") + pitches, 0.5), ledger.number("base.thickness"))
    rule = "base_engagement + practice.thread_extra_pitches x base_screw_pitch; up to 0.5, at most the base plate"
    using = ("base_engagement", "practice.thread_extra_pitches", "base_screw_pitch")
    ledger.decide("plate_thread_depth", depth, "mm", rule, using, CP)
    drill = up(depth + drill_runout(screw.thread), 0.5)
    rule = f"plate_thread_depth + {drill_runout(screw.thread):.4g}; run-out, up to 0.5"
    ledger.decide("plate_drill_depth", drill, "mm", rule, ("plate_thread_depth",), cited("din76"))


def base_plate_features(
    ledger: Ledger, screw: BaseScrew, positions: Sequence[tuple[float, float]], dowels: Sequence[Feature]
) -> tuple[Feature, ...]:
    """Return the holes of the base plate under the block, in the block's coordinates.

    Args:
        ledger: Ledger of a sized block.
        screw: The base screw.
        positions: Base-screw centres (x, y), mm.
        dowels: Dowel holes of the block.
    """
    holes = [_plate_hole(ledger, screw, i, x, y) for i, (x, y) in enumerate(positions, 1)]
    return (*holes, *(_plate_dowel(ledger, dowel, i) for i, dowel in enumerate(dowels, 1)))


def _plate_hole(ledger: Ledger, screw: BaseScrew, index: int, x: float, y: float) -> Feature:
    thickness = ledger.number("base.thickness")
    if screw.from_below:
        place = Place(f"plate_hole_{index}", "plate_holes", "base", (x, y, 0.0), DOWN, {"diameter": "base_screw_hole"})
        return clearance_hole(place, screw.hole, thickness, 0.0, "plate_underside")
    place = Place(f"plate_thread_{index}", "plate_threads", "base", (x, y, 0.0), DOWN, {"thread": "base_screw"})
    drill = screw.thread.tap_drill
    point = point_length(drill, ledger.number("practice.drill_point_angle"))
    depth, drilled = ledger.number("plate_thread_depth"), ledger.number("plate_drill_depth")
    size = TapSize(screw.thread.call_out, screw.thread.diameter, drill, depth, drilled, point)
    through = drilled + point + screw.thread.pitch > thickness
    return tapped_hole(place, size, "plate_underside" if through else None, thickness)


def _plate_dowel(ledger: Ledger, dowel: Feature, index: int) -> Feature:
    """Return the pilot-drilled hole under a dowel of the block; it is reamed together with it."""
    x, y, _ = dowel.position
    place = Place(f"plate_dowel_{index}", "plate_dowels", "base", (x, y, 0.0), DOWN, {"diameter": "dowel_diameter"})
    depth = min(ledger.number("base.thickness"), 2.5 * ledger.number("dowel_diameter"))
    hole = clearance_hole(place, dowel.diameter, depth, 0.0, "plate_underside")
    pin = ledger.number("dowel_diameter")
    deep = "through" if depth >= ledger.number("base.thickness") else f"depth {depth:g}"
    text = f"diam {dowel.diameter:g} {deep}, ream diam {pin:g} H7 together with the block at assembly"
    return replace(hole, kind="dowel_hole", call_out=text)
