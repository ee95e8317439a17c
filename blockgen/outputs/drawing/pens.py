"""What the page formats draw alike: the strokes of an item by pen, hatched areas as lines."""

from __future__ import annotations

from collections.abc import Iterable

from blockgen.outputs.drawing.hatching import hatch_lines
from blockgen.outputs.drawing.strokes import DASHES, PEN_WIDTH, Arc, Hatch, Line, Pen, Stroke


def by_pen(strokes: Iterable[Stroke]) -> dict[Pen, list[Line | Arc]]:
    """Return lines and arcs by pen, pens and strokes in the order in which they occur; hatched areas as thin lines."""
    found: dict[Pen, list[Line | Arc]] = {}
    for stroke in strokes:
        if isinstance(stroke, (Line, Arc)):
            found.setdefault(stroke.pen, []).append(stroke)
        elif isinstance(stroke, Hatch):
            found.setdefault("thin", []).extend(hatch_lines(stroke))
    return found


def width_and_dashes(pen: Pen) -> tuple[float, tuple[float, ...]]:
    """Return line width and dash pattern in mm, the pattern empty for a continuous line."""
    return PEN_WIDTH[pen], DASHES.get(pen, ())
