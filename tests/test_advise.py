"""Advice: changes that hold and gain, none that breaks a check, the best for its price first."""

from __future__ import annotations

from dataclasses import replace

import pytest

from blockgen.advise import NOISE, Advice, Change, Worth, advise, changes, chosen
from blockgen.pipeline import design
from tests.examples import STEPPER

BEFORE = Worth(100.0, 1e-5, 500.0, 2.0)


def one(words, **now):
    return Advice(Change(words, {}), replace(BEFORE, **now), BEFORE, ())


def test_most_gain_for_its_mass_comes_first():
    dear, cheap = one("dear", stiffness=120.0, mass=2.4), one("cheap", stiffness=115.0, mass=2.05)
    assert [a.change.words for a in chosen([dear, cheap])] == ["cheap", "dear"]


def test_what_gains_nothing_or_loses_is_left_out():
    assert chosen([one("noise", stiffness=101.0), one("softer", stiffness=120.0, slope=1.2e-5)]) == []


def test_mass_saved_at_no_loss_counts():
    assert [a.change.words for a in chosen([one("lighter", mass=1.8), one("weak", mass=1.8, stiffness=90.0)])] == [
        "lighter"
    ]


def test_changes_touch_walls_window_outside_and_screws():
    keys = {key for change in changes(design(STEPPER).plan) for key in change.values}
    assert {"block.bearing_wall", "block.motor_wall", "block.window_floor", "base.hole_positions"} <= keys


@pytest.mark.slow
def test_advice_on_a_block_holds():
    pytest.importorskip("ngsolve")
    made = design(STEPPER)
    found = advise(made.spec, made.plan)
    assert 0 < len(found) <= 5
    for advice in found:
        assert min(advice.gains) > -NOISE
        assert max(advice.gains) > NOISE or advice.heavier < 0
