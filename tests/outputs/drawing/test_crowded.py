"""Small chamfers are left out of the views, what is wide enough to be seen stays, and so does a relief."""

import pytest

from blockgen.geometry.curves import ArcCurve, Segment
from blockgen.outputs.drawing.crowded import mouth_chamfer, sight, uncrowded
from tests.outputs.drawing.test_assign import views
from tests.sizing.strategies import sized


@pytest.fixture(scope="module")
def plan():
    return sized()


def kept(plan, name, curve, scale=1.0):
    return uncrowded((curve,), views(plan, scale)[name], plan)


def test_inner_edges_of_small_chamfers_are_left_out_at_each_side(plan):
    length, height = plan.body.length, plan.body.height
    for line in (
        Segment((0.0, 0.5), (length, 0.5)),
        Segment((0.5, 0.0), (0.5, height)),
        Segment((0.0, height - 0.5), (length, height - 0.5)),
        Segment((length - 0.5, height), (length - 0.5, 0.0)),
    ):
        assert kept(plan, "front", line) == ()


def test_outlines_and_edges_elsewhere_stay(plan):
    for line in (Segment((0.0, 0.0), (plan.body.length, 0.0)), Segment((0.0, 20.0), (50.0, 20.0))):
        assert kept(plan, "front", line) == (line,)


def test_chamfers_that_are_wide_on_paper_stay():
    plan = sized(block={"edge_chamfer": 1.0})
    line = Segment((0.0, 1.0), (plan.body.length, 1.0))
    assert kept(plan, "front", line) == (line,)
    assert kept(plan, "front", line, 0.5) == ()


def test_the_chamfered_corner_of_the_outline_stays_and_the_edges_within_it_go(plan):
    assert kept(plan, "front", Segment((0.0, 0.5), (0.5, 0.0)))
    assert kept(plan, "front", Segment((0.25, 0.25), (0.5, 0.5))) == ()


def test_the_mouth_of_a_thread_goes_and_its_drill_stays(plan):
    hole = next(f for f in plan.features if f.thread and f.face == "motor_seat")
    centre = hole.position[1:]
    assert mouth_chamfer(hole) > 0
    mouth, drill = (ArcCurve(centre, r, 0.0, 360.0) for r in (hole.profile[0].start_radius, hole.diameter / 2))
    for scale in (1.0, 5.0):
        assert uncrowded((mouth, drill), views(plan, scale)["motor_end"], plan) == (drill,)


def test_the_mouth_of_a_bore_stays_where_there_is_room_for_it(plan):
    bore = plan.feature("motor_bore")
    mouth = ArcCurve(bore.position[1:], bore.profile[0].start_radius, 0.0, 360.0)
    assert kept(plan, "motor_end", mouth) == ()
    assert kept(plan, "motor_end", mouth, 2.0) == (mouth,)
    assert kept(plan, "top", mouth) == (mouth,)


def test_the_roof_of_a_relief_stays_of_an_edge_that_runs_on_as_a_chamfer():
    plan = sized(block={"relief": 0.5})
    box = next(f.pocket for f in plan.features if f.kind == "relief")
    whole = Segment((0.0, 0.5), (plan.body.length, 0.5))
    assert kept(plan, "front", whole) == (Segment((box.low[0], 0.5), (box.high[0], 0.5)),)


def test_rounded_corners_lose_their_chamfer_in_the_top_view():
    plan = sized(block={"outer_fillet": 4})
    centre = (4.0, plan.body.width / 2 - 4.0)
    outer, inner = (ArcCurve(centre, radius, 90.0, 180.0) for radius in (4.0, 3.5))
    assert uncrowded((outer, inner), views(plan)["top"], plan) == (outer,)


def test_one_looks_against_the_normal_of_the_sheet():
    assert sight("front") == (0.0, -1.0, 0.0)
    assert sight("top") == (0.0, 0.0, 1.0)
    assert sight("motor_end") == (1.0, 0.0, 0.0)
    assert sight("bearing_end") == (-1.0, 0.0, 0.0)
