"""Zones that follow from measured components."""

from __future__ import annotations

from collections.abc import Callable, Mapping
from dataclasses import dataclass
from math import hypot

from blockgen.evidence.components import BORE_OFFSET, LEVEL_SLOPE, MOTOR_SLOPE
from blockgen.evidence.measurement import Measurement, Vector, vector
from blockgen.plan import Plan


@dataclass(frozen=True, slots=True)
class Derived:
    """A zone from components: its width or diameter and the expanded uncertainty of it, mm, and how it came about."""

    value: float
    uncertainty: float
    rule: str


def derived(plan: Plan, values: Mapping[str, Measurement], identifier: str) -> Derived | None:
    """Return the zone of a characteristic from its measured components; None where they are not measured."""
    make = _RULES.get(identifier)
    return None if make is None else make(plan, values)


def diametral_zone(found: Vector) -> Derived:
    """Return twice the length of a vector; the uncertainties of its components add by squares along it."""
    length = hypot(found.y, found.z)
    if length > 0:
        spread = hypot(found.y * found.uncertainty_y, found.z * found.uncertainty_z) / length
    else:
        spread = max(found.uncertainty_y, found.uncertainty_z)
    return Derived(2 * length, 2 * spread, "twice the length of the measured offset")


def _coaxiality(_: Plan, values: Mapping[str, Measurement]) -> Derived | None:
    found = vector(values, BORE_OFFSET)
    return None if found is None else diametral_zone(found)


def _parallelism(plan: Plan, values: Mapping[str, Measurement]) -> Derived | None:
    """Return how far the corners of a leaning face lie apart: |s_y| width + |s_z| height."""
    found = vector(values, MOTOR_SLOPE)
    if found is None:
        return None
    width, height = plan.body.width / 1000, plan.body.height / 1000
    value = abs(found.y) * width + abs(found.z) * height
    spread = hypot(found.uncertainty_y * width, found.uncertainty_z * height)
    return Derived(value, spread, "measured slope over the whole face, form not in it")


def _perpendicularity(plan: Plan, values: Mapping[str, Measurement]) -> Derived | None:
    found = values.get(LEVEL_SLOPE)
    if found is None:
        return None
    height = plan.body.height / 1000
    return Derived(
        abs(found.value) * height, found.uncertainty * height, "measured slope over the whole height, form not in it"
    )


_RULES: Mapping[str, Callable[[Plan, Mapping[str, Measurement]], Derived | None]] = {
    "motor_bore.coaxiality": _coaxiality,
    "motor_seat.parallelism": _parallelism,
    "bearing_seat.perpendicularity": _perpendicularity,
}
