"""Masses to lift: stock, block, block with motor and coupling; from which mass on a hoist is taken."""

from __future__ import annotations

from dataclasses import dataclass
from math import fsum

from blockgen.making.practice import decided
from blockgen.making.stock import Stock
from blockgen.plan import Plan
from blockgen.record import Record

CAUTION = (
    "Masses are nominal. The limit for lifting by hand is a planning value (common practice, no source): local rules "
    "on handling loads go before it, and bending, reach and frequency lower it."
)
_WITH = ("motor.mass", "coupling.mass")


@dataclass(frozen=True, slots=True)
class Load:
    """One thing to lift: what it is, mass in kg, True where a hoist is taken, remark."""

    what: str
    mass: float
    hoist: bool
    remark: str


def lifting(plan: Plan, stock: Stock) -> tuple[tuple[Load, ...], tuple[Record, ...]]:
    """Return what has to be lifted, and how the sums came about.

    Args:
        plan: What was decided.
        stock: What the block is cut from, with its masses in kg.
    """
    limit = plan.number("practice.lifting_mass")
    points = _points(plan) if stock.finished_mass > limit else ""
    loads = [_load("stock", stock.rough_mass, limit, ""), _load("block", stock.finished_mass, limit, points)]
    known = [key for key in _WITH if plan.text(key)]
    if "motor.mass" not in known:
        return tuple(loads), ()
    total = stock.finished_mass + fsum(plan.number(key) for key in known)
    words = " and ".join(key.partition(".")[0] for key in known)
    finished = next(record for record in stock.records if record.key == "making.finished_mass")
    rule = " + ".join(("making.finished_mass", *known))
    record = decided(plan, "assembled_mass", round(total, 3), "kg", rule, (finished, *known), source="sum")
    loads.append(_load(f"block with {words}", total, limit, "without bearing unit and screw: mass not known"))
    return tuple(loads), (record,)


def _load(what: str, mass: float, limit: float, remark: str) -> Load:
    return Load(what, mass, mass > limit, remark)


def _points(plan: Plan) -> str:
    """Return where the block is taken up."""
    count = sum(f.group == "lifting_threads" for f in plan.features)
    if count:
        return f"{count} {plan.text('lifting_thread')} threads in the top: lifting points screwed in to the shoulder"
    return "no lifting threads: slings round the block, edges padded"
