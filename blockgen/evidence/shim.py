"""Shims under the base that bring the shaft to its height and level: what the measured block lacks or has too much."""

from __future__ import annotations

from dataclasses import dataclass
from math import hypot

from blockgen.evidence.components import LEVEL_SLOPE
from blockgen.evidence.measurement import Measured
from blockgen.plan import Plan

CORRECTS = (
    "it brings the screw level and to the height of its guide; it moves both shafts alike and does nothing for the "
    "motor against the screw"
)


@dataclass(frozen=True, slots=True)
class Shim:
    """What is to be put under the base, or taken off it where it is negative.

    Args:
        bearing_end: At the bearing seat, mm.
        motor_end: At the motor seat, mm; as at the bearing end where the slope is not measured.
        uncertainty_bearing: Expanded uncertainty of it, k = 2, mm.
        uncertainty_motor: The same at the motor end, mm.
        sloping: True where the slope is measured; without it the shim is an even one.
    """

    bearing_end: float
    motor_end: float
    uncertainty_bearing: float
    uncertainty_motor: float
    sloping: bool


def shim(plan: Plan, measured: Measured) -> Shim | None:
    """Return the shim from measured height and slope of the shaft; None where the height is not measured.

    The height is taken at the bearing bore; where the shaft rises towards the motor the shim gets thinner there.

    Source: t(x) = H - h - s x, geometry.
    """
    height = measured.values.get("block.shaft_height")
    if height is None:
        return None
    slope, length = measured.values.get(LEVEL_SLOPE), plan.number("length")
    start = plan.number("shaft_height") - height.value
    if slope is None:
        return Shim(start, start, height.uncertainty, height.uncertainty, sloping=False)
    end = start - slope.value * length / 1000
    doubt = hypot(height.uncertainty, slope.uncertainty * length / 1000)
    return Shim(start, end, height.uncertainty, doubt, sloping=True)


def shim_words(found: Shim) -> str:
    """Return what to do in words."""
    ends = (("bearing end", found.bearing_end, found.uncertainty_bearing),
            ("motor end", found.motor_end, found.uncertainty_motor))  # fmt: skip
    parts = [_end(*end) for end in (ends if found.sloping else ends[:1])]
    if not found.sloping:
        return f"{parts[0].replace('at the bearing end', 'all over')}; {LEVEL_SLOPE} is not measured"
    return "; ".join(parts)


def _end(name: str, value: float, doubt: float) -> str:
    if abs(value) <= doubt:
        return f"nothing at the {name} ({value:+.3f} mm lies within its uncertainty of {doubt:.3f} mm)"
    if value > 0:
        return f"shim of {value:.3f} mm at the {name} (within {doubt:.3f} mm)"
    return f"take off {-value:.3f} mm at the {name} (within {doubt:.3f} mm)"
