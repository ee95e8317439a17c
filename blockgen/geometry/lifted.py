"""Edges of a shape laid into a view: lines and arcs that still know how near the viewer they are."""

from __future__ import annotations

import math
from collections.abc import Callable, Iterator
from dataclasses import dataclass
from itertools import pairwise

from blockgen.geometry.carriers import SAME_PLACE, Carrier, Circle, Line, Span, line_through
from blockgen.geometry.chords import Vertices, chord_points, folds, root
from blockgen.geometry.curves import Place
from blockgen.geometry.shape_edges import Arc3, Edge, Wireframe
from blockgen.geometry.view_frame import ViewFrame, dot
from blockgen.plan import Point

EDGE_ON = 1e-6
"""Cosine below which a direction counts as across the line of sight."""

Depth = Callable[[float], float]


@dataclass(frozen=True, slots=True)
class Lifted:
    """A line or arc of a view.

    Args:
        carrier: Line or circle on which it lies.
        span: The places that it covers.
        depth: How near the viewer it is at a place, mm along the line of sight.
        sharp: False for a smooth edge.
        chord: True for a piece of a curve that is neither line nor arc.
    """

    carrier: Carrier
    span: Span
    depth: Depth
    sharp: bool = True
    chord: bool = False


def lifted_edges(frame: ViewFrame, wires: Wireframe) -> list[Lifted]:
    """Return all edges of a shape as they lie in a view."""
    plain = [piece for edge in wires.edges for piece in _lifted(edge, frame, wires)]
    free = [edge for edge in wires.edges if _is_free(edge, frame, wires)]
    return [*plain, *_chords(free, frame)]


def straight(start: Point, end: Point, frame: ViewFrame, sharp: bool = True) -> list[Lifted]:
    """Return a straight line in space; nothing where it is seen end-on."""
    first, last = frame.place(start), frame.place(end)
    if math.dist(first, last) < SAME_PLACE:
        return []
    line = line_through(first, last)
    return [Lifted(line, *_linear(line, first, last, dot(start, frame.back), dot(end, frame.back)), sharp)]


def _linear(line: Line, first: Place, last: Place, near: float, far: float) -> tuple[Span, Depth]:
    low, high = line.place(first), line.place(last)
    if low > high:
        low, high, near, far = high, low, far, near
    slope = (far - near) / (high - low)
    return (low, high), lambda place: near + slope * (place - low)


def _lifted(edge: Edge, frame: ViewFrame, wires: Wireframe) -> list[Lifted]:
    sharp = not edge.smooth or abs(dot(edge.normal, frame.back)) < EDGE_ON
    if edge.kind == "line":
        return straight(edge.at(edge.first), edge.at(edge.last), frame, sharp)
    if edge.arc is not None and _facing(edge.arc, frame):
        return [_faced_arc(edge, edge.arc, frame, sharp)]
    if edge.arc is not None and abs(dot(_axis(edge.arc), frame.back)) < EDGE_ON:
        return list(_edge_on_arc(edge, edge.arc, frame, sharp))
    carrier = _carrier_of_a_face(edge, frame, wires)
    return [] if carrier is None else list(_inverted(edge, carrier, frame, sharp))


def _axis(arc: Arc3) -> Point:
    return ViewFrame(arc.x, arc.y).back


def _facing(arc: Arc3, frame: ViewFrame) -> bool:
    return max(abs(dot(arc.x, frame.back)), abs(dot(arc.y, frame.back))) < EDGE_ON


def _is_free(edge: Edge, frame: ViewFrame, wires: Wireframe) -> bool:
    """Tell whether an edge is neither line nor arc in the view."""
    if edge.kind == "line":
        return False
    if edge.arc is not None and (_facing(edge.arc, frame) or abs(dot(_axis(edge.arc), frame.back)) < EDGE_ON):
        return False
    return _carrier_of_a_face(edge, frame, wires) is None


def _faced_arc(edge: Edge, arc: Arc3, frame: ViewFrame, sharp: bool) -> Lifted:
    """Return an arc whose plane is square to the line of sight: true shape, one depth."""
    circle = Circle(frame.place(arc.centre), arc.radius)
    counter_clockwise = dot(_axis(arc), frame.back) > 0
    low = circle.place(frame.place(edge.at(edge.first if counter_clockwise else edge.last)))
    depth = dot(arc.centre, frame.back)
    return Lifted(circle, (low, low + arc.radius * (edge.last - edge.first)), lambda _: depth, sharp)


def _edge_on_arc(edge: Edge, arc: Arc3, frame: ViewFrame, sharp: bool) -> Iterator[Lifted]:
    """Yield an arc whose plane holds the line of sight: a line, once for the near and once for the far half."""
    x, y = frame.place(arc.x), frame.place(arc.y)
    steepest = x if math.hypot(*x) > math.hypot(*y) else y
    line = line_through((0.0, 0.0), steepest)
    turn = math.atan2(line.place(y), line.place(x))  # here and half a circle on the line is at its ends
    first_turn = math.ceil((edge.first - turn) / math.pi)
    turns = [turn + math.pi * n for n in range(first_turn, first_turn + 3)]
    cuts = [edge.first, *(t for t in turns if edge.first < t < edge.last), edge.last]
    line = Line(line.direction, _offset(line, frame.place(arc.centre)))
    middle, level = line.place(frame.place(arc.centre)), dot(arc.centre, frame.back)
    for start, end in pairwise(cuts):
        low, high = sorted(line.place(frame.place(edge.at(t))) for t in (start, end))
        sense = 1.0 if dot(edge.at((start + end) / 2), frame.back) > level else -1.0
        if high - low > SAME_PLACE:
            yield Lifted(line, (low, high), _bow(middle, level, sense, arc.radius), sharp)


def _offset(line: Line, point: Place) -> float:
    return point[1] * line.direction[0] - point[0] * line.direction[1]


def _bow(middle: float, level: float, sense: float, radius: float) -> Depth:
    return lambda place: level + sense * math.sqrt(max(0.0, radius * radius - (place - middle) ** 2))


def _carrier_of_a_face(edge: Edge, frame: ViewFrame, wires: Wireframe) -> Carrier | None:
    """Return the line or circle as which a face beside the edge shows, where that face is seen edge-on."""
    for surface in (wires.surfaces[i] for i in edge.faces):
        across = abs(dot(surface.axis, frame.back))
        if surface.kind == "cylinder" and across > 1 - EDGE_ON:
            return Circle(frame.place(surface.origin), surface.radius)
        if surface.kind == "plane" and across < EDGE_ON:
            x, y = frame.place(surface.axis)
            line = line_through((0.0, 0.0), (-y, x))
            return Line(line.direction, _offset(line, frame.place(surface.origin)))
    return None


def _inverted(edge: Edge, carrier: Carrier, frame: ViewFrame, sharp: bool) -> Iterator[Lifted]:
    """Yield a curve that lies on a known carrier in the view; its parameter is found again from the place."""

    def place(parameter: float) -> float:
        return carrier.place(frame.place(edge.at(parameter)))

    def ahead(parameter: float, start: float) -> float:
        """Return the way from a place on, the short way round."""
        way = place(parameter) - start
        return way if math.isinf(carrier.period) else math.remainder(way, carrier.period)

    for start, end in pairwise(folds(lambda t: frame.place(edge.at(t)), edge.first, edge.last)):
        if abs(ahead(end, place(start))) > SAME_PLACE:
            yield _inverted_piece(edge, carrier, frame, sharp, (start, end), ahead)


def _inverted_piece(
    edge: Edge,
    carrier: Carrier,
    frame: ViewFrame,
    sharp: bool,
    ends: Span,
    ahead: Callable[[float, float], float],
) -> Lifted:
    low = carrier.place(frame.place(edge.at(ends[0])))
    way = ahead(ends[1], low)
    span = (low, low + way) if way > 0 else (low + way, low)

    def depth(place: float) -> float:
        parameter = root(lambda t: math.copysign(1.0, way) * ahead(t, place), *ends)
        return dot(edge.at(parameter), frame.back)

    return Lifted(carrier, span, depth, sharp)


def _chords(edges: list[Edge], frame: ViewFrame) -> list[Lifted]:
    """Return the curves that are neither lines nor arcs as chords; equal stretches get equal chords."""
    vertices, pieces = Vertices(), []
    for edge, points in zip(edges, chord_points([_path(e, frame) for e in edges]), strict=True):
        sharp = not edge.smooth
        for (first, near), (last, far) in pairwise((vertices.same(p), dot(edge.at(t), frame.back)) for t, p in points):
            if math.dist(first, last) > SAME_PLACE:
                line = line_through(first, last)
                pieces.append(Lifted(line, *_linear(line, first, last, near, far), sharp, chord=True))
    return pieces


def _path(edge: Edge, frame: ViewFrame) -> tuple[Callable[[float], Place], float, float]:
    return lambda t: frame.place(edge.at(t)), edge.first, edge.last
