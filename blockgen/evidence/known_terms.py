"""What measured values make of the causes of misalignment: known vectors and narrower scatters, each with its doubt.

A measured value adds a Gaussian whose standard deviation is half its expanded uncertainty. A size stays a size: its
doubt is a rectangle of the same variance in the diameter, so that the clearance still acts in a random direction.
"""

from __future__ import annotations

from collections.abc import Iterable, Mapping, Sequence
from dataclasses import replace
from math import cos, radians, sin, sqrt

from blockgen.alignment.scatter import Scatter, clearance, gaussian, known
from blockgen.alignment.terms import Term
from blockgen.evidence.bought import VECTORS, pilot_limits
from blockgen.evidence.components import BORE_OFFSET, MOTOR_SLOPE, measuring_diameter
from blockgen.evidence.measurement import Measurement, Vector, vector
from blockgen.plan import Contributor, Plan

Values = Mapping[str, Measurement]
_ALIKE = 1e-4  # share by which two doubts differ through rounding alone
_TURNED = frozenset({"motor.spigot", "motor.face_slope"})
_SEATS = ("bearing_seat_perpendicularity", "motor_seat_perpendicularity")
_STEMS = {
    "bore_coaxiality": BORE_OFFSET,
    "motor_seat_perpendicularity": MOTOR_SLOPE,
    **{part.stands_for.replace(".", "_"): part.stem for part in VECTORS},
}


def with_measured(
    plan: Plan, terms: Sequence[Term], values: Values, growth: Mapping[str, float], turn: float = 0.0
) -> tuple[Term, ...]:
    """Return the terms of a plan after its measured values have taken their places.

    Args:
        plan: Plan of the block.
        terms: Terms of the plan.
        values: Measurements by id.
        growth: Growth of the pilot clearances by heat, mm, by end.
        turn: How far the motor is turned on its seat, deg, counter-clockwise seen from the motor.
    """
    causes = {cause.id: cause for cause in plan.contributors}
    gone = {_SEATS[0]} if vector(values, MOTOR_SLOPE) or "motor_seat.parallelism" in values else set()
    found: list[Term] = []
    for term in terms:
        cause = causes.get(term.id)
        if term.id in gone:
            continue  # the bearing seat is the datum of the measured slope: in its own frame it does not lean
        parts = None if cause is None else _instead(plan, cause, values, growth.get(cause.end, 0.0), turn)
        found += [term] if parts is None else [_renamed(term, s, n) for n, s in enumerate(parts)]
    return tuple(found)


def still_random(terms: Iterable[Term], others: Iterable[Term]) -> tuple[str, ...]:
    """Return the ids of the terms that no measurement has touched."""
    scatters = {term.id: term.scatter for term in others}
    return tuple(term.id for term in terms if scatters.get(term.id) == term.scatter and term.scatter.law != "known")


def _renamed(term: Term, scatter: Scatter, number: int) -> Term:
    return replace(term, scatter=scatter, id=term.id if number == 0 else f"{term.id}_doubt_{number}")


def _instead(plan: Plan, cause: Contributor, values: Values, growth: float, turn: float) -> tuple[Scatter, ...] | None:
    """Return what stands for a cause after measuring; None where nothing of it was measured."""
    if cause.limits is not None:
        return _clearance(plan, cause, values, growth)
    stem = _STEMS.get(cause.id)
    found = None if stem is None else vector(values, stem)
    if found is not None:
        scale = 0.001 if cause.quantity == "angle" else 1.0  # slopes are in mm/m
        return vector_scatters(turned(found, turn) if stem in _TURNED else found, scale)
    zone = values.get(cause.characteristic)
    return None if zone is None else _ring(plan, cause, zone)


def vector_scatters(found: Vector, scale: float = 1.0) -> tuple[Scatter, ...]:
    """Return a known vector and the Gaussian of its doubt; unequal doubts leave the greater one along its axis."""
    deviation_y, deviation_z = scale * found.uncertainty_y / 2, scale * found.uncertainty_z / 2
    least = min(deviation_y, deviation_z)
    rest = sqrt(max(deviation_y, deviation_z) ** 2 - least**2)
    parts = [known(scale * found.y, scale * found.z)]
    parts += [gaussian(least)] if least > 0 else []
    if rest > _ALIKE * max(deviation_y, deviation_z):
        parts.append(Scatter("gaussian_y" if deviation_y > deviation_z else "gaussian_z", rest))
    return tuple(parts)


def turned(found: Vector, turn: float) -> Vector:
    """Return a vector turned counter-clockwise as seen from the motor.

    Args:
        found: Vector.
        turn: deg.
    """
    c, s = cos(radians(turn)), sin(radians(turn))
    uy, uz = found.uncertainty_y, found.uncertainty_z
    across, up = sqrt((c * uy) ** 2 + (s * uz) ** 2), sqrt((s * uy) ** 2 + (c * uz) ** 2)
    return Vector(c * found.y - s * found.z, s * found.y + c * found.z, across, up)


def _ring(plan: Plan, cause: Contributor, zone: Measurement) -> tuple[Scatter, ...]:
    """Return a vector of known length and unknown direction from a zone or a full indicator movement.

    An offset is half of it; an angle is all of it over the measuring diameter, which counts form as lean.
    """
    end = "motor" if cause.end == "both" else cause.end
    factor = 0.5 if cause.quantity == "offset" else 1 / measuring_diameter(plan, end)
    length, doubt = factor * zone.value, factor * zone.uncertainty / 2
    return (clearance(2 * length, 2 * length, 0.0), *((gaussian(doubt),) if doubt > 0 else ()))


def _clearance(plan: Plan, cause: Contributor, values: Values, growth: float) -> tuple[Scatter, ...] | None:
    """Return the clearance between a bore and a pilot of which at least one is measured."""
    hole, pilot = values.get(f"{cause.end}_bore.diameter"), values.get(f"{cause.end}.pilot_diameter")
    if hole is None and pilot is None:
        return None
    bore, nominal = plan.records[f"{cause.end}_bore"], plan.number(f"{cause.end}_bore")
    hole_low, hole_high = _band(hole, (nominal + (bore.lower or 0.0), nominal + (bore.upper or 0.0)))
    pilot_low, pilot_high = _band(pilot, pilot_limits(plan, cause))
    low, high = hole_low - pilot_high + growth, hole_high - pilot_low + growth
    return (clearance(low, high, min(hole_high - hole_low, high - low)),)


def _band(found: Measurement | None, limits: tuple[float, float]) -> tuple[float, float]:
    """Return the band of a size: as measured, a rectangle with the variance of its doubt, else as planned."""
    if found is None:
        return limits
    half = sqrt(3) * found.uncertainty / 2
    return found.value - half, found.value + half
