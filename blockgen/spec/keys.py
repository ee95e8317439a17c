"""The key table: every key of a spec with unit, choices and meaning, for README, messages and starter spec."""

from __future__ import annotations

from dataclasses import dataclass

from blockgen.spec.problems import literal_choices
from blockgen.spec.table import Table
from blockgen.spec.tables import MODELS
from blockgen.spec.values import Flag, FlagOrLength, Kind


@dataclass(frozen=True, slots=True)
class KeyInfo:
    """One key.

    Args:
        key: Table and key, such as ``motor.pilot_diameter``.
        unit: Default unit; empty for text, flags and plain numbers.
        required: True where neither a default nor a derivation exists.
        description: What it is.
        choices: Texts that it may take; empty where it is free.
    """

    key: str
    unit: str
    required: bool
    description: str
    choices: tuple[str, ...]


def key_table() -> tuple[KeyInfo, ...]:
    """Return all keys in the order of the tables; a family has the keys of a motor and is not repeated."""
    return tuple(
        _info(table, name, model) for table, model in MODELS.items() if table != "family" for name in model.model_fields
    )


def key_info(key: str) -> KeyInfo:
    """Return what a dotted key means; ``family.0.`` and ``material.NAME.`` are understood.

    Raises:
        KeyError: there is no such key.
    """
    table, _, rest = key.partition(".")
    name = rest.rsplit(".", 1)[-1]
    if table not in MODELS or name not in MODELS[table].model_fields:
        raise KeyError(key)
    return _info(table, name, MODELS[table])


def _info(table: str, name: str, model: type[Table]) -> KeyInfo:
    field = model.model_fields[name]
    kind = next((m for m in field.metadata if isinstance(m, Kind)), None)
    choices = literal_choices(model, name)
    if isinstance(kind, (Flag, FlagOrLength)):
        choices = ("true", "false")
    shown = f"material.NAME.{name}" if table == "material" else f"{table}.{name}"
    return KeyInfo(shown, kind.unit if kind else "", bool(field.json_schema_extra), field.description or "", choices)
