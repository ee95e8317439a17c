"""Specs for tests: one that holds, ways to change it, and a hypothesis strategy over a wide range of valid ones."""

from __future__ import annotations

import copy
import json
import math
from collections.abc import Mapping
from typing import Any

from hypothesis import assume
from hypothesis import strategies as st

from blockgen.errors import InfeasibleError
from blockgen.plan import Plan
from blockgen.record import Ledger
from blockgen.sizing.defaults import complete
from blockgen.sizing.size import size
from blockgen.spec.load import parse_spec

Tables = dict[str, dict[str, Any]]

# Only what the contract requires.
REQUIRED: Tables = {
    "job": {"number": "T-1"},
    "motor": {"pilot_diameter": 70, "bolt_circle": 90, "flange_size": 80, "shaft_diameter": 19, "shaft_length": 40},
    "bearing": {"pilot_diameter": 45, "flange_size": 66, "bolt_circle": 62},
    "screw": {"journal_diameter": 15, "journal_reach": 43},
    "coupling": {"outer_diameter": 45, "length": 58},
    "base": {"shaft_height": 65},
}

# Everything that mates is given, so that nothing is preliminary.
COMPLETE: Tables = {
    "job": {"number": "T-2"},
    "motor": {
        "pilot_diameter": 70, "pilot_fit": "h7", "pilot_form": "proud", "pilot_length": 3, "flange_size": 80,
        "flange_shape": "square", "flange_thickness": 10, "bolt_circle": 90, "bolt_hole": 6.6, "shaft_diameter": 19,
        "shaft_length": 40, "body_size": 80, "peak_torque": 8,
    },
    "bearing": {
        "pilot_diameter": 50, "pilot_fit": "h6", "pilot_length": 12, "flange_size": 75, "flange_shape": "square",
        "flange_thickness": 12, "bolt_circle": 72, "bolt_hole": 6.6, "nut_reach": 20, "nut_outer_diameter": 30,
        "spanner_diameter": 34, "stack_length": 40,
    },
    "screw": {"journal_diameter": 15, "journal_reach": 44, "thrust": 3000, "seat_length": 38},
    "coupling": {
        "outer_diameter": 45, "length": 60, "bore_min": 8, "bore_max": 24, "hub_length": 26, "grip_min": 16,
        "grip_max": 26, "gap_min": 1, "clamp_position": 8, "clamp_access_radius": 5, "rated_torque": 30,
    },
    "base": {"shaft_height": 65, "screw": "M10"},
}  # fmt: skip


def toml(tables: Mapping[str, Mapping[str, Any]]) -> str:
    """Return TOML for tables of scalars and lists; a dotted name is a sub-table."""
    lines = []
    for table, keys in tables.items():
        lines.append(f"[{table}]")
        lines += [f"{key} = {json.dumps(value)}" for key, value in keys.items()]
    return "\n".join(lines) + "\n"


def changed(start: Tables, **changes: Mapping[str, Any]) -> Tables:
    """Return tables with keys changed; None takes a key away."""
    tables = copy.deepcopy(start)
    for table, keys in changes.items():
        for key, value in keys.items():
            tables.setdefault(table, {})[key] = value
            if value is None:
                del tables[table][key]
    return tables


def sized(start: Tables = COMPLETE, **changes: Mapping[str, Any]) -> Plan:
    """Return the plan of tables with keys changed."""
    return size(parse_spec(toml(changed(start, **changes))))


def sized_or_left(tables: Tables) -> Plan:
    """Return the plan, or leave the example where no layout exists."""
    try:
        return sized(tables)
    except InfeasibleError:
        assume(False)
        raise


def steps(low: float, high: float, step: float = 0.5) -> st.SearchStrategy[float]:
    """Return numbers between two bounds in whole steps."""
    return st.integers(math.ceil(low / step - 1e-9), max(math.ceil(low / step - 1e-9), math.floor(high / step))).map(
        lambda n: round(n * step, 6)
    )


_HOLES = ((40, 3.4), (60, 4.5), (75, 5.5), (105, 6.6), (150, 9.0), (200, 11.0), (math.inf, 13.5))
_THREADS = {3.4: "M3", 4.5: "M4", 5.5: "M5", 6.6: "M6", 9.0: "M8", 11.0: "M10", 13.5: "M12"}


@st.composite
def flanges(draw: st.DrawFn, pilot: float) -> dict[str, Any]:
    """Draw pilot, outline and holes of a flange whose holes lie between pilot and outline."""
    hole = next(h for limit, h in _HOLES if pilot * 1.35 <= limit)
    radius = math.ceil(pilot / 2 + hole * draw(st.sampled_from((0.9, 1.1, 1.5))) + 1.5)
    rim = hole * draw(st.sampled_from((0.8, 1.0, 1.4))) + 1.0
    shape = draw(st.sampled_from(("circle", "circle", "circle", "round", "spacing", "positions")))
    table: dict[str, Any] = {"pilot_diameter": pilot, "bolt_hole": hole}
    if shape in {"circle", "round"}:
        count = draw(st.sampled_from((4, 4, 4, 2, 3, 6, 8)))
        angle = draw(st.sampled_from((45.0, 0.0, 30.0, 22.5)))
        table |= {"bolt_circle": 2 * radius, "bolt_count": count, "bolt_angle": angle}
        places = [math.radians(angle + 360 * i / count) for i in range(count)]
        points = [(radius * math.cos(a), radius * math.sin(a)) for a in places]
    elif shape == "spacing":
        narrow, flat = radius * 0.6, radius * 0.8
        table |= {"bolt_spacing_y": 2 * flat, "bolt_spacing_z": 2 * narrow}
        points = [(flat, narrow)]
    else:
        points = [(radius, 0.0), (-radius * 0.6, radius * 0.8), (-radius * 0.6, -radius * 0.8)]
        table["bolt_positions"] = [list(p) for p in points]
    across, upright = (max(pilot / 2 + 5, *(abs(p[i]) + rim for p in points)) for i in (0, 1))
    if shape == "round":
        table |= {"flange_shape": "round", "flange_size": math.ceil(2 * (radius + rim))}
    elif draw(st.booleans()):
        table["flange_size"] = math.ceil(2 * max(across, upright))
    else:
        table |= {"flange_width": math.ceil(2 * across), "flange_height": math.ceil(2 * upright)}
    return table


@st.composite
def tables(draw: st.DrawFn) -> Tables:
    """Draw the tables of a valid spec: small steppers to large servos, with and without the optional keys."""
    journal = draw(st.sampled_from((6, 8, 10, 12, 15, 20, 25, 30)))
    shaft = draw(
        st.sampled_from([d for d in (5, 6.35, 8, 9, 11, 14, 19, 24, 28, 32) if 0.6 * journal <= d <= 1.6 * journal])
    )
    great = max(journal, shaft)
    outer, gap = round(great * draw(st.sampled_from((1.7, 2.0, 2.6)))), draw(st.sampled_from((0.5, 1.0, 3.0)))
    hub = round(great * draw(st.sampled_from((1.1, 1.3, 1.6))) + 3)
    spare = draw(steps(0, 8))
    coupling = {"outer_diameter": outer, "length": 2 * hub + gap + spare, "hub_length": hub, "gap_min": gap}
    motor = draw(flanges(max(22.0, draw(steps(1.9 * shaft, 5.5 * shaft, 1.0)))))
    bearing = draw(flanges(max(18.0, draw(steps(1.8 * journal, 3.6 * journal, 1.0)))))
    bearing["pilot_length"] = draw(steps(4, 16, 1.0))
    motor |= {"shaft_diameter": shaft, "pilot_length": draw(steps(1.5, 5))}
    if draw(st.booleans()):
        coupling |= {"clamp_position": round(0.35 * hub, 1), "clamp_access_radius": draw(steps(2, 6))}
    nut = bearing["pilot_length"] + draw(steps(3, 12))
    bearing["nut_reach"] = nut
    reach = nut + 2 + min(great, 0.9 * hub) + draw(steps(0, 16))
    screw = {"journal_diameter": journal, "journal_reach": reach}
    motor["shaft_length"] = motor["pilot_length"] + 2 + min(great, 0.9 * hub) + draw(steps(0, 24))
    shaft_height = math.ceil(max(_half_height(motor), _half_height(bearing)) + 2 + draw(steps(0, 40)))
    result = {"job": {"number": "H-1"}, "motor": motor, "bearing": bearing, "screw": screw, "coupling": coupling,
              "base": {"shaft_height": shaft_height}, "block": {}}  # fmt: skip
    _options(draw, result)
    return result


def _half_height(flange: Mapping[str, Any]) -> float:
    return float(flange.get("flange_height", flange.get("flange_size", 0))) / 2


def _options(draw: st.DrawFn, result: Tables) -> None:
    if draw(st.booleans()):
        result["screw"]["thrust"] = draw(st.sampled_from((200, 3000, 20000)))
    if draw(st.integers(0, 3)) == 0:
        hole = result["motor"].pop("bolt_hole")
        result["motor"] |= {"fastening": "tapped", "bolt_thread": _THREADS[hole]}
    if draw(st.booleans()):
        result["motor"]["flange_thickness"] = draw(steps(5, 16, 1.0))
        result["bearing"]["flange_thickness"] = draw(steps(5, 16, 1.0))
    base, block = result["base"], result["block"]
    base |= draw(
        st.sampled_from(
            ({}, {}, {"screw": "M6"}, {"screw": "M10"}, {"screw_from": "below"}, {"screw_count": 6}, {"dowels": True})
        )
    )
    block |= draw(
        st.sampled_from(
            ({}, {}, {"material": "S355J2"}, {"material": "EN-GJL-250"}, {"outer_fillet": 4}, {"relief": 0.5})
        )
    )
    kind = draw(st.sampled_from(("through", "through", "across", "pocket")))
    if kind == "across":
        block["window_axis"] = "y"
        base.pop("screw_count", None)  # one pattern of four
    if kind == "pocket":
        block["window_floor"] = max(
            1.0, math.floor(base["shaft_height"] - result["coupling"]["outer_diameter"] / 2 - 6)
        )


def ledger(start: Tables = COMPLETE, **changes: Mapping[str, Any]) -> Ledger:
    """Return the completed ledger of tables with keys changed."""
    return complete(parse_spec(toml(changed(start, **changes))).records)
