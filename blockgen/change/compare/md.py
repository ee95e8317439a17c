"""The comparison as a Markdown document."""

from __future__ import annotations

from collections.abc import Iterator
from math import fsum

from blockgen.change.compare import rows
from blockgen.change.compare.data import Comparison, Side, Volumes
from blockgen.change.compare.places import feature_rows
from blockgen.change.rework.rows import markdown as rework_lines
from blockgen.outputs.markdown import bullets, heading, paragraph, strong, table

_ALL = 1000
_SAME = "Nothing differs."


def comparison_md(found: Comparison, picture: str | None = None) -> str:
    """Return the comparison as Markdown.

    Args:
        found: The comparison.
        picture: Name of the picture's file; None without one.
    """
    rework = [] if found.rework is None else ["\n".join(rework_lines(found.rework))]
    told = [*_head(found), *_volumes(found, picture), *rework, *_documents(found)]
    return "\n".join([*told, *_changes(found), *_same(found)])


def _head(found: Comparison) -> Iterator[str]:
    yield heading(f"Change from {found.old.stem} to {found.new.stem}", 1)
    yield strong(rows.result_words(found))
    yield table(("", "Old", "New"), _sides(found.old, found.new), "")
    remarks = [f"{name} design: {text}" for name, side in _named(found) for text in side.remarks]
    if remarks:
        yield bullets(remarks, "")


def _named(found: Comparison) -> tuple[tuple[str, Side], ...]:
    return (("Old", found.old), ("New", found.new))


def _sides(old: Side, new: Side) -> list[tuple[str, ...]]:
    pairs = [(side.document, side) for side in (old, new)]
    return [
        ("Number and revision", *(side.stem for _, side in pairs)),
        ("Read from", *("a built set" if side.kind == "folder" else "a spec" for _, side in pairs)),
        ("Status", *(str(document["status"]) for document, _ in pairs)),
        ("Hash of the spec", *(str(document["spec_sha256"]) for document, _ in pairs)),
        ("Made by", *(str(document["tool"]) for document, _ in pairs)),
    ]


def _volumes(found: Comparison, picture: str | None) -> Iterator[str]:
    if found.volumes is None:
        return
    yield heading("Volume")
    yield table(("", "mm3", "cm3"), volume_rows(found.volumes), "", right=("mm3", "cm3"))
    if picture:
        yield f"![Removed and added volume](<{picture}>)\n"
    yield paragraph("Both blocks are laid on each other: bearing seats, bases and shafts in line.")


def volume_rows(volumes: Volumes) -> list[tuple[str, ...]]:
    """Return the volumes in mm3 and cm3."""
    sums = {
        "old block": volumes.old,
        "removed": fsum(lump.volume for lump in volumes.removed),
        "added": fsum(lump.volume for lump in volumes.added),
        "new block": volumes.new,
    }
    return [(what, f"{volume:.0f}", f"{volume / 1000:.2f}") for what, volume in sums.items()]


def _documents(found: Comparison) -> Iterator[str]:
    yield heading("What became obsolete")
    yield table(rows.DOCUMENTS, rows.document_rows(found), "Nothing was made from it.")


def _changes(found: Comparison) -> Iterator[str]:
    yield heading("What differs")
    yield from _section("Spec", rows.SPEC, rows.spec_rows(found))
    yield from _section("Dimensions", rows.SIZES, rows.size_rows(found, _ALL))
    yield from _section("Cavities of the block", rows.FEATURES, feature_rows(found, found.features))
    yield from _section("Holes of the base plate", rows.FEATURES, feature_rows(found, found.base_features))
    yield from _section("Screws and pins", rows.FASTENERS, rows.fastener_rows(found))
    yield from _section("Checks", rows.CHECKS, rows.check_rows(found), right=("Margin", "Margin "))
    if found.not_comparable:
        yield bullets(found.not_comparable, "")
    yield from _section("Alignment", rows.FIGURES, rows.figure_rows(found.alignment))
    yield from _section("Mass and stock", rows.FIGURES, rows.figure_rows(found.mass))
    yield from _section("Drawing and inspection", rows.CHARACTERISTICS, rows.characteristic_rows(found))


def _section(title: str, columns: tuple[str, ...], body: list[rows.Row], right: tuple[str, ...] = ()) -> Iterator[str]:
    yield heading(title, 3)
    yield table(columns, body, _SAME, right=right)


def _same(found: Comparison) -> Iterator[str]:
    yield heading("What stays as it is")
    yield bullets((f"{head}: {ids}" for head, ids in rows.unchanged_words(found)), "")
