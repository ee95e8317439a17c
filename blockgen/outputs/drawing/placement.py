"""The one engine that places things: of many candidates the cheapest that touches nothing."""

from __future__ import annotations

import math
from collections.abc import Callable, Iterable
from dataclasses import dataclass

from blockgen.outputs.drawing.box import Box
from blockgen.outputs.drawing.field import EXTENSION, THIN, Field, Piece
from blockgen.outputs.drawing.strokes import Item


class NoRoomError(Exception):
    """There is no place for something on this sheet at this scale; the next larger one is tried."""


@dataclass(frozen=True, slots=True)
class Candidate:
    """One way to place something.

    Args:
        cost: How far it is from the ideal, before crossings.
        boxes: Text, frames and symbols.
        lines: Dimension and leader lines.
        build: Makes the items.
        extensions: Extension lines.
    """

    cost: float
    boxes: tuple[Box, ...]
    lines: tuple[Piece, ...]
    build: Callable[[], tuple[Item, ...]]
    extensions: tuple[Piece, ...] = ()


def place(what: str, candidates: Iterable[Candidate], field: Field, area: Box) -> tuple[Item, ...]:
    """Place one thing and enter it into the field.

    Args:
        what: Its name, for the message.
        candidates: Ways to place it.
        field: Obstacles so far; what is placed is added.
        area: Where boxes and lines may stand.

    Raises:
        NoRoomError: no candidate is free.
    """
    best, least = None, math.inf
    for candidate in sorted(candidates, key=lambda one: one.cost):
        if candidate.cost >= least:
            break
        if not _fits(candidate, field, area):
            continue
        total = candidate.cost + field.cost(candidate.lines) + field.cost(candidate.extensions, extension=True)
        if total < least:
            best, least = candidate, total
    if best is None:
        raise NoRoomError(what)
    for box in best.boxes:
        field.add_box(box)
    for line in best.lines:
        field.add_line(line, THIN)
    for line in best.extensions:
        field.add_line(line, EXTENSION)
    return best.build()


def _fits(candidate: Candidate, field: Field, area: Box) -> bool:
    boxes = (*candidate.boxes, *(Box.around(line) for line in (*candidate.lines, *candidate.extensions)))
    return all(inside(box, area) for box in boxes) and all(field.is_free(box) for box in candidate.boxes)


def inside(box: Box, area: Box) -> bool:
    """Tell whether a box lies in an area."""
    return box.left >= area.left and box.right <= area.right and box.bottom >= area.bottom and box.top <= area.top
