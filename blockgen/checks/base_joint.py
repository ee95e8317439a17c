"""Checks of the base joint: slip, opening, load on the screws, pressure under the heads, stripping."""

from __future__ import annotations

import math
from collections.abc import Iterator, Sequence

from blockgen.checks.finding import (
    Finding,
    Question,
    at_least,
    at_most,
    not_assessed,
    remark,
    unless_missing,
)
from blockgen.checks.strip import strip
from blockgen.evidence.stiffness.envelope import all_shares
from blockgen.evidence.stiffness.result import Stiffness
from blockgen.mechanics.bolts import pressure_under_head, stress_area
from blockgen.plan import Fastener, Plan
from blockgen.sizing import base_joint as joint
from blockgen.sizing.loads import missing_for_opening, missing_for_slip, vertical
from blockgen.standards.iso898 import property_class
from blockgen.standards.threads import thread

Places = tuple[tuple[float, float], ...]

_VDI = "VDI 2230 form, from memory"
_STATICS = f"{_VDI}; elementary statics"
_LOADS = (
    "thrust_towards_motor", "thrust_away", "motor.mass", "motor.centre_of_mass", "motor.peak_torque", "shaft_height",
    "job.gravity",
)  # fmt: skip


def base_joint(plan: Plan, stiffness: Stiffness | None = None) -> Iterator[Finding]:
    """Yield the checks of the base joint; its screws share by finite elements where there are any."""
    fastener = next((f for f in plan.fasteners if f.where == "base"), None)
    if fastener is None:
        return
    places = joint.base_positions(plan.records)
    shares = None if stiffness is None else [case.shares for _, case in all_shares(stiffness)]
    state = joint.screw_state(plan.records, places, plan.number("base_preload_least"), shares)
    yield slip(plan, places, state, shares)
    if shares is not None:
        yield first_slip(plan, state, shares)
    yield opening(plan, places, state, shares)
    yield screw_load(plan, state)
    yield head_pressure(plan, fastener, state)
    yield strip(plan, fastener, "base", "block" if _from_below(plan) else "base", state.felt)
    yield from falling(plan)


def _from_below(plan: Plan) -> bool:
    return plan.text("base.screw_from") == "below"


def _no_thrust(plan: Plan, ask: Question) -> Finding | None:
    """Return the finding where the thrust is not given, or given as zero; else None."""
    if "screw.thrust" not in plan.records:
        return not_assessed(plan, ask, "screw.thrust")
    if plan.number("screw.thrust") == 0:
        return not_assessed(plan, ask, "a thrust other than zero", "screw.thrust")
    return None


def slip(plan: Plan, places: Places, state: joint.ScrewState, shares: Sequence[joint.Shares] | None = None) -> Finding:
    """Compare the friction of the base joint with the forces along it.

    The block moves only when no screw has friction left: one whose spot slips first hands on what is too much for it.
    As the forces across the joint are those of the preload, the joint holds whenever some sharing of the load that
    keeps the balance stays below the friction at each screw (limit theorem of plasticity, lower bound). The sharing of
    a rigid block is one such; finite elements add the lift at each screw.
    """
    ask = Question(
        "base_slip", "Base joint holds the thrust by friction",
        ("slip_safety_wanted", "base_preload", "base_preload_least", "base.friction", "base_pattern", "base.tightening",
         f"practice.scatter_{plan.text('base.tightening')}", "practice.embedding", *_LOADS),
        "the block slips on the base: larger or more screws, a higher class or a better tool", _STATICS,
    )  # fmt: skip
    blank = _no_thrust(plan, ask)
    if blank is not None:
        return blank
    safety = joint.base_slip(plan.records, places, state.sure)
    text = f"least preload {state.sure / 1000:.1f} kN a screw after tool scatter and embedding; dowels are not counted"
    if shares is not None:
        lifted = joint.group_slip(shares, plan.number("base.friction"), state.sure)
        text += f"; {safety:.3g} for a rigid block, {lifted:.3g} with the lift at each screw by finite elements"
        safety = min(safety, lifted)
    found = at_least(plan, ask, safety, plan.number("slip_safety_wanted"), "", text)
    return unless_missing(plan, ask, found, missing_for_slip(plan.records))


def first_slip(plan: Plan, state: joint.ScrewState, shares: Sequence[joint.Shares]) -> Finding:
    """Compare the friction at each screw with the force along the base there, as long as nothing slips.

    Beyond it the spot under one screw creeps back and forth with the load: the block stays, but the joint frets and
    that screw may work loose.
    """
    ask = Question(
        "base_first_slip", "No screw of the base lets go before the others",
        ("practice.first_slip_safety", "base_preload_least", "base.friction", "base_pattern", *_LOADS),
        "the joint begins to creep at one screw, though the block stays: spread the base screws evenly about the load, "
        "or tighten them more",
        f"{_VDI}, its safety for a steady load; worst screw, support and load by finite elements", "warn",
    )  # fmt: skip
    blank = _no_thrust(plan, ask)
    if blank is not None:
        return blank
    safety = joint.slip_of_shares(shares, plan.number("base.friction"), state.sure)
    text = f"least preload {state.sure / 1000:.1f} kN a screw; forces at the screws by finite elements, nothing slips"
    found = at_least(plan, ask, safety, plan.number("practice.first_slip_safety"), "", text)
    return unless_missing(plan, ask, found, missing_for_slip(plan.records))


def opening(
    plan: Plan, places: Places, state: joint.ScrewState, shares: Sequence[joint.Shares] | None = None
) -> Finding:
    """Compare the preload with the one at which an edge under the block begins to gape."""
    ask = Question(
        "base_opening", "Base joint stays closed at every edge",
        ("limits.separation_safety", "base_preload_least", "base_pattern", "length", "width", "window_length",
         "window_width", *_LOADS),
        "an edge of the base gapes: larger or more screws, further apart, or a longer block", _STATICS,
    )  # fmt: skip
    blank = _no_thrust(plan, ask)
    if blank is not None:
        return blank
    face = joint.base_face(plan.records, _relief(plan))
    safety = joint.base_opening(plan.records, places, state.sure, face)
    text = f"thrust at shaft height, motor weight and torque against preload on {face.area:.0f} mm2; rigid block"
    if shares is not None:
        at_screw = joint.opening_of_shares(shares, state.sure)
        text = f"{text} {safety:.3g}; preload over lift at the worst screw by finite elements {at_screw:.3g}"
        safety = min(safety, at_screw)
    found = at_least(plan, ask, safety, plan.number("limits.separation_safety"), "", text)
    return unless_missing(plan, ask, found, missing_for_opening(plan.records))


def _relief(plan: Plan) -> tuple[float, float] | None:
    cut = next((f.pocket for f in plan.features if f.kind == "relief"), None)
    return None if cut is None else (cut.low[0], cut.high[0])


def screw_load(plan: Plan, state: joint.ScrewState) -> Finding:
    """Compare what a base screw can still take on after tightening with what tilting and heat add."""
    ask = Question(
        "base_screw_load", "Base screws bear what tilting adds to their preload",
        ("base_preload", "practice.preload_use", "practice.cone_tangent", "practice.screw_modulus", "base_screw_length",
         "thermal.block_temperature", "thermal.assembly_temperature", *_LOADS),
        "the most loaded base screw is overloaded: larger or more screws, or tighten to less of the yield point",
        f"{_VDI}: what tightening leaves of the yield point", "warn",
    )  # fmt: skip
    blank = _no_thrust(plan, ask)
    if blank is not None:
        return blank
    if state.felt <= 0:
        return remark(plan, ask, "pass", "nothing is added to the preload")
    heat = f"; heat adds {state.heat:.0f} N" if state.heat > 0 else ""
    text = f"{state.load:.0f} N at the worst screw, of which it feels {state.share:.0%}{heat}"
    found = at_least(plan, ask, _reserve(plan) / state.felt, 1.0, "", text)
    return unless_missing(plan, ask, found, missing_for_opening(plan.records))


def _reserve(plan: Plan) -> float:
    """Return what tightening leaves of a base screw's yield point, N."""
    screw = thread(plan.text("base_screw"))
    strength = property_class(plan.text("base.property_class"), screw.diameter).yield_strength
    left = 1 - plan.number("practice.preload_use")
    return left * strength * stress_area(screw.pitch_diameter, screw.root_diameter)


def head_pressure(plan: Plan, fastener: Fastener, state: joint.ScrewState) -> Finding:
    """Compare the pressure under the heads, or their washers, with what the material bears."""
    part = "base" if _from_below(plan) else "block"
    limit, torque = f"{part}_bearing_pressure", fastener.torque or 0.0
    force = (fastener.preload or 0.0) + state.felt
    face, hole = plan.number("base_bearing_diameter"), plan.number("base_screw_hole")
    pressure = pressure_under_head(force, face, hole)
    allowed = plan.records[limit].value
    most = math.nan
    if isinstance(allowed, float | int) and fastener.preload:
        most = torque * max(allowed * force / pressure - state.felt, 0.0) / fastener.preload
    ask = Question(
        "base_head_pressure", f"Pressure of the base screws' heads on the {part}",
        ("base_preload", "base_bearing_diameter", "base_screw_hole", "base_washer", limit, f"{part}.material"),
        f"the heads sink in and preload is lost: {_cure(plan)}tighten with at most {most:.3g} N*m and see that slip "
        "still holds",
        f"{_VDI}: p = F / A; limit of the material's table",
    )  # fmt: skip
    if not isinstance(allowed, float | int):
        name = plan.text(f"{part}.material")
        return not_assessed(plan, ask, f"pressure allowed under a head on {name}", f"material.{name}.bearing_pressure")
    under = f"under {plan.text('base_washer')}" if plan.text("base_washer") else "under the bare heads"
    return at_most(plan, ask, pressure, allowed, "MPa", f"{force / 1000:.1f} kN {under}")


def _cure(plan: Plan) -> str:
    return "" if plan.text("base_washer") else "a hard washer under them, or "


def falling(plan: Plan) -> Iterator[Finding]:
    """Warn of a load that falls where the axis stands upright."""
    records = plan.records
    if not vertical(records):
        return
    ask = Question("falling_load", "Nothing can fall", ("job.gravity", "screw.moved_mass", "motor.brake"), "")
    mass = f"{plan.number('screw.moved_mass'):g} kg" if "screw.moved_mass" in records else "a mass that is not given"
    braked = "motor.brake" in records and records["motor.brake"].value is True
    brake = "and the brake on the motor does not hold it" if braked else "and no brake is given"
    text = f"the axis is vertical: {mass} falls when the coupling is opened, {brake}: prop it first"
    yield remark(plan, ask, "warn", text)
