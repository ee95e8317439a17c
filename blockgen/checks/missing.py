"""What to ask for: values that were not given, ranked by what hangs on them."""

from __future__ import annotations

from collections.abc import Iterator, Mapping, Sequence
from dataclasses import dataclass

from blockgen.checks.finding import Finding, Verdict
from blockgen.checks.status import assumed_mating
from blockgen.plan import Plan
from blockgen.sizing.family import entries, name_of, renamed

_OF_STATUS = "status of the design (assumed geometry that mates)"
_ASK: Mapping[str, str] = {
    "motor": "motor maker", "family": "motor maker", "bearing": "maker of the bearing unit",
    "screw": "maker of the ball screw", "coupling": "coupling maker", "material": "supplier of the material",
}  # fmt: skip
_OWN = "machine designer"
# Loads and requirements are the designer's own, whatever table they stand in.
_OWN_KEYS = frozenset({"screw.thrust", "screw.moved_mass", "screw.thrust_direction", "screw.reversing"})
_ALIGNED = ("shaft_offset", "shaft_angle", "coupling_use_likely")
_WEIGHT: Mapping[Verdict, int] = {"fail": 10, "warn": 1}
# Without confirmed mating geometry nothing is released.
_STATUS_WEIGHT = 100
# A run-out that is only assumed: the alignment is judged with it, and the maker's value may be better or worse.
_ASSUMED = 5


@dataclass(frozen=True, slots=True)
class Missing:
    """One value to ask for.

    Args:
        key: Key of the spec, or the fact in words where no key stands for it.
        ask: Who knows it.
        checks: Codes of the checks that wait for it, or what else hangs on it.
        rank: Weight of what hangs on it: 100 the status, 10 a check that can fail, 1 one that can only warn.
    """

    key: str
    ask: str
    checks: tuple[str, ...]
    rank: int


def missing(plan: Plan, findings: Sequence[Finding]) -> tuple[Missing, ...]:
    """Return what to ask for, what weighs most first."""
    waiting: dict[str, list[str]] = {}
    ranks: dict[str, int] = {}
    for key in assumed_mating(plan):
        waiting[key], ranks[key] = [_OF_STATUS], _STATUS_WEIGHT
    for finding in findings:
        for key in finding.missing:
            waiting.setdefault(key, []).append(finding.id)
            ranks[key] = ranks.get(key, 0) + _WEIGHT.get(finding.stake, 0)
    for key, start in _run_outs(plan):
        record = plan.records.get(key)
        if record is not None and record.origin == "assumed" and "." in key and key not in waiting:
            waiting[key], ranks[key] = [start + check for check in _ALIGNED], _ASSUMED
    order = sorted(waiting, key=lambda key: (-ranks[key], key))
    return tuple(Missing(key, who_knows(key), tuple(waiting[key]), ranks[key]) for key in order)


def _run_outs(plan: Plan) -> Iterator[tuple[str, str]]:
    """Yield what puts the shafts out of line, and how the codes of its checks begin, for each motor of a family."""
    yield from ((cause.characteristic, "") for cause in plan.contributors)
    for entry in entries(plan.records)[1:]:
        own = (cause.characteristic for cause in plan.contributors if cause.characteristic.startswith("motor."))
        yield from ((renamed(key, entry), f"{name_of(entry)}.") for key in own)


def who_knows(key: str) -> str:
    """Return whom to ask for a key, or for a fact in words."""
    if key in _OWN_KEYS:
        return _OWN
    table = next((name for name in _ASK if key.startswith(f"{name}.")), None)
    if table is None and "maker" in key:
        table = next((name for name in _ASK if f"{name} flange" in key), None)
    return _ASK[table] if table else _OWN
