"""Linear dimensions: extension lines from the feet, heads at the ends, text above the line."""

import pytest

from blockgen.outputs.drawing.box import Box
from blockgen.outputs.drawing.figures import Figures
from blockgen.outputs.drawing.lettering import text_box
from blockgen.outputs.drawing.linear import FIRST, STEP, Span, candidates
from blockgen.outputs.drawing.strokes import Fill, Line, Text
from blockgen.plan import Annotation

VIEW = Box(100.0, 100.0, 200.0, 180.0)
NOTE = Annotation("block.length", "distance", "a", "a", 100.0, text="{}", number=3)


def ways(first=(100.0, 180.0), second=(200.0, 180.0), angle=0, sides=(1, -1)):
    return list(candidates(Span(NOTE, first, second, angle, sides), VIEW, Figures()))


def cheapest(**more):
    return min(ways(**more), key=lambda way: way.cost)


def drawn(way):
    (item,) = way.build()
    return item


def test_the_nearest_line_stands_at_the_first_level_and_the_next_a_step_further():
    levels = sorted({way.lines[0][0][1] for way in ways(sides=(1,))})
    assert levels[:2] == pytest.approx([180.0 + FIRST, 180.0 + FIRST + STEP])
    assert cheapest().lines[0][0][1] == pytest.approx(180.0 + FIRST)


def test_extension_lines_start_beside_the_feet_and_run_past_the_line():
    for foot, (start, end) in zip((100.0, 200.0), cheapest().extensions, strict=True):
        assert start[0] == end[0] == foot
        assert 180.0 < start[1] < 181.0
        assert end[1] > 180.0 + FIRST


def test_heads_point_outwards_from_between_when_there_is_room_and_inwards_when_not():
    for second, inner in (((200.0, 180.0), True), ((104.0, 180.0), False)):
        heads = [s for s in drawn(cheapest(second=second)).strokes if isinstance(s, Fill)]
        left = min(heads, key=lambda head: head.outline[0])
        assert left.outline[0][0] == pytest.approx(100.0)
        assert (left.outline[1][0] > 100.0) == inner


def test_the_text_stands_above_the_line_and_a_vertical_one_is_read_from_the_right():
    item = drawn(cheapest())
    box = text_box(next(s for s in item.strokes if isinstance(s, Text)))
    assert box.bottom > 180.0 + FIRST
    upright = drawn(cheapest(first=(100.0, 100.0), second=(100.0, 180.0), angle=90))
    texts = [s for s in upright.strokes if isinstance(s, Text)]
    assert {text.angle for text in texts} == {90.0}
    line = next(s for s in upright.strokes[2:] if isinstance(s, Line))
    assert line.start[0] == pytest.approx(100.0 - FIRST)
    assert max(text_box(text).right for text in texts) < 100.0 - FIRST


def test_what_an_exchange_file_measures_is_between_the_feet():
    measure = drawn(cheapest(first=(100.0, 150.0))).measure
    assert (measure.kind, measure.first, measure.second, measure.angle) == (
        "linear", (100.0, 150.0), (200.0, 180.0), 0.0
    )  # fmt: skip
    assert measure.text == "100"


def test_text_beside_a_short_dimension_goes_away_from_the_middle_of_the_view_first():
    short = cheapest(first=(100.0, 180.0), second=(108.0, 180.0))
    assert short.boxes[0].right < 100.0
    short = cheapest(first=(192.0, 180.0), second=(200.0, 180.0))
    assert short.boxes[0].left > 200.0


def test_the_box_holds_the_text_and_its_number():
    way = cheapest()
    texts = [text_box(s) for s in drawn(way).strokes if isinstance(s, Text)]
    box = way.boxes[0]
    assert all(
        box.left <= t.left and t.right <= box.right and box.bottom <= t.bottom and t.top <= box.top for t in texts
    )
