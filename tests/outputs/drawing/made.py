"""Drawings of the examples and of the variants of plans, each made once."""

from __future__ import annotations

from functools import cache
from pathlib import Path

from blockgen.geometry.block import build_block
from blockgen.outputs.drawing_set import drawing_set, pictures
from blockgen.pipeline import design
from tests.sizing.strategies import sized
from tests.sizing.test_annotations import WAYS

EXAMPLES = Path(__file__).parents[3] / "presets/examples"
NAMES = ("servo", "large", "stepper", *WAYS)
STATUS = "PRELIMINARY: mating sizes are assumed (motor.bolt_hole)"


@cache
def example(name):
    """Return plan and status of one of the examples."""
    found = design(EXAMPLES / f"spray_carriage_{name}.toml")
    return found.plan, found.status


@cache
def variant(name, projection):
    """Return the plan of a variant."""
    return sized(**{**WAYS[name], "drawing": {"projection": projection}})


@cache
def made(name, projection="first"):
    """Return plan, pictures and sheets of an example or a variant."""
    if name in WAYS:
        plan, status = variant(name, projection), STATUS
    else:
        plan, status = example(name)
    taken = pictures(build_block(plan))
    return plan, taken, drawing_set(plan, taken, status)


CASES = [(name, "first") for name in NAMES] + [(name, "third") for name in WAYS]
