"""Exact views of the block: what is seen, what is hidden, and where faces run smoothly into one another.

Every edge and outline of the solid is laid into the view as a line or an arc. They are cut where they cross; between
two crossings nothing changes, so two lines of sight, one to either side, tell whether the foremost edge there is seen.
"""

from __future__ import annotations

import math
from collections.abc import Iterable, Iterator, Sequence
from dataclasses import dataclass, field
from itertools import combinations, pairwise
from typing import Literal

from OCP.TopoDS import TopoDS_Shape

from blockgen.geometry.block import BlockSolid
from blockgen.geometry.carriers import SAME_PLACE, Carrier, Circle, Span, crossings
from blockgen.geometry.curves import ArcCurve, Chain, Curve, Segment
from blockgen.geometry.kernel import kernel_errors
from blockgen.geometry.lifted import Lifted, lifted_edges
from blockgen.geometry.shape_edges import wireframe
from blockgen.geometry.sight import Sight, line_of_sight
from blockgen.geometry.silhouettes import silhouettes
from blockgen.geometry.tidy_curves import tidy, within_period
from blockgen.geometry.view_frame import VIEWS, ViewFrame

ASIDE = 1e-4
"""Distance from an edge at which the lines of sight pass it, mm."""

BEFORE = 0.02
"""How far a face must lie in front of an edge to hide it, mm: more than any face rises within ``ASIDE``."""

Bucket = Literal["visible", "hidden", "smooth"]


@dataclass(frozen=True, slots=True)
class Projection:
    """The curves of one view in its own coordinates, mm; each stretch is in one of the three only.

    Args:
        visible: Edges and outlines that are seen.
        hidden: Those that are not.
        smooth: Seen edges at which faces run smoothly into one another; hidden ones are left out.
    """

    visible: tuple[Curve, ...]
    hidden: tuple[Curve, ...]
    smooth: tuple[Curve, ...]


@dataclass(slots=True)
class _Track:
    """What lies on one carrier, and where it is cut."""

    carrier: Carrier
    chord: bool
    pieces: list[tuple[Span, Lifted]] = field(default_factory=list)
    cuts: list[float] = field(default_factory=list)


def project(block: BlockSolid, view: str) -> Projection:
    """Return one of the views of the block.

    Args:
        block: Solid of the block.
        view: One of ``VIEWS``.

    Raises:
        KeyError: there is no such view.
        KernelError: the solid has a face that cannot be drawn.
    """
    return project_shape(block.shape, VIEWS[view])


def project_shape(shape: TopoDS_Shape, frame: ViewFrame) -> Projection:
    """Return a shape as seen in a frame.

    Raises:
        KernelError: the shape has a face that cannot be drawn.
    """
    with kernel_errors("the kernel gave up while it drew the block"):
        wires = wireframe(shape)
        tracks = _tracks([*lifted_edges(frame, wires), *silhouettes(frame, wires)])
        _cut(tracks)
        sight = line_of_sight(frame, wires.surfaces)
        found = [item for track in tracks for item in _judged(track, sight)]
    lists = ([curve for bucket, curve in found if bucket == name] for name in ("visible", "hidden", "smooth"))
    return Projection(*tidy(*lists))


def _tracks(pieces: Iterable[Lifted]) -> list[_Track]:
    """Gather what lies on one line or circle."""
    tracks: dict[tuple[int, ...], _Track] = {}
    for piece in pieces:
        key = (*piece.carrier.key(), piece.chord)
        track = tracks.setdefault(key, _Track(piece.carrier, piece.chord))
        for span in within_period(piece.span, piece.carrier.period):
            track.pieces.append((span, piece))
            track.cuts.extend(span)
    return list(tracks.values())


def _cut(tracks: Sequence[_Track]) -> None:
    """Cut the tracks where they cross one another."""
    boxes = [_box(track) for track in tracks]
    for (one, first), (other, second) in combinations(zip(tracks, boxes, strict=True), 2):
        if first[0] > second[2] or second[0] > first[2] or first[1] > second[3] or second[1] > first[3]:
            continue
        for point in crossings(one.carrier, other.carrier):
            places = [(track, track.carrier.place(point)) for track in (one, other)]
            if all(_covers(track, place) for track, place in places):
                for track, place in places:
                    track.cuts.append(place)


def _box(track: _Track) -> tuple[float, float, float, float]:
    carrier = track.carrier
    if isinstance(carrier, Circle):
        (x, y), reach = carrier.centre, carrier.radius + SAME_PLACE
        return (x - reach, y - reach, x + reach, y + reach)
    ends = [carrier.at(place) for place in (min(track.cuts), max(track.cuts))]
    (left, right), (low, high) = (sorted(p[i] for p in ends) for i in (0, 1))
    return (left - SAME_PLACE, low - SAME_PLACE, right + SAME_PLACE, high + SAME_PLACE)


def _covers(track: _Track, place: float) -> bool:
    return any(low - SAME_PLACE <= place <= high + SAME_PLACE for (low, high), _ in track.pieces)


def _judged(track: _Track, sight: Sight) -> Iterator[tuple[Bucket, Curve]]:
    """Yield the stretches between cuts with the bucket into which each goes."""
    for low, high in pairwise(sorted(track.cuts)):
        middle = (low + high) / 2
        here = [piece for span, piece in track.pieces if span[0] <= middle <= span[1]]
        if here and high - low > SAME_PLACE:
            bucket = _bucket(track.carrier, middle, here, sight)
            if bucket is not None:
                yield bucket, _curve(track, low, high)


def _bucket(carrier: Carrier, place: float, here: Sequence[Lifted], sight: Sight) -> Bucket | None:
    seen_from = min(sight(carrier.at(place, aside)) for aside in (ASIDE, -ASIDE)) - BEFORE
    depths = [(_depth(piece, place), piece.sharp) for piece in here]
    if any(sharp and depth >= seen_from for depth, sharp in depths):
        return "visible"
    if any(depth >= seen_from for depth, _ in depths):
        return "smooth"
    return "hidden" if any(sharp for _, sharp in depths) else None


def _depth(piece: Lifted, place: float) -> float:
    """Return the depth of a piece; one that runs past the rightmost point of a circle counts its places on."""
    period = piece.carrier.period
    if math.isinf(period) or piece.span[0] <= place <= piece.span[1]:
        return piece.depth(place)
    return piece.depth(place + period if place < piece.span[0] else place - period)


def _curve(track: _Track, low: float, high: float) -> Curve:
    curve: Segment | ArcCurve = track.carrier.curve(low, high)
    return Chain((curve.start, curve.end)) if track.chord and isinstance(curve, Segment) else curve


__all__ = ["VIEWS", "Projection", "project", "project_shape"]
