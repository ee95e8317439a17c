"""The spec as resolved: what was given and what presets gave, live; what sizing added, as comments.

Building it again gives the same block: only origins change, since what came from a preset is given now.
"""

from __future__ import annotations

import os
from collections.abc import Iterator, Mapping
from pathlib import Path

from blockgen import __version__
from blockgen.outputs.escape import one_line, toml_key, toml_string
from blockgen.plan import Plan
from blockgen.record import Record, Value
from blockgen.spec.load import Spec, model_path, model_records
from blockgen.spec.tables import MODELS

_ORDER = (
    "job",
    "motor",
    "bearing",
    "screw",
    "coupling",
    "base",
    "block",
    "limits",
    "thermal",
    "material",
    "drawing",
    "plate",
    "family",
)
_HEAD = """\
# Spec as resolved by blockgen {version}. Presets are replaced by their values.
# Lines that start with "# key =" were not given: they show what was assumed or taken from a standard, and why.
# Remove the leading "# " to make such a value a given one.
"""
_COMMENTED = frozenset({"assumed", "standard"})


def spec_toml(spec: Spec, plan: Plan, folder: Path) -> str:
    """Return the resolved spec as TOML text.

    Args:
        spec: What was given or came from presets.
        plan: What sizing made of it.
        folder: Where the text will stand; paths of makers' models are written from there.
    """
    parts = [_HEAD.format(version=__version__), "schema = 1\n"]
    tables = _tables(spec, plan)
    for name in _ORDER:
        parts.extend(_table(spec, folder, path, tables[path]) for path in _paths(name, tables))
    return "\n".join(parts)


def _tables(spec: Spec, plan: Plan) -> dict[tuple[str, ...], dict[str, Record]]:
    """Return the records of each table by key; a table's path is (name,) or (name, name or number of the entry)."""
    tables: dict[tuple[str, ...], dict[str, Record]] = {}
    for record in _shown(spec, plan):
        path, key = _split(record.key)
        tables.setdefault(path, {})[key] = record
    return tables


def _shown(spec: Spec, plan: Plan) -> Iterator[Record]:
    yield from (r for r in spec.records.values() if _is_key(r.key) and r.value is not None)
    for record in plan.records.values():
        added = record.origin in _COMMENTED and record.key not in spec.records
        if added and record.value is not None and _is_key(record.key) and _adds_nothing_alone(record, spec):
            yield record


def _adds_nothing_alone(record: Record, spec: Spec) -> bool:
    """Tell whether the record's table is a fixed one, or an entry that the spec has."""
    path, _ = _split(record.key)
    return len(path) == 1 or any(_split(key)[0] == path for key in spec.records)


def _split(key: str) -> tuple[tuple[str, ...], str]:
    table, _, rest = key.partition(".")
    if table not in {"material", "family"}:
        return (table,), rest
    entry, _, last = rest.rpartition(".")
    return (table, entry), last


def _is_key(key: str) -> bool:
    path, last = _split(key)
    return path[0] in MODELS and last != "preset" and last in MODELS[path[0]].model_fields


def _paths(name: str, tables: Mapping[tuple[str, ...], object]) -> list[tuple[str, ...]]:
    paths = [path for path in tables if path[0] == name]
    return sorted(paths, key=lambda p: (int(p[1]),) if name == "family" else p[1:])


def _table(spec: Spec, folder: Path, path: tuple[str, ...], records: Mapping[str, Record]) -> str:
    order = list(MODELS[path[0]].model_fields)
    lines = [_line(spec, folder, key, records[key]) for key in sorted(records, key=order.index)]
    return "\n".join([_heading(path), *lines]) + "\n"


def _heading(path: tuple[str, ...]) -> str:
    if path[0] == "family":
        return "[[family]]"
    return "[" + ".".join(toml_key(part) for part in path) + "]"


def _line(spec: Spec, folder: Path, key: str, record: Record) -> str:
    live = record.key in spec.records
    value = _model(spec, folder, record) if record in model_records(spec.records) else record.value
    return f"{'' if live else '# '}{key} = {_toml(value, record.unit)}  # {_reason(record, live=live)}"


def _reason(record: Record, *, live: bool) -> str:
    if record.origin == "given":
        return "given"
    if live:
        return one_line(record.source)
    return one_line(f"{record.origin}: {record.rule} ({record.source})" if record.source else record.rule)


def _model(spec: Spec, folder: Path, record: Record) -> str:
    """Return the path of a model as it is seen from the folder of the new file."""
    path = Path(os.path.abspath(model_path(spec.path, record)))  # noqa: PTH100 # links in the path are kept
    try:
        return Path(os.path.relpath(path, folder)).as_posix()
    except ValueError:  # another drive
        return path.as_posix()


def _toml(value: Value | object, unit: str) -> str:
    if isinstance(value, bool):
        return "true" if value else "false"
    if isinstance(value, (tuple, list)):
        return "[" + ", ".join(_toml(part, "") for part in value) + "]"
    if isinstance(value, (int, float)):
        return f'"{_digits(value)} {unit}"' if unit else _digits(value)
    return toml_string(str(value))


def _digits(value: float) -> str:
    """Return the fewest digits that read back to the same number, without ``.0``."""
    text = repr(value)
    return text.removesuffix(".0")
