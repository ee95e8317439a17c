"""Motors made from the kernel's primitives, with what is true of them, and what makes them hard to read.

The mounting face lies in z = 0, the shaft points along +z, up is +y. `drawn` makes one by chance from a seed.
"""

from __future__ import annotations

import math
import random
from dataclasses import dataclass, field, replace

import cadquery as cq
from OCP.BRepBuilderAPI import BRepBuilderAPI_NurbsConvert, BRepBuilderAPI_Transform
from OCP.gp import gp_Ax1, gp_Dir, gp_Pnt, gp_Trsf, gp_Vec

TAP_DRILLS = {"M3": 2.5, "M4": 3.3, "M5": 4.2, "M6": 5.0, "M8": 6.8, "M10": 8.5}
CLEARANCE = (3.4, 4.5, 5.5, 6.6, 9.0, 11.0, 13.5)


@dataclass(frozen=True)
class Motor:
    """Sizes as the spec has them, and the parts that are there to confuse."""

    shape: str = "square"
    width: float = 80.0
    height: float = 80.0
    thickness: float = 8.0
    pilot: float = 70.0
    pilot_length: float = 3.0
    recessed: bool = False
    circle: float = 90.0
    count: int = 4
    angle: float = 45.0
    hole: float = 6.6
    thread: str = ""
    through: bool = True
    rectangle: tuple[float, float] | None = None
    shaft: float = 19.0
    shaft_length: float = 40.0
    end: str = "plain"
    key_length: float = 0.0
    key_width: float = 0.0
    body: float = 76.0
    body_length: float = 120.0
    round_body: bool = False
    more: frozenset[str] = field(default_factory=frozenset)


def positions(motor):
    """Return the holes (right, up) from the axis as one looks along the shaft at the flange from the motor."""
    if motor.rectangle:
        y, z = (s / 2 for s in motor.rectangle)
        return [(y, z), (-y, z), (-y, -z), (y, -z)]
    angles = [math.radians(motor.angle + 360 * i / motor.count) for i in range(motor.count)]
    return [(motor.circle / 2 * math.cos(a), motor.circle / 2 * math.sin(a)) for a in angles]


def _rod(radius, low, high, at=(0.0, 0.0)):
    return cq.Solid.makeCylinder(radius, high - low, cq.Vector(*at, low), cq.Vector(0, 0, 1))


def _box(width, tall, low, high, at=(0.0, 0.0)):
    return cq.Solid.makeBox(width, tall, high - low, cq.Vector(at[0] - width / 2, at[1] - tall / 2, low))


def _cone(low_radius, high_radius, low, high, at=(0.0, 0.0)):
    return cq.Solid.makeCone(low_radius, high_radius, high - low, cq.Vector(*at, low), cq.Vector(0, 0, 1))


def _flange(motor):
    t = motor.thickness
    flange = _rod(motor.width / 2, -t, 0) if motor.shape == "round" else _box(motor.width, motor.height, -t, 0)
    if "round_corners" in motor.more and motor.shape != "round":
        flange = flange.fillet(0.06 * motor.width, cq.Workplane(flange).edges("|Z").vals())
    if "flange_chamfer" in motor.more:
        flange = flange.chamfer(0.8, None, cq.Workplane(flange).faces(">Z").edges().vals())
    r = motor.pilot / 2
    if motor.recessed:
        flange = flange.cut(_rod(r, -motor.pilot_length, 1))
    else:
        pilot = _rod(r, -t / 2, motor.pilot_length)
        if "pilot_chamfer" in motor.more:
            pilot = pilot.chamfer(0.5, None, cq.Workplane(pilot).faces(">Z").edges().vals())
        flange = flange.fuse(pilot)
        if "undercut" in motor.more:
            flange = flange.cut(_rod(r + 1.5, -0.6, 0).cut(_rod(r, -0.6, 0)))
        if "seal_recess" in motor.more:
            flange = flange.cut(_rod((motor.shaft / 2 + r) / 2, motor.pilot_length - 1.2, motor.pilot_length + 1))
        elif "boss" in motor.more:
            flange = flange.fuse(_rod((motor.shaft / 2 + r) / 2, 0, motor.pilot_length + 1.5))
        if "cover_screws" in motor.more:
            at = [(0.8 * r * math.cos(a), 0.8 * r * math.sin(a)) for a in (0.2, 1.77, 3.34, 4.91)]
            flange = flange.cut(*(_rod(1.25, motor.pilot_length - 2, motor.pilot_length + 1, p) for p in at))
    return flange


def _holes(motor):
    r, t = motor.hole / 2, motor.thickness
    tools = []
    for p in positions(motor):
        if motor.through:
            tools.append(_rod(r, -t - 60 if not motor.thread else -t - 0.01, 0.01, p))
            if "counterbore" in motor.more and not motor.thread:
                tools.append(_rod(1.7 * r, -t - 60, -0.6 * t, p))
        else:
            tools += [_rod(r, -0.8 * t, 0.01, p), _cone(0.0, r, -0.8 * t - 0.6 * r, -0.8 * t, p)]
        if "hole_chamfer" in motor.more:
            tools.append(_cone(r, r + 0.5, -0.5, 0, p))
    return tools


def _shaft(motor):
    r, L = motor.shaft / 2, motor.shaft_length
    shaft = _rod(r, -motor.thickness / 2 if "loose_shaft" not in motor.more else -0.4 * motor.body_length, L)
    if "shaft_chamfer" in motor.more:
        shaft = shaft.chamfer(min(1.0, 0.1 * motor.shaft), None, cq.Workplane(shaft).faces(">Z").edges().vals())
    elif "shaft_fillet" in motor.more:
        shaft = shaft.fillet(min(1.0, 0.1 * motor.shaft), cq.Workplane(shaft).faces(">Z").edges().vals())
    if "centre_hole" in motor.more:
        shaft = shaft.cut(_cone(0.0, 0.3 * r, L - 0.6 * r, L))
    if "shaft_thread" in motor.more:
        shaft = shaft.cut(_rod(0.35 * r, L - r, L + 1))
    stand = 0.0 if motor.recessed else motor.pilot_length
    start = L - 1.5 - motor.key_length
    if motor.end == "keyed":
        floor = r - 0.17 * motor.shaft if "key" not in motor.more else 0.0
        top = 2 * r if "key" not in motor.more else r + 0.12 * motor.shaft
        slot = cq.Solid.makeBox(
            motor.key_width, top - floor, motor.key_length, cq.Vector(-motor.key_width / 2, floor, start)
        )
        if "round_key" in motor.more:
            slot = slot.fillet(0.499 * motor.key_width, cq.Workplane(slot).edges("|Y").vals())
        shaft = shaft.fuse(slot) if "key" in motor.more else shaft.cut(slot)
    elif motor.end == "flat":
        low = max(stand + 3, L - 0.6 * L)
        shaft = shaft.cut(cq.Solid.makeBox(4 * r, r, L, cq.Vector(-2 * r, 0.84 * r, low)))
    return shaft


def _body(motor):
    t, deep = motor.thickness, motor.body_length
    if motor.round_body:
        body = _rod(motor.body / 2, -deep, -t / 2)
    else:
        body = _box(motor.body, motor.body, -deep, -t / 2)
        if "round_corners" in motor.more:
            body = body.fillet(0.1 * motor.body, cq.Workplane(body).edges("|Z").vals())
    parts = [body]
    half = motor.body / 2
    if "connector" in motor.more:
        parts.append(_box(0.5 * motor.body, 0.5 * motor.body, -0.7 * deep, -0.3 * deep, (0, half)))
    if "connectors" in motor.more:
        parts += [_box(20, 20, -0.9 * deep, -0.6 * deep, (half, 0)), _box(16, 30, -0.5 * deep, -0.25 * deep, (0, half))]
    if "gland" in motor.more:
        where = cq.Vector(half * 0.5, 0, -0.6 * deep)
        parts += [cq.Solid.makeCylinder(w, d, where, cq.Vector(1, 0, 0)) for w, d in ((8, half + 12), (10, half + 6))]
    if "rear_boss" in motor.more:
        parts.append(_rod(0.42 * motor.body, -deep - 25, -deep + 1))
    if "rear_shaft" in motor.more:
        parts.append(_rod(motor.shaft / 2, -deep - 45, -deep + 1))
    if "fins" in motor.more:
        parts += [
            _box(motor.body + 6, 2, -0.9 * deep, -0.3 * deep, (0, y)) for y in range(-int(half) + 4, int(half), 8)
        ]
    return parts


def _cut_all(motor, whole):
    tools = _holes(motor)
    half, deep = motor.body / 2, motor.body_length
    if "second_pattern" in motor.more:
        at = [
            (0.5 * (motor.pilot + 6) * math.cos(a), 0.5 * (motor.pilot + 6) * math.sin(a))
            for a in (0.0, math.pi / 2, math.pi, -math.pi / 2)
        ]
        tools += [_rod(1.0, -0.6 * motor.thickness, 0.01, p) for p in at]
    if "rear_screws" in motor.more:
        tools += [_rod(1.65, -deep - 1, -deep + 10, (x * half * 0.8, y * half * 0.8)) for x in (-1, 1) for y in (-1, 1)]
    if "jack_holes" in motor.more:
        turn = math.radians(motor.angle + 90 / motor.count)
        at = [(x * motor.circle / 2 * math.cos(turn), x * motor.circle / 2 * math.sin(turn)) for x in (-1, 1)]
        tools += [_rod(1.25, -motor.thickness - 60, 0.01, p) for p in at]
    if "groove" in motor.more:
        low = motor.shaft_length - 0.35 * motor.shaft_length
        tools.append(_rod(motor.shaft, low, low + 1.3).cut(_rod(0.47 * motor.shaft, low, low + 1.3)))
    return whole.cut(*tools)


def _loose(motor):
    """Return screws that lie in the model as solids of their own: heads of the rear cover."""
    if "rear_heads" not in motor.more:
        return []
    half, deep = motor.body / 2, motor.body_length
    at = [(x * half * 0.8, y * half * 0.8) for x in (-1, 1) for y in (-1, 1)]
    return [_rod(3.5, -deep - 4, -deep, p).cut(_rod(1.6, -deep - 4, -deep - 2, p)) for p in at]


def made(motor):
    """Return the motor as one shape."""
    flange = _flange(motor)
    body = _body(motor)
    shaft = _shaft(motor)
    if "loose_shaft" in motor.more:
        main = _cut_all(motor, flange.fuse(*body).cut(_rod(motor.shaft / 2, -0.4 * motor.body_length, 500)))
        groove = _cut_all(replace(motor, more=motor.more & {"groove"}, circle=1e6), shaft)
        solids = [*main.Solids(), *groove.Solids()]
    else:
        solids = _cut_all(motor, flange.fuse(*body, shaft)).Solids()
    return cq.Compound.makeCompound([*solids, *_loose(motor)]).wrapped


def truth(motor):
    """Return what should be read from the motor, by key."""
    stand = 0.0 if motor.recessed else motor.pilot_length
    if not motor.recessed and "boss" in motor.more and "seal_recess" not in motor.more:
        stand += 1.5
    if "seal_recess" in motor.more and not motor.recessed:
        stand -= 1.2
    known = {
        "pilot_diameter": motor.pilot,
        "pilot_form": "recessed" if motor.recessed else "proud",
        "pilot_length": motor.pilot_length,
        "flange_shape": motor.shape,
        "shaft_diameter": motor.shaft,
        "shaft_length": motor.shaft_length,
        "shaft_end": motor.end,
        "fastening": "tapped" if motor.thread else "clearance",
    }
    if motor.shape == "rectangle":
        known |= {"flange_width": motor.width, "flange_height": motor.height}
    else:
        known["flange_size"] = motor.width
    if motor.rectangle:
        known |= {"bolt_spacing_y": motor.rectangle[0], "bolt_spacing_z": motor.rectangle[1]}
    else:
        known |= {"bolt_circle": motor.circle, "bolt_count": motor.count}
        if motor.shape != "round" or {"connector"} & motor.more:
            known["bolt_angle"] = motor.angle % (360 / motor.count)
    known |= {"bolt_thread": motor.thread} if motor.thread else {"bolt_hole": motor.hole}
    if motor.through and motor.thread == "":
        known["flange_thickness"] = 0.6 * motor.thickness if "counterbore" in motor.more else motor.thickness
    if motor.end == "keyed":
        known |= {"key_width": motor.key_width, "key_length": motor.key_length}
    return known


def drawn(seed):
    """Return a motor by chance."""
    dice = random.Random(seed)
    shape = dice.choice(["square", "square", "square", "round", "round", "rectangle"])
    size = round(dice.uniform(45, 190), 1)
    width, height = size, size if shape != "rectangle" else round(size * dice.uniform(0.65, 0.9), 1)
    thread = dice.choice(["", "", "M3", "M4", "M5", "M6", "M8"])
    thread = thread if not thread or TAP_DRILLS[thread] < 0.06 * size else "M3"
    hole = TAP_DRILLS[thread] if thread else max([h for h in CLEARANCE if h < 0.085 * size], default=3.4)
    rectangle = None
    if shape == "round":
        count, circle = dice.choice([3, 4, 4, 4, 6, 8]), round(0.82 * size, 1)
        angle = (90 + 180 / count) % (360 / count)  # a gap at the top
        pilot = round((circle - hole) * dice.uniform(0.6, 0.88), 1)
    elif shape == "square":
        count, circle, angle = 4, round(size * dice.uniform(1.05, 1.15), 1), 45.0
        pilot = round(min(size * 0.9, (circle - 2 * hole)) * dice.uniform(0.6, 0.9), 1)
    else:
        count, circle, angle = 4, 0.0, 45.0
        edge = max(2.2 * hole, 0.1 * width)
        rectangle = (round(width - edge, 1), round(height - edge, 1))
        circle = math.hypot(*rectangle)
        pilot = round(min(height * 0.8, circle - 2 * hole) * dice.uniform(0.6, 0.9), 1)
    shaft = float(max(5, round(pilot * dice.uniform(0.2, 0.42))))
    end = dice.choice(["plain", "keyed", "keyed", "flat"])
    shaft_length = round(shaft * dice.uniform(1.8, 2.6) + 8, 1)
    tapped_body = dice.random() < 0.3 and bool(thread)
    round_body = dice.random() < 0.4
    inside = (
        circle / math.sqrt(2) - 2.4 * hole
        if shape == "square"
        else (circle - 2.5 * hole) / (1 if round_body else math.sqrt(2))
    )
    if rectangle:
        inside = min(inside, height)
    if shape == "square" and round_body:
        inside = min(size, circle - 2.5 * hole)
    body = round(size if tapped_body and shape != "rectangle" else max(inside, 1.4 * shaft), 1)
    more = {name for name, chance in _CHANCES.items() if dice.random() < chance}
    motor = Motor(
        shape, width, height, round(dice.uniform(0.07, 0.13) * size + 2, 1), pilot, round(dice.uniform(1.5, 5), 1),
        dice.random() < 0.15, circle, count, angle % (360 / count), hole, thread,
        not thread or dice.random() < 0.4, rectangle, shaft, shaft_length, end, round(shaft_length * 0.5, 1),
        float(max(2, round(shaft * 0.3))), body, round(size * dice.uniform(0.9, 1.6), 1),
        shape == "round" or round_body, frozenset(more),
    )  # fmt: skip
    if tapped_body:
        motor = replace(motor, through=False)
    if motor.recessed:
        motor = replace(motor, pilot_length=min(motor.pilot_length, 0.4 * motor.thickness))
    if motor.end == "keyed" and "groove" in more:
        motor = replace(motor, more=motor.more - {"groove"})
    return motor


_CHANCES = {
    "flange_chamfer": 0.3, "round_corners": 0.3, "pilot_chamfer": 0.3, "undercut": 0.15, "seal_recess": 0.2,
    "boss": 0.3, "cover_screws": 0.25, "counterbore": 0.15, "hole_chamfer": 0.2, "shaft_chamfer": 0.5,
    "shaft_fillet": 0.3, "centre_hole": 0.3, "shaft_thread": 0.2, "key": 0.3, "round_key": 0.5,
    "connector": 0.5, "connectors": 0.3, "gland": 0.3, "rear_boss": 0.4, "rear_shaft": 0.2, "fins": 0.2,
    "second_pattern": 0.2, "rear_screws": 0.4, "jack_holes": 0.15, "groove": 0.1, "loose_shaft": 0.25,
    "rear_heads": 0.3,
}  # fmt: skip


def posed(shape, seed):
    """Return a shape turned and moved by chance; the seed 0 leaves it where it is."""
    if seed == 0:
        return shape
    dice = random.Random(seed)
    turn, move = gp_Trsf(), gp_Trsf()
    axis = gp_Dir(*(dice.uniform(-1, 1) or 0.5 for _ in range(3)))
    turn.SetRotation(gp_Ax1(gp_Pnt(0, 0, 0), axis), dice.uniform(0.1, 6.2))
    move.SetTranslation(gp_Vec(*(dice.uniform(-400, 400) for _ in range(3))))
    return BRepBuilderAPI_Transform(shape, move.Multiplied(turn), True).Shape()


def as_free_form(shape):
    """Return a shape whose surfaces are all free-form ones."""
    return BRepBuilderAPI_NurbsConvert(shape, True).Shape()
