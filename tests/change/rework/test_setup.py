"""Tests of datums: what is cut is never what the work is trued up to."""

import pytest

from blockgen.change.rework.data import Operation
from blockgen.change.rework.setup import setup
from tests.change import blocks


def told(*bored, shift=0.0):
    todo = [Operation("bore", "", {"fit": "H7"}, (name,)) for name in bored] or [Operation("face", "")]
    return " ".join(setup(blocks.old(), todo, shift))


@pytest.mark.parametrize("shift", [0.0, 2.0])
def test_a_bearing_bore_that_is_cut_alone_is_bored_on_the_axis_of_the_motor_bore(shift):
    text = told("bearing_bore", shift=shift)
    assert "sweep the motor bore" in text or "motor bore swept" in text
    assert "bearing bore (datum B) stay" not in text
    assert "bearing bore (datum B) swept" not in text


def test_a_motor_bore_is_bored_on_the_axis_of_the_bearing_bore():
    assert "Bearing seat (datum A) and bearing bore (datum B) stay: sweep the bore" in told("motor_bore")


def test_both_bores_are_cut_without_unclamping():
    text = told("bearing_bore", "motor_bore")
    assert "cut both without unclamping" in text
    assert "(datum B) stay" not in text


def test_a_seat_that_is_faced_is_no_datum_that_stays():
    assert "datum A) is cut anew" in told(shift=2.0)
    assert "datum A) and" not in told(shift=2.0)


def test_coaxiality_is_told_wherever_a_seat_is_bored_and_nowhere_else():
    assert "one clamping: what the sweep leaves" in told("motor_bore")
    assert "what the sweep leaves" not in told()


def test_what_is_only_measured_or_coated_is_not_set_up():
    assert not list(setup(blocks.old(), [Operation("measure", ""), Operation("coat", "")], 0.0))
