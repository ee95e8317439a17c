"""Checks of given sizes against what the rules ask for, of the space available, and of the thinnest walls."""

from __future__ import annotations

from collections.abc import Iterator

from blockgen.checks.finding import Finding, Question, at_least, at_most
from blockgen.mechanics.ligaments import worst
from blockgen.plan import Ligament, Plan

_LEAST = (
    ("bearing_wall", "Bearing wall"),
    ("motor_wall", "Motor wall"),
    ("side_wall", "Side wall beside the window"),
    ("window_width", "Window width"),
    ("window_corner_radius", "Window corner radius"),
    ("width", "Block width"),
    ("height", "Block height"),
)
_SPACE = (
    ("length", "base.length_available", "Block length in the space"),
    ("width", "base.width_available", "Block width in the space"),
    ("height", "base.height_limit", "Block height under the limit"),
)


def sizes(plan: Plan) -> Iterator[Finding]:
    """Yield the checks of sizes, space and walls."""
    for key, title in _LEAST:
        yield least_size(plan, key, title)
    for key, limit, title in _SPACE:
        if limit in plan.records:
            ask = Question(f"{key}_available", title, (key, limit), f"the block needs more than {limit} gives")
            yield at_most(plan, ask, plan.number(key), plan.number(limit))
    for index, ligament in enumerate(worst(plan.ligaments, 5), 1):
        yield thin_wall(plan, index, ligament)


def least_size(plan: Plan, key: str, title: str) -> Finding:
    """Compare one size with the least one that the rules ask for."""
    least = plan.records[f"{key}_least"]
    ask = Question(f"{key}_size", title, (key, f"{key}_least"), f"too small for: {least.rule}")
    return at_least(plan, ask, plan.number(key), plan.number(f"{key}_least"))


def thin_wall(plan: Plan, index: int, ligament: Ligament) -> Finding:
    """Compare one of the thinnest walls with the least one."""
    ask = Question(
        f"thin_wall_{index}", f"Wall between {ligament.first} and {ligament.second}",
        ("practice.cavity_factor", "practice.cavity_floor", "practice.rim"),
        f"{ligament.first} and {ligament.second} come too close: move or resize one of them",
    )  # fmt: skip
    return at_least(plan, ask, ligament.wall, ligament.required)
