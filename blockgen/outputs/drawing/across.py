"""Diameters of bores seen from the side: a dimension line beside the view that runs on to its label.

The label carries what belongs to the bore's axis: fit, depth, geometrical tolerances, the datum.
"""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass
from functools import partial

from blockgen.outputs.drawing.box import Box
from blockgen.outputs.drawing.field import Piece
from blockgen.outputs.drawing.label import Label
from blockgen.outputs.drawing.placement import Candidate
from blockgen.outputs.drawing.strokes import Item, Line, Measure, Point
from blockgen.outputs.drawing.symbols import arrow

_GAP, _PAST, _SHELF = 0.8, 1.8, 3.0


@dataclass(frozen=True, slots=True)
class Bore:
    """A bore's two edges in a side view.

    Args:
        low: Lower edge at the mouth, on the sheet, mm.
        high: Upper edge at the mouth.
        side: -1 where it opens to the left, 1 to the right.
    """

    low: Point
    high: Point
    side: int


@dataclass(frozen=True, slots=True)
class _Way:
    x: float
    turn: float
    at: Point
    start: Point


def candidates(label: Label, bore: Bore, outline: Box) -> Iterator[Candidate]:
    """Yield ways to place the dimension line, its run-on up or down, and the label."""
    for number in range(8):
        x = (outline.left if bore.side < 0 else outline.right) + bore.side * (10.0 + 8.0 * number)
        for step in range(24):
            for up in (False, True):
                turn = bore.high[1] + 5.0 + 4.0 * step if up else bore.low[1] - 5.0 - 4.0 * step
                cost = 8.0 * number + 4.0 * step + 3.0 * up
                for side in (bore.side, -bore.side):
                    way = _way(label, side, x, turn)
                    yield _candidate(label, bore, way, cost + (0.0 if side == bore.side else 6.0))


def _way(label: Label, side: int, x: float, turn: float) -> _Way:
    """Return the way to a label that stands to the left (-1) or right (1) of the dimension line."""
    first = label.lead
    bottom = turn - label.lead_height
    if side < 0:
        left = x - _SHELF - label.width
        return _Way(x, turn, (left, bottom), (left + first.width + (0.0 if first.framed else 0.8), turn))
    return _Way(x, turn, (x + _SHELF, bottom), (x + _SHELF - 0.8, turn))


def _candidate(label: Label, bore: Bore, way: _Way, cost: float) -> Candidate:
    x, y = way.at
    box = Box(x, y, x + label.width, y + label.height)
    edge = box.right + 0.1 if x < way.x else box.left - 0.1
    *extensions, along = _lines(bore, way)
    lines = (along, ((edge, way.turn), (way.x, way.turn)))
    return Candidate(cost, (box,), lines, partial(_items, label, bore, way), tuple(extensions))


def _lines(bore: Bore, way: _Way) -> tuple[Piece, ...]:
    side = bore.side
    extensions = tuple(((p[0] + side * _GAP, p[1]), (way.x + side * _PAST, p[1])) for p in (bore.low, bore.high))
    ends = sorted((bore.low[1], bore.high[1], way.turn))
    return (*extensions, ((way.x, ends[0]), (way.x, ends[-1])))


def _items(label: Label, bore: Bore, way: _Way) -> tuple[Item, ...]:
    low, high = (way.x, bore.low[1]), (way.x, bore.high[1])
    lines = (*_lines(bore, way), (way.start, (way.x, way.turn)))
    heads = (arrow(low, high), arrow(high, low))
    rows = label.items(way.at)
    middle = (way.x, (low[1] + high[1]) / 2)
    measure = Measure("linear", bore.low, bore.high, middle, 90.0, label.rows[0].words)
    strokes = (*(Line(a, b) for a, b in lines), *heads, *rows[0].strokes)
    return (Item(rows[0].id, "dimension", strokes, in_model=True, measure=measure), *rows[1:])
