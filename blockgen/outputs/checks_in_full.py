"""Every check in full for a reviewer: formula, inputs with origin, value against limit, margin, source."""

from __future__ import annotations

from collections.abc import Iterator, Sequence

from blockgen.checks.finding import Finding
from blockgen.checks.formulas import formula_of
from blockgen.outputs import key_sizes, markdown, show


def checks_in_full(findings: Sequence[Finding]) -> str:
    """Return the section with one paragraph a check, in the order of the table."""
    lead = markdown.paragraph("What was compared, with which inputs, and where the rule comes from.")
    items = (_in_full(finding) for finding in key_sizes.worst_first(findings))
    return "\n".join((markdown.heading("Checks in full", 3), lead, markdown.bullets(items, "No checks.")))


def _in_full(finding: Finding) -> str:
    parts = (
        f"{finding.id}: {formula_of(finding.id)}",
        *_outcome(finding),
        *_inputs(finding),
        f"source: {finding.source}",
    )
    return "; ".join(part for part in parts if part)


def _outcome(finding: Finding) -> Iterator[str]:
    if finding.value is not None:
        value, limit = (show.quantity(figure, finding.unit) for figure in (finding.value, finding.limit))
        yield f"{value} against {limit}, margin {show.margin(finding.margin)}"
    yield show.verdict(finding.verdict)


def _inputs(finding: Finding) -> Iterator[str]:
    known = (f"{key} = {show.with_unit(i.value, i.unit)} ({i.origin})" for key, i in finding.inputs.items())
    text = ", ".join(known)
    if text:
        yield f"inputs: {text}"
