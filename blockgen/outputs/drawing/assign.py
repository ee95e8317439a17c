"""Which view shows which characteristic, and how: as a distance, on a leader, or across a bore."""

from __future__ import annotations

import math
from collections.abc import Iterator, Mapping, Sequence

from blockgen.outputs.drawing.across import Bore
from blockgen.outputs.drawing.leaders import Target
from blockgen.outputs.drawing.linear import Span
from blockgen.outputs.drawing.views import View
from blockgen.plan import Annotation, Feature, Plan, Pocket

Views = Mapping[str, View]
DOWN = (0.0, -1.0)


def spans(plan: Plan, views: Views) -> Iterator[tuple[View, Span]]:
    """Yield every distance with its view and feet, the innermost first."""
    places = {**_outside(plan, views), **_window(plan, views), **_relief(plan, views)}
    notes = {note.id: note for note in plan.annotations}
    for identifier, (view, first, second, angle, sides) in places.items():
        if identifier in notes:
            yield view, Span(notes[identifier], first, second, angle, sides)


_Place = tuple[View, tuple[float, float], tuple[float, float], int, tuple[int, ...]]


def _outside(plan: Plan, views: Views) -> dict[str, _Place]:
    body, shaft = plan.body, plan.number("shaft_height")
    side, end, front, section = body.width / 2, views["bearing_end"], views["front"], views["section"]
    inset = max(body.edge_chamfer, body.outer_fillet)
    chamfer = body.edge_chamfer
    return {
        "block.shaft_height": (end, end.point(0, side - inset, 0), end.point(0, 0, shaft), 90, (1, -1)),
        "block.axis_to_side": (end, end.point(0, -side, chamfer), end.point(0, 0, shaft), 0, (-1, 1)),
        "block.width": (end, end.point(0, -side, chamfer), end.point(0, side, chamfer), 0, (-1, 1)),
        "block.height": (front, front.point(chamfer, 0, 0), front.point(chamfer, 0, body.height), 90, (1, -1)),
        "block.length": (section, section.point(0, 0, body.height - chamfer),
                         section.point(body.length, 0, body.height - chamfer), 0, (1, -1)),
    }  # fmt: skip


def _window(plan: Plan, views: Views) -> dict[str, _Place]:
    window = next((f for f in plan.features if f.kind == "window"), None)
    if window is None or window.pocket is None:
        return {}
    return (_window_across if window.pocket.axis == "y" else _window_from_above)(plan, views, window.pocket)


def _window_across(plan: Plan, views: Views, box: Pocket) -> dict[str, _Place]:
    """Return the feet of a window that goes through the sides: the front view looks into it."""
    view, chamfer, round_ = views["front"], plan.body.edge_chamfer, box.corner_radius
    (left, _, low), (right, _, high) = box.low, box.high
    foot, edge = low + round_, right - round_
    return {
        "window.position": (view, view.point(0, 0, chamfer), view.point(left, 0, foot), 0, (-1, 1)),
        "window.length": (view, view.point(left, 0, foot), view.point(right, 0, foot), 0, (-1, 1)),
        "window.across": (view, view.point(plan.body.length - chamfer, 0, 0), view.point(edge, 0, low), 90, (-1, 1)),
        "window.width": (view, view.point(edge, 0, low), view.point(edge, 0, high), 90, (-1, 1)),
    }


def _window_from_above(plan: Plan, views: Views, box: Pocket) -> dict[str, _Place]:
    """Return the feet of a window that opens at the top: lengths in the section, widths in the top view."""
    body, section, top = plan.body, views["section"], views["top"]
    (left, near, floor), (right, far, _) = box.low, box.high
    roof, edge, inner = body.height, right - box.corner_radius, left + box.corner_radius
    side = top.point(body.length - body.edge_chamfer, -body.width / 2, 0)
    end = section.point(0, 0, roof - body.edge_chamfer)
    return {
        "window.position": (section, end, section.point(left, 0, roof), 0, (1, -1)),
        "window.length": (section, section.point(left, 0, roof), section.point(right, 0, roof), 0, (1, -1)),
        "window.across": (top, side, top.point(edge, near, 0), 90, (-1, 1)),
        "window.width": (top, top.point(edge, near, 0), top.point(edge, far, 0), 90, (-1, 1)),
        "window.floor": (section, section.point(inner, 0, 0), section.point(inner, 0, floor), 90, (-1, 1)),
    }


def _relief(plan: Plan, views: Views) -> dict[str, _Place]:
    relief = next((f for f in plan.features if f.kind == "relief"), None)
    if relief is None or relief.pocket is None:
        return {}
    view, low, high = views["front"], relief.pocket.low, relief.pocket.high
    edge, sides = (low[0], (1, -1)) if low[0] < plan.body.length - high[0] else (high[0], (-1, 1))
    return {
        "relief.position": (view, view.point(0, 0, plan.body.edge_chamfer), view.point(low[0], 0, 0), 0, (-1, 1)),
        "relief.length": (view, view.point(low[0], 0, 0), view.point(high[0], 0, 0), 0, (-1, 1)),
        "relief.depth": (view, view.point(edge, 0, 0), view.point(edge, 0, high[2]), 90, sides),
    }


def bore_of(plan: Plan, view: View, end: str) -> Bore:
    """Return a pilot bore as the section shows it."""
    radius, shaft = plan.number(f"{end}_bore") / 2, plan.number("shaft_height")
    x, side = (0.0, -1) if end == "bearing" else (plan.body.length, 1)
    return Bore(view.point(x, 0, shaft - radius), view.point(x, 0, shaft + radius), side)


def face_targets(plan: Plan, view: View, face: str) -> list[Target]:
    """Return points of a flat face, seen on edge, at which a leader may end."""
    body = plan.body
    if face == "base":
        return [Target(view.point(x, 0, 0), normal=DOWN) for x in _on_base(plan)]
    x, normal = (0.0, (-1.0, 0.0)) if face == "bearing_seat" else (body.length, (1.0, 0.0))
    shaft = plan.number("shaft_height")
    ring = plan.number(f"{face.removesuffix('_seat')}_bore") / 2 + 3.0
    above, below = (shaft + ring + body.height) / 2, (shaft - ring) / 2
    heights = ((above, 0.0), (below, 0.0), (body.height - 2.0, 25.0), (3.0, 25.0))
    return [Target(view.point(x, 0, z), normal=normal, cost=cost) for z, cost in heights if 1.0 < z < body.height - 1.0]


def _on_base(plan: Plan) -> Iterator[float]:
    """Yield where along the foot of the front view the base face is: a relief or chamfer lies deeper."""
    boxes = sorted(f.pocket.low[0::2] + f.pocket.high[0::2] for f in plan.features if f.kind == "relief" and f.pocket)
    ends = [plan.body.edge_chamfer, *(x for low, _, high, _ in boxes for x in (low, high))]
    ends.append(plan.body.length - plan.body.edge_chamfer)
    for start, end in zip(ends[::2], ends[1::2], strict=True):
        yield from (start + (end - start) * share for share in (0.1, 0.2, 0.8, 0.9, 0.5))


def circle_targets(view: View, members: Sequence[Feature], radius: float, kind: str | None) -> list[Target]:
    """Return circles of a group of holes at which a leader may end."""
    return [Target(view.point(*feature.position), radius * view.scale, kind=kind) for feature in members]


def corner_targets(view: View, plan: Plan) -> list[Target]:
    """Return the window's corner arcs, whose centres a leader with a radius runs from."""
    window = next(f for f in plan.features if f.kind == "window" and f.pocket)
    box = window.pocket
    if box is None:
        return []
    other = 1 if box.axis == "z" else 2
    found = []
    for x in (box.low[0] + box.corner_radius, box.high[0] - box.corner_radius):
        for side in (box.low[other] + box.corner_radius, box.high[other] - box.corner_radius):
            place = (x, side, 0.0) if other == 1 else (x, 0.0, side)
            out = _diagonal(x > (box.low[0] + box.high[0]) / 2, side > (box.low[other] + box.high[other]) / 2)
            found.append(Target(view.point(*place), box.corner_radius * view.scale, out, 0.8, kind="radius"))
    return found


def fillet_targets(view: View, plan: Plan) -> list[Target]:
    """Return the rounded upright edges as the top view shows them."""
    body, radius = plan.body, plan.body.outer_fillet
    found = []
    for x in (radius, body.length - radius):
        for y in (radius - body.width / 2, body.width / 2 - radius):
            out = _diagonal(x > body.length / 2, y > 0)
            found.append(Target(view.point(x, y, 0.0), radius * view.scale, out, 0.8, kind="radius"))
    return found


def _diagonal(right: bool, up: bool) -> tuple[float, float]:
    leg = math.sqrt(0.5)
    return (leg if right else -leg, leg if up else -leg)


def notes_of(plan: Plan, *identifiers: str) -> list[Annotation]:
    """Return characteristics by id, in that order, those that are not in the plan left out."""
    by_id = {note.id: note for note in plan.annotations}
    return [by_id[identifier] for identifier in identifiers if identifier in by_id]
