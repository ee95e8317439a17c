"""The alignment of a plan: offset and angle at the coupling, what they come from, and what better would cost."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from math import radians

from blockgen.alignment.buys import Buy, Purchase, buys
from blockgen.alignment.heat import Expansions, HeatEffect, heat_effect, heat_term, temperatures_of
from blockgen.alignment.radial import (
    RadialLaw,
    WaveTable,
    exceeding,
    law_of,
    merged,
    percentile,
    radial_law,
    wave_table,
)
from blockgen.alignment.scatter import Scatter
from blockgen.alignment.shares import Share, shares
from blockgen.alignment.terms import Term, angles, coupling_centre, offsets, terms_of
from blockgen.alignment.use import (
    Allowances,
    CouplingStiffness,
    CouplingUse,
    Movement,
    Reaction,
    ball_life_ratio,
    coupling_use,
    reaction,
)
from blockgen.plan import Plan

LEVELS = (0.5, 0.95, 0.9973)
LIKELY = 0.95


@dataclass(frozen=True, slots=True)
class Spread:
    """Distribution of one length, mm for an offset and rad for an angle.

    Args:
        worst: Worst case; a Gaussian counts three standard deviations.
        p50: Not exceeded with a probability of 50 %.
        p95: The same with 95 %.
        p9973: The same with 99.73 %.
        rms: Root of the mean square.
        judged: Not exceeded with the probability that is asked for.
        limit: Allowance; None where there is none.
        exceeding: Probability of exceeding it; None without a limit.
    """

    worst: float
    p50: float
    p95: float
    p9973: float
    rms: float
    judged: float
    limit: float | None = None
    exceeding: float | None = None


@dataclass(frozen=True, slots=True)
class Alignment:
    """Alignment of the shafts of a one-piece block at the coupling's centre.

    Args:
        centre: x of the coupling's centre, mm.
        offset: Offset of all terms, mm.
        offset_static: Offset of the terms that stand still: it bends the coupling each turn.
        offset_rotating: Offset of the terms that turn with a shaft: it shakes.
        angle: Angle of all terms, rad.
        angle_static: Angle of the terms that stand still.
        angle_rotating: Angle of the terms that turn.
        axial_worst: Axial movement left by the tolerances of the layout, mm.
        axial_judged: The same at the probability that is asked for.
        shares_offset: Share of each term in the offset.
        shares_angle: Share of each term in the angle.
        buys: What one step tighter would buy, cause by cause, the greatest gain first.
        purchases: The same for what one decision tightens at once.
        use: Use of the coupling.
        reaction: What the coupling presses with at the probability that is asked for.
        reaction_worst: The same in the worst case.
        life_ratio: Ball life with the reaction over life without it; None where thrust or stiffness is not given.
        heat: What heat does; None where temperatures or expansions are not given.
        terms: Terms of the chain.
    """

    centre: float
    offset: Spread
    offset_static: Spread
    offset_rotating: Spread
    angle: Spread
    angle_static: Spread
    angle_rotating: Spread
    axial_worst: float
    axial_judged: float
    shares_offset: tuple[Share, ...]
    shares_angle: tuple[Share, ...]
    buys: tuple[Buy, ...]
    purchases: tuple[Purchase, ...]
    use: CouplingUse
    reaction: Reaction
    reaction_worst: Reaction
    life_ratio: float | None
    heat: HeatEffect | None
    terms: tuple[Term, ...]


def align(
    plan: Plan, expansions: Expansions | None = None, elastic: Sequence[Term] = (), *, steps: bool = True
) -> Alignment:
    """Return the alignment of a plan.

    Args:
        plan: Plan with contributors, coupling and, where given, limits and temperatures.
        expansions: Coefficients of expansion; heat is left out without them or without temperatures.
        elastic: Known terms from load and stiffness, where somebody has worked them out.
        steps: Work out what steps and decisions buy; it takes most of the time.
    """
    warm = temperatures_of(plan)
    heat = heat_effect(plan, expansions, warm) if expansions and warm else None
    terms = (*chain_terms(plan, heat), *elastic)
    probability = probability_asked(plan)
    allow = allowances(plan)
    still, turning = [t for t in terms if not t.rotating], [t for t in terms if t.rotating]
    table, offset, offset_static = _offset(still, turning, allow.parallel, probability)
    tighter, decisions = buys(plan, terms, table) if table and steps else ((), ())
    angle = spread(angles(terms), allow.angular, probability)
    turning_angles = angles(turning)
    worst, judged = axial_movement(plan, probability)
    likely = Movement(offset.judged, angle.judged, judged)
    most = Movement(offset.worst, angle.worst, worst)
    back = _reaction(plan, likely)
    return Alignment(
        centre=coupling_centre(plan),
        offset=offset,
        offset_static=offset_static,
        offset_rotating=spread(offsets(turning), None, probability),
        angle=angle,
        angle_static=spread(angles(still), allow.angular, probability) if turning_angles else angle,
        angle_rotating=spread(turning_angles, None, probability),
        axial_worst=worst,
        axial_judged=judged,
        shares_offset=shares(terms, "offset"),
        shares_angle=shares(terms, "angle"),
        buys=tighter,
        purchases=decisions,
        use=coupling_use(most, likely, probability, allow),
        reaction=back,
        reaction_worst=_reaction(plan, most),
        life_ratio=_life(plan, back),
        heat=heat,
        terms=terms,
    )


def chain_terms(plan: Plan, heat: HeatEffect | None) -> tuple[Term, ...]:
    """Return the terms of a plan, warm where the effect of heat is known."""
    if heat is None:
        return terms_of(plan)
    terms = terms_of(plan, {"motor": heat.motor_growth, "bearing": heat.bearing_growth})
    bent = heat_term(plan, heat)
    return terms if bent is None else (*terms, bent)


def _offset(
    still: Sequence[Term], turning: Sequence[Term], limit: float | None, probability: float
) -> tuple[WaveTable | None, Spread, Spread]:
    """Return the transforms of all offsets, and the spread of all and of those that stand still, by one table."""
    standing = merged(offsets(still))
    every = (*standing, *merged(offsets(turning)))
    if len(standing) <= 1 or len(every) <= 1:
        return None, spread(every, limit, probability), spread(standing, limit, probability)
    table = wave_table(every, len(standing))
    all_of_it = spread_of(law_of(table), limit, probability)
    part = spread_of(law_of(table, len(standing)), limit, probability) if len(every) > len(standing) else all_of_it
    return table, all_of_it, part


def spread(scatters: Sequence[Scatter], limit: float | None = None, probability: float = LIKELY) -> Spread:
    """Return the spread of a sum of isotropic scatters and known vectors against a limit."""
    return spread_of(radial_law(scatters), limit, probability)


def spread_of(law: RadialLaw, limit: float | None, probability: float) -> Spread:
    """Return the figures of a radial law."""
    p50, p95, p9973 = (percentile(law, level) for level in LEVELS)
    judged = p95 if probability == LIKELY else percentile(law, probability)
    over = None if limit is None else exceeding(law, limit)
    return Spread(law.worst, p50, p95, p9973, law.rms, judged, limit, over)


def probability_asked(plan: Plan) -> float:
    """Return the probability with which the allowances shall hold: ``limits.probability``, else 95 %."""
    return _number(plan, "limits.probability") or LIKELY


def allowances(plan: Plan) -> Allowances:
    """Return the allowances: those of ``[limits]``, else the coupling's; angle in rad."""
    parallel, angular, axial = (
        _number(plan, f"limits.{name}") or _number(plan, f"coupling.allow_{name}")
        for name in ("parallel", "angular", "axial")
    )
    return Allowances(parallel, None if angular is None else radians(angular), axial)


def _number(plan: Plan, key: str) -> float | None:
    record = plan.records.get(key)
    return None if record is None or record.value is None else plan.number(key)


def axial_movement(plan: Plan, probability: float) -> tuple[float, float]:
    """Return the axial movement of the toleranced layout, worst and likely (uniform).

    The second hub is clamped last with the coupling relaxed: the tolerance of the seat distance drops out, and of the
    setting tolerance a part stays in the coupling.
    """
    setting = plan.records["coupling_position"].upper or 0.0
    left = setting * plan.number("practice.axial_left")
    return left, probability * left


def _reaction(plan: Plan, movement: Movement) -> Reaction:
    names = ("radial_stiffness", "angular_stiffness", "axial_stiffness")
    stiffness = CouplingStiffness(*(_number(plan, f"coupling.{name}") for name in names))
    centre = coupling_centre(plan)
    return reaction(movement, stiffness, centre, plan.number("length") - centre)


def _life(plan: Plan, back: Reaction) -> float | None:
    """Return the life ratio of the fixed bearing with the radial reaction added to the thrust in full."""
    thrust = _number(plan, "screw.thrust")
    return None if not thrust or back.force is None else ball_life_ratio(thrust, back.force)
