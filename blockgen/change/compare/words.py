"""Values and changes in words, for the page and the document of a comparison."""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from typing import Any

from blockgen.change.compare.data import Change, Entry
from blockgen.outputs import show
from blockgen.record import Record

NOTHING = "-"


def joined(parts: Iterable[str]) -> str:
    """Return parts with commas between; empty ones are left out."""
    return ", ".join(part for part in parts if part)


def plain(value: Any, unit: str = "") -> str:
    """Return a value of any kind as text with its unit."""
    if value is None:
        return NOTHING
    if isinstance(value, dict):
        return joined(f"{name.replace('_', ' ')} {plain(part)}" for name, part in value.items())
    if isinstance(value, float):
        return f"{show.significant(value, 6 if abs(value) >= 1 else 4)} {show.unit_sign(unit)}".rstrip()
    tuples = _tuples(value)
    if show.is_pattern(tuples):
        return show.amount(Record("", tuples, unit, "sized", ""))
    return show.with_unit(tuples, unit)


def _tuples(value: Any) -> Any:
    if isinstance(value, (list, tuple)):
        return tuple(_tuples(part) for part in value)
    return float(show.significant(value, 6)) if isinstance(value, float) else value


def of_entry(entry: Entry, name: str) -> Change | None:
    """Return one attribute that differs; None where it is the same."""
    return next((change for change in entry.changes if change.name == name), None)


def arrow(change: Change) -> str:
    """Return ``old to new unit`` of an attribute."""
    if change.old is None or change.new is None:
        known, which = (change.new, "new") if change.old is None else (change.old, "no longer")
        return f"{which} {plain(known, change.unit)}"
    return f"{plain(change.old)} to {plain(change.new, change.unit)}"


def size_words(entry: Entry) -> str:
    """Return ``length 113 to 118 mm`` of an entry whose value differs."""
    return f"{entry.id} {arrow(entry.changes[0])}" if entry.changes else entry.id


def rows_of(entries: Sequence[Entry]) -> list[Entry]:
    """Return the entries that differ, changed ones before added and removed ones."""
    order = ("changed", "moved", "added", "removed")
    found = [entry for entry in entries if entry.state != "same"]
    return sorted(found, key=lambda entry: order.index(entry.state))
