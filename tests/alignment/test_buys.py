"""What tightening buys agrees with doing it."""

import pytest

from blockgen.alignment.chain import align
from tests.sizing.strategies import sized


def test_a_buy_is_what_the_tighter_spec_gives():
    bought = {b.step.id: b for b in align(sized()).buys}["motor_spigot_runout"]
    done = align(sized(motor={"spigot_runout": 0.04}))
    assert bought.p95 == pytest.approx(done.offset.p95, rel=1e-5)
    assert bought.gain == pytest.approx(align(sized()).offset.p95 - done.offset.p95, rel=1e-3)


def test_the_motor_s_class_is_one_decision():
    bought = {p.id: p for p in align(sized()).purchases}["motor class"]
    assert set(bought.causes) == {"motor_spigot_runout", "motor_face_runout", "motor_shaft_runout"}
    done = align(sized(motor={"spigot_runout": 0.04, "face_runout": 0.04, "shaft_runout": 0.021}))
    assert bought.p95 == pytest.approx(done.offset.p95, rel=1e-5)


def test_a_finer_bore_is_what_the_tighter_spec_gives():
    bought = {p.id: p for p in align(sized()).purchases}["block.bore_fit"]
    assert bought.p95 == pytest.approx(align(sized(block={"bore_fit": "H6"})).offset.p95, rel=1e-5)


def test_the_greatest_gain_comes_first_and_none_is_a_loss():
    for found in (align(sized()).buys, align(sized()).purchases):
        gains = [b.gain for b in found]
        assert gains == sorted(gains, reverse=True)
        assert gains[-1] > 0


def test_an_alike_bearing_and_motor_end_keep_their_own_places():
    plan = sized(motor={"spigot_runout": 0.01, "face_runout": 0.01, "shaft_runout": 0.01})
    assert len(align(plan).buys) == len(plan.contributors)
