"""The exit code of a design."""

from __future__ import annotations

from collections.abc import Sequence
from typing import TYPE_CHECKING

from blockgen.console import printer

if TYPE_CHECKING:
    from blockgen.checks.finding import Finding


def exit_code(findings: Sequence[Finding], status: str, *, strict: bool, told: bool) -> int:
    """Return the exit code of a design; a failure that was not told yet goes to standard error."""
    bad = {"fail", "warn"} if strict else {"fail"}
    if not any(finding.verdict in bad for finding in findings):
        return 0
    if not told:
        from blockgen.console.check_page import failures
        from blockgen.console.plain import lines

        printer.complain("\n".join(lines(failures(findings, status, strict=strict), printer.width())))
    return 1
