"""The hole pattern of the base plate: true size, origin where the bearing seat plane meets the shaft's axis."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from dataclasses import replace

from blockgen.errors import MachineError
from blockgen.outputs.drawing import leaders
from blockgen.outputs.drawing.box import Box
from blockgen.outputs.drawing.field import CENTRE, GEOMETRY, Field
from blockgen.outputs.drawing.figures import Figures
from blockgen.outputs.drawing.hole_table import plate_rows, plate_tags, tag_candidates
from blockgen.outputs.drawing.label import Label, text_row
from blockgen.outputs.drawing.leaders import Target
from blockgen.outputs.drawing.lettering import text_width
from blockgen.outputs.drawing.paper import Paper, frame, paper
from blockgen.outputs.drawing.placement import NoRoomError, place
from blockgen.outputs.drawing.setup_page import written
from blockgen.outputs.drawing.strokes import Arc, Item, Line, Sheet, Stroke, Text
from blockgen.outputs.drawing.symbols import LETTER, SMALL
from blockgen.outputs.drawing.tables import Column, table, table_height, wrapped
from blockgen.outputs.drawing.title_block import WIDTH, Titles, title_block
from blockgen.outputs.drawing.views import View, extent
from blockgen.plan import Feature, Plan
from blockgen.standards.threads import thread

_SIZES = ("A3", "A2", "A1", "A0")
_COLUMNS = (Column("Hole", 16.0), Column("x", 26.0), Column("y", 26.0), Column("What", 112.0))
_PAST = 8.0


def base_holes_sheet(plan: Plan, titles: Titles, figures: Figures) -> Sheet:
    """Return the sheet of the hole pattern.

    Args:
        plan: Plan with the holes of the base plate.
        titles: Words of the title block.
        figures: How numbers are written.

    Raises:
        MachineError: nothing fits even the largest sheet.
    """
    for size in _SIZES:
        try:
            return _on_sheet(plan, titles, figures, paper(size))
        except NoRoomError:
            continue
    raise MachineError("the hole pattern of the base plate does not fit a sheet A0 at true size")


def _on_sheet(plan: Plan, titles: Titles, figures: Figures, sheet: Paper) -> Sheet:
    area = sheet.area
    block, foot = title_block((area.right, area.bottom), replace(titles, size=sheet.size, scale="1:1"))
    words = _words(plan, figures, area, foot)
    view = _view(plan, Box(area.left, area.bottom, area.right - WIDTH, area.top))
    field = Field()
    for box in (Box(area.right - WIDTH, area.bottom, area.right, area.bottom + foot), _extent(words)):
        field.add_box(box)
    shapes = (_outline(view, plan), _axes(view), _holes(view, plan))
    for item, weight in zip(shapes, (GEOMETRY, CENTRE, GEOMETRY), strict=True):
        field.add(item.strokes, weight)
    items = [frame(sheet), block, *words, *shapes]
    for label, targets in _labels(view, plan, figures):
        items += place(label.rows[0].id, leaders.candidates(label, targets, view.box), field, area.grown(-1.0))
    tags = plate_tags(plan.base_features, plan.features)
    for feature in plan.base_features:
        items += place(feature.id, tag_candidates(view, feature, tags[feature.id]), field, area.grown(-1.0))
    title = f"{titles.number} {titles.kind}"
    origin = view.at(0.0, 0.0)
    return Sheet("base_holes", title, sheet.size, sheet.width, sheet.height, 1.0, tuple(items), origin)


def _view(plan: Plan, area: Box) -> View:
    low, size = extent("top", plan.body.length, plan.body.width, plan.body.height)
    corner = (
        area.left + (area.right - area.left - size[0]) / 2,
        area.bottom + (area.top - area.bottom - size[1]) / 2,
    )
    if corner[0] < area.left + 45.0 or corner[1] < area.bottom + 30.0:
        raise NoRoomError("hole pattern")
    return View("top", corner, low, size, 1.0)


def _words(plan: Plan, figures: Figures, area: Box, foot: float) -> tuple[Item, ...]:
    """Return hole table and notes above the title block."""
    left, rows = area.right - WIDTH, plate_rows(plan.base_features, plan.features, figures)
    notes = [line for number, words in enumerate(_notes(plan, figures), 1)
             for line in wrapped(f"{number}  {words}", WIDTH - 4.0, SMALL)]  # fmt: skip
    low = area.bottom + foot + 4.0
    top = low + len(notes) * SMALL * 1.5 + 6.0 + table_height(rows, _COLUMNS, SMALL)
    if top > area.top - 4.0:
        raise NoRoomError("hole table")
    strokes, end = table((left, top), _COLUMNS, rows, SMALL)
    texts = tuple(
        Text(line, (left + 2.0, end - 4.0 - SMALL * (1.0 + 1.5 * number)), SMALL) for number, line in enumerate(notes)
    )
    return Item("sheet.holes", "table", strokes), Item("sheet.notes", "note", texts)


def _notes(plan: Plan, figures: Figures) -> Iterator[str]:
    yield (
        "Origin: bearing seat plane of the block (x = 0, x towards the motor) and shaft axis (y = 0), seen from above. "
        "Positions are theoretically exact."
    )
    zone = plan.records.get("base_screws_position") or plan.records.get("base_threads_position")
    if zone is not None and isinstance(zone.value, float):
        yield f"Position of the holes to one another: ⌀{figures.number(zone.value)}. Dashed: outline of the block."
    thick = figures.number(plan.number("base.thickness"))
    yield f"Base: {plan.text('base.material')}, {thick} thick. Flat under the block."
    if any(feature.kind == "dowel_hole" for feature in plan.base_features):
        yield "Dowel holes: pilot-drill before, ream together with the block after it has been aligned and torqued."


def _extent(words: Sequence[Item]) -> Box:
    points = []
    for item in words:
        for stroke in item.strokes:
            if isinstance(stroke, Line):
                points += [stroke.start, stroke.end]
            elif isinstance(stroke, Text):
                points += [stroke.at, (stroke.at[0] + text_width(stroke.words, stroke.height), stroke.at[1])]
    return Box.around(points).grown(1.0)


def _outline(view: View, plan: Plan) -> Item:
    half, length = plan.body.width / 2, plan.body.length
    corners = [view.at(x, y) for x, y in ((0, -half), (length, -half), (length, half), (0, half))]
    lines = tuple(Line(a, b, "hidden") for a, b in zip(corners, [*corners[1:], corners[0]], strict=True))
    return Item("view.block", "outline", lines, in_model=True)


def _axes(view: View) -> Item:
    """Return the two datum lines with their names: the shaft's axis and the bearing seat plane."""
    box, (x, y) = view.box, view.at(0.0, 0.0)
    low, left = box.bottom - _PAST, box.left - _PAST
    strokes: tuple[Stroke, ...] = (
        Line((left, y), (box.right + _PAST, y), "centre"),
        Line((x, low), (x, box.top + _PAST), "centre"),
        Text("A, x = 0", (x - text_width("A, x = 0", LETTER) / 2, low - 2.0 - LETTER), LETTER),
        Text("B, y = 0", (box.right + _PAST + 2.0, y - LETTER / 2), LETTER),
    )
    return Item("centre.datums", "centre_line", strokes, in_model=True)


def _holes(view: View, plan: Plan) -> Item:
    strokes: list[Stroke] = []
    for feature in plan.base_features:
        (x, y), radius = view.point(*feature.position), feature.diameter / 2
        strokes.append(Arc((x, y), radius, pen="outline"))
        reach = radius + 3.0
        if feature.thread:
            reach = thread(feature.thread.rpartition("-")[0]).diameter / 2 + 3.0
            strokes.append(Arc((x, y), reach - 3.0, 100.0, 350.0))
        strokes += [Line((x - reach, y), (x + reach, y), "centre"), Line((x, y - reach), (x, y + reach), "centre")]
    return Item("view.holes", "outline", tuple(strokes), in_model=True)


def _labels(view: View, plan: Plan, figures: Figures) -> Iterator[tuple[Label, list[Target]]]:
    groups: dict[str, list[Feature]] = {}
    for feature in plan.base_features:
        groups.setdefault(feature.group, []).append(feature)
    for group, members in groups.items():
        words = [f"{len(members)} × {part.strip()}" if number == 0 else part.strip()
                 for number, part in enumerate(_parts(members[0].call_out))]  # fmt: skip
        rows = tuple(text_row(f"{group}.{number}", written(part, figures)) for number, part in enumerate(words))
        targets = [Target(view.point(*f.position), f.diameter / 2) for f in members]
        yield Label(rows), targets


def _parts(call_out: str) -> list[str]:
    """Return a call-out as rows."""
    return [part for piece in call_out.split(", ") for part in piece.split(" / ")]
