"""Checks of the seats: flanges wholly seated, contact ring, pilots, what stands above the base."""

from __future__ import annotations

from collections.abc import Iterator

from blockgen.checks.finding import Finding, Question, at_least, not_assessed, remark
from blockgen.plan import Plan

ENDS = ("bearing", "motor")


def seating(plan: Plan) -> Iterator[Finding]:
    """Yield every check of flanges, pilots and bodies."""
    for end in ENDS:
        yield seated(plan, end)
        yield contact_ring(plan, end)
        yield pilot_engagement(plan, end)
        yield from pilot_fit(plan, end)
    yield carried(plan)
    yield body_above_base(plan)


def half_sizes(plan: Plan, end: str) -> tuple[float, float]:
    """Return half width and half height of a flange in mm."""
    if f"{end}.flange_width" in plan.records and f"{end}.flange_height" in plan.records:
        return plan.number(f"{end}.flange_width") / 2, plan.number(f"{end}.flange_height") / 2
    half = plan.number(f"{end}.flange_size") / 2
    return half, half


def seated(plan: Plan, end: str) -> Finding:
    """Compare the seat that shows around a flange, edge breaks off, with the margin asked for."""
    width, height = half_sizes(plan, end)
    body, shaft = plan.body, plan.number("shaft_height")
    side = body.outer_fillet or body.edge_chamfer
    around = min(
        body.width / 2 - side - width,
        body.height - body.edge_chamfer - shaft - height,
        shaft - height - body.edge_chamfer,
    )
    ask = Question(
        f"{end}_flange_seated", f"Seat that shows around the {end} flange",
        ("width", "height", "shaft_height", f"{end}.flange_size", "block.edge_chamfer", "block.outer_fillet",
         "practice.flange_margin"),
        f"the {end} flange reaches over the seat or on to its edge break: raise the shaft or widen the block",
    )  # fmt: skip
    return at_least(plan, ask, around, plan.number("practice.flange_margin"))


def contact_ring(plan: Plan, end: str) -> Finding:
    """Compare the seat ring between bore chamfer and flange edge with the least one."""
    width, height = half_sizes(plan, end)
    ring = min(width, height) - plan.number(f"{end}_bore") / 2 - plan.number("practice.lead_in")
    ask = Question(
        f"{end}_contact_ring", f"Seat ring between bore and edge of the {end} flange",
        (f"{end}_bore", f"{end}.flange_size", "practice.lead_in", "practice.contact_ring"),
        "the flange has hardly any face to sit on", otherwise="warn",
    )  # fmt: skip
    return at_least(plan, ask, ring, plan.number("practice.contact_ring"))


def pilot_engagement(plan: Plan, end: str) -> Finding:
    """Compare how far the pilot is guided with the least engagement."""
    ask = Question(
        f"{end}_pilot_engagement", f"Engagement of the {end} pilot",
        (f"{end}.pilot_length", f"{end}_bore_depth", "practice.lead_in", "practice.pilot_engagement_least"),
        "the pilot is guided too short to centre the flange", otherwise="warn",
    )  # fmt: skip
    if plan.text(f"{end}.pilot_direction") == "away":
        return remark(
            plan, ask, "warn", "the pilot points away from the wall: nothing centres the unit; align and dowel it"
        )
    guided = min(plan.number(f"{end}.pilot_length"), plan.number(f"{end}_bore_depth")) - plan.number("practice.lead_in")
    return at_least(plan, ask, guided, plan.number("practice.pilot_engagement_least"))


def pilot_fit(plan: Plan, end: str) -> Iterator[Finding]:
    """Warn of a pilot that may be tight in its bore."""
    for cause in plan.contributors:
        if cause.id == f"{end}_pilot_clearance" and cause.limits is not None and cause.limits[0] < 0:
            ask = Question(f"{end}_pilot_fit", f"Fit of the {end} pilot", (f"{end}_bore", f"{end}.pilot_fit"), "")
            over = -cause.limits[0]
            hard = over > plan.number("practice.tight_pilot")
            how = "it goes in with force or heat" if hard else "a transition fit: it is tapped in squarely"
            text = f"the pilot may be {over:.3f} mm larger than the bore; {how}"
            yield remark(plan, ask, "warn" if hard else "pass", text)


def carried(plan: Plan) -> Finding:
    """Compare the bearing wall with the pilot that it should carry over its whole length."""
    ask = Question(
        "bearing_pilot_carried", "Bearing wall as thick as the bearing pilot is long",
        ("bearing_wall", "bearing.pilot_length"), "the wall carries only part of the bearing pilot", otherwise="warn",
    )  # fmt: skip
    into = plan.text("bearing.pilot_direction") != "away"
    return at_least(plan, ask, plan.number("bearing_wall"), plan.number("bearing.pilot_length") if into else 0.0)


def body_above_base(plan: Plan) -> Finding:
    """Compare the motor body with the base face that may run on under it."""
    ask = Question(
        "motor_above_base", "Motor body above the base face",
        ("shaft_height", "motor.body_size", "practice.body_clearance"),
        "the motor body reaches below the base face: end the base plate before it, or raise the shaft",
        otherwise="warn",
    )  # fmt: skip
    if "motor.body_size" not in plan.records:
        return not_assessed(plan, ask, "motor.body_size")
    free = plan.number("shaft_height") - plan.number("motor.body_size") / 2
    return at_least(plan, ask, free, plan.number("practice.body_clearance"))
