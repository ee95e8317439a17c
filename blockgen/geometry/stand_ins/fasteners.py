"""Screws, washers and pins: each kind built once and placed on its seat."""

from __future__ import annotations

import math
from collections.abc import Iterator

from OCP.BRepBuilderAPI import BRepBuilderAPI_MakeFace
from OCP.BRepPrimAPI import BRepPrimAPI_MakePrism
from OCP.gp import gp_Pnt, gp_Vec
from OCP.TopoDS import TopoDS_Shape, TopoDS_Solid

from blockgen.geometry.stand_ins.part import AssemblyPart, Colour
from blockgen.geometry.stand_ins.shapes import X, Z, closed, cut, standing, turned
from blockgen.plan import Fastener, Feature, Plan, Point
from blockgen.record import Ledger
from blockgen.standards.screws import CapScrew, cap_screw
from blockgen.standards.washers import Washer, washer

SCREW: Colour = (0.15, 0.15, 0.17)
WASHER: Colour = (0.70, 0.70, 0.66)
PIN: Colour = (0.86, 0.80, 0.52)

SOCKET_DEPTH = 0.5
"""Depth of the hexagon socket over the height of the head (ISO 4762, least depth, from memory)."""

PIN_CHAMFER = 0.1
"""Chamfer of a pin over its diameter (common practice, no source)."""

_INCH = 25.4

Y: Point = (0.0, 1.0, 0.0)


class Kinds:
    """Shapes by name, so that alike parts of all groups are one product."""

    def __init__(self) -> None:
        """Start without any."""
        self._shapes: dict[str, TopoDS_Solid] = {}

    def screw(self, name: str, screw: CapScrew, length: float) -> TopoDS_Solid:
        """Return a screw, built when it is asked for first."""
        if name not in self._shapes:
            self._shapes[name] = screw_solid(screw, length)
        return self._shapes[name]

    def washer(self, name: str, ring: Washer) -> TopoDS_Solid:
        """Return a washer."""
        if name not in self._shapes:
            self._shapes[name] = washer_solid(ring)
        return self._shapes[name]


def fasteners(plan: Plan, sizes: Ledger) -> tuple[AssemblyPart, ...]:
    """Return every screw, washer and pin of the plan where it is tightened.

    A screw's own origin lies under its head, z towards the head.

    Raises:
        KernelError: a shape could not be built.
    """
    kinds = Kinds()
    groups = {fastener.where: fastener for fastener in plan.fasteners}
    found = list(_base(plan, groups["base"], kinds)) if "base" in groups else []
    for end in ("bearing", "motor"):
        if f"{end}_flange" in groups:
            found += _flange(plan, sizes, groups[f"{end}_flange"], end, kinds)
    if "dowel" in groups:
        found += _dowels(plan, groups["dowel"])
    return tuple(found)


def screw_name(fastener: Fastener, length: float) -> str:
    """Return the designation, such as ``ISO 4762 M8 x 60 - 8.8``; inch screws have their length in inches."""
    inch = not fastener.size.startswith("M")
    shown = f"{length / _INCH:g} in" if inch else f"{length:g}"
    return f"{fastener.standard} {fastener.size} x {shown} - {fastener.property_class}"


def screw_solid(screw: CapScrew, length: float) -> TopoDS_Solid:
    """Return a socket head cap screw with its shank at the nominal diameter, mm; the head lies above z = 0."""
    head, shank, high = screw.head_diameter / 2, screw.diameter / 2, screw.head_height
    body = turned(((-length, 0.0), (-length, shank), (0.0, shank), (0.0, head), (high, head), (high, 0.0)), Z)
    corner = screw.key_size / math.sqrt(3)
    depth = SOCKET_DEPTH * high
    turns = [math.radians(60.0 * i) for i in range(6)]
    outline = closed(gp_Pnt(corner * math.cos(a), corner * math.sin(a), high - depth) for a in turns)
    face = BRepBuilderAPI_MakeFace(outline, True).Face()
    return cut(body, [BRepPrimAPI_MakePrism(face, gp_Vec(0.0, 0.0, depth + 1.0)).Shape()])


def washer_solid(ring: Washer) -> TopoDS_Solid:
    """Return a washer that lies on z = 0, mm."""
    inner, outer, high = ring.inner / 2, ring.outer / 2, ring.thickness
    return turned(((0.0, inner), (0.0, outer), (high, outer), (high, inner)), Z)


def pin_solid(diameter: float, length: float) -> TopoDS_Solid:
    """Return a dowel pin about the middle of its length, mm."""
    r, c, half = diameter / 2, PIN_CHAMFER * diameter, length / 2
    profile = ((-half, 0.0), (-half, r - c), (-half + c, r), (half - c, r), (half, r - c), (half, 0.0))
    return turned(profile, Z)


def _base(plan: Plan, fastener: Fastener, kinds: Kinds) -> Iterator[AssemblyPart]:
    """Yield the base screws with their washers: in counterbores from above, or against the plate from below."""
    below = plan.text("base.screw_from") == "below"
    holes = [f for f in plan.features if f.group == ("base_threads" if below else "base_screws")]
    ring = _washer_of(fastener)
    length = fastener.length or 0.0
    screw, name = cap_screw(fastener.size), screw_name(fastener, length)
    for number, hole in enumerate(holes, 1):
        seat, up = _base_seat(plan, hole, below=below)
        if ring is not None and fastener.washer is not None:
            shape = kinds.washer(fastener.washer, ring)
            yield _part(f"base_washer_{number}", fastener.washer, "base_fasteners", shape, seat, up, WASHER)
        under = _along(seat, up, ring.thickness if ring else 0.0)
        shape = kinds.screw(name, screw, length)
        held = "block" if below else "base_plate"
        yield _part(f"base_screw_{number}", name, "base_fasteners", shape, under, up, SCREW, (held,))


def _base_seat(plan: Plan, hole: Feature, *, below: bool) -> tuple[Point, Point]:
    """Return where washer or head rests, and the direction towards the head."""
    x, y, z = hole.position
    if below:
        return (x, y, -plan.number("base.thickness")), (0.0, 0.0, -1.0)
    return (x, y, z - (hole.counterbore_depth or 0.0)), Z


def _flange(plan: Plan, sizes: Ledger, fastener: Fastener, end: str, kinds: Kinds) -> Iterator[AssemblyPart]:
    """Yield the screws of a flange: through it into the block, or through the wall into a tapped flange."""
    tapped = sizes.text(f"{end}.fastening") == "tapped"
    outward = 1.0 if end == "motor" else -1.0
    rest = -sizes.number(f"{end}_wall") if tapped else sizes.number(f"{end}.flange_thickness")
    up = (-outward if tapped else outward, 0.0, 0.0)
    length = sizes.number(f"{end}_screw_length")
    name, screw = screw_name(fastener, length), cap_screw(fastener.size)
    part = "motor" if end == "motor" else "bearing_unit"
    group = "drive" if end == "motor" else "bearing"
    holes = [f for f in plan.features if f.group in (f"{end}_threads", f"{end}_holes")]
    for number, hole in enumerate(holes, 1):
        x, y, z = hole.position
        shape = kinds.screw(name, screw, length)
        held = (part if tapped else "block",)
        yield _part(f"{end}_screw_{number}", name, group, shape, (x + outward * rest, y, z), up, SCREW, held)


def _dowels(plan: Plan, fastener: Fastener) -> Iterator[AssemblyPart]:
    """Yield the pins across the joint of block and base, half in each as far as the plate is thick."""
    diameter = plan.number("dowel_diameter")
    length = fastener.length or 4 * diameter
    name = f"{fastener.standard} {fastener.size} x {length:g}"
    shape = pin_solid(diameter, length)
    middle = max(0.0, length / 2 - plan.number("base.thickness"))
    for number, hole in enumerate((f for f in plan.features if f.group == "dowels"), 1):
        at = (hole.position[0], hole.position[1], middle)
        yield _part(f"dowel_{number}", name, "base_fasteners", shape, at, Z, PIN, ("block", "base_plate"))


def _part(
    part_id: str, name: str, group: str, shape: TopoDS_Shape, seat: Point, up: Point, colour: Colour,
    held_in: tuple[str, ...] = (),
) -> AssemblyPart:  # fmt: skip
    place = standing(seat, up, Y if up[0] else X)
    frame = "centre of the pin" if part_id.startswith("dowel") else "seat on the axis; z towards the head"
    return AssemblyPart(part_id, name, group, shape, place, colour, stand_in=True, frame=frame, held_in=held_in)


def _along(point: Point, direction: Point, distance: float) -> Point:
    x, y, z = (p + distance * d for p, d in zip(point, direction, strict=True))
    return (x, y, z)


def _washer_of(fastener: Fastener) -> Washer | None:
    """Return the washer that a text such as ``ISO 7092 M8 200 HV`` names."""
    if fastener.washer is None:
        return None
    words = fastener.washer.split()
    return washer(words[2], f"{words[0]} {words[1]}")
