"""What to measure with, and how well: common practice, no source."""

from __future__ import annotations

from collections.abc import Mapping
from types import MappingProxyType

from blockgen.plan import Annotation

_FINE = 0.06  # mm; bores and lengths with a narrower band are beyond a calliper or an inside micrometer of the shop
FLOOR = 0.002  # mm; what a measuring machine of a usual shop reaches

_BY_KIND: Mapping[str, str] = MappingProxyType(
    {
        "flatness": "coordinate measuring machine, or surface plate with dial indicator",
        "perpendicularity": "coordinate measuring machine, or square and dial indicator on a surface plate",
        "parallelism": "coordinate measuring machine, or dial indicator on a surface plate",
        "coaxiality": "coordinate measuring machine",
        "position": "coordinate measuring machine",
        "texture": "roughness tester",
        "depth": "depth gauge",
        "radius": "radius gauge",
        "thread": "thread plug gauge, go and no-go",
        "offset": "coordinate measuring machine",
        "slope": "coordinate measuring machine",
        "runout": "dial indicator, shaft turned by hand",
    }
)


def instrument(note: Annotation) -> str:
    """Return the instrument proposed for a characteristic of the block."""
    if note.kind in _BY_KIND:
        return _BY_KIND[note.kind]
    fine = note.upper is not None and note.lower is not None and note.upper - note.lower <= _FINE
    if note.kind == "size":
        return "bore gauge with setting ring" if fine else "calliper"
    return "height gauge on a surface plate, or coordinate measuring machine" if fine else "micrometer or calliper"


def instrument_of(kind: str) -> str:
    """Return the instrument proposed for a kind of row that is no characteristic of the drawing."""
    return _BY_KIND.get(kind, "micrometer")


def uncertainty_wanted(width: float | None) -> float | None:
    """Return the expanded uncertainty (k = 2) to measure with, in the unit of the width.

    A tenth of the tolerance; for a tight one what a measuring machine reaches (0.002 mm), but at most a fifth.

    Args:
        width: Width of the tolerance; None where there is none.

    Source: common practice, no source.
    """
    if width is None or width <= 0:
        return None
    return significant(max(width / 10, min(width / 5, FLOOR)))


def significant(value: float) -> float:
    """Return a value to two significant digits: an uncertainty says no more."""
    return float(f"{value:.2g}")
