"""Places of the views: by the method of projection, apart from one another and from the column of words."""

from itertools import combinations

import pytest
from hypothesis import given
from hypothesis import strategies as st

from blockgen.outputs.drawing.layout import layout
from blockgen.outputs.drawing.paper import paper
from blockgen.outputs.drawing.placement import NoRoomError
from blockgen.plan import Body

AREA = paper("A2").area
METHODS = ("first", "third")


@pytest.mark.parametrize(
    ("projection", "right", "above"), [("first", "bearing_end", "front"), ("third", "motor_end", "top")]
)
def test_sides_follow_the_method(projection, right, above):
    places = layout(Body(100, 100, 100, 0, 0.5), AREA, 1.0, projection, 50.0).views
    left = {"bearing_end": "motor_end", "motor_end": "bearing_end"}[right]
    below = {"front": "top", "top": "front"}[above]
    assert places[left].box.right < places["front"].box.left < places[right].box.left
    assert places[below].box.top < places[above].box.bottom


@given(st.tuples(*[st.floats(40, 160)] * 3), st.sampled_from(METHODS), st.sampled_from((1.0, 0.5)))
def test_views_stay_apart_and_in_the_area_and_leave_the_column(sizes, projection, scale):
    try:
        found = layout(Body(*sizes, 0, 0.5), AREA, scale, projection, 50.0)
    except NoRoomError:
        return
    boxes = [view.box for view in found.views.values()]
    assert len(boxes) == 5
    for one, two in combinations(boxes, 2):
        assert not one.touches(two, 20.0)
    for box in boxes:
        assert AREA.left < box.left
        assert box.right < AREA.right
        assert AREA.bottom < box.bottom
        assert box.top < AREA.top
        assert not box.touches(found.column)


@pytest.mark.parametrize("projection", METHODS)
def test_a_block_too_large_for_the_sheet_finds_no_room(projection):
    with pytest.raises(NoRoomError):
        layout(Body(250, 250, 200, 0, 0.5), AREA, 1.0, projection, 50.0)


@pytest.mark.parametrize("projection", METHODS)
def test_a_usual_block_stands_to_true_size_on_a2_by_both_methods(projection):
    assert layout(Body(108, 121, 107, 0, 0.5), AREA, 1.0, projection, 51.0).views["front"].scale == 1.0
