"""Dashes run on from chord to chord of a chain."""

import math

from hypothesis import given
from hypothesis import strategies as st

from blockgen.outputs.drawing.dashes import dashed


def length(pieces):
    return sum(math.dist(a, b) for a, b in pieces)


def test_a_dash_bends_round_a_corner_and_a_gap_follows_it():
    found = list(dashed([(0, 0), (2, 0), (2, 5)], (3.0, 1.0)))
    assert found == [((0, 0), (2, 0)), ((2, 0), (2, 1.0)), ((2, 2.0), (2, 5.0))]


@given(st.integers(2, 200), st.floats(0.05, 4.0))
def test_chords_however_short_leave_the_same_share_open(count, step):
    points = [(step * i, 0.0) for i in range(count)]
    whole = step * (count - 1)
    full, rest = divmod(whole, 3.75)
    assert math.isclose(length(dashed(points, (3.0, 0.75))), full * 3.0 + min(rest, 3.0), abs_tol=1e-6)
