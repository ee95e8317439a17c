"""Tools of every kind of hole: sizes come from the feature, sides from how deep it is."""

import pytest

from blockgen.making.cut import groups
from blockgen.making.holes import hole_cuts
from tests.sizing.strategies import sized


def cuts(name, **changes):
    plan = sized(**changes)
    group = next(group for group in groups(plan) if group.name == name)
    return group.first, list(hole_cuts(plan, group))


def test_blind_thread():
    hole, made = cuts("bearing_threads")
    assert [cut.tool.split()[0] for cut in made] == ["spot", "drill", "tap"]
    assert made[1].reach == hole.depth
    assert made[2].tool == "tap M6 6H, spiral flutes"
    assert f"full thread {hole.thread_depth:g}" in made[2].what


def test_through_thread_pushes_its_chips_ahead():
    hole, made = cuts("motor_threads")
    assert hole.through
    assert made[2].tool == "tap M6 6H, spiral point"
    assert "deburr in the window" in made[2].remark


def test_grey_iron_is_tapped_with_straight_flutes():
    _, made = cuts("bearing_threads", block={"material": "EN-GJL-250"})
    assert "straight flutes" in made[2].tool


def test_unified_threads_keep_their_class():
    inch = {"bolt_hole": 5.54}
    _, made = cuts("motor_threads", motor=inch)
    assert made[2].tool.startswith("tap 10-24 UNC 2B")


def test_threads_from_below_are_cut_with_the_base_up():
    _, made = cuts("base_threads", base={"screw_from": "below"})
    assert {cut.setup for cut in made} == {"base"}


def test_clearance_holes_of_a_tapped_flange_are_drilled_from_the_seat():
    hole, made = cuts("motor_holes", motor={"bolt_hole": None, "bolt_thread": "M6", "fastening": "tapped"})
    assert [cut.tool for cut in made][1] == f"drill diam {hole.diameter:g}"
    assert "in the window for the heads" in made[1].remark


def test_counterbore_from_above_and_hole_from_above_where_it_is_short():
    hole, made = cuts("base_screws")
    assert hole.depth / hole.diameter < 10
    assert {cut.setup for cut in made} == {"top"}
    assert next(cut for cut in made if cut.tool.startswith("drill")).reach == hole.depth
    assert next(cut for cut in made if "counterbore cutter" in cut.tool).reach == hole.counterbore_depth


def test_deep_hole_is_drilled_from_the_base_and_has_no_chamfer_there():
    hole, made = cuts("base_screws", base={"screw": "M8", "shaft_height": 75})
    assert hole.depth / hole.diameter > 10
    below = [cut for cut in made if cut.setup == "base"]
    assert [cut.tool.split()[0] for cut in below] == ["spot", "drill"]
    assert below[1].reach == pytest.approx(hole.depth - hole.counterbore_depth)
    assert not any("chamfer" in cut.what for cut in below)


@pytest.mark.parametrize(("height", "word"), [(60, "D"), (115, "long tool"), (245, "ask the shop first")])
def test_deep_counterbores_are_told(height, word):
    _, made = cuts("base_screws", base={"shaft_height": height})
    assert word in next(cut for cut in made if "counterbore cutter" in cut.tool).remark


def test_dowels_are_piloted_here_and_reamed_with_the_base():
    hole, made = cuts("dowels", base={"dowels": 6})
    pilot = next(cut for cut in made if "dowel pilot" in cut.remark)
    assert (pilot.setup, pilot.tool, pilot.reach) == ("base", "drill diam 5.5", hole.depth - hole.counterbore_depth)
    ream = next(cut for cut in made if cut.tool.startswith("reamer"))
    assert (ream.setup, ream.what) == ("assembly", "ream 2 x diam 6 H7")
    assert ream.reach > hole.depth
    assert not any("H7" in cut.tool for cut in made if cut.setup != "assembly")


def test_bores_and_window_are_no_holes():
    assert cuts("window")[1] == cuts("bearing_bore")[1] == []
