"""The comparison as plain data for ``--json`` and the file beside the document."""

from __future__ import annotations

from math import fsum
from typing import Any

from blockgen.change.compare.data import Change, Comparison, Document, Entry, Lump, Side, Volumes, changed, unchanged
from blockgen.change.rework.document import rework_document
from blockgen.outputs.tidy import tidy

SCHEMA = 1
SECTIONS = (
    "spec", "dimensions", "features", "base_features", "characteristics", "fasteners", "checks", "alignment", "mass",
)  # fmt: skip


def comparison_document(found: Comparison) -> dict[str, Any]:
    """Return a comparison as plain data; what is the same is named only."""
    document: dict[str, Any] = tidy({
        "schema": SCHEMA,
        "same": found.same,
        "old": _side(found.old),
        "new": _side(found.new),
        "status": {"old": found.status.old, "new": found.status.new},
        **{name: _section(getattr(found, name)) for name in SECTIONS},
        "not_comparable": found.not_comparable,
        "documents": [_document(each) for each in found.documents],
        "volumes": None if found.volumes is None else _volumes(found.volumes),
        "rework": None if found.rework is None else rework_document(found.rework),
    })  # fmt: skip
    return document


def _side(side: Side) -> dict[str, Any]:
    document = side.document
    return {
        "kind": side.kind,
        "number": document["job"]["number"],
        "revision": document["job"]["revision"],
        "title": document["job"].get("title"),
        "status": document["status"],
        "tool": document["tool"],
        "spec_sha256": document["spec_sha256"],
        "whole": side.whole,
        "remarks": side.remarks,
    }


def _section(entries: tuple[Entry, ...]) -> dict[str, Any]:
    return {"changed": [_entry(e) for e in changed(entries)], "unchanged": [e.id for e in unchanged(entries)]}


def _entry(entry: Entry) -> dict[str, Any]:
    return {
        "id": entry.id,
        "new_id": entry.new_id or entry.id,
        "state": entry.state,
        "title": entry.title,
        "group": entry.group or None,
        "turn": entry.note or None,
        "because": entry.because,
        "changes": [_change(change) for change in entry.changes],
    }


def _change(change: Change) -> dict[str, Any]:
    return {"name": change.name, "old": change.old, "new": change.new, "unit": change.unit}


def _document(document: Document) -> dict[str, Any]:
    return {"role": document.role, "files": document.files, "state": document.fate, "reasons": document.reasons}


def _volumes(volumes: Volumes) -> dict[str, Any]:
    return {
        "unit": "mm3",
        "old": volumes.old,
        "new": volumes.new,
        "added": fsum(lump.volume for lump in volumes.added),
        "removed": fsum(lump.volume for lump in volumes.removed),
        "added_pieces": [_lump(lump) for lump in volumes.added],
        "removed_pieces": [_lump(lump) for lump in volumes.removed],
    }


def _lump(lump: Lump) -> dict[str, Any]:
    return {"volume": lump.volume, "box": lump.box}
