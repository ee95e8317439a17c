"""Second moments, greatest lengths and worst cases of the laws."""

import math

import numpy as np
import pytest
from hypothesis import given
from hypothesis import strategies as st

from blockgen.alignment.scatter import (
    Scatter,
    clearance,
    disc,
    gaussian,
    greatest,
    known,
    mean_square,
    root_mean_square,
    scaled,
    worst_case,
)
from tests.alignment.draws import lengths

LAWS = [
    disc(0.04), gaussian(0.02), clearance(0.0, 0.06, 0.03), clearance(0.01, 0.05, 0.03), clearance(-0.02, 0.03, 0.02),
    clearance(-0.03, 0.02, 0.05), clearance(-0.03, -0.01, 0.01), clearance(-0.01, 0.02, 0.0), known(0.03, -0.04),
    Scatter("uniform_y", 0.02), Scatter("gaussian_z", 0.02),
]  # fmt: skip


@pytest.mark.parametrize("scatter", LAWS, ids=lambda s: f"{s.law} {s.low:g}")
def test_mean_square_agrees_with_draws(scatter):
    squares = lengths([scatter], 7, 200_000) ** 2
    error = float(np.std(squares)) / math.sqrt(len(squares))
    assert mean_square(scatter) == pytest.approx(float(np.mean(squares)), abs=3 * error + 1e-15)


def test_clearance_of_h7_h7_at_70():
    # mean c 0.030, both tolerances 0.030: (0.030^2 + 2 x 0.030^2/12)/4
    assert mean_square(clearance(0.0, 0.060, 0.030)) == pytest.approx(0.0002625)


def test_half_of_the_spread_is_the_hole_s_when_nothing_is_known():
    assert clearance(0.0, 0.06).hole_tolerance == clearance(0.0, 0.06).shaft_tolerance == 0.03


@pytest.mark.parametrize(("low", "high", "hole"), [(0.02, 0.01, None), (0.0, 0.01, 0.02), (0.0, 0.01, -0.01)])
def test_an_impossible_clearance_is_refused(low, high, hole):
    with pytest.raises(ValueError, match="give low <= high"):
        clearance(low, high, hole)


@given(st.sampled_from(LAWS), st.floats(0.01, 100))
def test_scaling_scales_lengths(scatter, factor):
    assert greatest(scaled(scatter, -factor)) == pytest.approx(factor * greatest(scatter))
    assert mean_square(scaled(scatter, -factor)) == pytest.approx(factor**2 * mean_square(scatter), rel=1e-9, abs=1e-18)


def test_only_a_known_vector_turns_round():
    assert scaled(known(1.0, 2.0), -2.0).vector == (-2.0, -4.0)


def test_known_vectors_may_cancel():
    scatters = [known(0.03, 0.0), known(-0.03, 0.0), disc(0.01)]
    assert worst_case(scatters) == pytest.approx(0.01)
    assert root_mean_square(scatters) == pytest.approx(0.01 / math.sqrt(2))


def test_worst_case_takes_the_far_corner():
    scatters = [disc(0.01), Scatter("uniform_y", 0.03), Scatter("uniform_z", 0.03), known(0.0, -0.01)]
    assert worst_case(scatters) == pytest.approx(0.01 + math.hypot(0.03, 0.04))


def test_a_gaussian_counts_three_deviations():
    assert worst_case([gaussian(0.01)]) == pytest.approx(0.03)
