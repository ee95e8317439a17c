"""A reminder of the data sheets: mating geometry from a representative preset was never seen on a maker's sheet."""

from __future__ import annotations

from collections.abc import Iterator

from blockgen.checks.finding import Finding, Question, remark
from blockgen.plan import Plan

_TABLES = ("motor", "bearing", "coupling")
# How a preset's note ends whose values nobody has read on a data sheet.
_UNREAD = ("(representative)", "(remembered)")


def data_sheets(plan: Plan) -> Iterator[Finding]:
    """Warn for each mating part whose data come from a representative or remembered preset."""
    for table in _TABLES:
        source = plan.text(f"{table}.data_source")
        if source.endswith(_UNREAD):
            title = f"Data of the {table} compared with its data sheet"
            ask = Question(f"{table}_data_sheet", title, (f"{table}.data_source",), "")
            text = f"they come from {source}; put in the values of the data sheet, and its date as {table}.data_source"
            yield remark(plan, ask, "warn", text)
