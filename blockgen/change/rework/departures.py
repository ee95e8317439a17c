"""Where a block that is re-machined stays other than the new design asks."""

from __future__ import annotations

from collections.abc import Iterator

from blockgen.change.rework.data import Attempt
from blockgen.change.rework.fit import half_flange
from blockgen.plan import Plan

_SIZES = (
    "length", "width", "height", "bearing_wall", "motor_wall", "window_length", "window_width", "window_corner_radius",
    "block.outer_fillet", "block.edge_chamfer", "block.hole_chamfer", "block.window_floor", "block.relief",
)  # fmt: skip
_TEXTS = {
    "block.material": "material",
    "base_screw": "base screws",
    "base.screw_from": "base screws put in from",
    "block.window_axis": "axis of the window",
    "block.finish": "finish",
}
_HAIR = 1e-6


def departures(old: Plan, new: Plan, target: Plan, attempt: Attempt) -> Iterator[str]:
    """Yield where the target differs from the new plan, in words.

    Args:
        old: Plan of the block that exists.
        new: Plan of the block that is wanted.
        target: Plan of the block that it becomes.
        attempt: How it lies in the old one.
    """
    if attempt.turn:
        yield f"the motor is turned by {attempt.turn:g} deg: look at plug and cable"
    if attempt.shift > 0:
        yield (
            f"the bearing seat stands {attempt.shift:g} mm nearer to the motor on the same base: screw, its other "
            "bearing and the ends of travel move with it, or the base holes are drilled anew"
        )
    for key, name in _TEXTS.items():
        before, after = new.text(key), target.text(key)
        if before != after:
            yield f"{name} {after or 'not named'} instead of {before or 'not named'}"
    for key in _SIZES:
        wanted, there = new.number(key), target.number(key)
        if abs(wanted - there) > _HAIR:
            name = key.removeprefix("block.").replace("_", " ")
            yield f"{name} {there:g} instead of {wanted:g} mm"
    if new.records["base_pattern"].value != target.records["base_pattern"].value:
        yield "the base screws stay where they are"
    if half_flange(target)[0] != half_flange(new)[0]:
        yield "the turned flange takes the room of the rectangle about it"
    if _coated(old) and not _coated(new):
        yield f"what is not cut keeps its finish ({old.text('block.finish')}), the new design asks for bare metal"


def _coated(plan: Plan) -> bool:
    return plan.text("block.finish") not in ("", "none")
