"""What ``compare`` prints: what differs, then what a designer has to act on, since the end stays in sight."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from pathlib import Path

from blockgen.change.compare import rows
from blockgen.change.compare.data import Comparison, Side
from blockgen.change.compare.md import volume_rows
from blockgen.change.compare.places import feature_rows
from blockgen.change.compare.words import of_entry
from blockgen.console.page import Line, Mark, Part, Table, bullet, title
from blockgen.console.page import Row as PageRow
from blockgen.console.rework_page import rework_parts

# What the document has, and a page can do without.
_DETAIL = ("static", "rotating", "p50", "exceeding")
_NAMED_ONLY_IN_FULL = ("characteristics", "figures of the alignment", "keys of the spec")
_SHOWN_OF_HASH = 12


def compare_page(found: Comparison, files: Sequence[Path] = ()) -> list[Part]:
    """Return the page of a comparison.

    Args:
        found: The comparison.
        files: Files that were written.
    """
    return [
        *_head(found),
        *_sections(found),
        *_checks(found),
        *_unchanged(found),
        *_volumes(found),
        *(() if found.rework is None else rework_parts(found.rework)),
        *_documents(found),
        *_files(files),
        *title("Result"),
        *_remarks(found),
        Line(f"Status: {found.status.new}", _status_mark(found.status.new)),
        Line(rows.result_words(found)),
    ]


def _head(found: Comparison) -> Iterator[Part]:
    for name, side in (("Old", found.old), ("New", found.new)):
        document = side.document
        sha256 = document["spec_sha256"][:_SHOWN_OF_HASH]
        yield Line(f"{name}: {side.stem}, {side.path} ({_origin(side)}), hash of the spec {sha256}...", hang=5)
        yield Line(f"     {document['status']}", _status_mark(document["status"]))


def _origin(side: Side) -> str:
    if side.kind == "spec":
        return "spec"
    return "built set, whole" if side.whole else "built set, NOT WHOLE"


def _status_mark(status: str) -> Mark:
    if status.startswith("NOT"):
        return "fail"
    return "warn" if status.startswith("PRELIMINARY") else "pass"


def _sections(found: Comparison) -> Iterator[Part]:
    yield from _table("Spec", rows.SPEC, rows.spec_rows(found))
    yield from _table("Dimensions", rows.SIZES, rows.size_rows(found))
    yield from _table("Cavities of the block", rows.FEATURES, feature_rows(found, found.features))
    yield from _table("Holes of the base plate", rows.FEATURES, feature_rows(found, found.base_features))
    yield from _table("Screws and pins", rows.FASTENERS, rows.fastener_rows(found))
    for name, entries in (("Alignment", found.alignment), ("Mass and stock", found.mass)):
        told = rows.figure_rows(entries, _DETAIL)
        yield from _table(name, rows.FIGURES, [cells for cells in told if cells[1] != cells[2]])


def _table(name: str, columns: tuple[str, ...], body: Sequence[rows.Row]) -> Iterator[Part]:
    if body:
        yield from title(name)
        yield Table(columns, tuple(PageRow(cells) for cells in body))


def _checks(found: Comparison) -> Iterator[Part]:
    marks: dict[str, Mark] = {"worse": "warn", "better": "pass"}
    differing = list(zip(rows.judged(found), rows.check_rows(found), strict=True))
    told = [(entry, cells) for entry, cells in differing if cells[2:4] != cells[4:6]]
    verdicts = sum(1 for entry, _ in told if of_entry(entry, "verdict") is not None)
    if told:
        yield from title(f"Checks: {verdicts} with another verdict, {len(told) - verdicts} with another margin")
        body = tuple(PageRow(c, "fail" if _fails(c) else marks.get(e.note, "")) for e, c in told)
        yield Table(rows.CHECKS, body, right=("Margin", "Margin "))
    if len(differing) > len(told):
        yield Line(f"{len(differing) - len(told)} more differ by less than their margins show.", "quiet")
    if found.not_comparable:
        text = f"{len(found.not_comparable)} checks that need solids or finite elements were judged on one side only."
        yield Line(text, "quiet")


def _fails(cells: rows.Row) -> bool:
    return cells[4] == "FAIL" and cells[2] != "FAIL"


def _unchanged(found: Comparison) -> Iterator[Part]:
    yield from title("Unchanged")
    for head, ids in rows.unchanged_words(found):
        yield bullet(head if head.endswith(_NAMED_ONLY_IN_FULL) else f"{head}: {ids}", "quiet")


def _volumes(found: Comparison) -> Iterator[Part]:
    if found.volumes is not None:
        yield from title("Volume")
        body = tuple(PageRow(cells) for cells in volume_rows(found.volumes))
        yield Table(("Volume", "mm3", "cm3"), body, right=("mm3", "cm3"))


def _documents(found: Comparison) -> Iterator[Part]:
    marks: dict[str, Mark] = {rows.FATES[fate]: "fail" for fate in ("obsolete", "damaged")}
    marks[rows.FATES["renamed"]] = "warn"
    yield from title("What became obsolete")
    body = tuple(
        PageRow((state, what, why), marks.get(state, "pass")) for what, state, why in rows.document_rows(found)
    )
    yield Table(("State", "Made from the old design", "Why"), body)


def _files(files: Sequence[Path]) -> Iterator[Part]:
    if files:
        yield from title("Files")
        yield from (bullet(str(file)) for file in files)


def _remarks(found: Comparison) -> Iterator[Part]:
    for name, side in (("Old", found.old), ("New", found.new)):
        yield from (bullet(f"{name} design: {text}", "warn") for text in side.remarks)
