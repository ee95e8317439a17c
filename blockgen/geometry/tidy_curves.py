"""Clean-up of the curves of a view: each stretch once, in one piece, in a fixed order. No CAD kernel."""

from __future__ import annotations

import math
from collections.abc import Iterable, Iterator, Sequence
from itertools import pairwise

from blockgen.geometry.carriers import SAME_PLACE, Carrier, Circle, Span, carried
from blockgen.geometry.curves import ArcCurve, Chain, Curve, Place, Segment, length_of

SHORTEST = 1e-4
"""Pieces shorter than this are dropped, mm."""

_DIGITS = 6
_DEGREE_DIGITS = 9  # an angle of that size moves a point by less than the last digit of a length

Curves = tuple[Curve, ...]
_Spans = dict[tuple[int, ...], tuple[Carrier, list[Span]]]


def tidy(visible: Iterable[Curve], hidden: Iterable[Curve], smooth: Iterable[Curve]) -> tuple[Curves, Curves, Curves]:
    """Return visible, hidden and smooth curves: merged, sorted, and each stretch in the first list that has it.

    Smooth edges come before hidden ones: what is seen covers what is not.
    """
    seen, thin = list(visible), list(smooth)
    return merged(seen), merged(hidden, [*seen, *thin]), merged(thin, seen)


def merged(curves: Iterable[Curve], covers: Iterable[Curve] = ()) -> Curves:
    """Return the curves with touching and overlapping pieces in one, less what lies under ``covers``, sorted.

    Lengths are rounded to 1e-6 mm; what is shorter than ``SHORTEST`` is dropped.
    """
    own, chords = _gathered(curves)
    other, other_chords = _gathered(covers)
    straight = [_rounded(piece) for piece in _pieces(own, other)]
    chains = _linked([p for p in _pieces(chords, other_chords) if isinstance(p, Segment)])
    return tuple(sorted([*straight, *chains], key=_order))


def joined_spans(spans: Iterable[Span]) -> list[Span]:
    """Return spans in order with those that touch or overlap made one."""
    done: list[Span] = []
    for low, high in sorted(spans):
        if done and low <= done[-1][1] + SAME_PLACE:
            done[-1] = (done[-1][0], max(high, done[-1][1]))
        else:
            done.append((low, high))
    return done


def spans_less(spans: Sequence[Span], covers: Sequence[Span]) -> list[Span]:
    """Return what is left of spans outside the covers; both in order and apart from one another."""
    left = []
    for low, high in spans:
        at = low
        for start, end in covers:
            if start < high and end > at:
                left.append((at, start))
                at = max(at, end)
        left.append((at, high))
    return [(low, high) for low, high in left if high - low > SHORTEST]


def within_period(span: Span, period: float) -> list[Span]:
    """Return a span as spans from 0 to the period; on a line, which has none, as it is."""
    low, high = span
    if math.isinf(period):
        return [span]
    if high - low >= period - SAME_PLACE:
        return [(0.0, period)]
    low = low % period
    high = low + (span[1] - span[0])
    return [(low, high)] if high <= period else [(low, period), (0.0, high - period)]


def _gathered(curves: Iterable[Curve]) -> tuple[_Spans, _Spans]:
    """Return the spans by carrier of lines and arcs, and of the chords of chains."""
    plain: _Spans = {}
    chords: _Spans = {}
    for curve in curves:
        for piece, place in _parts(curve, plain, chords):
            if length_of(piece) > SAME_PLACE:
                _add(piece, place)
    return plain, chords


def _parts(curve: Curve, plain: _Spans, chords: _Spans) -> Iterator[tuple[Segment | ArcCurve, _Spans]]:
    if isinstance(curve, Chain):
        yield from ((Segment(start, end), chords) for start, end in pairwise(curve.points))
    else:
        yield curve, plain


def _add(piece: Segment | ArcCurve, place: _Spans) -> None:
    carrier, span = carried(piece)
    carrier, spans = place.setdefault(carrier.key(), (carrier, []))
    if isinstance(piece, Segment):  # measured anew on the carrier that was there first
        low, high = sorted((carrier.place(piece.start), carrier.place(piece.end)))
        span = (low, high)
    spans.extend(within_period(span, carrier.period))


def _pieces(own: _Spans, covers: _Spans) -> Iterator[Segment | ArcCurve]:
    for key, (carrier, spans) in own.items():
        cover = joined_spans(covers[key][1]) if key in covers else []
        for low, high in _closed(carrier, spans_less(joined_spans(spans), cover)):
            yield carrier.curve(low, high)


def _closed(carrier: Carrier, spans: list[Span]) -> list[Span]:
    """Return spans with the last and the first of a circle made one where they meet at its rightmost point."""
    if len(spans) < 2 or not isinstance(carrier, Circle):
        return spans
    first, last = spans[0], spans[-1]
    if first[0] > SAME_PLACE or last[1] < carrier.period - SAME_PLACE:
        return spans
    return [*spans[1:-1], (last[0], first[1] + carrier.period)]


def _linked(chords: list[Segment]) -> list[Chain]:
    """Return chords that meet end to end as chains, from the least open end on."""
    ends: dict[Place, list[Place]] = {}
    for chord in chords:
        start, end = rounded_place(chord.start), rounded_place(chord.end)
        ends.setdefault(start, []).append(end)
        ends.setdefault(end, []).append(start)
    forks = {point for point, others in ends.items() if len(others) > 2}
    open_first = sorted(ends, key=lambda point: (len(ends[point]) == 2, point))
    return [Chain(tuple(_walk(ends, forks, p))) for p in open_first for _ in range(len(ends[p])) if ends[p]]


def _walk(ends: dict[Place, list[Place]], forks: set[Place], point: Place) -> list[Place]:
    """Return the points from an end on until the way forks or stops, and take them out of ``ends``."""
    points = [point]
    while ends[point]:
        onwards = min(ends[point])
        ends[point].remove(onwards)
        ends[onwards].remove(point)
        points.append(onwards)
        point = onwards
        if point in forks:
            break
    return points


def rounded_place(point: Place) -> Place:
    """Return a point with its coordinates rounded to 1e-6 mm."""
    return (round(point[0], _DIGITS) + 0.0, round(point[1], _DIGITS) + 0.0)  # + 0.0 turns -0.0 into 0.0


def rounded_arc(arc: ArcCurve) -> ArcCurve:
    """Return an arc with centre and radius rounded to 1e-6 mm, angles finer, the first from 0 to below 360 deg."""
    start, end = round(arc.start_deg, _DEGREE_DIGITS), round(arc.end_deg, _DEGREE_DIGITS)
    turn = 360.0 if start >= 360.0 else 0.0
    return ArcCurve(rounded_place(arc.centre), round(arc.radius, _DIGITS), start - turn, end - turn)


def _rounded(piece: Segment | ArcCurve) -> Segment | ArcCurve:
    if isinstance(piece, ArcCurve):
        return rounded_arc(piece)
    start, end = sorted((rounded_place(piece.start), rounded_place(piece.end)))
    return Segment(start, end)


def _order(curve: Curve) -> tuple[int, tuple[float, ...]]:
    if isinstance(curve, Segment):
        return 0, (*curve.start, *curve.end)
    if isinstance(curve, ArcCurve):
        return 1, (*curve.centre, curve.radius, curve.start_deg, curve.end_deg)
    return 2, tuple(value for point in curve.points for value in point)
