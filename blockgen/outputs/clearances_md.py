"""The section of ``summary.md`` on what the solids showed."""

from __future__ import annotations

from blockgen.evidence.clearances import Clearances
from blockgen.outputs import clearances_rows, markdown


def clearances_md(clearances: Clearances) -> str:
    """Return clearances, clashes and tools as tables."""
    named = markdown.table(
        clearances_rows.NAMED_COLUMNS, clearances_rows.named_rows(clearances), "None.",
        right=clearances_rows.NAMED_COLUMNS[1:3],
    )  # fmt: skip
    clashes = markdown.table(
        clearances_rows.CLASH_COLUMNS, clearances_rows.clash_rows(clearances), "No parts clash.",
        right=clearances_rows.CLASH_COLUMNS[1:],
    )  # fmt: skip
    tight = markdown.table(
        clearances_rows.TIGHT_COLUMNS, clearances_rows.tight_rows(clearances), "None.",
        right=clearances_rows.TIGHT_COLUMNS[1:],
    )  # fmt: skip
    tools = markdown.table(clearances_rows.ACCESS_COLUMNS, clearances_rows.access_rows(clearances), "None.")
    lead = markdown.paragraph(clearances_rows.counts(clearances))
    return "\n".join((markdown.heading("Clearances of the solids"), lead, named, clashes, tight, tools))
