"""What a save has changed: what is asked for, sizes, screws, verdicts and status, as plain data."""

from __future__ import annotations

from collections.abc import Iterable, Iterator, Mapping
from dataclasses import dataclass

from blockgen.checks.finding import Finding
from blockgen.mechanics.volume import reference_volume
from blockgen.outputs import show
from blockgen.outputs.summary_json import mass_of
from blockgen.pipeline import BuildResult
from blockgen.plan import Plan
from blockgen.record import Record

NONE = "-"
"""What stands for a value or a check that is not there."""


@dataclass(frozen=True, slots=True)
class Change:
    """One value that has changed, in words.

    Args:
        name: Its key, or what it is.
        before: As it was, with unit, limits and class.
        now: As it is.
    """

    name: str
    before: str
    now: str


@dataclass(frozen=True, slots=True)
class Turn:
    """One check with another verdict than before.

    Args:
        before: Verdict before; ``-`` where the check was not made.
        now: The finding as it is; None where the check is made no more.
        then: The finding as it was; None where the check was not made.
    """

    before: str
    now: Finding | None
    then: Finding | None


@dataclass(frozen=True, slots=True)
class Changes:
    """What is not as it was.

    Args:
        asked: Values of the spec and of presets; then what was assumed from them.
        sizes: Dimensions of the block and its mass.
        screws: Groups of screws.
        checks: Checks with another verdict.
        status: The status before and now; None where it is the same.
    """

    asked: tuple[Change, ...] = ()
    sizes: tuple[Change, ...] = ()
    screws: tuple[Change, ...] = ()
    checks: tuple[Turn, ...] = ()
    status: Change | None = None


def changes(before: BuildResult, now: BuildResult) -> Changes:
    """Return what differs between two builds."""
    old, new = before.plan, now.plan
    return Changes(
        tuple(_differences(_asked(old), _asked(new))),
        tuple(_differences(_sizes(old), _sizes(new))),
        tuple(_differences(_screws(old), _screws(new))),
        tuple(turns(before.findings, now.findings)),
        None if before.status == now.status else Change("Status", before.status, now.status),
    )


def turns(before: Iterable[Finding], now: Iterable[Finding]) -> Iterator[Turn]:
    """Yield the checks whose verdict differs, in their order now; then those that are made no more."""
    old, new = {f.id: f for f in before}, {f.id: f for f in now}
    for key in [*new, *(key for key in old if key not in new)]:
        was, found = old.get(key), new.get(key)
        verdict = NONE if was is None else was.verdict
        if found is None or found.verdict != verdict:
            yield Turn(verdict, found, was)


def _differences(before: Mapping[str, str], now: Mapping[str, str]) -> Iterator[Change]:
    for name in [*now, *(name for name in before if name not in now)]:
        was, found = before.get(name, NONE), now.get(name, NONE)
        if was != found:
            yield Change(name, was, found)


def _asked(plan: Plan) -> dict[str, str]:
    """Return what the spec and its presets say, then what was assumed: the first is what somebody has changed."""
    others = [r for key, r in plan.records.items() if key not in plan.dimensions and r.value is not None]
    said = {r.key: _amount(r) for r in others if r.origin in {"given", "preset", "standard"}}
    return said | {r.key: f"{_amount(r)} (assumed)" for r in others if r.origin == "assumed"}


def _sizes(plan: Plan) -> dict[str, str]:
    dimensions = {key: _amount(plan.records[key]) for key in plan.dimensions}
    return dimensions | {"mass": f"{show.significant(mass_of(plan, reference_volume(plan)))} kg"}


def _screws(plan: Plan) -> dict[str, str]:
    return {f"screws, {show.plain_id(f.where)}": show.fastener(f) for f in plan.fasteners}


def _amount(record: Record) -> str:
    return show.joined((show.amount(record), show.limits(record)), " ")
