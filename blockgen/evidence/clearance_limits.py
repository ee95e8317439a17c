"""What counts as a clash, as contact, as near and as room for a key: figures with their reasons."""

from __future__ import annotations

from collections.abc import Mapping
from types import MappingProxyType

from blockgen.record import Record

CP = "common practice, no source"

_FIGURES = (
    ("clash_volume", 0.1, "mm3", "common volume from which two parts clash; less is rounding of the solids", CP),
    ("contact_distance", 0.01, "mm", "distance up to which two faces touch; less than a fit leaves open", CP),
    ("near_distance", 5.0, "mm", "distance up to which pairs of parts are listed", CP),
    ("engaged_difference", 0.01, "", "part by which a planned overlap of thread or pin may differ", CP),
    ("key_long_arm", 2.2, "", "long arm of a hexagon key over its short arm; the least of the sizes",
     "ISO 2936, from memory"),
    ("key_swing", 60.0, "deg", "turn after which a hexagon key is set anew", "geometry of a hexagon"),
    ("key_direction_step", 15.0, "deg", "step in which directions about a key are tried", CP),
)  # fmt: skip

LIMITS: Mapping[str, Record] = MappingProxyType(
    {
        f"practice.{name}": Record(f"practice.{name}", value, unit, "assumed", rule, {}, source)
        for name, value, unit, rule, source in _FIGURES
    }
)
"""The limits by key."""

_VALUES = {f"practice.{name}": value for name, value, *_ in _FIGURES}


def limit(key: str) -> float:
    """Return one limit in its unit.

    Raises:
        KeyError: there is no such limit.
    """
    return _VALUES[key]
