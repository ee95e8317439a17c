"""Lengths and points of plane curves."""

import math

import pytest

from blockgen.geometry.curves import ArcCurve, Chain, Segment, arc_point, length_of


@pytest.mark.parametrize(
    ("curve", "length"),
    [
        (Segment((1.0, 1.0), (4.0, 5.0)), 5.0),
        (ArcCurve((3.0, 3.0), 2.0, 0.0, 360.0), 4 * math.pi),
        (ArcCurve((3.0, 3.0), 2.0, 270.0, 450.0), 2 * math.pi),
        (Chain(((0.0, 0.0), (3.0, 0.0), (3.0, 4.0))), 7.0),
    ],
)
def test_length(curve, length):
    assert length_of(curve) == pytest.approx(length)


def test_a_point_of_an_arc():
    assert arc_point(ArcCurve((1.0, 2.0), 5.0, 0.0, 90.0), 90.0) == pytest.approx((1.0, 7.0))
