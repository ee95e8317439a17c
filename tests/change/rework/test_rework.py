"""Tests of the verdict: what can be re-machined, by which operations, and how the boolean proves it."""

import math
from functools import cache

import pytest

from blockgen import load_spec, size
from blockgen.change.rework.data import Attempt
from blockgen.change.rework.fit import fitted
from blockgen.change.rework.operations import operations
from blockgen.change.rework.rework import rework, rework_and_adapter
from blockgen.change.rework.screen import screen
from tests.change import blocks
from tests.examples import EXAMPLES


def words(found):
    return [operation.text for operation in found.operations]


def test_a_block_reworked_to_itself_needs_nothing():
    found = rework(blocks.old(), blocks.old(), prove=False)
    assert found.feasible
    assert found.attempt.how == "nothing"
    assert (found.operations, found.leftovers, found.reasons, found.setup, found.obsolete) == ((),) * 5


def test_a_wider_pilot_asks_for_boring_only():
    found = rework(blocks.old(), blocks.other(pilot_diameter=75), prove=False)
    assert found.feasible
    assert words(found) == [
        "bore the motor seat to 75 H7 (+0.030/+0.000), depth 4",
        "break new outer edges 0.5 mm, hole mouths 0.5 mm, deburr",
    ]
    assert found.operations[0].features == ("motor_bore",)


def test_a_shorter_shaft_asks_for_facing_and_for_the_depth_of_the_bore_again():
    found = rework(blocks.old(), blocks.other(shaft_length=38), prove=False)
    assert found.feasible
    assert words(found)[:2] == [
        "face 2 mm off the motor end; length 108 becomes 106",
        "deepen the motor seat 70 H7 (+0.030/+0.000) to depth 4",
    ]
    assert found.attempt.shift == 0


@cache
def turned_motor():
    """Return the verdict on a wider circle of holes, proved."""
    return rework(blocks.round_flange(), blocks.round_flange(bolt_circle=94))


@pytest.mark.slow
def test_a_motor_is_turned_until_old_holes_stand_clear():
    found = turned_motor()
    assert found.feasible
    assert found.attempt.turn == 15
    assert sum(int(op.values["count"]) for op in found.operations if op.id == "drill_tap") == 4
    assert {left.id for left in found.leftovers} == {f"motor_thread_{i}" for i in (1, 2, 3, 4)}
    assert all(left.sound and left.wall >= left.required for left in found.leftovers)
    assert any("turned by 15 deg" in text for text in found.departures)


@pytest.mark.slow
def test_the_wall_of_a_leftover_hole_is_that_of_a_hand_calculation():
    found = turned_motor()
    apart = math.dist((45.0, 0.0), (47 * math.cos(math.radians(15)), 47 * math.sin(math.radians(15))))
    assert found.leftovers[0].wall == pytest.approx(apart - 6.0, abs=1e-3)  # two chamfers of diam 6 at the seat


@pytest.mark.slow
def test_a_square_motor_has_no_other_angle_and_its_old_holes_are_too_near():
    found = rework(blocks.old(), blocks.other(bolt_circle=94), prove=False)
    assert not found.feasible
    assert {reason.id for reason in found.reasons} >= {"too_near"}
    assert not found.operations


def test_a_narrower_pilot_would_need_material():
    change = rework_and_adapter(blocks.old(), blocks.other(pilot_diameter=60), prove=False)
    assert not change.rework.feasible
    assert [(r.id, r.amount, r.where) for r in change.rework.reasons] == [("bore", 5.0, "motor_bore")]


def test_adapters_are_sought_only_where_rework_fails():
    assert not rework_and_adapter(blocks.old(), blocks.other(pilot_diameter=75), prove=False).adapters
    assert rework_and_adapter(blocks.old(), blocks.other(pilot_diameter=60), prove=False).adapters


def test_a_longer_shaft_would_need_length():
    found = rework(blocks.old(), blocks.other(shaft_length=52, bolt_circle=100, flange_size=100), prove=False)
    assert ("grow", 8.0, "motor_seat") in {(r.id, r.amount, r.where) for r in found.as_drawn}


@pytest.mark.slow
def test_the_boolean_proves_a_grown_bore_to_the_volume_of_its_ring():
    found = rework(blocks.old(), blocks.other(pilot_diameter=75))
    assert found.feasible
    assert found.proof is not None
    assert found.proof.added == 0
    by_hand = math.pi / 4 * (75**2 - 70**2) * 4 + cone(37.5) - cone(35.0)
    assert found.proof.removed == pytest.approx(by_hand, abs=0.01)


def cone(radius):
    """Return what the chamfer of 0.5 mm at a bore's mouth takes beyond the bore, mm3."""
    return math.pi * 0.5 / 3 * ((radius + 0.5) ** 2 + (radius + 0.5) * radius + radius**2) - math.pi * radius**2 * 0.5


@pytest.mark.slow
def test_the_boolean_proves_a_turned_pattern_with_the_old_holes_left_open():
    found = turned_motor()
    assert found.feasible
    assert found.proof is not None
    assert found.proof.added <= found.proof.tolerance
    assert found.proof.removed > 1000


@pytest.mark.slow
def test_the_boolean_tells_what_a_narrower_pilot_lacks():
    found = rework(blocks.old(), blocks.other(pilot_diameter=60))
    assert found.proof is not None
    by_hand = math.pi / 4 * (70**2 - 60**2) * 4 + cone(35.0) - cone(30.0)
    assert found.proof.added == pytest.approx(by_hand, abs=0.01)
    assert found.proof.pieces[0].box == pytest.approx((104.0, -35.5, 29.5, 108.0, 35.5, 100.5), abs=1e-3)


@pytest.mark.slow
def test_a_volume_that_the_screen_does_not_see_refuses_the_rework(monkeypatch):
    from blockgen.change.rework import attempts as rework_attempts
    from blockgen.change.rework.screen import Screen, screen

    def blind(old, target, shift):
        seen = screen(old, target, shift)
        return Screen((), (), seen.made, ())

    monkeypatch.setattr(rework_attempts, "screen", blind)
    found = rework(blocks.old(), blocks.other(pilot_diameter=60))
    assert not found.feasible
    assert [reason.id for reason in found.reasons] == ["volume"]


@pytest.mark.parametrize("path", EXAMPLES, ids=lambda path: path.stem)
def test_every_example_reworked_to_itself_needs_nothing(path):
    plan = size(load_spec(path))
    found = rework(plan, plan, prove=False)
    assert (found.feasible, found.attempt.how, found.operations) == (True, "nothing", ())


@pytest.mark.slow
def test_what_is_faced_off_the_bearing_end_lies_at_its_end():
    """The slab of 2 mm, less the bore and the threads that run through it, and holes that go on deeper."""
    from blockgen.geometry.difference import added_and_removed

    old = blocks.old()
    target = fitted(old, blocks.other(shaft_length=38), Attempt("fitted", 0.0, 2.0, 106.0))
    added, removed = added_and_removed(old, target, 2.0, screen(old, target, 2.0).staying)
    assert added == ()
    assert removed[0].box[0] == pytest.approx(0.0, abs=1e-6)
    assert removed[0].box[3] <= 2.5 + 1e-6
    assert removed[0].volume == pytest.approx((121 * 107 - math.pi / 4 * 50**2) * 2, rel=0.02)


def test_facing_the_bearing_end_cuts_its_datum_anew():
    old = blocks.old()
    target = fitted(old, blocks.other(shaft_length=38), Attempt("fitted", 0.0, 2.0, 106.0))
    todo = operations(old, target, screen(old, target, 2.0).made, 2.0)
    assert todo[0].text == "face 2 mm off the bearing end; length 108 becomes 106"
    assert any(op.text.startswith("deepen 4 holes to M6-6H") and "bearing seat" in op.text for op in todo)
