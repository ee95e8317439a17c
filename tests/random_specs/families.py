"""Families of motors at random on top of the random specs: two to six motors, alike, near and far.

Each further motor starts from the first one of its spec; what differs is drawn. Most keep the pilot, some do not; some
are equal to the first, some have their keys in inches, some are tapped where the first is not.
"""

from __future__ import annotations

import random
from collections.abc import Iterator, Mapping
from typing import Any

from tests.random_specs.generate import THREADS, Tables, spec
from tests.sizing.strategies import toml

Motor = dict[str, Any]
_PATTERN = ("bolt_circle", "bolt_count", "bolt_angle", "bolt_spacing_y", "bolt_spacing_z", "bolt_positions")


def families(seed: int, count: int) -> Iterator[tuple[Tables, list[Motor]]]:
    """Yield tables and further motors; the n-th is the same whatever the count."""
    for number in range(count):
        dice = random.Random(f"family {seed}/{number}")
        tables = spec(dice, f"F{seed}-{number}")
        further = dice.choice((1, 1, 1, 2, 2, 3, 4, 5))
        yield tables, [_further(dice, tables["motor"]) for _ in range(further)]


def text_of(tables: Tables, further: list[Motor]) -> str:
    """Return the text of a spec with further motors."""
    return toml(tables) + "".join("[[family]]\n" + toml({"x": motor}).split("\n", 1)[1] for motor in further)


def _further(dice: random.Random, first: Mapping[str, Any]) -> Motor:
    motor = dict(first)
    if dice.random() < 0.15:
        return motor
    for change in (_shaft, _seat, _holes, _fastening, _loads):
        if dice.random() < 0.3:
            change(dice, motor)
    if dice.random() < 0.2:
        _in_inches(dice, motor)
    return motor


def _shaft(dice: random.Random, motor: Motor) -> None:
    if isinstance(motor["shaft_length"], (int, float)):
        motor["shaft_length"] = round(motor["shaft_length"] + dice.choice((-6, -2, -1, 0.5, 1, 3, 8)), 1)
    motor["shaft_diameter"] = round(motor["shaft_diameter"] * dice.choice((0.8, 1, 1, 1.2)), 2)


def _seat(dice: random.Random, motor: Motor) -> None:
    motor["pilot_length"] = dice.choice((1, 2.5, 4, 6))
    if dice.random() < 0.15 and isinstance(motor["pilot_diameter"], (int, float)):
        motor["pilot_diameter"] -= dice.choice((0.5, 2, 8))
    if dice.random() < 0.3:
        motor.pop("pilot_fit", None)
        motor["pilot_form"] = dice.choice(("proud", "recessed"))
    elif motor.get("pilot_form") != "recessed":
        motor["pilot_fit"] = dice.choice(("h7", "j6", "g6"))
    motor["flange_thickness"] = dice.choice((5, 8, 12))


def _holes(dice: random.Random, motor: Motor) -> None:
    if "bolt_circle" in motor and isinstance(motor["bolt_circle"], (int, float)):
        motor["bolt_circle"] += dice.choice((-2, 2, 6, 10, 16))
        motor["bolt_angle"] = dice.choice((45.0, 0.0, 30.0, 22.5, 45.5))
        motor["bolt_count"] = dice.choice((3, 4, 4, 6))
    elif "bolt_spacing_y" in motor:
        motor["bolt_spacing_y"] += dice.choice((0, 2, 8))
        motor["bolt_spacing_z"] += dice.choice((0, 4, 10))
    if isinstance(motor.get("flange_size"), (int, float)):
        motor["flange_size"] += 16
    for key in ("flange_width", "flange_height"):
        if key in motor:
            motor[key] += 14


def _fastening(dice: random.Random, motor: Motor) -> None:
    if "bolt_hole" in motor and dice.random() < 0.5:
        motor |= {"fastening": "tapped", "bolt_thread": THREADS[motor.pop("bolt_hole")]}
    elif "bolt_hole" in motor:
        motor["bolt_hole"] = dice.choice(list(THREADS))
    elif motor.get("fastening") == "tapped":
        thread = motor.pop("bolt_thread")
        hole = next(hole for hole, name in THREADS.items() if name == thread)
        motor |= {"fastening": "clearance", "bolt_hole": hole}


def _loads(dice: random.Random, motor: Motor) -> None:
    motor |= {"mass": round(dice.uniform(0.3, 60), 1), "body_length": 200, "centre_of_mass": 110}
    motor["peak_torque"] = round(dice.uniform(0.5, 40), 1)
    if dice.random() < 0.5:
        motor |= {"spigot_runout": dice.choice((0.02, 0.08)), "face_runout": 0.05}


def _in_inches(dice: random.Random, motor: Motor) -> None:
    """Write some lengths in inches, the same lengths to the last digit that a data sheet has."""
    for key in ("pilot_diameter", "shaft_length", "bolt_circle", "flange_size"):
        if isinstance(motor.get(key), (int, float)) and dice.random() < 0.6:
            motor[key] = f"{motor[key] / 25.4:.7f} in" if key == "pilot_diameter" else f"{motor[key] / 25.4:.4f} in"
