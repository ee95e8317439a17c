"""The card for the assembler: each group of screws with size, torque in steps, order, tool, engagement, washer."""

from __future__ import annotations

import math
from collections.abc import Sequence
from dataclasses import dataclass

from blockgen.outputs import show
from blockgen.outputs.family_rows import further_fasteners, holes_of
from blockgen.plan import Fastener, Feature, Plan, Point
from blockgen.sizing.family import entry_of
from blockgen.standards.screws import cap_screw

STEPS = (0.3, 0.6, 1.0)
_TOOLS = {
    "torque_wrench": "torque wrench",
    "torque_wrench_calibrated": "torque wrench, calibrated",
    "angle": "torque and angle",
    "hand": "by hand",
}
_GROUPS = {
    "base": ("base_screws", "base_threads"),
    "bearing_flange": ("bearing_threads", "bearing_holes"),
    "motor_flange": ("motor_threads", "motor_holes"),
}


@dataclass(frozen=True, slots=True)
class TorqueLine:
    """One group of equal screws on the card.

    Args:
        where: Group of screws.
        screws: As ordered, in words.
        property_class: Property class.
        steps: Torque of the three rounds, N*m.
        order: Hole ids in the order of tightening, crosswise.
        tool: How it is tightened.
        key_size: Hexagon key across flats, mm.
        engagement: Thread engagement, mm; None where no length is chosen.
        washer: Washer, or None.
        preloads: Least and greatest preload, N; None where not known.
    """

    where: str
    screws: str
    property_class: str
    steps: tuple[float, ...]
    order: tuple[str, ...]
    tool: str
    key_size: float
    engagement: float | None
    washer: str | None
    preloads: tuple[float, float] | None


def torque_card(plan: Plan) -> tuple[TorqueLine, ...]:
    """Return the card, one line for each group of screws with a torque."""
    groups = (*plan.fasteners, *further_fasteners(plan))
    return tuple(_line(plan, f, f.torque) for f in groups if f.torque is not None)


def _line(plan: Plan, fastener: Fastener, torque: float) -> TorqueLine:
    holes = [f for f in plan.features if f.group in _groups(plan, fastener)]
    tool = plan.text("base.tightening")
    words = _TOOLS.get(tool, tool or "torque wrench")
    if plan.text(f"{_table(fastener)}.fastening") == "tapped":
        words += "; not above what the motor's maker allows for the threads in its flange"
    return TorqueLine(
        fastener.where, show.fastener(fastener), fastener.property_class,
        tuple(round(share * torque, 2) for share in STEPS), crosswise(holes), words,
        cap_screw(fastener.size).key_size, fastener.engagement, fastener.washer, _preloads(plan, fastener),
    )  # fmt: skip


def _table(fastener: Fastener) -> str:
    """Return the table of the spec that has the part which a group of screws holds."""
    return entry_of(fastener.where) or fastener.where.removesuffix("_flange")


def _groups(plan: Plan, fastener: Fastener) -> tuple[str, ...]:
    """Return the groups of holes that take the screws of one group."""
    entry = entry_of(fastener.where)
    return _GROUPS.get(fastener.where, ()) if entry is None else holes_of(plan, entry)


def _preloads(plan: Plan, fastener: Fastener) -> tuple[float, float] | None:
    key = f"{fastener.where.removesuffix('_flange')}_preload_least"
    if fastener.preload is None or key not in plan.records:
        return None
    return plan.number(key), fastener.preload


def crosswise(holes: Sequence[Feature]) -> tuple[str, ...]:
    """Return hole ids in the order of tightening: from the middle outwards, each time the one furthest from the last.

    Among equally far ones the lower id comes first (common practice: crosswise, from the middle outwards).
    """
    left = {hole.id: hole.position for hole in holes}
    if not left:
        return ()
    middle: Point = tuple(math.fsum(p[i] for p in left.values()) / len(left) for i in range(3))  # type: ignore[assignment]
    # Ids are in order of their number as long as the features are.
    at = min(left, key=lambda name: round(math.dist(left[name], middle), 6))
    order = [at]
    last = left.pop(at)
    while left:
        near = min(round(math.dist(place, middle), 6) for place in left.values())
        ring = [name for name, place in left.items() if round(math.dist(place, middle), 6) <= near]
        at = max(ring, key=lambda name: round(math.dist(left[name], last), 6))
        order.append(at)
        last = left.pop(at)
    return tuple(order)
