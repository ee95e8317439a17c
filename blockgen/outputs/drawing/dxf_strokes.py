"""Strokes of a sheet as entities of a DXF file."""

from __future__ import annotations

import re
from collections.abc import Iterator
from dataclasses import dataclass
from typing import TYPE_CHECKING, Any

from blockgen.outputs.drawing.dxf_tables import STYLE, USUAL_PEN, hatch_layer, layer_name
from blockgen.outputs.drawing.hatching import passed
from blockgen.outputs.drawing.lettering import Run, direction, runs, text_width
from blockgen.outputs.drawing.strokes import DASHES, Arc, Fill, Hatch, Item, Line, Point, Stroke, Text

if TYPE_CHECKING:
    from ezdxf.entities.dxfgfx import DXFGraphic
    from ezdxf.layouts.base import BaseLayout


LEVEL_LINE: tuple[float, Point, Point, list[float]] = (0.0, (0.0, 0.0), (0.0, 1.0), [])
"""Lines of a hatch pattern: direction in deg, a point, the way to the next, no dashes."""


@dataclass(frozen=True, slots=True)
class Place:
    """Where entities go.

    Args:
        layout: Model space, layout or block.
        factor: Size there over size on paper.
        origin: Point of the sheet that is the origin there, mm.
    """

    layout: BaseLayout
    factor: float
    origin: Point = (0.0, 0.0)

    def point(self, point: Point) -> Point:
        """Return a point of the sheet in this place."""
        return (point[0] - self.origin[0]) * self.factor, (point[1] - self.origin[1]) * self.factor


def add_strokes(item: Item, place: Place) -> list[DXFGraphic]:
    """Add the strokes of an item and return the entities."""
    return [entity for stroke in item.strokes for entity in _added(stroke, item.role, place)]


def _added(stroke: Stroke, role: str, place: Place) -> Iterator[DXFGraphic]:
    if isinstance(stroke, (Line, Arc)):
        yield _line_or_arc(stroke, role, place)
    elif isinstance(stroke, Text):
        yield from _letters(stroke, role, place)
    elif isinstance(stroke, Fill):
        yield _fill(stroke, role, place)
    else:
        yield _hatch(stroke, role, place)


def _line_or_arc(stroke: Line | Arc, role: str, place: Place) -> DXFGraphic:
    attributes: dict[str, Any] = {"layer": layer_name(role, stroke.pen)}
    if stroke.pen in DASHES and place.factor != 1:
        attributes["ltscale"] = place.factor
    if isinstance(stroke, Line):
        return place.layout.add_line(place.point(stroke.start), place.point(stroke.end), attributes)
    centre, radius = place.point(stroke.centre), stroke.radius * place.factor
    if stroke.end - stroke.start == 360:
        return place.layout.add_circle(centre, radius, attributes)
    return place.layout.add_arc(centre, radius, stroke.start, stroke.end, dxfattribs=attributes)


def _usual_layer(role: str) -> str:
    return layer_name(role, USUAL_PEN.get(role, "thin"))


def _letters(text: Text, role: str, place: Place) -> Iterator[DXFGraphic]:
    """Yield one entity for each font and each piece that has no control code in it."""
    cosine, sine = direction(text.angle)
    for run in runs(text.words):
        for words, ahead in _pieces(run):
            along = run.start * text.height + text_width(ahead, text.height)
            at = (text.at[0] + along * cosine, text.at[1] + along * sine)
            attributes = {
                "layer": _usual_layer(role),
                "style": STYLE[run.font],
                "insert": place.point(at),
                "rotation": text.angle,
            }
            yield place.layout.add_text(words, height=text.height * place.factor, dxfattribs=attributes)


def _pieces(run: Run) -> Iterator[tuple[str, str]]:
    r"""Yield pieces with what stands before them in the run.

    Two percent signs and ``\U+`` begin control codes in a TEXT; parted behind their first sign, they are plain letters.
    A caret begins one too; with a blank behind it, it is read as a caret.
    """
    ahead = ""
    for words in re.split(r"(?<=%)(?=%)|(?<=\\)(?=[UuMm]\+)", run.shown):
        if words.strip():
            yield words.replace("^", "^ "), ahead
        ahead += words


def _fill(fill: Fill, role: str, place: Place) -> DXFGraphic:
    points = [place.point(point) for point in fill.outline]
    if len(points) == 3:
        return place.layout.add_solid(points, dxfattribs={"layer": _usual_layer(role)})
    area = place.layout.add_hatch(color=256, dxfattribs={"layer": _usual_layer(role)})
    area.paths.add_polyline_path(points, is_closed=True)
    return area


def _hatch(hatch: Hatch, role: str, place: Place) -> DXFGraphic:
    area = place.layout.add_hatch(color=256, dxfattribs={"layer": hatch_layer(role)})
    spacing = hatch.spacing * place.factor
    # pattern type 0: lines by distance and angle; a level line at the distance 1 is turned and stretched to them
    area.set_pattern_fill("USER", 256, hatch.angle, spacing, style=0, pattern_type=0, definition=[LEVEL_LINE])
    for number, loop in enumerate(hatch.loops):
        path = area.paths.add_edge_path(flags=1 if number == 0 else 0)
        for part in passed(loop):
            _add_edge(path, part.piece, part.start, part.end, part.forward, place)
    return area


def _add_edge(path: Any, piece: Line | Arc, start: Point, end: Point, forward: bool, place: Place) -> None:
    if isinstance(piece, Line):
        path.add_line(place.point(start), place.point(end))
        return
    path.add_arc(place.point(piece.centre), piece.radius * place.factor, piece.start, piece.end, ccw=forward)
