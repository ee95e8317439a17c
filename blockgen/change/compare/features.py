"""Cavities that were added, removed, moved or changed.

Two cavities are the same one where they stand at the same place with the same sizes, whatever their numbers: a hole
that is put in amid a row gives other numbers to those behind it. The rest is paired by id.
"""

from __future__ import annotations

from collections.abc import Iterable, Mapping, Sequence
from typing import Any

from blockgen.change.compare.data import Change, Entry, State
from blockgen.change.compare.values import changes, same

PLACE = ("face", "position", "axis")
FORM = (
    "kind", "diameter", "depth", "through", "thread", "thread_depth", "counterbore_diameter", "counterbore_depth",
    "fit", "upper", "lower", "pocket",
)  # fmt: skip
_NO_LENGTH = frozenset({"kind", "face", "axis", "through", "thread", "fit", "pocket"})

Feature = Mapping[str, Any]


def feature_entries(old: Sequence[Feature], new: Sequence[Feature]) -> tuple[Entry, ...]:
    """Return what became of each cavity: first those of the old design in its order, then the added ones."""
    partner = _partners(old, new)
    taken = {id(feature) for feature in partner.values()}
    kept = [_pair(feature, partner.get(str(feature["id"]))) for feature in old]
    return (*kept, *(_alone(feature, "added") for feature in new if id(feature) not in taken))


def _partners(old: Sequence[Feature], new: Sequence[Feature]) -> dict[str, Feature]:
    """Return the new cavity for the id of each old one that has one."""
    partner: dict[str, Feature] = {}
    left = list(new)
    for alike in (_is_the_same, _has_the_same_id):
        for feature in old:
            if feature["id"] in partner:
                continue
            found = next((other for other in left if alike(feature, other)), None)
            if found is not None:
                partner[str(feature["id"])] = found
                left = [other for other in left if other is not found]
    return partner


def _is_the_same(one: Feature, other: Feature) -> bool:
    return one["group"] == other["group"] and _equal(one, other, (*PLACE, *FORM))


def _has_the_same_id(one: Feature, other: Feature) -> bool:
    return bool(one["id"] == other["id"] and one["kind"] == other["kind"])


def _equal(one: Feature, other: Feature, names: Iterable[str]) -> bool:
    return all(same(one.get(name), other.get(name)) for name in names)


def _pair(old: Feature, new: Feature | None) -> Entry:
    if new is None:
        return _alone(old, "removed")
    found = [_with_unit(change) for change in changes(old, new, (*PLACE, *FORM))]
    elsewhere = bool(found) and all(change.name in PLACE for change in found)
    state: State = "same" if not found else "moved" if elsewhere else "changed"
    new_id = None if old["id"] == new["id"] else str(new["id"])
    title = f"{old['call_out']} to {new['call_out']}" if old["call_out"] != new["call_out"] else new["call_out"]
    return Entry(str(old["id"]), state, title, tuple(found), new_id, str(new["group"]))


def _alone(feature: Feature, state: State) -> Entry:
    """Return a cavity that only one design has, with all that it is."""
    nothing: Feature = {}
    sides = (nothing, feature) if state == "added" else (feature, nothing)
    found = tuple(_with_unit(change) for change in changes(*sides, (*PLACE, *FORM)))
    return Entry(str(feature["id"]), state, feature["call_out"], found, group=str(feature["group"]))


def _with_unit(change: Change) -> Change:
    return Change(change.name, change.old, change.new, "" if change.name in _NO_LENGTH else "mm")
