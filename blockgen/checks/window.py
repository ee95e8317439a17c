"""Checks of the window: depth of cut, room for the coupling, screw heads of a tapped motor flange, floor."""

from __future__ import annotations

import math
from collections.abc import Iterator

from blockgen.checks.finding import Finding, Question, at_least, at_most
from blockgen.plan import Plan


def window(plan: Plan) -> Iterator[Finding]:
    """Yield the checks of the window."""
    yield window_cut(plan)
    yield swing(plan)
    yield from screw_heads(plan)
    yield from over_floor(plan)


def window_cut(plan: Plan) -> Finding:
    """Compare the depth of cut in the window with what the cutter does without trouble."""
    ratio = plan.number("window_cut_depth") / plan.number("block.cutter_diameter")
    hard = plan.number("practice.cut_depth_ratio_hard")
    ask = Question(
        "window_cut", "Depth of cut in the window over cutter diameter",
        ("window_cut_depth", "block.cutter_diameter", "practice.cut_depth_ratio", "practice.cut_depth_ratio_hard"),
        f"a long cutter is needed; above {hard:g} it is difficult: allow a larger corner radius", otherwise="warn",
    )  # fmt: skip
    return at_most(plan, ask, ratio, plan.number("practice.cut_depth_ratio"), "")


def swing(plan: Plan) -> Finding:
    """Compare the room around the coupling's swing with its clearance; touching fails, less than asked for warns."""
    room, wanted = plan.number("coupling_clearance_in_window"), plan.number("coupling.clearance")
    ask = Question(
        "coupling_swing", "Coupling's swing clear of window and corner radii",
        ("coupling_clearance_in_window", "coupling.clearance", "window_corner_radius"),
        "widen the window or take a smaller cutter", otherwise="warn" if room > 0 else "fail",
    )  # fmt: skip
    return at_least(plan, ask, room, wanted)


def screw_heads(plan: Plan) -> Iterator[Finding]:
    """Compare the end wall's flat with the heads of a tapped flange's screws, and their key with the coupling."""
    if "motor_head_room" not in plan.records:
        return
    ask = Question(
        "motor_screw_heads", "Screw heads of the tapped motor flange on the flat of the end wall",
        ("motor_head_room", "window_width", "window_corner_radius"),
        "the heads stand in the corner radius: widen the window",
    )  # fmt: skip
    yield at_least(plan, ask, plan.number("motor_head_room"), 0.0)
    ask = Question(
        "motor_screw_key", "Key passes beside the coupling to the motor screws",
        ("coupling.swing_diameter", "coupling.clearance", "motor_thread_diameter"),
        "the coupling stands in front of the screws: drive them before it is slid into place", otherwise="warn",
    )  # fmt: skip
    axis = plan.number("shaft_height")
    nearest = min(math.hypot(f.position[1], f.position[2] - axis) for f in plan.features if f.group == "motor_holes")
    room = nearest - plan.number("motor_thread_diameter") / 2 - plan.number("coupling.swing_diameter") / 2
    yield at_least(plan, ask, room, plan.number("coupling.clearance"))


def over_floor(plan: Plan) -> Iterator[Finding]:
    """Compare the room under the coupling with its clearance, and the floor that is left under a pocket."""
    floor, relief = plan.number("block.window_floor"), plan.number("block.relief")
    if plan.text("block.window_axis") == "y":
        return
    room = plan.number("shaft_height") - floor - plan.number("coupling.swing_diameter") / 2
    ask = Question(
        "coupling_over_floor", "Coupling's swing clear of the window floor or the base plate",
        ("shaft_height", "block.window_floor", "coupling.swing_diameter", "coupling.clearance"),
        "the coupling touches the floor of the window or the base plate: cut it deeper, or raise the shaft",
        otherwise="warn" if room > 0 else "fail",
    )  # fmt: skip
    yield at_least(plan, ask, room, plan.number("coupling.clearance"))
    if floor <= 0:
        return
    ask = Question(
        "window_floor", "Floor left under the window", ("block.window_floor", "block.relief", "practice.roof_least"),
        "the floor is too thin to be machined flat: cut the window right through", otherwise="warn",
    )  # fmt: skip
    yield at_least(plan, ask, floor - relief, plan.number("practice.roof_least"))
