"""Simple checks of the screws: engagement, screw not bottoming, base screws in more than one row."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import replace

from blockgen.checks.finding import Finding, Question, at_least, at_most, not_assessed, remark
from blockgen.plan import Fastener, Plan


def joints(plan: Plan) -> Iterator[Finding]:
    """Yield the checks of every screw group."""
    for fastener in plan.fasteners:
        if fastener.where != "dowel":
            yield engagement(plan, fastener)
            yield from not_bottoming(plan, fastener)
    yield from one_row(plan)


def one_row(plan: Plan) -> Iterator[Finding]:
    """Warn of base screws that all stand at one x: nothing holds the block against the thrust's moment."""
    places = {place[0] for place in _points(plan, "base_pattern")}
    if len(places) == 1:
        ask = Question("base_rows", "Base screws in more than one row", ("base_pattern", "base.screw_count"), "")
        text = "one row of base screws does not hold the moment of a thrust at shaft height: use four screws"
        yield remark(plan, ask, "warn", text)


def _points(plan: Plan, key: str) -> list[tuple[float, ...]]:
    value = plan.records[key].value
    return [pair for pair in value if isinstance(pair, tuple)] if isinstance(value, tuple) else []


def _end(fastener: Fastener) -> str:
    return fastener.where.removesuffix("_flange")


def engagement(plan: Plan, fastener: Fastener) -> Finding:
    """Compare the engagement with the least one."""
    end = _end(fastener)
    least = f"{end}_engagement_least"
    ask = Question(
        f"{end}_engagement", f"Engagement of the {end} screws",
        (least, f"{end}_screw_length", f"{end}.flange_thickness"),
        "the thread may strip before the screw breaks: a longer screw, a thicker or harder part, or smaller screws",
        "FED-STD-H28/2 areas; floor: common practice",
    )  # fmt: skip
    if fastener.engagement is None:
        return not_assessed(plan, ask, f"{end}.flange_thickness")
    if plan.records[least].value is None:
        wanted = plan.number("practice.engagement_flange") * plan.number("motor_thread_diameter")
        return at_least(plan, replace(ask, otherwise="warn"), fastener.engagement, wanted)
    return at_least(plan, ask, fastener.engagement, plan.number(least))


def not_bottoming(plan: Plan, fastener: Fastener) -> Iterator[Finding]:
    """Compare the engagement with the full thread, so that the screw clamps before it bottoms."""
    end = _end(fastener)
    depth = {"base": "plate_thread_depth"}.get(end, f"{end}_thread_depth")
    if depth == "plate_thread_depth" and depth not in plan.records:
        depth = "base_thread_depth"
    known = plan.records.get(depth)
    if end == "motor" and "motor.flange_thickness" in plan.records and plan.text("motor.fastening") == "tapped":
        depth, known = "motor.flange_thickness", plan.records["motor.flange_thickness"]
    if fastener.engagement is None or known is None or known.value is None:
        return
    ask = Question(
        f"{end}_screw_bottoming", f"{end.capitalize()} screws end inside the full thread",
        (depth, f"{end}_screw_length"),
        "the screw runs out of thread before the head clamps: take a shorter one",
    )  # fmt: skip
    through = end == "base" and any(f.through and f.thread for f in plan.base_features)
    if not through:
        yield at_most(plan, ask, fastener.engagement, plan.number(depth))
