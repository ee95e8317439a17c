"""Measured values that cannot be true together."""

from __future__ import annotations

from collections.abc import Iterator, Mapping
from math import hypot

from blockgen.errors import Problem
from blockgen.evidence.bought import VECTORS
from blockgen.evidence.components import BORE_OFFSET, LEVEL_SLOPE, MOTOR_SLOPE, measuring_diameter
from blockgen.evidence.derived import Derived, diametral_zone
from blockgen.evidence.measurement import Measurement, Vector, vector
from blockgen.plan import Plan

Values = Mapping[str, Measurement]
_PAIRS = (BORE_OFFSET, MOTOR_SLOPE, *(v.stem for v in VECTORS))


def contradictions(file: str, plan: Plan, values: Values) -> Iterator[Problem]:
    """Yield half vectors, and zones that differ from their vector by more than the uncertainties.

    Args:
        file: Name of the measured file.
        plan: Plan of the block.
        values: Measurements by id.
    """
    for stem in _PAIRS:
        yield from _half(file, values, stem)
    for identifier, found, room in _both(plan, values):
        yield from _compared(file, values[identifier], found, room)


def _half(file: str, values: Values, stem: str) -> Iterator[Problem]:
    names = (f"{stem}_y", f"{stem}_z")
    there = [name for name in names if name in values]
    if len(there) == 1:
        lacking = names[0] if there[0] == names[1] else names[1]
        remedy = f"measure {lacking} too, or leave both empty"
        line = values[there[0]].line
        yield Problem(file, line, lacking, "no value, though the other one of the two has one", "both or none", remedy)


def _both(plan: Plan, values: Values) -> Iterator[tuple[str, Derived, float | None]]:
    """Yield zones that are measured as vectors too, what the vector makes, and what form may add to it (None: any)."""
    lean = plan.number("block.seat_perpendicularity")
    bore = vector(values, BORE_OFFSET)
    if bore is not None and "motor_bore.coaxiality" in values:
        yield "motor_bore.coaxiality", diametral_zone(bore), lean  # the bore may lean within its depth
    slope = vector(values, MOTOR_SLOPE)
    if slope is not None and "motor_seat.parallelism" in values:
        yield "motor_seat.parallelism", _over(slope, measuring_diameter(plan, "motor_seat")), None
    level = values.get(LEVEL_SLOPE)
    if level is not None and "bearing_seat.perpendicularity" in values:
        upright = Vector(0.0, level.value, 0.0, level.uncertainty)
        yield "bearing_seat.perpendicularity", _over(upright, measuring_diameter(plan, "bearing_seat")), None
    for part in VECTORS:
        found = vector(values, part.stem)
        if found is not None and part.stands_for in values:
            across = measuring_diameter(plan, part.stem.partition(".")[0])
            yield part.stands_for, _over(found, across) if part.kind == "slope" else diametral_zone(found), None


def _over(slope: Vector, across: float) -> Derived:
    """Return what a slope makes over a diameter in mm, the least part of the face that is measured."""
    whole = diametral_zone(slope)
    return Derived(
        hypot(slope.y, slope.z) * across / 1000, whole.uncertainty / 2 * across / 1000, "slope over the bolt circle"
    )


def _compared(file: str, zone: Measurement, found: Derived, room: float | None) -> Iterator[Problem]:
    """Compare a measured zone with that of its vector: it is not smaller, and where form adds little not greater."""
    slack = zone.uncertainty + found.uncertainty
    too_small = zone.value < found.value - slack
    too_great = room is not None and zone.value > found.value + slack + room
    if too_small or too_great:
        text = f"{zone.value:g} mm, while the measured components make {found.value:.4g} mm ({found.rule})"
        expected = f"both alike within their uncertainties, {slack:.2g} mm together"
        yield Problem(file, zone.line, zone.row.id, text, expected, "measure again, or leave one of them empty")
