"""Chains of chords: near enough to the curve, and alike where curves cover one another."""

import math
from itertools import pairwise

import pytest
from hypothesis import given
from hypothesis import strategies as st

from blockgen.geometry.chords import Vertices, chord_points, folds, root
from tests.geometry.plane import from_line


@given(st.floats(0.5, 80), st.floats(0.2, 40), st.floats(-3, 3), st.floats(0.2, 6.2))
def test_an_ellipse_stays_within_five_micrometres(long, short, start, sweep):
    def at(t):
        return (long * math.cos(t), short * math.sin(t))

    (chain,) = chord_points([(at, start, start + sweep)])
    assert (chain[0][0], chain[-1][0]) == (start, start + sweep)
    for (a, p), (b, q) in pairwise(chain):
        if math.dist(p, q) > 1e-4:
            assert max(from_line(p, q, at(a + (b - a) * i / 10)) for i in range(1, 10)) <= 0.005


def test_curves_that_cover_one_another_get_the_same_points():
    """The second runs back over a part of the first, with another parameter."""

    def parabola(t):
        return (t, t * t / 20)

    def back(t):
        return parabola(10.0 - t**3)

    first, second = chord_points([(parabola, -5.0, 20.0), (back, 0.0, 2.0)])
    inside = [p for t, p in first if 2.0 - 1e-6 <= t <= 10.0 + 1e-6]
    assert len(inside) > 5
    assert [p for _, p in second][::-1] == [pytest.approx(p, abs=1e-6) for p in inside]


def test_a_curve_that_runs_back_over_itself_is_cut_at_its_turn():
    ends = folds(lambda t: (math.cos(t), math.cos(t) ** 2), 0.5, 2 * math.pi - 0.5)
    assert any(t == pytest.approx(math.pi, abs=1e-6) for t in ends)


def test_root_of_a_value_that_does_not_change_sign_is_the_nearer_end():
    assert root(lambda t: t + 1, 0.0, 5.0) == 0.0
    assert root(lambda t: t - 7, 0.0, 5.0) == 5.0
    assert root(lambda t: t - 2, 0.0, 5.0) == pytest.approx(2.0)


def test_vertices_that_lie_together_are_one():
    vertices = Vertices()
    assert vertices.same((1.0, 1.0)) == vertices.same((1.00005, 0.99995)) == (1.0, 1.0)
    assert vertices.same((1.001, 1.0)) == (1.001, 1.0)
