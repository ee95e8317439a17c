"""Dimensions and keys of the spec that differ, and which key is behind which dimension."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import replace
from typing import Any

from blockgen.change.compare.data import Asked, Change, Entry, State
from blockgen.change.compare.values import entries, in_order, same

SIZE = ("value", "upper", "lower", "fit")

Records = Mapping[str, Mapping[str, Any]]


def asked_entries(old: Mapping[str, Asked], new: Mapping[str, Asked]) -> tuple[Entry, ...]:
    """Return what became of each key of the spec, preset values included."""
    return tuple(_asked(key, old.get(key), new.get(key)) for key in in_order(old, new))


def _asked(key: str, old: Asked | None, new: Asked | None) -> Entry:
    if old is not None and new is not None and same(old.value, new.value) and old.unit == new.unit:
        return Entry(key, "same")
    state: State = "added" if old is None else "removed" if new is None else "changed"
    unit = new.unit if new else old.unit if old else ""
    return Entry(key, state, "", (Change("value", old and old.value, new and new.value, unit),))


def dimension_entries(old: Mapping[str, Any], new: Mapping[str, Any], asked: tuple[Entry, ...]) -> tuple[Entry, ...]:
    """Return what became of each dimension, with the changed keys of the spec from which it follows.

    Args:
        old: Summary of the old design.
        new: Summary of the new one.
        asked: What became of each key of the spec.
    """
    moved = frozenset(entry.id for entry in asked if entry.state != "same")
    before, after = _records(old), _records(new)
    different = frozenset(key for key in in_order(before, after) if _differs(before.get(key), after.get(key)))
    found = entries(old["dimensions"], new["dimensions"], SIZE)
    return tuple(_explained(entry, (before, after), different, moved) for entry in found)


def _explained(entry: Entry, sides: tuple[Records, Records], different: frozenset[str], moved: frozenset[str]) -> Entry:
    if entry.state == "same":
        return entry
    units = [side[entry.id]["unit"] for side in sides if entry.id in side]
    parts = tuple(change if change.name == "fit" else replace(change, unit=units[-1]) for change in entry.changes)
    behind: dict[str, int] = {}
    for side in sides:
        for key, steps in causes(entry.id, side, different, moved).items():
            behind[key] = min(steps, behind.get(key, steps))
    return replace(entry, changes=parts, because=tuple(sorted(behind, key=lambda key: (behind[key], key))))


def causes(key: str, records: Records, different: frozenset[str], moved: frozenset[str]) -> dict[str, int]:
    """Return the changed keys of the spec that stand behind a value, found through values that differ.

    Args:
        key: Key of the value.
        records: All values of one design with their inputs.
        different: Keys of values that differ between the designs.
        moved: Keys of the spec that differ.

    Returns:
        By key, how many steps it is away.
    """
    found: dict[str, int] = {}
    seen, front, steps = {key}, {key}, 0
    while front:
        steps += 1
        refs = set().union(*(_refs(records.get(one, {})) for one in front)) - seen
        seen |= refs
        found |= dict.fromkeys(refs & moved, steps)
        front = (refs - moved) & different
    return found


def _refs(record: Mapping[str, Any]) -> set[str]:
    return {part["ref"] for part in record.get("inputs", {}).values() if part.get("ref")}


def _records(document: Mapping[str, Any]) -> Records:
    return {**document.get("inputs", {}), **document["dimensions"]}


def _differs(old: Mapping[str, Any] | None, new: Mapping[str, Any] | None) -> bool:
    if old is None or new is None:
        return True
    return not all(same(old.get(name), new.get(name)) for name in SIZE)
