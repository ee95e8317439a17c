"""What is found out about re-machining the block that exists into another one: plain frozen data."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass, field
from typing import Literal

from blockgen.plan import Plan, Point

How = Literal["", "nothing", "as_drawn", "fitted"]
Value = float | int | str


@dataclass(frozen=True, slots=True)
class Attempt:
    """One way in which the new block may lie in the old one.

    Args:
        how: as_drawn (the new plan as it is) or fitted (sized again on to what stands there already).
        turn: Angle by which the motor is turned about its shaft, deg.
        shift: What is faced off the bearing end, mm.
        length: Length between the seats afterwards, mm.
        motor_wall: Motor wall that a fitted plan is given, mm; None for one as drawn.
    """

    how: How
    turn: float = 0.0
    shift: float = 0.0
    length: float = 0.0
    motor_wall: float | None = None


@dataclass(frozen=True, slots=True)
class Reason:
    """One thing that stands against it.

    Args:
        id: Stable code: grow, bore, window, height_of_shaft, hole, too_near, seat, pilot, layout, check, volume.
        text: In words, with its numbers.
        amount: How much is missing, in ``unit``.
        unit: mm or mm3.
        where: Feature or face.
    """

    id: str
    text: str
    amount: float | None
    unit: str
    where: str


@dataclass(frozen=True, slots=True)
class Leftover:
    """A cavity of the old block that stays in the new one though nothing uses it.

    Args:
        id: Feature of the old plan.
        kind: Its kind there.
        face: Outside face of its mouth.
        position: Centre of its mouth in the new block's coordinates, mm.
        what: Its call-out.
        wall: Least wall to a cavity of the new block or to the outside, mm.
        required: Least wall asked for there, mm.
        beside: What that wall stands against.
        sound: Whether it may stay.
        note: What it means.
    """

    id: str
    kind: str
    face: str
    position: Point
    what: str
    wall: float
    required: float
    beside: str
    sound: bool
    note: str = ""


@dataclass(frozen=True, slots=True)
class Operation:
    """One thing that the shop does.

    Args:
        id: measure, face, mill, window, bore, drill_tap, deepen, drill, edges or coat.
        text: In the shop's words.
        values: Its figures by name, mm or deg, as in the plan.
        features: Features of the new plan that it makes.
    """

    id: str
    text: str
    values: Mapping[str, Value] = field(default_factory=dict)
    features: tuple[str, ...] = ()


@dataclass(frozen=True, slots=True)
class Piece:
    """One piece of volume: its size in mm3 and the box about it (least x, y, z, greatest x, y, z), mm."""

    volume: float
    box: tuple[float, float, float, float, float, float]


@dataclass(frozen=True, slots=True)
class Proof:
    """What the boolean of the two solids shows, leftover cavities taken out of the new one.

    Args:
        added: Volume that the new block has and the old one lacks, mm3.
        removed: Volume that is cut away, mm3.
        tolerance: Volume up to which nothing counts as added, mm3.
        pieces: What would have to be added, the greatest first.
    """

    added: float
    removed: float
    tolerance: float
    pieces: tuple[Piece, ...] = ()


@dataclass(frozen=True, slots=True)
class Rework:
    """Whether the block that exists can be re-machined into the new one.

    Args:
        feasible: Nothing has to be added, and what stays is sound.
        attempt: The way that works, or the one that misses by the least.
        target: The block as it would be after it; None where none could be sized.
        reasons: What stands against it; empty where it is feasible.
        as_drawn: What stands against the new plan as it is; empty where that works.
        operations: What the shop does, in order; empty where it is not feasible.
        leftovers: Cavities that stay without use.
        setup: How it is set up, and which datums are picked up.
        obsolete: What must not be used any longer.
        departures: Where the target differs from the new plan, in words.
        proof: What the boolean shows; None where it was not asked for.
        tried: How many ways were tried.
    """

    feasible: bool
    attempt: Attempt
    target: Plan | None
    reasons: tuple[Reason, ...]
    as_drawn: tuple[Reason, ...]
    operations: tuple[Operation, ...]
    leftovers: tuple[Leftover, ...]
    setup: tuple[str, ...]
    obsolete: tuple[str, ...]
    departures: tuple[str, ...]
    proof: Proof | None
    tried: int
