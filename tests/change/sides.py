"""Sides of a comparison for the tests: specs from texts, and documents that were altered."""

import copy
from functools import cache

from blockgen.change.compare.data import Side
from blockgen.change.compare.sides import side_of
from blockgen.change.compare.volumes import overlay
from blockgen.pipeline import design
from blockgen.spec.load import parse_spec
from tests.examples import SERVO

SERVO_TEXT = SERVO.read_text(encoding="utf-8")


@cache
def side(text=SERVO_TEXT):
    """Return the side of a spec's text."""
    return side_of(design(parse_spec(text, "axis.toml")), "axis.toml")


@cache
def laid(old, new):
    """Return the solids of a comparison of two specs' texts; they are modelled once for all tests."""
    return overlay(side(old).design.plan, side(new).design.plan)


def with_keys(table, *lines, text=SERVO_TEXT):
    """Return the text with lines put in behind the header of a table."""
    return text.replace(f"[{table}]\n", "\n".join([f"[{table}]", *lines, ""]))


WIDER = with_keys("motor", "pilot_diameter = 72")


def altered(change, of=None):
    """Return a side whose document, a copy, was altered by a function."""
    before = side() if of is None else of
    document = copy.deepcopy(before.document)
    change(document)
    return Side("other.toml", "spec", document, dict(before.asked), dict(before.files))
