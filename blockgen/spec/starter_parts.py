"""Example parts for the starter spec, in three sizes: invented, sane, and feasible together and with the presets."""

from __future__ import annotations

import math
from collections.abc import Mapping
from dataclasses import dataclass
from typing import Any

Values = Mapping[str, Any]
_WALL = 24.0  # common thickness of an end wall, mm
_SPARE = 3.0  # what tolerances take, and a little more, mm


@dataclass(frozen=True, slots=True)
class Example:
    """Parts of one size, mm.

    Args:
        shaft_most: Largest motor shaft for which its coupling is taken.
        bore_most: Largest bore of a coupling for which its motor is taken.
        journal: Journal of the screw.
        base_screw: Thread of the base screws.
        parts: Values of motor, bearing and coupling by key.
    """

    shaft_most: float
    bore_most: float
    journal: float
    base_screw: str
    parts: Mapping[str, Mapping[str, float]]


def _motor(pilot: float, flange: float, circle: float, hole: float, shaft: tuple[float, float]) -> Mapping[str, float]:
    return {
        "pilot_diameter": pilot,
        "pilot_length": 3,
        "flange_size": flange,
        "bolt_circle": circle,
        "bolt_hole": hole,
        "shaft_diameter": shaft[0],
        "shaft_length": shaft[1],
    }


def _bearing(pilot: tuple[float, float], flange: float, circle: float, hole: float, nut: float) -> Mapping[str, float]:
    return {
        "pilot_diameter": pilot[0],
        "pilot_length": pilot[1],
        "flange_size": flange,
        "bolt_circle": circle,
        "bolt_hole": hole,
        "nut_reach": nut,
    }


def _coupling(outer: float, length: float, bore: float, grip: tuple[float, float], clamp: float) -> Mapping[str, float]:
    return {
        "outer_diameter": outer,
        "length": length,
        "bore_max": bore,
        "grip_min": grip[0],
        "grip_max": grip[1],
        "clamp_position": clamp,
        "clamp_access_radius": 5 if bore > 16 else 3.5,
    }


_SMALL = Example(
    12, 16, 8, "M6",
    {
        "motor": _motor(50, 60, 70, 5.5, (11, 26)),
        "bearing": _bearing((32, 8), 50, 46, 4.5, 12),
        "coupling": _coupling(30, 40, 14, (6, 14), 5),
    },
)  # fmt: skip
_MIDDLE = Example(
    24, 30, 15, "M8",
    {
        "motor": _motor(70, 80, 90, 6.6, (19, 40)),
        "bearing": _bearing((45, 12), 66, 62, 6.6, 16),
        "coupling": _coupling(45, 58, 24, (14, 20), 6),
    },
)  # fmt: skip
_LARGE = Example(
    math.inf, math.inf, 20, "M10",
    {
        "motor": _motor(110, 130, 145, 9, (28, 60)),
        "bearing": _bearing((60, 14), 95, 78, 6.6, 20),
        "coupling": _coupling(80, 84, 42, (22, 34), 9),
    },
)  # fmt: skip
_EXAMPLES = (_SMALL, _MIDDLE, _LARGE)


def example_for(motor: Values | None, coupling: Values | None) -> Example:
    """Return the size of example that goes with the presets chosen.

    Args:
        motor: Values of the motor's preset; None without one.
        coupling: Values of the coupling's preset; None without one.
    """
    if motor is not None and "shaft_diameter" in motor:
        return next(e for e in _EXAMPLES if motor["shaft_diameter"] <= e.shaft_most)
    if coupling is not None and "bore_max" in coupling:
        return next(e for e in _EXAMPLES if coupling["bore_max"] <= e.bore_most)
    return _MIDDLE


def parts_of(example: Example, presets: Mapping[str, Values | None]) -> dict[str, Values]:
    """Return the values of each part: its preset's, or the example's with a motor shaft that reaches the coupling.

    Nothing of an example is mixed into a preset.
    """
    parts = {table: example.parts[table] if values is None else values for table, values in presets.items()}
    if presets["motor"] is None:
        coupling, motor = parts["coupling"], parts["motor"]
        hidden = _WALL + coupling.get("clamp_access_radius", 5.0) - coupling.get("clamp_position", 5.0)
        least = math.ceil(hidden + coupling.get("grip_min", motor["shaft_diameter"]) + _SPARE)
        parts["motor"] = {**motor, "shaft_length": max(motor["shaft_length"], least)}
    return parts


def journal(example: Example, parts: Mapping[str, Values]) -> tuple[float, float]:
    """Return diameter and reach of a journal that fits nut, coupling and a wall of common thickness, mm."""
    coupling, bearing = parts["coupling"], parts["bearing"]
    nut = bearing.get("nut_outer_diameter", math.inf) * 0.55
    diameter = max(math.floor(min(coupling.get("bore_max", math.inf), nut, example.journal)), 3)
    diameter = max(diameter, coupling.get("bore_min", 0.0))
    grip = 0.5 * (coupling.get("grip_min", diameter) + coupling.get("grip_max", 1.5 * diameter))
    wall = max(bearing.get("pilot_length", 12) + 16, _WALL)
    return diameter, math.ceil(max(bearing.get("nut_reach", 0) + 4, wall + 4) + grip)


def shaft_height(parts: Mapping[str, Values]) -> float:
    """Return a shaft height at which both flanges stay clear of the base, mm."""
    sides = (p.get("flange_size") or p.get("flange_height") or 0.0 for p in (parts["motor"], parts["bearing"]))
    return 5 * math.ceil((max(sides) / 2 + 20) / 5)
