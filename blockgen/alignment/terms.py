"""Terms of the vector chain at the coupling's centre: d = o_m + (xc - L) theta_m - o_b - xc theta_b.

Offsets o are taken at the seat planes in mm, slopes theta = (dy/dx, dz/dx) in rad; m is the motor, b the bearing unit,
xc the centre of the coupling and L the length between the seats. Offset is d, the angle is theta_m - theta_b.
"""

from __future__ import annotations

from collections.abc import Iterable, Mapping
from dataclasses import dataclass
from typing import Literal

from blockgen.alignment.scatter import Scatter, clearance, disc, known, scaled
from blockgen.plan import Contributor, Plan

End = Literal["motor", "bearing", "both"]


@dataclass(frozen=True, slots=True)
class Term:
    """One cause of misalignment and what it does at the coupling's centre.

    Args:
        id: Plain id, as in the plan's contributors.
        scatter: The cause itself, mm or rad.
        offset_factor: Offset at the coupling's centre over the cause, with sign: 1 or the arm in mm.
        angle_factor: Angle there over the cause, with sign; 0 for a cause that shifts only.
        rotating: True where it turns with the shaft.
        characteristic: Characteristic of the plan or input key that it stands for.
    """

    id: str
    scatter: Scatter
    offset_factor: float
    angle_factor: float
    rotating: bool = False
    characteristic: str = ""


def shift(name: str, end: End, scatter: Scatter, characteristic: str = "", *, rotating: bool = False) -> Term:
    """Return the term of an offset at a seat plane, mm."""
    return Term(name, scatter, -1.0 if end == "bearing" else 1.0, 0.0, rotating, characteristic)


def tilt(
    name: str, end: End, scatter: Scatter, arm: float, characteristic: str = "", *, rotating: bool = False
) -> Term:
    """Return the term of a slope at a seat plane.

    Args:
        name: Plain id.
        end: Side that is tilted.
        scatter: Slope, rad.
        arm: xc less the x of that seat plane, mm: positive at the bearing, negative at the motor.
        characteristic: What it stands for.
        rotating: True where it turns with the shaft.
    """
    sign = -1.0 if end == "bearing" else 1.0
    return Term(name, scatter, sign * arm, sign, rotating, characteristic)


def offsets(terms: Iterable[Term]) -> list[Scatter]:
    """Return what the terms do to the offset at the coupling's centre, mm."""
    return [scaled(t.scatter, t.offset_factor) for t in terms if t.offset_factor]


def angles(terms: Iterable[Term]) -> list[Scatter]:
    """Return what the terms do to the angle between the shafts, rad."""
    return [scaled(t.scatter, t.angle_factor) for t in terms if t.angle_factor]


def coupling_centre(plan: Plan) -> float:
    """Return the x of the coupling's centre from the bearing seat plane, mm."""
    return plan.number("coupling_position") + plan.number("coupling.length") / 2


def terms_of(plan: Plan, growth: Mapping[str, float] | None = None) -> tuple[Term, ...]:
    """Return the terms of a plan's contributors.

    Args:
        plan: Plan with its contributors.
        growth: Growth of the pilot clearance by heat, mm, by end (``motor``, ``bearing``).
    """
    centre = coupling_centre(plan)
    return tuple(_term(plan, cause, centre, growth or {}) for cause in plan.contributors)


def _term(plan: Plan, cause: Contributor, centre: float, growth: Mapping[str, float]) -> Term:
    scatter = _scatter(plan, cause, growth)
    if cause.quantity == "angle":
        arm = centre - cause.seat_x
        return tilt(cause.id, cause.end, scatter, arm, cause.characteristic, rotating=cause.rotating)
    return shift(cause.id, cause.end, scatter, cause.characteristic, rotating=cause.rotating)


def _scatter(plan: Plan, cause: Contributor, growth: Mapping[str, float]) -> Scatter:
    if cause.limits is not None:
        more = growth.get(cause.end, 0.0)
        low, high = cause.limits
        return clearance(low + more, high + more, _hole_tolerance(plan, cause, high - low))
    size = cause.size or 0.0
    return known(0.0, size) if cause.law == "known" else disc(size)


def _hole_tolerance(plan: Plan, cause: Contributor, spread: float) -> float:
    """Return the tolerance of the bore; the pilot has the rest of the spread."""
    bore = plan.records[f"{cause.end}_bore"]
    return min((bore.upper or 0.0) - (bore.lower or 0.0), spread)
