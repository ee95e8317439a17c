"""Checks of making and assembling: boring reach, counterbores, dowels, spanner, removal, coating, lifting."""

from __future__ import annotations

from collections.abc import Iterator

from blockgen.checks.finding import Finding, Question, at_least, at_most, not_assessed, remark
from blockgen.mechanics.reach import bar_ratio
from blockgen.plan import Plan

_DOWELS = 2


def making(plan: Plan) -> Iterator[Finding]:
    """Yield the checks of machining and assembly."""
    yield bores_in_line(plan)
    yield boring_bar(plan)
    yield from counterbores(plan)
    yield from dowels(plan)
    yield spanner(plan)
    yield unit_passes(plan)
    yield coupling_leaves(plan)
    yield from coated(plan)
    yield from lifting(plan)


def _larger(plan: Plan) -> tuple[str, str]:
    ends = ("motor", "bearing")
    return ends if plan.number("motor_bore") >= plan.number("bearing_bore") else ends[::-1]


def bores_in_line(plan: Plan) -> Finding:
    """Compare the opening of the larger bore with the smaller bore that is machined through it.

    A smaller bore with a step of its own faces away from the larger one: what comes through the larger bore passes the
    step's opening only.
    """
    large, small = _larger(plan)
    ask = Question(
        "bores_in_one_setup", f"{small.capitalize()} bore reached through the {large} bore",
        (f"{large}_through_bore", f"{small}_bore", f"{small}_through_bore"),
        "the smaller bore cannot be machined through the larger one: two setups, so align by dial or widen the opening",
        otherwise="warn",
    )  # fmt: skip
    reached = min(plan.number(f"{large}_through_bore"), plan.number(f"{small}_through_bore"))
    return at_least(plan, ask, reached, plan.number(f"{small}_bore"))


def boring_bar(plan: Plan) -> Finding:
    """Compare length over diameter of the boring bar with what steel and damped bars do."""
    _, small = _larger(plan)
    ratio = bar_ratio(plan.number("length"), plan.number(f"{small}_bore"), plan.number("practice.bar_fraction"))
    ask = Question(
        "boring_bar", "Length of the boring bar over its diameter",
        ("length", f"{small}_bore", "practice.bar_fraction", "practice.bar_ratio", "practice.bar_ratio_damped"),
        f"a plain steel bar chatters; a damped bar goes to {plan.number('practice.bar_ratio_damped'):g}",
        "from memory", "warn",
    )  # fmt: skip
    return at_most(plan, ask, ratio, plan.number("practice.bar_ratio"), "")


def counterbores(plan: Plan) -> Iterator[Finding]:
    """Compare depth over diameter of the base counterbores with what can be cut."""
    if "base_counterbore_depth" not in plan.records:
        return
    ask = Question(
        "counterbore_depth", "Depth of the base counterbores over their diameter",
        ("base_counterbore_depth", "base_counterbore_diameter", "practice.counterbore_ratio"),
        "a counterbore this deep is hard to cut: take longer base screws", otherwise="warn",
    )  # fmt: skip
    ratio = plan.number("base_counterbore_depth") / plan.number("base_counterbore_diameter")
    yield at_most(plan, ask, ratio, plan.number("practice.counterbore_ratio"), "")


def dowels(plan: Plan) -> Iterator[Finding]:
    """Fail where dowels are asked for and have no room."""
    if "dowel_diameter" in plan.records and sum(f.kind == "dowel_hole" for f in plan.features) < _DOWELS:
        ask = Question("dowels", "Room for two dowels", ("base.dowels", "dowel_diameter"), "")
        yield remark(
            plan, ask, "fail", "no place in the block keeps the least walls around both dowels: take smaller pins"
        )


def spanner(plan: Plan) -> Finding:
    """Compare the opening around the lock nut with its spanner."""
    ask = Question(
        "nut_spanner", "Room for the lock-nut spanner",
        ("bearing.spanner_diameter", "bearing.nut_reach", "bearing_through_bore", "window_width"),
        "the nut cannot be tightened in the block: tighten it before the unit goes in", otherwise="warn",
    )  # fmt: skip
    if "bearing.spanner_diameter" not in plan.records:
        return not_assessed(plan, ask, "bearing.spanner_diameter")
    in_wall = plan.number("bearing.nut_reach") <= plan.number("bearing_wall")
    opening = plan.number("bearing_through_bore") if in_wall else plan.number("window_width")
    return at_least(plan, ask, opening, plan.number("bearing.spanner_diameter"))


def unit_passes(plan: Plan) -> Finding:
    """Compare the bearing-side opening with the lock nut that comes in with the unit."""
    ask = Question(
        "nut_passes", "Lock nut passes the bearing bore", ("bearing.nut_outer_diameter", "bearing_through_bore"),
        "the unit cannot be put in or taken out with its lock nut on",
    )  # fmt: skip
    if "bearing.nut_outer_diameter" not in plan.records:
        return not_assessed(plan, ask, "bearing.nut_outer_diameter")
    return at_least(plan, ask, plan.number("bearing_through_bore"), plan.number("bearing.nut_outer_diameter"))


def coupling_leaves(plan: Plan) -> Finding:
    """After the motor is off, the coupling slides off the journal: into the window, or through the motor bore."""
    ask = Question(
        "coupling_removal", "Coupling slides off the journal once the motor is off",
        ("coupling_position", "coupling.length", "journal_grip", "length", "motor_wall", "motor_through_bore",
         "coupling.swing_diameter"),
        "the coupling cannot be drawn off the journal inside the window: it comes off together with the bearing unit",
        otherwise="warn",
    )  # fmt: skip
    through = plan.number("motor_through_bore") >= plan.number("coupling.swing_diameter")
    end = plan.number("length") if through else plan.number("length") - plan.number("motor_wall")
    end = (
        max(end, plan.number("coupling_position") + plan.number("coupling.length") + plan.number("journal_grip"))
        if through
        else end
    )
    free = end - plan.number("coupling_position") - plan.number("coupling.length")
    return at_least(plan, ask, free, plan.number("journal_grip"))


def coated(plan: Plan) -> Iterator[Finding]:
    """Warn of a coating that closes the bores."""
    thickness = plan.number("block.coating_thickness")
    if thickness > 0:
        ask = Question("coating", "Coating in the fitted bores", ("block.finish", "block.coating_thickness"), "")
        text = f"a coating of {thickness:g} mm closes a bore by about its thickness: mask bores, seats and base face"
        yield remark(plan, ask, "warn", text)


def lifting(plan: Plan) -> Iterator[Finding]:
    """Point out a block that is too heavy to lift by hand."""
    if "lifting_thread" in plan.records:
        ask = Question("lifting", "Block is lifted with tackle", ("lifting_thread", "practice.lifting_mass"), "")
        yield remark(
            plan,
            ask,
            "pass",
            f"{plan.records['lifting_thread'].rule}; two {plan.text('lifting_thread')} threads in the top",
        )
