"""The base pattern of one block: given positions, or the first place that is clear; the width grows where it must."""

from __future__ import annotations

from collections.abc import Sequence

from blockgen.record import Ledger
from blockgen.sizing.base_pattern import (
    Obstacle,
    Positions,
    end_wall_pattern,
    pattern,
    side_choices,
    span_beside,
)
from blockgen.sizing.base_screws import BaseScrew
from blockgen.sizing.mating import Flange
from blockgen.sizing.outside import decide_width
from blockgen.sizing.sources import CP

_USING = (
    "length",
    "width",
    "window_width",
    "base_screw",
    "bearing_drill_depth",
    "motor_drill_depth",
    "practice.counterbore_rim",
)


def place_base_screws(
    ledger: Ledger, screw: BaseScrew, flanges: Sequence[Flange], obstacles: Sequence[Obstacle], side_wall: float
) -> Positions:
    """Decide block width and base-screw positions (x, y) in mm.

    Args:
        ledger: Ledger with length, walls and window width.
        screw: The base screw.
        flanges: Both flanges.
        obstacles: Holes along x that the screws must pass.
        side_wall: Least side wall, mm.
    """
    across = ledger.text("block.window_axis") == "y"
    if ledger.known("base.hole_positions"):
        locked = ledger.points("base.hole_positions")
        rim = ledger.number("practice.counterbore_rim")
        decide_width(ledger, flanges, side_wall, 2 * (max(abs(y) for _, y in locked) + screw.radius + rim))
        return _enter(ledger, locked, "given: the pattern is locked", "given")
    if across:
        decide_width(ledger, flanges, side_wall, span_beside(ledger, screw, obstacles))
        found = end_wall_pattern(ledger, screw, obstacles, ledger.number("length"))
        return _enter(ledger, found, "in the end walls, outside bores and seat holes", "sized")
    return _place_in_side_walls(ledger, screw, flanges, obstacles, side_wall)


def _place_in_side_walls(
    ledger: Ledger, screw: BaseScrew, flanges: Sequence[Flange], obstacles: Sequence[Obstacle], side_wall: float
) -> Positions:
    """Take the place of the widest span; a wider block where that is short and the wider one gives more."""
    length = ledger.number("length")
    narrow = _best(ledger, screw, flanges, obstacles, (side_wall, 0.0))
    if narrow and _span(narrow) >= ledger.number("practice.screw_spread") * length:
        decide_width(ledger, flanges, side_wall, 0.0)
        return _enter(ledger, narrow, "in the side walls, as near the ends as the seat holes allow", "sized")
    beside = span_beside(ledger, screw, obstacles)
    wide = _best(ledger, screw, flanges, obstacles, (side_wall, beside))
    if wide and (not narrow or _span(wide) > _span(narrow)):
        width = decide_width(ledger, flanges, side_wall, beside)
        ledger.remark(f"The block is {width:g} mm wide so that the base screws stand outside the seat holes.")
        return _enter(ledger, wide, "in the side walls outside the seat holes; the block was widened for it", "sized")
    width = decide_width(ledger, flanges, side_wall, 0.0)
    y = width / 2 - ledger.number("practice.counterbore_rim") - screw.radius
    return _enter(ledger, narrow or _corners(ledger, screw, y), "in the side walls, where there is room", "sized")


def _span(positions: Positions) -> float:
    return max(x for x, _ in positions) - min(x for x, _ in positions)


def _best(
    ledger: Ledger,
    screw: BaseScrew,
    flanges: Sequence[Flange],
    obstacles: Sequence[Obstacle],
    wants: tuple[float, float],
) -> Positions | None:
    """Return the pattern of the widest span for a side wall and a least width (wants), both in mm."""
    trial = ledger.copy()
    width = decide_width(trial, flanges, *wants)
    patterns = [
        found
        for y in side_choices(trial, screw, width)
        if (found := pattern(trial, screw, obstacles, trial.number("length"), y))
    ]
    return max(patterns, key=_span, default=None)


def _corners(ledger: Ledger, screw: BaseScrew, y: float) -> Positions:
    """Return the corners as a last resort for a given width; the ligament check names what is too thin."""
    near = screw.radius + ledger.number("practice.counterbore_rim")
    rows = (near, ledger.number("length") - near)
    return tuple((x, side * y) for side in (1.0, -1.0) for x in rows)


def _enter(ledger: Ledger, positions: Positions, rule: str, origin: str) -> Positions:
    if origin == "given":
        ledger.decide(
            "base_pattern", positions, "mm", rule, ("base.hole_positions",), origin=ledger["base.hole_positions"].origin
        )
    else:
        ledger.decide("base_pattern", positions, "mm", rule, _USING, CP)
    return positions
