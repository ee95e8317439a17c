"""What one mesh answers for the loads of service, one support and kind of flanges after the other."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from typing import TYPE_CHECKING

from blockgen.evidence.stiffness.bore_motion import between_axes
from blockgen.evidence.stiffness.frequencies import frequencies
from blockgen.evidence.stiffness.loads import Case
from blockgen.evidence.stiffness.mesh import LEVELS, mesh_of
from blockgen.evidence.stiffness.result import MeshUsed
from blockgen.evidence.stiffness.solve import Bench, Flanges
from blockgen.evidence.stiffness.subject import Subject
from blockgen.evidence.stiffness.supports import Support

if TYPE_CHECKING:
    from blockgen.evidence.stiffness.rigid import Array

FLANGES: tuple[Flanges, ...] = ("free", "rigid")
Kind = tuple[Support, Flanges]


@dataclass(frozen=True, slots=True)
class Task:
    """What is to be solved on each mesh.

    Args:
        subject: The block.
        kinds: Supports with their flanges.
        cases: Loads of service.
        mass: Mass matrix (6, 6) of the motor; None where it is not given.
    """

    subject: Subject
    kinds: tuple[Kind, ...]
    cases: tuple[Case, ...]
    mass: Array | None


def kinds_of(supports: Sequence[Support]) -> tuple[Kind, ...]:
    """Return each support with free and with rigid flanges."""
    return tuple((support, flanges) for support in supports for flanges in FLANGES)


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


def answers(task: Task, level: int) -> tuple[MeshUsed, list[Raw]]:
    """Return the mesh of a level and what it answers for each kind of a task."""
    bench = Bench(task.subject, mesh_of(task.subject, LEVELS[level]))
    found = [answer(bench, support, flanges, task.cases, task.mass) for support, flanges in task.kinds]
    return MeshUsed(bench.mesh.ne, bench.unknowns), found


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
    bent = [
        np.sqrt(np.maximum(np.einsum("ic,ij,jc->c", factors, square, factors), 0)) for square in response.distortion
    ]
    return Raw(
        float(response.bearing_flange[0, 0]), found, offsets.T, slopes.T, shares, stresses, np.stack(bent, axis=1)
    )
