"""Closed loops of lines and arcs about the areas of a section. No CAD kernel."""

from __future__ import annotations

import math
from collections.abc import Sequence

from blockgen.geometry.carriers import SAME_PLACE
from blockgen.geometry.curves import ArcCurve, Place, Segment, arc_point
from blockgen.geometry.tidy_curves import rounded_arc, rounded_place

Piece = Segment | ArcCurve
Loop = tuple[Piece, ...]
Passed = tuple[Piece, bool]
"""A piece, and whether it is passed from its end to its start; only arcs are."""


def smoothed_loop(pieces: Sequence[Passed], counter_clockwise: bool) -> Loop:
    """Return a loop in one sense, straight pieces in one, from its least corner on, rounded to 1e-6 mm.

    Args:
        pieces: Lines and arcs, each of which begins where the one before ends.
        counter_clockwise: Sense that the loop shall have.
    """
    kept = [p for p in pieces if isinstance(p[0], ArcCurve) or math.dist(p[0].start, p[0].end) > SAME_PLACE]
    if (_twice_area(kept) > 0) != counter_clockwise:
        kept = [_turned(p) for p in reversed(kept)]
    joined = _joined(kept)
    first = min(range(len(joined)), key=lambda i: rounded_place(ends_of(joined[i])[0]))
    return tuple(_rounded(piece) for piece, _ in (*joined[first:], *joined[:first]))


def ends_of(passed: Passed) -> tuple[Place, Place]:
    """Return where a piece is begun and where it is left."""
    piece, backwards = passed
    if isinstance(piece, Segment):
        return piece.start, piece.end
    start, end = arc_point(piece, piece.start_deg), arc_point(piece, piece.end_deg)
    return (end, start) if backwards else (start, end)


def loop_area(loop: Loop) -> float:
    """Return the area in a loop, mm2: positive where it runs counter-clockwise, and for a whole circle."""
    return _twice_area(passed_in_turn(loop)) / 2


def passed_in_turn(loop: Loop) -> list[Passed]:
    """Return which arcs of a loop are passed from end to start, by where the pieces meet."""
    at = ends_of((loop[0], _is_first_turned(loop)))[0]
    passed: list[Passed] = []
    for piece in loop:
        start, end = ends_of((piece, False))
        backwards = isinstance(piece, ArcCurve) and math.dist(end, at) < math.dist(start, at)
        passed.append((piece, backwards))
        at = ends_of(passed[-1])[1]
    return passed


def _is_first_turned(loop: Loop) -> bool:
    """Tell whether a loop begins with an arc that is passed from its end to its start."""
    if isinstance(loop[0], Segment) or len(loop) == 1:
        return False
    start, end = ends_of((loop[0], False))
    following = ends_of((loop[1], False))
    meeting = following[:1] if isinstance(loop[1], Segment) else following
    return min(math.dist(start, p) for p in meeting) < min(math.dist(end, p) for p in meeting)


def _twice_area(pieces: Sequence[Passed]) -> float:
    return math.fsum(_twice_swept(p) for p in pieces)


def _twice_swept(passed: Passed) -> float:
    """Return twice the area between the origin and a piece; below 0 where it is passed clockwise about it."""
    (a, b), (c, d) = ends_of(passed)
    swept = a * d - b * c
    piece, backwards = passed
    if isinstance(piece, Segment):
        return swept
    turn = math.radians(piece.end_deg - piece.start_deg)
    bulge = piece.radius**2 * (turn - math.sin(turn))
    return swept + (-bulge if backwards else bulge)


def _turned(passed: Passed) -> Passed:
    piece, backwards = passed
    return (Segment(piece.end, piece.start), False) if isinstance(piece, Segment) else (piece, not backwards)


def _joined(pieces: list[Passed]) -> list[Passed]:
    """Make one of straight pieces in a row, the last and the first included."""
    done: list[Passed] = []
    for passed in pieces:
        whole = _in_a_row(done[-1][0], passed[0]) if done else None
        if whole is None:
            done.append(passed)
        else:
            done[-1] = (whole, False)
    whole = _in_a_row(done[-1][0], done[0][0]) if len(done) > 1 else None
    return done if whole is None else [(whole, False), *done[1:-1]]


def _in_a_row(first: Piece, second: Piece) -> Segment | None:
    if isinstance(first, ArcCurve) or isinstance(second, ArcCurve):
        return None
    (a, b), (c, d), (e, f) = first.start, first.end, second.end
    aside = abs((c - a) * (f - b) - (d - b) * (e - a)) / max(math.dist(first.start, second.end), SAME_PLACE)
    onwards = (c - a) * (e - c) + (d - b) * (f - d) > 0
    return Segment(first.start, second.end) if aside < SAME_PLACE and onwards else None


def _rounded(piece: Piece) -> Piece:
    if isinstance(piece, Segment):
        return Segment(rounded_place(piece.start), rounded_place(piece.end))
    return rounded_arc(piece)
