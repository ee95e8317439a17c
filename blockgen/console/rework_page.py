"""How rework and adapters are printed: verdict, reasons, operations, what stays, adapters side by side."""

from __future__ import annotations

from collections.abc import Iterator, Sequence

from blockgen.change.adapter.data import Adapter
from blockgen.change.rework import rows
from blockgen.change.rework.data import Rework
from blockgen.change.rework.rework import Change
from blockgen.console.page import BLANK, Line, Part, Row, Table, bullet, title


def rework_parts(change: Change) -> Iterator[Part]:
    """Yield verdict, operations and leftovers; adapters where the block cannot be re-machined."""
    found = change.rework
    yield from title("Rework of the block that exists")
    yield Line(rows.verdict(found), "pass" if found.feasible else "fail")
    yield Line(rows.proof(found), "quiet")
    yield from (_done(found) if found.feasible else _refused(found))
    if found.leftovers and found.feasible:
        yield _leftovers(found)
    if not found.feasible:
        yield from adapter_parts(change)


def _done(found: Rework) -> Iterator[Part]:
    """Yield operations, setting up, and what differs from the new design."""
    for index, operation in enumerate(found.operations, 1):
        yield Line(f"{index}. {operation.text}", hang=3)
    for name, entries in (
        ("Setting up", found.setup),
        ("Other than in the new design", found.departures),
        ("Obsolete", found.obsolete),
    ):
        if entries:
            yield BLANK
            yield Line(f"{name}:")
            yield from (bullet(entry) for entry in entries)


def _refused(found: Rework) -> Iterator[Part]:
    """Yield what stands against it: fitted to what is there, and as drawn."""
    fitted = found.attempt.how == "fitted"
    yield Line("Fitted to what stands there, it fails by:" if fitted else "It fails by:")
    yield from (bullet(text, "fail") for text in rows.grouped(found.reasons))
    if fitted and found.as_drawn:
        yield Line("As drawn it fails by:")
        yield from (bullet(text) for text in rows.grouped(found.as_drawn))


def _leftovers(found: Rework) -> Table:
    cells = (Row((row[0], row[1], row[2], row[3], row[4])) for row in rows.leftover_rows(found.leftovers))
    columns = rows.LEFTOVER_COLUMNS[:5]
    return Table(columns, tuple(cells), right=columns[2:4], title="What stays without use, all of it sound")


def adapter_parts(change: Change) -> Iterator[Part]:
    """Yield the adapters and why others do not do."""
    yield from title("Adapters between that block and the new motor")
    if change.adapters:
        yield _side_by_side(change.adapters)
        yield Line("Lengths and offsets in mm, cold; alone stands for the new motor on a block of its own.", "quiet")
    for adapter in change.adapters:
        yield from _one(adapter)
    yield from (bullet(text) for text in change.refused)


def _side_by_side(adapters: Sequence[Adapter]) -> Table:
    cells = tuple(
        Row((row[0], row[2], row[3], f"{row[4]} -> {row[5]}", f"{row[6]} -> {row[7]}"))
        for row in rows.adapter_rows(adapters)
    )
    columns = ("Adapter", "Length", "Feasible", "P95 alone, with it", "Worst alone, with it")
    return Table(columns, cells, right=columns[1:])


def _one(adapter: Adapter) -> Iterator[Part]:
    yield BLANK
    yield Line(f"{adapter.title[0].upper()}{adapter.title[1:]}, {adapter.material}: {adapter.why_pain}")
    sizes = tuple(Row(row[:3]) for row in rows.size_rows(adapter))
    yield Table(rows.SIZE_COLUMNS[:3], sizes, right=rows.SIZE_COLUMNS[1:2])
    yield Line(rows.chain_words(adapter))
    yield from (bullet(text) for text in rows.screw_words(adapter))
    yield from (bullet(f"on the block: {operation.text}") for operation in adapter.operations)
    yield from (bullet(text, "quiet") for text in adapter.remarks)
