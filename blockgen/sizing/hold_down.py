"""Every size of one block with base screws that hold it down: stronger ones where the joint would slip or gape."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass

from blockgen.errors import InfeasibleError
from blockgen.record import Ledger
from blockgen.sizing.base_choice import Choice, choices, usual_screw
from blockgen.sizing.base_joint import base_face, base_opening, base_slip, sure_of
from blockgen.sizing.base_pattern import Positions
from blockgen.sizing.family import Member, as_mounted
from blockgen.sizing.features import relief_feature
from blockgen.sizing.joint import screw_preload, sure_preload
from blockgen.sizing.rounds import Parts, decide_sizes
from blockgen.standards.threads import thread

Sized = tuple[Ledger, Parts, Positions]
# A larger screw stands a little elsewhere: what is a hair too weak by proportion is tried all the same.
_ALLOWANCE = 0.95


@dataclass(frozen=True, slots=True)
class Held:
    """How well the base joint of a sized block holds: safety over what is asked for, of slip and of opening."""

    slip: float
    opening: float
    complete: bool

    @property
    def use(self) -> float:
        """The lesser of both; 1 is just enough."""
        return min(self.slip, self.opening)

    @property
    def enough(self) -> bool:
        """True where both hold and all screws found a place."""
        return self.complete and self.use >= 1


def decide_held(start: Ledger, kin: Sequence[Member] = ()) -> Sized:
    """Decide every size; again with larger or more base screws where the joint would not hold.

    Where none of the choices holds, the first one stays and the checks tell what is missing. ``kin`` are the further
    motors of a family; the block holds with each of them.
    """
    result = decide_sizes(start, kin)
    if not result[0].known("slip_safety_wanted"):
        return result
    held = _held(result)
    for choice in _stronger(result, held) if not held.enough else ():
        trial = _tried(start, kin, choice, _reason(result, held))
        if trial is not None and _held(trial).enough:
            return trial
    return result if held.complete else _with_usual_count(start, kin, result)


def _held(sized: Sized) -> Held:
    ledger, parts, positions = sized
    least = sure_preload(ledger, screw_preload(ledger, parts.screw.thread, ledger.text("base.property_class")))
    relief, safeties = _relief(sized), []
    for mounted in (ledger, *(as_mounted(ledger, member) for member in parts.others)):
        records = mounted.frozen()
        sure, face = sure_of(records, least), base_face(records, relief)
        slip = base_slip(records, positions, sure) / ledger.number("slip_safety_wanted")
        safeties.append(
            (slip, base_opening(records, positions, sure, face) / ledger.number("limits.separation_safety"))
        )
    complete = len(positions) == int(ledger.number("base_screw_count"))
    return Held(min(slip for slip, _ in safeties), min(opening for _, opening in safeties), complete)


def _relief(sized: Sized) -> tuple[float, float] | None:
    """Return start and end of the relief along x in mm, or None without one."""
    ledger, parts, positions = sized
    if ledger.number("block.relief") <= 0:
        return None
    cut = relief_feature(ledger.copy(), parts.screw, positions)
    return None if cut is None or cut.pocket is None else (cut.pocket.low[0], cut.pocket.high[0])


def _stronger(sized: Sized, held: Held) -> list[Choice]:
    """Return the choices whose preload would do, by proportion."""
    ledger = sized[0]
    grade, placed = ledger.text("base.property_class"), len(sized[2])

    def clamp(choice: Choice) -> float:
        return choice[1] * screw_preload(ledger, thread(choice[0]), grade)

    now = ledger.text("base_screw"), int(ledger.number("base_screw_count"))
    least = _ALLOWANCE * clamp((now[0], placed)) / held.use if held.use > 0 else float("inf")
    return [choice for choice in choices(ledger) if choice != now and clamp(choice) >= least]


def _reason(sized: Sized, held: Held) -> str:
    ledger, count = sized[0], len(sized[2])
    usual = usual_screw(ledger)
    slip, opening = ledger.number("slip_safety_wanted"), ledger.number("limits.separation_safety")
    what = f"slip, {held.slip * slip:.2f} < {slip:g}"
    if held.opening < held.slip:
        what = f"let the joint gape, {held.opening * opening:.2f} < {opening:g}"
    return f"{count} x {ledger.text('base_screw')} would {what}; usual for a flange of {usual[0]:g} is {usual[1]}"


def _tried(start: Ledger, kin: Sequence[Member], choice: Choice, why: str) -> Sized | None:
    """Return every size with a choice of base screws, or None where no layout exists with it."""
    trial = start.copy()
    text = f"{choice[1]} x {choice[0]}"
    trial.decide("base_screw_choice", text, "", why, ("base.screw_count", "screw.thrust"))
    trial.remark(f"The base is held by {text}: {why}.")
    try:
        return decide_sizes(trial, kin)
    except InfeasibleError:
        return None


def _with_usual_count(start: Ledger, kin: Sequence[Member], sized: Sized) -> Sized:
    """Return the block with the usual number of screws, since more of them find no place."""
    ledger = sized[0]
    count = int(ledger.number("base.screw_count"))
    if int(ledger.number("base_screw_count")) == count:
        return sized
    why = f"{ledger.text('base_screw_count')} screws find no place in the length"
    return _tried(start, kin, (ledger.text("base_screw"), count), why) or sized
