"""What a sheet is made of: lines, arcs, letters, fills and hatching, in mm on paper.

Origin at the lower left corner of the trimmed sheet, x to the right, y up. Every file format is written from these, so
that DXF, PDF and SVG show the same.
"""

from __future__ import annotations

from dataclasses import dataclass
from typing import Literal

Point = tuple[float, float]
Pen = Literal["outline", "medium", "thin", "hidden", "centre", "cutting", "border"]

PEN_WIDTH: dict[Pen, float] = {
    "outline": 0.5,
    "medium": 0.35,
    "thin": 0.25,
    "hidden": 0.25,
    "centre": 0.25,
    "cutting": 0.5,
    "border": 0.7,
}
"""Line widths in mm: ISO 128-2 line group 0.5 (wide lines 0.5, narrow ones half of it, 0.35 between them), ISO 5457
frame 0.7 and its reference fields 0.35. Sources: tests/outside/test_line_groups.py, test_sheet_layout.py."""

DASHES: dict[Pen, tuple[float, ...]] = {
    "hidden": (3.0, 0.75),
    "centre": (6.0, 0.75, 0.125, 0.75),
    "cutting": (12.0, 1.5, 0.25, 1.5),
}
"""Dash, gap, dot, gap in mm for the line types that are not continuous.

Source: ISO 128-21 as told in tests/outside/test_line_elements.py: dashes 12 d, gaps 3 d; long dashes 24 d with dots
0.5 d long between them; d the width of the line.
"""


@dataclass(frozen=True, slots=True)
class Line:
    """A straight stroke."""

    start: Point
    end: Point
    pen: Pen = "thin"


@dataclass(frozen=True, slots=True)
class Arc:
    """A part of a circle, counter-clockwise from ``start`` to ``end`` in deg; 0 and 360 make the whole circle."""

    centre: Point
    radius: float
    start: float = 0.0
    end: float = 360.0
    pen: Pen = "thin"


@dataclass(frozen=True, slots=True)
class Text:
    """One line of letters.

    Args:
        words: What is written.
        at: Left end of the base line.
        height: Height of capital letters, mm.
        angle: 0 to read from below, 90 to read from the right.
    """

    words: str
    at: Point
    height: float
    angle: float = 0.0


@dataclass(frozen=True, slots=True)
class Fill:
    """A filled polygon such as an arrow head."""

    outline: tuple[Point, ...]


@dataclass(frozen=True, slots=True)
class Hatch:
    """A hatched area: closed loops of lines and arcs, the first the outside, the others holes.

    Args:
        loops: Each runs on from piece to piece and closes; arcs are traversed in the sense of the loop, so an arc may
            be passed from its end to its start.
        spacing: Distance of the hatch lines, mm.
        angle: Direction of the hatch lines, deg.
    """

    loops: tuple[tuple[Line | Arc, ...], ...]
    spacing: float
    angle: float = 45.0


Stroke = Line | Arc | Text | Fill | Hatch


@dataclass(frozen=True, slots=True)
class Measure:
    """What makes an item a real dimension in an exchange file.

    Args:
        kind: ``linear`` (along ``angle``), ``radius`` or ``diameter``.
        first: Foot of the first extension line; centre of the circle for a radius; a point of it for a diameter.
        second: Foot of the second one; a point of the circle for radius and diameter.
        on_line: A point of the dimension line.
        angle: Direction of the measured distance, deg: 0 or 90.
        text: Text as it is shown.
    """

    kind: Literal["linear", "radius", "diameter"]
    first: Point
    second: Point
    on_line: Point
    angle: float
    text: str


@dataclass(frozen=True, slots=True)
class Item:
    """Strokes that belong together.

    Args:
        id: Characteristic id, or a plain name such as ``view.top``.
        role: outline (geometry of the part), centre_line, dimension, label, datum, section, table, note or frame.
        strokes: The strokes.
        in_model: True for what stands at a view: it goes to true size into the model space of a DXF file.
        measure: Set for a real dimension.
    """

    id: str
    role: Literal["outline", "centre_line", "dimension", "label", "datum", "section", "table", "note", "frame"]
    strokes: tuple[Stroke, ...]
    in_model: bool = False
    measure: Measure | None = None


@dataclass(frozen=True, slots=True)
class Sheet:
    """One sheet.

    Args:
        name: Plain name such as ``drawing`` or ``inspection``.
        title: Title of the document, for the file's own properties.
        size: Name of the trimmed size, such as ``A2``.
        width: Width of the trimmed sheet, mm.
        height: Height of it, mm.
        scale: Size on paper over true size.
        items: What is on it, in drawing order.
        origin: Point of the sheet that is the origin of the model space of a DXF file, mm.
    """

    name: str
    title: str
    size: str
    width: float
    height: float
    scale: float
    items: tuple[Item, ...]
    origin: Point = (0.0, 0.0)
