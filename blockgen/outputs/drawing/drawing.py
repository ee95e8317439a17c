"""The drawing of the block: the smallest sheet at the largest scale on which everything finds its place."""

from __future__ import annotations

import math
from collections.abc import Iterable, Iterator, Mapping, Sequence
from dataclasses import dataclass
from typing import TYPE_CHECKING

from blockgen.errors import InputError, MachineError, Problem
from blockgen.geometry.curves import ArcCurve, Curve
from blockgen.outputs.drawing import across, assign, leaders, linear
from blockgen.outputs.drawing.box import Box
from blockgen.outputs.drawing.centre_lines import (
    centre_lines,
    cutting_plane,
    ends_of_mark,
    groups_facing,
    section_title,
    thread_marks,
)
from blockgen.outputs.drawing.crowded import LEAST_SPACE, mouth_chamfer, uncrowded
from blockgen.outputs.drawing.field import CENTRE, GEOMETRY, Field
from blockgen.outputs.drawing.figures import Figures
from blockgen.outputs.drawing.hole_table import hole_tags, tag_candidates
from blockgen.outputs.drawing.label import Label, row_of
from blockgen.outputs.drawing.layout import Layout, layout
from blockgen.outputs.drawing.leaders import Target
from blockgen.outputs.drawing.paper import Paper, frame, paper
from blockgen.outputs.drawing.placement import Candidate, NoRoomError, place
from blockgen.outputs.drawing.strokes import Arc, Hatch, Item, Line, Sheet
from blockgen.outputs.drawing.views import View
from blockgen.outputs.drawing.words import Words
from blockgen.plan import Annotation, Feature, Plan

if TYPE_CHECKING:
    from blockgen.geometry.projection import Projection
    from blockgen.geometry.section import Section

LETTER_OF_SECTION = "S"
_HATCH = 3.0
_MARK = 20.0  # longest centring mark, mm
_SMALLEST_HOLE = 1.8  # a hole smaller than this on paper cannot be read, mm
_CHOICES = (
    ("A3", 1.0), ("A2", 1.0), ("A2", 0.5), ("A1", 1.0), ("A1", 0.5), ("A0", 1.0), ("A0", 0.5), ("A1", 0.2), ("A0", 0.2),
    ("A0", 0.1),
)  # fmt: skip


@dataclass(frozen=True, slots=True)
class Pictures:
    """What the block looks like: projections by view, and the section through the shaft's axis."""

    views: Mapping[str, Projection]
    section: Section


def drawing(plan: Plan, pictures: Pictures, words: Words) -> Sheet:
    """Return the drawing of a plan.

    Args:
        plan: What was decided.
        pictures: Exact curves of the solid.
        words: Title block, notes and tables.

    Raises:
        InputError: the sheet asked for is too small.
        MachineError: nothing fits even the largest sheet.
    """
    wanted = plan.text("drawing.sheet")
    made = _first_that_fits(plan, pictures, words, wanted)
    if made is not None:
        return made
    other = _first_that_fits(plan, pictures, words, "") if wanted else None
    if other is None:
        raise MachineError("the drawing finds no room on any sheet up to A0")
    raise InputError([_too_small(plan, wanted, other.size)])


def _first_that_fits(plan: Plan, pictures: Pictures, words: Words, wanted: str) -> Sheet | None:
    for size, scale in _choices(plan, wanted):
        try:
            return _on_sheet(plan, pictures, words, paper(size), scale)
        except NoRoomError:
            continue
    return None


def _too_small(plan: Plan, wanted: str, fits: str) -> Problem:
    line = plan.records["drawing.sheet"].line
    expected = f"{fits} or larger, which has room for views, sizes, hole table and notes"
    return Problem("spec", line, "drawing.sheet", f'"{wanted}"', expected, "leave drawing.sheet out, or give that size")


def _choices(plan: Plan, wanted: str) -> Iterator[tuple[str, float]]:
    holes = [feature.diameter for feature in plan.features if feature.profile]
    for size, scale in _CHOICES:
        if wanted in {"", size} and (min(holes, default=10.0) * scale >= _SMALLEST_HOLE or scale <= 0.2):
            yield size, scale
    if wanted in {"A4", "A3"}:
        yield from ((wanted, scale) for scale in (0.5, 0.2, 0.1))


def _on_sheet(plan: Plan, pictures: Pictures, words: Words, sheet: Paper, scale: float) -> Sheet:
    """Return the drawing on one sheet at one scale.

    Raises:
        NoRoomError: something finds no place.
    """
    figures, area = words.figures, sheet.area
    fixed, foot = words.at_foot(sheet, scale)
    found = layout(plan.body, area, scale, plan.text("drawing.projection"), foot)
    fixed = (*fixed, *words.in_column(plan, found.column, foot, plan.text("drawing.projection")))
    field = Field()
    for item in fixed:
        field.add_box(_around(item))
    border = frame(sheet)
    for mark in _centring_marks(border):  # they reach into the drawing space
        field.add_box(mark)
    items = [border, *fixed]
    items += _views(plan, pictures, found, field)
    free = area.grown(-1.0)
    for what, candidates in _placed(plan, found.views, figures):
        items += place(what, candidates, field, free)
    title = f"{plan.text('job.number')} {plan.text('job.title')}"
    return Sheet("drawing", title, sheet.size, sheet.width, sheet.height, scale, tuple(items))


def _centring_marks(border: Item) -> Iterator[Box]:
    """Yield the boxes of the short heavy lines of a frame."""
    for stroke in border.strokes:
        if isinstance(stroke, Line) and stroke.pen == "border" and math.dist(stroke.start, stroke.end) <= _MARK:
            yield Box.around((stroke.start, stroke.end)).grown(0.35)


def _around(item: Item) -> Box:
    points = []
    for stroke in item.strokes:
        if isinstance(stroke, Line):
            points += [stroke.start, stroke.end]
    return Box.around(points)


def _views(plan: Plan, pictures: Pictures, found: Layout, field: Field) -> Iterator[Item]:
    """Yield the curves of every view with their centre lines, and enter them into the field."""
    for name, view in found.views.items():
        shown = pictures.section.projection if name == "section" else pictures.views[name]
        strokes = (
            *view.strokes(uncrowded(shown.visible, view, plan), "outline"),
            *(view.strokes(shown.smooth, "thin") if not name.endswith("_end") else ()),
            *view.strokes(uncrowded(_hidden(plan, view, shown.hidden), view, plan), "hidden"),
        )
        yield from _entered(Item(f"view.{name}", "outline", strokes, in_model=True), field, GEOMETRY)
        if name == "section":
            hatch = _hatch(view, pictures.section)
            yield Item("section.hatch", "section", hatch, in_model=True)
        if name == "top":
            mark = cutting_plane(view, plan, LETTER_OF_SECTION)
            for end in ends_of_mark(mark):
                field.add_box(end)
            yield from _entered(mark, field, CENTRE)
        yield from _entered(centre_lines(view, plan), field, CENTRE)
        threads = thread_marks(view, plan)
        if threads:
            yield from _entered(threads, field, GEOMETRY)


def _hidden(plan: Plan, view: View, curves: Sequence[Curve]) -> tuple[Curve, ...]:
    """Return the hidden edges that a view shows: all in the front view, holes of the base face in the top view."""
    if view.name == "front":
        return tuple(curves)
    if not _from_below(plan, view.name):
        return ()
    centres = [view.flat(*f.position) for f in plan.features if f.face == "base" and f.profile]
    return tuple(c for c in curves if isinstance(c, ArcCurve) and any(math.dist(c.centre, p) < 1e-3 for p in centres))


def _from_below(plan: Plan, name: str) -> bool:
    """Tell whether the top view must show the holes of the base face, which no view shows from below."""
    return name == "top" and any(f.face == "base" and f.profile for f in plan.features)


def _entered(item: Item, field: Field, weight: float) -> Iterator[Item]:
    field.add(item.strokes, weight)
    yield item


def _hatch(view: View, section: Section) -> tuple[Hatch, ...]:
    areas = []
    for loops in section.cut_areas:
        strokes = tuple(tuple(s for s in view.strokes(loop, "thin") if isinstance(s, (Line, Arc))) for loop in loops)
        areas.append(Hatch(strokes, _HATCH))
    return tuple(areas)


def _placed(plan: Plan, views: Mapping[str, View], figures: Figures) -> Iterator[tuple[str, Iterable[Candidate]]]:
    """Yield what is to be placed, with its candidates, what has least choice first."""
    for end in ("bearing", "motor"):
        label = _label(figures, _bore_rows(plan, end), "B" if end == "bearing" else "")
        bore = assign.bore_of(plan, views["section"], end)
        yield f"{end}_bore", across.candidates(label, bore, views["section"].box)
    for view, span in sorted(assign.spans(plan, views), key=lambda pair: _span_rank(pair[1])):
        yield span.note.id, linear.candidates(span, view.box, figures)
    yield "section title", section_title(views["section"], LETTER_OF_SECTION)
    for label, targets, view in _led(plan, views, figures):
        yield label.rows[0].id, leaders.candidates(label, targets, view.box)
    yield from _tags(plan, views)


def _span_rank(span: linear.Span) -> float:
    axis = 1 if span.angle else 0
    return abs(span.first[axis] - span.second[axis])


def _tags(plan: Plan, views: Mapping[str, View]) -> Iterator[tuple[str, Iterable[Candidate]]]:
    tags = hole_tags(plan.features)
    for view in views.values():
        groups = set(groups_facing(view, plan.features))
        for feature in plan.features:
            below = _from_below(plan, view.name) and feature.face == "base"
            if feature.id in tags and (feature.group in groups or below):
                yield f"tag {tags[feature.id]}", tag_candidates(view, feature, tags[feature.id])


def _bore_rows(plan: Plan, end: str) -> list[Annotation]:
    names = ("diameter", "depth", "texture", "perpendicularity", "coaxiality")
    return assign.notes_of(plan, *(f"{end}_bore.{name}" for name in names))


def _label(figures: Figures, rows: Sequence[Annotation], datum: str = "") -> Label:
    return Label(tuple(row_of(note, figures) for note in rows), datum)


def _led(plan: Plan, views: Mapping[str, View], figures: Figures) -> Iterator[tuple[Label, list[Target], View]]:
    """Yield the labels on leaders with what they point at."""
    section, top, front = views["section"], views["top"], views["front"]
    for face, names, datum, view in (
        ("bearing_seat", ("texture", "flatness", "perpendicularity"), "A", section),
        ("motor_seat", ("texture", "parallelism"), "", section),
        ("base", ("texture", "flatness"), "C", front),
    ):
        rows = assign.notes_of(plan, *(f"{face}.{name}" for name in names))
        yield _label(figures, rows, datum), assign.face_targets(plan, view, face), view
    yield from _hole_labels(plan, views, figures)
    for identifier, targets, view in (
        ("window.corner_radius", assign.corner_targets, _window_view(plan, views)),
        ("block.outer_fillet", assign.fillet_targets, top),
    ):
        rows = assign.notes_of(plan, identifier)
        if rows:
            yield _label(figures, rows), targets(view, plan), view


def _window_view(plan: Plan, views: Mapping[str, View]) -> View:
    across_block = any(f.kind == "window" and f.pocket and f.pocket.axis == "y" for f in plan.features)
    return views["front" if across_block else "top"]


def _hole_labels(plan: Plan, views: Mapping[str, View], figures: Figures) -> Iterator[tuple[Label, list[Target], View]]:
    for end in ("motor", "bearing"):
        rows = assign.notes_of(plan, f"{end}_bore.through_diameter")
        if rows:
            view, radius = views[f"{end}_end"], plan.number(f"{end}_through_bore") / 2
            bore = [plan.feature(f"{end}_bore")]
            yield _label(figures, rows), assign.circle_targets(view, bore, radius, "diameter"), view
    # a group of few holes has the least choice
    for group, members in sorted(_groups(plan).items(), key=lambda pair: len(pair[1])):
        rows = [note for note in plan.annotations if note.feature == group and note.kind != "chamfer"]
        view = _view_of(members[0], views)
        radius = _rim(members[0], view)
        yield _label(figures, rows), assign.circle_targets(view, members, radius, None), view


def _rim(hole: Feature, view: View) -> float:
    """Return the radius of the circle at which a leader to a hole ends, mm: one that is drawn."""
    if hole.thread:
        return hole.diameter / 2
    first = hole.profile[0]
    wide = first.start_radius - first.end_radius
    return first.end_radius if mouth_chamfer(hole) and wide * view.scale < LEAST_SPACE else first.start_radius


def _groups(plan: Plan) -> Mapping[str, list[Feature]]:
    groups: dict[str, list[Feature]] = {}
    for feature in plan.features:
        if feature.profile and feature.kind != "bore":
            groups.setdefault(feature.group, []).append(feature)
    return groups


def _view_of(feature: Feature, views: Mapping[str, View]) -> View:
    names = {"motor_seat": "motor_end", "bearing_seat": "bearing_end"}
    return views[names.get(feature.face, "top")]
