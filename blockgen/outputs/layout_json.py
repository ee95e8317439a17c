"""The axial layout as plain data for ``summary.json``: every fact that bounds it, and the room that it leaves, mm."""

from __future__ import annotations

from typing import Any

from blockgen.outputs.tidy import tidy
from blockgen.plan import Plan
from blockgen.record import Ledger
from blockgen.sizing.axial import LOWER, Bound
from blockgen.sizing.family import entries, title_of
from blockgen.sizing.layout import AxialTask, axial_task

_BEFORE_THE_WALLS = "window length"
"""Decided from the usual walls, before these were; the room in the window is checked by solids and keys."""

_WHAT = {
    "c": "where the coupling starts, from the bearing seat",
    "d": "from where the coupling starts to the motor seat",
    "l": "length of the block, from seat to seat",
}


def with_layout(document: dict[str, Any], plan: Plan) -> dict[str, Any]:
    """Return a summary with the constraints of the axial layout, the tightest first, under ``layout``.

    A family has them for each of its motors: one at a time is mounted, and the fitter sets the coupling anew.
    """
    titles = [title_of(plan.records, entry) for entry in entries(plan.records)] if plan.others else [None]
    motors = zip(titles, (plan, *plan.others), strict=True)
    rows = sorted((row for motor in motors for row in _of_motor(*motor)), key=lambda row: row["room_after_tolerances"])
    return {**document, "layout": {"unit": "mm", "constraints": tidy(rows)}}


def _of_motor(title: str | None, plan: Plan) -> list[dict[str, Any]]:
    task, length, start = _task(plan), plan.number("length"), plan.number("coupling_position")
    return [{**row, "motor": title} for row in _constraints(task, {"c": start, "d": length - start, "l": length})]


def _task(plan: Plan) -> AxialTask:
    """Return the task with the walls as they were decided."""
    walls = (plan.number("bearing_wall"), plan.number("motor_wall"))
    return axial_task(Ledger(plan.records.values()), walls, walls, 0.0)


def _constraints(task: AxialTask, at: dict[str, float]) -> list[dict[str, Any]]:
    return [_constraint(bound, task, at) for bound in task.bounds if bound.name != _BEFORE_THE_WALLS]


def _constraint(bound: Bound, task: AxialTask, at: dict[str, float]) -> dict[str, Any]:
    """Return one constraint: ``room`` is what is left of it, ``room_after_tolerances`` in the worst case."""
    limit, value, lower = bound.value(task.facts), at[bound.kind[0]], bound.kind in LOWER
    room = value - limit if lower else limit - value
    return {
        "name": bound.name,
        "words": bound.words,
        "quantity": _WHAT[bound.kind[0]],
        "side": "least" if lower else "greatest",
        "value": value,
        "limit": limit,
        "room": room,
        "tolerance": bound.tolerance(task.tolerances),
        "room_after_tolerances": room - bound.tolerance(task.tolerances),
        "inputs": [key for key, _ in bound.terms],
    }
