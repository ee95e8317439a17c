"""Checks of a family block with each further motor mounted: what is not the same as with the first one."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from dataclasses import replace

from blockgen.checks.finding import Finding
from blockgen.plan import Plan
from blockgen.record import Input
from blockgen.sizing.family import FIRST, entries, name_of, renamed, title_of

# Walls are those of the one block whichever motor is mounted.
_OF_THE_BLOCK = "thin_wall"


def of_further_motor(plan: Plan, number: int, found: Sequence[Finding], first: Sequence[Finding]) -> Iterator[Finding]:
    """Yield what the checks find with a further motor mounted and not with the first one.

    Args:
        plan: The plan of the family.
        number: Number of the further motor, from 0.
        found: What the checks found with it.
        first: What they found with the first motor.
    """
    entry = entries(plan.records)[number + 1]
    known = {finding.id: _essence(finding, FIRST) for finding in first}
    title = title_of(plan.records, entry)
    for finding in found:
        if known.get(finding.id) != _essence(finding, entry) and not finding.id.startswith(_OF_THE_BLOCK):
            yield replace(
                finding,
                id=f"{name_of(entry)}.{finding.id}",
                title=f"{finding.title}: {title}",
                explanation=renamed(finding.explanation, entry),
                inputs={renamed(key, entry): _renamed(of, entry) for key, of in finding.inputs.items()},
                missing=tuple(renamed(key, entry) for key in finding.missing),
            )


def _renamed(of: Input, entry: str) -> Input:
    return of if of.ref is None else replace(of, ref=renamed(of.ref, entry))


def _essence(finding: Finding, entry: str) -> tuple[object, ...]:
    """Return what a check came to; what it needs to be told of a motor is a question of its own for each motor."""
    missing = tuple(renamed(key, entry) for key in finding.missing)
    return finding.value, finding.limit, finding.verdict, finding.explanation, missing
