"""Whether a summary that was read from a file has what a comparison needs; anybody may have edited it.

A shape is a type or several (a plain value of it), a dictionary of shapes (all of these keys must be there), a list of
one shape (any number of such things), or ``Each`` of a shape (a dictionary with any keys).
"""

from __future__ import annotations

from collections.abc import Iterator, Mapping
from dataclasses import dataclass
from types import MappingProxyType
from typing import Any

_TEXT = (str,)
_NUMBER = (int, float)
_MAYBE_TEXT = (str, type(None))
_MAYBE_NUMBER = (int, float, type(None))
_ANY = (object,)
_WORDS: Mapping[type, str] = MappingProxyType(
    {str: "a text", bool: "true or false", type(None): "null", object: "a value"}
)


@dataclass(frozen=True, slots=True)
class Each:
    """A dictionary with any keys, each of one shape."""

    shape: Any


_RECORD = {
    "value": _ANY, "unit": _TEXT, "upper": _MAYBE_NUMBER, "lower": _MAYBE_NUMBER, "fit": _MAYBE_TEXT,
    "inputs": Each({"ref": _MAYBE_TEXT}),
}  # fmt: skip
_LIMITS = {"upper": _MAYBE_NUMBER, "lower": _MAYBE_NUMBER, "fit": _MAYBE_TEXT}
_FEATURE = {
    "id": _TEXT, "kind": _TEXT, "group": _TEXT, "face": _TEXT, "position": [_NUMBER], "axis": [_NUMBER],
    "diameter": _MAYBE_NUMBER, "depth": _MAYBE_NUMBER, "call_out": _TEXT,
}  # fmt: skip
_SPREAD = {"worst": _NUMBER, "unit": _TEXT}
SUMMARY: Mapping[str, Any] = MappingProxyType({
    "schema": (int,),
    "status": _TEXT,
    "tool": _TEXT,
    "spec_sha256": _TEXT,
    "job": {"number": _TEXT, "revision": _TEXT},
    "dimensions": Each(_RECORD),
    "inputs": Each(_RECORD),
    "features": [_FEATURE],
    "base_features": [_FEATURE],
    "characteristics": [{"id": _TEXT, "kind": _TEXT, "unit": _TEXT, "text": _TEXT, **_LIMITS}],
    "fasteners": [{"where": _TEXT, "standard": _TEXT, "size": _TEXT, "length": _MAYBE_NUMBER, "count": (int,)}],
    "checks": [{"id": _TEXT, "title": _TEXT, "verdict": _TEXT, "margin": _MAYBE_NUMBER, "unit": _TEXT}],
    "alignment": {
        **dict.fromkeys(("offset", "offset_static", "offset_rotating"), _SPREAD),
        **dict.fromkeys(("angle", "angle_static", "angle_rotating"), _SPREAD),
        "axial": {"worst": _NUMBER},
        "coupling_use": Each(_ANY),
        "centre": _NUMBER,
        "contributors": [{"id": _TEXT, "law": _TEXT, "quantity": _TEXT, "size": _ANY, "limits": _ANY}],
    },
    "mass": {"value": _NUMBER, "material": _MAYBE_TEXT},
    "bounding_box": [_NUMBER],
    "volume": _NUMBER,
})  # fmt: skip


def misfits(value: Any, shape: Any = SUMMARY, place: str = "") -> Iterator[tuple[str, str]]:
    """Yield each place of a value that has another shape, and what is expected there."""
    if isinstance(shape, Each):
        yield from _misfits_in_each(value, shape, place)
    elif isinstance(shape, Mapping):
        yield from _misfits_in_table(value, shape, place)
    elif isinstance(shape, list):
        if not isinstance(value, list):
            yield place, "a list"
            return
        for number, part in enumerate(value):
            yield from misfits(part, shape[0], f"{place}[{number}]")
    elif not isinstance(value, shape) or (isinstance(value, bool) and bool not in shape and object not in shape):
        yield place, " or ".join(dict.fromkeys(_WORDS.get(kind, "a number") for kind in shape))


def _misfits_in_each(value: Any, shape: Each, place: str) -> Iterator[tuple[str, str]]:
    if not isinstance(value, Mapping):
        yield place, "a table"
        return
    for key, part in value.items():
        yield from misfits(part, shape.shape, f"{place}.{key}" if place else str(key))


def _misfits_in_table(value: Any, shape: Mapping[str, Any], place: str) -> Iterator[tuple[str, str]]:
    if not isinstance(value, Mapping):
        yield place, "a table"
        return
    for key, part in shape.items():
        where = f"{place}.{key}" if place else key
        if key in value:
            yield from misfits(value[key], part, where)
        else:
            yield where, "a value; it is missing"
