"""Turning the motor on its seat."""

import math

import pytest

from blockgen.evidence.clocking import clocking, motor_holes, turns_of
from tests.evidence.samples import made, measured, vectors

PLAN = made().plan


def ring(*angles, radius=45):
    return tuple((radius * math.cos(math.radians(a)), radius * math.sin(math.radians(a))) for a in angles)


@pytest.mark.parametrize(
    ("holes", "turns"),
    [
        (ring(45, 135, 225, 315), (0, 90, 180, 270)),
        (ring(30, 150, 210, 330), (0, 180)),
        (ring(*range(0, 360, 60)), (0, 60, 120, 180, 240, 300)),
        (ring(0, 120, 240), (0, 120, 240)),
        (ring(10, 100, 200), (0,)),
        (ring(0), (0,)),
        ((), (0,)),
    ],
)
def test_turns_of_patterns(holes, turns):
    assert turns_of(holes) == pytest.approx(turns)


@pytest.mark.parametrize("name", ["servo", "stepper", "large"])
def test_the_examples_have_four(name):
    holes = motor_holes(made(name).plan)
    assert len(holes) == 4
    assert turns_of(holes) == pytest.approx((0, 90, 180, 270))


def test_nothing_is_told_without_both_vectors():
    values = vectors()
    del values["motor.face_slope_y"], values["motor.face_slope_z"]
    found = clocking(PLAN, measured(values))
    assert (found.turns, found.best) == ((), None)
    assert "motor.face_slope_y, motor.face_slope_z" in found.reason
    assert "spigot" not in found.reason


def test_the_best_turn_makes_up_for_the_block():
    """The bore stands 0.03 to the right, the shaft 0.03 above its spigot: a quarter turn brings it to the left."""
    values = vectors(motor_bore__offset_y=(0.03, 0.001), motor__spigot_z=(0.03, 0.001))
    found = clocking(PLAN, measured(values))
    assert found.best.degrees == pytest.approx(90)
    assert found.best.result.known_offset == pytest.approx((0, 0), abs=1e-9)
    worst = max(found.turns, key=lambda turn: turn.result.offset.p95)
    assert worst.degrees == pytest.approx(270)


def test_the_first_turn_wins_where_all_are_alike():
    found = clocking(PLAN, measured(vectors()))
    assert found.best.degrees == 0
    assert len(found.turns) == 4
