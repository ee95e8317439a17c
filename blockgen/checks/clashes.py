"""Checks of the solids: nothing clashes, planned contacts are made, clearances hold, tools reach."""

from __future__ import annotations

import math
from collections.abc import Iterator, Mapping, Sequence
from dataclasses import replace

from blockgen.checks.finding import Finding, Question, at_least, at_most
from blockgen.evidence.clearance_limits import LIMITS, limit
from blockgen.evidence.clearances import Access, Clearance, Clearances, Pair
from blockgen.plan import Plan
from blockgen.record import Input

_SHOWN = 6
_HAIR = 1e-6
_SOLIDS = "solids of the parts against each other; stand-ins are built from the sizes of the spec"

_ACCESS = {
    "base": ("base", ("base_screw", "base_counterbore_diameter", "base_counterbore_depth", "practice.key_clearance")),
    "bearing": ("bearing", ("bearing_thread", "bearing.flange_thickness", "practice.key_clearance")),
    "motor": ("motor", ("motor_thread", "motor.body_size", "motor.fastening", "practice.key_clearance")),
    "coupling": ("coupling clamp", ("coupling.clamp_position", "coupling.clamp_access_radius", "window_width")),
    "lock_nut": ("lock nut", ("bearing.spanner_diameter", "bearing.nut_reach", "bearing_wall")),
}
_CURES = {
    "base": "move the screw, or take a larger counterbore",
    "bearing": "take screws with another drive, or a smaller housing behind the flange",
    "motor": "take screws with another drive or length, or widen the window for a tapped flange",
    "coupling": "widen or lengthen the window, or cut a radial access hole to the clamp screw",
    "lock_nut": "open the bore behind the nut, or tighten the nut before the unit is put in",
}


def clashes(plan: Plan, clearances: Clearances) -> Iterator[Finding]:
    """Yield what the solids show about a plan.

    Args:
        plan: What was decided.
        clearances: What was measured on the solids of its parts.
    """
    yield clash_free(plan, clearances)
    yield contacts_made(plan, clearances)
    yield from least_clearance(plan, clearances.named)
    yield from space(plan, clearances.named)
    yield from motor_over_base(plan, clearances)
    for where in _ACCESS:
        yield from key_access(plan, where, [a for a in clearances.access if a.where == where])


def clash_free(plan: Plan, clearances: Clearances) -> Finding:
    """Compare what parts overlap without being planned with the rounding of the solids; mere contact warns."""
    found = [pair for pair in clearances.clashes if not _motor_in_plate(pair)]
    volume = math.fsum(pair.beyond for pair in found)
    allowed = limit("practice.clash_volume")
    told = f"parts that clash: {listed([clash_words(pair) for pair in found])}"
    keys, limits = ("coupling.outer_diameter", "window_width"), ("practice.clash_volume", "practice.contact_distance")
    ask = Question("clash_free", "Common volume of parts that should not touch", keys, told, _SOLIDS)
    near = f"{len(clearances.pairs)} pairs measured, {clearances.apart} further apart"
    made = _with_limits(at_most(plan, ask, volume, allowed, "mm3", near), limits)
    if found and made.verdict == "pass":
        return replace(made, verdict="warn", explanation=told)
    return made


def clash_words(pair: Pair) -> str:
    """Return a clash in words."""
    if pair.beyond <= limit("practice.clash_volume"):
        return f"{pair.name} touch"
    more = f" beyond the planned overlap of {pair.expected:.4g} mm3" if pair.expected else ""
    return f"{pair.name} by {pair.beyond:.4g} mm3{more}"


def _motor_in_plate(pair: Pair) -> bool:
    """Tell whether a clash is that of the motor with the base plate, which has a check of its own.

    How far the plate goes on under the motor is not known; only a patch of it is modelled.
    """
    return {pair.first, pair.second} == {"motor", "base_plate"}


def contacts_made(plan: Plan, clearances: Clearances) -> Finding:
    """Compare the planned contacts with those that the solids show."""
    told = f"not made as planned: {listed(clearances.not_made)}"
    ask = Question("contacts_made", "Planned contacts that the solids do not show", (), told, _SOLIDS, "warn")
    limits = ("practice.contact_distance", "practice.engaged_difference")
    text = "every seat and thread is as planned"
    return _with_limits(at_most(plan, ask, float(len(clearances.not_made)), 0.0, "", text), limits)


def least_clearance(plan: Plan, named: Sequence[Clearance]) -> Iterator[Finding]:
    """Compare the distance that leaves least over what is asked for it."""
    asked = [c for c in named if c.asked is not None and c.key in {"coupling.clearance", "coupling.gap_min"}]
    if not asked:
        return
    worst = min(asked, key=lambda c: (round(c.distance - (c.asked or 0.0), 6), c.id))
    told = f"{worst.title}: too near; see the table of clearances"
    ask = Question(
        "least_clearance", "Least clearance about coupling and shaft ends", (worst.key,), told, _SOLIDS, "warn"
    )
    yield at_least(plan, ask, worst.distance, worst.asked or 0.0, text=f"least over what is asked: {worst.title}")


def space(plan: Plan, named: Sequence[Clearance]) -> Iterator[Finding]:
    """Compare the reach of all parts with height and width given; that of the block alone is checked without solids."""
    titles = {"height_limit": "Every part under the height limit", "width_available": "Every part in the width given"}
    for clearance in named:
        if clearance.id in titles and clearance.first != "block":
            taken = plan.number(clearance.key) - clearance.distance
            told = f"{clearance.first} needs more than {clearance.key} gives"
            check_id = "width_limit" if clearance.id == "width_available" else clearance.id
            ask = Question(check_id, titles[clearance.id], (clearance.key,), told, _SOLIDS, "warn")
            text = f"{clearance.first} reaches furthest"
            yield at_most(plan, ask, taken, plan.number(clearance.key), text=text)


def motor_over_base(plan: Plan, clearances: Clearances) -> Iterator[Finding]:
    """Compare the lowest point of the motor's solid with the base face, where it says more than the body's size."""
    lowest = next((c for c in clearances.named if c.id == "motor_base_plane"), None)
    if lowest is None:
        return
    volume = math.fsum(pair.beyond for pair in clearances.clashes if _motor_in_plate(pair))
    if not volume and _known_without_solids(plan, lowest.distance):
        return
    told = f"motor and base_plate clash by {volume:.4g} mm3 as far as the plate is modelled: " if volume else ""
    ask = Question(
        "motor_over_base", "Lowest point of the motor's solid above the base face",
        ("shaft_height", "motor.body_size", "practice.body_clearance"),
        f"{told}the motor reaches too low: end the base plate before it, or raise the shaft", _SOLIDS, "warn",
    )  # fmt: skip
    yield at_least(plan, ask, lowest.distance, lowest.asked or 0.0)


def _known_without_solids(plan: Plan, lowest: float) -> bool:
    """Tell whether the size of the body gives the same lowest point."""
    if "motor.body_size" not in plan.records:
        return False
    return abs(plan.number("shaft_height") - plan.number("motor.body_size") / 2 - lowest) < _HAIR


def key_access(plan: Plan, where: str, found: Sequence[Access]) -> Iterator[Finding]:
    """Compare the tools that reach their places with those that must."""
    if not found:
        return
    title, keys = _ACCESS[where]
    blocked = [access for access in found if not access.free]
    told = f"{listed([access_words(access) for access in blocked])}: {_CURES[where]}"
    ask = Question(f"key_access_{where}", f"Tools that reach the {title}{_screws(where)}", keys, told, _SOLIDS, "warn")
    reached = float(len(found) - len(blocked))
    made = at_least(plan, ask, reached, float(len(found)), "", _free_words(found))
    swung = ("practice.key_long_arm", "practice.key_swing", "practice.key_direction_step")
    yield _with_limits(made, {"coupling": swung[2:], "lock_nut": ()}.get(where, swung))


def _screws(where: str) -> str:
    return "" if where == "lock_nut" else " screws"


def access_words(access: Access) -> str:
    """Return what keeps a tool from its place, in words."""
    way = f", {' and '.join(access.in_way)} in the way" if access.in_way else ""
    way += f" ({access.note})" if access.note else ""
    if access.length < access.needed - _HAIR:
        return f"{access.part}: {access.tool} gets {access.length:.3g} of {access.needed:.3g} mm{way}"
    return f"{access.part}: {access.tool} turns {access.angle or 0:.0f} of {access.needed_angle or 0:.0f} deg{way}"


def _free_words(found: Sequence[Access]) -> str:
    """Return how the tools reach: directions about the shaft where these were tried."""
    spans = {span for access in found for span in access.directions}
    if not spans:
        return "every one reaches and turns"
    return f"free from {listed([directions_words(access) for access in found])}"


def directions_words(access: Access) -> str:
    """Return the free directions of one place in words."""
    spans = [f"{a:g}" if a == b else f"{a:g} to {b:g}" for a, b in access.directions]
    return f"{' and '.join(spans)} deg ({access.part})"


def listed(words: Sequence[str]) -> str:
    """Return the first few of many in one line."""
    more = f" and {len(words) - _SHOWN} more" if len(words) > _SHOWN else ""
    return "; ".join(words[:_SHOWN]) + more


def _with_limits(finding: Finding, keys: Sequence[str]) -> Finding:
    """Return a finding with the limits of measuring among its inputs."""
    limits: Mapping[str, Input] = {key: replace(LIMITS[key].as_input(), ref=None) for key in keys}
    return replace(finding, inputs={**finding.inputs, **limits})
