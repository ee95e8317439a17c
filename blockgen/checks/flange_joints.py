"""Checks of the flange joints: thrust that pulls the bearing, torque and weight of the motor, stripping, heads."""

from __future__ import annotations

import math
from collections.abc import Iterator

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
from blockgen.mechanics.bolts import pressure_under_head, pull_safety
from blockgen.plan import Fastener, Plan
from blockgen.sizing import flange_joint as joint
from blockgen.sizing.loads import down, known, missing_for_pull, motor_torque
from blockgen.standards.screws import cap_screw
from blockgen.standards.threads import thread

_STATICS = "VDI 2230 form, from memory; elementary statics"


def flange_joints(plan: Plan) -> Iterator[Finding]:
    """Yield the checks of both flange joints."""
    for fastener in plan.fasteners:
        if fastener.where == "bearing_flange":
            yield bearing_pull(plan, fastener)
            yield strip(plan, fastener, "bearing", "block", joint.bearing_pull(plan.records) / fastener.count)
            yield flange_pressure(plan, "bearing")
        elif fastener.where == "motor_flange":
            yield torque_reaction(plan)
            yield cantilever(plan)
            yield motor_threads(plan, fastener)
            yield flange_pressure(plan, "motor")


def screw_places(plan: Plan, end: str) -> tuple[tuple[float, float], ...]:
    """Return the screws of a seat (y, z) from the shaft axis, mm."""
    axis, groups = plan.number("shaft_height"), {f"{end}_threads", f"{end}_holes"}
    return tuple((f.position[1], f.position[2] - axis) for f in plan.features if f.group in groups)


def bearing_pull(plan: Plan, fastener: Fastener) -> Finding:
    """Compare the preload of the bearing flange's screws with the thrust that pulls on them."""
    ask = Question(
        "bearing_pull", "Bearing flange stays on its seat when the thrust pulls",
        ("thrust_away", "thrust_towards_motor", "bearing_preload_least", "limits.separation_safety", "screw.thrust",
         "screw.thrust_direction"),
        "the thrust pulls the bearing flange off its seat: more or larger flange screws, or turn the unit round",
        "VDI 2230 form, from memory: F_V over the pull, all of it taken off the clamped faces",
    )  # fmt: skip
    missing = missing_for_pull(plan.records)
    if "slip_safety_wanted" not in plan.records:
        return not_assessed(plan, ask, "screw.thrust", *(missing or ("screw.thrust",)))
    pull = joint.bearing_pull(plan.records)
    if pull <= 0 and plan.records["screw.reversing"].value is True:
        text = (
            "the thrust reverses but is said to act towards the motor only: give thrust_direction both, or no reversing"
        )
        return remark(plan, ask, "warn", text)
    if pull <= 0:
        seated = remark(plan, ask, "pass", "the thrust acts towards the motor and presses the flange on to its seat")
        return unless_missing(plan, ask, seated, missing)
    safety = pull_safety(fastener.count * plan.number("bearing_preload_least"), pull)
    text = f"{pull:.0f} N away from the motor on {fastener.count} screws; towards it the flange is seated"
    found = at_least(plan, ask, safety, plan.number("limits.separation_safety"), "", text)
    return unless_missing(plan, ask, found, missing)


def torque_reaction(plan: Plan) -> Finding:
    """Compare the friction of the motor flange with the reaction of its peak torque."""
    ask = Question(
        "motor_torque_slip", "Motor flange holds the motor's torque by friction",
        ("motor.peak_torque", "motor.rated_torque", "motor_preload_least", "base.friction", "motor.bolt_circle",
         "limits.slip_safety", "practice.reversing_factor", "screw.reversing"),
        "the motor turns on its seat: larger or more flange screws", f"{_STATICS}; friction as of the base joint",
    )  # fmt: skip
    torque = motor_torque(plan.records)
    if torque == 0:
        return not_assessed(plan, ask, "motor.peak_torque")
    places = screw_places(plan, "motor")
    safety = joint.torque_slip(places, plan.number("motor_preload_least"), plan.number("base.friction"), torque)
    text = f"{torque:g} N*m at {len(places)} screws; the pilot is not counted"
    found = at_least(plan, ask, safety, _slip_wanted(plan), "", text)
    missing = () if known(plan.records, "motor.peak_torque") else ("motor.peak_torque",)
    return unless_missing(plan, ask, found, missing)


def _slip_wanted(plan: Plan) -> float:
    """Return the safety asked of friction: of the thrust, or the same for a torque that reverses without one."""
    if "slip_safety_wanted" in plan.records:
        return plan.number("slip_safety_wanted")
    given = plan.records["limits.slip_safety"].origin != "assumed"
    reverses = plan.records["screw.reversing"].value is not False and not given
    return plan.number("limits.slip_safety") * (plan.number("practice.reversing_factor") if reverses else 1.0)


def cantilever(plan: Plan) -> Finding:
    """Compare the preload of the motor flange with the one at which the hanging motor opens it."""
    ask = Question(
        "motor_opening", "Motor flange stays closed under the motor's weight",
        ("motor.mass", "motor.centre_of_mass", "motor_preload_least", "limits.separation_safety", "job.gravity",
         "motor.flange_size", "motor_bore"),
        "the motor opens its flange: larger screws, or prop the motor", f"{_STATICS}; at rest, no shock",
    )  # fmt: skip
    upright = down(plan.records).endswith("x")
    wanted = ("motor.mass",) if upright else ("motor.mass", "motor.centre_of_mass")
    missing = tuple(key for key in wanted if not known(plan.records, key))
    if missing:
        return not_assessed(plan, ask, " and ".join(missing), *missing)
    sure = plan.number("motor_preload_least")
    safety = joint.motor_opening(plan.records, screw_places(plan, "motor"), sure)
    if math.isinf(safety):
        return remark(plan, ask, "pass", "the motor stands on its seat and presses it")
    text = "weight of the motor at its centre of mass; speeding up and shocks are not in it"
    return at_least(plan, ask, safety, plan.number("limits.separation_safety"), "", text)


def motor_threads(plan: Plan, fastener: Fastener) -> Finding:
    """Compare stripping of the block's threads with preload and weight; the maker's threads are not known."""
    if plan.text("motor.fastening") != "tapped":
        pull = joint.motor_screw_pull(plan.records, screw_places(plan, "motor"))
        return strip(plan, fastener, "motor", "block", pull)
    ask = Question("motor_strip", "Threads in the motor flange hold at full preload", ("motor_preload",), "")
    fact = "tightening torque or material of the tapped motor flange (maker's data)"
    return not_assessed(plan, ask, fact)


def flange_pressure(plan: Plan, end: str) -> Finding:
    """Compare the pressure under the heads of flange screws with what the part under them bears."""
    tapped = plan.text(f"{end}.fastening") == "tapped"
    ask = Question(
        f"{end}_head_pressure", f"Pressure of the {end} screws' heads",
        (f"{end}_preload", f"{end}_thread", f"{end}.bolt_hole", "block_bearing_pressure"),
        "the heads sink in and preload is lost: a hard washer under them, or a lower torque",
        "VDI 2230 form, from memory: p = F / A", "warn",
    )  # fmt: skip
    if not tapped:
        return not_assessed(plan, ask, f"pressure that the {end} flange bears under screw heads (maker's data)")
    allowed = plan.records["block_bearing_pressure"].value
    if not isinstance(allowed, float | int):
        name = plan.text("block.material")
        return not_assessed(plan, ask, f"pressure allowed under a head on {name}", f"material.{name}.bearing_pressure")
    hole = next(f.diameter for f in plan.features if f.group == f"{end}_holes")
    face = cap_screw(thread(plan.text(f"{end}_thread")).size).washer_face
    pressure = pressure_under_head(plan.number(f"{end}_preload"), face, hole)
    return at_most(plan, ask, pressure, allowed, "MPa")
