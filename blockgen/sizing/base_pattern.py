"""Where the base screws stand: clear of seat holes, bores and outside, as far apart as that allows."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass

from blockgen.record import Ledger
from blockgen.sizing.base_screws import BaseScrew
from blockgen.sizing.mating import Flange
from blockgen.sizing.rounding import up
from blockgen.sizing.seats import SeatThread, least_cavity_wall

Positions = tuple[tuple[float, float], ...]


@dataclass(frozen=True, slots=True)
class Obstacle:
    """A hole along x that an upright screw must pass: end, centre (y, z), radius, reach from its seat and wall, mm."""

    end: str
    y: float
    z: float
    radius: float
    reach: float
    wall: float


def seat_obstacles(ledger: Ledger, flange: Flange, seat: SeatThread | None) -> list[Obstacle]:
    """Return the obstacles that one seat's holes and bore are, z from the base face."""
    shaft, wall = ledger.number("base.shaft_height"), ledger.number(f"{flange.end}_wall")
    radius = flange.hole / 2 if flange.tapped else flange.thread.diameter / 2
    reach = seat.drill_depth + seat.point if seat else wall
    keep = least_cavity_wall(ledger, flange.thread.diameter)
    holes = [Obstacle(flange.end, y, shaft + z, radius, reach, keep) for y, z in flange.positions]
    bore = max(ledger.number(f"{flange.end}_bore"), ledger.number(f"{flange.end}_through_bore")) / 2
    return [*holes, Obstacle(flange.end, 0.0, shaft, bore, wall, ledger.number("practice.cavity_floor"))]


def passes_beside(screw: BaseScrew, obstacle: Obstacle, y: float) -> bool:
    """Tell whether screws at +-``y`` in mm pass an obstacle at any x."""
    return abs(abs(y) - abs(obstacle.y)) >= screw.radius + obstacle.radius + obstacle.wall


def first_x(ledger: Ledger, screw: BaseScrew, obstacles: Sequence[Obstacle], y: float) -> float:
    """Return the least distance in mm from a seat at which an upright screw at ``y`` stands clear of it."""
    rim = ledger.number("practice.counterbore_rim") if not screw.from_below else (
        (ledger.number("practice.thread_edge") - 0.5) * screw.thread.diameter
    )  # fmt: skip
    nearest = screw.radius + rim
    blocking = [o for o in obstacles if not passes_beside(screw, o, y)]
    return up(max([nearest, *(o.reach + o.wall + screw.radius for o in blocking)]), 0.5)


def span_beside(ledger: Ledger, screw: BaseScrew, obstacles: Sequence[Obstacle]) -> float:
    """Return the block width in mm at which upright screws pass every seat hole on the outside."""
    rim = ledger.number("practice.counterbore_rim")
    outer = max(abs(o.y) + o.radius + o.wall for o in obstacles)
    return 2 * (outer + 2 * screw.radius + rim)


def _rows(ends: tuple[float, float], per_side: int) -> list[float]:
    if per_side == 1:
        return [(ends[0] + ends[1]) / 2]
    step = (ends[1] - ends[0]) / (per_side - 1)
    return [ends[0] + i * step for i in range(per_side)]


def pattern(
    ledger: Ledger, screw: BaseScrew, obstacles: Sequence[Obstacle], length: float, y: float
) -> Positions | None:
    """Return screw positions (x, y) in mm for screws at +-y, or None where they do not fit in the length."""
    near = first_x(ledger, screw, [o for o in obstacles if o.end == "bearing"], y)
    far = length - first_x(ledger, screw, [o for o in obstacles if o.end == "motor"], y)
    per_side = int(ledger.number("base_screw_count")) // 2
    apart = (2 * screw.radius + ledger.number("practice.cavity_floor")) * (per_side - 1)
    if far - near < apart:
        return None
    return tuple((x, side * y) for side in (1.0, -1.0) for x in _rows((near, far), per_side))


def end_wall_pattern(ledger: Ledger, screw: BaseScrew, obstacles: Sequence[Obstacle], length: float) -> Positions:
    """Return screw positions in the end walls for a window across, outside bores and seat holes, mm."""
    span = span_beside(ledger, screw, obstacles)
    y = max(ledger.number("width"), span) / 2 - ledger.number("practice.counterbore_rim") - screw.radius
    rows = (ledger.number("bearing_wall") / 2, length - ledger.number("motor_wall") / 2)
    return tuple((x, side * y) for side in (1.0, -1.0) for x in rows)


def side_choices(ledger: Ledger, screw: BaseScrew, width: float) -> list[float]:
    """Return the y in mm worth trying in a side wall: its middle, then outwards to the rim, then inwards."""
    half, window = width / 2, ledger.number("window_width") / 2
    rim = ledger.number("practice.counterbore_rim")
    outer, inner = half - rim - screw.radius, window + rim + screw.radius
    middle = (half + window) / 2
    return [y for y in (middle, outer, inner) if inner - 1e-9 <= y <= outer + 1e-9]
