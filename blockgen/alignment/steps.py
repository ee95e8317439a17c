"""The next tighter step of each cause: what would be asked for, and what class of cost that is.

The steps and costs are common practice without a source, but for the run-out classes (IEC 60072-1) and fits (ISO 286).
"""

from __future__ import annotations

import re
from collections.abc import Mapping
from dataclasses import dataclass
from typing import Literal

from blockgen.alignment.scatter import Scatter, clearance, scaled
from blockgen.alignment.terms import Term
from blockgen.plan import Plan
from blockgen.record import Record
from blockgen.standards.flanges import runout_class, shaft_runout
from blockgen.standards.iso286 import limits
from blockgen.standards.tables import TableError

CostClass = Literal["small", "moderate", "large"]
ZONES = (0.1, 0.05, 0.03, 0.02, 0.01, 0.005)
_HAIR = 1e-9
_FINEST_GRADE = 5
_ZONE_COST: Mapping[str, tuple[str, CostClass, str]] = {
    "block.coaxiality": ("coaxiality of the bores", "moderate", "both bores in one setting, measured on a machine"),
    "block.seat_perpendicularity": ("squareness of the seats", "small", "seats faced in the setting of the bores"),
}
_MOTOR_COST: tuple[CostClass, str] = ("moderate", "motor ordered in the reduced run-out class, an option of its maker")
_SELECTED_COST: tuple[CostClass, str] = ("large", "selected or reworked motor, below the reduced class")
_UNIT_COST: tuple[CostClass, str] = ("large", "bearing unit in the next class of accuracy")
_JOURNAL_COST: tuple[CostClass, str] = ("moderate", "journal ground together with the bearing seats")


@dataclass(frozen=True, slots=True)
class Step:
    """One step tighter.

    Args:
        id: Id of the term that it tightens.
        what: What is asked for, in words.
        key: Spec key to change.
        before: Value now, in mm; a fit by its class.
        after: Value then.
        cost: small, moderate or large.
        reason: What the money buys.
        purchase: Id shared by the steps that one decision brings at once, such as the motor's class.
        scatter: The cause after the step.
    """

    id: str
    what: str
    key: str
    before: float | str
    after: float | str
    cost: CostClass
    reason: str
    purchase: str
    scatter: Scatter


def step_of(plan: Plan, term: Term) -> Step | None:
    """Return the next tighter step of a term; None where the trade offers none."""
    if term.id.startswith("heat_"):
        return None
    if term.scatter.law == "clearance":
        return _finer_bore(plan, term)
    if term.characteristic.endswith(".coaxiality"):
        return _finer_zone(plan, term, "block.coaxiality")
    if term.characteristic.endswith((".perpendicularity", ".parallelism")):
        return _finer_zone(plan, term, "block.seat_perpendicularity")
    return _less_runout(plan, term)


def _finer_zone(plan: Plan, term: Term, key: str) -> Step | None:
    before = plan.number(key)
    after = next((zone for zone in ZONES if zone < before - _HAIR), None)
    if after is None:
        return None
    what, cost, reason = _ZONE_COST[key]
    words = f"{what}, {term.id.replace('_', ' ')}: {before:g} to {after:g} mm"
    return Step(term.id, words, key, before, after, cost, reason, key, scaled(term.scatter, after / before))


def _less_runout(plan: Plan, term: Term) -> Step | None:
    record = plan.records.get(term.characteristic)
    if record is None or not isinstance(record.value, float) or record.value <= 0:
        return None
    before = record.value
    after, cost, reason = _next_runout(plan, record, before)
    words = f"{term.characteristic} {before:g} to {after:g} mm, full indicator movement"
    scatter = scaled(term.scatter, after / before)
    purchase = record.key.partition(".")[0]
    return Step(term.id, words, record.key, before, after, cost, reason, f"{purchase} class", scatter)


def _next_runout(plan: Plan, record: Record, before: float) -> tuple[float, CostClass, str]:
    if not record.key.startswith("motor."):
        return before / 2, *(_JOURNAL_COST if record.key.startswith("screw.") else _UNIT_COST)
    reduced = _reduced_class(plan, record.key)
    if reduced is not None and reduced < before - _HAIR:
        return reduced, *_MOTOR_COST
    return before / 2, *_SELECTED_COST


def _reduced_class(plan: Plan, key: str) -> float | None:
    """Return the reduced class of IEC 60072-1 in mm; None beyond its table."""
    of_shaft = key == "motor.shaft_runout"
    diameter = plan.number("motor.shaft_diameter" if of_shaft else "motor.pilot_diameter")
    try:
        return shaft_runout(diameter, "reduced") if of_shaft else runout_class(diameter, "spigot", "reduced")
    except TableError:
        return None


def _finer_bore(plan: Plan, term: Term) -> Step | None:
    end = term.characteristic.partition("_bore")[0]
    bore = plan.records.get(f"{end}_bore")
    found = re.fullmatch(r"([A-Z]+)(\d+)", (bore.fit or "") if bore else "")
    if bore is None or found is None or int(found[2]) <= _FINEST_GRADE:
        return None
    finer = f"{found[1]}{int(found[2]) - 1}"
    scatter = _with_bore(plan.number(f"{end}_bore"), bore, finer, term.scatter)
    if scatter is None:
        return None
    what = f"{end} bore {bore.fit} to {finer}"
    reason = "bore finished with a fine-boring head and gauged"
    return Step(term.id, what, "block.bore_fit", bore.fit or "", finer, "moderate", reason, "block.bore_fit", scatter)


def _with_bore(size: float, bore: Record, finer: str, now: Scatter) -> Scatter | None:
    """Return the clearance with a finer bore: its limits move by what the bore's limits move."""
    try:
        band = limits(size, finer)
    except TableError:
        return None
    low, high = now.low + band.lower - (bore.lower or 0.0), now.high + band.upper - (bore.upper or 0.0)
    return clearance(low, high, min(band.tolerance, high - low))
