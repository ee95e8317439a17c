"""The inspection sheet: what to measure, with limits and empty columns; filled in, it is what ``inspect`` reads."""

from __future__ import annotations

import csv
import io

from blockgen.evidence.characteristics import InspectionRow, inspection_rows
from blockgen.outputs.escape import one_line
from blockgen.plan import Plan

COLUMNS = (
    "spec_hash", "id", "value", "unit", "uncertainty", "number", "characteristic", "nominal", "lower", "upper",
    "datums", "instrument", "uncertainty_wanted", "convention",
)  # fmt: skip
_FORMULA = ("=", "+", "-", "@")


def inspection_csv(plan: Plan, spec_sha256: str, status: str) -> str:
    """Return the inspection sheet as comma-separated values, each line ended by a line feed.

    The lines that start with ``#`` hold what concerns the whole sheet; ``inspect`` skips them. Bought parts come last
    and may stay empty.

    Args:
        plan: Plan of the block.
        spec_sha256: Hash of the resolved spec.
        status: released for review, PRELIMINARY or NOT FOR MANUFACTURE, with the reason.
    """
    out = io.StringIO(newline="")
    writer = csv.writer(out, lineterminator="\n")
    for remark in _remarks(plan, status):
        writer.writerow([remark])
    writer.writerow(COLUMNS)
    for row in inspection_rows(plan):
        writer.writerow(_cells(row, spec_sha256))
    return out.getvalue()


def _remarks(plan: Plan, status: str) -> tuple[str, ...]:
    title = f"{plan.text('job.number')} {plan.text('job.revision')} {plan.text('job.title')}".strip()
    return (
        f"# Status: {one_line(status)}",
        f"# Block: {one_line(title)}",
        "# Fill in value and uncertainty (expanded, k = 2) with a decimal point; leave empty what was not measured.",
        "# Axes: x along the shaft from the bearing seat to the motor, z up, y to the right as seen from the motor.",
        "# Direction from the bearing seat A, centre from the bearing bore B, level from the base C.",
    )


def _cells(row: InspectionRow, spec_sha256: str) -> tuple[str, ...]:
    return (
        spec_sha256, row.id, "", row.unit, "", row.number, safe(row.title), _number(row.nominal), _number(row.lower),
        _number(row.upper), " ".join(row.datums), safe(row.instrument), _number(row.uncertainty_wanted),
        safe(row.convention),
    )  # fmt: skip


def safe(text: str) -> str:
    """Return text on one line that no spreadsheet takes for a formula."""
    plain = one_line(text)
    return f"'{plain}" if plain.startswith(_FORMULA) else plain


def _number(value: float | None) -> str:
    return "" if value is None else f"{value:.10g}"
