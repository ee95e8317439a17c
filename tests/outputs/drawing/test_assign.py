"""Which view shows what: feet measure what the plan says, targets lie on the edges they mean."""

import math

import pytest

from blockgen.outputs.drawing import assign
from blockgen.outputs.drawing.views import View, extent
from tests.sizing.strategies import sized
from tests.sizing.test_annotations import WAYS


def views(plan, scale=1.0):
    body, found = plan.body, {}
    for number, name in enumerate(("front", "section", "top", "motor_end", "bearing_end")):
        low, size = extent(name, body.length, body.width, body.height)
        found[name] = View(name, (300.0 * number, 50.0), low, size, scale)
    return found


@pytest.mark.parametrize("way", WAYS)
@pytest.mark.parametrize("scale", [1.0, 0.5])
def test_feet_are_as_far_apart_as_the_plan_says(way, scale):
    plan = sized(**WAYS[way])
    found = list(assign.spans(plan, views(plan, scale)))
    for _, span in found:
        axis = 1 if span.angle else 0
        apart = abs(span.first[axis] - span.second[axis]) / scale
        assert apart == pytest.approx(span.note.value, abs=1e-9), span.note.id
    assert {span.note.id for _, span in found} == {n.id for n in plan.annotations if n.kind == "distance"}


@pytest.mark.parametrize("way", WAYS)
def test_feet_lie_within_the_outline(way):
    plan = sized(**WAYS[way])
    for view, span in assign.spans(plan, views(plan)):
        for x, y in (span.first, span.second):
            assert view.box.left - 1e-9 <= x <= view.box.right + 1e-9
            assert view.box.bottom - 1e-9 <= y <= view.box.top + 1e-9


def test_a_bore_is_as_wide_as_it_is_and_opens_outwards():
    plan = sized()
    section = views(plan)["section"]
    for end, side, x in (("bearing", -1, section.box.left), ("motor", 1, section.box.right)):
        bore = assign.bore_of(plan, section, end)
        assert bore.high[1] - bore.low[1] == pytest.approx(plan.number(f"{end}_bore"))
        assert (bore.side, bore.low[0]) == (side, pytest.approx(x))


def test_leaders_to_the_base_keep_off_a_relief():
    plan = sized(block={"relief": 0.5})
    relief = next(f.pocket for f in plan.features if f.kind == "relief")
    targets = assign.face_targets(plan, views(plan)["front"], "base")
    assert targets
    for target in targets:
        assert target.centre[1] == 50.0
        assert not relief.low[0] < target.centre[0] < relief.high[0]


def test_leaders_to_a_seat_keep_off_its_bore():
    plan = sized()
    section = views(plan)["section"]
    for face in ("bearing_seat", "motor_seat"):
        bore = assign.bore_of(plan, section, face.removesuffix("_seat"))
        for target in assign.face_targets(plan, section, face):
            assert not bore.low[1] <= target.centre[1] <= bore.high[1]


@pytest.mark.parametrize("way", ["usual", "across", "fillet"])
def test_arcs_of_corners_touch_the_walls(way):
    plan = sized(**WAYS[way])
    shown = views(plan)
    pocket = next(f.pocket for f in plan.features if f.kind == "window")
    view = shown["front" if pocket.axis == "y" else "top"]
    found = assign.corner_targets(view, plan)
    assert len({target.centre for target in found}) == 4
    for target in found:
        assert target.radius == pytest.approx(pocket.corner_radius)
        assert math.hypot(*target.normal) == pytest.approx(1.0)
    for target in assign.fillet_targets(view, plan) if way == "fillet" else ():
        gaps = [abs(target.centre[0] - x) for x in (view.box.left, view.box.right)]
        assert min(gaps) == pytest.approx(plan.body.outer_fillet)


def test_notes_come_in_the_order_asked_for_and_missing_ones_are_left_out():
    found = assign.notes_of(sized(), "base.flatness", "nothing.there", "block.width")
    assert [note.id for note in found] == ["base.flatness", "block.width"]
