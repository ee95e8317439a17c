"""The status that stands on every output: released for review, preliminary, or not for manufacture."""

from __future__ import annotations

from collections.abc import Sequence

from blockgen.checks.finding import Finding
from blockgen.plan import Plan
from blockgen.sizing.defaults import mates

RELEASED = "released for review"


def assumed_mating(plan: Plan) -> tuple[str, ...]:
    """Return the keys of mating geometry that is still assumed."""
    return tuple(sorted(key for key, record in plan.records.items() if record.origin == "assumed" and mates(key)))


def status(plan: Plan, findings: Sequence[Finding]) -> str:
    """Return the status in words; a failed check weighs more than an assumption."""
    failed = [finding.title for finding in findings if finding.verdict == "fail"]
    if failed:
        return f"NOT FOR MANUFACTURE: failed checks: {'; '.join(failed)}"
    assumed = assumed_mating(plan)
    if assumed:
        return f"PRELIMINARY: assumed mating geometry: {', '.join(assumed)}"
    return RELEASED
