"""Offset and angle that one measured block will give, with what was measured known and all else still random."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass

from blockgen.alignment.chain import (
    LEVELS,
    Spread,
    allowances,
    axial_movement,
    chain_terms,
    probability_asked,
    spread,
)
from blockgen.alignment.heat import Expansions, heat_effect, temperatures_of
from blockgen.alignment.planar import exceeding_circle, percentile_of, planar_law
from blockgen.alignment.scatter import ISOTROPIC, Scatter, greatest, known_sum
from blockgen.alignment.terms import Term, angles, offsets
from blockgen.alignment.use import CouplingUse, Movement, coupling_use
from blockgen.evidence.known_terms import still_random, with_measured
from blockgen.evidence.measurement import Measured
from blockgen.plan import Plan


@dataclass(frozen=True, slots=True)
class AsBuilt:
    """What a measured block does to the shafts.

    Args:
        offset: Offset at the coupling's centre, mm.
        angle: Angle of the shafts, rad.
        use: Use of the coupling.
        use_limit: What of it may be used.
        probability: With which the allowances shall hold.
        offset_before: Offset as planned, before anything was measured, mm.
        angle_before: Angle as planned, rad.
        known_offset: Sum of the known vectors at the coupling's centre (y, z), mm.
        known_angle: Sum of the known slopes (y, z), rad.
        unknown: Ids of the causes that stay random.
        terms: Terms of the chain.
    """

    offset: Spread
    angle: Spread
    use: CouplingUse
    use_limit: float
    probability: float
    offset_before: Spread
    angle_before: Spread
    known_offset: tuple[float, float]
    known_angle: tuple[float, float]
    unknown: tuple[str, ...]
    terms: tuple[Term, ...]


def as_built(plan: Plan, measured: Measured, expansions: Expansions | None = None, turn: float = 0.0) -> AsBuilt:
    """Return offset and angle of a measured block.

    Args:
        plan: Plan of the block.
        measured: What was measured.
        expansions: Coefficients of expansion; heat is left out without them or without temperatures.
        turn: How far the motor is turned on its seat, deg, counter-clockwise seen from the motor.
    """
    warm = temperatures_of(plan)
    heat = heat_effect(plan, expansions, warm) if expansions and warm else None
    growth = {} if heat is None else {"motor": heat.motor_growth, "bearing": heat.bearing_growth}
    before = chain_terms(plan, heat)
    terms = with_measured(plan, before, measured.values, growth, turn)
    probability, allow = probability_asked(plan), allowances(plan)
    offset = length_spread(offsets(terms), allow.parallel, probability)
    angle = length_spread(angles(terms), allow.angular, probability)
    worst, judged = axial_movement(plan, probability)
    use = coupling_use(
        Movement(offset.worst, angle.worst, worst), Movement(offset.judged, angle.judged, judged), probability, allow
    )
    return AsBuilt(
        offset, angle, use, plan.number("limits.coupling_use"), probability,
        spread(offsets(before), allow.parallel, probability), spread(angles(before), allow.angular, probability),
        known_sum(offsets(terms)), known_sum(angles(terms)), still_random(before, terms), terms,
    )  # fmt: skip


def length_spread(scatters: Sequence[Scatter], limit: float | None, probability: float) -> Spread:
    """Return the spread of a sum: by the radial law, and by the planar one where it differs with the direction.

    Args:
        scatters: Parts of the sum, mm or rad.
        limit: Allowance in the same unit; None where there is none.
        probability: Probability asked for.
    """
    lines = [s for s in scatters if s.law not in ISOTROPIC and s.law != "known"]
    if not lines:
        return spread(scatters, limit, probability)
    if not any(s.law in ISOTROPIC and greatest(s) > 0 for s in scatters):
        # nothing is alike in all directions: what stands along one axis is taken so, which overstates it
        rounder = [Scatter("gaussian", s.size) if s in lines else s for s in scatters]
        return spread(rounder, limit, probability)
    law = planar_law(scatters)
    p50, p95, p9973 = (percentile_of(law, level) for level in LEVELS)
    over = None if limit is None else exceeding_circle(law, limit)
    return Spread(law.worst, p50, p95, p9973, law.rms, percentile_of(law, probability), limit, over)
