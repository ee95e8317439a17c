"""A spec to start from, with a comment at each key that says where on a data sheet it is found."""

from __future__ import annotations

from collections.abc import Mapping
from pathlib import Path
from typing import Any

from blockgen.spec.presets import read_preset
from blockgen.spec.starter_parts import Example, example_for, journal, parts_of, shaft_height

_MEANING: Mapping[str, str] = {
    "motor.pilot_diameter": "spigot on the motor's face, dimension sheet",
    "motor.pilot_length": "how far the spigot stands out of the mounting face",
    "motor.flange_size": "side of the square flange",
    "motor.bolt_circle": "4 holes at 45 deg; bolt_count and bolt_angle for others",
    "motor.bolt_hole": "clearance hole in the flange; sets the screw",
    "motor.shaft_diameter": "shaft end",
    "motor.shaft_length": "from the mounting face, not from the spigot's face",
    "bearing.pilot_diameter": "the part of the unit that enters the block",
    "bearing.pilot_length": "its length from the mounting face",
    "bearing.flange_size": 'side of the flange; flange_shape = "round" makes it a diameter',
    "bearing.bolt_circle": "4 holes at 45 deg; bolt_count and bolt_angle for others",
    "bearing.bolt_hole": "clearance hole in the flange; sets the screw",
    "bearing.nut_reach": "furthest lock nut or seal face beyond the mounting face, towards the motor",
    "screw.journal_diameter": "the end of the screw that the coupling grips, screw drawing",
    "screw.journal_reach": "end of the screw beyond the unit's mounting face, assembly drawing",
    "coupling.outer_diameter": "hubs, without turning screw heads (those are swing_diameter)",
    "coupling.length": "overall, as delivered",
    "coupling.bore_max": "largest bore of this size",
    "coupling.grip_min": "least depth of a shaft in a hub",
    "coupling.grip_max": "greatest depth of a shaft in a hub",
    "coupling.clamp_position": "axis of the clamp screw from the hub's end",
    "coupling.clamp_access_radius": "half the width that the key needs",
}
# Keys worth knowing next, commented out, by table.
_MORE: Mapping[str, tuple[tuple[str, str], ...]] = {
    "job": (('title = "Motor and bearing block"', "title block"), ('revision = "A"', "part of the file names")),
    "motor": (
        ('pilot_fit = "h7"', "tolerance class of the spigot"),
        ('flange_thickness = "8 mm"', "sets the length of the screws"),
        ('body_size = "80 mm"', "side or diameter of the body; it must stay clear of the base"),
        ('peak_torque = "7 N*m"', "compared with the coupling's rated torque"),
    ),
    "bearing": (
        ('pilot_fit = "h6"', "tolerance class of the pilot"),
        ('nut_outer_diameter = "28 mm"', "lock nut; it must pass the bore"),
    ),
    "screw": (
        ('journal_smooth_length = "28 mm"', "cylindrical length from the journal's end, if less than to the nut"),
        ('thrust = "2 kN"', "greatest axial force; without it no load is checked"),
    ),
    "coupling": (
        ('swing_diameter = "47 mm"', "what turning clamp screws sweep, if more than outer_diameter"),
        ('rated_torque = "20 N*m"', "compared with the motor's peak torque"),
    ),
    "base": (('length_available = "160 mm"', "room along the axis"), ("dowels = true", "or their diameter")),
    "block": (('bearing_wall = "25 mm"', "what is given is checked, what is left out is sized"),),
}
_HEAD = """\
# Quantities are texts with a unit ("40 mm", "2.875 in"); bare numbers are mm, deg, N, N*m, kg.
# All numbers below are invented examples that fit together: replace each of them by yours."""
_HEADS: Mapping[str, str] = {
    "motor": "From the motor's dimension sheet.",
    "bearing": "From the fixed-bearing unit's dimension sheet.",
    "screw": "From the drawing of the screw's end.",
    "coupling": "From the coupling's data sheet.",
    "base": "From the machine.",
    "block": "Leave out what blockgen is to size.",
}


def starter_spec(
    motor: str | None = None,
    bearing: str | None = None,
    coupling: str | None = None,
    *,
    preset_folder: str | Path | None = None,
) -> str:
    """Return a commented spec that loads as it is.

    Args:
        motor: Preset of the motor; without one its keys are written out.
        bearing: Preset of the bearing unit.
        coupling: Preset of the coupling.
        preset_folder: The user's own presets.

    Raises:
        InputError: there is no such preset, or it is one of another kind.
    """
    chosen = {"motor": motor, "bearing": bearing, "coupling": coupling}
    known = {t: None if name is None else read_preset(name, preset_folder, t).values for t, name in chosen.items()}
    example = example_for(known["motor"], known["coupling"])
    parts = parts_of(example, known)
    tables = [
        f"schema = 1\n{_HEAD}",
        _section("job", [('number = "J-001"', "names the output folder and files")]),
        *(_part(t, chosen[t], parts[t]) for t in ("motor", "bearing")),
        _section("screw", _screw(example, parts)),
        _part("coupling", chosen["coupling"], parts["coupling"]),
        _section("base", _base(example, parts)),
        _section("block", [('material = "EN AW-6082-T6"', "`blockgen lookup material NAME` shows its values")]),
    ]
    return "\n\n".join(tables) + "\n"


def _part(table: str, preset: str | None, values: Mapping[str, Any]) -> str:
    if preset is not None:
        return _section(table, [(f'preset = "{preset}"', f"keys given here go before it: `blockgen presets {preset}`")])
    return _section(table, [(f'{k} = "{v:g} mm"', _MEANING[f"{table}.{k}"]) for k, v in values.items()])


def _section(table: str, lines: list[tuple[str, str]]) -> str:
    head = [f"# {_HEADS[table]}"] if table in _HEADS else []
    more = [(f"# {line}", meaning) for line, meaning in _MORE[table]]
    width = max(len(line) for line, _ in [*lines, *more])
    return "\n".join([*head, f"[{table}]", *(f"{line:<{width}}  # {meaning}" for line, meaning in [*lines, *more])])


def _screw(example: Example, parts: Mapping[str, Mapping[str, Any]]) -> list[tuple[str, str]]:
    diameter, reach = journal(example, parts)
    return [
        (f'journal_diameter = "{diameter:g} mm"', _MEANING["screw.journal_diameter"]),
        (f'journal_reach = "{reach:g} mm"', _MEANING["screw.journal_reach"]),
    ]


def _base(example: Example, parts: Mapping[str, Mapping[str, Any]]) -> list[tuple[str, str]]:
    return [
        (f'shaft_height = "{shaft_height(parts):g} mm"', "screw axis above the face on which the block stands"),
        (f'screw = "{example.base_screw}"', "base screws"),
    ]
