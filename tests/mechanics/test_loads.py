"""Sums of forces and moments."""

import math

import pytest
from hypothesis import given
from hypothesis import strategies as st

from blockgen.mechanics.loads import Force, resultant, thrust_of_torque, weight

number = st.floats(-1e4, 1e4)
vectors = st.tuples(number, number, number)


def test_a_thrust_at_shaft_height_tilts_about_y():
    total, moment = resultant([Force((3000.0, 0.0, 0.0), (0.0, 0.0, 65.0))], (50.0, 0.0, 0.0))
    assert total == (3000.0, 0.0, 0.0)
    assert moment == pytest.approx((0.0, 195.0, 0.0))


def test_a_thrust_turns_a_pattern_that_stands_aside():
    _, moment = resultant([Force((3000.0, 0.0, 0.0), (0.0, 0.0, 65.0))], (50.0, 10.0, 0.0))
    assert moment[2] == pytest.approx(30.0)


def test_a_motor_that_hangs_out_presses_the_far_end():
    _, moment = resultant([Force((0.0, 0.0, -50.0), (160.0, 0.0, 65.0))], (60.0, 0.0, 0.0))
    assert moment == pytest.approx((0.0, 5.0, 0.0))


@given(vectors, vectors, vectors)
def test_a_force_through_the_place_has_no_moment(vector, place, along):
    assert resultant([Force(vector, place)], place)[1] == (0.0, 0.0, 0.0)
    pair = [Force(vector, place), Force(tuple(-v for v in vector), place)]
    total, moment = resultant(pair, along)
    assert max(map(abs, total)) < 1e-6
    assert max(map(abs, moment)) < 1e-6


def test_weight():
    assert weight(10.0) == pytest.approx(98.0665)


def test_work_of_one_turn():
    """10 N*m at 10 mm lead without losses: 2 pi kN."""
    assert thrust_of_torque(10.0, 10.0, 1.0) == pytest.approx(2000 * math.pi)
    assert thrust_of_torque(10.0, 10.0, 0.9) < thrust_of_torque(10.0, 5.0, 0.9)
