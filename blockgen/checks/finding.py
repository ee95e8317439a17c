"""A coded finding about a plan, and the three ways in which a value meets its limit."""

from __future__ import annotations

from collections.abc import Iterable, Mapping, Sequence
from dataclasses import dataclass, field, replace
from typing import Literal

from blockgen.plan import Plan
from blockgen.record import Input

Verdict = Literal["pass", "warn", "fail", "not_assessed"]

# Rounding in the chain of sizes is no reason to fail.
_HAIR = 1e-6


@dataclass(frozen=True, slots=True)
class Finding:
    """One check of a plan.

    Args:
        id: Stable code, for instance ``motor_grip``.
        title: The check in one line.
        value: What the plan has, in ``unit``; None where it is not assessed.
        limit: What is asked for, in ``unit``.
        unit: Unit of value and limit.
        margin: 1 - use, use = demand over capacity; at least 0 passes.
        verdict: pass, warn, fail or not_assessed.
        explanation: What it means and what to do.
        inputs: Inputs by key.
        source: Where the limit comes from.
        missing: Keys, or facts in words, that would let it be assessed.
        stake: The worst verdict that it can come to.
    """

    id: str
    title: str
    value: float | None
    limit: float | None
    unit: str
    margin: float | None
    verdict: Verdict
    explanation: str
    inputs: Mapping[str, Input] = field(default_factory=dict)
    source: str = "common practice, no source"
    missing: tuple[str, ...] = ()
    stake: Verdict = "fail"


@dataclass(frozen=True, slots=True)
class Question:
    """What is asked of a plan: code, title, keys of the inputs, source of the limit, and what a miss means."""

    id: str
    title: str
    keys: tuple[str, ...]
    miss: str
    source: str = "common practice, no source"
    otherwise: Verdict = "fail"


def inputs_of(plan: Plan, keys: Iterable[str]) -> Mapping[str, Input]:
    """Return the records behind a check as inputs; keys that are not known are left out."""
    return {key: plan.records[key].as_input() for key in keys if key in plan.records}


def at_least(plan: Plan, ask: Question, value: float, limit: float, unit: str = "mm", text: str = "holds") -> Finding:
    """Return the finding for a value that must not be below its limit, both in ``unit``; ``text`` says how it holds."""
    margin = 1 - limit / value if value > 0 else (0.0 if limit <= value else -1.0)
    return _finding(plan, ask, value, limit, unit, margin, text if value >= limit - _HAIR else None)


def at_most(plan: Plan, ask: Question, value: float, limit: float, unit: str = "mm", text: str = "holds") -> Finding:
    """Return the finding for a value that must not be above its limit, both in ``unit``; ``text`` says how it holds."""
    margin = 1 - value / limit if limit > 0 else (0.0 if value <= limit else -1.0)
    return _finding(plan, ask, value, limit, unit, margin, text if value <= limit + _HAIR else None)


def within(plan: Plan, ask: Question, value: float, interval: tuple[float, float], unit: str = "mm") -> Finding:
    """Return the finding for a value that must lie in an interval: against the end with the lesser margin."""
    ends = (at_least(plan, ask, value, interval[0], unit), at_most(plan, ask, value, interval[1], unit))
    return min(ends, key=lambda finding: finding.margin or 0.0)


def _finding(
    plan: Plan, ask: Question, value: float, limit: float, unit: str, margin: float, holds: str | None
) -> Finding:
    """Return the finding; ``holds`` says how it holds, None where it does not."""
    verdict: Verdict = ask.otherwise if holds is None else "pass"
    rounded = min(round(margin, 4), -0.0001) if holds is None else max(round(margin, 4), 0.0)
    return Finding(
        ask.id, ask.title, round(value, 4), round(limit, 4), unit, rounded, verdict, holds or ask.miss,
        inputs_of(plan, ask.keys), ask.source,
    )  # fmt: skip


def not_assessed(plan: Plan, ask: Question, missing: str, *keys: str) -> Finding:
    """Return the finding for a check whose data are not given; nothing is assumed for it.

    Args:
        plan: What was decided.
        ask: What is asked.
        missing: What is not given, in words.
        keys: The keys of it, or facts that no key stands for; ``missing`` itself where there are none.
    """
    text = f"not assessed: {missing} is not given"
    inputs = inputs_of(plan, ask.keys)
    return Finding(
        ask.id, ask.title, None, None, "", None, "not_assessed", text, inputs, ask.source, keys or (missing,),
        ask.otherwise,
    )  # fmt: skip


def unless_missing(plan: Plan, ask: Question, found: Finding, missing: Sequence[str]) -> Finding:
    """Return a finding, or one that is not assessed where it holds only because loads are not given."""
    if not missing or found.verdict != "pass":
        return found
    without = "it" if len(missing) == 1 else "them"
    figures = (found.value, found.limit)
    seen = "" if None in figures else f"; without {without} {found.value:.4g} against {found.limit:.4g}"
    blank = not_assessed(plan, ask, " and ".join(missing), *missing)
    return replace(blank, explanation=blank.explanation.replace("is not given", "not given") + seen)


def remark(plan: Plan, ask: Question, verdict: Verdict, text: str) -> Finding:
    """Return a finding that is a statement and no comparison."""
    return Finding(ask.id, ask.title, None, None, "", None, verdict, text, inputs_of(plan, ask.keys), ask.source)
