"""The law of two discs against what is known of it."""

import math

import numpy as np
import pytest
from hypothesis import given
from hypothesis import strategies as st

from blockgen.alignment.radial import RadialLaw, percentile, radial_law, wave_table, within
from blockgen.alignment.radial import law_of as law_by_series
from blockgen.alignment.scatter import disc
from blockgen.alignment.two_discs import lens_share, within_two_discs

SIZES = st.floats(0.01, 1.0)


def test_half_a_disc_lies_beyond_a_very_wide_circle_through_its_centre():
    assert lens_share(1e3, 1.0, 1e3) == pytest.approx(0.5, abs=2e-4)


def test_two_equal_circles_through_each_other_s_centres():
    lens = (2 * math.pi / 3 - math.sqrt(3) / 2) / math.pi  # elementary geometry
    assert lens_share(1.0, 1.0, 1.0) == pytest.approx(lens, abs=1e-12)


def test_a_sum_within_the_small_disc_stays_flat_inside():
    # as long as R <= a - b, a circle of radius R sees the wide disc's even density all over
    assert within_two_discs(1.0, 0.4, 0.5) == pytest.approx(0.25, abs=1e-7)


@given(SIZES, SIZES, st.floats(0.02, 0.98))
def test_order_and_scale_make_no_difference(first, second, share):
    radius = share * (first + second)
    found = within_two_discs(first, second, radius)
    assert found == pytest.approx(within_two_discs(second, first, radius), abs=1e-9)
    assert found == pytest.approx(within_two_discs(10 * first, 10 * second, 10 * radius), abs=1e-9)
    assert 0 <= found <= within_two_discs(first, second, 1.01 * radius) + 1e-9


@pytest.mark.parametrize("sizes", [(0.01, 0.005), (0.01, 0.01), (0.02, 0.001)])
def test_the_series_says_the_same(sizes):
    table = wave_table([disc(size) for size in sizes])
    series = law_by_series(table)
    law = radial_law([disc(size) for size in sizes])
    assert isinstance(law, RadialLaw)
    assert law.pair == sizes
    for share in (0.2, 0.5, 0.8, 0.95):
        radius = share * sum(sizes)
        assert within(law, radius) == pytest.approx(within(series, radius), abs=2e-5)


def test_a_million_draws_say_the_same():
    rng, count = np.random.default_rng(11), 1_000_000
    lengths = [size * np.sqrt(rng.random(count)) for size in (0.01, 0.005)]
    turns = [2 * np.pi * rng.random(count) for _ in range(2)]
    drawn = np.abs(sum(r * np.exp(1j * t) for r, t in zip(lengths, turns, strict=True)))
    for level in (0.5, 0.95, 0.9973):
        radius = percentile(radial_law([disc(0.01), disc(0.005)]), level)
        error = math.sqrt(level * (1 - level) / count)
        assert abs(float(np.mean(drawn <= radius)) - level) < 3 * error
