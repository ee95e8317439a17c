"""Hole patterns of several motors on one seat: equal holes are one, near ones are turned apart, or it is told."""

import math

import pytest
from hypothesis import HealthCheck, given, settings
from hypothesis import strategies as st

from blockgen.errors import InfeasibleError
from blockgen.mechanics.ligaments import least_wall, required_wall
from blockgen.record import Ledger
from blockgen.sizing import family_pattern
from blockgen.sizing.family_pattern import clear, clocked, missing_wall, pattern_of, turned, united, ways
from blockgen.sizing.free_places import rule_of
from blockgen.sizing.size import plan_from
from tests.sizing.families import family_records

USUAL = settings(max_examples=40, deadline=None, derandomize=True, suppress_health_check=list(HealthCheck))
ROUND = {"flange_shape": "round", "flange_size": 124}
WIDE = {"flange_size": 88}  # as wide as may be turned by an eighth at this shaft height


def patterns(*motors):
    """Return the patterns of some motors."""
    records = family_records(list(motors))
    tables = ("motor", *(f"family.{n}" for n in range(len(motors) - 1)))
    return [pattern_of(records, table) for table in tables]


def test_equal_patterns_are_one_and_none_is_turned():
    one, other = patterns({}, {})
    assert clear(turned(one, 0), turned(other, 0))
    assert [way.angle for way in united([one, other])] == [0, 0]


def test_equal_places_with_another_thread_are_not_one_hole():
    one, other = patterns({}, {"bolt_hole": 5.5})
    assert not clear(turned(one, 0), turned(other, 0))
    # Two cylinders about one axis: the whole of both mouths and the wall between them are missing.
    assert missing_wall(turned(one, 0), turned(other, 0)) == pytest.approx(3 + 2.5 + 3)


def test_circles_far_enough_apart_need_no_turn():
    least = 45 + 3 + 2.5 + 3  # half the circle of 90, both mouths (M6, M5) and 3 mm of wall
    assert [way.angle for way in united(patterns({}, {"bolt_hole": 5.5, "bolt_circle": 2 * least, **WIDE}))] == [0, 0]


def test_a_square_flange_is_turned_by_an_eighth_where_its_corners_clear_the_base():
    near = {"bolt_hole": 5.5, "bolt_circle": 96, "flange_size": 86}
    ways_found = united(patterns({}, near))
    assert sorted(way.angle for way in ways_found) == [0, 45]
    other = next(way for way in ways_found if way.angle)
    assert other.flange.half_width == pytest.approx(other.pattern.flange.half_width * math.sqrt(2))


def test_a_square_flange_is_not_turned_into_the_base():
    low = {"flange_size": 100, "bolt_circle": 112}
    assert 45 not in [way.angle for way in ways(patterns(low)[0])]


def test_a_round_flange_turns_by_the_least_step_that_clears():
    ways_found = united(patterns({}, {**ROUND, "bolt_circle": 92, "bolt_hole": 5.5}))
    angle = ways_found[1].angle
    assert ways_found[0].angle == 0
    assert 0 < abs(angle) < 45
    assert not clear(ways_found[0], turned(ways_found[1].pattern, angle - math.copysign(5, angle)))


def test_the_same_pattern_is_not_tried_twice():
    angles = [way.angle for way in ways(patterns({})[0])]
    assert angles == [0, 45]
    spaced = {"bolt_circle": None, "bolt_spacing_y": 60, "bolt_spacing_z": 68}
    assert [way.angle for way in ways(patterns(spaced)[0])] == [0, 90, 45]


def test_turned_patterns_stand_in_the_records_and_in_words():
    records, words = clocked(family_records([{}, {"bolt_hole": 5.5, "bolt_circle": 96, "flange_size": 78}]))
    assert words == ("Motor 2 is mounted turned by 45 deg, so that its holes clear the others.",)
    places = records["family.0.bolt_positions"]
    assert places.origin == "sized"
    assert "turned by 45 deg" in places.rule
    assert all(min(abs(y), abs(z)) < 1e-6 for y, z in places.value)
    assert records["family.0.flange_width"].value == pytest.approx(78 * math.sqrt(2))
    assert "motor.bolt_positions" not in records


def test_a_single_motor_is_left_as_it_is():
    records = family_records([{}])
    assert clocked(records) == (records, ())


def test_patterns_that_no_turn_frees_are_told_with_the_wall_that_is_missing():
    many = {"bolt_count": 16, "bolt_hole": 9, **ROUND}
    with pytest.raises(InfeasibleError, match=r"on one seat: .* of wall missing") as caught:
        clocked(family_records([many, {**many, "bolt_circle": 94}]))
    (conflict,) = caught.value.conflicts
    assert conflict.keys == ("motor.bolt_circle", "family.0.bolt_circle")
    assert "16 x M8" in conflict.facts[1]
    assert conflict.deficit > 0


def test_three_that_go_by_twos_only_are_told():
    three = [{}, {"bolt_hole": 5.5, "bolt_circle": 94}, {"bolt_hole": 4.5, "bolt_circle": 86}]
    with pytest.raises(InfeasibleError, match="each two of them go") as caught:
        clocked(family_records(three))
    assert len(caught.value.conflicts[0].keys) >= 2


@pytest.mark.slow
@USUAL
@given(
    st.sampled_from((84, 88, 90, 94, 98, 104, 110)),
    st.sampled_from((4.5, 5.5, 6.6, 9)),
    st.sampled_from((4, 6, 8)),
    st.booleans(),
)
def test_what_is_called_clear_keeps_the_walls_of_the_ligament_rule_in_the_block(circle, hole, count, round_one):
    shape = {"bolt_count": count, **ROUND} if round_one else WIDE
    other = {"bolt_circle": circle, "bolt_hole": hole, **shape}
    records = family_records([{}, other])
    try:
        plan = plan_from(records, brief=True)
    except InfeasibleError:
        return
    on_seat = [f for f in plan.features if f.face == "motor_seat" and f.thread]
    rule = rule_of(plan_ledger(plan))
    for i, one in enumerate(on_seat):
        for two in on_seat[:i]:
            assert least_wall(one, two) >= required_wall(one, two, rule) - 1e-6


def plan_ledger(plan):
    """Return what the ligament rule reads of a plan."""
    return Ledger(record for key, record in plan.records.items() if key.startswith("practice."))


@USUAL
@given(st.lists(st.sampled_from((84, 90, 96, 102, 110)), min_size=2, max_size=3), st.randoms(use_true_random=False))
def test_whether_patterns_go_together_does_not_depend_on_their_order(circles, random):
    made = patterns(
        *({"bolt_circle": circle, "bolt_hole": 5.5 if i % 2 else 6.6, **WIDE} for i, circle in enumerate(circles))
    )
    shuffled = list(made)
    random.shuffle(shuffled)
    first, second = united(made), united(shuffled)
    assert (first is None) == (second is None)
    if first is not None:
        assert {(w.pattern.entry, w.angle) for w in first} == {(w.pattern.entry, w.angle) for w in second}


def test_six_round_motors_find_their_turns_after_few_trials(monkeypatch):
    asked = []
    monkeypatch.setattr(family_pattern, "clear", lambda one, other: asked.append(1) or clear(one, other))
    circles = (86, 89, 92, 95, 98, 101)
    found = united(patterns(*({**ROUND, "bolt_circle": circle, "bolt_hole": 9} for circle in circles)))
    assert all(clear(one, other) for i, one in enumerate(found) for other in found[:i])
    assert len(asked) < 10_000  # 28 660 where only what is placed already is looked at


def test_motors_with_the_same_holes_are_turned_alike():
    near = {**ROUND, "bolt_circle": 92, "bolt_hole": 5.5}
    first, second, third = united(patterns({}, near, near))
    assert second.angle == third.angle != first.angle
    assert second.flange.positions == third.flange.positions
