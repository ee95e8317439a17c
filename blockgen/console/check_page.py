"""What ``check`` and ``build`` print.

The page of a check ends with what a designer has to act on, since the end is what stays in sight on a terminal: what
was assumed about mating parts, what was given for nothing, what did not pass and why, and the result.
"""

from __future__ import annotations

from collections import Counter
from collections.abc import Iterator, Mapping, Sequence
from pathlib import Path

from blockgen.checks.finding import Finding
from blockgen.checks.missing import missing
from blockgen.console.page import BLANK, Line, Mark, Part, Row, Table, bullet, title
from blockgen.mechanics.volume import reference_volume
from blockgen.outputs import key_sizes, names, show
from blockgen.outputs.assumptions import assumed_mating, assumed_otherwise
from blockgen.outputs.summary_json import THINNEST
from blockgen.outputs.unused import unused_line
from blockgen.plan import Plan
from blockgen.record import Record

_WORDS = {"fail": "FAIL", "warn": "WARN", "not_assessed": "not assessed", "pass": "pass"}


def check_page(plan: Plan, findings: Sequence[Finding], status: str, beside: Sequence[Part] = ()) -> list[Part]:
    """Return the page of the whole check; ``beside`` is printed before the checks, such as the alignment."""
    return [
        status_line(status),
        *_sizes(plan),
        *title("Axial layout"),
        Line(key_sizes.axial_line(plan)),
        *_axial_bounds(plan),
        *_walls(plan),
        *_other_assumptions(plan),
        *_notes(plan),
        *beside,
        *_checks(findings),
        *_mating_assumptions(plan),
        *_missing(plan, findings),
        *_unused(plan),
        *_open_checks(findings),
        *title("Result"),
        Line(f"{tally(findings)}. {status}", _status_mark(status)),
    ]


def failures(findings: Sequence[Finding], status: str, *, strict: bool) -> list[Part]:
    """Return what is told even where nothing else shall be printed: why the command ends with 1."""
    bad = {"fail", "warn"} if strict else {"fail"}
    return [
        status_line(status),
        *(bullet(_trouble(f), f.verdict) for f in key_sizes.worst_first(findings) if f.verdict in bad),
    ]


def build_page(folder: Path, files: Mapping[str, str], findings: Sequence[Finding], status: str) -> list[Part]:
    """Return the page of a build: what was written, and what speaks against it."""
    listed = {**files, names.MANIFEST: "manifest"}
    rows = tuple(Row((str(folder / name), role)) for name, role in sorted(listed.items()))
    against = [f for f in key_sizes.worst_first(findings) if f.verdict in {"fail", "warn"}]
    return [
        status_line(status),
        Line(f"{tally(findings)}."),
        *(bullet(_trouble(f), f.verdict) for f in against),
        *title("Files"),
        Table(("File", "Role"), rows),
    ]


def status_line(status: str) -> Line:
    """Return the line of the status."""
    return Line(f"Status: {status}", _status_mark(status))


def tally(findings: Sequence[Finding]) -> str:
    """Return how many checks ended how."""
    counts = Counter(f.verdict for f in findings)
    words = (f"{counts[v]} {_WORDS[v]}" for v in ("pass", "warn", "fail", "not_assessed") if counts[v])
    return f"{len(findings)} checks: {', '.join(words)}" if findings else "no checks"


def _status_mark(status: str) -> Mark:
    if status.startswith("NOT"):
        return "fail"
    return "warn" if status.startswith("PRELIMINARY") else "pass"


def _sizes(plan: Plan) -> Iterator[Part]:
    yield from title("Key sizes")
    yield Table(("Size", "Value"), tuple(Row(row) for row in key_sizes.key_sizes(plan, reference_volume(plan))))


def _axial_bounds(plan: Plan) -> Iterator[Part]:
    for name, record in key_sizes.axial_facts(plan):
        if record.key in {"length_min", "length_max"}:
            yield bullet(f"{name} {show.with_unit(record.value, record.unit)}: {show.derivation_words(record)}")


def _checks(findings: Sequence[Finding]) -> Iterator[Part]:
    ordered = key_sizes.worst_first(findings)
    yield from title("Checks")
    yield Table(
        ("Verdict", "Check", "Value", "Limit", "Margin"),
        tuple(_check(f) for f in ordered),
        right=("Value", "Limit", "Margin"),
    )


def _open_checks(findings: Sequence[Finding]) -> Iterator[Part]:
    open_ones = [f for f in key_sizes.worst_first(findings) if f.verdict != "pass"]
    if open_ones:
        yield from title("What did not pass, and why")
        yield from (bullet(_trouble(f), f.verdict) for f in open_ones)


def _check(finding: Finding) -> Row:
    cells = (
        _WORDS[finding.verdict],
        finding.title,
        show.quantity(finding.value, finding.unit),
        show.quantity(finding.limit, finding.unit),
        show.margin(finding.margin),
    )
    return Row(cells, finding.verdict)


def _trouble(finding: Finding) -> str:
    why = finding.explanation.removeprefix("not assessed: ")
    return f"{_WORDS[finding.verdict]} {finding.title} ({finding.id}): {why}"


def _missing(plan: Plan, findings: Sequence[Finding]) -> Iterator[Part]:
    rows = tuple(Row((row.key, row.ask, show.joined(row.checks))) for row in missing(plan, findings))
    if rows:
        yield from title("To ask for, what weighs most first")
        yield Table(("Value", "Who knows it", "What waits for it"), rows)


def _walls(plan: Plan) -> Iterator[Part]:
    rows = tuple(
        Row((w.first, w.second, f"{show.number(w.wall, 2)} mm", f"{show.number(w.required, 2)} mm"))
        for w in plan.ligaments[:THINNEST]
    )
    if rows:
        yield from title("Thinnest walls")
        yield Table(("Between", "and", "Wall", "Asked for"), rows, right=("Wall", "Asked for"))


def _mating_assumptions(plan: Plan) -> Iterator[Part]:
    mating = assumed_mating(plan)
    if mating:
        yield from title("Assumed mating geometry: confirm it on the data sheets, the design is preliminary until then")
        yield from (bullet(_assumed(r), "warn") for r in mating)


def _other_assumptions(plan: Plan) -> Iterator[Part]:
    yield from title("Other values that were not given")
    rows = tuple(Row((r.key, show.amount(r), show.derivation_words(r))) for r in assumed_otherwise(plan))
    yield Table(("Key", "Assumed", "From"), rows) if rows else Line("None.")


def _assumed(record: Record) -> str:
    return f"{record.key} = {show.amount(record)}: {show.derivation_words(record)}"


def _unused(plan: Plan) -> Iterator[Part]:
    line = unused_line(plan)
    if line:
        yield from (BLANK, Line(line, "warn"))


def _notes(plan: Plan) -> Iterator[Part]:
    if plan.notes:
        yield from title("Notes of the sizing")
        yield from (bullet(note) for note in plan.notes)
