"""Strokes moved or turned on the sheet."""

from __future__ import annotations

from collections.abc import Iterable

from blockgen.outputs.drawing.strokes import Arc, Fill, Hatch, Line, Point, Stroke, Text


def moved(strokes: Iterable[Stroke], by: Point) -> tuple[Stroke, ...]:
    """Return strokes moved by a vector, mm."""
    return tuple(_moved(stroke, by) for stroke in strokes)


def _moved(stroke: Stroke, by: Point) -> Stroke:
    def at(point: Point) -> Point:
        return (point[0] + by[0], point[1] + by[1])

    if isinstance(stroke, Line):
        return Line(at(stroke.start), at(stroke.end), stroke.pen)
    if isinstance(stroke, Arc):
        return Arc(at(stroke.centre), stroke.radius, stroke.start, stroke.end, stroke.pen)
    if isinstance(stroke, Text):
        return Text(stroke.words, at(stroke.at), stroke.height, stroke.angle)
    if isinstance(stroke, Fill):
        return Fill(tuple(at(point) for point in stroke.outline))
    loops = tuple(tuple(_moved(piece, by) for piece in loop) for loop in stroke.loops)
    return Hatch(loops, stroke.spacing, stroke.angle)  # type: ignore[arg-type]  # lines and arcs stay what they are


def turned_point(point: Point) -> Point:
    """Return a point turned by a quarter counter-clockwise about the origin."""
    return (-point[1], point[0])


def turned_back(point: Point) -> Point:
    """Return a point turned by a quarter clockwise about the origin."""
    return (point[1], -point[0])


def turned(strokes: Iterable[Stroke]) -> tuple[Stroke, ...]:
    """Return strokes turned by a quarter counter-clockwise about the origin, to be read from the right."""
    return tuple(_turned(stroke) for stroke in strokes)


def _turned(stroke: Stroke) -> Stroke:
    if isinstance(stroke, Line):
        return Line(turned_point(stroke.start), turned_point(stroke.end), stroke.pen)
    if isinstance(stroke, Arc):
        centre, whole = turned_point(stroke.centre), stroke.end - stroke.start >= 360.0
        start, end = (0.0, 360.0) if whole else (stroke.start + 90.0, stroke.end + 90.0)
        return Arc(centre, stroke.radius, start, end, stroke.pen)
    if isinstance(stroke, Text):
        return Text(stroke.words, turned_point(stroke.at), stroke.height, stroke.angle + 90.0)
    if isinstance(stroke, Fill):
        return Fill(tuple(turned_point(point) for point in stroke.outline))
    loops = tuple(tuple(_turned(piece) for piece in loop) for loop in stroke.loops)
    return Hatch(loops, stroke.spacing, stroke.angle + 90.0)  # type: ignore[arg-type]  # lines and arcs stay what they are
