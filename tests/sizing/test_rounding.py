"""Rounding to the steps in which sizes are drawn."""

import pytest
from hypothesis import given
from hypothesis import strategies as st

from blockgen.sizing.rounding import down, nearest, nearest_inside, up


@pytest.mark.parametrize(
    ("value", "step", "above", "below"),
    [(10.01, 0.5, 10.5, 10.0), (10.0, 0.5, 10.0, 10.0), (0.1 + 0.2, 0.1, 0.3, 0.3), (7.2, 1.0, 8.0, 7.0)],
)
def test_up_and_down(value, step, above, below):
    assert up(value, step) == above
    assert down(value, step) == below


@given(st.floats(0, 500), st.sampled_from((0.1, 0.5, 1.0)))
def test_rounding_stays_within_a_step(value, step):
    assert value - 1e-6 <= up(value, step) < value + step + 1e-6
    assert value - step - 1e-6 < down(value, step) <= value + 1e-6
    assert abs(nearest(value, step) - value) <= step / 2 + 1e-6


def test_nearest_inside_takes_the_coarsest_step_that_stays_inside():
    assert nearest_inside(85.0, 87.0, (0.5, 0.1)) == 86.0
    assert nearest_inside(85.1, 85.4, (0.5, 0.1)) == pytest.approx(85.2)
    assert nearest_inside(85.11, 85.14, (0.5, 0.1)) == pytest.approx(85.125)
