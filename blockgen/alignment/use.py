"""How much of the coupling's allowances is used, what it presses back with, and what that costs the bearing."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass
from math import fsum

ESTIMATE = (
    "estimate: percentiles of offset, angle and axial movement are added, which overstates their joint percentile"
)


@dataclass(frozen=True, slots=True)
class Movement:
    """Offset in mm, angle in rad, axial movement in mm, all as lengths."""

    parallel: float
    angular: float
    axial: float


@dataclass(frozen=True, slots=True)
class Allowances:
    """What the coupling takes: mm, rad, mm; None where it is not given."""

    parallel: float | None
    angular: float | None
    axial: float | None


@dataclass(frozen=True, slots=True)
class CouplingUse:
    """Use of the coupling, the sum of fractions; 1 is all of it.

    Args:
        worst: Sum of fractions of the worst cases; None where an allowance is missing.
        likely: Sum of fractions of the percentiles at ``probability``; None where an allowance is missing.
        probability: Probability of the percentiles.
        fractions: Fraction of each allowance that is known, at that probability.
        missing: Keys of the allowances that are not given.
        label: What kind of number ``likely`` is.
    """

    worst: float | None
    likely: float | None
    probability: float
    fractions: Mapping[str, float]
    missing: tuple[str, ...]
    label: str = ESTIMATE


@dataclass(frozen=True, slots=True)
class Reaction:
    """What the coupling presses with on both shafts, equal and opposite; None where its stiffness is unknown.

    Args:
        force: Across the shaft at the coupling's centre, N.
        bending: Bending moment of the flexing part, N*m.
        axial: Along the shaft, N.
        journal_moment: Moment about the bearing seat plane, N*m.
        motor_moment: Moment about the motor seat plane, N*m.
    """

    force: float | None
    bending: float | None
    axial: float | None
    journal_moment: float | None
    motor_moment: float | None


@dataclass(frozen=True, slots=True)
class CouplingStiffness:
    """Radial N/um, angular N*m/rad, axial N/um; None where it is not given."""

    radial: float | None
    angular: float | None
    axial: float | None


def fractions(movement: Movement, allow: Allowances) -> dict[str, float]:
    """Return movement over allowance for each allowance that is given and is not 0."""
    pairs = (("parallel", movement.parallel, allow.parallel), ("angular", movement.angular, allow.angular),
             ("axial", movement.axial, allow.axial))  # fmt: skip
    return {name: value / limit for name, value, limit in pairs if limit}


def coupling_use(worst: Movement, likely: Movement, probability: float, allow: Allowances) -> CouplingUse:
    """Return the use of a coupling.

    Source: delta/allow_parallel + theta/allow_angular + |dx|/allow_axial; common practice, the maker's rule wins.
    """
    found, most = fractions(likely, allow), fractions(worst, allow)
    missing = tuple(name for name in ("parallel", "angular", "axial") if name not in found)
    whole = not missing
    return CouplingUse(
        fsum(most.values()) if whole else None, fsum(found.values()) if whole else None, probability, found,
        tuple(f"coupling.allow_{name}" for name in missing),
    )  # fmt: skip


def reaction(movement: Movement, stiffness: CouplingStiffness, journal_arm: float, motor_arm: float) -> Reaction:
    """Return what the coupling presses with.

    Args:
        movement: Offset, angle and axial movement.
        stiffness: Of the coupling.
        journal_arm: From the bearing seat plane to the coupling's centre, mm.
        motor_arm: From the motor seat plane to it, mm.

    Source: F = k_r delta, M = k_theta theta; moments of both add at worst.
    """
    force = None if stiffness.radial is None else 1000 * stiffness.radial * movement.parallel
    bending = None if stiffness.angular is None else stiffness.angular * movement.angular
    axial = None if stiffness.axial is None else 1000 * stiffness.axial * movement.axial
    known = force is not None and bending is not None
    journal, motor = ((force or 0.0) * arm / 1000 + (bending or 0.0) for arm in (journal_arm, motor_arm))
    return Reaction(force, bending, axial, journal if known else None, motor if known else None)


def ball_life_ratio(load: float, added: float) -> float:
    """Return life with an added load over life without it.

    Args:
        load: Equivalent load without it, N.
        added: Load added to it, N; added in full, which is the unfavourable case.

    Raises:
        ValueError: the load is not positive.

    Source: ISO 281 (remembered): L10 = (C/P)^3, so that L'/L = (P/P')^3.
    """
    if load <= 0:
        raise ValueError(f"load {load:g} N: the life ratio needs a load above 0, give screw.thrust")
    return (load / (load + abs(added))) ** 3
