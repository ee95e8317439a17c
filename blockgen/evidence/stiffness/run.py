"""From a plan and its analysis solid to the evidence: mesh, solve, compare two meshes, refine until the band is met."""

from __future__ import annotations

from collections.abc import Callable, Iterator, Sequence
from dataclasses import dataclass
from itertools import count
from typing import TYPE_CHECKING, Any

from blockgen.evidence.stiffness.bore_motion import between_axes
from blockgen.evidence.stiffness.envelope import judged
from blockgen.evidence.stiffness.extrapolate import Estimate, between, estimate, rounded
from blockgen.evidence.stiffness.frequencies import frequencies, motor_mass
from blockgen.evidence.stiffness.loads import Case, cases_of
from blockgen.evidence.stiffness.mesh import LEVELS, mesh_of
from blockgen.evidence.stiffness.result import Across, CaseResult, MeshUsed, Stiffness, Variant
from blockgen.evidence.stiffness.solve import Bench, Flanges
from blockgen.evidence.stiffness.subject import Subject, subject_of
from blockgen.evidence.stiffness.supports import Support, supports_of
from blockgen.plan import Plan

if TYPE_CHECKING:
    from blockgen.evidence.stiffness.rigid import Array

BAND = 0.05
"""Half the error band over the value that is asked for where nothing else is said."""

UNKNOWNS_MOST = 150_000
"""No mesh finer than this is made: its factors take about 2 GB."""

FLANGES: tuple[Flanges, ...] = ("free", "rigid")
Told = Callable[[str], None]


@dataclass(frozen=True, slots=True)
class Raw:
    """Answers of one mesh for one variant.

    Args:
        compliance: What the bearing seat gives way along a thrust, mm/N.
        frequencies: Hz.
        offsets: (cases, 2), mm.
        slopes: (cases, 2), rad.
        shares: (cases, screws, 3), N.
        stresses: Greatest stress of each case, MPa, and its place, mm.
        distortions: (cases, 2), mm.
    """

    compliance: float
    frequencies: Array
    offsets: Array
    slopes: Array
    shares: Array
    stresses: tuple[tuple[float, tuple[float, float, float]], ...]
    distortions: Array


def stiffness(plan: Plan, brep: bytes, faces: tuple[str, ...], band: float = BAND, told: Told | None = None) -> Stiffness:
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
    variants: tuple[Variant, ...] = ()
    meshes: list[MeshUsed] = []
    coarse: list[Raw] = []
    reached = 1.0
    for number in count():
        tell(f"stiffness, mesh {number + 1}")
        bench = Bench(subject, mesh_of(subject, LEVELS[number]))
        fine = list(answers(bench, supports, cases, mass))
        meshes.append(MeshUsed(bench.mesh.ne, bench.unknowns))
        if coarse:
            variants = joined(supports, cases, coarse, fine, (meshes[-2].unknowns, meshes[-1].unknowns))
            reached = max(end.band for end in judged(variants))
        if number + 1 == len(LEVELS) or (variants and (reached <= band or _too_many(meshes))):
            break
        coarse = fine
    return Stiffness(variants, tuple(meshes), band, rounded(reached), mass is not None and not mass[3, 3])


def _too_many(meshes: Sequence[MeshUsed]) -> bool:
    """Tell whether the next mesh would be too large: it has about twice the unknowns of the one before."""
    return 2 * meshes[-1].unknowns > UNKNOWNS_MOST


def answers(bench: Bench, supports: Sequence[Support], cases: Sequence[Case], mass: Array | None) -> Iterator[Raw]:
    """Yield what one mesh answers for each support with free and rigid flanges."""
    for support in supports:
        for flanges in FLANGES:
            yield answer(bench, support, flanges, cases, mass)


def answer(bench: Bench, support: Support, flanges: Flanges, cases: Sequence[Case], mass: Array | None) -> Raw:
    """Return what one mesh answers for one variant."""
    import numpy as np

    subject, response = bench.subject, bench.respond(support, flanges)
    factors = np.array([case.factors for case in cases]).T
    bores = response.bearing_bore @ factors, response.motor_bore @ factors
    offsets, slopes = between_axes(*bores, (subject.bearing_seat, subject.motor_seat), subject.coupling)
    shares = np.moveaxis(response.shares @ factors, -1, 0)
    found = np.array([]) if mass is None else np.array(frequencies(response.motor_flange[:, 1:], mass))
    stresses = tuple(bench.probe.greatest(response.stress @ factors[:, i]) for i in range(len(cases)))
    bent = [np.sqrt(np.maximum(np.einsum("ic,ij,jc->c", factors, square, factors), 0)) for square in response.distortion]
    return Raw(
        float(response.bearing_flange[0, 0]), found, offsets.T, slopes.T, shares, stresses, np.stack(bent, axis=1)
    )


def joined(
    supports: Sequence[Support], cases: Sequence[Case], coarse: Sequence[Raw], fine: Sequence[Raw], unknowns: tuple[int, int]
) -> tuple[Variant, ...]:
    """Return the variants with bands from the answers of two meshes."""
    kinds = [(support, flanges) for support in supports for flanges in FLANGES]
    return tuple(
        _variant(support, flanges, cases, one, other, unknowns)
        for (support, flanges), one, other in zip(kinds, coarse, fine, strict=True)
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
    import math

    middle, half = between(coarse, fine, unknowns)
    return Across(rounded(float(middle[0])), rounded(float(middle[1])), rounded(math.hypot(*half.tolist())))


def _tidy(force: Any) -> float:
    """Return a force to 0.1 N: what is less is rounding."""
    return round(float(force), 1) + 0.0
