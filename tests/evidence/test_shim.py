"""Shims under the base."""

import pytest
from hypothesis import given
from hypothesis import strategies as st

from blockgen.evidence.shim import shim, shim_words
from tests.evidence.samples import made, measured

PLAN = made().plan


def found(height, slope=None, doubt=0.002):
    values = {"block.shaft_height": (height, doubt)}
    if slope is not None:
        values["bearing_seat.slope_z"] = (slope, 0.0)
    return shim(PLAN, measured(values))


def test_nothing_without_the_height():
    assert shim(PLAN, measured({"bearing_seat.slope_z": (0.1, 0.01)})) is None


def test_a_shaft_that_falls_towards_the_motor_is_lifted_more_there():
    one = found(64.97, -0.1)
    assert one.bearing_end == pytest.approx(0.03)
    assert one.motor_end == pytest.approx(0.03 + 0.1 * 113 / 1000)


@given(st.floats(64.8, 65.2), st.floats(-1, 1))
def test_after_the_shim_the_shaft_is_at_height_and_level(height, slope):
    one = found(height, slope)
    assert height + one.bearing_end == pytest.approx(65)
    assert height + slope * 113 / 1000 + one.motor_end == pytest.approx(65)


def test_words():
    assert shim_words(found(64.97, 0.0)) == (
        "shim of 0.030 mm at the bearing end (within 0.002 mm); shim of 0.030 mm at the motor end (within 0.002 mm)"
    )
    assert shim_words(found(65.03, 0.0)).startswith("take off 0.030 mm at the bearing end")
    assert shim_words(found(65.001, 0.0)).startswith("nothing at the bearing end (-0.001 mm lies within")
    assert shim_words(found(64.97)) == (
        "shim of 0.030 mm all over (within 0.002 mm); bearing_seat.slope_z is not measured"
    )
