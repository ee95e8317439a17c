"""The drawing as a checker reads it: nothing touches anything, everything is there once, leaders end where they say."""

import itertools
import math
import re

import pytest

from blockgen.errors import InputError
from blockgen.geometry.block import build_block
from blockgen.outputs.drawing.box import Box
from blockgen.outputs.drawing.hole_table import hole_tags
from blockgen.outputs.drawing.lettering import REPLACEMENT, missing, runs, text_box
from blockgen.outputs.drawing.paper import paper
from blockgen.outputs.drawing.strokes import Arc, Fill, Line, Text
from blockgen.outputs.drawing_set import drawing_set, pictures
from tests.outputs.drawing.made import CASES, NAMES, STATUS, made
from tests.outputs.drawing.touching import (
    chain,
    crossed,
    of_points,
    outside_frame,
    over_fixed,
    overlaps,
)
from tests.sizing.strategies import sized

pytestmark = pytest.mark.slow

IN_NOTES = {"chamfer"}
CASE = pytest.mark.parametrize(("name", "projection"), CASES)


def sheet_of(name, projection="first"):
    return made(name, projection)[2].drawing


def texts(sheet):
    return [stroke for item in sheet.items for stroke in item.strokes if isinstance(stroke, Text)]


def item_of(sheet, identifier):
    return next(item for item in sheet.items if item.id == identifier)


@CASE
def test_no_text_touches_anything(name, projection):
    assert overlaps(sheet_of(name, projection)) == []


@CASE
def test_nothing_is_outside_the_frame_or_over_title_block_notes_and_table(name, projection):
    sheet = sheet_of(name, projection)
    area = paper(sheet.size).area
    assert outside_frame(sheet, (area.left, area.bottom, area.right, area.top)) == []
    assert over_fixed(sheet) == []


@CASE
def test_no_leader_crosses_a_dimension_or_another_leader(name, projection):
    assert crossed(sheet_of(name, projection)) == []


@CASE
def test_dimension_lines_side_by_side_leave_room_for_their_text(name, projection):
    lines = {}
    for item in sheet_of(name, projection).items:
        if item.measure and item.measure.kind == "linear":
            upright = item.measure.angle == 90.0
            for line in (s for s in item.strokes if isinstance(s, Line)):
                (a, b), (c, d) = line.start, line.end
                along = abs(b - d) if upright else abs(a - c)
                level = a if upright else b
                if (a == c if upright else b == d) and level == item.measure.on_line[0 if upright else 1] and along > 1:
                    lines.setdefault(upright, []).append((level, *sorted((b, d) if upright else (a, c)), item.id))
    assert lines
    for found in lines.values():
        for one, two in itertools.combinations(found, 2):
            side_by_side = one[1] < two[2] - 0.1 and two[1] < one[2] - 0.1 and one[3] != two[3]
            assert not side_by_side or abs(one[0] - two[0]) > 6.0, (one, two)


@CASE
def test_each_characteristic_is_drawn_once(name, projection):
    plan, _, found = made(name, projection)
    drawn = [item.id for item in found.drawing.items if item.role in {"dimension", "label", "datum"}]
    general = {"block.texture"}
    for note in plan.annotations:
        wanted = 0 if note.kind in IN_NOTES or note.id in general else 1
        assert drawn.count(note.id) == wanted, note.id
    known = {note.id for note in plan.annotations}
    others = {name for name in drawn if name not in known and not name.startswith("tag.")}
    assert {name.removesuffix(".leader") for name in others if not name.startswith("datum.")} <= known


@CASE
def test_what_stands_in_the_notes_is_written_with_its_value(name, projection):
    plan, _, found = made(name, projection)
    notes = " ".join(
        stroke.words for stroke in item_of(found.drawing, "sheet.notes").strokes if isinstance(stroke, Text)
    )
    for note in plan.annotations:
        if note.kind in IN_NOTES or note.id == "block.texture":
            assert f"{note.value:.2f}".rstrip("0").rstrip(".") in notes, note.id


@CASE
def test_each_number_stands_in_one_circle(name, projection):
    plan, _, found = made(name, projection)
    numbers = []
    for item in found.drawing.items:
        for one, two in itertools.pairwise(item.strokes):
            if isinstance(one, Arc) and isinstance(two, Text) and one.end - one.start == 360 and two.words.isdigit():
                box = text_box(two)
                assert math.dist(((box.left + box.right) / 2, (box.bottom + box.top) / 2), one.centre) < 0.3
                numbers.append(int(two.words))
    wanted = sorted(note.number for note in plan.annotations if note.number)
    assert sorted(numbers) == wanted


@CASE
def test_each_datum_is_drawn_once_and_each_that_is_named_exists(name, projection):
    plan, _, found = made(name, projection)
    drawn = [item.id for item in found.drawing.items if item.role == "datum"]
    named = {f"datum.{letter}" for note in plan.annotations for letter in note.datums}
    assert sorted(drawn) == sorted(n.id for n in plan.annotations if n.kind == "datum")
    assert named <= set(drawn)


@CASE
def test_each_hole_has_its_tag_and_its_row(name, projection):
    plan, _, found = made(name, projection)
    holes = [f for f in plan.features if f.profile and f.kind != "bore"]
    tags = hole_tags(plan.features)
    assert set(tags) == {f.id for f in holes}
    assert len(set(tags.values())) == len(holes)
    drawn = {item.id: item for item in found.drawing.items if item.id.startswith("tag.")}
    assert {f"tag.{f.id}" for f in holes} == set(drawn)
    table = [stroke.words for stroke in item_of(found.drawing, "sheet.holes").strokes if isinstance(stroke, Text)]
    for hole in holes:
        assert drawn[f"tag.{hole.id}"].strokes[0].words == tags[hole.id]
        row = table[table.index(tags[hole.id]) + 1 : table.index(tags[hole.id]) + 4]
        for axis in range(3):
            along = abs(hole.axis[axis]) > 0.5
            assert row[axis] == ("–" if along else f"{hole.position[axis]:.3f}".rstrip("0").rstrip("."))


@CASE
def test_each_tag_stands_nearest_to_its_own_hole(name, projection):
    plan, _taken, found = made(name, projection)
    places = {}
    for view in views(found.drawing):
        for feature in plan.features:
            if feature.profile and feature.kind != "bore":
                places.setdefault(feature.id, []).append(view.point(*feature.position))
    for item in found.drawing.items:
        if item.id.startswith("tag."):
            box = text_box(item.strokes[0])
            own = item.id.removeprefix("tag.")
            group = plan.feature(own).group
            alike = {f.id for f in plan.features if f.group == group}
            nearest = min(alike, key=lambda hole: min(gap(box, place) for place in places[hole]))
            assert nearest == own


def gap(box, point):
    """Return the distance of a point from a box."""
    x = max(box.left - point[0], 0.0, point[0] - box.right)
    y = max(box.bottom - point[1], 0.0, point[1] - box.top)
    return math.hypot(x, y)


def views(sheet):
    """Return the views of a sheet by the outlines that are drawn."""
    from blockgen.outputs.drawing.views import View

    for item in sheet.items:
        if item.id.startswith("view."):
            box = of_points([p for s in item.strokes for p in chain(s)])
            name = item.id.removeprefix("view.")
            low = {"front": (0, 0), "section": (0, 0)}.get(name)
            width, height = (box[2] - box[0]) / sheet.scale, (box[3] - box[1]) / sheet.scale
            if low is None:
                low = (0, -height / 2) if name == "top" else (-width / 2, 0)
            yield View(name, (box[0], box[1]), low, (width, height), sheet.scale)


def tips(sheet):
    """Return tip, name and lines of each leader: its arrow head's first point."""
    for item in sheet.items:
        leads = item.id.endswith(".leader") or (item.measure and item.measure.kind != "linear")
        if leads:
            head = next(s for s in item.strokes if isinstance(s, Fill))
            yield head.outline[0], item.id.removesuffix(".leader"), [s for s in item.strokes if isinstance(s, Line)][:2]


def from_stroke(point, stroke):
    """Return the distance of a point from a line or an arc."""
    if isinstance(stroke, Arc):
        angle = math.degrees(math.atan2(point[1] - stroke.centre[1], point[0] - stroke.centre[0]))
        if (angle - stroke.start) % 360 <= stroke.end - stroke.start:
            return abs(math.dist(point, stroke.centre) - stroke.radius)
        return min(math.dist(point, end) for end in (chain(stroke)[0], chain(stroke)[-1]))
    (x, y), (u, v) = stroke.start, stroke.end
    length = math.dist(stroke.start, stroke.end)
    share = max(0.0, min(1.0, ((point[0] - x) * (u - x) + (point[1] - y) * (v - y)) / length**2))
    return math.dist(point, (x + share * (u - x), y + share * (v - y)))


@CASE
def test_leaders_start_at_their_label_and_end_on_the_edge_they_mean(name, projection):
    _plan, _, found = made(name, projection)
    sheet = found.drawing
    outlines = [s for i in sheet.items if i.id.startswith("view.") for s in i.strokes if s.pen in {"outline", "hidden"}]
    count = 0
    for tip, what, lines in tips(sheet):
        assert min(from_stroke(tip, stroke) for stroke in outlines) < 0.05, what
        shelf, slant = lines
        assert shelf.end == slant.start
        assert math.dist(slant.end, tip) < 1e-9
        strokes = [s for i in sheet.items if i.id == what for s in i.strokes if not isinstance(s, Fill)]
        label = of_points([p for s in strokes if not isinstance(s, Line) for p in corners(s)])
        rows = [i for i in sheet.items if i.role in {"label", "dimension"} and i.in_model]
        boxes = [of_points([p for s in i.strokes if isinstance(s, (Text, Arc)) for p in corners(s)])
                 for i in rows if any(isinstance(s, (Text, Arc)) for s in i.strokes)]  # fmt: skip
        near = min(gap(Box(*box), shelf.start) for box in [label, *boxes])
        assert near < 1.6, what  # a frame's cell or the circle of a number stands that near
        count += 1
    assert count >= 5


def corners(stroke):
    if isinstance(stroke, Text):
        box = text_box(stroke)
        return [(box.left, box.bottom), (box.right, box.top)]
    return chain(stroke)


@CASE
def test_a_leader_to_a_group_of_holes_ends_at_one_of_them(name, projection):
    plan, _, found = made(name, projection)
    shown = {view.name: view for view in views(found.drawing)}
    for tip, what, _ in tips(found.drawing):
        group = what.partition(".")[0]
        members = [f for f in plan.features if f.group == group and f.profile and f.kind != "bore"]
        if not members:
            continue
        reach = max(max(p.start_radius, p.end_radius) for p in members[0].profile) * found.drawing.scale
        away = [math.dist(tip, view.point(*f.position)) for f in members for view in shown.values()]
        assert min(away) <= reach + 1e-6, what


@CASE
def test_labels_and_textures_stand_outside_the_material(name, projection):
    sheet = sheet_of(name, projection)
    outlines = [view.box for view in views(sheet)]
    for item in sheet.items:
        if item.role in {"label", "datum"} and not item.id.startswith("tag.") and not item.id.endswith(".leader"):
            box = Box(*of_points([p for s in item.strokes if not isinstance(s, Fill) for p in corners(s)]))
            assert not any(box.touches(outline) for outline in outlines), item.id


@CASE
def test_the_methods_of_projection_put_the_views_on_the_right_sides(name, projection):
    plan, _, found = made(name, projection)
    places = {view.name: view.box for view in views(found.drawing)}
    front = places["front"]
    method = plan.text("drawing.projection")
    assert (places["top"].top < front.bottom) == (method == "first")
    assert (places["bearing_end"].left > front.right) == (method == "first")
    assert (places["motor_end"].right < front.left) == (method == "first")
    assert places["top"].left == pytest.approx(front.left, abs=1e-6)
    for end in ("bearing_end", "motor_end"):
        assert places[end].bottom == pytest.approx(front.bottom, abs=1e-6)


@CASE
def test_arrows_of_the_cutting_plane_point_the_way_one_looks(name, projection):
    """The section looks along +y, and +y is up in the top view."""
    sheet = sheet_of(name, projection)
    heads = [s for s in item_of(sheet, "section.mark").strokes if isinstance(s, Fill)]
    assert len(heads) == 2
    for head in heads:
        tip, *back = head.outline
        assert all(tip[1] > point[1] + 2.0 for point in back)


@pytest.mark.parametrize("name", NAMES)
def test_arrow_heads_of_distances_touch_the_extension_lines(name):
    sheet = sheet_of(name)
    for item in sheet.items:
        if item.measure and item.measure.kind == "linear":
            axis = 0 if item.measure.angle == 0 else 1
            ends = sorted(h.outline[0][axis] for h in item.strokes if isinstance(h, Fill))
            feet = sorted((item.measure.first[axis], item.measure.second[axis]))
            assert ends == pytest.approx(feet, abs=1e-9), item.id


@pytest.mark.parametrize("name", NAMES)
def test_every_letter_has_its_shape(name):
    found = made(name)[2]
    for sheet in found.sheets:
        assert missing("".join(text.words for text in texts(sheet))) == ()


@pytest.mark.parametrize("name", NAMES)
def test_pages_of_inspection_and_setup_touch_nothing(name):
    found = made(name)[2]
    assert found.inspection
    assert found.setup
    for sheet in (*found.inspection, *found.setup):
        assert overlaps(sheet) == [], sheet.name


def drawn(status=STATUS, **changes):
    plan = sized(**changes)
    return drawing_set(plan, pictures(build_block(plan)), status)


@pytest.mark.parametrize("status", [STATUS, "NOT FOR MANUFACTURE: slip safety of the base screws is too low"])
def test_the_status_stands_on_every_sheet(status):
    plan, taken, _ = made("usual")
    found = drawing_set(plan, taken, status)
    title = item_of(found.drawing, "sheet.title_block")
    words = " ".join(s.words for s in title.strokes if isinstance(s, Text))
    assert status in words
    assert max(s.height for s in title.strokes if isinstance(s, Text) and status.split(":")[0] in s.words) >= 3.5
    for sheet in (*found.inspection, *found.setup):
        foot = item_of(sheet, "sheet.foot")
        assert any(s.words == f"Status: {status}" for s in foot.strokes if isinstance(s, Text)), sheet.name


def test_a_long_status_keeps_its_first_words_on_every_sheet():
    plan, taken, _ = made("usual")
    status = "NOT FOR MANUFACTURE: " + ", ".join(f"check number {n} does not hold" for n in range(40))
    found = drawing_set(plan, taken, status)
    for sheet in found.sheets:
        assert any("NOT FOR MANUFACTURE" in text.words for text in texts(sheet)), sheet.name
        assert overlaps(sheet) == []


def test_texts_of_the_user_with_odd_letters_are_replaced_visibly_and_break_nothing():
    odd = "Träger 架 \u202e ☃ %%c \\U+2300 {x} ^ & <b>"
    found = drawn(job={"title": odd, "author": odd, "project": odd * 5, "number": "T-2"})
    assert overlaps(found.drawing) == []
    title = item_of(found.drawing, "sheet.title_block")
    lost = missing(" ".join(s.words for s in title.strokes if isinstance(s, Text)))
    assert "架" in lost
    assert any(REPLACEMENT in run.shown for s in title.strokes if isinstance(s, Text) for run in runs(s.words))


def test_numbers_have_a_decimal_comma_when_it_is_asked_for():
    found = drawn(drawing={"number_format": "comma"})
    for sheet in (found.drawing, *found.setup):
        for item in sheet.items:
            if item.role in {"dimension", "label", "table"}:
                for stroke in item.strokes:
                    if isinstance(stroke, Text):
                        assert not re.search(r"\d\.\d", stroke.words), (sheet.name, item.id, stroke.words)
    assert any(re.search(r"\d,\d", text.words) for text in texts(found.drawing))


@pytest.mark.parametrize("size", ["A1", "A0"])
def test_the_sheet_asked_for_is_used(size):
    found = drawn(drawing={"sheet": size})
    assert found.drawing.size == size
    assert overlaps(found.drawing) == []


def test_a_sheet_that_is_too_small_is_refused_with_a_way_out():
    with pytest.raises(InputError, match=r'drawing.sheet\n.*"A4"\n.*A2 or larger'):
        drawn(drawing={"sheet": "A4"})


def test_the_word_for_the_scale_is_that_of_the_views():
    plan, _taken, found = made("large")
    title = [s.words for s in item_of(found.drawing, "sheet.title_block").strokes if isinstance(s, Text)]
    assert {1.0: "1:1", 0.5: "1:2"}[found.drawing.scale] in title
    front = next(view for view in views(found.drawing) if view.name == "front")
    assert front.size == pytest.approx((plan.body.length, plan.body.height))


def test_another_set_of_the_same_plan_is_the_same():
    plan, taken, found = made("servo")
    assert drawing_set(plan, taken, made("servo")[2].words.titles.status) == found
    assert drawing_set(plan, taken, "another") != found
