"""Edges left out of a view: they would run into the line beside them.

Sources (from memory): ISO 128-2, lines side by side leave at least 0.7 mm; ISO 6410-1, the chamfer of a thread is left
out where one looks along the thread.
"""

from __future__ import annotations

from collections.abc import Iterable, Iterator
from math import fsum

from blockgen.geometry.curves import ArcCurve, Curve, Segment
from blockgen.outputs.drawing.views import AXES, Point3, View
from blockgen.plan import Body, Feature, Plan

LEAST_SPACE = 0.7
"""Least distance of two lines side by side, mm on paper."""

_SAME = 1e-3


def uncrowded(curves: Iterable[Curve], view: View, plan: Plan) -> tuple[Curve, ...]:
    """Return the curves of a view without the chamfers that are too small to be drawn.

    Args:
        curves: Curves in the view's own coordinates, true mm.
        view: The view, for its scale.
        plan: What was decided: it tells where chamfers are.
    """
    levels = [frozenset(near) for near in _levels(view, plan)]
    rings = [*_rings(view, plan), *_corner_rings(view, plan.body)]
    kept: list[Curve] = []
    for curve in curves:
        if isinstance(curve, Segment) and _is_beside(curve, view, plan.body, levels):
            kept += _roofs(curve, view, plan)
        elif not (isinstance(curve, ArcCurve) and _is_ring(curve, rings)):
            kept.append(curve)
    return tuple(kept)


def _rings(view: View, plan: Plan) -> Iterator[tuple[float, float, float]]:
    """Yield middle and radius of the chamfered mouths that one looks into, true mm."""
    for feature in plan.features:
        chamfer = mouth_chamfer(feature)
        if chamfer and abs(fsum(a * b for a, b in zip(sight(view.name), feature.axis, strict=True))) > 0.5:
            wide = feature.profile[0].start_radius - feature.profile[0].end_radius
            if feature.thread or wide * view.scale < LEAST_SPACE:
                yield *view.flat(*feature.position), feature.profile[0].start_radius


def _corner_rings(view: View, body: Body) -> Iterator[tuple[float, float, float]]:
    """Yield middle and radius of the chamfer along the rounded corners as the top view shows them, true mm."""
    radius, chamfer = body.outer_fillet, body.edge_chamfer
    if view.name != "top" or radius <= chamfer or chamfer * view.scale >= LEAST_SPACE:
        return
    for x in (radius, body.length - radius):
        for y in (radius - body.width / 2, body.width / 2 - radius):
            yield x, y, radius - chamfer


def _is_ring(curve: ArcCurve, rings: Iterable[tuple[float, float, float]]) -> bool:
    found = (*curve.centre, curve.radius)
    return any(all(abs(a - b) < _SAME for a, b in zip(found, ring, strict=True)) for ring in rings)


def _levels(view: View, plan: Plan) -> Iterator[Iterator[float]]:
    """Yield for left, bottom, right and top side of the outline the distances at which chamfers end, true mm."""
    right, up = AXES[view.name]
    for out in (_turned(right), _turned(up), right, up):
        yield (deep for deep in (plan.body.edge_chamfer, *_mouths(plan, out)) if deep * view.scale < LEAST_SPACE)


def _turned(way: Point3) -> Point3:
    return (-way[0], -way[1], -way[2])


def _mouths(plan: Plan, out: Point3) -> Iterator[float]:
    """Yield the depths of the chamfered mouths that open in a direction, mm."""
    for feature in plan.features:
        if mouth_chamfer(feature) and fsum(a * b for a, b in zip(feature.axis, out, strict=True)) < -0.5:
            yield mouth_chamfer(feature)


def mouth_chamfer(feature: Feature) -> float:
    """Return the depth of a hole's chamfered mouth, mm; 0 without one."""
    first = feature.profile[0] if feature.profile else None
    return first.end if first and first.part == "mouth_chamfer" else 0.0


def sight(name: str) -> Point3:
    """Return the unit vector from the sheet towards the eye in a view, in the block's coordinates."""
    right, up = AXES[name]
    return (
        right[1] * up[2] - right[2] * up[1],
        right[2] * up[0] - right[0] * up[2],
        right[0] * up[1] - right[1] * up[0],
    )


def _is_beside(curve: Segment, view: View, body: Body, levels: list[frozenset[float]]) -> bool:
    """Tell whether a straight edge is the inner edge of a chamfer along a side of the outline, or in its corner."""
    ways = list(zip(_distances(curve.start, view), _distances(curve.end, view), levels, strict=True))
    if any(abs(a - b) < _SAME and _meets(a, near) for a, b, near in ways):
        return True
    middle = ((curve.start[0] + curve.end[0]) / 2, (curve.start[1] + curve.end[1]) / 2)
    left, low, right, high = _distances(middle, view)
    across, upright, chamfer = min(left, right), min(low, high), body.edge_chamfer
    in_corner = max(across, upright) < chamfer + _SAME and chamfer * view.scale < LEAST_SPACE
    return in_corner and across + upright > max(chamfer, 2 * _SAME) + _SAME and min(across, upright) > _SAME


def _meets(distance: float, levels: frozenset[float]) -> bool:
    return distance > _SAME and any(abs(distance - level) < _SAME for level in levels)


def _distances(point: tuple[float, float], view: View) -> tuple[float, float, float, float]:
    """Return how far a point lies inside the left, lower, right and upper side of the outline, true mm."""
    (u, v), (left, low), (wide, high) = point, view.low, view.size
    return u - left, v - low, left + wide - u, low + high - v


def _roofs(curve: Segment, view: View, plan: Plan) -> Iterator[Segment]:
    """Yield what a relief in the base leaves of an edge at its roof, which may lie as high as the edge of a chamfer."""
    if view.name not in {"front", "section"}:
        return
    (a, v), (b, w) = sorted((curve.start, curve.end))
    for box in (f.pocket for f in plan.features if f.kind == "relief" and f.pocket):
        low, high = max(a, box.low[0]), min(b, box.high[0])
        if abs(v - box.high[2]) < _SAME and abs(w - box.high[2]) < _SAME and high > low + _SAME:
            yield Segment((low, v), (high, w))
