"""The hole patterns of a family on one seat: united where they coincide, turned where they would come too near."""

from __future__ import annotations

import math
from collections.abc import Iterator, Mapping, Sequence
from dataclasses import dataclass, replace
from itertools import combinations

from blockgen.errors import Conflict, InfeasibleError
from blockgen.mechanics.ligaments import LigamentRule
from blockgen.record import Ledger, Record
from blockgen.sizing.defaults import complete
from blockgen.sizing.family import Records, alone, entries, title_of, under_own_keys, with_one_pilot
from blockgen.sizing.free_places import rule_of
from blockgen.sizing.mating import Flange, flange
from blockgen.sizing.outside import seat_margin

# Holes whose centres lie nearer than this are one hole, mm.
SAME_PLACE = 1e-3
# Step in which a round flange is turned, deg.
_STEP = 5
_HAIR = 1e-6


@dataclass(frozen=True, slots=True)
class Pattern:
    """The holes that one motor wants, and what the least walls to others are.

    Args:
        entry: Its table in the spec.
        flange: Its flange as the data sheet shows it.
        mouth: Radius of a hole at the seat, chamfer included, mm.
        room: Half the height in mm that a flange may have over the base face.
        rule: The least walls.
    """

    entry: str
    flange: Flange
    mouth: float
    room: float
    rule: LigamentRule


@dataclass(frozen=True, slots=True)
class Turned:
    """A pattern on the seat, its flange turned by ``angle`` in deg."""

    pattern: Pattern
    flange: Flange
    angle: float


def pattern_of(records: Records, entry: str) -> Pattern:
    """Return the holes that one motor of a family wants."""
    ledger = complete(alone(records, entry))
    with under_own_keys(entry):
        found = flange(ledger, "motor")
    drilled = max(found.thread.tap_drill, found.thread.diameter) / 2
    mouth = found.hole / 2 + ledger.number("block.hole_chamfer") if found.tapped else drilled
    return Pattern(entry, found, mouth, _room(ledger), rule_of(ledger))


def _room(ledger: Ledger) -> float:
    return ledger.number("base.shaft_height") - seat_margin(ledger, "flat")


def same_hole(one: Flange, place: tuple[float, float], other: Flange, there: tuple[float, float]) -> bool:
    """Tell whether two motors want one and the same hole."""
    alike = one.tapped == other.tapped and (one.hole == other.hole if one.tapped else one.thread == other.thread)
    return alike and math.dist(place, there) < SAME_PLACE


def required_between(one: Pattern, other: Pattern) -> float:
    """Return the least wall in mm between holes of two motors: by the lesser thread where one is tapped."""
    threads = [p.flange.thread.diameter for p in (one, other) if not p.flange.tapped]
    rule = one.rule
    return max(rule.cavity_factor * min(threads), rule.cavity_floor) if threads else rule.rim


def missing_wall(one: Turned, other: Turned) -> float:
    """Return by how many mm the thinnest wall between holes of two motors falls short; 0 or less where none does."""
    keep = required_between(one.pattern, other.pattern) + one.pattern.mouth + other.pattern.mouth
    walls = [
        keep - math.dist(place, there)
        for place in one.flange.positions
        for there in other.flange.positions
        if not same_hole(one.flange, place, other.flange, there)
    ]
    return max(walls, default=-math.inf)


def clear(one: Turned, other: Turned) -> bool:
    """Tell whether the holes of two motors coincide or keep the least wall."""
    return missing_wall(one, other) <= _HAIR


def turned(pattern: Pattern, angle: float) -> Turned:
    """Return a pattern with its flange turned by an angle in deg, counter-clockwise seen from the motor."""
    if not angle:
        return Turned(pattern, pattern.flange, 0.0)
    found, turn = pattern.flange, math.radians(angle)
    cos, sin = math.cos(turn), math.sin(turn)
    places = tuple((round(y * cos - z * sin, 9), round(y * sin + z * cos, 9)) for y, z in found.positions)
    width, height = found.half_width, found.half_height
    if not found.round:
        width, height = (
            round(width * abs(cos) + height * abs(sin), 6),
            round(width * abs(sin) + height * abs(cos), 6),
        )
    return Turned(pattern, replace(found, positions=places, half_width=width, half_height=height), angle)


def ways(pattern: Pattern) -> Iterator[Turned]:
    """Yield the ways in which a motor may be mounted: as drawn, then turned, the least turn first.

    A round flange turns freely, in steps; any other one by quarters, and by an eighth where its corners clear the base.
    """
    angles: Sequence[float] = (0, 90, 180, 270, 45)
    if pattern.flange.round:
        angles = (0, *(sign * step for step in range(_STEP, 181, _STEP) for sign in (1, -1)))
    seen: list[frozenset[tuple[float, float]]] = []
    for angle in angles:
        way = turned(pattern, angle)
        places = frozenset((round(y, 6) + 0.0, round(z, 6) + 0.0) for y, z in way.flange.positions)
        if places not in seen and (not angle or way.flange.half_height <= pattern.room + _HAIR):
            seen.append(places)
            yield way


def united(patterns: Sequence[Pattern]) -> tuple[Turned, ...] | None:
    """Return a way to mount each motor so that all holes coincide or stand clear, or None.

    The order of the motors in the spec does not matter: round flanges are turned before others. Motors with the same
    holes are mounted alike.
    """
    ordered = sorted({_nameless(pattern) for pattern in patterns}, key=_order)
    found = _placed([tuple(ways(pattern)) for pattern in ordered])
    if found is None:
        return None
    by_pattern = {way.pattern: way for way in found}
    return tuple(replace(by_pattern[_nameless(pattern)], pattern=pattern) for pattern in patterns)


def _nameless(pattern: Pattern) -> Pattern:
    return replace(pattern, entry="")


def _order(pattern: Pattern) -> tuple[object, ...]:
    found = pattern.flange
    return (
        found.round, -found.half_width, -found.half_height, tuple(sorted(found.positions)), found.thread.designation,
        found.tapped, found.hole, found.positions,
    )  # fmt: skip


def _placed(choices: Sequence[tuple[Turned, ...]]) -> tuple[Turned, ...] | None:
    """Return one of the ways of each motor, all clear of one another; each choice leaves fewer ways to the next."""
    if not choices:
        return ()
    for way in choices[0]:
        left = [tuple(other for other in ways_left if clear(way, other)) for ways_left in choices[1:]]
        if all(left):
            found = _placed(left)
            if found is not None:
                return way, *found
    return None


def clocked(records: Records) -> tuple[dict[str, Record], tuple[str, ...]]:
    """Return the records with pilot and hole patterns of a family as they are mounted, and in words what was turned.

    Raises:
        InfeasibleError: holes of two motors come too near to one another however they are turned.
    """
    motors = entries(records)
    if len(motors) == 1:
        return dict(records), ()
    patterns = [pattern_of(records, entry) for entry in motors]
    found = united(patterns)
    if found is None:
        raise _too_near(records, patterns)
    changed = with_one_pilot(records)
    for way in found:
        changed |= _as_turned(records, way)
    return changed, tuple(_remark(records, way) for way in found if way.angle)


def _remark(records: Records, way: Turned) -> str:
    motor = title_of(records, way.pattern.entry)
    return f"{motor[0].upper()}{motor[1:]} is mounted turned by {way.angle:g} deg, so that its holes clear the others."


def _as_turned(records: Records, way: Turned) -> Mapping[str, Record]:
    """Return what a turned flange changes in the spec's words: hole centres, and the outline unless it is round."""
    if not way.angle:
        return {}
    entry, found = way.pattern.entry, way.flange
    rule = f"mounted turned by {way.angle:g} deg, so that its holes clear those of the other motors"
    values: dict[str, object] = {"bolt_positions": found.positions}
    if not found.round:
        values |= {"flange_width": 2 * found.half_width, "flange_height": 2 * found.half_height}
    old = {
        name: records[f"{entry}.{name}"].as_input()
        for name in ("bolt_circle", "bolt_angle")
        if f"{entry}.{name}" in records
    }
    inputs = {f"{entry}.{name}": value for name, value in old.items()}
    return {
        f"{entry}.{name}": Record(f"{entry}.{name}", value, "mm", "sized", rule, inputs)  # type: ignore[arg-type]
        for name, value in values.items()
    }


def _too_near(records: Records, patterns: Sequence[Pattern]) -> InfeasibleError:
    """Return the conflict of the two patterns that miss by most at their best turn."""
    pairs = [(_least_missing(one, other), one, other) for one, other in combinations(patterns, 2)]
    missing, one, other = max(pairs, key=lambda pair: pair[0])
    titles = [title_of(records, pattern.entry) for pattern in (one, other)]
    keys = tuple(f"{pattern.entry}.{name}" for pattern in (one, other) for name in _pattern_keys(records, pattern))
    if missing <= _HAIR:
        words = "all motors together: no turn of their hole patterns keeps every wall, though each two of them go"
        return InfeasibleError([Conflict(words, 0.0, (), keys)], [])
    need = required_between(one, other)
    facts = (
        *(f"{title}: {_holes(pattern)}" for title, pattern in zip(titles, (one, other), strict=True)),
        f"the best turn leaves a wall of {need - missing:.2f} mm between two holes; {need:g} mm are asked for",
    )
    words = f"holes of {titles[0]} and {titles[1]} on one seat: {missing:.2f} mm of wall missing"
    return InfeasibleError([Conflict(words, round(missing, 6), facts, keys)], [])


def _least_missing(one: Pattern, other: Pattern) -> float:
    both_round = one.flange.round and other.flange.round  # only the turn of one against the other counts then
    firsts = (turned(one, 0),) if both_round else ways(one)
    return min(missing_wall(a, b) for a in firsts for b in ways(other))


def _pattern_keys(records: Records, pattern: Pattern) -> tuple[str, ...]:
    names = ("bolt_circle", "bolt_spacing_y", "bolt_positions")
    return tuple(name for name in names if f"{pattern.entry}.{name}" in records)


def _holes(pattern: Pattern) -> str:
    found = pattern.flange
    distance = max(math.hypot(*place) for place in found.positions)
    what = f"diam {found.hole:g}" if found.tapped else found.thread.designation
    return f"{len(found.positions)} x {what}, up to {distance:.2f} mm from the axis"
