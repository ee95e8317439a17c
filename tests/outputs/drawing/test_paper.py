"""Sheets: sizes, frame, centring marks, reference fields."""

import pytest

from blockgen.outputs.drawing.paper import TRIMMED, frame, paper
from blockgen.outputs.drawing.strokes import Line, Text
from tests.outputs.drawing.touching import around


@pytest.mark.parametrize("size", TRIMMED)
def test_each_size_is_half_of_the_next_and_the_frame_lies_within(size):
    made = paper(size)
    number = int(size[1])
    if number:
        one, two = sorted(TRIMMED[size]), sorted(TRIMMED[f"A{number - 1}"])
        assert one[1] == two[0]
        assert one[0] == pytest.approx(two[1] / 2, abs=0.6)
    assert (made.area.left, made.area.bottom) == (20.0, 10.0)
    for stroke in frame(made).strokes:
        box = around(stroke)
        assert box[0] >= 0
        assert box[1] >= 0
        assert box[2] <= made.width
        assert box[3] <= made.height


def test_a4_can_lie_lengthwise_and_others_always_do():
    assert (paper("A4").width, paper("A4", lengthwise=True).width) == (210.0, 297.0)
    assert paper("A2", lengthwise=True).width == 594.0


def test_fields_run_from_left_to_right_and_downwards_and_centring_marks_stand_on_the_axes():
    made = paper("A2")
    strokes = frame(made).strokes
    marks = [(s.words, s.at) for s in strokes if isinstance(s, Text)]
    top = sorted((at[0], words) for words, at in marks if at[1] > made.area.top)
    assert [words for _, words in top] == [str(n) for n in range(1, len(top) + 1)]
    left = sorted((-at[1], words) for words, at in marks if at[0] < made.area.left and not words.isdigit())
    assert [words for _, words in left] == list("ABCDEFGH")
    wide = [s for s in strokes if isinstance(s, Line) and s.pen == "border"]
    assert sum(s.start[0] == s.end[0] == made.width / 2 for s in wide) == 2
    assert sum(s.start[1] == s.end[1] == made.height / 2 for s in wide) == 2
