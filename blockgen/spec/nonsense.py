"""Rules that no real set of parts breaks, over the values given and those of presets."""

from __future__ import annotations

from collections.abc import Iterable, Iterator, Mapping
from dataclasses import dataclass
from math import fsum

from blockgen.errors import Problem
from blockgen.record import Record
from blockgen.spec.facts import Facts
from blockgen.spec.nonsense_flange import flange_rules

# Rounding of sums is no contradiction, mm.
_HAIR = 1e-6


@dataclass(frozen=True, slots=True)
class Order:
    """Two keys of which the first must be the smaller.

    Args:
        small: Key of the smaller value; ``motor.`` also stands for every ``family.N.``.
        large: Key of the larger value.
        why: Why it cannot be otherwise.
        strict: True where equal values are nonsense too.
    """

    small: str
    large: str
    why: str
    strict: bool = False


_SIGNED = frozenset(
    {
        "pilot_upper",
        "pilot_lower",
        "bolt_angle",
        "shoulder_offset",
        "bolt_positions",
        "hole_positions",
        "assembly_temperature",
        "block_temperature",
        "nut_side_temperature",
    }
)
_ZERO = frozenset(
    {
        "face_runout",
        "spigot_runout",
        "shaft_runout",
        "runout",
        "journal_runout",
        "pilot_length",
        "centre_of_mass",
        "inertia",
        "nut_reach",
        "thrust",
        "moved_mass",
        "nut_distance_min",
        "gap_min",
        "clearance",
        "clamp_access_radius",
        "allow_parallel",
        "allow_angular",
        "allow_axial",
        "parallel",
        "angular",
        "axial",
        "coating_thickness",
        "window_floor",
        "outer_fillet",
        "edge_chamfer",
        "hole_chamfer",
        "relief",
        "first_frequency",
        "block_stiffness_ratio",
        "expansion",
    }
)
_GREATEST: Mapping[str, float] = {
    "efficiency": 1.0,
    "friction": 1.0,
    "probability": 0.999999,
    "coupling_use": 1.0,
    "poisson": 0.5,
}
_ORDERS = (
    Order("coupling.bore_min", "coupling.bore_max", "the range of bores is empty"),
    Order("coupling.grip_min", "coupling.grip_max", "the range of grips is empty"),
    Order("coupling.bore_max", "coupling.outer_diameter", "the bore would leave no hub", strict=True),
    Order("coupling.outer_diameter", "coupling.swing_diameter", "the swing holds the hubs too"),
    Order("coupling.hub_length", "coupling.length", "a hub is part of the coupling"),
    Order("coupling.grip_max", "coupling.length", "a shaft cannot sit deeper than the coupling is long"),
    Order("coupling.clamp_position", "coupling.hub_length", "the clamp screw lies in its hub", strict=True),
    Order("coupling.flex_spacing", "coupling.length", "the flexing planes lie within the coupling", strict=True),
    Order("motor.shaft_smooth_length", "motor.shaft_length", "the smooth part is part of the shaft"),
    Order("motor.key_length", "motor.shaft_length", "the key lies on the shaft"),
    Order("motor.key_width", "motor.shaft_diameter", "the key is narrower than its shaft", strict=True),
    Order("motor.pilot_length", "motor.shaft_length", "the shaft would end inside the pilot", strict=True),
    Order("motor.shaft_diameter", "motor.pilot_diameter", "the shaft passes through the pilot"),
    Order("motor.centre_of_mass", "motor.body_length", "it would lie behind the motor"),
    Order("motor.rated_torque", "motor.peak_torque", "the peak is the greater one"),
    Order("screw.journal_diameter", "bearing.pilot_diameter", "the journal passes through the unit", strict=True),
    Order("screw.journal_diameter", "bearing.nut_outer_diameter", "the nut sits about the journal", strict=True),
    Order("screw.journal_smooth_length", "screw.shoulder_to_end", "the smooth part is part of the journal"),
    Order("bearing.nut_outer_diameter", "bearing.spanner_diameter", "the spanner goes about the nut"),
    Order("base.shaft_height", "base.height_limit", "the axis would lie above the limit", strict=True),
    Order("base.shaft_height", "block.height", "the axis would lie above the block", strict=True),
    Order("block.height", "base.height_limit", "the block would be too high"),
    Order("block.length", "base.length_available", "the block would be too long for its place"),
    Order("block.width", "base.width_available", "the block would be too wide for its place"),
    Order("block.window_length", "block.length", "the window would cut the end walls away", strict=True),
    Order("block.window_floor", "base.shaft_height", "the floor would bury the shaft", strict=True),
)


def contradictions(records: Mapping[str, Record], file: str, doubtful: Iterable[Record] | None = None) -> list[Problem]:
    """Return what cannot be, with the keys and values that contradict one another.

    Args:
        records: All values.
        file: Path of the spec.
        doubtful: Those that could be wrong by themselves, where the others are known to be right; None for all.
    """
    facts = Facts(records, file)
    alone = tuple(records.values()) if doubtful is None else tuple(doubtful)
    found = list(_signs(facts, alone))
    if found:
        return found  # sums of negative lengths say nothing more
    found.extend(_ranges(facts, alone))
    for rule in (_orders, flange_rules, _coupling, _heights, _journal, _walls, _corner, _base_holes, _fits):
        found.extend(rule(facts))
    return found


def _signs(facts: Facts, records: Iterable[Record]) -> Iterator[Problem]:
    """Nothing is negative; what is a size is not zero either."""
    for record in records:
        name, value = record.key.rsplit(".", 1)[-1], record.value
        if isinstance(value, (bool, str, tuple)) or value is None or name in _SIGNED:
            continue
        if value < 0 or (value == 0 and name not in _ZERO):
            yield facts.problem([record.key], "zero or more" if name in _ZERO else "more than zero")


def _ranges(facts: Facts, records: Iterable[Record]) -> Iterator[Problem]:
    """Shares stay below one, Poisson's ratio below a half, temperatures above absolute zero."""
    for record in records:
        greatest = _GREATEST.get(record.key.rsplit(".", 1)[-1])
        if greatest is not None and facts.number(record.key, 0.0) > greatest:
            yield facts.problem([record.key], f"at most {greatest:g}")
        if record.unit == "degC" and facts.number(record.key, 0.0) < -273.15:
            yield facts.problem([record.key], "a temperature above -273.15 degC")


def _orders(facts: Facts) -> Iterator[Problem]:
    for order in _ORDERS:
        for prefix in facts.motors() if order.small.startswith("motor.") else ("motor.",):
            small, large = (k.replace("motor.", prefix) for k in (order.small, order.large))
            if facts.has(small, large) and _wrong(facts.number(small), facts.number(large), order):
                word = "less than" if order.strict else "at most"
                yield facts.problem([small, large], f"{small} {word} {large}: {order.why}")


def _wrong(small: float, large: float, order: Order) -> bool:
    return small > large or (order.strict and small == large)


def _coupling(facts: Facts) -> Iterator[Problem]:
    """Two hubs, two grips and the gap fit into the coupling's length."""
    length = "coupling.length"
    if facts.has(length, "coupling.hub_length") and 2 * facts.number("coupling.hub_length") > facts.number(length):
        yield facts.problem([length, "coupling.hub_length"], "a length of at least two hubs")
    keys = [length, "coupling.grip_min"] + (["coupling.gap_min"] if facts.has("coupling.gap_min") else [])
    if facts.has(*keys):
        needed = 2 * facts.number("coupling.grip_min") + facts.number("coupling.gap_min", 0.0)
        if facts.number(length) < needed:
            yield facts.problem(keys, f"a length of at least two grips and the gap, {needed:g} mm")


def _heights(facts: Facts) -> Iterator[Problem]:
    """Both sides mean the same axis, and the pilots do not cut the base away."""
    mine, other = "base.shaft_height", "base.motor_shaft_height"
    if facts.has(mine, other) and facts.number(mine) != facts.number(other):
        yield facts.problem([mine, other], "the same height from both sides", "find out which drawing is right")
    for prefix in ("bearing.", *facts.motors()):
        pilot = f"{prefix}pilot_diameter"
        if facts.has(mine, pilot) and facts.number(pilot) / 2 >= facts.number(mine):
            yield facts.problem([pilot, mine], "a shaft height above the pilot's radius: its bore would cut the base")


def _journal(facts: Facts) -> Iterator[Problem]:
    """Reach and shoulder dimensions of the screw's end belong together."""
    reach, shoulder, offset = "screw.journal_reach", "screw.shoulder_to_end", "bearing.shoulder_offset"
    smooth = "screw.journal_smooth_length"
    if facts.has(shoulder) and not facts.has(reach) and not facts.has(offset):
        yield facts.problem([shoulder], f"{offset} as well", "it tells how far the shoulder is from the seat plane")
    if facts.has(reach, shoulder, offset):
        derived = facts.number(shoulder) - facts.number(offset)
        if abs(derived - facts.number(reach)) > 1e-6:
            yield facts.problem([reach, shoulder, offset], f"a reach of {derived:g} mm, shoulder to end less offset")
    if facts.has(shoulder, offset) and facts.number(shoulder) <= facts.number(offset):
        yield facts.problem([shoulder, offset], "a journal that passes the seat plane")
    if facts.has(smooth, reach) and facts.number(smooth) > facts.number(reach):
        yield facts.problem([smooth, reach], "a smooth length of at most the reach: behind it sit nut and bearing")


def _walls(facts: Facts) -> Iterator[Problem]:
    """Walls and window fit into the block that is given; a window across is open along the width, not the height."""
    across = facts.has("block.window_axis") and facts.text("block.window_axis") == "y"
    beside = ("block.side_wall", "block.side_wall", "block.window_width")
    for whole, parts in (
        ("block.length", ("block.bearing_wall", "block.motor_wall", "block.window_length")),
        ("block.height" if across else "block.width", beside),
    ):
        known = [p for p in parts if facts.has(p)]
        if not known or not facts.has(whole):
            continue
        rest = facts.number(whole) - fsum(map(facts.number, known))
        if rest < -_HAIR or (rest < _HAIR and len(known) < len(parts)):
            yield facts.problem([whole, *dict.fromkeys(known)], f"a {whole.split('.')[1]} that holds walls and window")


def _corner(facts: Facts) -> Iterator[Problem]:
    corner, cutter = "block.window_corner_radius", "block.cutter_diameter"
    if facts.has(corner, cutter) and facts.number(corner) < facts.number(cutter) / 2:
        yield facts.problem([corner, cutter], "a corner radius of at least the cutter's radius")


def _base_holes(facts: Facts) -> Iterator[Problem]:
    """Base screws do not overlap and are as many as their positions."""
    key, count, screw = "base.hole_positions", "base.screw_count", "base.screw"
    if not facts.has(key):
        return
    points = facts.points(key)
    if facts.has(count) and facts.number(count) != len(points):
        yield facts.problem([count, key], f"as many screws as positions, {len(points)}")
    diameter = facts.thread_diameter(screw) or 0.0
    if facts.least_distance(points) <= diameter:
        yield facts.problem([key, screw] if diameter else [key], "positions further apart than a screw is wide")


def _fits(facts: Facts) -> Iterator[Problem]:
    """Small letters are shafts, capital letters are holes."""
    hole = "block.bore_fit"
    if facts.has(hole) and not facts.text(hole)[0].isupper():
        yield facts.problem([hole], 'the class of a hole, in capitals, such as "H7"')
    for prefix in facts.motors():
        shaft = f"{prefix}shaft_fit"
        if facts.has(shaft) and not facts.text(shaft)[0].islower():
            yield facts.problem([shaft], 'the class of a shaft, in small letters, such as "h6"')
