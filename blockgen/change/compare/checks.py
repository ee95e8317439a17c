"""Checks, screws, alignment and masses that differ."""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from dataclasses import replace
from typing import Any

from blockgen.change.compare.data import Change, Entry
from blockgen.change.compare.values import entries, same

CHECK = ("verdict", "margin", "value", "limit")
FASTENER = ("standard", "size", "length", "class", "count", "torque", "preload", "engagement", "washer")
CHARACTERISTIC = ("kind", "value", "unit", "upper", "lower", "fit", "datums", "diametral", "text", "covers")
_UNITS = {"length": "mm", "torque": "N*m", "preload": "N", "engagement": "mm"}
_SEVERITY = ("pass", "warn", "not_assessed", "fail")
_SPREADS = ("offset", "offset_static", "offset_rotating", "angle", "angle_static", "angle_rotating")
_SPREAD = ("worst", "p50", "p95", "p9973", "limit", "exceeding")
_MAKING = {
    "stock": "stock_form", "stock_length": "stock_length", "stock_width": "stock_width",
    "stock_height": "stock_height", "stock_mass": "stock_mass", "cut_from_stock": "removed_volume",
    "machining_time": "machining_time", "assembled_mass": "assembled_mass",
}  # fmt: skip

Document = Mapping[str, Any]


def check_entries(old: Sequence[Document], new: Sequence[Document]) -> tuple[Entry, ...]:
    """Return what became of each check; a change says whether it is worse or better."""
    before, after = _by_id(old), _by_id(new)
    return tuple(_judged(entry, before, after) for entry in entries(before, after, CHECK, "title"))


def _by_id(things: Sequence[Document]) -> dict[str, Document]:
    return {str(thing["id"]): thing for thing in things}


def _judged(entry: Entry, old: Mapping[str, Document], new: Mapping[str, Document]) -> Entry:
    side = new.get(entry.id) or old[entry.id]
    unit = str(side.get("unit") or "")
    parts = tuple(replace(c, unit=unit) if c.name in {"value", "limit"} else c for c in entry.changes)
    if entry.state != "changed":
        return replace(entry, changes=parts)
    return replace(entry, changes=parts, note=turn(old[entry.id], new[entry.id]))


def turn(old: Document, new: Document) -> str:
    """Return worse or better: by the verdict, and by the margin where that is the same; else empty."""
    before, after = _SEVERITY.index(old["verdict"]), _SEVERITY.index(new["verdict"])
    if before != after:
        return "worse" if after > before else "better"
    margin, other = old.get("margin"), new.get("margin")
    if margin is None or other is None or same(margin, other):
        return ""
    return "worse" if other < margin else "better"


def fastener_entries(old: Sequence[Document], new: Sequence[Document]) -> tuple[Entry, ...]:
    """Return what became of each group of screws or pins."""
    found = entries(_by_place(old), _by_place(new), FASTENER, "title")
    return tuple(replace(e, changes=tuple(replace(c, unit=_UNITS.get(c.name, "")) for c in e.changes)) for e in found)


def _by_place(fasteners: Sequence[Document]) -> dict[str, Document]:
    """Return the groups by place; a second group at one place is numbered."""
    groups: dict[str, Document] = {}
    for fastener in fasteners:
        key, number = str(fastener["where"]), 1
        while key in groups:
            number += 1
            key = f"{fastener['where']}_{number}"
        groups[key] = {**fastener, "title": fastener_words(fastener)}
    return groups


def fastener_words(fastener: Document) -> str:
    """Return a group of screws as it is ordered: ``6 x ISO 4762 M8 x 60 - 8.8``."""
    length = fastener.get("length")
    size = f"{fastener['size']}" if length is None else f"{fastener['size']} x {length:g}"
    grade = f" - {fastener['class']}" if fastener.get("class") else ""
    return f"{fastener['count']} x {fastener['standard']} {size}{grade}"


def characteristic_entries(old: Sequence[Document], new: Sequence[Document]) -> tuple[Entry, ...]:
    """Return what became of each characteristic that drawing and inspection sheet state."""
    found = entries(_by_id(old), _by_id(new), CHARACTERISTIC, "text")
    units = {**_by_id(old), **_by_id(new)}
    return tuple(replace(e, changes=tuple(_sized(c, str(units[e.id]["unit"])) for c in e.changes)) for e in found)


def _sized(change: Change, unit: str) -> Change:
    return replace(change, unit=unit) if change.name in {"value", "upper", "lower"} else change


def alignment_entries(old: Document, new: Document) -> tuple[Entry, ...]:
    """Return what became of offset, angle, coupling use and the size of each cause."""
    return _figures(_alignment(old), _alignment(new))


def mass_entries(old: Document, new: Document) -> tuple[Entry, ...]:
    """Return what became of mass, material, volume and stock."""
    return _figures(_masses(old), _masses(new))


def _figures(old: Mapping[str, Document], new: Mapping[str, Document]) -> tuple[Entry, ...]:
    found = entries(old, new, ("value",))
    units = {**old, **new}
    return tuple(replace(e, changes=tuple(replace(c, unit=units[e.id]["unit"]) for c in e.changes)) for e in found)


def _figure(value: Any, unit: str = "") -> Document:
    return {"value": value, "unit": unit}


def _alignment(document: Document) -> dict[str, Document]:
    found = document["alignment"]
    rows = {
        f"{name}.{part}": _figure(found[name].get(part), "" if part == "exceeding" else found[name]["unit"])
        for name in _SPREADS
        for part in _SPREAD
    }
    rows |= {f"axial.{part}": _figure(found["axial"].get(part), "mm") for part in ("worst", "judged")}
    rows |= {f"coupling_use.{part}": _figure((found["coupling_use"] or {}).get(part)) for part in ("worst", "likely")}
    rows["centre"] = _figure(found["centre"], "mm")
    for cause in found["contributors"]:
        unit = "" if cause["law"] == "clearance" else "rad" if cause["quantity"] == "angle" else "mm"
        limits = cause["limits"]
        rows[f"cause.{cause['id']}"] = _figure(cause["size"] if limits is None else limits, unit or "mm")
    return {key: row for key, row in rows.items() if row["value"] is not None}


def _masses(document: Document) -> dict[str, Document]:
    mass = document["mass"]
    rows = {
        "mass": _figure(mass["value"], "kg"),
        "material": _figure(mass["material"]),
        "volume": _figure(document["volume"], "mm3"),
    }
    making = document.get("making") or {}
    found = {name: making.get(f"making.{key}") for name, key in _MAKING.items()}
    return rows | {name: _figure(row["value"], row["unit"]) for name, row in found.items() if row}
