"""DIN 76-1: run-out of a blind tapped hole, from the end of the full thread to the end of the drilled cylinder."""

from __future__ import annotations

from functools import lru_cache
from itertools import pairwise

from blockgen.standards.tables import load_table, number
from blockgen.standards.threads import Thread


def drill_runout(of: Thread) -> float:
    """Return how much deeper than the full thread the drill must go, mm (regular run-out e1).

    Inch pitches are interpolated linearly between the metric ones.

    Args:
        of: The thread.

    Source: DIN 76-1, regular.
    """
    return runout(of.pitch)


@lru_cache(maxsize=4096)
def runout(pitch: float) -> float:
    """Return the regular run-out e1 for a pitch, mm; linear between the printed pitches, in proportion outside them."""
    points = [(number(r, "pitch"), number(r, "regular")) for r in load_table("din76").rows]
    for (low, short), (high, long) in pairwise(points):
        if low <= pitch <= high:
            return short + (long - short) * (pitch - low) / (high - low)
    nearest = points[0] if pitch < points[0][0] else points[-1]
    return nearest[1] * pitch / nearest[0]
