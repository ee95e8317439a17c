"""A reminder of the data sheets: mating geometry that comes from a preset was never seen on the maker's own."""

from __future__ import annotations

from collections.abc import Iterator

from blockgen.checks.finding import Finding, Question, remark
from blockgen.plan import Plan

_TABLES = ("motor", "bearing", "coupling")


def data_sheets(plan: Plan) -> Iterator[Finding]:
    """Warn for each mating part whose data come from a preset that is not a published standard."""
    for table in _TABLES:
        taken = [
            key for key, record in plan.records.items() if record.origin == "preset" and key.startswith(f"{table}.")
        ]
        if taken:
            ask = Question(f"{table}_data_sheet", f"Data of the {table} compared with its data sheet", tuple(taken), "")
            source = plan.records[taken[0]].source
            yield remark(plan, ask, "warn", f"{len(taken)} values come from {source}")
