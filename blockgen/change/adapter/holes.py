"""Holes of a plate: one group for the screws into the block, one for the motor; none may come near another."""

from __future__ import annotations

import math
from collections.abc import Sequence
from dataclasses import dataclass, replace

from blockgen.change.rework.leftover import rule_of
from blockgen.mechanics.ligaments import least_wall, required_wall
from blockgen.plan import Feature, Plan, Point
from blockgen.sizing.cavities import Place, TapSize, counterbored_hole, tapped_hole
from blockgen.standards.din974 import counterbore
from blockgen.standards.iso273 import clearance_hole
from blockgen.standards.screws import cap_screw
from blockgen.standards.threads import Thread

FROM_MOTOR: Point = (-1.0, 0.0, 0.0)
FROM_BLOCK: Point = (1.0, 0.0, 0.0)
_HAIR = 1e-6
_EDGE = 0.5


@dataclass(frozen=True, slots=True)
class Group:
    """Equal screws of a plate.

    Args:
        name: block_screws or motor_screws.
        thread: Their thread.
        places: Centres (y, z) from the shaft, mm.
        tapped: True where the plate is tapped for them; else it has counterbored holes.
        head_side: motor or block: the face from which counterbored heads are sunk.
    """

    name: str
    thread: Thread
    places: tuple[tuple[float, float], ...]
    tapped: bool
    head_side: str = "motor"

    @property
    def sunk(self) -> float:
        """Depth of the counterbore, mm; 0 where the plate is tapped."""
        return 0.0 if self.tapped else round(cap_screw(self.thread.size).head_height + _EDGE, 3)

    @property
    def radius(self) -> float:
        """Greatest radius of its holes, mm."""
        return self.thread.diameter / 2 if self.tapped else counterbore(self.thread.size).diameter / 2


def features_of(group: Group, thickness: float) -> tuple[Feature, ...]:
    """Return the holes of a group in a plate of a thickness in mm."""
    return tuple(_hole(group, thickness, number, y, z) for number, (y, z) in enumerate(group.places, 1))


def _hole(group: Group, thickness: float, number: int, y: float, z: float) -> Feature:
    from_motor = group.tapped or group.head_side == "motor"
    face, other = ("motor_face", "block_face") if from_motor else ("block_face", "motor_face")
    mouth, axis = (thickness, FROM_MOTOR) if from_motor else (0.0, FROM_BLOCK)
    place = Place(f"{group.name}_{number}", group.name, face, (mouth, y, z), axis)
    if group.tapped:
        size = TapSize(group.thread.call_out, group.thread.diameter, group.thread.tap_drill, thickness, thickness, 0.0)
        return tapped_hole(place, size, other, thickness)
    head = (2 * group.radius, group.sunk)
    return counterbored_hole(place, clearance_hole(group.thread.size), head, thickness, _EDGE, other)


def clash(features: Sequence[Feature], plan: Plan) -> str:
    """Return which two cavities of a plate come too near, in words; empty where none do."""
    rule = rule_of(plan)
    for index, first in enumerate(features):
        for second in features[:index]:
            if first.kind == second.kind == "bore":
                continue
            apart = replace(first, opens_into=()), replace(second, opens_into=())
            wall, least = least_wall(*apart), required_wall(first, second, rule)
            if wall < least - _HAIR:
                return f"{first.id} would stay {wall:.3g} mm beside {second.id}, {least:g} mm are asked for"
    return ""


def spigot_in_the_way(features: Sequence[Feature], diameter: float, plan: Plan) -> str:
    """Return which hole of a plate runs into its spigot, in words; empty where none does."""
    least = plan.number("practice.rim")
    for hole in features:
        if hole.kind != "bore":
            radius = max(max(s.start_radius, s.end_radius) for s in hole.profile)
            wall = math.hypot(hole.position[1], hole.position[2]) - radius - diameter / 2
            if wall < least - _HAIR:
                return f"{hole.id} would stay {wall:.3g} mm from the spigot, {least:g} mm are asked for"
    return ""


def outside_of(places: Sequence[tuple[float, float]], radius: float) -> tuple[float, float, float]:
    """Return how far holes reach across, up and down from the shaft, mm."""
    return (
        max(abs(y) for y, _ in places) + radius,
        max(z for _, z in places) + radius,
        max(-z for _, z in places) + radius,
    )


def clear_of_flange(group: Group, half: tuple[float, float], *, is_round: bool) -> bool:
    """Tell whether a key reaches the heads of a group beside a motor flange with half sizes in mm."""
    room = group.radius + 1.0
    if is_round:
        return all(math.hypot(y, z) >= half[0] + room for y, z in group.places)
    return all(abs(y) >= half[0] + room or abs(z) >= half[1] + room for y, z in group.places)
