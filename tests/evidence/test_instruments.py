"""How well to measure."""

import pytest
from hypothesis import given
from hypothesis import strategies as st

from blockgen.evidence.instruments import uncertainty_wanted


@pytest.mark.parametrize(("width", "wanted"), [(0.2, 0.02), (0.025, 0.0025), (0.015, 0.002), (0.005, 0.001)])
def test_a_tenth_and_for_tight_ones_at_most_a_fifth(width, wanted):
    assert uncertainty_wanted(width) == pytest.approx(wanted)


def test_nothing_is_wanted_where_nothing_is_toleranced():
    assert uncertainty_wanted(None) is None
    assert uncertainty_wanted(0.0) is None


@given(st.floats(1e-4, 10))
def test_between_a_tenth_and_a_fifth(width):
    wanted = uncertainty_wanted(width)
    assert 0.095 * width <= wanted <= 0.21 * width
