"""The new spec sized again on to the block that stands there: outside, window, base pattern and bearing side locked."""

from __future__ import annotations

import math
from collections.abc import Iterable, Mapping
from dataclasses import replace

from blockgen.change.rework.data import Attempt
from blockgen.change.rework.leftover import rule_of
from blockgen.mechanics.ligaments import ligament_map
from blockgen.plan import Feature, Plan, Point
from blockgen.record import Ledger, Record, Value
from blockgen.sizing.mating import hole_positions
from blockgen.sizing.size import plan_from
from blockgen.spec.tables import TABLES

_ASKED = frozenset({"given", "preset", "standard"})
_HAIR = 1e-6
_SETTLED = frozenset({"block.window_length", "block.side_wall", "block.cutter_diameter"})
"""What the block that exists has settled in another way."""

_PATTERN = ("bolt_circle", "bolt_count", "bolt_angle", "bolt_spacing_y", "bolt_spacing_z")


def specified(plan: Plan) -> dict[str, Record]:
    """Return the records of a plan that came from its spec and presets, from which it can be sized again."""
    return {key: record for key, record in plan.records.items() if record.origin in _ASKED and _is_key(key)}


def _is_key(key: str) -> bool:
    table, _, name = key.partition(".")
    return table == "material" or (table in TABLES and name in TABLES[table].model_fields)


def fitted(old: Plan, new: Plan, attempt: Attempt) -> Plan:
    """Return the new spec sized on to the old block.

    Args:
        old: Plan of the block that exists.
        new: Plan of the block that is wanted.
        attempt: How it lies in the old one.

    Raises:
        InfeasibleError: no layout exists on to this block.
        InputError: a locked size cannot stand beside the new ones.
    """
    asked = {key: record for key, record in specified(new).items() if key not in _SETTLED}
    plan = plan_from({**turned(asked, new, attempt.turn), **locks(old, attempt)})
    return with_old_pins(old, plan, attempt.shift)


def resized(new: Plan, attempt: Attempt) -> Plan:
    """Return the new plan with its motor turned, else as it is.

    Raises:
        InfeasibleError: no layout exists with the turned motor.
    """
    return plan_from(turned(specified(new), new, attempt.turn)) if attempt.turn else new


def locks(old: Plan, attempt: Attempt) -> dict[str, Record]:
    """Return the records that hold what the old block has, in the new block's coordinates."""
    wall = attempt.motor_wall
    values: dict[str, tuple[Value, str]] = {
        "block.length": (attempt.length, "mm"),
        "block.width": (old.body.width, "mm"),
        "block.height": (old.body.height, "mm"),
        "block.outer_fillet": (old.body.outer_fillet, "mm"),
        "block.edge_chamfer": (old.body.edge_chamfer, "mm"),
        "block.bearing_wall": (round(old.number("bearing_wall") - attempt.shift, 6), "mm"),
        "block.motor_wall": (kept_motor_wall(old, attempt) if wall is None else wall, "mm"),
        "block.window_width": (old.number("window_width"), "mm"),
        "block.window_corner_radius": (old.number("window_corner_radius"), "mm"),
        "block.material": (old.text("block.material"), ""),
        "base.screw": (old.text("base_screw"), ""),
        "base.hole_positions": (base_pattern(old, attempt.shift), "mm"),
    }
    same = ("block.window_axis", "block.window_floor", "block.relief", "block.hole_chamfer", "block.cutter_diameter",
            "base.screw_from")  # fmt: skip
    held = {key: Record(key, value, unit, "given", "of the block that exists") for key, (value, unit) in values.items()}
    pattern = held["base.hole_positions"].value
    count = len(pattern) if isinstance(pattern, tuple) else 0
    held["base.screw_count"] = Record("base.screw_count", count, "", "given", "of the block that exists")
    own = f"material.{old.text('block.material')}."
    return held | {key: record for key, record in old.records.items() if key in same or key.startswith(own)}


def kept_motor_wall(old: Plan, attempt: Attempt) -> float:
    """Return the motor wall in mm that is left where the window stays as it is."""
    return round(attempt.length + attempt.shift - window_end(old), 6)


def window_end(plan: Plan) -> float:
    """Return the x in mm at which the window ends towards the motor."""
    return plan.number("length") - plan.number("motor_wall")


def base_pattern(old: Plan, shift: float) -> tuple[tuple[float, float], ...]:
    """Return the base screws (x, y) in mm, seen from a bearing seat plane that lies ``shift`` further in."""
    pattern = old.records["base_pattern"].value
    points = pattern if isinstance(pattern, tuple) else ()
    return tuple((round(float(p[0]) - shift, 6), float(p[1])) for p in points if isinstance(p, tuple))


def turned(records: Mapping[str, Record], new: Plan, turn: float) -> dict[str, Record]:
    """Return the records with the motor turned about its shaft by an angle in deg.

    A flange that is not round then takes the room of the rectangle about it.
    """
    made = dict(records)
    if turn == 0:
        return made
    rule = f"motor turned by {turn:g} deg so that holes that are there stand clear"
    for name in _PATTERN:
        made.pop(f"motor.{name}", None)
    places = tuple(_turned_point(place, turn) for place in hole_positions(Ledger(new.records.values()), "motor"))
    made["motor.bolt_positions"] = Record("motor.bolt_positions", places, "mm", "sized", rule)
    if new.text("motor.flange_shape") != "round" and turn % 90:
        half_width, half_height = half_flange(new)
        across, up = math.cos(math.radians(turn)), math.sin(math.radians(turn))
        made.pop("motor.flange_size", None)
        for name, size in (
            ("flange_width", half_width * abs(across) + half_height * abs(up)),
            ("flange_height", half_width * abs(up) + half_height * abs(across)),
        ):
            made[f"motor.{name}"] = Record(f"motor.{name}", round(2 * size, 6), "mm", "sized", rule)
    elif turn % 180 and "motor.flange_width" in made and "motor.flange_height" in made:
        width, height = made["motor.flange_width"], made["motor.flange_height"]
        made["motor.flange_width"] = replace(width, value=height.value)
        made["motor.flange_height"] = replace(height, value=width.value)
    return made


def half_flange(plan: Plan) -> tuple[float, float]:
    """Return half width and half height of the motor flange, mm."""
    if "motor.flange_width" in plan.records and "motor.flange_height" in plan.records:
        return plan.number("motor.flange_width") / 2, plan.number("motor.flange_height") / 2
    return plan.number("motor.flange_size") / 2, plan.number("motor.flange_size") / 2


def _turned_point(place: tuple[float, float], turn: float) -> tuple[float, float]:
    cosine, sine = math.cos(math.radians(turn)), math.sin(math.radians(turn))
    return round(place[0] * cosine - place[1] * sine, 9), round(place[0] * sine + place[1] * cosine, 9)


def turns(new: Plan) -> tuple[float, ...]:
    """Return the angles in deg by which the motor may be turned, the least first.

    Angles that give the same pattern are tried once. Quarter turns come first: they suit every flange.
    """
    places = hole_positions(Ledger(new.records.values()), "motor")
    quarters = [quarter for quarter in (90.0, -90.0, 180.0) if not _same_pattern(places, quarter)]
    between = [sign * 5.0 * step for step in range(1, 18) for sign in (1, -1)]
    found: list[float] = []
    for angle in (*quarters, *between):
        if not any(_same_pattern(places, angle, known) for known in (0.0, *found)):
            found.append(angle)
    return tuple(found)


def _same_pattern(places: Iterable[tuple[float, float]], turn: float, other: float = 0.0) -> bool:
    first = sorted(tuple(round(v, 3) + 0.0 for v in _turned_point(p, turn)) for p in places)
    second = sorted(tuple(round(v, 3) + 0.0 for v in _turned_point(p, other)) for p in places)
    return all(math.dist(a, b) < 0.01 for a, b in zip(first, second, strict=True))


def moved_feature(feature: Feature, along: float) -> Feature:
    """Return a feature moved along x by so many mm."""
    if along == 0:
        return feature
    pocket = feature.pocket
    if pocket is not None:
        pocket = replace(pocket, low=_moved(pocket.low, along), high=_moved(pocket.high, along))
    return replace(feature, position=_moved(feature.position, along), pocket=pocket)


def _moved(point: Point, along: float) -> Point:
    return (round(point[0] + along, 9), point[1], point[2])


def with_old_pins(old: Plan, plan: Plan, shift: float) -> Plan:
    """Return a plan whose dowels stand where the old block has them, where they are clear there."""
    pins = [moved_feature(f, -shift) for f in old.features if f.kind == "dowel_hole"]
    rest = [f for f in plan.features if f.kind != "dowel_hole"]
    if not pins or plan.text("base.dowels") in ("", "False"):
        return plan
    ligaments = ligament_map([*rest, *pins], plan.body, rule_of(plan))
    if any(each.wall < each.required - _HAIR for each in ligaments):
        return plan
    plate = [moved_feature(f, -shift) for f in old.base_features if f.kind == "dowel_hole"]
    under = [f for f in plan.base_features if f.kind != "dowel_hole"]
    return replace(plan, features=(*rest, *pins), base_features=(*under, *plate), ligaments=ligaments)
