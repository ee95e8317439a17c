"""The axial layout of one block: its facts and bounds, wall thicknesses, length and coupling position."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass, replace

from blockgen.errors import InfeasibleError
from blockgen.record import Ledger
from blockgen.sizing.axial import Bound, Layout, conflicts, solve
from blockgen.sizing.cures import describe, find_cures
from blockgen.sizing.rounding import down
from blockgen.standards.iso2768 import general_tolerance

_FACTS = (
    "screw.journal_reach", "screw.journal_smooth_length", "motor.shaft_length", "motor.shaft_smooth_length",
    "coupling.length", "coupling.clearance", "coupling.clamp_position", "coupling.clamp_access_radius",
    "coupling.journal_grip_min", "coupling.motor_grip_min", "coupling.grip_max", "coupling.gap_min",
    "bearing.nut_reach", "motor.pilot_length",
)  # fmt: skip
# Lengths whose tolerance moves a bound; the coupling's grips and clearances are limits themselves.
_TOLERANCED = ("screw.journal_reach", "motor.shaft_length", "coupling.length", "bearing.nut_reach",
               "motor.pilot_length",
               "bearing_wall", "motor_wall")  # fmt: skip


Terms = tuple[tuple[str, float], ...]


@dataclass(frozen=True, slots=True)
class AxialTask:
    """One axial layout to solve: bounds, facts in mm, tolerances in mm, and the walls' range."""

    bounds: tuple[Bound, ...]
    facts: Mapping[str, float]
    tolerances: Mapping[str, float]
    floors: Mapping[str, float]

    def with_walls(self, bearing: float, motor: float) -> AxialTask:
        """Return the same task with other walls, mm."""
        return replace(self, facts={**self.facts, "bearing_wall": bearing, "motor_wall": motor})

    def nominal(self) -> Layout:
        """Solve with nominal values."""
        return solve(self.bounds, self.facts)

    def toleranced(self) -> Layout:
        """Solve with every bound tightened by the tolerances of its own terms."""
        return solve(self.bounds, self.facts, self.tolerances)

    def workable(self) -> bool:
        """True where a layout exists with tolerances."""
        return self.toleranced().feasible

    def shortfall(self) -> str:
        """Return in words what is missing in the worst case of the tolerances."""
        worst = max(conflicts(self.bounds, self.facts, self.tolerances), key=lambda cycle: cycle.deficit)
        what = " against ".join(bound.name for bound in worst.bounds)
        return f"no length is feasible in the worst case of the tolerances, {worst.deficit:.2f} mm missing: {what}"


def grip_bounds(ledger: Ledger) -> tuple[Bound, ...]:
    """Return the bounds by which both shafts sit deep enough in the hubs, not too deep, and do not touch.

    A smooth length that is only assumed moves with the length from which it was assumed.
    """
    journal, reach, length = "screw.journal_reach", "motor.shaft_length", "coupling.length"
    rough_journal: Terms = ((journal, 1), ("screw.journal_smooth_length", -1))
    if ledger["screw.journal_smooth_length"].origin == "assumed":
        rough_journal = (("bearing.nut_reach", 1),)
    rough_shaft: Terms = ((length, 1), (reach, 1), ("motor.shaft_smooth_length", -1))
    if ledger["motor.shaft_smooth_length"].origin == "assumed":
        rough_shaft = ((length, 1),)
    return (
        Bound("shallowest grip of the journal", "c_max", ((journal, 1), ("coupling.journal_grip_min", -1)),
              "the journal must sit deep enough in its hub"),
        Bound("deepest grip of the journal", "c_min", ((journal, 1), ("coupling.grip_max", -1)),
              "the journal must not sit deeper than its hub takes it"),
        Bound("smooth part of the journal", "c_min", rough_journal,
              "the hub must sit on the smooth part of the journal"),
        Bound("shallowest grip of the motor shaft", "d_max", ((length, 1), (reach, 1), ("coupling.motor_grip_min", -1)),
              "the motor shaft must sit deep enough in its hub"),
        Bound("deepest grip of the motor shaft", "d_min", ((length, 1), (reach, 1), ("coupling.grip_max", -1)),
              "the motor shaft must not sit deeper than its hub takes it"),
        Bound("smooth part of the motor shaft", "d_min", rough_shaft,
              "the hub must sit on the smooth part of the motor shaft"),
        Bound("gap between the shaft ends", "l_min", ((reach, 1), (journal, 1), ("coupling.gap_min", 1)),
              "the shaft ends must not touch"),
    )  # fmt: skip


def clearance_bounds() -> tuple[Bound, ...]:
    """Return the bounds by which the coupling stays clear of nut and pilot and its clamp screws can be reached."""
    clear, length = ("coupling.clearance", 1.0), ("coupling.length", 1.0)
    key, position = ("coupling.clamp_access_radius", 1.0), ("coupling.clamp_position", -1.0)
    return (
        Bound("coupling clear of the lock nut", "c_min", (("bearing.nut_reach", 1), clear),
              "the coupling must stay clear of the lock nut or seal"),
        Bound("coupling clear of the motor pilot", "d_min", (length, ("motor.pilot_length", 1), clear),
              "the coupling must stay clear of the motor pilot"),
        Bound("key to bearing-side clamp screw", "c_min", (("bearing_wall", 1), key, position),
              "the key must reach the bearing-side clamp screw inside the window", removable=True),
        Bound("key to motor-side clamp screw", "d_min", (length, position, ("motor_wall", 1), key),
              "the key must reach the motor-side clamp screw inside the window", removable=True),
    )  # fmt: skip


def _bore_bounds(ledger: Ledger) -> list[Bound]:
    needed = ledger.number("coupling.swing_diameter") + 2 * ledger.number("coupling.clearance")
    bounds = []
    if ledger.number("bearing_through_bore") < needed:
        terms: tuple[tuple[str, float], ...] = (("bearing_wall", 1.0), ("coupling.clearance", 1.0))
        words = "the bearing-side bore is smaller than the coupling's swing: the coupling stays in the window"
        bounds.append(Bound("coupling clear of bearing wall", "c_min", terms, words))
    if ledger.number("motor_through_bore") < needed:
        terms = (("coupling.length", 1.0), ("motor_wall", 1.0), ("coupling.clearance", 1.0))
        words = "the motor-side bore is smaller than the coupling's swing: the coupling stays in the window"
        bounds.append(Bound("coupling clear of motor wall", "d_min", terms, words))
    return bounds


def _length_bounds(ledger: Ledger) -> list[Bound]:
    walls = (("bearing_wall", 1.0), ("motor_wall", 1.0))
    bounds = [Bound("window length", "l_min", (*walls, ("least_window_length", 1.0)),
                    "both walls and the window between them")]  # fmt: skip
    if ledger.known("base.length_available"):
        words = "the block must not be longer than the length available"
        bounds.append(Bound("length available", "l_max", (("base.length_available", 1.0),), words))
    if ledger.known("block.window_length"):
        terms = (*walls, ("block.window_length", 1.0))
        bounds.append(Bound("given window length", "l_min", terms, "walls and the given window length"))
        bounds.append(Bound("given window length", "l_max", terms, "walls and the given window length"))
    return bounds


def axial_task(ledger: Ledger, floors: tuple[float, float], usual: tuple[float, float], window: float) -> AxialTask:
    """Return the task for a ledger.

    Args:
        ledger: Ledger with through-bores decided.
        floors: Least bearing and motor wall, mm.
        usual: Bearing and motor wall to start from, mm.
        window: Least window length, mm.
    """
    facts = {key: ledger.number(key) for key in _FACTS}
    facts |= {"bearing_wall": usual[0], "motor_wall": usual[1], "least_window_length": window}
    for key in ("base.length_available", "block.window_length"):
        if ledger.known(key):
            facts[key] = ledger.number(key)
    tolerances = {key: general_tolerance(facts[key], "m") for key in _TOLERANCED if facts[key] > 0}
    setting, length = ledger.number("practice.setting_tolerance"), ledger.number("block.length_tolerance")
    tolerances |= {"c": setting, "l": length, "d": setting + length}
    bounds = (*grip_bounds(ledger), *clearance_bounds(), *_bore_bounds(ledger), *_length_bounds(ledger))
    return AxialTask(bounds, facts, tolerances, {"bearing_wall": floors[0], "motor_wall": floors[1]})


def fit_walls(task: AxialTask, step: float) -> AxialTask:
    """Bring the walls down towards their floors as far as a layout with tolerances needs it, evenly and no further.

    Args:
        task: Task with the usual walls.
        step: Step of wall thicknesses, mm.

    Returns:
        The task with its walls; where nothing helps, with the walls at their floors.
    """
    if task.workable():
        return task
    floor = task.with_walls(task.floors["bearing_wall"], task.floors["motor_wall"])
    if not floor.workable():
        return task if task.nominal().feasible else floor
    low, high = 0.0, 1.0
    for _ in range(12):
        middle = (low + high) / 2
        low, high = (middle, high) if _between(task, middle, step).workable() else (low, middle)
    return _give_back(_between(task, low, step), task)


def _between(task: AxialTask, share: float, step: float) -> AxialTask:
    walls = []
    for key in ("bearing_wall", "motor_wall"):
        floor, usual = task.floors[key], task.facts[key]
        walls.append(max(floor, min(usual, down(floor + share * (usual - floor), step))))
    return task.with_walls(walls[0], walls[1])


def _give_back(fitted: AxialTask, usual: AxialTask) -> AxialTask:
    """Restore each wall to its usual thickness where the other one alone does it."""
    bearing, motor = fitted.facts["bearing_wall"], fitted.facts["motor_wall"]
    for walls in ((usual.facts["bearing_wall"], motor), (bearing, usual.facts["motor_wall"])):
        trial = fitted.with_walls(*walls)
        if trial.workable():
            return trial
    return fitted


def require_feasible(task: AxialTask, given_length: float | None, floors: Mapping[str, float]) -> Layout:
    """Return the nominal layout.

    Args:
        task: Task with its walls.
        floors: How thin each wall could be, mm, given or not; a cure goes no further.
        given_length: Block length that the spec gives, mm; None where the tool chooses.

    Raises:
        InfeasibleError: no length, or not the given one, satisfies every bound; with conflicts and verified cures.
    """
    layout = task.nominal()
    if layout.feasible and (given_length is None or layout.low - 1e-6 <= given_length <= layout.high + 1e-6):
        return layout
    bounds, facts = task.bounds, dict(task.facts)
    if given_length is not None and layout.feasible:
        terms, words = (("block.length", 1.0),), "the block length is given"
        bounds = (*bounds, Bound("given length", "l_min", terms, words), Bound("given length", "l_max", terms, words))
        facts["block.length"] = given_length
    found = conflicts(bounds, facts)
    raise InfeasibleError([describe(c, facts) for c in found], find_cures(bounds, facts, floors))
