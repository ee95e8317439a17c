"""Boxes: overlap, gap, growth."""

from __future__ import annotations

import math

import pytest
from hypothesis import given
from hypothesis import strategies as st

from blockgen.outputs.drawing.box import Box

places = st.floats(-500, 500)
sizes = st.floats(0.01, 100)
boxes = st.builds(lambda x, y, w, h: Box(x, y, x + w, y + h), places, places, sizes, sizes)


def test_boxes_with_a_common_edge_do_not_touch_and_come_too_near_with_a_gap():
    left, right = Box(0, 0, 10, 10), Box(10, 0, 20, 10)
    assert not left.touches(right)
    assert left.touches(right, 0.5)
    assert not left.touches(Box(10.5, 0, 20, 10), 0.5)


def test_a_box_inside_another_touches_it():
    assert Box(0, 0, 10, 10).touches(Box(4, 4, 5, 5))


def test_boxes_above_one_another_do_not_touch():
    assert not Box(0, 0, 10, 10).touches(Box(0, 11, 10, 20), 0.9)


@given(boxes, boxes, st.floats(0, 20))
def test_touching_is_mutual(one, other, gap):
    assert one.touches(other, gap) == other.touches(one, gap)


@given(boxes, boxes, st.floats(0, 20))
def test_a_gap_is_the_same_as_growth(one, other, gap):
    distances = (one.left - other.right, other.left - one.right, one.bottom - other.top, other.bottom - one.top)
    if all(abs(distance - gap) > 1e-9 for distance in distances):
        assert one.touches(other, gap) == one.grown(gap).touches(other)


def test_around_holds_all_points_and_no_more():
    box = Box.around([(3, 4), (-1, 9), (2, 0)])
    assert box == Box(-1, 0, 3, 9)
    assert math.isclose(box.grown(2).top - box.grown(2).bottom, 13)


def test_a_box_around_nothing_is_refused():
    with pytest.raises(ValueError, match="not enough values"):
        Box.around([])
