"""Dowels between block and base, and lifting threads: cut where the base screws leave room."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from functools import partial

from blockgen.errors import InputError, Problem
from blockgen.plan import Body, Feature
from blockgen.record import Ledger
from blockgen.sizing.base_screws import BaseScrew
from blockgen.sizing.cavities import Place, TapSize, dowel_hole, tapped_hole
from blockgen.sizing.free_places import Spot, Surroundings, along_walls, first_free, stands_clear, surroundings
from blockgen.sizing.rounding import up
from blockgen.sizing.seats import point_length
from blockgen.sizing.sources import CP, cited
from blockgen.standards.din76 import drill_runout
from blockgen.standards.pins import pin_diameters
from blockgen.standards.threads import Thread, thread

Positions = Sequence[tuple[float, float]]


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
        if value not in pin_diameters():
            known = ", ".join(f"{d:g}" for d in pin_diameters())
            raise InputError([Problem("", None, "base.dowels", f"{value:g} mm", f"a pin of ISO 8734: {known} mm", "")])
    ledger.decide("dowel_diameter", value, "mm", rule, ("base.dowels", "base_screw"), f"{cited('dowel_pins')}; {CP}")
    return value


def dowel_features(
    ledger: Ledger, screw: BaseScrew, positions: Positions, others: Surroundings, body: Body
) -> list[Feature]:
    """Return two dowel holes on a diagonal, as far apart as the other cavities allow; empty without dowels.

    Args:
        ledger: Ledger of a sized block.
        screw: The base screw.
        positions: Base-screw centres (x, y), mm.
        others: Cavities that are there already.
        body: Outside of the block.
    """
    pin = decide_dowel(ledger, screw)
    if pin is None:
        return []
    y, length = max(abs(place[1]) for place in positions), ledger.number("length")
    beside = screw.radius + pin / 2 + ledger.number("practice.rim")
    starts = (min(x for x, _ in positions) + beside, length - max(x for x, _ in positions) + beside)
    found: list[Feature] = []
    for index, from_motor in enumerate((False, True), 1):
        make = partial(_dowel, ledger, pin, index)
        start = up(starts[index - 1], 0.5)
        spots = along_walls(ledger, -y if from_motor else y, start, from_motor=from_motor)
        hole = first_free(ledger, spots, make, (*others, *surroundings(found)), body)
        if hole is None:
            ledger.remark(f"There is no room for dowel {index} of {pin:g} mm.")
        else:
            found.append(hole)
    return found


def _dowel(ledger: Ledger, pin: float, index: int, spot: Spot) -> Feature:
    height = ledger.number("height")
    pilot = pin - ledger.number("practice.dowel_pilot")
    seat = min(height / 2, ledger.number("practice.dowel_depth") * pin)
    place = Place(f"dowel_{index}", "dowels", "top", (*spot, height), (0.0, 0.0, -1.0), {"diameter": "dowel_diameter"})
    return dowel_hole(place, pin, pilot, seat, height)


def lifting_features(
    ledger: Ledger, mass: float, positions: Positions, others: Surroundings, body: Body
) -> list[Feature]:
    """Return two lifting threads in the top on either side of the middle, where the block is heavy; else none.

    Args:
        ledger: Ledger of a sized block.
        mass: Mass of the block, kg.
        positions: Base-screw centres (x, y), mm.
        others: Cavities that are there already.
        body: Outside of the block.
    """
    if mass < ledger.number("practice.lifting_mass"):
        return []
    screw = thread(f"M{ledger.number('practice.lifting_size'):g}")
    for pair in _lifting_pairs(ledger, positions):
        holes = [_lifting(ledger, screw, i, spot) for i, spot in enumerate(pair, 1)]
        if all(stands_clear(ledger, hole, others, body) for hole in holes):
            rule = f"a block of about {mass:.0f} kg is lifted with tackle"
            using = ("practice.lifting_mass", "practice.lifting_size")
            ledger.decide("lifting_thread", screw.designation, "", rule, using, CP)
            return holes
    ledger.remark(f"The block weighs {mass:.1f} kg and has no room for lifting threads; lift it in slings.")
    return []


def _lifting_pairs(ledger: Ledger, positions: Positions) -> Iterator[tuple[Spot, Spot]]:
    """Yield pairs of places opposite one another about the middle of the block, the nearest to it first."""
    length = ledger.number("length")
    if ledger.text("block.window_axis") == "y":
        rows = (ledger.number("bearing_wall") / 2, length - ledger.number("motor_wall") / 2)
        yield from (((rows[0], float(y)), (rows[1], float(-y))) for y in range(int(ledger.number("width") / 2)))
        return
    y = max(abs(place[1]) for place in positions)
    middle = round(length / 2, 1)
    for i in range(int(length / 2)):
        yield (middle + i, y), (middle - i, -y)


def _lifting(ledger: Ledger, screw: Thread, index: int, spot: Spot) -> Feature:
    depth = up(2 * screw.diameter + 2 * screw.pitch, 0.5)
    drilled = up(depth + drill_runout(screw), 0.5)
    point = point_length(screw.tap_drill, ledger.number("practice.drill_point_angle"))
    size = TapSize(screw.call_out, screw.diameter, screw.tap_drill, depth, drilled, point)
    where = (*spot, ledger.number("height"))
    keys = {"thread": "lifting_thread"}
    return tapped_hole(Place(f"lifting_thread_{index}", "lifting_threads", "top", where, (0.0, 0.0, -1.0), keys), size)
