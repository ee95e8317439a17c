"""Whether two values are the same, and which attributes of two things differ."""

from __future__ import annotations

from collections.abc import Iterable, Mapping, Sequence
from typing import Any

from blockgen.change.compare.data import Change, Entry, State

# A summary has numbers of 0.001 and more to 1e-6, smaller ones to six digits (outputs/tidy.py); the last digit may
# differ from machine to machine.
_STEP = 1.5e-6
_SMALL = 1e-3
_SHARE_OF_SMALL = 1.5e-5
_SHARE = 1e-9


def same(one: Any, other: Any) -> bool:
    """Tell whether two plain values are the same but for the last digit that is written."""
    if isinstance(one, bool) or isinstance(other, bool):
        return one is other
    if isinstance(one, (int, float)) and isinstance(other, (int, float)):
        return abs(one - other) <= _allowed(max(abs(one), abs(other)))
    if isinstance(one, (list, tuple)) and isinstance(other, (list, tuple)):
        return len(one) == len(other) and all(same(a, b) for a, b in zip(one, other, strict=True))
    if isinstance(one, Mapping) and isinstance(other, Mapping):
        return one.keys() == other.keys() and all(same(one[key], other[key]) for key in one)
    return bool(one == other)


def _allowed(size: float) -> float:
    return max(_STEP, _SHARE * size) if size >= _SMALL else _SHARE_OF_SMALL * size


def changes(old: Mapping[str, Any], new: Mapping[str, Any], names: Iterable[str], unit: str = "") -> tuple[Change, ...]:
    """Return the attributes of those named that differ."""
    pairs = ((name, old.get(name), new.get(name)) for name in names)
    return tuple(Change(name, one, other, unit) for name, one, other in pairs if not same(one, other))


def in_order(old: Iterable[str], new: Iterable[str]) -> list[str]:
    """Return all keys once: those of the old side in its order, then those that only the new one has."""
    return list(dict.fromkeys((*old, *new)))


def entries(
    old: Mapping[str, Mapping[str, Any]], new: Mapping[str, Mapping[str, Any]], names: Sequence[str], title: str = ""
) -> tuple[Entry, ...]:
    """Return an entry for each key of both sides.

    Args:
        old: Things of the old side by id.
        new: Things of the new side by id.
        names: Attributes that are compared.
        title: Attribute that says what it is.
    """
    return tuple(_entry(key, old.get(key), new.get(key), names, title) for key in in_order(old, new))


def _entry(
    key: str, old: Mapping[str, Any] | None, new: Mapping[str, Any] | None, names: Sequence[str], title: str
) -> Entry:
    one, other = old or {}, new or {}
    found = changes(one, other, names)
    state: State = "added" if old is None else "removed" if new is None else "changed" if found else "same"
    return Entry(key, state, str((new or one).get(title) or ""), found)
