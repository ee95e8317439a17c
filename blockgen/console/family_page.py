"""What is printed of a family of motors: the one block for each of them, or the least set of blocks."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from itertools import combinations
from typing import Any

from blockgen.checks.finding import Finding
from blockgen.console.page import BLANK, Line, Part, Row, Table, bullet, title
from blockgen.errors import Conflict, FamilyError, MotorGroup, Split
from blockgen.outputs import show
from blockgen.outputs.family_rows import MotorRow, family_rows
from blockgen.plan import Plan


def family_parts(plan: Plan, findings: Sequence[Finding]) -> list[Part]:
    """Return what the block is for each motor of a family; nothing for a single motor."""
    rows = family_rows(plan, findings)
    if not rows:
        return []
    columns = ("Motor", "Alone it allows", "Coupling at", "Grips", "Gap", "Screws")
    return [
        *title(f"One block for {len(rows)} motors"),
        Table(columns, tuple(_row(row) for row in rows)),
        *(bullet(f"{row.motor} is {row.turned}.") for row in rows if row.turned),
        Line("Lengths in mm: block that the motor alone would allow, coupling's start from the bearing seat, grip of "
             "journal and motor shaft, gap between the shafts. Checks of the further motors are listed where they "
             "differ from those of the first; solids and finite elements are those of the first.", "quiet"),
    ]  # fmt: skip


def _row(row: MotorRow) -> Row:
    low, high = (show.number(v, 2) if v is not None else "any" for v in (row.length_min, row.length_max))
    cells = (
        row.motor,
        f"{low} to {high}",
        show.number(row.coupling_position, 2),
        f"{show.number(row.journal_grip, 2)} / {show.number(row.motor_grip, 2)}",
        show.number(row.shaft_gap, 2),
        row.screws,
    )
    return Row(cells)


def split_parts(error: FamilyError) -> list[Part]:
    """Return the least set of blocks, and which motors do not go together and why."""
    parts: list[Part] = [Line("No one block takes all these motors; nothing was written.", "fail")]
    told = _telling(error)
    for reason, conflicts in _reasons(told):
        parts += [BLANK, Line(reason), *(bullet(fact) for conflict in conflicts for fact in conflict.facts)]
    more = len(error.splits) - len(told)
    if more:
        parts += [BLANK, Line(f"{more} more such sets of motors are in the JSON document.", "quiet")]
    parts += [BLANK, Line(_count(error.groups))]
    parts += [Line(f"{n}. {_group(group)}", hang=3) for n, group in enumerate(error.groups, start=1)]
    if len(error.groups) > 1:
        parts.append(Line(
            "Make a spec for each of them, with its own job number: its first motor as [motor], the others as "
            "[[family]]. Each of them is a part with its own drawing, so none is written under this number."
        ))  # fmt: skip
    return parts


def split_document(error: FamilyError) -> dict[str, Any]:
    """Return the same as plain data."""
    groups = [
        {"motors": list(g.motors), "entries": list(g.entries), "length_min": g.low, "length_max": g.high}
        for g in error.groups
    ]
    splits = [
        {"motors": list(s.motors), "entries": list(s.entries), "conflicts": [c.title for c in s.conflicts]}
        for s in error.splits
    ]
    return {"groups": groups, "splits": splits}


def _telling(error: FamilyError) -> tuple[Split, ...]:
    """Return for each two blocks the split that shows best why they are two, and every motor that fits no block."""
    alone = [split for split in error.splits if len(split.motors) == 1]
    between = []
    for one, other in combinations(error.groups, 2):
        both = {*one.entries, *other.entries}
        here = [s for s in error.splits if set(s.entries) <= both]
        between += [min(here, key=lambda s: (len(s.motors), -_missing(s)))] if here else []
    told = dict.fromkeys((*alone, *between))
    return tuple(told) or error.splits[:1]


def _missing(split: Split) -> float:
    return max((conflict.deficit for conflict in split.conflicts), default=0.0)


def _reasons(told: Sequence[Split]) -> Iterator[tuple[str, tuple[Conflict, ...]]]:
    """Yield each reason in words with its conflicts; motors that fit no block for the same reason share it."""
    alone: dict[tuple[Conflict, ...], list[str]] = {}
    for split in told:
        if len(split.motors) == 1:
            alone.setdefault(split.conflicts, []).extend(split.motors)
    for conflicts, motors in alone.items():
        fit = "fits" if len(motors) == 1 else "fit"
        yield _first_large(f"{show.joined(motors)} {fit} no block at all: {_titles(conflicts)}"), conflicts
    yield from ((_apart(split), split.conflicts) for split in told if len(split.motors) > 1)


def _titles(conflicts: Sequence[Conflict]) -> str:
    return "; ".join(conflict.title for conflict in conflicts)


def _apart(split: Split) -> str:
    why = _titles(split.conflicts)
    named = all(motor in why for motor in split.motors)
    return _first_large(why if named else f"{show.joined(split.motors)} do not go together: {why}")


def _count(groups: Sequence[MotorGroup]) -> str:
    if not groups:
        return "No block takes any of them."
    return "One block is left:" if len(groups) == 1 else f"{len(groups)} blocks are the fewest that take them:"


def _group(group: MotorGroup) -> str:
    tables = show.joined(_table(entry) for entry in group.entries)
    low, high = show.number(group.low, 2), show.number(group.high, 2)
    length = f"{low} mm long" if low == high else f"{low} to {high} mm long"
    return f"{show.joined(group.motors)}: {length} ({tables})"


def _table(entry: str) -> str:
    return "[motor]" if entry == "motor" else f"[[family]] no. {int(entry.partition('.')[2]) + 1}"


def _first_large(text: str) -> str:
    return text[:1].upper() + text[1:]
