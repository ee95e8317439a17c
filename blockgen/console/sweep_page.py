"""The page of ``blockgen sweep``: how many variants hold, what stands in the way, the front."""

from __future__ import annotations

from collections.abc import Iterator

from blockgen.change.sweep.sweep import Best, Swept
from blockgen.console.page import Line, Page, Part, Row, Table, bullet, title
from blockgen.outputs import show

_MOST_ROWS = 12
_MOST_OBSTACLES = 5
_MARKS = {"feasible": "pass", "failed checks": "fail", "infeasible": "fail", "invalid": "warn", "error": "fail"}
_WORDS = {
    "feasible": "hold",
    "failed checks": "fail a check",
    "infeasible": "leave no feasible layout",
    "invalid": "have parts that cannot be",
    "error": "ended with an error, see the table",
}


def sweep_page(found: Swept) -> Page:
    """Return the page of a sweep."""
    return [*_counts(found), *_obstacles(found), *_front(found), *_doubts(found), *_files(found)]


def _counts(found: Swept) -> Iterator[Part]:
    keys = show.joined(tuple(axis.key for axis in found.axes))
    yield Line(f"{found.count} variants of {found.spec}: {keys}")
    if found.resumed:
        yield Line(f"{found.resumed} of them were done by an earlier run that was stopped.", "quiet")
    for status, count in found.statuses.items():
        if count:
            yield bullet(f"{count} {_WORDS[status]}", _MARKS[status])  # type: ignore[arg-type] # a mark


def _obstacles(found: Swept) -> Iterator[Part]:
    if found.obstacles:
        yield from title("What stands in the way")
        yield from (bullet(f"{count} x {what}") for what, count in found.obstacles[:_MOST_OBSTACLES])
        if len(found.obstacles) > _MOST_OBSTACLES:
            yield bullet(f"and {len(found.obstacles) - _MOST_OBSTACLES} other reasons, see the table", "quiet")


def _front(found: Swept) -> Iterator[Part]:
    if not found.front:
        return
    yield from title("The front: no other variant that holds is as good in all of these and better in one")
    own = ("kg", "N/um", "offset mm", "screws")
    ordered = sorted(found.front, key=lambda best: (best.outcome.mass or 0.0, best.number))
    rows = tuple(_row(found, best) for best in ordered[:_MOST_ROWS])
    yield Table(
        ("No.", *(axis.key.partition(".")[2].replace("_", " ") for axis in found.axes), *own), rows, right=("No.", *own)
    )
    if len(ordered) > _MOST_ROWS:
        yield Line(f"The {_MOST_ROWS} lightest of {len(ordered)}; the others are marked in the table.", "quiet")


def _row(found: Swept, best: Best) -> Row:
    values = (show.with_unit(value, axis.unit) for axis, value in zip(found.axes, best.point, strict=True))
    what = best.outcome
    figures = (f"{what.mass or 0.0:.3f}", f"{what.stiffness or 0.0:.0f}", f"{what.offset_p95 or 0.0:.4f}")
    return Row((str(best.number), *values, *figures, str(what.screws)))


def _doubts(found: Swept) -> Iterator[Part]:
    yield Line("")
    text = "N/um is an estimate of the block's stiffness with beams: confirm a choice by blockgen check --stiffness."
    yield Line(text, "quiet")
    if found.statistics:
        yield Line("Offset: 95 % of blocks stay below, exact.", "quiet")
    else:
        text = "Offset: 95 % of blocks stay below, estimated. Offset and angle are judged with --statistics only."
        yield Line(text, "quiet")


def _files(found: Swept) -> Iterator[Part]:
    yield from title("Files")
    yield bullet(f"{found.table}: every variant")
    if found.plot is not None:
        yield bullet(f"{found.plot}: the front as a picture")
    if found.solids is not None:
        yield bullet(f"{found.solids}: STEP and STL of each block")
