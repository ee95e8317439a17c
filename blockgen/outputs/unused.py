"""What was given and decides nothing in this version, in words."""

from __future__ import annotations

from blockgen.plan import Plan
from blockgen.spec.not_used import given_not_used


def unused_line(plan: Plan) -> str:
    """Return the line that names the keys given for nothing; empty where there are none."""
    keys = given_not_used(plan.records)
    return f"Given, not used in this version: {', '.join(keys)}." if keys else ""
