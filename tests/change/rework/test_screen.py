"""Tests of the screen without a kernel: what may only grow or shrink, and which holes may stay."""

import math
from dataclasses import replace

import pytest
from hypothesis import given
from hypothesis import strategies as st

from blockgen.change.rework.operations import operations
from blockgen.change.rework.screen import corner_lacks, faced, screen
from blockgen.plan import Pocket, Segment
from tests.change import blocks


def with_length(plan, length):
    """Return a plan whose motor end stands elsewhere, its cavities with it."""
    by = length - plan.body.length
    moved = [
        replace(f, position=(f.position[0] + by, *f.position[1:])) if f.face == "motor_seat" else f
        for f in plan.features
    ]
    return replace(plan, body=replace(plan.body, length=length), features=tuple(moved))


def with_bore(plan, diameter):
    """Return a plan whose motor bore has another diameter."""
    by = (diameter - plan.feature("motor_bore").diameter) / 2

    def wider(s):
        if s.part in ("mouth_chamfer", "bore"):
            return Segment(s.part, s.start, s.start_radius + by, s.end, s.end_radius + by)
        return replace(s, start_radius=s.start_radius + by) if s.part == "shoulder" else s

    features = [
        replace(f, diameter=diameter, profile=tuple(map(wider, f.profile))) if f.id == "motor_bore" else f
        for f in plan.features
    ]
    return replace(plan, features=tuple(features))


@given(st.floats(-6, 6), st.floats(-6, 6))
def test_length_only_shrinks_and_bores_only_grow(longer, wider):
    """It is necessary: whatever asks for more length or a narrower bore is refused, with the amount."""
    old = blocks.old()
    new = with_bore(with_length(old, old.body.length + longer), 70 + wider)
    ids = {reason.id: reason for reason in screen(old, new, 0.0).reasons}
    assert ("grow" in ids) == (longer > 1e-6)
    assert ("bore" in ids) == (wider < -1e-6)
    if "grow" in ids:
        assert ids["grow"].amount == pytest.approx(longer, abs=1e-6)
    if "bore" in ids:
        assert ids["bore"].amount == pytest.approx(-wider / 2, abs=1e-6)


@given(st.floats(0, 6), st.floats(0, 6))
def test_what_is_faced_off_both_ends_is_the_lost_length(shift, motor_end):
    old = blocks.old()
    body = replace(old.body, length=old.body.length - shift - motor_end)
    cuts = faced(old, body, shift)
    assert cuts["bearing_seat"] == pytest.approx(shift, abs=1e-6)
    assert cuts["motor_seat"] == pytest.approx(motor_end, abs=1e-6)


def test_a_block_against_itself_has_every_feature_already():
    seen = screen(blocks.old(), blocks.old(), 0.0)
    assert {made.state for made in seen.made} == {"same"}
    assert (seen.reasons, seen.leftovers, seen.staying) == ((), (), ())


def test_a_higher_shaft_moves_both_bores():
    old = blocks.old()
    raised = {**old.records, "shaft_height": replace(old.records["shaft_height"], value=66.0)}
    reasons = screen(old, replace(old, records=raised), 0.0).reasons
    assert [(r.id, r.amount) for r in reasons] == [("height_of_shaft", 1.0)]


def test_a_hole_that_is_not_wanted_any_longer_stays_where_its_walls_are_sound():
    old = blocks.old()
    without = tuple(f for f in old.features if f.id != "motor_thread_1")
    seen = screen(old, replace(old, features=without), 0.0)
    assert [left.id for left in seen.leftovers] == ["motor_thread_1"]
    assert seen.leftovers[0].sound
    assert [f.id for f in seen.staying] == ["motor_thread_1"]


def test_a_smaller_thread_cannot_stand_where_a_larger_one_does():
    old = blocks.old()
    hole = old.feature("motor_thread_1")
    narrow = tuple(replace(s, start_radius=s.start_radius - 0.9, end_radius=s.end_radius - 0.9) for s in hole.profile)
    fine = replace(hole, thread="M4-6H", diameter=hole.diameter - 1.8, profile=narrow)
    features = tuple(fine if f.id == hole.id else f for f in old.features)
    assert [r.id for r in screen(old, replace(old, features=features), 0.0).reasons] == ["hole"]


def test_a_thread_is_drilled_away_by_a_larger_one():
    old = blocks.old()
    hole = old.feature("motor_thread_1")
    wide = tuple(replace(s, start_radius=s.start_radius + 1, end_radius=s.end_radius + 1) for s in hole.profile)
    coarse = replace(hole, thread="M8-6H", diameter=hole.diameter + 2, profile=wide)
    features = tuple(coarse if f.id == hole.id else f for f in old.features)
    seen = screen(old, replace(old, features=features), 0.0)
    assert not seen.reasons
    assert {m.state for m in seen.made if m.feature.id == hole.id} == {"grown"}


def with_window(plan, radius, *, towards_motor=0.0):
    """Return a plan whose window has another corner radius and is longer, or open further to each side."""
    window = plan.feature("window")
    pocket = replace(
        window.pocket, corner_radius=radius, high=(window.pocket.high[0] + towards_motor, *window.pocket.high[1:])
    )
    others = [f for f in plan.features if f.id != "window"]
    return replace(plan, features=(*others, replace(window, pocket=pocket)))


def test_sharper_corners_than_asked_for_lack_material():
    """Between two arcs that touch the same sides there is (sqrt 2 - 1) times what the radii differ by."""
    old = blocks.old()
    reasons = screen(with_window(old, 8.0), with_window(old, 11.0), 0.0).reasons
    assert [reason.id for reason in reasons] == ["window"]
    assert reasons[0].amount == pytest.approx((math.sqrt(2) - 1) * 3, abs=1e-6)


def test_rounder_corners_are_milled():
    old = blocks.old()
    seen = screen(with_window(old, 11.0), with_window(old, 8.0), 0.0)
    assert seen.reasons == ()
    todo = operations(old, with_window(old, 8.0), seen.made, 0.0)
    assert todo[0].text == "mill the corners of the window to radius 8"


@given(st.floats(4, 12), st.floats(4, 12), st.floats(0, 12), st.floats(0, 12))
def test_corners_lack_what_points_of_the_old_corner_show(inner, outer, along, across):
    """Points of the old corner are laid into the new one and looked at one by one."""
    over = -math.inf
    for step in range(91):
        angle = math.radians(step)
        x, y = (by + inner - inner * part for by, part in ((along, math.cos(angle)), (across, math.sin(angle))))
        if x < outer and y < outer:
            over = max(over, math.hypot(outer - x, outer - y) - outer)
    low, high = (0.0, 0.0, 0.0), (50.0, 50.0, 50.0)
    new = Pocket("z", low, high, outer, open_low=True, open_high=True)
    old = Pocket("z", (along, across, 0.0), (50.0 - along, 50.0 - across, 50.0), inner, open_low=True, open_high=True)
    lacks = corner_lacks(old, new)
    assert (lacks > 0.01) <= (over > 0.0)
    assert (over > 0.01) <= (lacks > 0.0)


def test_a_thread_whose_mouth_was_faced_away_is_still_as_wide_as_its_thread():
    """M6 stands 6 mm wide though its chamfer went with the face: a hole of 5.5 mm does not drill it away."""
    old = blocks.old()
    hole = old.feature("motor_thread_1")
    smaller = replace(hole, thread="M5-6H", diameter=5.5, profile=tuple(_wider(s, 0.25) for s in hole.profile))
    short = with_length(old, old.body.length - 2)
    mine = replace(smaller, position=short.feature("motor_thread_1").position)
    others = [f for f in short.features if f.id != "motor_thread_1"]
    reasons = screen(old, replace(short, features=(*others, mine)), 0.0).reasons
    assert "its thread is not drilled away" in " ".join(reason.text for reason in reasons)


def _wider(segment, by):
    return replace(segment, start_radius=segment.start_radius + by, end_radius=segment.end_radius + by)
