"""Which tables a spec has, which keys stand in for one another, and which are required."""

from __future__ import annotations

from collections.abc import Iterable, Mapping
from types import MappingProxyType

from blockgen.spec.machine import Base, Block, Drawing, Job, Limits, Material, Plate, Thermal
from blockgen.spec.parts import Bearing, Coupling, Motor, Screw
from blockgen.spec.table import Table

#: Tables that stand once in a spec.
TABLES: Mapping[str, type[Table]] = MappingProxyType(
    {
        "job": Job,
        "motor": Motor,
        "bearing": Bearing,
        "screw": Screw,
        "coupling": Coupling,
        "base": Base,
        "block": Block,
        "limits": Limits,
        "thermal": Thermal,
        "drawing": Drawing,
        "plate": Plate,
    }
)
#: Every table name with its model, those that stand several times included.
MODELS: Mapping[str, type[Table]] = MappingProxyType({**TABLES, "material": Material, "family": Motor})
#: Tables that must be there.
NEEDED = ("job", "motor", "bearing", "screw", "coupling", "base")
#: Kinds of preset and their tables.
PRESET_KINDS = ("motor", "bearing", "coupling", "material")

Group = tuple[frozenset[str], ...]
_PILOT: Group = (frozenset({"pilot_fit"}), frozenset({"pilot_upper", "pilot_lower"}))
_PATTERN: Group = (
    frozenset({"bolt_circle", "bolt_count", "bolt_angle"}),
    frozenset({"bolt_spacing_y", "bolt_spacing_z"}),
    frozenset({"bolt_positions"}),
)
_FLANGE: Group = (frozenset({"flange_size"}), frozenset({"flange_width", "flange_height"}))
_HOLE: Group = (frozenset({"bolt_hole"}), frozenset({"bolt_thread"}))
_FLANGED: tuple[Group, ...] = (_PILOT, _PATTERN, _FLANGE)
#: By table: groups of alternatives, of which one may be given; giving one displaces the others of a preset.
ALTERNATIVES: Mapping[str, tuple[Group, ...]] = MappingProxyType(
    {"motor": (*_FLANGED, _HOLE), "family": (*_FLANGED, _HOLE), "bearing": _FLANGED}
)
# By required key: sets of keys that stand in for it.
_INSTEAD: Mapping[str, tuple[tuple[str, ...], ...]] = MappingProxyType(
    {
        "bolt_circle": (("bolt_spacing_y", "bolt_spacing_z"), ("bolt_positions",)),
        "flange_size": (("flange_width", "flange_height"),),
        "journal_reach": (("shoulder_to_end",),),
    }
)


def alternatives(table: str, given: Iterable[str]) -> frozenset[str]:
    """Return the keys that what was given displaces, such as a preset's pilot_fit by a given pilot_upper."""
    given = frozenset(given)
    displaced: set[str] = set()
    for group in ALTERNATIVES.get(table, ()):
        chosen = [keys for keys in group if keys & given]
        if chosen:
            displaced |= frozenset().union(*group) - frozenset().union(*chosen)
    if given & {"flange_width", "flange_height", "flange_size"}:
        displaced |= {"flange_shape"} - given
    return frozenset(displaced)


def both_ways(table: str, given: Iterable[str]) -> list[tuple[str, str]]:
    """Return pairs of given keys that say the same thing in two ways."""
    given = frozenset(given)
    pairs = []
    for group in ALTERNATIVES.get(table, ()):
        chosen = [min(keys & given) for keys in group if keys & given]
        if len(chosen) > 1:
            pairs.append((chosen[0], chosen[1]))
    return pairs


def missing(table: str, given: Iterable[str]) -> tuple[str, ...]:
    """Return the required keys of a table for which neither they nor their stand-ins are given."""
    given = frozenset(given)
    return tuple(k for k in required(table) if k not in given and not _replaced(k, given))


def _replaced(key: str, given: frozenset[str]) -> bool:
    # One of a pair counts: that its other half is missing is told by the rules on flanges.
    return any(not given.isdisjoint(keys) for keys in _INSTEAD.get(key, ()))


def required(table: str) -> tuple[str, ...]:
    """Return the required keys of a table."""
    return tuple(name for name, field in MODELS[table].model_fields.items() if field.json_schema_extra)
