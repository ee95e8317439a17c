"""Centre lines, threads and the mark of the section."""

import math

import pytest

from blockgen.outputs.drawing.centre_lines import (
    centre_lines,
    cutting_plane,
    ends_of_mark,
    groups_facing,
    section_title,
    thread_marks,
)
from blockgen.outputs.drawing.strokes import Arc, Fill, Line, Text
from tests.outputs.drawing.test_assign import views
from tests.sizing.strategies import sized


def through(item, point):
    """Return how many centre lines run through a point, level and upright."""
    lines = [s for s in item.strokes if isinstance(s, Line)]
    level = [s for s in lines if s.start[1] == s.end[1] == pytest.approx(point[1])]
    upright = [s for s in lines if s.start[0] == s.end[0] == pytest.approx(point[0])]
    within = [s for s in level if min(s.start[0], s.end[0]) < point[0] < max(s.start[0], s.end[0])]
    return len(within), len(upright)


@pytest.mark.parametrize(
    ("name", "face"), [("motor_end", "motor_seat"), ("bearing_end", "bearing_seat"), ("top", "top")]
)
def test_each_hole_that_one_looks_into_has_its_cross(name, face):
    plan = sized()
    view = views(plan)[name]
    item = centre_lines(view, plan)
    holes = [f for f in plan.features if f.face == face and f.profile and f.kind != "bore"]
    assert holes
    for hole in holes:
        assert all(through(item, view.point(*hole.position)))


def test_hidden_threads_of_the_base_have_crosses_and_dashed_arcs_in_the_top_view():
    plan = sized(base={"screw_from": "below"})
    view = views(plan)["top"]
    holes = [f for f in plan.features if f.face == "base" and f.profile]
    marks = thread_marks(view, plan)
    for hole in holes:
        assert all(through(centre_lines(view, plan), view.point(*hole.position)))
    assert {(s.pen, s.radius) for s in marks.strokes} == {("hidden", 5.0)}
    assert len(marks.strokes) == len(holes)


def test_threads_are_three_quarter_arcs_of_their_nominal_size():
    plan = sized()
    view = views(plan, 0.5)["motor_end"]
    arcs = thread_marks(view, plan).strokes
    assert len(arcs) == 4
    assert {arc.radius for arc in arcs} == {1.5}
    assert {(arc.end - arc.start, arc.pen) for arc in arcs} == {(250.0, "thin")}
    assert thread_marks(views(plan)["top"], plan) is None


def test_threads_in_the_cut_have_two_lines_and_an_end():
    plan = sized(motor={"bolt_count": 4, "bolt_angle": 90, "flange_size": 110})
    cut = [f for f in plan.features if f.thread and abs(f.position[1]) < 1e-6]
    assert cut
    item = thread_marks(views(plan)["section"], plan)
    assert len(item.strokes) == 3 * len(cut)
    pair = item.strokes[:2]
    assert abs(pair[0].start[1] - pair[1].start[1]) == pytest.approx(6.0)


def test_holes_on_a_circle_have_it_drawn():
    plan = sized()
    for end, diameter in (("motor", 90), ("bearing", 72)):
        item = centre_lines(views(plan)[f"{end}_end"], plan)
        assert [s.radius for s in item.strokes if isinstance(s, Arc)] == [diameter / 2]


def test_arrows_of_the_section_point_the_way_one_looks_and_stand_outside():
    plan = sized()
    view = views(plan)["top"]
    mark = cutting_plane(view, plan, "S")
    heads = [s.outline for s in mark.strokes if isinstance(s, Fill)]
    assert all(tip[1] > max(a[1], b[1]) for tip, a, b in heads)
    assert sum(isinstance(s, Text) and s.words == "S" for s in mark.strokes) == 2
    for box in ends_of_mark(mark):
        assert not box.touches(view.box)
        assert sum(box.left < tip[0] < box.right and box.bottom < tip[1] < box.top for tip, *_ in heads) == 1


def test_the_mark_of_a_narrow_window_stands_beyond_its_dimension():
    plan = sized()
    wide, narrow = (cutting_plane(views(plan, scale)["top"], plan, "S") for scale in (1.0, 0.2))
    away = [min(s.outline[0][0] for s in mark.strokes if isinstance(s, Fill)) for mark in (wide, narrow)]
    assert away[1] < away[0] - 5.0


def test_the_title_stands_above_the_section_in_its_middle_first():
    view = views(sized())["section"]
    found = list(section_title(view, "S"))
    best = min(found, key=lambda way: way.cost)
    box = best.boxes[0]
    assert (box.left + box.right) / 2 == pytest.approx((view.box.left + view.box.right) / 2, abs=0.5)
    assert all(way.boxes[0].bottom > view.box.top for way in found)
    assert max(way.boxes[0].bottom for way in found) < view.box.top + 80.0


def test_groups_face_the_view_into_which_they_open():
    plan = sized()
    shown = views(plan)
    assert list(groups_facing(shown["motor_end"], plan.features)) == ["motor_threads"]
    assert list(groups_facing(shown["section"], plan.features)) == []


def test_axes_reach_past_the_hole():
    plan = sized()
    view = views(plan)["front"]
    hole = next(f for f in plan.features if f.kind == "counterbored_hole")
    x, _ = view.point(*hole.position)
    line = next(s for s in centre_lines(view, plan).strokes if isinstance(s, Line) and math.isclose(s.start[0], x)
                and s.start[0] == s.end[0])  # fmt: skip
    assert min(line.start[1], line.end[1]) < view.box.bottom
    assert max(line.start[1], line.end[1]) > view.box.top
