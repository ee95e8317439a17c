"""Centre lines, thread arcs and the mark of the cutting plane: they come from the plan, not from the projection.

Sources (from memory): ISO 128-2 for long-dashed dotted narrow lines, ISO 6410-1 for the thread's three-quarter circle
and for its narrow lines in a section, ISO 128-3 for cutting-plane marks.
"""

from __future__ import annotations

import math
from collections.abc import Iterable, Iterator, Sequence
from functools import partial

from blockgen.outputs.drawing.box import Box
from blockgen.outputs.drawing.crowded import sight
from blockgen.outputs.drawing.lettering import text_box, text_width
from blockgen.outputs.drawing.placement import Candidate
from blockgen.outputs.drawing.strokes import Arc, Fill, Item, Line, Pen, Point, Stroke, Text
from blockgen.outputs.drawing.symbols import arrow
from blockgen.outputs.drawing.views import View
from blockgen.plan import Feature, Plan
from blockgen.sizing.family import entries
from blockgen.standards.threads import thread

_PAST, _HOLE_PAST = 4.0, 2.0
_LETTER = 5.0
_APART = 3.0  # the section's letters must not be read with a dimension beside them, mm
_END = 7.0
_NARROW, _BEYOND = 12.0, 14.0  # the mark's arrows and letters reach 10 mm up


def centre_lines(view: View, plan: Plan) -> Item:
    """Return the centre lines of the bores and holes that show in a view."""
    found = dict.fromkeys((*_shaft(view, plan), *_holes(view, plan), *_circles(view, plan)))
    return Item(f"centre.{view.name}", "centre_line", tuple(found), in_model=True)


def _shaft(view: View, plan: Plan) -> Iterator[Stroke]:
    """Yield the shaft's axis, or its cross in an end view."""
    height, box = plan.number("shaft_height"), view.box
    x, y = view.point(0.0, 0.0, height)
    if view.name in {"motor_end", "bearing_end"}:
        yield Line((x, box.bottom - _PAST), (x, box.top + _PAST), "centre")
    if view.name != "top":  # there the mark of the cutting plane stands in its place
        yield Line((box.left - _PAST, y), (box.right + _PAST, y), "centre")


def _holes(view: View, plan: Plan) -> Iterator[Stroke]:
    for feature in plan.features:
        if feature.profile and feature.kind != "bore":
            yield from _hole(view, feature)


def _hole(view: View, feature: Feature) -> Iterator[Stroke]:
    centre = view.point(*feature.position)
    radius = max(max(piece.start_radius, piece.end_radius) for piece in feature.profile) * view.scale + _HOLE_PAST
    if _faces(view, feature) or _below(view, feature):
        x, y = centre
        yield Line((x - radius, y), (x + radius, y), "centre")
        yield Line((x, y - radius), (x, y + radius), "centre")
    elif view.name == "front" or (view.name == "section" and in_cut(feature)):
        end = _end(view, feature)
        yield _lengthened(centre, end, _HOLE_PAST)


def _end(view: View, feature: Feature) -> Point:
    """Return where the axis of a hole ends in a view, seen from the side."""
    deep = max(piece.end for piece in feature.profile)
    place = [p + deep * a for p, a in zip(feature.position, feature.axis, strict=True)]
    return view.point(place[0], place[1], place[2])


def _lengthened(a: Point, b: Point, by: float) -> Line:
    far = math.dist(a, b) or 1.0
    x, y = (b[0] - a[0]) / far * by, (b[1] - a[1]) / far * by
    first, last = sorted(((a[0] - x, a[1] - y), (b[0] + x, b[1] + y)))
    return Line(first, last, "centre")


def _faces(view: View, feature: Feature) -> bool:
    """Tell whether a hole's mouth looks out of the sheet."""
    towards = math.fsum(a * b for a, b in zip(sight(view.name), feature.axis, strict=True))
    return towards < -0.5 and view.name != "section"


def _below(view: View, feature: Feature) -> bool:
    """Tell whether a hole is one of the base face in the top view, which shows them as hidden."""
    return view.name == "top" and feature.face == "base"


def in_cut(feature: Feature) -> bool:
    """Tell whether the section through the shaft's axis passes through a hole's axis."""
    return abs(feature.position[1]) < 1e-6 and abs(feature.axis[1]) < 1e-6


def _circles(view: View, plan: Plan) -> Iterator[Stroke]:
    """Yield the circle on which the holes of a flange lie, where they lie on one; that of each motor of a family."""
    end = view.name.removesuffix("_end")
    if end == view.name:
        return
    centre = view.point(0.0, 0.0, plan.number("shaft_height"))
    for table in entries(plan.records) if end == "motor" else (end,):
        if f"{table}.bolt_circle" in plan.records:
            yield Arc(centre, plan.number(f"{table}.bolt_circle") / 2 * view.scale, pen="centre")


def thread_marks(view: View, plan: Plan) -> Item | None:
    """Return the narrow lines of the threads that show in a view; None without any."""
    strokes: list[Stroke] = []
    for feature in plan.features:
        if feature.thread and (_faces(view, feature) or _below(view, feature)):
            pen: Pen = "thin" if _faces(view, feature) else "hidden"
            strokes.append(Arc(view.point(*feature.position), _crest(feature) * view.scale, 100.0, 350.0, pen))
        elif feature.thread and view.name == "section" and in_cut(feature):
            strokes += _cut_thread(view, feature)
    return Item(f"threads.{view.name}", "centre_line", tuple(strokes), in_model=True) if strokes else None


def _crest(feature: Feature) -> float:
    """Return the greatest radius of a hole's thread, mm."""
    return thread((feature.thread or "").rpartition("-")[0]).diameter / 2


def _cut_thread(view: View, feature: Feature) -> Iterator[Stroke]:
    """Yield the narrow lines of a thread in the section and the wide line at its end."""
    radius = _crest(feature)
    deep = feature.thread_depth or feature.depth
    x, _, z = feature.position
    along, across = (feature.axis[0], feature.axis[2]), (abs(feature.axis[2]), abs(feature.axis[0]))
    for side in (-1.0, 1.0):
        start = (x + side * radius * across[0], z + side * radius * across[1])
        end = (start[0] + deep * along[0], start[1] + deep * along[1])
        yield Line(view.at(*start), view.at(*end))
    foot, wide = (x + deep * along[0], z + deep * along[1]), (radius * across[0], radius * across[1])
    a, b = (view.at(foot[0] + s * wide[0], foot[1] + s * wide[1]) for s in (-1, 1))
    yield Line(a, b, "outline")


def cutting_plane(view: View, plan: Plan, letter: str) -> Item:
    """Return the mark of the section's plane in the top view: line, ends, arrows, letters."""
    box = view.box
    _, y = view.point(0.0, 0.0, plan.number("shaft_height"))
    away = _mark_away(view, plan)
    left, right = box.left - away, box.right + away
    strokes: list[Stroke] = [Line((left, y), (right, y), "centre")]
    for x, way in ((left, -1.0), (right, 1.0)):
        end = x + way * _END
        tip = (end - way * 2.0, y + 0.4)
        foot = (tip[0], y + 9.0)
        strokes += [Line((x, y), (end, y), "cutting"), Line(tip, foot), arrow(foot, tip)]
        wide = text_width(letter, _LETTER)
        strokes.append(Text(letter, (tip[0] + way * 2.0 - (wide if way < 0 else 0.0), y + 3.0), _LETTER))
    return Item("section.mark", "section", tuple(strokes), in_model=True)


def _mark_away(view: View, plan: Plan) -> float:
    """Return how far outside the view the mark begins: beyond the dimension of a window that is narrow on paper."""
    for feature in plan.features:
        if feature.kind == "window" and feature.pocket and feature.pocket.axis == "z":
            half = (feature.pocket.high[1] - feature.pocket.low[1]) / 2 * view.scale
            return _BEYOND if half < _NARROW else _PAST
    return _PAST


def ends_of_mark(mark: Item) -> tuple[Box, ...]:
    """Return the two ends of the section's mark, arrow and letter, from which dimensions keep away."""
    letters = [text_box(stroke) for stroke in mark.strokes if isinstance(stroke, Text)]
    points = [point for stroke in mark.strokes if isinstance(stroke, Fill) for point in stroke.outline]
    ends = []
    for box in letters:
        near = [point for point in points if abs(point[0] - box.left) < 3 * _LETTER]
        ends.append(Box.around([*near, (box.left, box.bottom), (box.right, box.top)]).grown(1.0))
    return tuple(ends)


def section_title(view: View, letter: str) -> Iterator[Candidate]:
    """Yield places for the section's letters above it."""
    words, box = f"{letter}–{letter}", view.box
    left = (box.left + box.right) / 2 - text_width(words, _LETTER) / 2
    for number in range(20):
        for shift in (0.0, 14.0, -14.0, 28.0, -28.0):
            text = Text(words, (left + shift, box.top + 5.0 + 3.0 * number), _LETTER)
            item = Item("section.title", "section", (text,), in_model=True)
            around = text_box(text).grown(_APART)
            yield Candidate(3.0 * number + abs(shift) / 2, (around,), (), partial(_alone, item))


def _alone(item: Item) -> tuple[Item, ...]:
    return (item,)


def groups_facing(view: View, features: Sequence[Feature]) -> Iterable[str]:
    """Return the groups of holes whose mouths look out of the sheet."""
    return dict.fromkeys(f.group for f in features if f.profile and f.kind != "bore" and _faces(view, f))
