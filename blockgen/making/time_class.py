"""A class of machining time by a declared rule: an estimate to compare blocks by, no quotation."""

from __future__ import annotations

from dataclasses import dataclass
from math import fsum
from typing import Literal

from blockgen.making.practice import PRACTICE, constant, decided
from blockgen.making.setups import Setup, clampings
from blockgen.making.stock import Stock
from blockgen.plan import Plan
from blockgen.record import Record

Name = Literal["short", "usual", "long", "very long"]
_RULE = (
    "removed_volume / rate + holes x making.hole_time + bores x making.bore_time + clampings x making.clamping_time"
    " + making.deep_window_time where the window is deeper than normal"
)


@dataclass(frozen=True, slots=True)
class Part:
    """One part of the estimate: what it is, how much of it, at which rate in words, minutes."""

    what: str
    count: float
    rate: str
    minutes: float


@dataclass(frozen=True, slots=True)
class TimeClass:
    """Class of machining time.

    Args:
        name: short, usual, long or very long.
        minutes: Sum of the parts, min; an estimate.
        parts: What it is made of.
        records: How it came about.
    """

    name: Name
    minutes: float
    parts: tuple[Part, ...]
    records: tuple[Record, ...]


def time_class(plan: Plan, stock: Stock, found: tuple[Setup, ...]) -> TimeClass:
    """Return the class of machining time.

    Args:
        plan: What was decided.
        stock: What the block is cut from.
        found: The setups.

    Source: common practice, no source; every rate is a record of its own.
    """
    parts = _parts(plan, stock, found)
    minutes = fsum(part.minutes for part in parts)
    name = class_of(minutes)
    return TimeClass(name, minutes, parts, _records(plan, stock, parts, name))


def class_of(minutes: float) -> Name:
    """Return the class of a machining time in minutes."""
    if minutes < constant("usual_from"):
        return "short"
    if minutes < constant("long_from"):
        return "usual"
    return "long" if minutes < constant("very_long_from") else "very long"


def _parts(plan: Plan, stock: Stock, found: tuple[Setup, ...]) -> tuple[Part, ...]:
    holes = sum(f.kind not in {"bore", "window", "relief"} for f in plan.features)
    bores = sum(f.kind == "bore" for f in plan.features)
    times = clampings(found)
    rate = constant(f"rate_{stock.kind}")
    parts = [
        Part("metal removed", round(stock.removed), f"cm3 at {rate:g} cm3/min", stock.removed / rate),
        Part("holes", holes, f"at {constant('hole_time'):g} min", holes * constant("hole_time")),
        Part("fitted bores with seats", bores, f"at {constant('bore_time'):g} min", bores * constant("bore_time")),
        Part("clampings", times, f"at {constant('clamping_time'):g} min", times * constant("clamping_time")),
    ]
    over = plan.number("window_cut_depth") / plan.number("block.cutter_diameter")
    if over > plan.number("practice.cut_depth_ratio"):
        parts.append(Part("deep window", round(over, 2), "D", constant("deep_window_time")))
    return tuple(parts)


def _records(plan: Plan, stock: Stock, parts: tuple[Part, ...], name: Name) -> tuple[Record, ...]:
    rates = ("hole_time", "bore_time", "clamping_time", "deep_window_time", f"rate_{stock.kind}")
    removed = next(record for record in stock.records if record.key == "making.removed_volume")
    facts = {part.what: (part.count, "") for part in parts[1:] if part.what != "deep window"}
    using: tuple[str | Record, ...] = (removed, *(f"making.{rate}" for rate in rates), "window_cut_depth",
             "block.cutter_diameter", "practice.cut_depth_ratio")  # fmt: skip
    minutes = decided(plan, "machining_time", round(fsum(p.minutes for p in parts)), "min", _RULE, using, facts)
    limits = [PRACTICE[f"making.{key}_from"] for key in ("usual", "long", "very_long")]
    rule = "short, usual, long, very long by making.machining_time; an estimate"
    return minutes, decided(plan, "time_class", name, "", rule, (minutes, *limits))
