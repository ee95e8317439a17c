"""Distances with a name: coupling, nut, shaft ends, screw heads, motor over the base, space given."""

from __future__ import annotations

import math
from collections.abc import Iterable, Iterator, Mapping, Sequence
from dataclasses import replace

from blockgen.evidence.clearances import Clearance
from blockgen.geometry.block import BlockSolid
from blockgen.geometry.meeting import least_distance
from blockgen.geometry.solid_part import Box, SolidPart, around, faces_where, some_faces
from blockgen.geometry.stand_ins.part import AssemblyPart
from blockgen.geometry.stand_ins.sizes import stand_in_sizes
from blockgen.plan import Plan, Point

Solids = Mapping[str, SolidPart]

_EPS = 1e-4


def named_clearances(
    plan: Plan, block: BlockSolid, parts: Sequence[AssemblyPart], solids: Solids
) -> tuple[Clearance, ...]:
    """Return the named distances that the parts allow to be measured, in a fixed order.

    Args:
        plan: Sized plan.
        block: Solid of the block with its named faces.
        parts: Parts of the assembly.
        solids: The same parts where they stand.
    """
    found = [
        *_coupling(plan, block, solids), *_nut(plan, solids), *_shaft_ends(plan, solids),
        *_heads(plan, parts, solids), *_motor(plan, solids), *_space(plan, solids),
    ]  # fmt: skip
    return tuple(found)


def _coupling(plan: Plan, block: BlockSolid, solids: Solids) -> Iterator[Clearance]:
    """Yield the room about the coupling."""
    coupling = solids.get("coupling")
    if coupling is None:
        return
    others = (
        ("coupling_walls", "Coupling to the walls of the window", _window(block, floor=False)),
        ("coupling_floor", "Coupling to the floor of the window", _window(block, floor=True)),
        ("coupling_base", "Coupling to the base plate", solids.get("base_plate")),
        ("coupling_bearing", "Coupling to lock nut or seal of the bearing unit", solids.get("bearing_unit")),
        ("coupling_motor", "Coupling to pilot and flange of the motor", motor_without_shaft(plan, solids)),
    )
    for name, title, other in others:
        if other is not None:
            yield _between(plan, name, title, (coupling, other), "coupling.clearance")
    screws = [(coupling, part) for part in solids.values() if part.id.startswith("motor_screw_")]
    yield from _least(plan, ("coupling_motor_screws", "Coupling to the motor screws", "coupling.clearance"), screws)


def _window(block: BlockSolid, *, floor: bool) -> SolidPart | None:
    """Return the faces of the window: its floor, or all others."""
    faces = [
        face
        for face_id, listed in block.faces.items()
        if face_id.startswith("window.") and (face_id == "window.floor") is floor
        for face in listed
    ]
    return some_faces("window.floor" if floor else "window", faces)


def motor_without_shaft(plan: Plan, solids: Solids) -> SolidPart | None:
    """Return the faces of the motor but those of its shaft, which is in the coupling on purpose."""
    motor = solids.get("motor")
    if motor is None:
        return None
    sizes = stand_in_sizes(plan)
    reach = plan.number("motor.shaft_diameter") / 2 + sizes.number_or("motor.key_proud", 0.0) + _EPS
    seat = plan.frames["motor_seat"].origin
    return faces_where(motor, lambda box: not _within(box, seat, reach))


def _within(box: Box, axis: Point, reach: float) -> bool:
    """Tell whether a box lies within a square about the shaft's axis."""
    return max(abs(box[i] - axis[i % 3]) for i in (1, 2, 4, 5)) <= reach


def _nut(plan: Plan, solids: Solids) -> Iterator[Clearance]:
    """Yield the room about what stands beyond the pilot of the bearing unit."""
    unit, block = solids.get("bearing_unit"), solids.get("block")
    if unit is None or block is None:
        return
    into = plan.text("bearing.pilot_direction") != "away" and plan.text("bearing.pilot_form") != "recessed"
    front = plan.number("bearing.pilot_length") if into else 0.0
    nut = faces_where(unit, lambda box: box[3] > front + _EPS)
    if nut is not None:
        yield _between(plan, "nut_bore", "Lock nut or seal to its bore", (nut, block), "")


def _shaft_ends(plan: Plan, solids: Solids) -> Iterator[Clearance]:
    ends = solids.get("journal"), solids.get("motor")
    if ends[0] is not None and ends[1] is not None:
        yield _between(
            plan, "shaft_ends", "Journal end to motor shaft end", (ends[0], ends[1]), "coupling.gap_min"
        )  # fmt: skip


def _heads(plan: Plan, parts: Sequence[AssemblyPart], solids: Solids) -> Iterator[Clearance]:
    """Yield the room beside screw heads, the least of each group."""
    titles = {"base": "base", "bearing": "bearing flange", "motor": "motor flange"}
    for where, title in titles.items():
        pairs = [
            pair for part in parts if part.id.startswith(f"{where}_screw_") for pair in _beside_head(part, solids)
        ]  # fmt: skip
        yield from _least(plan, (f"{where}_heads", f"Heads of the {title} screws to walls", ""), pairs)


def _beside_head(part: AssemblyPart, solids: Solids) -> Iterator[tuple[SolidPart, SolidPart]]:
    """Yield a head with what stands up beside it, its seat left out."""
    seat, up = seat_of(part)

    def above(box: Box) -> bool:
        return _top(box, up) > _along(seat, up) + _EPS

    head = faces_where(solids[part.id], above)
    for name in ("block", "motor", "bearing_unit"):
        beside = faces_where(solids[name], above) if name in solids else None
        if head is not None and beside is not None:
            yield head, beside


def seat_of(part: AssemblyPart) -> tuple[Point, Point]:
    """Return seat and direction of a screw in the block's coordinates: its own origin and z axis."""
    place = part.location
    origin = (place.Value(1, 4), place.Value(2, 4), place.Value(3, 4))
    return origin, (place.Value(1, 3), place.Value(2, 3), place.Value(3, 3))


def _top(box: Box, up: Point) -> float:
    """Return how far a box reaches along a direction, mm."""
    return math.fsum(max(box[i] * up[i], box[i + 3] * up[i]) for i in range(3))


def _along(point: Point, up: Point) -> float:
    return math.fsum(a * b for a, b in zip(point, up, strict=True))


def _motor(plan: Plan, solids: Solids) -> Iterator[Clearance]:
    """Yield the motor above the plane of the base face, and to the base plate."""
    motor, plate = solids.get("motor"), solids.get("base_plate")
    if motor is None:
        return
    key = "practice.body_clearance"
    yield Clearance(
        "motor_base_plane", "Motor above the plane of the base face", round(motor.box[2], 6), plan.number(key), key,
        "motor", "plane of the base face",
    )  # fmt: skip
    if plate is not None:
        yield _between(plan, "motor_base_plate", "Motor to the base plate", (motor, plate), key)


def _space(plan: Plan, solids: Solids) -> Iterator[Clearance]:
    """Yield what is left of the space that is given."""
    named = [solids[name] for name in ("block", "bearing_unit", "motor") if name in solids]
    standing = [solid for solid in solids.values() if solid.id not in {"base_plate", "journal"}]
    if "base.height_limit" in plan.records:
        highest = max(standing, key=lambda solid: (round(solid.box[5], 6), solid.id))
        title = "Highest part under the height limit"
        yield _left(plan, "base.height_limit", title, highest.box[5], highest.id)
    if "base.width_available" in plan.records:
        widest = max(named, key=lambda solid: (round(_half_width(solid.box), 6), solid.id))
        title = "Widest part in the width, both sides together"
        yield _left(plan, "base.width_available", title, 2 * _half_width(widest.box), widest.id)
    if "base.length_available" in plan.records:
        box = around(named)
        title, told = "Bearing unit, block and motor in the length", "told only: the length given is that of the block"
        whole = _left(plan, "base.length_available", title, box[3] - box[0], "bearing_unit to motor")
        yield replace(whole, asked=None, note=told)


def _left(plan: Plan, key: str, title: str, taken: float, what: str) -> Clearance:
    """Return what a part leaves of the space under a key, mm."""
    return Clearance(key.removeprefix("base."), title, round(plan.number(key) - taken, 6), 0.0, key, what, key)


def _half_width(box: Box) -> float:
    return max(-box[1], box[4])


def _least(
    plan: Plan, names: tuple[str, str, str], pairs: Iterable[tuple[SolidPart, SolidPart]]
) -> Iterator[Clearance]:  # fmt: skip
    """Yield the least distance of many pairs, the first among equals; nothing where there is no pair."""
    best, found = math.inf, None
    for pair in pairs:
        distance = least_distance(*pair, best) if found else least_distance(*pair)
        if distance < best - _EPS:
            best, found = distance, pair
    if found is not None:
        yield _named(plan, names, best, (found[0].id, found[1].id))


def _between(plan: Plan, name: str, title: str, parts: tuple[SolidPart, SolidPart], key: str) -> Clearance:
    return _named(plan, (name, title, key), least_distance(*parts), (parts[0].id, parts[1].id))


def _named(plan: Plan, names: tuple[str, str, str], distance: float, ids: tuple[str, str]) -> Clearance:
    """Return a distance under its id and title, with what the record of its key asks for."""
    name, title, key = names
    asked = plan.number(key) if key in plan.records else None
    return Clearance(name, title, round(distance, 6), asked, key if asked is not None else "", *ids)
