"""Designs for the tests of rework and adapters: one block that exists, and other motors for it."""

from __future__ import annotations

from functools import cache

from blockgen.plan import Plan
from tests.sizing.strategies import COMPLETE, changed, sized

ROUND = changed(COMPLETE, motor={"flange_shape": "round", "flange_size": 110, "bolt_circle": 90})


@cache
def old() -> Plan:
    """Return the block that exists: square flange 80, pilot 70, circle 90."""
    return sized()


@cache
def other(**motor: float | str) -> Plan:
    """Return the same design with keys of the motor changed."""
    return sized(COMPLETE, motor=motor)


@cache
def round_flange(**motor: float | str) -> Plan:
    """Return a design with a round motor flange."""
    return sized(ROUND, motor=motor)
