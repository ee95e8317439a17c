"""Dowels between block and base, and lifting threads: cut where the base screws leave room."""

from __future__ import annotations

import math
from collections.abc import Sequence
from itertools import combinations, pairwise

from blockgen.plan import Feature
from blockgen.record import Ledger
from blockgen.sizing.base_screws import BaseScrew
from blockgen.sizing.cavities import Place, TapSize, dowel_hole, tapped_hole
from blockgen.sizing.rounding import down, up
from blockgen.sizing.seats import point_length
from blockgen.standards.din76 import drill_runout
from blockgen.standards.pins import pin_diameters
from blockgen.standards.threads import thread

Positions = Sequence[tuple[float, float]]
_SOURCE = "common practice, no source"
# Radial room over the pin in the upper, relieved part of a dowel hole, mm.
_RELIEF = 0.5


def decide_dowel(ledger: Ledger, screw: BaseScrew) -> float | None:
    """Decide the dowel diameter in mm, or None without dowels: given, or the next pin below the base screw."""
    asked = ledger["base.dowels"].value
    if asked is False:
        return None
    if asked is True:
        value = max(d for d in pin_diameters() if d <= screw.thread.diameter)
        rule = "pin not larger than the base screw"
    else:
        value, rule = ledger.number("base.dowels"), "given"
    ledger.decide("dowel_diameter", value, "mm", rule, ("base.dowels", "base_screw"), f"ISO 8734; {_SOURCE}")
    return value


def dowel_features(ledger: Ledger, screw: BaseScrew, positions: Positions) -> list[Feature]:
    """Return two dowel holes, each beside one of the two base screws that lie furthest apart; empty without dowels."""
    pin = decide_dowel(ledger, screw)
    if pin is None:
        return []
    beside = screw.radius + pin / 2 + _RELIEF + ledger.number("practice.cavity_floor")
    first, last = max(combinations(positions, 2), key=lambda pair: math.dist(*pair))
    middle = ledger.number("length") / 2
    spots = [_towards(spot, middle, beside) for spot in (first, last)]
    return [_dowel(ledger, pin, i, x, y) for i, (x, y) in enumerate(spots, 1)]


def _towards(spot: tuple[float, float], middle: float, distance: float) -> tuple[float, float]:
    """Return the place beside a screw, towards mid-length by a distance in mm or the next half millimetre."""
    x, y = spot
    return (up(x + distance, 0.5) if x < middle else down(x - distance, 0.5), y)


def _dowel(ledger: Ledger, pin: float, index: int, x: float, y: float) -> Feature:
    height = ledger.number("height")
    pilot = pin - ledger.number("practice.dowel_pilot")
    seat = min(height / 2, ledger.number("practice.dowel_depth") * pin)
    place = Place(f"dowel_{index}", "dowels", "top", (x, y, height), (0.0, 0.0, -1.0), {"diameter": "dowel_diameter"})
    return dowel_hole(place, pin, pilot, seat, height)


def lifting_features(ledger: Ledger, mass: float, positions: Positions) -> list[Feature]:
    """Return two lifting threads in the top, mid-way along the block, where it is heavy; else none.

    Args:
        ledger: Ledger of a sized block.
        mass: Mass of the block, kg.
        positions: Base-screw centres (x, y), mm.
    """
    if mass < ledger.number("practice.lifting_mass"):
        return []
    screw = thread(f"M{ledger.number('practice.lifting_size'):g}")
    rule = f"block of {mass:.1f} kg is lifted with tackle"
    ledger.decide(
        "lifting_thread", screw.designation, "", rule, ("practice.lifting_mass", "practice.lifting_size"), _SOURCE
    )
    depth = up(2 * screw.diameter + 2 * screw.pitch, 0.5)
    drilled = up(depth + drill_runout(screw), 0.5)
    point = point_length(screw.tap_drill, ledger.number("practice.drill_point_angle"))
    size = TapSize(screw.call_out, screw.diameter, screw.tap_drill, depth, drilled, point)
    x, y = _free_middle(ledger, positions)
    return [_lifting(ledger, size, i, x, side * y) for i, side in enumerate((1.0, -1.0), 1)]


def _free_middle(ledger: Ledger, positions: Positions) -> tuple[float, float]:
    """Return a place mid-way between the two screws nearest to mid-length on one side, or mid-length where there are none."""
    row, middle = sorted(p for p in positions if p[1] > 0), ledger.number("length") / 2
    gaps = [((a + b) / 2, y) for (a, y), (b, _) in pairwise(row)]
    if not gaps:
        return middle, (ledger.number("width") + ledger.number("window_width")) / 4
    x, y = min(gaps, key=lambda gap: abs(gap[0] - middle))
    return round(x, 1), y


def _lifting(ledger: Ledger, size: TapSize, index: int, x: float, y: float) -> Feature:
    place = Place(
        f"lifting_thread_{index}", "lifting_threads", "top", (x, y, ledger.number("height")), (0.0, 0.0, -1.0),
        {"thread": "lifting_thread"},
    )  # fmt: skip
    return tapped_hole(place, size)
