"""The face on which a part is held down, and the preload at which it begins to gape.

The part is rigid and the pressure linear over the face. Rounded corners, chamfers and screw holes are not taken off
the face: they change area and moment of inertia alike.
"""

from __future__ import annotations

import math
from collections.abc import Iterable, Sequence
from dataclasses import dataclass


@dataclass(frozen=True, slots=True)
class Box:
    """A rectangle of the face, mm; ``sign`` is -1 for one that is cut out."""

    low: tuple[float, float]
    high: tuple[float, float]
    sign: float = 1.0


@dataclass(frozen=True, slots=True)
class Face:
    """A face of contact in its two axes u and v.

    Args:
        area: mm2.
        centre: Centroid, mm.
        inertia_u: Integral of (u - centre)^2, mm4.
        inertia_v: Integral of (v - centre)^2, mm4.
        edges: Points of the outline that may open first, mm.
    """

    area: float
    centre: tuple[float, float]
    inertia_u: float
    inertia_v: float
    edges: tuple[tuple[float, float], ...]


def face_of_boxes(boxes: Sequence[Box]) -> Face:
    """Return the face that is left of rectangles, the first of which is the outline.

    Raises:
        ValueError: nothing is left.
    """
    areas = [b.sign * (b.high[0] - b.low[0]) * (b.high[1] - b.low[1]) for b in boxes]
    area = math.fsum(areas)
    if area <= 0:
        raise ValueError("nothing of the face is left to stand on: the window takes all of it")
    centre = tuple(math.fsum(a * _middle(b, i) for a, b in zip(areas, boxes, strict=True)) / area for i in (0, 1))
    weighed = list(zip(areas, boxes, strict=True))
    inertia = [math.fsum(a * _second_moment(b, i, centre[i]) for a, b in weighed) for i in (0, 1)]
    low, high = boxes[0].low, boxes[0].high
    corners = tuple((u, v) for u in (low[0], high[0]) for v in (low[1], high[1]))
    return Face(area, (centre[0], centre[1]), inertia[0], inertia[1], corners)


def _middle(box: Box, axis: int) -> float:
    return (box.low[axis] + box.high[axis]) / 2


def _second_moment(box: Box, axis: int, about: float) -> float:
    """Return the mean of the squared distances of a rectangle from a line, mm2."""
    return (box.high[axis] - box.low[axis]) ** 2 / 12 + (_middle(box, axis) - about) ** 2


def ring_face(half_u: float, half_v: float, bore: float, *, round_: bool) -> Face:
    """Return the face of a flange about its bore, centred on the axis.

    Args:
        half_u: Half the outline, mm.
        half_v: Half the outline the other way, mm.
        bore: Diameter of the bore, mm.
        round_: True for a round outline of radius ``half_u``.
    """
    hole, hole_inertia = math.pi * bore**2 / 4, math.pi * bore**4 / 64
    if round_:
        area, inertia = math.pi * half_u**2, math.pi * half_u**4 / 4
        turns = [math.radians(step * 15) for step in range(24)]
        edges = tuple((half_u * math.cos(t), half_u * math.sin(t)) for t in turns)
        return Face(area - hole, (0.0, 0.0), inertia - hole_inertia, inertia - hole_inertia, edges)
    area = 4 * half_u * half_v
    edges = tuple((u, v) for u in (-half_u, half_u) for v in (-half_v, half_v))
    return Face(
        area - hole, (0.0, 0.0), area * half_u**2 / 3 - hole_inertia, area * half_v**2 / 3 - hole_inertia, edges
    )


@dataclass(frozen=True, slots=True)
class Pull:
    """What works against the preload of a face: lift in N and what opens the edges at greater u and v, N*m.

    Args:
        lift: Force that lifts the part off at the face's centroid, N.
        open_u: Moment that relieves the edge at greater u, N*m; negative presses it.
        open_v: Moment that relieves the edge at greater v, N*m.
    """

    lift: float
    open_u: float
    open_v: float


def opening_safety(face: Face, preload_centre: tuple[float, float], preloads: float, pulls: Iterable[Pull]) -> float:
    """Return preload over the preload at which an edge begins to gape, for the worst of several loads.

    Args:
        face: Face of contact.
        preload_centre: Where the preloads' resultant acts, mm.
        preloads: Sum of the least preloads, N.
        pulls: Loads that occur at different times.

    Returns:
        Safety; 0 where the preload itself leaves an edge open, infinite without a load that opens.

    Source: elementary statics: p = (sum F_V - F_lift) / A - M c / I >= 0, solved for the preload at each edge.
    """
    places = [(u - face.centre[0], v - face.centre[1]) for u, v in face.edges]
    away = (preload_centre[0] - face.centre[0], preload_centre[1] - face.centre[1])
    held = [preloads * (1 / face.area + away[0] * u / face.inertia_u + away[1] * v / face.inertia_v) for u, v in places]
    least = math.inf
    for pull in pulls:
        for (u, v), press in zip(places, held, strict=True):
            relief = pull.lift / face.area + 1000 * (
                pull.open_u * u / face.inertia_u + pull.open_v * v / face.inertia_v
            )
            if press <= 0:
                return 0.0
            if relief > 0:
                least = min(least, press / relief)
    return least
