"""Which ways of laying the new block into the old one are tried, and which of them is the best."""

from __future__ import annotations

import math
from collections.abc import Iterator, Sequence
from dataclasses import dataclass, replace

from blockgen.change.rework.data import Attempt, Reason
from blockgen.change.rework.fit import fitted, kept_motor_wall, resized, turns
from blockgen.change.rework.screen import Screen, screen
from blockgen.checks import check
from blockgen.errors import InfeasibleError, InputError
from blockgen.plan import Plan

_STEP = 0.5
_DEEPEST = 20.0
"""Nobody faces more than this off a block that is finished, mm (common practice, no source)."""

_HAIR = 1e-6
_HOLES = frozenset({"too_near", "seat", "hole"})


@dataclass(frozen=True, slots=True)
class Tried:
    """One attempt and what came of it.

    Args:
        attempt: The way.
        target: The block that it would give; None where no layout exists.
        found: What the screen shows; None without a target.
        reasons: What stands against it.
        easy: Whether the length also holds with all tolerances against it.
    """

    attempt: Attempt
    target: Plan | None
    found: Screen | None
    reasons: tuple[Reason, ...]
    easy: bool = False

    @property
    def feasible(self) -> bool:
        """True where nothing stands against it."""
        return self.target is not None and not self.reasons

    @property
    def miss(self) -> tuple[int, float]:
        """How far it is from being possible: number of reasons, then the sum of what is missing."""
        return len(self.reasons), math.fsum(reason.amount or 1.0 for reason in self.reasons)


def try_all(old: Plan, new: Plan) -> list[Tried]:
    """Return what was tried, in order; the last one is feasible where any is.

    The new plan as it is comes first, then the new spec sized on to the old block with less and less length, then the
    same with the motor turned.
    """
    done: list[Tried] = []
    failing = _failing(new)
    for attempt in (*_as_drawn(old, new), *_fitted(old, new)):
        done.append(_try(old, new, attempt, failing))
        if done[-1].feasible and (done[-1].easy or attempt.how == "as_drawn"):
            return done
    possible = [each for each in done if each.feasible]
    if possible:
        chosen = min(possible, key=_off_the_middle)
        return [*(each for each in done if each is not chosen), chosen]
    return [*done, *_with_turns(old, new, done, failing)]


def _off_the_middle(tried: Tried) -> float:
    """Return how far in mm the length lies off the middle of what is feasible: there the tolerances have most room."""
    target = tried.target
    if target is None:
        return math.inf
    return abs(target.number("length") - (target.number("length_min") + target.number("length_max")) / 2)


def _with_turns(old: Plan, new: Plan, done: Sequence[Tried], failing: frozenset[str]) -> Iterator[Tried]:
    """Yield the best ways with the motor turned, where only holes stand against them; ends at the first that works."""
    promising = [t for t in done if t.target is not None and all(map(_turning_helps, t.reasons))]
    ranked = sorted(promising, key=lambda t: (not t.easy, t.miss))[:3]
    for turn in turns(new) if ranked else ():
        for start in ranked:
            tried = _try(old, new, replace(start.attempt, turn=turn), failing)
            yield tried
            if tried.feasible:
                return


def _turning_helps(reason: Reason) -> bool:
    """Tell whether a reason is one of holes, which stand elsewhere on a motor that is turned."""
    return reason.id in _HOLES or reason.where.startswith("thin_wall") or reason.where == "motor_wall_size"


def best_of(done: Sequence[Tried]) -> Tried:
    """Return the feasible one, else the one that misses by the least.

    One sized on to the old block tells more than the new plan as it is, whose base screws stand elsewhere; a turned
    motor that does not help either tells less.
    """
    works = next((t for t in reversed(done) if t.feasible), None)
    return works or min(done, key=lambda t: (t.target is None, t.attempt.how != "fitted", t.attempt.turn != 0, t.miss))


def _as_drawn(old: Plan, new: Plan) -> Iterator[Attempt]:
    left = round(old.body.length - new.body.length, 9)
    yield Attempt("as_drawn", 0.0, 0.0, new.body.length)
    if left > _HAIR:
        yield Attempt("as_drawn", 0.0, left, new.body.length)


def _fitted(old: Plan, new: Plan) -> Iterator[Attempt]:
    """Yield ways with the window as it is, then with the motor wall thinned to what the new design has."""
    lying = list(_lying(old, new))
    yield from lying
    usual = new.number("motor_wall")
    if usual >= new.number("practice.wall_least"):
        yield from (replace(a, motor_wall=usual) for a in lying if usual < kept_motor_wall(old, a) - _HAIR)


def _lying(old: Plan, new: Plan) -> Iterator[Attempt]:
    """Yield lengths from the one that is there downwards; cut at the motor end, then at the bearing end."""
    least = new.number("practice.wall_least")
    for step in range(int(_DEEPEST / _STEP) + 1):
        cut = step * _STEP
        for shift in (0.0, cut) if cut else (0.0,):
            attempt = Attempt("fitted", 0.0, shift, round(old.body.length - cut, 6))
            if old.number("bearing_wall") - shift >= least and kept_motor_wall(old, attempt) >= least:
                yield attempt


def _try(old: Plan, new: Plan, attempt: Attempt, failing: frozenset[str]) -> Tried:
    try:
        target = fitted(old, new, attempt) if attempt.how == "fitted" else resized(new, attempt)
    except InfeasibleError as error:
        told = tuple(Reason("layout", c.title, c.deficit, "mm", "length") for c in error.conflicts)
        return Tried(attempt, None, None, told)
    except InputError as error:
        return Tried(attempt, None, None, tuple(Reason("layout", p.found, None, "mm", p.key) for p in error.problems))
    found = screen(old, target, attempt.shift)
    return Tried(attempt, target, found, (*found.reasons, *_checks(target, failing)), holds_with_tolerances(target))


def holds_with_tolerances(plan: Plan) -> bool:
    """Tell whether the length lies in the interval that is left after all tolerances."""
    low, high = plan.records["length_low"].value, plan.records["length_high"].value
    if not isinstance(low, (int, float)) or not isinstance(high, (int, float)):
        return False
    return low - _HAIR <= plan.number("length") <= high + _HAIR


def _failing(plan: Plan) -> frozenset[str]:
    """Return what fails in a plan whatever is done to the block."""
    return frozenset(finding.title for finding in check(plan) if finding.verdict == "fail")


def _checks(target: Plan, failing: frozenset[str]) -> Iterator[Reason]:
    """Yield the checks that fail in the target and not in the new plan as it is.

    Where a flange does not find its seat, that width or height is too small says the same once more.
    """
    failed = [each for each in check(target) if each.verdict == "fail" and each.title not in failing]
    unseated = any(each.id.endswith("_flange_seated") for each in failed)
    for finding in failed:
        if not (unseated and finding.id in ("width_size", "height_size")):
            text = finding.title
            missing = None
            if finding.value is not None and finding.limit is not None:
                text += f": {finding.value:g} against {finding.limit:g} {finding.unit}".rstrip()
                missing = abs(finding.limit - finding.value)
            yield Reason("check", f"{text}; {finding.explanation}", missing, finding.unit, finding.id)
