"""How far to turn the motor on its seat, so that its own errors make up for those of the block.

Angles as everywhere: seen from the motor, counter-clockwise from +y.
"""

from __future__ import annotations

from dataclasses import dataclass
from math import atan2, cos, degrees, hypot, radians, sin

from blockgen.alignment.heat import Expansions
from blockgen.evidence.as_built import AsBuilt, as_built
from blockgen.evidence.measurement import Measured, vector
from blockgen.plan import Plan

_ALIKE = 0.01  # mm; holes that differ by less are the same
_NEEDED = ("motor.spigot", "motor.face_slope")


@dataclass(frozen=True, slots=True)
class Turn:
    """The motor turned by an angle.

    Args:
        degrees: Counter-clockwise seen from the motor; 0 is its mark up.
        result: What the shafts do then.
    """

    degrees: float
    result: AsBuilt


@dataclass(frozen=True, slots=True)
class Clocking:
    """Every turn that the bolt pattern allows.

    Args:
        turns: Turns with their results, by angle; empty where nothing can be said.
        best: The turn with the least use of the coupling, or the least offset where its use is not known.
        reason: Why there are none, or what the figures leave out.
    """

    turns: tuple[Turn, ...]
    best: Turn | None
    reason: str


def clocking(plan: Plan, measured: Measured, expansions: Expansions | None = None) -> Clocking:
    """Return what turning the motor does; only where both of its vectors are measured."""
    lacking = [f"{stem}_y, {stem}_z" for stem in _NEEDED if vector(measured.values, stem) is None]
    if lacking:
        return Clocking((), None, f"turning the motor is not judged: {' and '.join(lacking)} are not measured")
    angles = turns_of(motor_holes(plan))
    if len(angles) < 2:
        return Clocking((), None, "the motor's bolt pattern allows one place only")
    turns = tuple(Turn(angle, as_built(plan, measured, expansions, angle)) for angle in angles)
    best = min(turns, key=lambda turn: (round(_cost(turn.result), 9), turn.degrees))
    return Clocking(turns, best, "connector, cable and brake cable must have room at that turn")


def _cost(result: AsBuilt) -> float:
    return result.offset.judged if result.use.likely is None else result.use.likely


def motor_holes(plan: Plan) -> tuple[tuple[float, float], ...]:
    """Return the centres of the motor's screw holes from the shaft axis (y, z), mm."""
    height = plan.number("shaft_height")
    groups = ("motor_threads", "motor_holes")
    return tuple((f.position[1], f.position[2] - height) for f in plan.features if f.group in groups)


def turns_of(holes: tuple[tuple[float, float], ...]) -> tuple[float, ...]:
    """Return the turns that bring a hole pattern onto itself, deg, 0 first.

    Args:
        holes: Centres from the axis (y, z), mm.
    """
    if not holes:
        return (0.0,)
    first = holes[0]
    start = atan2(first[1], first[0])
    tried = {round(degrees(atan2(z, y) - start) % 360, 3) % 360 for y, z in holes}
    return tuple(angle for angle in sorted(tried) if _falls_onto_itself(holes, radians(angle)))


def _falls_onto_itself(holes: tuple[tuple[float, float], ...], angle: float) -> bool:
    c, s = cos(angle), sin(angle)
    return all(any(hypot(c * y - s * z - a, s * y + c * z - b) < _ALIKE for a, b in holes) for y, z in holes)
