"""What a family block is for each of its motors: rows for summary and terminal, from the plan and its findings."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import asdict, dataclass, replace
from typing import Any

from blockgen.checks.finding import Finding
from blockgen.outputs import show
from blockgen.plan import Fastener, Plan
from blockgen.sizing.family import FIRST, entries, name_of, renamed, title_of

_WEIGHT = {"fail": 0, "warn": 1, "not_assessed": 3, "pass": 2}


@dataclass(frozen=True, slots=True)
class MotorRow:
    """One motor of a family on its block; lengths in mm, torque in N*m.

    Args:
        entry: Its table in the spec: ``motor``, ``family.0`` and so on.
        motor: The motor in words.
        length_min: Shortest block that it alone would allow with these walls.
        length_max: Longest block that it alone would allow.
        coupling_position: Where the fitter sets the coupling's bearing-side end.
        journal_grip: Depth of the journal in its hub.
        motor_grip: Depth of the motor shaft in its hub.
        shaft_gap: Gap between the shaft ends.
        screws: Its screws, in words.
        torque: Their tightening torque; None where it is not known.
        holes: Groups of holes in the block that it uses.
        turned: What its pattern was turned by, in words; empty where it stands as drawn.
        worst: Code of its worst check.
        verdict: Verdict of that check.
    """

    entry: str
    motor: str
    length_min: float | None
    length_max: float | None
    coupling_position: float
    journal_grip: float
    motor_grip: float
    shaft_gap: float
    screws: str
    torque: float | None
    holes: tuple[str, ...]
    turned: str
    worst: str
    verdict: str


def family_rows(plan: Plan, findings: Sequence[Finding]) -> tuple[MotorRow, ...]:
    """Return a row for each motor of a family; none for a single motor."""
    if not plan.others:
        return ()
    plans = zip(entries(plan.records), (plan, *plan.others), strict=True)
    return tuple(_row(plan, entry, own, findings) for entry, own in plans)


def family_document(plan: Plan, findings: Sequence[Finding]) -> list[dict[str, Any]]:
    """Return the same as plain data."""
    return [asdict(row) for row in family_rows(plan, findings)]


def mounted_motor(plan: Plan) -> str:
    """Return in words the motor of a family that plan, solids and finite elements show; empty for a single motor."""
    return title_of(plan.records, FIRST) if plan.others else ""


def further_fasteners(plan: Plan) -> tuple[Fastener, ...]:
    """Return the motor screws of the further motors of a family."""
    found = []
    for entry, other in zip(entries(plan.records)[1:], plan.others, strict=True):
        for fastener in other.fasteners:
            if fastener.where == "motor_flange":
                refs = {name: renamed(key, entry) for name, key in fastener.refs.items()}
                found.append(replace(fastener, where=f"{name_of(entry)}_flange", refs=refs))
    return tuple(found)


def _row(plan: Plan, entry: str, own: Plan, findings: Sequence[Finding]) -> MotorRow:
    screws = next(f for f in own.fasteners if f.where == "motor_flange")
    worst = _worst(entry, findings)
    sizes = {key: own.number(key) for key in ("coupling_position", "journal_grip", "motor_grip", "shaft_gap")}
    return MotorRow(
        entry, title_of(plan.records, entry), _length(plan, entry, "min"), _length(plan, entry, "max"), **sizes,
        screws=show.fastener(screws), torque=screws.torque, holes=holes_of(plan, entry), turned=_turned(plan, entry),
        worst=worst.id, verdict=worst.verdict,
    )  # fmt: skip


def _length(plan: Plan, entry: str, end: str) -> float | None:
    value = plan.records[renamed(f"motor_length_{end}", entry)].value
    return value if isinstance(value, float) else None


def holes_of(plan: Plan, entry: str) -> tuple[str, ...]:
    """Return the groups of the family's plan in which the holes of one motor are."""
    own = (plan, *plan.others)[entries(plan.records).index(entry)]
    places = [f.position for f in own.features if f.group in {"motor_threads", "motor_holes"}]
    groups = [f.group for place in places for f in plan.features if _at(f.position, place)]
    return tuple(sorted(set(groups)))


def _at(here: tuple[float, float, float], there: tuple[float, float, float]) -> bool:
    return all(abs(a - b) < 0.01 for a, b in zip(here, there, strict=True))


def _turned(plan: Plan, entry: str) -> str:
    record = plan.records.get(f"{entry}.bolt_positions")
    return record.rule if record is not None and record.origin == "sized" else ""


def _worst(entry: str, findings: Sequence[Finding]) -> Finding:
    """Return the worst check of one motor: the first motor's are those of the block too."""
    start = f"{name_of(entry)}."
    own = [f for f in findings if (f.id.startswith(start) if entry != FIRST else "." not in f.id)]
    return min(own or findings, key=lambda f: (_WEIGHT[f.verdict], 1.0 if f.margin is None else f.margin))
