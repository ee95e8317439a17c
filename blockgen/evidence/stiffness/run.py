"""From a plan and its analysis solid to the evidence: mesh, solve, refine where it counts until the band is met."""

from __future__ import annotations

import math
from collections.abc import Callable, Mapping, Sequence
from dataclasses import dataclass
from typing import TYPE_CHECKING, Any

from blockgen.evidence.stiffness.answers import Raw, Task, kinds_of
from blockgen.evidence.stiffness.envelope import End, greatest_slope, judged
from blockgen.evidence.stiffness.estimate import Estimate, banded, estimate, rounded
from blockgen.evidence.stiffness.frequencies import motor_mass
from blockgen.evidence.stiffness.loads import cases_of
from blockgen.evidence.stiffness.parallel import Pair, two_processes
from blockgen.evidence.stiffness.result import Across, CaseResult, MeshUsed, Stiffness, Variant
from blockgen.evidence.stiffness.solver import Step, Wanted
from blockgen.evidence.stiffness.subject import subject_of
from blockgen.evidence.stiffness.supports import supports_of
from blockgen.plan import Plan

if TYPE_CHECKING:
    from blockgen.evidence.stiffness.rigid import Array

BAND = 0.05
"""Half the error band over the value that is asked for where nothing else is said."""

UNKNOWNS_MOST = 150_000
"""No mesh finer than this is made: with it both processes together take about 3 GB."""

_GROWTH = 2.2  # unknowns of a mesh over those of the one before, at the most
_BLAMED = 0.35  # the elements that lack this share of what is lacking are cut ..
_CUT = (0.02, 0.045)  # .. but between these shares of all: their neighbours are cut with them

Told = Callable[[str], None]
Solid = Callable[[], tuple[bytes, tuple[str, ...]]]


@dataclass(frozen=True, slots=True)
class Found:
    """Answers for one kind: of the mesh on which it was solved last, the number of that mesh, and those before."""

    raw: Raw
    mesh: int
    before: Raw | None = None


@dataclass(frozen=True, slots=True)
class State:
    """What has been found: the meshes from coarse to fine, and the answers by the place of the kind in the task."""

    meshes: tuple[MeshUsed, ...]
    found: Mapping[int, Found]


def stiffness(plan: Plan, solid: Solid, band: float = BAND, told: Told | None = None) -> Stiffness:
    """Return the stiffness of a block.

    Args:
        plan: What was decided.
        solid: Makes its analysis solid, ``geometry.analysis``, and the ids of its faces, while the solvers start.
        band: Half the error band over the value that is asked of stiffness, slope and frequency where they are judged.
        told: Called with a few words as each step begins.

    Raises:
        MachineError: the finite element library is not installed.
        KernelError: the solid cannot be made or meshed.
    """
    with two_processes() as pair:
        task = task_of(plan, *solid())
        pair.give(task)
        state = _refined(pair, task, band, told or (lambda _: None))
        return _evidence(pair, task, state, band)


def task_of(plan: Plan, brep: bytes, faces: tuple[str, ...]) -> Task:
    """Return what is to be solved for a plan and its analysis solid."""
    subject = subject_of(plan, brep, faces)
    return Task(subject, kinds_of(supports_of(plan, subject)), cases_of(plan), motor_mass(plan))


def _refined(pair: Pair, task: Task, band: float, tell: Told) -> State:
    """Solve all kinds on a coarse mesh, then those that decide on finer ones until the band is met."""
    state = State((), {})
    step: Step | None = Step((), tuple(range(len(task.kinds))))
    while step is not None:
        number = len(state.meshes) + bool(step.marked or not state.meshes)
        tell(f"stiffness, mesh {number}, {len(step.kinds)} of {len(task.kinds)} supports and flanges")
        state = _solved(pair, state, step)
        step = next_step(task, state, band)
    return state


def _solved(pair: Pair, state: State, step: Step) -> State:
    used, raws = pair.step(step)
    meshes = (*state.meshes, used) if step.marked or not state.meshes else state.meshes
    new = {kind: Found(raw, len(meshes) - 1, _raw(state.found.get(kind))) for kind, raw in raws.items()}
    return State(meshes, {**state.found, **new})


def _raw(found: Found | None) -> Raw | None:
    return None if found is None else found.raw


def next_step(task: Task, state: State, band: float) -> Step | None:
    """Return what is to be done next; None where the band is met on two meshes, or the next mesh would be too large.

    Only the kinds at whose end a quantity is judged are solved again. One that comes to such an end though it was
    solved on a coarser mesh is first solved on the present one.
    """
    variants = joined(task, state)
    open_ends = {
        name: end
        for name, end in judged(variants).items()
        if end.band > band or state.found[_place(variants, end)].before is None
    }
    kinds = tuple(sorted({_place(variants, end) for end in open_ends.values()}))
    last = len(state.meshes) - 1
    if behind := tuple(kind for kind in kinds if state.found[kind].mesh < last):
        return Step((), behind)
    if not kinds or _GROWTH * state.meshes[-1].unknowns > UNKNOWNS_MOST:
        return None
    blame = [end.band * state.found[_place(variants, end)].raw.blame[name] for name, end in open_ends.items()]
    return Step(marked(sum(blame)), kinds)  # type: ignore[arg-type]


def _place(variants: Sequence[Variant], end: End) -> int:
    return next(place for place, variant in enumerate(variants) if variant is end.variant)


def marked(blame: Array) -> tuple[int, ...]:
    """Return the numbers of the elements that are to be cut, by what each lacks (elements,)."""
    import numpy as np

    order = np.argsort(-blame, kind="stable")
    enough = int(np.searchsorted(np.cumsum(blame[order]), _BLAMED * blame.sum())) + 1
    least, most = (math.ceil(share * len(blame)) for share in _CUT)
    return tuple(sorted(int(number) for number in order[: min(max(enough, least), most)]))


def _evidence(pair: Pair, task: Task, state: State, band: float) -> Stiffness:
    variants = joined(task, state)
    reached = max(end.band for end in judged(variants).values())
    worst = greatest_slope(variants)
    kind, case = _place(variants, worst), [c is worst.case for c in variants[_place(variants, worst)].cases].index(True)
    field = pair.field(Wanted(kind, case, variants[kind].cases[case].stress.value))
    point = task.mass is not None and not task.mass[3, 3]
    return Stiffness(variants, state.meshes, band, rounded(reached), point, field)


def joined(task: Task, state: State) -> tuple[Variant, ...]:
    """Return the variants with bands."""
    return tuple(_variant(task, place, state) for place in range(len(task.kinds)))


def _variant(task: Task, place: int, state: State) -> Variant:
    (support, flanges), found = task.kinds[place], state.found[place]
    plain, mended, before = found.raw.plain, found.raw.mended, None if found.before is None else found.before.mended
    gives = estimate(plain.compliance, mended.compliance, None if before is None else before.compliance)
    hertz, halves = banded(plain.frequencies, mended.frequencies, None if before is None else before.frequencies)
    return Variant(
        support=support.id,
        title=support.title,
        flanges=flanges,
        axial_stiffness=Estimate(rounded(1e-3 / gives.value), rounded(1e-3 * gives.half / gives.value**2)),
        frequencies=tuple(Estimate(rounded(float(a)), rounded(float(b))) for a, b in zip(hertz, halves, strict=True)),
        cases=tuple(_case(task, index, found) for index in range(len(task.cases))),
        unknowns=state.meshes[found.mesh].unknowns,
    )


def _case(task: Task, index: int, found: Found) -> CaseResult:
    raw, before, case = found.raw, found.before, task.cases[index]
    stress, gap, place = raw.stresses[index]
    changed = 0.0 if before is None else abs(stress - before.stresses[index][0])
    plain, mended, old = raw.plain, raw.mended, None if before is None else before.mended
    return CaseResult(
        title=case.title,
        thrust=case.thrust,
        offset=_across(plain.offsets[index], mended.offsets[index], None if old is None else old.offsets[index]),
        slope=_across(plain.slopes[index], mended.slopes[index], None if old is None else old.slopes[index]),
        shares=tuple((_tidy(x), _tidy(y), _tidy(z)) for x, y, z in raw.shares[index].tolist()),
        stress=Estimate(rounded(stress), rounded(max(gap, changed))),
        stress_place=(round(place[0], 1), round(place[1], 1), round(place[2], 1)),
        distortion=(rounded(float(raw.distortions[index][0])), rounded(float(raw.distortions[index][1]))),
    )


def _across(plain: Array, mended: Array, before: Array | None) -> Across:
    middle, half = banded(plain, mended, before)
    return Across(rounded(float(middle[0])), rounded(float(middle[1])), rounded(math.hypot(*half.tolist())))


def _tidy(force: Any) -> float:
    """Return a force to 0.1 N: what is less is rounding."""
    return round(float(force), 1) + 0.0
