"""The exact radial law against a million draws, closed forms and its own limits."""

from itertools import pairwise

import numpy as np
import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from blockgen.alignment.radial import (
    column,
    exceeding,
    law_of,
    law_with,
    merged,
    percentile,
    radial_law,
    wave_table,
    within,
)
from blockgen.alignment.scatter import Scatter, clearance, disc, gaussian, known, mean_square
from tests.alignment.draws import example, lengths, off_by

SUMS = {
    "block": example(),
    "reduced": example(0.04),
    "known": [*example(), known(0.03, -0.02)],
    "transition": [clearance(-0.02, 0.03, 0.02), clearance(-0.01, 0.02, 0.02), disc(0.02), disc(0.005)],
    "gaussian": [gaussian(0.01), disc(0.03), known(0.02, 0.0)],
    "two discs": [disc(0.03), disc(0.01)],
    "disc and known": [disc(0.03), known(0.01, 0.01)],
}


@pytest.mark.parametrize("name", SUMS)
def test_agrees_with_a_million_draws_within_their_error(name):
    law, drawn = radial_law(SUMS[name]), lengths(SUMS[name], 2024)
    for probability in (0.5, 0.95, 0.9973):
        assert off_by(drawn, percentile(law, probability), probability) < 3


def test_rms_agrees_with_the_moments():
    law = radial_law(example())
    assert law.rms**2 == pytest.approx(sum(mean_square(s) for s in example()))


@settings(deadline=None, max_examples=30)
@given(st.lists(st.floats(0.002, 0.05), min_size=2, max_size=8), st.floats(0.05, 0.998))
def test_percentile_and_share_undo_one_another(radii, probability):
    law = radial_law([disc(r) for r in radii])
    found = percentile(law, probability)
    assert 0 < found < law.worst
    assert within(law, found) == pytest.approx(probability, abs=1e-6)


@settings(deadline=None, max_examples=20)
@given(st.lists(st.floats(0.005, 0.05), min_size=3, max_size=7))
def test_share_rises_from_none_to_all(radii):
    law = radial_law([disc(r) for r in radii])
    shares = [within(law, law.worst * i / 40) for i in range(42)]
    assert shares[0] == pytest.approx(0.0)
    assert shares[-1] == 1.0
    assert all(b >= a - 1e-6 for a, b in pairwise(shares))


def test_more_scatter_never_helps():
    few, more = radial_law(example()), radial_law([*example(), disc(0.01)])
    assert percentile(more, 0.95) > percentile(few, 0.95)


def test_order_does_not_matter():
    forth, back = radial_law(example()), radial_law(example()[::-1])
    assert percentile(forth, 0.95) == pytest.approx(percentile(back, 0.95), rel=1e-9)


def test_single_laws_in_closed_form():
    assert percentile(radial_law([disc(0.02)]), 0.81) == pytest.approx(0.018)
    assert exceeding(radial_law([disc(0.02)]), 0.01) == pytest.approx(0.75)
    assert percentile(radial_law([clearance(0.0, 0.06, 0.03)]), 0.5) == pytest.approx(0.015)
    assert percentile(radial_law([known(0.03, 0.04)]), 0.5) == pytest.approx(0.05)
    assert percentile(radial_law([]), 0.5) == 0.0
    assert within(radial_law([known(0.03, 0.04)]), 0.049) == 0.0


def test_gaussians_and_known_vectors_are_added_first():
    found = merged([gaussian(0.03), known(0.01, 0.0), gaussian(0.04), disc(0.0), known(-0.01, 0.0)])
    assert [s.law for s in found] == ["gaussian"]
    assert found[0].size == pytest.approx(0.05)


def test_replacing_one_scatter_is_the_law_of_the_new_sum():
    old, new = example(), [*example()[:-2], disc(0.02), example()[-1]]
    table = wave_table(old)
    changed = law_with(table, {7: (disc(0.02), column(disc(0.02), table.waves))})
    assert percentile(changed, 0.95) == pytest.approx(percentile(radial_law(new), 0.95), rel=1e-6)


def test_the_first_scatters_of_a_table_have_their_own_law():
    part = law_of(wave_table(example(), 8), 8)
    assert percentile(part, 0.95) == pytest.approx(percentile(radial_law(example()[:8]), 0.95), rel=1e-6)


def test_a_line_is_refused():
    with pytest.raises(ValueError, match="knows no uniform_z: take the planar law"):
        radial_law([disc(0.01), Scatter("uniform_z", 0.02)])


@pytest.mark.parametrize("probability", [0.0, 1.0, -0.5, 95.0])
def test_a_probability_lies_between_0_and_1(probability):
    with pytest.raises(ValueError, match="must lie between 0 and 1"):
        percentile(radial_law(example()), probability)


def test_nothing_lies_beyond_the_worst_case():
    law = radial_law(example())
    assert exceeding(law, law.worst) == 0.0
    assert exceeding(law, 0.999 * law.worst) < 1e-8
    assert np.max(lengths(example(), 5)) < law.worst
