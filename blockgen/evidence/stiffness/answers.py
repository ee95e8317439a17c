"""What one mesh answers for the loads of service under one support and kind of flanges, and what it lacks."""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from dataclasses import dataclass
from typing import TYPE_CHECKING

from blockgen.evidence.stiffness.envelope import FREQUENCY, SLOPE, STIFFNESS
from blockgen.evidence.stiffness.frequencies import first_force, frequencies
from blockgen.evidence.stiffness.loads import UNITS, Case
from blockgen.evidence.stiffness.solve import Bench, Flanges, Response
from blockgen.evidence.stiffness.subject import Subject
from blockgen.evidence.stiffness.supports import Support

if TYPE_CHECKING:
    from blockgen.evidence.stiffness.rigid import Array

FLANGES: tuple[Flanges, ...] = ("free", "rigid")
Kind = tuple[Support, Flanges]
Stress = tuple[float, float, tuple[float, float, float]]


@dataclass(frozen=True, slots=True)
class Task:
    """What is to be solved.

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
class Figures:
    """What a band is given to.

    Args:
        compliance: What the bearing seat gives way along a thrust, mm/N.
        frequencies: Hz.
        offsets: (cases, 2), mm.
        slopes: (cases, 2), rad.
    """

    compliance: float
    frequencies: Array
    offsets: Array
    slopes: Array


@dataclass(frozen=True, slots=True)
class Raw:
    """Answers of one mesh for one variant.

    Args:
        plain: As the mesh gives them.
        mended: With what the mesh lacks by its own estimate.
        shares: (cases, screws, 3), N.
        stresses: Greatest stress of each case in MPa, how far the averaged stress is from it there, and its place, mm.
        distortions: (cases, 2), mm.
        blame: For stiffness, greatest slope and first frequency the share that each element lacks of it, (elements,).
    """

    plain: Figures
    mended: Figures
    shares: Array
    stresses: tuple[Stress, ...]
    distortions: Array
    blame: Mapping[str, Array]


def answer(bench: Bench, response: Response, cases: Sequence[Case], mass: Array | None) -> Raw:
    """Return what one mesh answers for one variant."""
    import numpy as np

    factors = np.array([case.factors for case in cases]).T
    energies = np.einsum("epi,epj->ij", response.gaps, response.gaps)
    loads, (compliance, across) = len(UNITS), (response.compliance, bench.across_of(response))
    plain = _figures(compliance, across, factors, mass)
    mended = _figures(compliance + energies[:loads, :loads], across + energies[loads:, :loads], factors, mass)
    return Raw(
        plain,
        mended,
        np.moveaxis(response.shares @ factors, -1, 0),
        tuple(_stress(bench, response, column) for column in factors.T),
        _distortions(response, factors),
        _blame(response, mended, factors, mass),
    )


def _figures(compliance: Array, across: Array, factors: Array, mass: Array | None) -> Figures:
    """Return the figures of a compliance (7, 7) and of what the unit loads do across the shafts, (4, 7)."""
    import numpy as np

    moved = (across @ factors).T
    found = np.array([]) if mass is None else np.array(frequencies(compliance[1:, 1:], mass))
    return Figures(float(compliance[0, 0]), found, moved[:, :2], moved[:, 2:])


def _stress(bench: Bench, response: Response, column: Array) -> Stress:
    value, place, gap = bench.probe.greatest(
        response.stress @ column, bench.recovery.at_points(response.smooth @ column)
    )
    return value, gap, place


def _distortions(response: Response, factors: Array) -> Array:
    import numpy as np

    squares = [np.einsum("ic,ij,jc->c", factors, square, factors) for square in response.distortion]
    return np.stack([np.sqrt(np.maximum(square, 0)) for square in squares], axis=1)


def _blame(response: Response, mended: Figures, factors: Array, mass: Array | None) -> dict[str, Array]:
    """Return what each element lacks of the axial stiffness, of the greatest slope and of the first frequency."""
    import numpy as np

    loads, gaps = len(UNITS), response.gaps
    lengths = np.linalg.norm(mended.slopes, axis=1)
    worst = int(np.argmax(lengths))
    found = {STIFFNESS: _products(gaps[:, :, 0], gaps[:, :, 0]) / mended.compliance}
    if lengths[worst]:
        along = gaps[:, :, loads + 2 :] @ (mended.slopes[worst] / lengths[worst])
        found[SLOPE] = _products(gaps[:, :, :loads] @ factors[:, worst], along) / lengths[worst]
    if mass is not None:
        force = first_force(response.compliance[1:, 1:], mass)
        moved = gaps[:, :, 1:loads] @ force
        found[FREQUENCY] = _products(moved, moved) / float(force @ response.compliance[1:, 1:] @ force)
    return found


def _products(one: Array, other: Array) -> Array:
    import numpy as np

    products: Array = np.abs(np.einsum("ep,ep->e", one, other))
    return products
