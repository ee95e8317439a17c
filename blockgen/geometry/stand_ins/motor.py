"""The motor: flange with pilot and holes, shaft with key or flat, a body that gives way to screw heads and keys."""

from __future__ import annotations

import math
from dataclasses import dataclass

from OCP.TopoDS import TopoDS_Shape, TopoDS_Solid, TopoDS_Wire

from blockgen.geometry.stand_ins.flange import Places, hole_places, hole_tools, outline
from blockgen.geometry.stand_ins.part import AssemblyPart, Colour
from blockgen.geometry.stand_ins.shapes import box, circle, cut, joined, moved, polygon, prism, turned
from blockgen.geometry.stand_ins.sizes import note_of
from blockgen.plan import Plan
from blockgen.record import Ledger
from blockgen.standards.screws import cap_screw
from blockgen.standards.threads import thread

MOTOR: Colour = (0.24, 0.27, 0.31)

_LEAST_FLAT = 0.3  # of half a body's side: what corner cuts leave of each side
_EPS = 1e-6


def motor(plan: Plan, sizes: Ledger) -> AssemblyPart:
    """Return the motor on its seat; its own x axis points from the mounting face to the rear.

    Raises:
        KernelError: the sizes do not make one solid.
    """
    name = f"motor {sizes.text('motor.name')}".replace("motor motor", "motor")
    note = note_of(sizes, plan, "motor")
    place = moved(plan.frames["motor_seat"].origin)
    return AssemblyPart(
        "motor", name, "drive", motor_solid(sizes, hole_places(plan, "motor")), place, MOTOR, stand_in=True,
        frame="centre of the mounting face; x to the rear, the shaft points along -x", note=note,
    )  # fmt: skip


def motor_solid(sizes: Ledger, holes: Places) -> TopoDS_Solid:
    """Return the motor about the centre of its mounting face.

    Args:
        sizes: Records with the stand-ins' own.
        holes: Centres (y, z) of the flange's holes, mm.
    """
    thick, length = sizes.number("motor.flange_thickness"), sizes.number("motor.body_length")
    parts: list[TopoDS_Shape] = [_shaft(sizes)]
    if length > thick:
        parts.append(prism(body_form(sizes, holes).wire(thick), length - thick))
    if sizes.text("motor.shaft_end") == "keyed":
        parts.append(_key(sizes))
    whole = joined(prism(outline(sizes, "motor", 0.0), thick), parts)
    tools = hole_tools(sizes, "motor", holes, -1.0, thick)
    return cut(whole, [*tools, *_cut_ends(sizes)])


def _shaft(sizes: Ledger) -> TopoDS_Solid:
    """Return shaft and proud pilot, with a root inside the flange."""
    radius, end = sizes.number("motor.shaft_diameter") / 2, -sizes.number("motor.shaft_length")
    root = sizes.number("motor.flange_thickness") / 2
    if sizes.text("motor.pilot_form") == "recessed":
        root = sizes.number("motor.flange_thickness")
        return turned(((end, 0.0), (end, radius), (root, radius), (root, 0.0)))
    pilot, face = sizes.number("motor.pilot_diameter") / 2, -sizes.number("motor.pilot_length")
    return turned(((end, 0.0), (end, radius), (face, radius), (face, pilot), (root, pilot), (root, 0.0)))


def key_box(sizes: Ledger, end: float, extra: float = 0.0) -> TopoDS_Solid:
    """Return the key as a box above the axis, on the shaft that ends at x = end, mm."""
    half, radius = sizes.number("motor.key_width") / 2 + extra, sizes.number("motor.shaft_diameter") / 2
    length = min(sizes.number("motor.key_length"), sizes.number("motor.shaft_smooth_length"))
    start = end + (sizes.number("motor.shaft_smooth_length") - length) / 2
    return box((start, -half, 0.0), (start + length, half, radius + sizes.number("motor.key_proud")))


def _key(sizes: Ledger) -> TopoDS_Solid:
    return key_box(sizes, -sizes.number("motor.shaft_length"))


def _cut_ends(sizes: Ledger) -> list[TopoDS_Shape]:
    """Return the tools for the flat of the shaft and for the recess of the flange."""
    tools: list[TopoDS_Shape] = []
    radius, end = sizes.number("motor.shaft_diameter") / 2, -sizes.number("motor.shaft_length")
    if sizes.text("motor.shaft_end") == "flat":
        pilot = -sizes.number("motor.pilot_length") if sizes.text("motor.pilot_form") == "proud" else 0.0
        stop = min(end + sizes.number("motor.shaft_smooth_length"), pilot - 1.0)
        depth = sizes.number("motor.flat_depth")
        tools.append(box((end - 1.0, -2 * radius, radius - depth), (stop, 2 * radius, 2 * radius)))
    if sizes.text("motor.pilot_form") == "recessed":
        outer, deep = sizes.number("motor.pilot_diameter") / 2, sizes.number("motor.recess_depth")
        tools.append(turned(((-1.0, radius), (-1.0, outer), (deep, outer), (deep, radius))))
    return tools


@dataclass(frozen=True, slots=True)
class BodyForm:
    """Outline of the body behind the flange.

    Args:
        half: Half its side, or its radius, mm.
        corner: Where a side ends at a corner cut, from the middle of the side, mm; equal to ``half`` for sharp
            corners, None for a round body.
    """

    half: float
    corner: float | None

    def wire(self, along: float) -> TopoDS_Wire:
        """Return the outline in the plane x = along."""
        if self.corner is None:
            return circle(self.half, along)
        h, k = self.half, self.corner
        if k >= h:
            return polygon(((h, h), (-h, h), (-h, -h), (h, -h)), along)
        return polygon(((h, k), (k, h), (-k, h), (-h, k), (-h, -k), (-k, -h), (k, -h), (h, -k)), along)

    @property
    def area(self) -> float:
        """Area of the section, mm2."""
        if self.corner is None:
            return math.pi * self.half**2
        return 4 * self.half**2 - 2 * (self.half - self.corner) ** 2


def body_form(sizes: Ledger, holes: Places) -> BodyForm:
    """Return the outline of a body of the given size that leaves the screws of the flange free over its length.

    ``body_size`` is a side or a diameter: a round flange has a round body, others a square one. Screws driven from
    behind cut its corners off, or make it round where they stand beside its flats.

    Args:
        sizes: Records with the stand-ins' own.
        holes: Centres (y, z) of the flange's holes, mm.
    """
    half = sizes.number("motor.body_size") / 2
    tapped = sizes.text("motor.fastening") == "tapped"
    free = 0.0 if tapped else _head_room(sizes)
    if sizes.text("motor.flange_shape") == "round":
        return BodyForm(half if tapped else _round_within(sizes, half, holes, free), None)
    in_way = [] if tapped else [(abs(y), abs(z)) for y, z in holes if max(abs(y), abs(z)) < half + free - _EPS]
    if not in_way:
        return BodyForm(half, half)
    corner = min((y + z) - free * math.sqrt(2) for y, z in in_way) - half
    if corner >= _LEAST_FLAT * half:
        return BodyForm(half, min(corner, half))
    return BodyForm(_round_within(sizes, half, holes, free), None)


def _head_room(sizes: Ledger) -> float:
    """Return the radius about a flange screw that head and key need, mm."""
    head = cap_screw(thread(sizes.text("motor_thread")).size)
    return head.head_diameter / 2 + sizes.number("practice.key_clearance")


def _round_within(sizes: Ledger, half: float, holes: Places, free: float) -> float:
    """Return the radius of a round body between the screws, mm; never less than the shaft and a wall."""
    inside = [math.hypot(y, z) - free for y, z in holes if math.hypot(y, z) < half + free]
    return max(min([half, *inside]), 0.75 * sizes.number("motor.shaft_diameter"))
