"""Tests of sizing a new spec on to the block that exists."""

import pytest

from blockgen.change.rework.data import Attempt
from blockgen.change.rework.fit import fitted, specified, turned, turns
from blockgen.record import Ledger
from blockgen.sizing.mating import hole_positions
from blockgen.sizing.size import plan_from
from tests.change import blocks


def test_a_plan_is_sized_again_from_its_own_records():
    assert plan_from(specified(blocks.old())) == blocks.old()


def test_what_stands_there_is_kept():
    old, new = blocks.old(), blocks.other(shaft_length=38)
    plan = fitted(old, new, Attempt("fitted", 0.0, 0.0, 106.0))
    for key in ("width", "height", "bearing_wall", "window_width", "window_length", "window_corner_radius"):
        assert plan.number(key) == old.number(key)
    assert plan.records["base_pattern"].value == old.records["base_pattern"].value
    assert plan.number("motor_wall") == old.number("motor_wall") - 2


def test_what_is_faced_off_the_bearing_end_moves_the_base_screws():
    old = blocks.old()
    plan = fitted(old, blocks.other(shaft_length=38), Attempt("fitted", 0.0, 2.0, 106.0))
    assert plan.number("bearing_wall") == old.number("bearing_wall") - 2
    before, after = old.records["base_pattern"].value, plan.records["base_pattern"].value
    assert [x - 2 for x, _ in before] == pytest.approx([x for x, _ in after])


@pytest.mark.parametrize("turn", [5.0, 90.0, -30.0])
def test_turned_holes_stay_on_their_circle(turn):
    plan = blocks.round_flange()
    records = turned(specified(plan), plan, turn)
    places = hole_positions(Ledger(records.values()), "motor")
    assert [(y**2 + z**2) ** 0.5 for y, z in places] == pytest.approx([45.0] * 4)


def test_a_quarter_turn_of_four_holes_is_not_tried():
    assert not {90.0, -90.0, 180.0} & set(turns(blocks.round_flange()))
    assert {5.0, -5.0, 45.0} <= set(turns(blocks.round_flange()))


def test_no_two_turns_give_the_same_pattern():
    found = turns(blocks.round_flange())
    assert len(found) == 90 / 5 - 1


def test_a_square_flange_that_is_turned_takes_the_room_of_its_diagonal():
    plan = blocks.old()
    records = turned(specified(plan), plan, 45.0)
    assert records["motor.flange_width"].value == pytest.approx(80 * 2**0.5, abs=1e-5)
