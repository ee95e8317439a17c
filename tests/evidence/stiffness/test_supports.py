"""Ways to hold a block, and which place belongs to which screw."""

from __future__ import annotations

from hypothesis import given
from hypothesis import strategies as st

from blockgen.evidence.stiffness.supports import Support, nearest

SCREWS = [(0.0, 0.0), (40.0, 0.0), (0.0, 30.0), (40.0, 30.0)]


@given(st.floats(-10, 50), st.floats(-10, 40))
def test_half_planes_bound_what_is_nearest(x, y):
    inside = [all(a * x + b * y <= c for a, b, c in planes) for planes in nearest(SCREWS)]
    squares = [(x - sx) ** 2 + (y - sy) ** 2 for sx, sy in SCREWS]
    for index, square in enumerate(squares):
        if square < min(s for i, s in enumerate(squares) if i != index) - 1e-6:
            assert inside[index]
            assert sum(inside) == 1


def test_a_total_is_spread_over_the_area():
    assert Support("bed", "", ("base",), None, 900_000.0).per_area(4500.0) == 200.0
    assert Support("heads", "", ("ring_1",), 1e8).per_area(10.0) == 1e8
