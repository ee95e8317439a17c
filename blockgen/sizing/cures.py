"""When no layout exists: the irreducible conflict in words, and the smallest single change that cures it."""

from __future__ import annotations

import math
from collections.abc import Mapping, Sequence
from dataclasses import dataclass

from blockgen.errors import Conflict, Cure
from blockgen.sizing.axial import EPSILON, Bound, Cycle, conflicts, slope, solve


@dataclass(frozen=True, slots=True)
class Remedy:
    """One fact that a designer may change.

    Args:
        key: Key of the fact.
        kind: Plain name of the change.
        rank: Designer's pain, 1 is the least.
        least: Least value that makes sense, mm.
        most: Greatest value that makes sense, mm.
    """

    key: str
    kind: str
    rank: int
    least: float = 0.0
    most: float = math.inf


# Ranked by the designer's pain (common practice, no source).
REMEDIES: tuple[Remedy, ...] = (
    Remedy("block.length", "let the tool choose the length, or give another one", 1),
    Remedy("block.window_length", "let the tool choose the window length, or give another one", 1),
    Remedy("bearing_wall", "thinner or recessed bearing wall", 1),
    Remedy("motor_wall", "thinner or recessed motor wall", 1),
    Remedy("base.length_available", "more length for the block", 3),
    Remedy("coupling.length", "{longer} coupling", 4),
    Remedy("coupling.clamp_position", "coupling with its clamp screws elsewhere on the hub", 4),
    Remedy("coupling.grip_max", "coupling whose hubs take the shafts deeper", 4),
    Remedy("coupling.journal_grip_min", "coupling whose maker allows less grip on the journal", 6),
    Remedy("coupling.motor_grip_min", "coupling whose maker allows less grip on the motor shaft", 6),
    Remedy("motor.shaft_length", "{longer} motor shaft", 5),
    Remedy("motor.shaft_smooth_length", "motor shaft smooth over more of its length", 5),
    Remedy("screw.journal_reach", "journal re-machined {longer}", 6),
    Remedy("screw.journal_smooth_length", "journal smooth over more of its length", 6),
    Remedy("bearing.nut_reach", "turned bearing unit or flatter lock nut", 7),
)
# Facts that the spec calls by another name.
_SPEC_KEYS = {
    "bearing_wall": "block.bearing_wall",
    "motor_wall": "block.motor_wall",
    "coupling.journal_grip_min": "coupling.grip_min",
    "coupling.motor_grip_min": "coupling.grip_min",
}
ACCESS_RANK = 8
_DIGITS = 3
_ROUNDS = 8


def describe(cycle: Cycle, facts: Mapping[str, float]) -> Conflict:
    """Return a conflict in words with the numbers of each fact."""
    lines = []
    for bound in cycle.bounds:
        numbers = ", ".join(f"{key} = {facts[key]:g} mm" for key, _ in bound.terms)
        lines.append(f"{bound.words} ({numbers})" if numbers else bound.words)
    names = " against ".join(bound.name for bound in cycle.bounds)
    keys = dict.fromkeys(key for bound in cycle.bounds for key, _ in bound.terms)
    return Conflict(f"{names}: {cycle.deficit:.2f} mm missing", round(cycle.deficit, 6), tuple(lines), tuple(keys))


def find_cures(bounds: Sequence[Bound], facts: Mapping[str, float], floors: Mapping[str, float]) -> tuple[Cure, ...]:
    """Return every single change that makes the layout feasible, the least painful first.

    Args:
        bounds: All bounds of the layout.
        facts: Facts in mm by key.
        floors: Least allowed value in mm for facts that the tool had already brought down, such as sized walls.

    Returns:
        Cures, each verified by solving the changed layout again.
    """
    cures = [_change(remedy, bounds, facts, floors) for remedy in REMEDIES if remedy.key in facts]
    cures.append(_access_hole(bounds, facts))
    found = [cure for cure in cures if cure is not None]
    if not found:
        found = [cure for cure in (_several(bounds, facts, floors),) if cure is not None]
    return tuple(sorted(found, key=lambda c: (c.rank, effort(c))))


def _several(bounds: Sequence[Bound], facts: Mapping[str, float], floors: Mapping[str, float]) -> Cure | None:
    """Return several changes together where no single one is enough: for each conflict its least painful one."""
    trial, changes = dict(facts), list[Cure]()
    for _ in range(_ROUNDS):
        left = conflicts(bounds, trial)
        if not left:
            text = "; and ".join(cure.text for cure in changes)
            rank = max(cure.rank for cure in changes)
            together = tuple(change for cure in changes for change in cure.changes)
            return Cure("", "several changes together", None, None, "mm", text, rank, verified=True, changes=together)
        alone = left[0].bounds
        tried = [(remedy.key, _change(remedy, alone, trial, floors)) for remedy in REMEDIES if remedy.key in trial]
        usable = [(key, cure) for key, cure in tried if cure is not None and cure.after is not None]
        if not usable:
            return None
        key, best = min(usable, key=lambda pair: (pair[1].rank, effort(pair[1])))
        trial[key] = best.after or 0.0
        changes.append(best)
    return None


def effort(cure: Cure) -> float:
    """Return by how many mm a cure changes its fact; 0 where it is no number."""
    return 0.0 if cure.before is None or cure.after is None else abs(cure.after - cure.before)


def _change(
    remedy: Remedy, bounds: Sequence[Bound], facts: Mapping[str, float], floors: Mapping[str, float]
) -> Cure | None:
    value = _least_change(remedy.key, bounds, facts)
    least = floors.get(remedy.key, remedy.least)
    if value is None or not least - EPSILON <= value <= remedy.most:
        return None
    before, key = facts[remedy.key], _SPEC_KEYS.get(remedy.key, remedy.key)
    kind = remedy.kind.format(longer="longer" if value > before else "shorter")
    text = f"{kind}: {key} {before:g} mm -> {value:g} mm ({value - before:+.3g} mm)"
    return Cure(key, kind, before, value, "mm", text, remedy.rank, verified=True, changes=((key, value),))


def _least_change(key: str, bounds: Sequence[Bound], facts: Mapping[str, float]) -> float | None:
    """Return the nearest value of one fact at which the layout is feasible, or None.

    A cycle's deficit over its slope is a lower bound on the change; a second cycle may remain, so the walk goes on
    in the same direction until nothing is missing.
    """
    trial, direction = dict(facts), 0.0
    for _ in range(_ROUNDS):
        steps = [_step(cycle, key) for cycle in conflicts(bounds, trial)]
        if not steps:
            return trial[key] if trial[key] != facts[key] else None
        moves = [s for s in steps if s is not None and s * direction >= 0]
        if len(moves) < len(steps):
            return None
        step = max(moves, key=abs)
        direction = math.copysign(1.0, step)
        trial[key] = _outward(trial[key] + step, direction)
    return None


def _step(cycle: Cycle, key: str) -> float | None:
    rate = slope(cycle, key)
    return None if abs(rate) < EPSILON else -cycle.deficit / rate


def _outward(value: float, direction: float) -> float:
    """Round to a thousandth away from the conflict, so that rounding cannot bring it back."""
    scale = 10.0**_DIGITS
    rounded = math.ceil(value * scale - EPSILON) if direction > 0 else math.floor(value * scale + EPSILON)
    return rounded / scale


def _access_hole(bounds: Sequence[Bound], facts: Mapping[str, float]) -> Cure | None:
    """Try the layout without the bounds that stand for a key in the window."""
    kept = [bound for bound in bounds if not bound.removable]
    if len(kept) == len(bounds) or not solve(kept, facts).feasible:
        return None
    kind = "radial access hole to the clamp screw through the wall"
    text = f"{kind}; a hole of your own, this version does not model it"
    return Cure("", kind, None, None, "mm", text, ACCESS_RANK, verified=False)
