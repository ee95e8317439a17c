"""Obstacles: boxes keep out boxes and lines, lines keep out boxes, lines cross lines at a price."""

import math

from hypothesis import given
from hypothesis import strategies as st

from blockgen.outputs.drawing.box import Box
from blockgen.outputs.drawing.field import EXTENSION, GEOMETRY, THIN, Field, meets, pieces
from blockgen.outputs.drawing.strokes import Arc, Fill, Hatch, Line, Text

BOX = Box(10.0, 10.0, 20.0, 14.0)


def field(*lines, weight=THIN, boxes=()):
    made = Field()
    for line in lines:
        made.add_line(line, weight)
    for box in boxes:
        made.add_box(box)
    return made


def test_a_box_keeps_other_boxes_out_with_a_gap():
    made = field(boxes=[BOX])
    assert not made.is_free(Box(20.5, 10, 25, 14))
    assert made.is_free(Box(21.0, 10, 25, 14))
    assert made.is_free(Box(20.5, 10, 25, 14), gap=0.1)


def test_a_line_keeps_boxes_out_and_a_box_keeps_lines_out():
    made = field(((0, 12), (40, 12)), boxes=[Box(0, 30, 5, 35)])
    assert not made.is_free(BOX)
    assert made.is_free(Box(10, 14, 20, 18))
    assert math.isinf(made.cost([((2, 20), (2, 40))]))


def test_a_crossing_costs_the_weight_of_the_line_once():
    """The line runs through several cells and is counted once."""
    made = field(((0, 0), (100, 0)), weight=GEOMETRY)
    assert made.cost([((50, -30), (50, 30))]) == GEOMETRY
    assert made.cost([((50, 1), (50, 30))]) == 0.0


def test_extension_lines_may_cross_and_run_along_one_another():
    made = field(((0, 0), (50, 0)), weight=EXTENSION)
    along, across = ((10, 0), (90, 0)), ((20, -5), (20, 5))
    assert made.cost([along, across], extension=True) == 0.0
    assert made.cost([across]) == EXTENSION
    assert made.cost([along]) > 10 * EXTENSION


def test_lines_that_touch_end_to_end_do_not_cross():
    assert field(((0, 0), (10, 0))).cost([((10, 0), (20, 0)), ((10, 0), (10, 8))]) == 0.0


def test_letters_and_heads_are_boxes_and_hatching_is_its_edge():
    made = Field()
    square = (Line((50, 0), (60, 0)), Line((60, 0), (60, 10)), Line((60, 10), (50, 10)), Line((50, 10), (50, 0)))
    made.add((Text("H", (0, 0), 3.5), Fill(((20, 0), (23, 1), (23, -1))), Hatch((square,), 3.0)), THIN)
    assert not made.is_free(Box(1, 1, 2, 2))
    assert not made.is_free(Box(21, 0, 22, 0.5))
    assert made.is_free(Box(53, 3, 56, 6))
    assert not made.is_free(Box(48, 3, 56, 6))


def test_pieces_of_an_arc_lie_on_it():
    found = list(pieces(Arc((5, 5), 10, 0, 90)))
    assert found[0][0] == (15, 5)
    assert all(abs(math.dist(p, (5, 5)) - 10) < 1e-9 for piece in found for p in piece)


@given(st.tuples(*[st.floats(-30, 60)] * 4))
def test_a_line_meets_a_box_when_a_point_of_it_lies_well_inside(ends):
    a, b = ends[:2], ends[2:]
    inside = any(
        BOX.left + 0.01 < a[0] + s * (b[0] - a[0]) / 200 < BOX.right - 0.01
        and BOX.bottom + 0.01 < a[1] + s * (b[1] - a[1]) / 200 < BOX.top - 0.01
        for s in range(201)
    )
    assert meets(a, b, BOX) or not inside
