"""Valid specs at random, the same for the same seed, over the whole range that README promises.

Flanges of 28 to 220 mm, clearance and tapped motor flanges, square, round and rectangular, 2 to 8 holes on a circle, in
a rectangle or at given places, windows through, across and with a floor, all materials of the tables, mm and inch,
sizes left to the tool and given. A spec is valid as an input; whether a block exists for it is for the tool to say.
"""

from __future__ import annotations

import math
import random
from collections.abc import Iterator, Mapping, Sequence
from typing import Any

from blockgen.standards.tables import load_table

Tables = dict[str, dict[str, Any]]

MATERIALS = tuple(sorted({row["name"] for row in load_table("materials").rows}))
HOLES = ((40, 3.4), (60, 4.5), (75, 5.5), (105, 6.6), (150, 9.0), (200, 11.0), (math.inf, 13.5))
THREADS = {3.4: "M3", 4.5: "M4", 5.5: "M5", 6.6: "M6", 9.0: "M8", 11.0: "M10", 13.5: "M12"}
SHAFTS = (4, 5, 6.35, 8, 9, 11, 14, 19, 22, 24, 28, 32, 38, 42)


def specs(seed: int, count: int, materials: Sequence[str] = MATERIALS) -> Iterator[Tables]:
    """Yield the tables of random specs; the n-th is the same whatever the count."""
    for number in range(count):
        yield spec(random.Random(f"{seed}/{number}"), f"R{seed}-{number}", materials)


def spec(dice: random.Random, number: str, materials: Sequence[str] = MATERIALS) -> Tables:
    """Return the tables of one random spec."""
    journal = dice.choice((5, 6, 8, 10, 12, 15, 17, 20, 25, 30, 40))
    shaft = dice.choice([d for d in SHAFTS if 0.6 * journal <= d <= 1.6 * journal])
    great = max(journal, shaft)
    coupling = _coupling(dice, great)
    motor = _flange(dice, min(135.0, max(20.0, great * dice.uniform(1.9, 5))))
    bearing = _flange(dice, max(16.0, great * dice.uniform(1.7, 3.2)))
    bearing["pilot_length"] = dice.randint(4, 16)
    motor |= {"shaft_diameter": shaft, "pilot_length": dice.choice((1.5, 2, 3, 4, 5))}
    nut = bearing["pilot_length"] + dice.randint(3, 12)
    bearing["nut_reach"] = nut
    grip = min(great, 0.9 * coupling["hub_length"])
    screw = {"journal_diameter": journal, "journal_reach": round(nut + 2 + grip + dice.uniform(0, 16), 1)}
    motor["shaft_length"] = round(motor["pilot_length"] + 2 + grip + dice.uniform(0, 24), 1)
    height = math.ceil(max(_half_height(motor), _half_height(bearing)) + 2 + dice.uniform(0, 50))
    tables: Tables = {
        "job": {"number": number}, "motor": motor, "bearing": bearing, "screw": screw, "coupling": coupling,
        "base": {"shaft_height": height}, "block": {}, "limits": {}, "thermal": {},
    }  # fmt: skip
    for choose in (_fastening, _loads, _base, _block, _window, _heat):
        choose(dice, tables, materials)
    _given_sizes(dice, tables)
    if dice.random() < 0.25:
        _in_inches(dice, tables)
    return {name: keys for name, keys in tables.items() if keys}


def _coupling(dice: random.Random, great: float) -> dict[str, Any]:
    hub, gap = round(great * dice.choice((1.1, 1.3, 1.6)) + 3), dice.choice((0.5, 1.0, 3.0))
    table = {
        "outer_diameter": round(great * dice.choice((1.7, 2.0, 2.6)) + 1),
        "length": 2 * hub + gap + dice.randint(0, 8),
        "hub_length": hub,
        "gap_min": gap,
    }
    if dice.random() < 0.5:
        table |= {"clamp_position": round(0.35 * hub, 1), "clamp_access_radius": dice.choice((2, 3, 4, 5, 6))}
    if dice.random() < 0.3:
        table |= {"allow_parallel": 0.2, "allow_angular": 1.0, "allow_axial": 0.5, "rated_torque": great * 2}
    return table


def _flange(dice: random.Random, pilot: float) -> dict[str, Any]:
    """Return pilot, outline and holes of a flange whose holes lie between pilot and outline."""
    pilot = round(pilot)
    hole = next(h for limit, h in HOLES if pilot * 1.35 <= limit)
    radius = math.ceil(pilot / 2 + hole * dice.choice((0.9, 1.1, 1.5)) + 1.5)
    rim = hole * dice.choice((0.8, 1.0, 1.4)) + 1.0
    shape = dice.choice(("circle", "circle", "circle", "round", "spacing", "positions"))
    table: dict[str, Any] = {"pilot_diameter": pilot, "bolt_hole": hole}
    points = _holes(dice, table, shape, radius)
    across, upright = (max(pilot / 2 + 3, *(abs(p[i]) + rim for p in points)) for i in (0, 1))
    if shape == "round":
        table |= {"flange_shape": "round", "flange_size": min(220, math.ceil(2 * (radius + rim)))}
    elif dice.random() < 0.5:
        table["flange_size"] = min(220, max(28, math.ceil(2 * max(across, upright))))
    else:
        table |= {"flange_shape": "rectangle", "flange_width": math.ceil(2 * across)}
        table["flange_height"] = math.ceil(2 * upright)
    return table


def _holes(dice: random.Random, table: dict[str, Any], shape: str, radius: float) -> list[tuple[float, float]]:
    """Write the keys of a hole pattern and return the places of the holes."""
    if shape in {"circle", "round"}:
        count, angle = dice.choice((4, 4, 4, 2, 3, 5, 6, 8)), dice.choice((45.0, 0.0, 30.0, 22.5))
        table |= {"bolt_circle": 2 * radius, "bolt_count": count, "bolt_angle": angle}
        turns = [math.radians(angle + 360 * i / count) for i in range(count)]
        return [(radius * math.cos(a), radius * math.sin(a)) for a in turns]
    if shape == "spacing":
        flat, narrow = round(radius * 0.8, 1), round(radius * 0.6, 1)
        table |= {"bolt_spacing_y": 2 * flat, "bolt_spacing_z": 2 * narrow}
        return [(flat, narrow)]
    points = [(radius, 0.0), (round(-radius * 0.6, 1), round(radius * 0.8, 1)), (-radius * 0.6, -radius * 0.8)]
    table["bolt_positions"] = [[round(y, 1), round(z, 1)] for y, z in points]
    return points


def _half_height(flange: Mapping[str, Any]) -> float:
    return float(flange.get("flange_height", flange.get("flange_size", 0))) / 2


def _fastening(dice: random.Random, tables: Tables, _: Sequence[str]) -> None:
    motor = tables["motor"]
    if dice.random() < 0.25:
        motor |= {"fastening": "tapped", "bolt_thread": THREADS[motor.pop("bolt_hole")]}
    if dice.random() < 0.3:
        motor |= {"pilot_form": "recessed"} if dice.random() < 0.3 else {"pilot_fit": dice.choice(("h7", "j6", "h6"))}
    if dice.random() < 0.5:
        motor["flange_thickness"] = dice.randint(5, 16)
        tables["bearing"]["flange_thickness"] = dice.randint(5, 16)


def _loads(dice: random.Random, tables: Tables, _: Sequence[str]) -> None:
    if dice.random() < 0.6:
        tables["screw"]["thrust"] = dice.choice((150, 800, 3000, 12000))
    if dice.random() < 0.4:
        tables["motor"] |= {"mass": round(dice.uniform(0.3, 30), 1), "body_length": 120, "centre_of_mass": 70}
    if dice.random() < 0.3:
        tables["screw"] |= {"lead": dice.choice((2, 5, 10, 20))}
        tables["motor"]["peak_torque"] = round(dice.uniform(0.5, 20), 1)
    if dice.random() < 0.3:
        tables["job"]["gravity"] = dice.choice(("-z", "+z", "+x", "-x", "+y", "-y"))


def _base(dice: random.Random, tables: Tables, _: Sequence[str]) -> None:
    choices: tuple[dict[str, Any], ...] = (
        {}, {}, {"screw": "M6"}, {"screw": "M10"}, {"screw": "M5", "property_class": "12.9"}, {"screw_from": "below"},
        {"screw_count": 6}, {"dowels": True}, {"dowels": 6, "thickness": 20}, {"material": "S235JR"},
    )  # fmt: skip
    tables["base"] |= dice.choice(choices)


def _block(dice: random.Random, tables: Tables, materials: Sequence[str]) -> None:
    block = tables["block"]
    if dice.random() < 0.6:
        block["material"] = dice.choice(materials)
    block |= dice.choice(({}, {}, {"outer_fillet": 4}, {"relief": 0.5}, {"relief": 1, "outer_fillet": 0}, {}))
    if dice.random() < 0.2:
        block |= {"finish": "hard anodised", "coating_thickness": 0.02}


def _window(dice: random.Random, tables: Tables, _: Sequence[str]) -> None:
    kind = dice.choice(("through", "through", "across", "pocket"))
    if kind == "across":
        tables["block"]["window_axis"] = "y"
        tables["base"].pop("screw_count", None)  # one pattern of four
    if kind == "pocket":
        room = tables["base"]["shaft_height"] - tables["coupling"]["outer_diameter"] / 2 - 6
        tables["block"]["window_floor"] = max(1, math.floor(room))


def _heat(dice: random.Random, tables: Tables, _: Sequence[str]) -> None:
    if dice.random() < 0.2:
        tables["thermal"] |= {"assembly_temperature": 20, "block_temperature": dice.choice((35, 60))}


def _given_sizes(dice: random.Random, tables: Tables) -> None:
    """Give some sizes that the tool would choose, near to what it might choose, and some far from it."""
    block, coupling = tables["block"], tables["coupling"]
    if dice.random() < 0.15:
        reach = tables["screw"]["journal_reach"] + tables["motor"]["shaft_length"]
        block["length"] = math.ceil(reach + coupling["gap_min"] + dice.uniform(0, 4))
    if dice.random() < 0.15:
        block["bearing_wall"] = dice.choice((12, 20, 30))
    if dice.random() < 0.15:
        block["motor_wall"] = dice.choice((10, 18, 28))
    if dice.random() < 0.1:
        block["window_width"] = math.ceil(coupling["outer_diameter"] + dice.uniform(4, 12))
    if dice.random() < 0.1:
        block["cutter_diameter"] = dice.choice((10, 16, 20))


def _in_inches(dice: random.Random, tables: Tables) -> None:
    """Write some lengths in inches, to four decimals as data sheets do."""
    for table, key in (
        ("motor", "pilot_diameter"), ("motor", "flange_size"), ("motor", "bolt_circle"), ("screw", "journal_reach"),
        ("coupling", "length"), ("base", "shaft_height"),
    ):  # fmt: skip
        if key in tables[table] and dice.random() < 0.6:
            tables[table][key] = f"{tables[table][key] / 25.4:.4f} in"
