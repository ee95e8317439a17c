"""Which tools reach their screws: heads drawn out, hexagon keys pushed in and swung, clamp screws, lock nut."""

from __future__ import annotations

import math
from collections.abc import Iterator, Sequence

from blockgen.evidence.clearance_limits import limit
from blockgen.evidence.clearances import Access
from blockgen.geometry.access_shaft import clamp_accesses, nut_access
from blockgen.geometry.in_the_way import free_length, in_the_way, longest_run
from blockgen.geometry.named_clearances import Solids, seat_of
from blockgen.geometry.solid_part import SolidPart
from blockgen.geometry.stand_ins.fasteners import SOCKET_DEPTH
from blockgen.geometry.stand_ins.part import AssemblyPart
from blockgen.geometry.tool_sweeps import Axis, axis_along, rod, swung
from blockgen.plan import Fastener, Plan
from blockgen.standards.screws import CapScrew, cap_screw

_OFF_SEAT = 0.05
"""How far above its seat a head begins to be drawn out, mm."""


def accesses(plan: Plan, parts: Sequence[AssemblyPart], solids: Solids) -> tuple[Access, ...]:
    """Return every tool at its place: base, bearing, motor, coupling, lock nut.

    Args:
        plan: Sized plan.
        parts: Parts of the assembly.
        solids: The same parts where they stand.
    """
    groups = {fastener.where: fastener for fastener in plan.fasteners}
    found: list[Access] = []
    for where, group in (("base", "base"), ("bearing", "bearing_flange"), ("motor", "motor_flange")):
        if group in groups:
            for part in parts:
                if part.id.startswith(f"{where}_screw_"):
                    found += _screw(plan, where, part, groups[group], solids)
    return (*found, *clamp_accesses(plan, solids), *nut_access(plan, solids))


def _screw(plan: Plan, where: str, part: AssemblyPart, fastener: Fastener, solids: Solids) -> Iterator[Access]:
    """Yield the way of the screw itself and that of its key."""
    screw = cap_screw(fastener.size)
    axis = axis_along(*seat_of(part))
    deep = _sunk(plan, where)
    length = seat_length(part, solids, axis)
    yield screw_entry(where, part.id, (screw, length), axis, deep, solids)
    yield key_access(plan, where, part.id, screw, axis, solids, deep)


def seat_length(part: AssemblyPart, solids: Solids, axis: Axis) -> float:
    """Return the length of a screw under its head, mm."""
    box = solids[part.id].box
    return -math.fsum(
        min((box[i] - o) * u, (box[i + 3] - o) * u) for i, (o, u) in enumerate(zip(axis.origin, axis.up, strict=True))
    )


def _sunk(plan: Plan, where: str) -> float:
    """Return how deep the seat of a head lies below the outside, mm."""
    if where != "base" or plan.text("base.screw_from") == "below":
        return 0.0
    return plan.number("base_counterbore_depth")


def screw_entry(
    where: str, part: str, screw: tuple[CapScrew, float], axis: Axis, deep: float, solids: Solids
) -> Access:
    """Return whether a screw can be drawn out along its axis until its tip is in the open.

    Args:
        where: base, bearing or motor.
        part: Id of the screw.
        screw: Its sizes, and its length under the head, mm.
        axis: Its seat and the direction towards its head.
        deep: How far its seat lies below the outside, mm.
        solids: Parts where they stand.
    """
    head, needed = screw[0].head_height, screw[1] + deep
    tool = rod(axis, _OFF_SEAT, head + needed, screw[0].head_diameter / 2)
    blocking = in_the_way(tool, solids.values(), {part})
    length = free_length(axis, tool, head, needed, blocking)
    return Access(
        where, part, "the screw itself, drawn out", not blocking, length, needed, in_way=tuple(s.id for s in blocking)
    )


def key_access(plan: Plan, where: str, part: str, screw: CapScrew, axis: Axis, solids: Solids, deep: float) -> Access:
    """Return whether a hexagon key reaches the socket and turns: the first way that does, else the best one.

    Args:
        plan: Sized plan.
        where: base, bearing or motor.
        part: Id of the screw.
        screw: Its sizes.
        axis: Its seat and the direction towards its head.
        solids: Parts where they stand.
        deep: How far its seat lies below the outside, mm.
    """
    short = screw.key_short_arm
    long = limit("practice.key_long_arm") * short
    size, tried = f"hexagon key {screw.key_size:g}", []
    for name, arms in (("long arm in the socket", (long, short)), ("short arm in the socket", (short, long))):
        found = _bent_key(plan, (where, part, f"{size}, {name}"), screw, axis, arms, solids)
        if found.free:
            return found
        tried.append(found)
    straight = _straight_key(plan, (where, part), screw, axis, deep + short, solids)
    if straight.free:
        return straight
    return max(tried, key=lambda found: (found.length / found.needed, found.angle or 0.0))


def _half(plan: Plan, screw: CapScrew) -> float:
    """Return half the width that a key takes: across its corners, with the clearance that is given to keys, mm."""
    return screw.key_size / math.sqrt(3) + plan.number("practice.key_clearance")


def _bottom(screw: CapScrew) -> float:
    """Return the station of the bottom of the socket above the seat, mm."""
    return (1 - SOCKET_DEPTH) * screw.head_height


def _bent_key(
    plan: Plan, names: tuple[str, str, str], screw: CapScrew, axis: Axis, arms: tuple[float, float], solids: Solids
) -> Access:
    """Return how far a bent key gets: one arm along the axis from the socket's bottom, the other swung at its end."""
    half, start = _half(plan, screw), _bottom(screw)
    but = {names[1]}
    tool = rod(axis, start, start + arms[0], half)
    blocking = in_the_way(tool, solids.values(), but)
    length = free_length(axis, tool, start, arms[0], blocking)
    wanted = limit("practice.key_swing")
    if blocking:
        ways = tuple(solid.id for solid in blocking)
        return Access(*names, free=False, length=length, needed=arms[0], angle=0.0, needed_angle=wanted, in_way=ways)
    middle = start + arms[0] - screw.key_size / math.sqrt(3)
    angle, ways = free_swing(axis, (middle - half, middle + half), (arms[1], half), solids, but)
    return Access(*names, angle >= wanted, length, arms[0], angle, wanted, () if angle >= wanted else ways)


def free_swing(
    axis: Axis, levels: tuple[float, float], arm: tuple[float, float], solids: Solids, but: set[str]
) -> tuple[float, tuple[str, ...]]:
    """Return the greatest free swing of an arm in deg, and the ids of what limits it.

    Args:
        axis: Axis of the swing.
        levels: Lower and upper side of the arm along the axis, mm.
        arm: Length from the axis and half width, mm.
        solids: Parts where they stand.
        but: Ids of parts that do not count.
    """
    whole = rod(axis, *levels, math.hypot(arm[0], arm[1]))
    blocking = in_the_way(whole, solids.values(), but)
    if not blocking:
        return 360.0, ()
    step = math.radians(limit("practice.key_direction_step"))
    count = round(math.tau / step)
    sectors = [swung(axis, levels, arm, (i * step, (i + 1) * step)) for i in range(count)]
    free = [not in_the_way(sector, blocking, but) for sector in sectors]
    return longest_run(free) * math.degrees(step), tuple(solid.id for solid in blocking)


def _straight_key(
    plan: Plan, names: tuple[str, str], screw: CapScrew, axis: Axis, needed: float, solids: Solids
) -> Access:
    """Return how far a hexagon bit on a straight extension gets; it turns wherever it reaches."""
    start = _bottom(screw)
    tool = rod(axis, start, start + needed, _half(plan, screw))
    blocking: list[SolidPart] = in_the_way(tool, solids.values(), {names[1]})
    length = free_length(axis, tool, start, needed, blocking)
    told = f"hexagon bit {screw.key_size:g} on a straight extension"
    return Access(*names, told, not blocking, length, needed, in_way=tuple(solid.id for solid in blocking))
