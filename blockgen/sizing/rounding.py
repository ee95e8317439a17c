"""Rounding to the steps in which sizes are drawn."""

from __future__ import annotations

import math

# A value that is above a step by less than this is on the step.
_HAIR = 1e-9


def up(value: float, step: float) -> float:
    """Round up to a whole number of steps, both in mm."""
    return round(math.ceil(value / step - _HAIR) * step, 9)


def down(value: float, step: float) -> float:
    """Round down to a whole number of steps, both in mm."""
    return round(math.floor(value / step + _HAIR) * step, 9)


def nearest(value: float, step: float) -> float:
    """Round to the nearest step, both in mm; halves go to the even step."""
    return round(round(value / step) * step, 9)


def nearest_inside(low: float, high: float, steps: tuple[float, ...]) -> float:
    """Return the middle of an interval in mm, rounded to the first step that stays inside it, else unrounded."""
    middle = (low + high) / 2
    for step in steps:
        value = nearest(middle, step)
        if low - _HAIR <= value <= high + _HAIR:
            return value
    return middle
