"""Checks of the block's stiffness from finite elements: each at the unfavourable end of the envelope."""

from __future__ import annotations

import math
from collections.abc import Iterator
from dataclasses import replace

from blockgen.checks.finding import Finding, Question, at_least, at_most, not_assessed, remark
from blockgen.evidence.stiffness.envelope import (
    End,
    greatest_offset,
    greatest_slope,
    greatest_stress,
    least_stiffness,
    lowest_frequency,
)
from blockgen.evidence.stiffness.result import Stiffness
from blockgen.mechanics.beams import in_series
from blockgen.plan import Plan
from blockgen.sizing.loads import known

_FE = "finite elements, mesh refined where it counts; unfavourable end over supports and flanges, error band included"
_BLOCK = ("bearing_wall", "motor_wall", "side_wall", "shaft_height", "length", "width", "height", "window_width",
          "block_youngs_modulus", "block_poisson", "base_pattern", "base.bed_stiffness")  # fmt: skip
_LOADS = ("thrust_towards_motor", "thrust_away", "motor.mass", "motor.centre_of_mass", "motor.peak_torque")


def flexing(plan: Plan, stiffness: Stiffness) -> Iterator[Finding]:
    """Yield the checks of stiffness, tilt, offset, first frequency and stress."""
    yield axial_stiffness(plan, stiffness)
    yield from tilt(plan, stiffness)
    yield frequency(plan, stiffness)
    yield stress(plan, stiffness)


def _at(end: End) -> str:
    return f"{end.where}; band {end.band:.1%} either way"


def axial_stiffness(plan: Plan, stiffness: Stiffness) -> Finding:
    """Compare the block's stiffness at the bearing seat with that of screw and bearing in series."""
    ask = Question(
        "axial_stiffness", "Block's stiffness over that of screw and bearing in series",
        (*_BLOCK, "screw.axial_stiffness", "bearing.axial_stiffness", "limits.block_stiffness_ratio"),
        "the block costs the drive more stiffness than it should: a thicker bearing wall, a lower shaft; "
        "blockgen check --advise names what helps most",
        _FE, "warn",
    )  # fmt: skip
    end = least_stiffness(stiffness.variants)
    missing = tuple(key for key in ("screw.axial_stiffness", "bearing.axial_stiffness") if not known(plan.records, key))
    size = f"{end.value:.4g} N/um at the bearing seat, {_at(end)}"
    if missing:
        return remark(plan, ask, "not_assessed", f"not assessed: {' and '.join(missing)} is not given; block {size}")
    drive = in_series(*(plan.number(key) for key in ("screw.axial_stiffness", "bearing.axial_stiffness")))
    cost = f"block {size}; screw and bearing {drive:.3g} N/um: the block takes {1 / (1 + end.value / drive):.0%}"
    ask = replace(ask, miss=f"{ask.miss}; {cost}")
    return at_least(plan, ask, end.value / drive, plan.number("limits.block_stiffness_ratio"), "", cost)


def tilt(plan: Plan, stiffness: Stiffness) -> Iterator[Finding]:
    """Compare slope and offset of the bores under load with what the coupling takes; the chain has them as well."""
    for what, end, scale, unit, allow in (
        ("tilt", greatest_slope(stiffness.variants), math.degrees(1.0), "deg", "angular"),
        ("shift", greatest_offset(stiffness.variants), 1.0, "mm", "parallel"),
    ):
        title = {"tilt": "Tilt of the bores' axes under load", "shift": "Offset of the bores' axes under load"}[what]
        ask = Question(
            f"elastic_{what}", f"{title}, alone", (*_BLOCK, *_LOADS, f"limits.{allow}", f"coupling.allow_{allow}"),
            "the block bends too far for the coupling: thicker end walls, a lower shaft", _FE,
        )  # fmt: skip
        limit = next((k for k in (f"limits.{allow}", f"coupling.allow_{allow}") if known(plan.records, k)), None)
        figure = f"{1e6 * end.value:.3g} urad" if what == "tilt" else f"{1000 * end.value:.3g} um"
        text = f"{figure}, {_at(end)}"
        if not any(known(plan.records, key) for key in _LOADS):
            yield not_assessed(plan, ask, "screw.thrust", "screw.thrust")
        elif limit is None:
            yield remark(plan, ask, "not_assessed", f"not assessed: coupling.allow_{allow} is not given; {text}")
        else:
            yield at_most(plan, ask, end.value * scale, plan.number(limit), unit, text)


def frequency(plan: Plan, stiffness: Stiffness) -> Finding:
    """Compare the lowest frequency of the motor on its seat with the one asked for."""
    ask = Question(
        "first_frequency", "First frequency of the motor on the block",
        (*_BLOCK, "motor.mass", "motor.centre_of_mass", "motor.body_size", "motor.body_length",
         "limits.first_frequency"),
        "the motor may nod within the drive's bandwidth: a thicker motor wall, a lower shaft, a prop",
        f"{_FE}; motor as a rigid body", "warn",
    )  # fmt: skip
    end = lowest_frequency(stiffness.variants)
    if end is None:
        missing = tuple(key for key in ("motor.mass", "motor.centre_of_mass") if not known(plan.records, key))
        return not_assessed(plan, ask, " and ".join(missing), *missing)
    point = "; the motor counts as a point, since the size of its body is not given" if stiffness.point_mass else ""
    text = f"{end.value:.4g} Hz, {_at(end)}{point}"
    if not known(plan.records, "limits.first_frequency"):
        text = f"not assessed: limits.first_frequency is not given; {text}; usual is 3 times the drive's bandwidth"
        return remark(plan, ask, "not_assessed", text)
    return at_least(plan, ask, end.value, plan.number("limits.first_frequency"), "Hz", text)


def stress(plan: Plan, stiffness: Stiffness) -> Finding:
    """Compare the greatest stress away from singular edges with what may alternate for ever.

    The thrust turns round, so that all of the stress counts as amplitude. What is allowed is less than half of the
    yield point of every listed metal, which therefore needs no comparison of its own.
    """
    ask = Question(
        "block_stress", "Greatest stress in the block away from sharp edges and heads",
        (*_BLOCK, *_LOADS, "block_tensile_strength", "practice.fatigue_share", "practice.fatigue_safety"),
        "the block may crack: thicker end walls, larger radii in the window, a stronger material",
        f"{_FE}; von Mises; share of the tensile strength and safety are common practice, no source",
    )  # fmt: skip
    end = greatest_stress(stiffness.variants)
    if end.case is None or not end.value:
        return not_assessed(plan, ask, "screw.thrust", "screw.thrust")
    strength, share = plan.number("block_tensile_strength"), plan.number("practice.fatigue_share")
    safety = plan.number("practice.fatigue_safety")
    place = ", ".join(f"{c:.0f}" for c in end.case.stress_place)
    text = (
        f"{end.value:.3g} MPa at ({place}), {_at(end)}; allowed {share:g} of the tensile strength {strength:g} MPa "
        f"over {safety:g}; preload and the corners of heads and flanges are not in it"
    )
    ask = replace(ask, miss=f"{ask.miss}; {text}")
    return at_most(plan, ask, end.value, share * strength / safety, "MPa", text)
