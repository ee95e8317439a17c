"""Two meshes: the band holds the answer of an endless fine one for every order from the least one upwards."""

from __future__ import annotations

import numpy as np
import pytest
from hypothesis import given
from hypothesis import strategies as st

from blockgen.evidence.stiffness.extrapolate import ORDER_LEAST, Estimate, between, estimate, rounded


@given(
    limit=st.floats(1, 1e4), error=st.floats(-0.2, 0.2), order=st.floats(ORDER_LEAST, 4.0), ratio=st.floats(1.15, 2.0)
)
def test_band_holds_the_limit_of_a_power_law(limit, error, order, ratio):
    unknowns = (10_000, round(10_000 * ratio**3))
    sizes = [n ** (-1 / 3) for n in unknowns]
    values = [limit * (1 + error * (size / sizes[0]) ** order) for size in sizes]
    middle, half = between(np.array(values[0]), np.array(values[1]), unknowns)
    assert abs(limit - middle) <= half + 1e-6 * limit


def test_worked_numbers():
    # size ratio 2, order 1.5: the change of -2 foretells -2/(2^1.5 - 1) = -1.0938 more
    found = estimate(12.0, 10.0, (1000, 8000))
    assert found.value == pytest.approx(10 - 1.0938 / 2, abs=1e-3)
    assert found.half == pytest.approx(1.0938 / 2, abs=1e-3)
    assert found.high == pytest.approx(10.0, abs=1e-3)


def test_two_meshes_that_agree_by_chance_still_have_a_band():
    assert estimate(50.0, 50.0, (1000, 2000)) == Estimate(50.0, 0.5)


def test_a_coarser_second_mesh_is_refused():
    with pytest.raises(ValueError, match="second must be the finer"):
        between(np.array(1.0), np.array(1.0), (8000, 8000))


def test_share_and_digits():
    assert Estimate(-200.0, 5.0).share == pytest.approx(0.025)
    assert Estimate(0.0, 1.0).share == 0.0
    assert rounded(123456.78) == 123460.0
