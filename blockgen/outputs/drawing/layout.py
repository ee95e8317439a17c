"""Where the views stand on a sheet: columns and rows by the projection method, the right column kept for the words.

Source: ISO 5456-2 (from memory): in first-angle projection the view from the left stands to the right and the one from
above below; in third-angle projection it is the other way round. The section stands apart and has its letters.
"""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass
from math import fsum

from blockgen.outputs.drawing.box import Box
from blockgen.outputs.drawing.placement import NoRoomError
from blockgen.outputs.drawing.title_block import WIDTH
from blockgen.outputs.drawing.views import View, extent
from blockgen.plan import Body

_LEAST_ACROSS, _LEAST_UPRIGHT = 34.0, 30.0
_SIDE = 30.0
_SHARES_ACROSS = (1.15, 1.3, 0.75)
_SHARES_UPRIGHT = (0.8, 1.25, 0.95)


@dataclass(frozen=True, slots=True)
class Layout:
    """Views by name, and the column for tables, notes and title block, mm on the sheet."""

    views: Mapping[str, View]
    column: Box


def layout(body: Body, area: Box, scale: float, projection: str, foot: float) -> Layout:
    """Return the places of the views.

    Args:
        body: Outside of the block.
        area: Drawing space, mm.
        scale: Size on paper over true size.
        projection: ``first`` or ``third``.
        foot: Height of what stands at the foot of the right column, mm.

    Raises:
        NoRoomError: the views do not fit at this scale.
    """
    length, width, height = (scale * size for size in (body.length, body.width, body.height))
    wide = max(width, length)
    column = max(WIDTH, width + 2 * _SIDE)
    across = area.right - area.left - wide - length - column
    upright = area.top - area.bottom - height - max(width, height)
    if across < 3 * _LEAST_ACROSS or upright < 3 * _LEAST_UPRIGHT:
        raise NoRoomError("views")
    a, b, _ = (across * share / fsum(_SHARES_ACROSS) for share in _SHARES_ACROSS)
    gaps = [upright * share / fsum(_SHARES_UPRIGHT) for share in _SHARES_UPRIGHT]
    first, second = area.left + a, area.left + a + wide + b
    box = Box(area.right - column, area.bottom, area.right, area.top)
    third_x = box.left + (column - width) / 2
    if projection == "first":
        main = area.top - gaps[0] - height
        other = main - gaps[1] - max(width, height)
        ends = {"motor_end": (first + (wide - width) / 2, main), "bearing_end": (third_x, main)}
        column_box = Box(box.left, box.bottom, box.right, main - 26.0)
    else:
        main = max(area.bottom + gaps[0], area.bottom + foot + 32.0)
        rest = upright - (main - area.bottom)
        if rest < 2 * _LEAST_UPRIGHT:
            raise NoRoomError("views")
        other = main + height + rest * _SHARES_UPRIGHT[1] / fsum(_SHARES_UPRIGHT[1:])
        ends = {"bearing_end": (first + (wide - width) / 2, main), "motor_end": (third_x, main)}
        column_box = Box(box.left, main + height + 26.0, box.right, box.top)
    corners = {
        "front": (second, main),
        "top": (second, other + (max(width, height) - width) / 2),
        "section": (first + (wide - length) / 2, other + (max(width, height) - height) / 2),
        **ends,
    }
    return Layout({name: _view(name, at, body, scale) for name, at in corners.items()}, column_box)


def _view(name: str, corner: tuple[float, float], body: Body, scale: float) -> View:
    low, size = extent(name, body.length, body.width, body.height)
    return View(name, corner, low, size, scale)
