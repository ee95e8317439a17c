"""Thrust of the drive against the thrust given."""

import math

import pytest

from blockgen.checks.drive import drive
from tests.sizing.strategies import sized


def only(**changes):
    return next(iter(drive(sized(**changes))))


@pytest.mark.parametrize(("torque", "word"), [(4, "pass"), (8, "warn")])
def test_a_strong_motor_is_a_warning(torque, word):
    finding = only(motor={"peak_torque": torque}, screw={"lead": 10, "efficiency": 0.9})
    assert finding.verdict == word
    assert finding.value == pytest.approx(2 * math.pi * 0.9 * torque * 100, rel=1e-4)
    assert finding.limit == 3000


@pytest.mark.parametrize("key", ["lead", "efficiency", "thrust"])
def test_every_value_is_needed(key):
    values = {"lead": 10, "efficiency": 0.9, "thrust": 3000}
    del values[key]
    values.setdefault("thrust", None)
    assert only(screw=values).missing == (f"screw.{key}",)
