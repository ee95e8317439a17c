"""Keys that are read, checked for sense and kept, and decide nothing in this version.

A spec may hold them for later versions. Whoever gives one must be told, so that no one relies on a limit that nobody
checks.
"""

from __future__ import annotations

from collections.abc import Mapping

from blockgen.record import Record
from blockgen.spec.tables import MODELS

#: Keys by table, spelled as in the key table.
_KEYS: Mapping[str, tuple[str, ...]] = {
    "motor": ("shaft_fit", "key_length", "key_width", "inertia"),
    "coupling": ("flex_spacing", "mass"),
    "drawing": ("language",),
}


def is_used(key: str) -> bool:
    """Tell whether a dotted key decides a size, a check or an output in this version."""
    table, _, name = key.partition(".")
    return name.rpartition(".")[2] not in _KEYS.get("motor" if table == "family" else table, ())


def given_not_used(records: Mapping[str, Record]) -> tuple[str, ...]:
    """Return the given keys that decide nothing, in the order of the key table."""
    order = list(MODELS)
    given = [r.key for r in records.values() if r.origin == "given" and not is_used(r.key) and not _is_text(r)]
    return tuple(sorted(given, key=lambda key: order.index(key.partition(".")[0])))


def _is_text(record: Record) -> bool:
    """Tell whether a key is a name, which nobody expects to decide anything."""
    return record.key.endswith((".name", ".source"))
