"""Sizes that are round in inches."""

from __future__ import annotations

from blockgen.standards.tables import INCH

NEAR = 0.01
"""A size this near to a round one in inches is said to be that one, mm."""

_SIXTY_FOURTH = INCH / 64
_THOU = INCH / 1000
_ROUND_METRIC = 0.5
_EXACT = 0.002


def inch_words(value: float, *, inch_file: bool) -> str:
    """Return what a size is in inches, in words; empty where it is no round one.

    Multiples of 1/64 in count. In a file that is in inches thousandths count as well: they lie too close together to
    say anything about a file in mm. What is round in mm is no inch size, unless an inch file has
    it as a multiple of 1/64.

    Args:
        value: Size, mm.
        inch_file: True where the file is in inches.
    """
    round_in_mm = _off(value, _ROUND_METRIC) <= _EXACT
    if value <= 0 or (round_in_mm and not inch_file):
        return ""
    if _off(value, _SIXTY_FOURTH) <= (_EXACT if round_in_mm else NEAR):
        return f"{round(value / _SIXTY_FOURTH) / 64:.9g} in"
    if inch_file and not round_in_mm and _off(value, _THOU) <= _EXACT:
        return f"{round(value / _THOU) / 1000:.6g} in"
    return ""


def _off(value: float, step: float) -> float:
    return abs(value - step * round(value / step))
