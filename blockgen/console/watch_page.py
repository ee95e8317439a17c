"""What a watch prints: each save in a few lines, with what it changed."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from pathlib import Path

from blockgen.checks.finding import Finding
from blockgen.console.check_page import status_line, tally
from blockgen.console.page import BLANK, Line, Part, Row, Table, bullet
from blockgen.console.plain import lines
from blockgen.console.trouble import as_text, unforeseen
from blockgen.errors import BlockgenError, MachineError
from blockgen.outputs import key_sizes
from blockgen.watching.changes import NONE, Change, Turn, changes, turns
from blockgen.watching.events import Built, Ended, Event, Finishing, Unfinished, Wrong

MOST = 12
"""Rows of a table; more are counted."""

_WORDS = {"fail": "FAIL", "warn": "WARN", "not_assessed": "not assessed", "pass": "pass", NONE: NONE}


def started(spec: Path, address: str | None) -> list[Part]:
    """Return what is said as a watch begins."""
    shown = [] if address is None else [Line(f"Shown at {address} on this computer only.")]
    return [Line(f"Watching {spec}. The interrupt key (Ctrl-C) ends it.", "title"), *shown]


def watch_text(event: Event, spec: Path, at: str, width: int) -> str:
    """Return what is said of an event as plain text, errors as every command tells them.

    Args:
        event: What has happened.
        spec: Spec under watch.
        at: Time of day in words.
        width: Greatest number of characters in a line.
    """
    if not isinstance(event, Wrong):
        return "\n".join(lines(watch_page(event, spec, at), width))
    head = "\n".join(lines([BLANK, _cannot(event, spec, at)], width))
    foot = lines(_when_right(event), width)
    return "\n".join((head, as_text(_ours(event.error), width), *foot))


def watch_page(event: Built | Unfinished | Finishing | Ended, spec: Path, at: str) -> list[Part]:
    """Return what is said of an event that is no error."""
    if isinstance(event, Built):
        told = _first(event, spec, at) if event.follows is None else _whole(event, event.follows.findings, at)
        return [BLANK, *told]
    if isinstance(event, Unfinished):
        return [BLANK, Line(f"{at} The set lacks {_listed(event.roles)}: {event.reason}", "fail")]
    if isinstance(event, Finishing):
        still = f"{at} Still to come: {_listed(event.roles)}. The interrupt key again ends without."
        return [BLANK, Line(still, "warn")]
    return [BLANK, *_ended(event, spec)]


def _first(event: Built, spec: Path, at: str) -> Iterator[Part]:
    written = _listed(event.roles) or "summary"
    yield Line(f"{at} {spec.name}: {written} built in {event.seconds:.2f} s, {_into(event)}", "title")
    if event.before is None:
        against = [f for f in key_sizes.worst_first(event.made.findings) if f.verdict in {"fail", "warn"}]
        yield from (status_line(event.made.status), Line(f"{tally(event.made.findings)}."))
        yield from (bullet(_trouble(f), f.verdict) for f in against)
    else:
        yield from _changed(event)
    if event.later:
        yield Line(f"To follow when the spec is left alone: {_listed(event.later)}.", "quiet")
    if event.unstiff:
        lost = f"The stiffness by finite elements is out; `blockgen build {spec} --stiffness` finds it out again."
        yield Line(lost, "warn")
    if event.retired:
        yield Line(f"Taken away, since --only does not name them: {_listed(event.retired)}.", "warn")


def _into(event: Built) -> str:
    folder, before = event.made.folder, event.before
    return f"now in {folder}" if before is not None and before.folder != folder else f"in {folder}"


def _changed(event: Built) -> Iterator[Part]:
    if event.before is None:
        return
    found = changes(event.before, event.made)
    yield _status(found.status, event.made.status)
    yield from _table("Asked for", found.asked)
    yield from _table("Sizes", (*found.sizes, *found.screws))
    yield from _turns(found.checks)
    if not (found.asked or found.sizes or found.screws or found.checks):
        yield Line("No value, size, screw or verdict has changed.", "quiet")


def _status(change: Change | None, now: str) -> Line:
    line = status_line(now)
    return line if change is None else Line(f"{line.text} (was: {change.before})", line.mark)


def _whole(event: Built, heard: Sequence[Finding], at: str) -> Iterator[Part]:
    told = {finding.id for finding in heard}
    now = [finding for finding in event.made.findings if finding.id not in told]
    before = [] if event.before is None else [f for f in event.before.findings if f.id not in told]
    yield Line(f"{at} The set is whole, {event.seconds:.1f} s after the save: {_listed(event.roles)} too.", "title")
    yield _status(None, event.made.status)
    yield from _turns(tuple(turns(before, now)))


def _table(heading: str, rows: Sequence[Change]) -> Iterator[Part]:
    if rows:
        yield BLANK
        yield Table((heading, "Before", "Now"), tuple(Row((c.name, c.before, c.now)) for c in rows[:MOST]))
    if len(rows) > MOST:
        yield Line(f"and {len(rows) - MOST} more; `blockgen explain` shows every value.", "quiet")


def _turns(found: Sequence[Turn]) -> Iterator[Part]:
    """Yield the checks that need a word, then the number of new ones that do not."""
    fine = [t for t in found if t.before == NONE and t.now is not None and t.now.verdict in {"pass", "not_assessed"}]
    spoken = [_turn(turn) for turn in found if turn not in fine]
    if spoken:
        yield BLANK
    yield from spoken
    if fine:
        yield Line(f"Checks that were not made before: {_counted(fine)}.", "quiet")


def _counted(fine: Sequence[Turn]) -> str:
    return tally([t.now for t in fine if t.now is not None]).split(": ", 1)[1]


def _turn(turn: Turn) -> Line:
    if turn.now is None:
        title = turn.then.title if turn.then is not None else ""
        return bullet(f"{_WORDS[turn.before]} -> not made: {title}", "quiet")
    return bullet(f"{_WORDS[turn.before]} -> {_trouble(turn.now)}", turn.now.verdict)


def _trouble(finding: Finding) -> str:
    why = finding.explanation.removeprefix("not assessed: ")
    return f"{_WORDS[finding.verdict]} {finding.title} ({finding.id}): {why}"


def _cannot(event: Wrong, spec: Path, at: str) -> Line:
    stands = "nothing stands yet" if event.folder is None else f"the set in {event.folder} stands as it was"
    return Line(f"{at} {spec.name} cannot be built; {stands}")


def _when_right(event: Wrong) -> list[Part]:
    return [Line(f"To follow when the spec is right: {_listed(event.owed)}.")] if event.owed else []


def _ours(error: Exception) -> BlockgenError:
    if isinstance(error, BlockgenError):
        return error
    if isinstance(error, OSError):
        return MachineError(f"{error.filename or 'the system'}: {error.strerror or error}")
    return unforeseen(error)


def _ended(event: Ended, spec: Path) -> Iterator[Part]:
    yield Line("Watch ended." if event.folder is None else f"Watch ended; the set in {event.folder} is whole.", "title")
    if event.owed:
        lacks = f"It lacks {_listed(event.owed)}: the watch ended without them."
        yield Line(f"{lacks} `blockgen build {spec}` makes them.", "warn")


def _listed(roles: Sequence[str]) -> str:
    return ", ".join(roles)
