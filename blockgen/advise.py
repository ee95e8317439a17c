"""What would make a block stiffer or lighter: a few single changes, each sized, checked and solved like the block."""

from __future__ import annotations

import math
from collections.abc import Callable, Iterator, Mapping, Sequence
from dataclasses import dataclass, replace
from typing import TYPE_CHECKING

from blockgen.checks import check
from blockgen.errors import InfeasibleError, InputError, KernelError
from blockgen.mechanics.volume import reference_volume
from blockgen.plan import Plan
from blockgen.record import Record, Value
from blockgen.sizing.size import size
from blockgen.spec.load import Spec

if TYPE_CHECKING:
    from blockgen.evidence.stiffness.answers import Figures, Raw
    from blockgen.evidence.stiffness.parallel import Pair

NOISE = 0.03
"""Differences smaller than this may come from the mesh: one coarse mesh serves each change, and what meshes of the same
fineness lack is much alike."""

_CUBIC_METRES = 1e-9
_SHOWN = 5
_STEP = 4.0  # mm by which a wall is made thicker or thinner
_SPREADS = (0.85, 1.08)  # base screws nearer together, further apart along x


@dataclass(frozen=True, slots=True)
class Change:
    """A change of the spec: in words, and its keys with their new values."""

    words: str
    values: Mapping[str, tuple[Value, str]]


@dataclass(frozen=True, slots=True)
class Worth:
    """What a block is worth on one coarse mesh, at the worse of the supports held under the heads and bonded.

    Args:
        stiffness: Axial stiffness at the bearing seat, N/um.
        slope: Greatest slope between the bores' axes, rad; of 1 kN of thrust where no load is given.
        frequency: First frequency of the motor, Hz; None without its mass.
        mass: Mass of the block, kg.
        unknowns: Unknowns of the mesh.
        band: Half the error band over the value, the widest of stiffness, slope and frequency.
    """

    stiffness: float
    slope: float
    frequency: float | None
    mass: float
    unknowns: int = 0
    band: float = 0.0


@dataclass(frozen=True, slots=True)
class Advice:
    """A change and what it does.

    Args:
        change: The change.
        worth: The block with it.
        before: The block without it.
        warnings: Titles of checks that warn or are open with it and did not before.
    """

    change: Change
    worth: Worth
    before: Worth
    warnings: tuple[str, ...]

    @property
    def gains(self) -> tuple[float, float, float]:
        """Share gained in stiffness, in tilt (less of it) and in frequency."""
        now, old = self.worth, self.before
        higher = (now.frequency or 0.0) / old.frequency - 1 if old.frequency else 0.0
        tilt = 1 - now.slope / old.slope if old.slope else 0.0
        return now.stiffness / old.stiffness - 1, tilt, higher

    @property
    def heavier(self) -> float:
        """Share by which the mass grows; negative where it shrinks."""
        return self.worth.mass / self.before.mass - 1


def advise(spec: Spec, plan: Plan, told: Callable[[str], None] | None = None) -> tuple[Advice, ...]:
    """Return the few changes with the most stiffness or the most mass for their price, the best first.

    Args:
        spec: The spec of the block.
        plan: The block as it is.
        told: Called with a few words as each change begins.

    Raises:
        MachineError: the finite element library is not installed.
    """
    from blockgen.evidence.stiffness.parallel import two_processes

    with two_processes() as pair:
        return tuple(chosen(_tried_changes(pair, spec, plan, told or (lambda _: None))))


def _tried_changes(pair: Pair, spec: Spec, plan: Plan, tell: Callable[[str], None]) -> list[Advice]:
    """Return every change that breaks no check, with what it does."""
    tell("advice, the block as it is")
    before, known = worth_of(pair, plan), _verdicts(plan)
    found = []
    for change in changes(plan):
        tell(f"advice, {change.words}")
        other = _sized(spec, change)
        verdicts = {} if other is None else _verdicts(other)
        if other is None or any(v == "fail" and known.get(title) != "fail" for title, v in verdicts.items()):
            continue
        new = tuple(t for t, v in verdicts.items() if v == "warn" and known.get(t) == "pass")
        worth = _tried(pair, other)
        if worth is not None:
            found.append(Advice(change, worth, before, new))
    return found


def changes(plan: Plan) -> Iterator[Change]:
    """Yield single changes of walls, window, height and base screws."""
    for name, words in (("bearing_wall", "bearing wall"), ("motor_wall", "motor wall")):
        for step in (_STEP, -_STEP):
            value = plan.number(name) + step
            yield Change(f"{words} {plan.number(name):g} -> {value:g} mm", {f"block.{name}": (value, "mm")})
    for step in (2 * _STEP, -2 * _STEP):
        for name in ("width", "height"):
            value = plan.number(name) + step
            yield Change(f"{name} {plan.number(name):g} -> {value:g} mm", {f"block.{name}": (value, "mm")})
    if plan.text("block.window_axis") == "z" and plan.number("block.window_floor") <= 0:
        yield Change("window not cut through, floor 12 mm", {"block.window_floor": (12.0, "mm")})
    yield from _screw_changes(plan)


def _screw_changes(plan: Plan) -> Iterator[Change]:
    value = plan.records["base_pattern"].value
    places = [p for p in value if isinstance(p, tuple)] if isinstance(value, tuple) else []
    middle = math.fsum(float(x) for x, _ in places) / max(len(places), 1)
    for spread in _SPREADS:
        pairs = tuple((round(middle + (float(x) - middle) * spread, 2), float(y)) for x, y in places)
        words = "nearer together" if spread < 1 else "further apart"
        yield Change(f"base screws {words} along x, {spread:g} times", {"base.hole_positions": (pairs, "mm")})
    if len(places) == 4:
        yield Change("six base screws instead of four", {"base.screw_count": (6, "")})


def _sized(spec: Spec, change: Change) -> Plan | None:
    """Return the plan with a change; None where no block can exist with it."""
    varied = {
        key: Record(key, value, unit, "given", "varied for advice", {}, "advice")
        for key, (value, unit) in change.values.items()
    }
    try:
        return size(replace(spec, records={**spec.records, **varied}))
    except (InfeasibleError, InputError):
        return None


def _verdicts(plan: Plan) -> dict[str, str]:
    return {finding.title: finding.verdict for finding in check(plan)}


def _tried(pair: Pair, plan: Plan) -> Worth | None:
    try:
        return worth_of(pair, plan)
    except KernelError:
        return None


def worth_of(pair: Pair, plan: Plan) -> Worth:
    """Return what a block is worth on the coarsest mesh, flanges free."""
    from blockgen.evidence.stiffness.loads import UNITS, Case
    from blockgen.evidence.stiffness.run import task_of
    from blockgen.evidence.stiffness.solver import Step
    from blockgen.geometry.analysis import analysis_shape

    shape = analysis_shape(plan)
    task = task_of(plan, shape.brep, shape.faces)
    task = replace(task, kinds=tuple(kind for kind in task.kinds if kind[1] == "free"))
    if not any(any(case.factors) for case in task.cases):
        task = replace(task, cases=(Case("1 kN", 1000.0, (1000.0, *(0.0,) * (len(UNITS) - 1))),))
    pair.give(task)
    used, raws = pair.step(Step((), tuple(range(len(task.kinds)))))
    mass = reference_volume(plan) * _CUBIC_METRES * plan.material_density
    return _worst(tuple(raws.values()), mass, used.unknowns)


def _worst(raws: Sequence[Raw], mass: float, unknowns: int) -> Worth:
    """Return the worst of all supports, with what the mesh lacks put right."""
    (stiffness, slope, hertz), plain = _ends([raw.mended for raw in raws]), _ends([raw.plain for raw in raws])
    off = [abs(a / b - 1) for a, b in zip(plain, (stiffness, slope, hertz), strict=True) if a and b]
    return Worth(stiffness, slope or 0.0, hertz, mass, unknowns, max(off))


def _ends(figures: Sequence[Figures]) -> tuple[float, float | None, float | None]:
    """Return least stiffness in N/um, greatest slope in rad and lowest frequency in Hz."""
    slope = max(math.hypot(*pair) for found in figures for pair in found.slopes.tolist())
    hertz = min((float(found.frequencies[0]) for found in figures if len(found.frequencies)), default=None)
    return 1e-3 / max(found.compliance for found in figures), slope, hertz


def chosen(found: Sequence[Advice]) -> list[Advice]:
    """Return the few that are worth their price: the most gain for each share of mass, then the most mass saved.

    A change counts where it gains more than the mesh may feign in stiffness, tilt or frequency and loses in none, or
    where it saves mass and loses nothing.
    """
    kept = [advice for advice in found if min(advice.gains) > -NOISE]
    stiffer = [advice for advice in kept if max(advice.gains) > NOISE]
    lighter = [advice for advice in kept if advice not in stiffer and advice.heavier < -0.5 * NOISE]
    stiffer.sort(key=lambda advice: -max(advice.gains) / max(advice.heavier, 0.01))
    lighter.sort(key=lambda advice: advice.heavier)
    return [*stiffer[: _SHOWN - min(2, len(lighter))], *lighter[:2]][:_SHOWN]
