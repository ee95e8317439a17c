"""Places in the top of the block where an upright hole stands clear of everything that is there already."""

from __future__ import annotations

from collections.abc import Callable, Iterable, Iterator, Sequence

from blockgen.mechanics.distance import box_distance
from blockgen.mechanics.ligaments import (
    FACES,
    LigamentRule,
    Measured,
    face_walls,
    measured,
    nominal_diameter,
    required_wall,
    wall_between,
)
from blockgen.plan import Body, Feature
from blockgen.record import Ledger

Spot = tuple[float, float]
Surroundings = tuple[Measured, ...]
MakeHole = Callable[[Spot], Feature]
_STEP = 1.0


def rule_of(ledger: Ledger) -> LigamentRule:
    """Return the least walls as the ledger has them."""
    return LigamentRule(
        ledger.number("practice.cavity_factor"), ledger.number("practice.cavity_floor"), ledger.number("practice.rim")
    )


def surroundings(features: Sequence[Feature]) -> Surroundings:
    """Return cavities made ready to be measured, once for all places that are tried."""
    return tuple(measured(feature) for feature in features)


def stands_clear(ledger: Ledger, hole: Feature, others: Surroundings, body: Body) -> bool:
    """Tell whether a hole keeps the least walls to every other cavity and to the outside."""
    rule = rule_of(ledger)
    keep = max(rule.rim, rule.cavity_floor, rule.cavity_factor * nominal_diameter(hole))
    open_faces = {hole.face, *hole.opens_into}
    tried = measured(hole)
    walls = zip(FACES, face_walls(tried.box, body), strict=True)
    if any(wall < rule.rim for face, wall in walls if face not in open_faces):
        return False
    near = [other for other in others if box_distance(*tried.box, *other.box) < keep]
    return all(wall_between(tried, other) >= required_wall(hole, other.feature, rule) for other in near)


def along_walls(ledger: Ledger, y: float, start: float, *, from_motor: bool) -> Iterator[Spot]:
    """Yield places in the upright walls, from one end towards the middle.

    Args:
        ledger: Ledger of a sized block.
        y: Side wall to walk along, mm; its sign tells the side.
        start: Distance from the seat at which to start in a side wall, mm.
        from_motor: True to start at the motor seat.
    """
    length, half = ledger.number("length"), ledger.number("width") / 2
    if ledger.text("block.window_axis") == "y":
        x = length - ledger.number("motor_wall") / 2 if from_motor else ledger.number("bearing_wall") / 2
        side = 1.0 if y > 0 else -1.0
        yield from ((x, side * (half - i)) for i in range(int(half)))
        return
    for i in range(int((length - start) / _STEP) + 1):
        x = start + i * _STEP
        yield (length - x if from_motor else x), y


def first_free(
    ledger: Ledger, spots: Iterable[Spot], make: MakeHole, others: Surroundings, body: Body
) -> Feature | None:
    """Return the first hole that stands clear, or None."""
    return next((hole for hole in map(make, spots) if stands_clear(ledger, hole, others, body)), None)
