"""Which tools reach what is on the shafts: clamp screws of the coupling, lock nut of the bearing unit."""

from __future__ import annotations

import math
from collections.abc import Iterator
from dataclasses import dataclass

from blockgen.evidence.clearance_limits import limit
from blockgen.evidence.clearances import Access
from blockgen.geometry.in_the_way import free_length, in_the_way, runs
from blockgen.geometry.named_clearances import Solids
from blockgen.geometry.solid_part import SolidPart
from blockgen.geometry.tool_sweeps import Axis, rod, tube
from blockgen.plan import Plan, Point

X: Point = (1.0, 0.0, 0.0)


def clamp_accesses(plan: Plan, solids: Solids) -> Iterator[Access]:
    """Yield the key of both clamp screws: the hub is turned until the key finds a way through the window.

    The screw stands midway between the surface of the shaft and that of the hub, square to the shaft, on either side
    of it; the key comes along it and needs ``coupling.clamp_access_radius`` about itself.
    """
    if "coupling" not in solids or "block" not in solids:
        return
    start, half = plan.number("coupling_position"), plan.number("coupling.length") / 2
    position, outer = plan.number("coupling.clamp_position"), plan.number("coupling.outer_diameter") / 2
    shafts = (("journal", "screw.journal_diameter", position), ("motor", "motor.shaft_diameter", 2 * half - position))
    for name, key, along in shafts:
        beside = (plan.number(key) / 2 + outer) / 2
        yield _clamp(plan, f"{name} hub", (start + along, beside, outer), solids)


def _clamp(plan: Plan, hub: str, place: tuple[float, float, float], solids: Solids) -> Access:
    """Return the access to one clamp screw at x, beside the shaft by ``place[1]``, in a hub of radius ``place[2]``."""
    step = limit("practice.key_direction_step")
    angles = [i * step for i in range(round(360.0 / step))]
    ways = {angle: _ways(plan, angle, place, solids) for angle in angles}
    free = [not any(way.blocking for way in ways[angle]) for angle in angles]
    spans = tuple((first * step, last * step) for first, last in runs(free))
    usual = _usual(plan)
    shown = usual if free[angles.index(usual)] or not any(free) else angles[free.index(True)]
    worst = min(ways[shown], key=lambda way: way.length - way.needed)
    told = f"hexagon key in a way of {2 * plan.number('coupling.clamp_access_radius'):g} across, from {shown:g} deg"
    blocking = tuple(solid.id for solid in worst.blocking)
    return Access(
        "coupling", hub, told, any(free), worst.length, worst.needed, in_way=blocking, directions=spans,
        note=f"clamp screw taken {place[1]:.3g} mm beside the axis, on either side",
    )  # fmt: skip


@dataclass(frozen=True, slots=True)
class _Way:
    """One way of a key: free length and length asked for, mm, and what blocks it."""

    axis: Axis
    tool: SolidPart
    needed: float
    blocking: list[SolidPart]

    @property
    def length(self) -> float:
        """Free length, mm."""
        return free_length(self.axis, self.tool, 0.0, self.needed, self.blocking)


def _ways(plan: Plan, angle: float, place: tuple[float, float, float], solids: Solids) -> list[_Way]:
    """Return the ways of a key from one direction, with the screw on either side of the shaft."""
    found = []
    for side in (1.0, -1.0):
        axis, tool, needed = _clamp_key(plan, angle, (place[0], side * place[1], place[2]), solids["block"])
        found.append(_Way(axis, tool, needed, in_the_way(tool, solids.values(), {"coupling", "journal"})))
    return found


def _usual(plan: Plan) -> float:
    """Return the direction in deg from which the window is open."""
    return 0.0 if plan.text("block.window_axis") == "y" else 90.0


def _clamp_key(
    plan: Plan, angle: float, place: tuple[float, float, float], block: SolidPart
) -> tuple[Axis, SolidPart, float]:
    """Return axis, sweep and length of a key that comes from one direction, from the hub until it leaves the block."""
    x, beside, outer = place
    up = (0.0, math.cos(math.radians(angle)), math.sin(math.radians(angle)))
    across = (0.0, -up[2], up[1])
    start = math.sqrt(max(outer**2 - beside**2, 0.0))
    height = plan.number("shaft_height")
    origin = (x, start * up[1] + beside * across[1], height + start * up[2] + beside * across[2])
    radius = plan.number("coupling.clamp_access_radius")
    needed = max(_leaves(origin, up, block) + radius, radius)
    axis = Axis(origin, up, across)
    return axis, rod(axis, 0.0, needed, radius), needed


def _leaves(origin: Point, up: Point, block: SolidPart) -> float:
    """Return the way from a point inside until the box of the block is left, mm."""
    ways = [
        ((block.box[i + 3] if up[i] > 0 else block.box[i]) - origin[i]) / up[i] for i in (1, 2) if abs(up[i]) > 1e-9
    ]
    return min(ways)


def nut_access(plan: Plan, solids: Solids) -> Iterator[Access]:
    """Yield the spanner of the lock nut, put on along the shaft from the window before the coupling is there."""
    needs = ("bearing.spanner_diameter", "bearing.nut_outer_diameter", "bearing.nut_reach")
    if "block" not in solids or any(plan.text(key) == "" for key in needs):
        return
    into = plan.text("bearing.pilot_direction") != "away" and plan.text("bearing.pilot_form") != "recessed"
    start = plan.number("bearing.pilot_length") if into else 0.0
    end = max(plan.number("bearing.nut_reach"), plan.number("bearing_wall"))
    axis = Axis((0.0, 0.0, plan.number("shaft_height")), X, (0.0, 1.0, 0.0))
    radii = (plan.number("bearing.nut_outer_diameter") / 2, plan.number("bearing.spanner_diameter") / 2)
    tool = tube(axis, start, end, radii)
    blocking = in_the_way(tool, solids.values(), {"coupling", "motor", "bearing_unit"})
    length = free_length(axis, tool, start, end - start, blocking)
    yield Access(
        "lock_nut", "lock nut", f"spanner {2 * radii[1]:g} across", not blocking, length, end - start,
        in_way=tuple(solid.id for solid in blocking), note="before coupling and motor are put on",
    )  # fmt: skip
