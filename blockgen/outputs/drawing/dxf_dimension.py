"""Dimensions of a sheet as real dimensions of a DXF file."""

from __future__ import annotations

import math
import re
from typing import TYPE_CHECKING, Any

from blockgen.outputs.drawing.dxf_strokes import Place, add_strokes
from blockgen.outputs.drawing.dxf_tables import DECIMALS, DIMENSION_STYLE, DecimalSign, layer_name
from blockgen.outputs.drawing.lettering import text_box
from blockgen.outputs.drawing.strokes import Item, Measure, Point, Text

if TYPE_CHECKING:
    from ezdxf.document import Drawing
    from ezdxf.entities.dxfgfx import DXFGraphic

LINEAR, DIAMETER, RADIUS = 0, 3, 4
OWN_BLOCK, TEXT_PLACED = 32, 128
"""Group code 70 of a DIMENSION: kind, block used by nobody else, text not at its default place."""

SIGN = {"linear": "", "radius": "R", "diameter": "\u2300"}
"""What a reader sets before the measured number by itself."""


def add_dimension(
    document: Drawing, item: Item, measure: Measure, place: Place, decimal_sign: DecimalSign
) -> DXFGraphic:
    """Add a dimension whose picture is made of the item's own strokes, and return it.

    Args:
        document: The document, for the block of the picture.
        item: The item.
        measure: What the item measures.
        place: Where it goes.
        decimal_sign: Sign in numbers.
    """
    block = document.blocks.new_anonymous_block(type_char="D")
    add_strokes(item, Place(block, place.factor, place.origin))
    points = _points(measure, place)
    value = measured(measure) * place.factor
    attributes = {
        "layer": layer_name(item.role, "thin"),
        "dimstyle": DIMENSION_STYLE,
        "geometry": block.name,
        "actual_measurement": value,
        "text": override(measure, value, decimal_sign),
        "text_midpoint": place.point(_text_middle(item, measure)),
        "attachment_point": 5,
        **points,
    }
    dimension: DXFGraphic = place.layout.new_entity("DIMENSION", attributes)
    return dimension


def measured(measure: Measure) -> float:
    """Return the measured distance on paper, mm."""
    across, up = (b - a for a, b in zip(measure.first, measure.second, strict=True))
    if measure.kind != "linear":
        return math.hypot(across, up)
    return abs(across) if measure.angle == 0 else abs(up)


def _points(measure: Measure, place: Place) -> dict[str, Any]:
    """Return kind and definition points."""
    first, second = place.point(measure.first), place.point(measure.second)
    if measure.kind == "linear":
        (x, y), (u, v) = measure.second, measure.on_line
        foot = place.point((x, v) if measure.angle == 0 else (u, y))
        ends = {"defpoint": foot, "defpoint2": first, "defpoint3": second, "angle": measure.angle}
        return {"dimtype": LINEAR | OWN_BLOCK | TEXT_PLACED, **ends}
    kind = DIAMETER if measure.kind == "diameter" else RADIUS
    return {"dimtype": kind | OWN_BLOCK | TEXT_PLACED, "defpoint": first, "defpoint4": second}


def _text_middle(item: Item, measure: Measure) -> Point:
    boxes = [text_box(stroke) for stroke in item.strokes if isinstance(stroke, Text)]
    if not boxes:
        return measure.on_line
    return (boxes[0].left + boxes[0].right) / 2, (boxes[0].bottom + boxes[0].top) / 2


def override(measure: Measure, value: float, decimal_sign: DecimalSign) -> str:
    """Return what stands in place of the measured text: nothing where both are the same.

    Where the shown text has the measured number in it once, the number stays measured (``<>``), so that it follows when
    the dimension is changed.

    Args:
        measure: The dimension.
        value: The measured value, mm.
        decimal_sign: Sign in numbers.
    """
    number = f"{value:.{DECIMALS}f}".rstrip("0").rstrip(".").replace(".", decimal_sign)
    plain = SIGN[measure.kind] + number
    if measure.text == plain:
        return ""
    parts = re.split(rf"(?<![\w.,]){re.escape(plain)}(?!\d|[.,]\d|\s*[x\u00d7])", measure.text)
    return "<>".join(_escaped(part) for part in (parts if len(parts) == 2 else [measure.text]))


def _escaped(words: str) -> str:
    r"""Return words for the text of a dimension, in which ``\``, ``{`` and ``}`` have a meaning of their own."""
    shown = "".join(c if c.isprintable() else "\N{REPLACEMENT CHARACTER}" for c in words)
    return re.sub(r"([\\{}])", r"\\\1", shown)
