"""Labels on leaders: a label beside a view, and a leader from it to the feature with an arrow head at its end."""

from __future__ import annotations

import math
from collections.abc import Iterable, Iterator, Sequence
from dataclasses import dataclass
from functools import partial

from blockgen.outputs.drawing.box import Box
from blockgen.outputs.drawing.field import Piece
from blockgen.outputs.drawing.label import Label
from blockgen.outputs.drawing.placement import Candidate
from blockgen.outputs.drawing.strokes import Item, Line, Measure, Point
from blockgen.outputs.drawing.symbols import arrow

_SHELF = 3.0
_NEAREST, _BAND, _BANDS, _PITCH = 7.0, 6.0, 14, 5.0
_FLAT, _STEEP = 0.12, 6.0  # slopes of a leader that would look like a line of the part
_LOOKED_AT = 900
_NEAREST_CORNERS = 500


@dataclass(frozen=True, slots=True)
class Target:
    """What a leader points at.

    Args:
        centre: A point of a face on the sheet, or the middle of a circle, mm.
        radius: Radius of the circle on the sheet; 0 for a point.
        normal: Unit vector from which a leader may come: out of the material, or towards the middle of an arc; None
            for a whole circle.
        cone: Least cosine between that direction and the leader.
        cost: What it costs to point here, over the best place.
        kind: ``radius`` or ``diameter`` where the leader is a real dimension; None where it only points.
    """

    centre: Point
    radius: float = 0.0
    normal: Point | None = None
    cone: float = 0.35
    cost: float = 0.0
    kind: str | None = None

    def tip(self, elbow: Point) -> Point:
        """Return where the arrow head ends, coming from the elbow."""
        far = math.dist(self.centre, elbow)
        if self.radius == 0.0 or far == 0.0:
            return self.centre
        share = self.radius / far
        return (
            self.centre[0] + share * (elbow[0] - self.centre[0]),
            self.centre[1] + share * (elbow[1] - self.centre[1]),
        )

    def sees(self, elbow: Point) -> bool:
        """Tell whether a leader from the elbow arrives from outside the material, not along the face."""
        if self.normal is None:
            return True
        x, y = elbow[0] - self.centre[0], elbow[1] - self.centre[1]
        return x * self.normal[0] + y * self.normal[1] > self.cone * math.hypot(x, y)


@dataclass(frozen=True, slots=True)
class _Way:
    """A leader on its way: where the label stands and the points from the label to the tip."""

    at: Point
    points: tuple[Point, Point, Point]
    target: Target


def candidates(label: Label, targets: Sequence[Target], outline: Box) -> Iterable[Candidate]:
    """Return ways to place a label around a view, the shortest leaders first."""
    found = []
    for corner in _nearest(label, targets, outline):
        for target in targets:
            found += [(_cost(way), way) for way in _ways(label, corner, target)]
    found.sort(key=lambda pair: (pair[0], pair[1].at, pair[1].points))
    return (_candidate(label, cost, way) for cost, way in found[:_LOOKED_AT])


def _nearest(label: Label, targets: Sequence[Target], outline: Box) -> list[Point]:
    """Return the corners from which the way to a target is shortest; the others would only be looked at in vain."""
    ends = [target.centre for target in targets]
    half, lead = label.width / 2, label.lead_height

    def way(corner: Point) -> float:
        x, y = corner[0] + half, corner[1] + lead
        return min(abs(x - end[0]) + abs(y - end[1]) for end in ends)

    return sorted(_corners(label, outline), key=lambda corner: (way(corner), corner))[:_NEAREST_CORNERS]


def _corners(label: Label, outline: Box) -> Iterator[Point]:
    """Yield lower left corners of the label to the left, to the right, above and below a view."""
    bottoms = _steps(outline.bottom - label.height - 25.0, outline.top + 25.0)
    lefts = _steps(outline.left - label.width - 25.0, outline.right + 25.0)
    for number in range(_BANDS):
        away = _NEAREST + _BAND * number
        for y in bottoms:
            yield outline.left - away - label.width, y
            yield outline.right + away, y
        for x in lefts:
            yield x, outline.top + away
            yield x, outline.bottom - away - label.height


def _steps(low: float, high: float) -> list[float]:
    return [low + _PITCH * i for i in range(int((high - low) / _PITCH) + 1)]


def _ways(label: Label, corner: Point, target: Target) -> Iterator[_Way]:
    y = corner[1] + label.lead_height
    first = label.lead
    gap = 0.0 if first.framed else 0.8
    right_end = corner[0] + first.width + gap
    # A leader from the right end runs on past the rows below it before it may bend.
    turn = max(corner[0] + label.width, right_end) + _SHELF
    for start, elbow in (
        ((corner[0] - 0.8, y), (corner[0] - _SHELF, y)),
        ((right_end, y), (turn, y)),
    ):
        tip = target.tip(elbow)
        goes_out = (elbow[0] < start[0]) == (tip[0] < elbow[0]) or abs(tip[0] - elbow[0]) < 2.0
        if goes_out and target.sees(elbow) and math.dist(elbow, tip) > 3.5:
            yield _Way(corner, (start, elbow, tip), target)


def _cost(way: _Way) -> float:
    start, elbow, tip = way.points
    across, up = abs(tip[0] - elbow[0]), abs(tip[1] - elbow[1])
    plain = 0.0 if _FLAT * across < up < _STEEP * across else 10.0
    return math.dist(start, elbow) + math.dist(elbow, tip) + plain + way.target.cost


def _candidate(label: Label, cost: float, way: _Way) -> Candidate:
    x, y = way.at
    start, elbow, tip = way.points
    boxes = (Box(x, y, x + label.width, y + label.height),)
    own = _outside((start, elbow), boxes[0])
    lines = tuple(piece for piece in (own, (elbow, _short(tip, elbow))) if piece is not None)
    return Candidate(cost, boxes, lines, partial(_items, label, way))


def _outside(piece: Piece, box: Box) -> Piece | None:
    """Return the part of a shelf that lies outside its label's box."""
    (a, y), (b, _) = piece
    if b > a:
        return ((max(a, box.right + 0.1), y), (b, y)) if b > box.right + 0.1 else None
    return ((min(a, box.left - 0.1), y), (b, y)) if b < box.left - 0.1 else None


def _short(tip: Point, elbow: Point) -> Point:
    """Return a point just before the tip: touching the line it ends on is no crossing."""
    far = math.dist(tip, elbow)
    share = min(0.1, far / 2) / far
    return (tip[0] + share * (elbow[0] - tip[0]), tip[1] + share * (elbow[1] - tip[1]))


def _items(label: Label, way: _Way) -> tuple[Item, ...]:
    start, elbow, tip = way.points
    leader = (Line(start, elbow), Line(elbow, tip), arrow(tip, elbow))
    rows = label.items(way.at)
    first = rows[0]
    if way.target.kind is None:
        return (*rows, Item(f"{first.id}.leader", "label", leader, in_model=True))
    measure = _measure(way, label.rows[0].words)
    whole = Item(first.id, "dimension", (*leader, *first.strokes), in_model=True, measure=measure)
    return (whole, *rows[1:])


def _measure(way: _Way, words: str) -> Measure:
    _, elbow, tip = way.points
    centre = way.target.centre
    if way.target.kind == "radius":
        return Measure("radius", centre, tip, elbow, 0.0, words)
    opposite = (2 * centre[0] - tip[0], 2 * centre[1] - tip[1])
    return Measure("diameter", opposite, tip, elbow, 0.0, words)
