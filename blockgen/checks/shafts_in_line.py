"""Checks of the alignment: offset and angle at the coupling, use of the coupling, heat, ball life."""

from __future__ import annotations

import math
from collections.abc import Iterator

from blockgen.alignment.chain import Alignment, Spread
from blockgen.checks.finding import Finding, Question, at_most, not_assessed, remark
from blockgen.plan import Plan

_EXACT = "exact two-dimensional statistics of the contributors (Fourier-Bessel sum)"
_BLOCK = (
    "bearing_bore", "motor_bore", "block.coaxiality", "block.seat_perpendicularity", "coupling_position", "length",
)  # fmt: skip
_MEND = "tighten the contributor with the greatest gain, see the alignment section"


def shafts_in_line(plan: Plan, alignment: Alignment) -> Iterator[Finding]:
    """Yield the checks of an alignment, which is evidence worked out beside the plan."""
    percent = _percent(alignment)
    yield _spread(plan, "offset", alignment.offset, percent, "mm", 1.0)
    yield _spread(plan, "angle", alignment.angle, percent, "deg", math.degrees(1.0))
    yield _use(plan, alignment, "likely", percent)
    yield _use(plan, alignment, "worst", percent)
    yield from _heat(plan, alignment)
    yield _life(plan, alignment)


def _percent(alignment: Alignment) -> str:
    return f"{100 * alignment.use.probability:g} %"


def _spread(plan: Plan, what: str, spread: Spread, percent: str, unit: str, scale: float) -> Finding:
    """Compare offset or angle at the probability asked for with the coupling's allowance."""
    allow = {"offset": "parallel", "angle": "angular"}[what]
    causes = tuple(cause.characteristic for cause in plan.contributors if cause.characteristic in plan.records)
    keys = (f"limits.{allow}", f"coupling.allow_{allow}", "limits.probability", *causes, *_BLOCK)
    ask = Question(
        f"shaft_{what}", f"Shaft {what} at the coupling, not exceeded with {percent}", keys, _MEND, _EXACT, "fail",
    )  # fmt: skip
    if spread.limit is None:
        return not_assessed(plan, ask, f"coupling.allow_{allow}")
    return at_most(plan, ask, spread.judged * scale, spread.limit * scale, unit)


def _use(plan: Plan, alignment: Alignment, case: str, percent: str) -> Finding:
    """Compare the sum of fractions with what may be used: all of it at worst, less of it statistically."""
    likely, use = case == "likely", alignment.use
    title = f"Use of the coupling, {f'percentiles at {percent} added' if likely else 'worst case'}"
    keys = (
        "coupling.allow_parallel", "coupling.allow_angular", "coupling.allow_axial", "limits.coupling_use",
        "practice.setting_tolerance", "practice.axial_left",
    )  # fmt: skip
    miss = f"offset, angle and axial movement together use up the coupling; {_MEND}"
    source = f"sum of fractions, common practice; {use.label}" if likely else "sum of fractions, common practice"
    ask = Question(f"coupling_use_{case}", title, keys, miss, source, "fail" if likely else "warn")
    value = use.likely if likely else use.worst
    if value is None:
        return not_assessed(plan, ask, " and ".join(use.missing))
    return at_most(plan, ask, value, plan.number("limits.coupling_use") if likely else 1.0, "")


def _heat(plan: Plan, alignment: Alignment) -> Iterator[Finding]:
    """State what heat does; it has no limit of its own."""
    heat = alignment.heat
    ask = Question(
        "heat", "Height error of screw to guide from heat",
        ("thermal.block_temperature", "thermal.nut_side_temperature", "thermal.assembly_temperature", "shaft_height",
         "block_expansion", "base_expansion", "screw.nut_distance_min", "practice.motor_flange_expansion",
         "practice.bearing_housing_expansion", "motor_bore", "bearing_bore"),
        "", "height x difference of expansion and temperature (engineering formula)", "pass",
    )  # fmt: skip
    if heat is None:
        yield not_assessed(plan, ask, "[thermal] with assembly, block and nut_side temperature")
        return
    angle = "its angle needs screw.nut_distance_min"
    if heat.angle is not None:
        slope = f"{1000 * heat.angle:.3f} mrad over {heat.nut_distance:g} mm to the nut"
        angle = f"{slope}, which the chain has as a known vector"
    text = (
        f"screw {heat.height_error:+.4f} mm against its guide; {angle}; pilot clearance grows by "
        f"{heat.motor_growth:+.4f} mm at the motor and {heat.bearing_growth:+.4f} mm at the bearing"
    )
    yield remark(plan, ask, "pass", text)


def _life(plan: Plan, alignment: Alignment) -> Finding:
    """State what the coupling's reaction costs the fixed bearing."""
    ask = Question(
        "ball_life", "Ball life with the coupling's radial reaction over life without it",
        ("coupling.radial_stiffness", "screw.thrust"), "", "ISO 281 life exponent 3, from memory", "pass",
    )  # fmt: skip
    if alignment.life_ratio is None or alignment.reaction.force is None:
        lacking = tuple(key for key in ("coupling.radial_stiffness", "screw.thrust") if key not in plan.records)
        return not_assessed(plan, ask, " and ".join(lacking), *lacking)
    text = (
        f"ratio {alignment.life_ratio:.3f} at the thrust given, the reaction of {alignment.reaction.force:.1f} N added "
        "in full; at a lower mean load the loss is greater"
    )
    return remark(plan, ask, "pass", text)
