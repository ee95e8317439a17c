"""What ``new --from`` prints: what was put in, what is locked, and whether a block exists."""

from __future__ import annotations

import shlex
from collections.abc import Iterator

from blockgen.change.swap.swap import Swap
from blockgen.console.check_page import status_line
from blockgen.console.page import BLANK, Line, Part, bullet, title


def swap_page(made: Swap) -> list[Part]:
    """Return the page of a spec that was written from an old one."""
    return [*_head(made), *_locks(made), *outcome(made), *_next(made)]


def _head(made: Swap) -> Iterator[Part]:
    parts = ", ".join(f"{part} {name}" for part, name in made.parts.items())
    yield Line(f"{made.file} is written from {made.old}" + (f" with {parts}." if parts else "."))
    old, new = made.revision
    if old != new:
        yield Line(f"Revision {old} became {new}; the number stays.")
    elif made.parts:
        yield Line(f"Revision {old} was left: give the new one yourself.", "warn")
    yield from (Line(f"Note: {remark}.", "warn") for remark in made.remarks)


def _locks(made: Swap) -> Iterator[Part]:
    if made.locks:
        yield from title("Locked, so that what exists can stay")
        for lock in made.locks:
            value = f" = {lock.toml}" if lock.toml else ", as it was given"
            yield bullet(f"{lock.table}.{lock.key}{value}")
        yield Line("Dowels have no key for their places: they may move.", "quiet")


def outcome(made: Swap) -> Iterator[Part]:
    """Yield what the new spec gives: the status of the block, or why none exists."""
    if made.design is not None:
        yield BLANK
        yield status_line(made.design.status)
        if made.freed:
            yield Line(f"No check fails when these locks are freed: remove {_ways(made)} from the file.")
        elif made.locks and any(finding.verdict == "fail" for finding in made.design.findings):
            yield Line("Freeing the locks does not help: blockgen check tells what would.")
    if not made.conflicts:
        return
    yield BLANK
    yield Line("The file is written, but no block can exist for it as it stands.", "fail")
    for conflict in made.conflicts:
        yield from (BLANK, Line(conflict.title), *(bullet(fact) for fact in conflict.facts))
    yield BLANK
    yield Line(_way_out(made))
    for number, cure in enumerate(sorted(made.cures, key=lambda cure: cure.rank), start=1):
        proof = "sized again: a block exists" if cure.verified else "not enough by itself"
        yield Line(f"{number}. {cure.text} ({proof})", hang=3)


def _way_out(made: Swap) -> str:
    if not made.freed:
        lead = "Freeing the locks does not help. " if made.locks else ""
        if not made.cures:
            return f"{lead}No change of a single value was found that cures it: choose other parts."
        return f"{lead}What would cure it, the least trouble first:"
    return f"A block exists when these locks are freed: remove {_ways(made)} from the file. With them it takes:"


def _ways(made: Swap) -> str:
    return " or ".join(" and ".join(keys) for keys in made.freed)


def _next(made: Swap) -> Iterator[Part]:
    file = shlex.quote(str(made.file))
    yield BLANK
    if made.design is not None:
        yield Line(f"What changes: blockgen compare {shlex.quote(str(made.old))} {file}")
    yield Line(f"Then: blockgen check {file}")
