"""Values of the summary as they are shown: number and unit, limits, links from one to another."""

from __future__ import annotations

import json
from collections.abc import Mapping
from typing import Any

from blockgen.outputs import show
from blockgen.outputs.report.markup import Markup, anchor, element
from blockgen.record import Input, Record, Value

Document = Mapping[str, Any]

AT_A_GLANCE = (
    "length", "width", "height", "shaft_height", "bearing_bore", "motor_bore", "length_low", "length_high",
    "coupling_position",
)  # fmt: skip
"""Dimensions that stand at the top of the page."""


def record_of(key: str, entry: Mapping[str, Any]) -> Record:
    """Return an entry of the summary as the record that it came from."""
    inputs = {
        name: Input(_value(of["value"]), of["unit"], of["origin"], of["ref"]) for name, of in entry["inputs"].items()
    }
    return Record(
        key, _value(entry["value"]), entry["unit"], entry["origin"], entry["rule"], inputs, entry["source"],
        entry["upper"], entry["lower"], entry["fit"],
    )  # fmt: skip


def _value(of: Any) -> Value:
    return tuple(_value(part) for part in of) if isinstance(of, list) else of


def entry_of(document: Document, key: str) -> Mapping[str, Any] | None:
    """Return the entry of a dimension, an input or a value of making; None where there is none."""
    for place in ("dimensions", "inputs", "making"):
        if key in document.get(place, {}):
            found: Mapping[str, Any] = document[place][key]
            return found
    return None


def number_of(document: Document, key: str) -> float | None:
    """Return a number of the summary; None where it is not known."""
    entry = entry_of(document, key)
    value = entry["value"] if entry else None
    return None if isinstance(value, bool) or not isinstance(value, (int, float)) else float(value)


def none_left(document: Document) -> str | None:
    """Return in words why no length is left once tolerances are taken off; None where one is left."""
    narrow = entry_of(document, "length_low")
    return str(narrow["rule"]) if narrow is not None and narrow["value"] is None else None


def figure(value: Any, shown: str) -> Markup:
    """Return a number as it is shown, with the exact one of the summary beside it for machines."""
    if isinstance(value, bool) or not isinstance(value, (int, float)):
        return element("span", shown)
    return element("data", shown, value=json.dumps(value))


def amount(record: Record) -> Markup:
    """Return the value of a record with its unit."""
    return figure(record.value, show.amount(record))


def quantity(value: float | None, unit: str) -> Markup:
    """Return a checked value to four significant digits with its unit."""
    return figure(value, show.quantity(value, unit))


def plain(value: float | None, unit: str, decimals: int = 4) -> Markup:
    """Return a number with its unit; ``-`` for None."""
    if value is None:
        return element("span", "-")
    return figure(value, f"{show.number(value, decimals)} {show.unit_sign(unit)}".rstrip())


def words(key: str) -> str:
    """Return a key in words."""
    return show.plain_id(key)


def place_of(document: Document, key: str) -> str | None:
    """Return the id of the element that shows a value; None where nothing does."""
    if key in document["dimensions"]:
        return anchor("dimension", key)
    return anchor("value", key) if entry_of(document, key) else None


def link(document: Document, key: str, shown: str | None = None) -> Markup:
    """Return a link to where a value is shown, or its plain name where nothing shows it."""
    place = place_of(document, key)
    name = key if shown is None else shown
    return element("a", name, href=f"#{place}") if place else element("span", name)
