"""Enters the axial layout: walls, feasible interval, length, coupling position, grips and gap."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import replace

from blockgen.record import Band, Ledger
from blockgen.sizing.axial import EPSILON, Bound, Layout
from blockgen.sizing.family import Member, as_mounted, enter_member, renamed, title_of
from blockgen.sizing.family_axial import Motor, SharedTask
from blockgen.sizing.layout import AxialTask, axial_task, fit_walls, require_feasible
from blockgen.sizing.mating import Flange
from blockgen.sizing.rounding import nearest_inside
from blockgen.sizing.seats import SeatThread
from blockgen.sizing.walls import decide_wall, wall_range
from blockgen.sizing.window import least_window_length

_SOURCE = "difference constraints over seat, coupling and motor seat; closed form"


def decide_axial(
    ledger: Ledger,
    bearing: tuple[Flange, SeatThread | None],
    motor: tuple[Flange, SeatThread | None],
    screw_wall: float,
    kin: Sequence[Member] = (),
) -> AxialTask:
    """Decide walls, length and coupling position.

    Args:
        ledger: Ledger with window width and through-bores.
        bearing: Bearing flange and its tapped holes.
        motor: Motor flange and its tapped holes; None for a tapped flange.
        screw_wall: End wall that base screws in it need, mm; 0 where they stand in side walls.
        kin: The further motors of a family.

    Returns:
        The solved task, for checks and reports.

    Raises:
        InfeasibleError: no layout exists.
    """
    ranges, own_floors = _wall_ranges(ledger, (bearing, motor), screw_wall, kin)
    thinnest = {"bearing_wall": ranges[0][0], "motor_wall": ranges[1][0]}
    for i, end in enumerate(("bearing", "motor")):
        if ledger.known(f"block.{end}_wall"):
            value = ledger.number(f"block.{end}_wall")
            ledger.decide(f"{end}_wall_floor", ranges[i][0], "mm", "floor of a given wall")
            ranges[i] = (value, value)
    floors, usual = (ranges[0][0], ranges[1][0]), (ranges[0][1], ranges[1][1])
    task = axial_task(ledger, floors, usual, least_window_length(ledger, motor[0], usual[1]))
    task = _shared(ledger, task, kin, (floors, usual), own_floors) if kin else task
    task = fit_walls(task, ledger.number("practice.wall_step"))
    given = ledger.number("block.length") if ledger.known("block.length") else None
    layout = task.require(given, thinnest) if isinstance(task, SharedTask) else require_feasible(task, given, thinnest)
    for i, end in enumerate(("bearing", "motor")):
        floor = ledger.number_or(f"{end}_wall_floor", ranges[i][0])
        decide_wall(ledger, end, task.facts[f"{end}_wall"], floor, ranges[i][1])
    tight = task.toleranced()
    _enter_interval(ledger, layout, task, tight)
    _enter_length(ledger, layout, tight, given)
    enter_coupling(ledger, layout, tight)
    if isinstance(task, SharedTask):
        _enter_each_motor(ledger, task, kin)
    return task


def _wall_ranges(
    ledger: Ledger, ends: Sequence[tuple[Flange, SeatThread | None]], screw_wall: float, kin: Sequence[Member]
) -> tuple[list[tuple[float, float]], list[float]]:
    """Return floor and usual thickness of both walls in mm, and the floor of the motor wall for each motor alone."""
    bearing, motor = (wall_range(ledger, flange, seat, screw_wall) for flange, seat in ends)
    asked = [motor, *(wall_range(as_mounted(ledger, m), m.flange, m.seat, screw_wall) for m in kin)]
    floors = [floor for floor, _ in asked]
    return [bearing, (max(floors), max(usual for _, usual in asked))], floors


def _enter_each_motor(ledger: Ledger, task: SharedTask, kin: Sequence[Member]) -> None:
    """Enter what each motor of a family alone would allow, and where the coupling sits with each further one."""
    _enter_alone(ledger, task)
    for member in kin:
        enter_member(ledger, replace(member, ledger=_coupling_of(ledger, member, task)))


def _shared(
    ledger: Ledger,
    task: AxialTask,
    kin: Sequence[Member],
    walls: tuple[tuple[float, float], tuple[float, float]],
    floors: Sequence[float],
) -> SharedTask:
    """Return the layout of the first motor together with those of the further ones.

    Args:
        ledger: Ledger with window width and through-bores.
        task: The layout of the first motor.
        kin: The further motors.
        walls: Floors and usual thickness of bearing and motor wall, mm.
        floors: How thin the motor wall could be for each motor alone, mm.
    """
    others = []
    for member in kin:
        seen = as_mounted(ledger, member)
        others.append((member.entry, axial_task(seen, *walls, least_window_length(seen, member.flange, walls[1][1]))))
    records = ledger.frozen()
    tables = ("motor", *(member.entry for member in kin))
    motors = (Motor(entry, title_of(records, entry), least) for entry, least in zip(tables, floors, strict=True))
    return SharedTask(task.bounds, task.facts, task.tolerances, task.floors, tuple(others), tuple(motors))


def _enter_alone(ledger: Ledger, task: SharedTask) -> None:
    """Enter the lengths that each motor alone would allow with these walls, mm."""
    for entry, alone in task.each():
        layout = alone.nominal()
        for key, value, bounds in (
            ("motor_length_min", layout.low, layout.low_bounds),
            ("motor_length_max", layout.high, layout.high_bounds),
        ):
            rule = renamed(f"{_formula(bounds)}; of this motor alone, bound by {_words(bounds)}", entry)
            using = tuple(renamed(name, entry) for name in _keys(bounds))
            finite = round(value, 6) if abs(value) != float("inf") else None
            ledger.decide(renamed(key, entry), finite, "mm", rule, using, _SOURCE)


def _coupling_of(ledger: Ledger, member: Member, task: SharedTask) -> Ledger:
    """Return the block with a further motor mounted and the coupling set for it."""
    seen, alone = as_mounted(ledger, member), dict(task.each())[member.entry]
    enter_coupling(seen, alone.nominal(), alone.toleranced())
    return seen


def _words(bounds: tuple[Bound, ...]) -> str:
    return " together with ".join(bound.name for bound in bounds)


def _formula(bounds: tuple[Bound, ...]) -> str:
    """Return the sum of some bounds as a formula of their facts."""
    factors: dict[str, float] = {}
    for bound in bounds:
        for key, factor in bound.terms:
            factors[key] = factors.get(key, 0.0) + factor
    signed = [
        (f"{'-' if f < 0 else '+'} ", "" if abs(f) == 1 else f"{abs(f):g} x ", key) for key, f in factors.items() if f
    ]
    text = " ".join(sign + factor + key for sign, factor, key in sorted(signed, key=lambda part: part[0] == "- "))
    return text.removeprefix("+ ")


def _keys(bounds: tuple[Bound, ...]) -> tuple[str, ...]:
    return tuple(dict.fromkeys(key for bound in bounds for key, _ in bound.terms))


def _enter_interval(ledger: Ledger, layout: Layout, task: AxialTask, tight: Layout) -> None:
    shortfall = "" if tight.feasible else task.shortfall()
    for key, value, bounds in (
        ("length_min", layout.low, layout.low_bounds),
        ("length_max", layout.high, layout.high_bounds),
        ("length_low", tight.low, tight.low_bounds),
        ("length_high", tight.high, tight.high_bounds),
    ):
        nominal = layout.low if key == "length_low" else layout.high
        loss = (
            ""
            if key in {"length_min", "length_max"}
            else f" {'+' if value > nominal else '-'} {abs(value - nominal):.3g}"
        )
        why = "" if not loss else ", worst case of the tolerances"
        rule = f"{_formula(bounds)}{loss}; bound by {_words(bounds)}{why}"
        finite = round(value, 6) if abs(value) != float("inf") else None
        if key in {"length_low", "length_high"} and not tight.feasible:
            finite, rule = None, shortfall
        ledger.decide(key, finite, "mm", rule, _keys(bounds), _SOURCE)


def _enter_length(ledger: Ledger, layout: Layout, tight: Layout, given: float | None) -> None:
    using = ("length_low", "length_high", "length_min", "length_max", "practice.length_step")
    tolerance = ledger.number("block.length_tolerance")
    band = Band(tolerance, -tolerance)
    if given is not None:
        rule = f"given; feasible {layout.low:.2f} to {layout.high:.2f}"
        ledger.decide(
            "length", given, "mm", rule, ("block.length", *using), origin=ledger["block.length"].origin, band=band
        )
        return
    low, high = (tight.low, tight.high) if tight.feasible else (layout.low, layout.high)
    steps = (ledger.number("practice.length_step"), ledger.number("practice.length_fine_step"))
    what = "(length_low + length_high) / 2" if tight.feasible else "(length_min + length_max) / 2"
    rule = f"{what}; middle of the interval, to {steps[0]:g}, to {steps[1]:g} where that leaves it"
    ledger.decide("length", round(nearest_inside(low, high, steps), 6), "mm", rule, using, _SOURCE, band=band)


def enter_coupling(ledger: Ledger, layout: Layout, tight: Layout) -> None:
    """Enter where the coupling sits, both grips and the gap, mm."""
    length = ledger.number("length")
    low, high = layout.coupling_range(length)
    inner = tight.coupling_range(length)
    if inner[0] <= inner[1] + EPSILON:
        low, high = min(inner), max(inner)
    position = round(nearest_inside(low, high, (0.5, 0.1)), 6)
    for key, value, rule in (
        ("coupling_low", low, "greater of what the bearing side asks and the length less what the motor side allows"),
        ("coupling_high", high, "lesser of what the bearing side allows and the length less what the motor side asks"),
    ):
        ledger.decide(key, round(value, 6), "mm", rule, ("length", "length_min", "length_max"), _SOURCE)
    rule = "(coupling_low + coupling_high) / 2; middle of what this length allows, to 0.5 or 0.1; the fitter sets it"
    setting = ledger.number("practice.setting_tolerance")
    using: tuple[str, ...] = ("coupling_low", "coupling_high", "practice.setting_tolerance")
    ledger.decide("coupling_position", position, "mm", rule, using, _SOURCE, band=Band(setting, -setting))
    journal, reach = ledger.number("screw.journal_reach"), ledger.number("motor.shaft_length")
    end = position + ledger.number("coupling.length")
    for key, value, rule, using in (
        ("journal_grip", journal - position, "screw.journal_reach - coupling_position",
         ("screw.journal_reach", "coupling_position")),
        ("motor_grip", end - (length - reach), "coupling_position + coupling.length - (length - motor.shaft_length)",
         ("coupling_position", "coupling.length", "length", "motor.shaft_length")),
        ("shaft_gap", length - reach - journal, "length - motor.shaft_length - screw.journal_reach",
         ("length", "motor.shaft_length", "screw.journal_reach")),
    ):  # fmt: skip
        ledger.decide(key, round(value, 6), "mm", rule, using, "geometry along the shaft")
