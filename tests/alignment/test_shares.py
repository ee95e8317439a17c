"""Shares add up, the greatest first."""

import pytest
from hypothesis import given
from hypothesis import strategies as st

from blockgen.alignment.scatter import disc, mean_square
from blockgen.alignment.shares import shares
from blockgen.alignment.terms import shift, tilt


@given(st.lists(st.floats(1e-4, 0.1), min_size=1, max_size=12))
def test_shares_add_up_and_fall(radii):
    found = shares([shift(f"t{i}", "motor", disc(r)) for i, r in enumerate(radii)])
    assert sum(s.of_variance for s in found) == pytest.approx(1.0)
    assert sum(s.of_worst for s in found) == pytest.approx(1.0)
    assert [s.of_variance for s in found] == sorted((s.of_variance for s in found), reverse=True)


def test_variance_goes_with_the_square_and_the_arm():
    found = shares([shift("near", "motor", disc(0.03)), tilt("far", "motor", disc(1e-3), -40.0)])
    assert [s.id for s in found] == ["far", "near"]
    assert found[0].of_variance == pytest.approx(16 / 25)
    assert found[0].of_worst == pytest.approx(4 / 7)
    assert found[0].mean_square == pytest.approx(mean_square(disc(0.04)))


def test_only_slopes_share_in_the_angle():
    found = shares([shift("near", "motor", disc(0.03)), tilt("far", "motor", disc(1e-3), -40.0)], "angle")
    assert [(s.id, s.of_variance) for s in found] == [("far", 1.0)]


def test_nothing_has_no_share():
    assert [s.of_variance for s in shares([shift("none", "motor", disc(0.0))])] == [0.0]
