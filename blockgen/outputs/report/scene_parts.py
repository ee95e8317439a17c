"""How the parts of the assembly are called and coloured in the view."""

from __future__ import annotations

import re
from typing import TYPE_CHECKING

if TYPE_CHECKING:
    from blockgen.geometry.stand_ins.part import AssemblyPart

COLOURS = {
    "block": "#c3c8cc",
    "base_plate": "#8b8578",
    "bearing_unit": "#c98f3d",
    "motor": "#3f6c93",
    "journal": "#e3dcc8",
    "coupling": "#7fb0a6",
    "base_screw": "#5d6268",
    "motor_screw": "#5d6268",
    "bearing_screw": "#5d6268",
    "base_washer": "#a9a79c",
    "dowel": "#8d5a72",
    "motor_centring_ring": "#86a9c6",
    "bearing_centring_ring": "#e2bd84",
}
"""Colours by kind of part. Neighbours differ in lightness too, so that who sees few hues can tell them apart."""

OTHER = "#9a9a9a"


def kind_of(part_id: str) -> str:
    """Return the id without its number."""
    return re.sub(r"_\d+$", "", part_id)


def colour(part_id: str) -> str:
    """Return the colour of a part as ``#rrggbb``."""
    return COLOURS.get(kind_of(part_id), OTHER)


def label(part: AssemblyPart) -> str:
    """Return what a part is called in the list; alike parts of one place have one label."""
    if part.id == "block":
        return "block"
    what = kind_of(part.id).replace("_", " ")
    return part.name if part.name.startswith(what) else f"{what}: {part.name}"
