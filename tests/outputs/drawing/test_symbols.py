"""Symbols: their shape, size and place."""

import math

import pytest

from blockgen.outputs.drawing.label import FORM
from blockgen.outputs.drawing.strokes import Arc, Fill, Line, Text
from blockgen.outputs.drawing.symbols import (
    DATUM_DEPTH,
    arrow,
    datum_symbol,
    depth_symbol,
    edge_symbol,
    projection_symbol,
    small_texture_symbol,
    tolerance_symbol,
)
from tests.outputs.drawing.touching import chain, of_points


def extent(strokes):
    return of_points([p for s in strokes for p in (s.outline if isinstance(s, Fill) else chain(s))
                      if not isinstance(s, Text)])  # fmt: skip


@pytest.mark.parametrize("kind", sorted(FORM))
def test_symbols_of_tolerances_fit_their_cell(kind):
    left, low, right, high = extent(tolerance_symbol(kind))
    assert max(-left, -low, right, high) <= 2.5
    assert right - left > 2.0


def test_symbols_differ():
    assert len({tolerance_symbol(kind) for kind in FORM}) == len(FORM)
    with pytest.raises(KeyError):
        tolerance_symbol("beauty")


def test_an_arrow_has_its_tip_where_it_points_and_opens_by_about_20_deg():
    tip, one, two = arrow((10, 10), (20, 10)).outline
    assert tip == (10, 10)
    assert one[0] == two[0] == 13.0
    assert 15 < 2 * math.degrees(math.atan2(abs(one[1] - 10), 3.0)) < 25


def test_a_datum_triangle_stands_on_its_base_and_hangs_its_letter():
    *shape, letter = datum_symbol("A")
    triangle = next(s for s in shape if isinstance(s, Fill))
    assert sorted(p[1] for p in triangle.outline)[1:] == [0.0, 0.0]
    assert extent(shape)[1] == -DATUM_DEPTH
    assert letter.words == "A"


def test_the_end_view_of_the_cone_stands_on_the_right_in_first_angle_and_on_the_left_in_third():
    """It is seen from its small end, which is on its left in both (ISO 5456-2, from memory)."""
    for method, side in (("first", 1), ("third", -1)):
        strokes = projection_symbol(method)
        circles = [s for s in strokes if isinstance(s, Arc)]
        assert all(circle.centre[0] * side > 0 for circle in circles)
        slopes = [s for s in strokes if isinstance(s, Line) and s.pen == "outline" and s.start[0] != s.end[0]]
        for line in slopes:
            narrow, wide = sorted((line.start, line.end), key=lambda p: abs(p[1]))
            assert wide[0] > narrow[0]


def test_signs_of_depth_edge_and_texture_have_their_size():
    assert extent(depth_symbol()) == pytest.approx((-1.4, -1.7, 1.4, 1.7))
    assert extent(edge_symbol())[:2] == (0.0, 0.0)
    legs = [s for s in small_texture_symbol() if s.start == (0.0, 0.0)]
    assert [round(math.degrees(math.atan2(leg.end[1], leg.end[0]))) for leg in legs] == [120, 60]
