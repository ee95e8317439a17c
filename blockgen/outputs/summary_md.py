"""The dimension summary to read: ``summary.md``."""

from __future__ import annotations

from collections.abc import Iterable, Mapping, Sequence

from blockgen import __version__
from blockgen.alignment.arrangements import Arrangement
from blockgen.alignment.chain import Alignment
from blockgen.checks.finding import Finding
from blockgen.checks.missing import missing
from blockgen.evidence.clearances import Clearances
from blockgen.evidence.stiffness.result import Stiffness
from blockgen.mechanics.volume import reference_volume
from blockgen.outputs import alignment_rows, key_sizes, markdown, show, stiffness_rows
from blockgen.outputs.alignment_json import METHOD
from blockgen.outputs.assumptions import assumed_mating, assumed_otherwise
from blockgen.outputs.cautions import cautions
from blockgen.outputs.checks_in_full import checks_in_full
from blockgen.outputs.clearances_md import clearances_md
from blockgen.outputs.summary_json import THINNEST, source
from blockgen.outputs.torque_card import torque_card
from blockgen.outputs.unused import unused_line
from blockgen.plan import Feature, Plan
from blockgen.record import Record


def summary_md(
    plan: Plan,
    findings: Sequence[Finding],
    status: str,
    spec_sha256: str,
    files: Mapping[str, str],
    alignment: Alignment | None = None,
    rows: tuple[Arrangement, ...] = (),
    clearances: Clearances | None = None,
    stiffness: Stiffness | None = None,
) -> str:
    """Return the summary as Markdown.

    Args:
        plan: What was decided.
        findings: What the checks found.
        status: Status line of the design.
        spec_sha256: Hash of the resolved spec.
        files: Role by name of the files in the set.
        alignment: How far out of line the shafts will be; left out without it.
        rows: Arrangements side by side; left out without them.
        clearances: What the solids showed; left out without them.
        stiffness: Evidence from finite elements; left out without it.
    """
    sections = (
        _head(plan, status, spec_sha256),
        _sizes(plan),
        _axial(plan),
        _dimensions(plan),
        _features(plan),
        _screws(plan),
        _torque_card(plan),
        *(() if alignment is None else (_alignment(alignment, rows),)),
        *(() if stiffness is None else (_stiffness(stiffness),)),
        _checks(plan, findings),
        checks_in_full(findings),
        *(() if clearances is None else (clearances_md(clearances),)),
        _missing(plan, findings),
        _walls(plan),
        _words(plan),
        _files(files),
    )
    return "\n".join(sections)


def _stiffness(stiffness: Stiffness) -> str:
    columns, right = stiffness_rows.COLUMNS, stiffness_rows.COLUMNS[2:]
    shares, of_shares = stiffness_rows.SHARE_COLUMNS, stiffness_rows.share_rows(stiffness)
    return "\n".join((
        markdown.heading("Stiffness by finite elements"),
        markdown.paragraph(stiffness_rows.lead(stiffness)),
        markdown.table(columns, stiffness_rows.variant_rows(stiffness), "", right=right),
        markdown.heading("Greatest forces of the block on the base at each screw", 3),
        markdown.table(shares, of_shares, "", right=shares[1:]),
    ))  # fmt: skip


def _head(plan: Plan, status: str, spec_sha256: str) -> str:
    title = show.joined((plan.text("job.number"), plan.text("job.title")), ": ")
    about = {
        "Revision": plan.text("job.revision"),
        "Project": plan.text("job.project"),
        "Author": plan.text("job.author"),
        "Gravity points along": plan.text("job.gravity"),
        "Made by": f"blockgen {__version__}",
        "Spec hash": spec_sha256,
    }
    lines = (f"{name}: {text}" for name, text in about.items() if text)
    return "\n".join((markdown.heading(title, 1), markdown.strong(f"Status: {status}"), markdown.bullets(lines, "")))


def _sizes(plan: Plan) -> str:
    rows = key_sizes.key_sizes(plan, reference_volume(plan))
    return markdown.heading("Key sizes") + "\n" + markdown.table(("Size", "Value"), rows, "")


def _axial(plan: Plan) -> str:
    rows = ((title, show.with_unit(r.value, r.unit), show.derivation(r)) for title, r in key_sizes.axial_facts(plan))
    lead = markdown.paragraph(f"{key_sizes.axial_line(plan)} x = 0 is the bearing seat plane.")
    table = markdown.table(("Quantity", "Value", "What decides it"), rows, "No axial layout.", right=("Value",))
    return "\n".join((markdown.heading("Axial layout"), lead, table))


def _dimensions(plan: Plan) -> str:
    rows = [_dimension(plan, key) for key in plan.dimensions]
    columns = ("Dimension", "Value", "Limits", "Formula, substitution, result", "Origin", "Source")
    lead = markdown.paragraph(
        "Each line shows the rule, the rule with its numbers put in, and the result. "
        "The command blockgen explain follows the inputs further back. [read] marks a table whose figures were read "
        "in a reprint or in another table, [memory] one that was written down from memory; the standard itself wins."
    )
    table = markdown.table(columns, rows, "No dimensions.", right=("Value",))
    return "\n".join((markdown.heading("Dimensions"), lead, table))


def _dimension(plan: Plan, key: str) -> tuple[str, ...]:
    record = plan.records[key]
    return (key, show.amount(record), show.limits(record), show.derivation(record), record.origin, source(record))


def _features(plan: Plan) -> str:
    columns = ("Feature", "Kind", "On face", "Mouth x, y, z", "Diameter or width", "Depth", "Call-out")
    right = ("Diameter or width", "Depth")
    block = markdown.table(columns, (_feature(f) for f in plan.features), "Nothing is cut.", right)
    parts = [markdown.heading("Holes, bores and window (mm)"), block]
    if plan.base_features:
        base = markdown.table(columns, (_feature(f) for f in plan.base_features), "", right)
        parts += [markdown.heading("Holes in the base plate (mm, block's coordinates)", 3), base]
    return "\n".join(parts)


def _feature(feature: Feature) -> tuple[str, ...]:
    mouth = ", ".join(show.number(c, 3) for c in feature.position)
    plain = feature.profile and feature.profile[-1].end <= feature.depth + 1e-9
    depth = "through" if feature.through and (plain or feature.pocket) else show.number(feature.depth)
    size = show.joined((show.number(feature.diameter), show.deviations(feature.fit, feature.upper, feature.lower)), " ")
    return (feature.id, show.plain_id(feature.kind), feature.face, mouth, size, depth, feature.call_out)


def _screws(plan: Plan) -> str:
    columns = ("Where", "Parts", "Torque", "Preload", "Engagement")
    rows = (
        (
            show.plain_id(f.where),
            show.fastener(f),
            "-" if f.torque is None else f"{show.significant(f.torque, 3)} {show.unit_sign('N*m')}",
            "-" if f.preload is None else f"{show.significant(f.preload / 1000, 3)} kN",
            "-" if f.engagement is None else f"{show.number(f.engagement, 2)} mm",
        )
        for f in plan.fasteners
    )
    table = markdown.table(columns, rows, "No screws are planned.", right=columns[2:])
    return markdown.heading("Screws and pins") + "\n" + table


def _alignment(alignment: Alignment, rows: tuple[Arrangement, ...]) -> str:
    right = alignment_rows.SPREAD_COLUMNS[1:]
    side_by_side = alignment_rows.arrangement_rows(rows)
    columns, shares = alignment_rows.ARRANGEMENT_COLUMNS, alignment_rows.SHARE_COLUMNS
    parts = (
        markdown.heading("Alignment of the shafts"),
        markdown.paragraph(f"At the coupling's centre, x = {show.number(alignment.centre, 2)} mm: {METHOD}."),
        markdown.table(alignment_rows.SPREAD_COLUMNS, alignment_rows.spread_rows(alignment), "", right),
        markdown.heading("What offset and angle come from", 3),
        markdown.table(shares, alignment_rows.share_rows(alignment), "Nothing.", shares[1:]),
        markdown.heading("What one step tighter would buy", 3),
        markdown.table(alignment_rows.DECISION_COLUMNS, alignment_rows.decision_rows(alignment), "Nothing."),
        markdown.heading("This block beside a separate motor plate and a foot-mounted unit, cold and without load", 3),
        markdown.table(columns, side_by_side, "Not compared.", columns[1:6]),
    )
    return "\n".join(parts)


def _torque_card(plan: Plan) -> str:
    columns = (
        "Screws",
        "Torque in steps",
        "Order of tightening",
        "Tool, key",
        "Engagement",
        "Preload, least to greatest",
    )
    rows = (
        (
            f"{show.plain_id(line.where)}: {line.screws}",
            " / ".join(show.significant(step, 3) for step in line.steps) + " N\u00b7m",
            ", ".join(line.order) or "-",
            f"{line.tool}, hexagon key {show.number(line.key_size)} mm",
            "-" if line.engagement is None else f"{show.number(line.engagement, 2)} mm",
            _between(line.preloads),
        )
        for line in torque_card(plan)
    )
    lead = markdown.paragraph(
        "For the assembler: heads and threads lightly oiled, faces wiped dry. Tighten in the order given, in three "
        "rounds to 30, 60 and 100 %."
    )
    table = markdown.table(columns, rows, "No screw has a torque.")
    return "\n".join((markdown.heading("Torque card"), lead, table))


def _between(preloads: tuple[float, float] | None) -> str:
    if preloads is None:
        return "-"
    return " to ".join(show.significant(force / 1000, 3) for force in preloads) + " kN"


def _missing(plan: Plan, findings: Sequence[Finding]) -> str:
    rows = ((row.key, row.ask, show.joined(row.checks)) for row in missing(plan, findings))
    lead = markdown.paragraph("Values that would settle what is open, what weighs most first.")
    table = markdown.table(("Value", "Who knows it", "What waits for it"), rows, "Nothing is missing.")
    return "\n".join((markdown.heading("To ask for"), lead, table))


def _checks(plan: Plan, findings: Sequence[Finding]) -> str:
    columns = ("Verdict", "Check", "Value", "Limit", "Margin", "Why", "Source")
    rows = (
        (
            show.verdict(f.verdict).upper() if f.verdict in {"fail", "warn"} else show.verdict(f.verdict),
            f"{f.title} ({f.id})",
            show.quantity(f.value, f.unit),
            show.quantity(f.limit, f.unit),
            show.margin(f.margin),
            f.explanation,
            f.source,
        )
        for f in key_sizes.worst_first(findings)
    )
    lead = markdown.paragraph(
        "Margin is 1 - demand / capacity: it holds at 0 % and above. Not assessed means that a value it needs was "
        "not given; it is not passed."
    )
    table = markdown.table(columns, rows, "No checks.", right=("Value", "Limit", "Margin"))
    unused = unused_line(plan)
    parts = (markdown.heading("Checks"), lead, table, markdown.paragraph(unused) if unused else "")
    return "\n".join(part for part in parts if part)


def _walls(plan: Plan) -> str:
    rows = (
        (w.first, w.second, f"{show.number(w.wall, 2)} mm", f"{show.number(w.required, 2)} mm")
        for w in plan.ligaments[:THINNEST]
    )
    columns = ("Between", "and", "Wall", "Asked for")
    table = markdown.table(columns, rows, "No two cavities come near each other.", right=columns[2:])
    lead = markdown.paragraph(
        f"Mouth chamfers count; walls to outside faces are taken to their planes, the edge breaks of "
        f"{show.number(plan.body.edge_chamfer)} mm are not taken off."
    )
    return "\n".join((markdown.heading("Thinnest walls"), lead, table))


def _words(plan: Plan) -> str:
    parts = (
        markdown.heading("Assumed mating geometry"),
        _assumed(assumed_mating(plan), "Nothing that mates was assumed."),
        markdown.heading("Other values that were not given"),
        _assumed(assumed_otherwise(plan), "All values were given."),
        markdown.heading("Notes of the sizing"),
        markdown.bullets(plan.notes, "Nothing to note."),
        markdown.heading("Cautions"),
        markdown.bullets(cautions(plan), ""),
    )
    return "\n".join(parts)


def _assumed(records: Iterable[Record], none: str) -> str:
    rows = ((r.key, show.amount(r), show.derivation_words(r), r.source) for r in records)
    return markdown.table(("Key", "Assumed", "From", "Source"), rows, none, right=("Assumed",))


def _files(files: Mapping[str, str]) -> str:
    rows = sorted((name, role) for name, role in files.items())
    return markdown.heading("Files of this set") + "\n" + markdown.table(("File", "Role"), rows, "")
