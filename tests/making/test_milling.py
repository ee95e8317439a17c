"""Milling: every face once, window from the sides that its depth asks for."""

from dataclasses import replace

import pytest

from blockgen.making.milling import milling_cuts, window_cuts, window_word
from tests.making.ways import WAYS
from tests.sizing.strategies import sized


def cuts(**changes):
    return list(milling_cuts(sized(**changes)))


@pytest.mark.parametrize("way", WAYS)
def test_all_faces_are_roughed_and_each_is_finished_once(way):
    groups = [cut.group for cut in cuts(**WAYS[way])]
    assert [groups.count(face) for face in ("base", "top", "sides", "seats")] == [1, 1, 1, 1]


def window(**changes):
    return [cut for cut in cuts(**changes) if cut.group == "window"]


def test_through_window_is_finished_half_from_each_side():
    rough, *finish = window()
    assert rough.setup == "rough"
    assert {cut.setup for cut in finish} == {"base", "top"}
    plan = sized()
    assert sum(cut.reach for cut in finish) == pytest.approx(plan.body.height)


def test_window_with_a_floor_comes_from_the_top():
    _, *finish = window(block={"window_floor": 30})
    assert [cut.setup for cut in finish] == ["top"]
    assert "floor to depth" in finish[0].what
    assert finish[0].reach == sized(block={"window_floor": 30}).body.height - 30


def test_window_across_comes_from_the_sides_with_them():
    made = cuts(block={"window_axis": "y"})
    assert {cut.setup for cut in made if cut.group == "window"} == {"rough", "sides"}
    assert next(cut for cut in made if cut.group == "sides").setup == "sides"
    assert next(cut for cut in cuts() if cut.group == "sides").setup == "ends"


@pytest.mark.parametrize(("over", "word"), [(3.0, "normal"), (3.1, "long cutter"), (5.0, "long"), (5.1, "difficult")])
def test_depth_over_cutter(over, word):
    assert word in window_word(sized(), over)


def test_ratio_is_depth_of_cut_over_the_cutter():
    plan = sized()
    cutter = replace(plan.records["block.cutter_diameter"], value=10.0)
    plan = replace(plan, records={**plan.records, cutter.key: cutter})
    made = list(window_cuts(plan, plan.feature("window")))
    assert made[0].ratio == pytest.approx(plan.number("window_cut_depth") / 10)
    assert {cut.tool for cut in made} == {"end mill diam 10"}


def test_base_is_skimmed_last_in_its_setup():
    made = [cut for cut in cuts(block={"relief": 0.5}) if cut.setup == "base"]
    assert max(made, key=lambda cut: cut.rank).group == "base"
    assert "relief" in {cut.group for cut in made}


def test_edges_follow_the_body():
    assert any("R 4" in cut.what for cut in cuts(block={"outer_fillet": 4}))
    assert not any("upright" in cut.what for cut in cuts())


def test_a_face_wider_than_the_largest_cutter_is_milled_in_passes():
    seats = next(cut for cut in cuts(**WAYS["heavy"]) if cut.group == "seats")
    assert seats.tool == "face mill diam 125"
    assert seats.remark.endswith("in passes")
    assert not next(cut for cut in cuts() if cut.group == "seats").remark.endswith("in passes")
