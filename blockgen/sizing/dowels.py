"""Dowels between block and base, and lifting threads: cut where the base screws leave room."""

from __future__ import annotations

from collections.abc import Sequence

from blockgen.plan import Feature
from blockgen.record import Ledger
from blockgen.sizing.base_screws import BaseScrew
from blockgen.sizing.cavities import Place, TapSize, dowel_hole, tapped_hole
from blockgen.sizing.rounding import up
from blockgen.sizing.seats import point_length
from blockgen.standards.din76 import drill_runout
from blockgen.standards.pins import pin_diameters
from blockgen.standards.threads import thread

Positions = Sequence[tuple[float, float]]
_SOURCE = "common practice, no source"


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
    """Return two dowel holes on a diagonal beside the base screws; empty without dowels."""
    pin = decide_dowel(ledger, screw)
    if pin is None:
        return []
    beside = screw.radius + pin / 2 + 0.5 + ledger.number("practice.cavity_floor")
    spots = [_beside(positions, beside, 1.0), _beside(positions, beside, -1.0)]
    return [_dowel(ledger, pin, i, x, y) for i, (x, y) in enumerate(spots, 1)]


def _beside(positions: Positions, distance: float, side: float) -> tuple[float, float]:
    """Return a place next to the first screw of one side, or to the last screw of the other, towards the middle."""
    row = sorted(p for p in positions if p[1] * side > 0)
    x, y = row[0] if side > 0 else row[-1]
    return (up(x + distance, 0.5) if side > 0 else -up(distance - x, 0.5), y)


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
    x, y = _free_middle(ledger, screw.diameter, positions)
    return [_lifting(ledger, size, i, x, side * y) for i, side in enumerate((1.0, -1.0), 1)]


def _free_middle(ledger: Ledger, diameter: float, positions: Positions) -> tuple[float, float]:
    """Return a place mid-way between the two screws nearest to mid-length on one side."""
    row = sorted(p for p in positions if p[1] > 0)
    middle = ledger.number("length") / 2
    pairs = list(zip(row, row[1:], strict=False))
    best = min(pairs, key=lambda pair: abs((pair[0][0] + pair[1][0]) / 2 - middle))
    return (round((best[0][0] + best[1][0]) / 2, 1), best[0][1])


def _lifting(ledger: Ledger, size: TapSize, index: int, x: float, y: float) -> Feature:
    place = Place(
        f"lifting_thread_{index}", "lifting_threads", "top", (x, y, ledger.number("height")), (0.0, 0.0, -1.0),
        {"thread": "lifting_thread"},
    )  # fmt: skip
    return tapped_hole(place, size)
