"""From a plan and its analysis solid to the evidence: mesh, solve, compare two meshes, refine until the band is met."""

from __future__ import annotations

import math
from collections.abc import Callable, Sequence
from typing import TYPE_CHECKING, Any

from blockgen.evidence.stiffness.answers import Raw, Task, kinds_of
from blockgen.evidence.stiffness.envelope import judged
from blockgen.evidence.stiffness.extrapolate import Estimate, between, estimate, rounded
from blockgen.evidence.stiffness.frequencies import motor_mass
from blockgen.evidence.stiffness.loads import Case, cases_of
from blockgen.evidence.stiffness.mesh import LEVELS
from blockgen.evidence.stiffness.parallel import two_processes
from blockgen.evidence.stiffness.result import Across, CaseResult, MeshUsed, Stiffness, Variant
from blockgen.evidence.stiffness.solve import Flanges
from blockgen.evidence.stiffness.subject import subject_of
from blockgen.evidence.stiffness.supports import Support, supports_of
from blockgen.plan import Plan

if TYPE_CHECKING:
    from blockgen.evidence.stiffness.rigid import Array

BAND = 0.05
"""Half the error band over the value that is asked for where nothing else is said."""

UNKNOWNS_MOST = 150_000
"""No mesh finer than this is made: with it both processes together take about 3 GB."""

Told = Callable[[str], None]


def stiffness(
    plan: Plan, brep: bytes, faces: tuple[str, ...], band: float = BAND, told: Told | None = None
) -> Stiffness:
    """Return the stiffness of a block.

    Args:
        plan: What was decided.
        brep: Its analysis solid, ``geometry.analysis``.
        faces: Ids of the faces of that solid.
        band: Half the error band over the value that is asked of stiffness, slope and frequency where they are judged.
        told: Called with a few words as each step begins.

    Raises:
        MachineError: the finite element library is not installed.
        KernelError: the solid cannot be meshed.
    """
    subject, tell = subject_of(plan, brep, faces), told or (lambda _: None)
    supports, cases, mass = supports_of(plan, subject), cases_of(plan), motor_mass(plan)
    task = Task(subject, kinds_of(supports), cases, mass)
    variants: tuple[Variant, ...] = ()
    meshes: list[MeshUsed] = []
    coarse: list[Raw] = []
    reached = 1.0
    with two_processes(task) as solved:
        for number in range(len(LEVELS)):
            tell(f"stiffness, mesh {number + 1}")
            used, fine = solved(number)
            meshes.append(used)
            if coarse:
                variants = joined(task, coarse, fine, (meshes[-2].unknowns, used.unknowns))
                reached = max(end.band for end in judged(variants))
                if reached <= band or _too_many(meshes):
                    break
            coarse = fine
    return Stiffness(variants, tuple(meshes), band, rounded(reached), mass is not None and not mass[3, 3])


def _too_many(meshes: Sequence[MeshUsed]) -> bool:
    """Tell whether the next mesh would be too large: it has about 1.8 times the unknowns of the one before."""
    return 1.8 * meshes[-1].unknowns > UNKNOWNS_MOST


def joined(task: Task, coarse: Sequence[Raw], fine: Sequence[Raw], unknowns: tuple[int, int]) -> tuple[Variant, ...]:
    """Return the variants with bands from the answers of two meshes."""
    return tuple(
        _variant(support, flanges, task.cases, one, other, unknowns)
        for (support, flanges), one, other in zip(task.kinds, coarse, fine, strict=True)
    )


def _variant(
    support: Support, flanges: Flanges, cases: Sequence[Case], coarse: Raw, fine: Raw, unknowns: tuple[int, int]
) -> Variant:
    gives = estimate(coarse.compliance, fine.compliance, unknowns)
    stiff = Estimate(rounded(1e-3 / gives.value), rounded(1e-3 * gives.half / gives.value**2))
    hertz = tuple(
        estimate(float(a), float(b), unknowns) for a, b in zip(coarse.frequencies, fine.frequencies, strict=True)
    )
    results = tuple(_case(case, i, coarse, fine, unknowns) for i, case in enumerate(cases))
    return Variant(support.id, support.title, flanges, stiff, hertz, results)


def _case(case: Case, index: int, coarse: Raw, fine: Raw, unknowns: tuple[int, int]) -> CaseResult:
    (stress, place), (before, _) = fine.stresses[index], coarse.stresses[index]
    shares, _ = between(coarse.shares[index], fine.shares[index], unknowns)
    bent = fine.distortions[index]
    return CaseResult(
        title=case.title,
        thrust=case.thrust,
        offset=_across(coarse.offsets[index], fine.offsets[index], unknowns),
        slope=_across(coarse.slopes[index], fine.slopes[index], unknowns),
        shares=tuple((_tidy(x), _tidy(y), _tidy(z)) for x, y, z in shares.tolist()),
        stress=Estimate(rounded(stress), rounded(abs(stress - before))),
        stress_place=(round(place[0], 1), round(place[1], 1), round(place[2], 1)),
        distortion=(rounded(float(bent[0])), rounded(float(bent[1]))),
    )


def _across(coarse: Array, fine: Array, unknowns: tuple[int, int]) -> Across:
    middle, half = between(coarse, fine, unknowns)
    return Across(rounded(float(middle[0])), rounded(float(middle[1])), rounded(math.hypot(*half.tolist())))


def _tidy(force: Any) -> float:
    """Return a force to 0.1 N: what is less is rounding."""
    return round(float(force), 1) + 0.0
