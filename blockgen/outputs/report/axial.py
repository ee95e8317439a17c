"""The section of the axial layout: picture to scale, and each constraint with its room."""

from __future__ import annotations

from typing import Any

from blockgen.outputs.report.axial_picture import axial_picture
from blockgen.outputs.report.markup import Markup, element, joined
from blockgen.outputs.report.tables import content, scrolling, table
from blockgen.outputs.report.values import Document, link, none_left, number_of, plain

_COLUMNS = ("Constraint", "Room", "Room after tolerances", "What is bound", "Value", "Limit")
_LENGTHS = (
    ("length_min", "shortest"), ("length_max", "longest"), ("length_low", "shortest after tolerances"),
    ("length_high", "longest after tolerances"), ("length", "chosen"),
)  # fmt: skip
_LEAD = (
    "Three places lie on the shaft: the bearing seat, where the coupling starts, and the motor seat. Each fact keeps "
    "one of their distances from being too small or too great; the tightest stand first."
)


def axial(document: Document) -> Markup:
    """Return the section."""
    caption = element(
        "figcaption", "Cut along the shaft, to scale, sizes in mm; grips are hatched.", id="axial-caption"
    )
    picture = element("figure", scrolling("Axial layout to scale", axial_picture(document)), caption)
    return content(_interval(document), picture, element("p", _LEAD), _constraints(document))


def _interval(document: Document) -> Markup:
    lengths = ((key, name, number_of(document, key)) for key, name in _LENGTHS)
    pieces = [joined((link(document, key, name), " ", plain(n, "mm"))) for key, name, n in lengths if n is not None]
    return element("p", "Length of the block: ", joined((*pieces, none_left(document)), ", "), ".")


def _constraints(document: Document) -> Markup:
    rows = (
        (
            element("span", _name(row), element("small", f" {row['words']}")),
            plain(row["room"], "mm", 2),
            element("span", plain(row["room_after_tolerances"], "mm", 2), class_=_kind(row["room_after_tolerances"])),
            row["quantity"],
            plain(row["value"], "mm", 2),
            joined((f"{'at least' if row['side'] == 'least' else 'at most'} ", plain(row["limit"], "mm", 2))),
        )
        for row in document["layout"]["constraints"]
    )
    return table("Constraints along the axis", _COLUMNS, rows, right=_COLUMNS[1:3])


def _name(row: dict[str, Any]) -> str:
    return str(row["name"]) if row["motor"] is None else f"{row['name']}, with {row['motor']}"


def _kind(room: float) -> str | None:
    return "short" if room < 0 else None
