"""Tables: texts wrap within their cells, rows are as high as their highest cell."""

from hypothesis import given
from hypothesis import strategies as st

from blockgen.outputs.drawing.lettering import text_box, text_width
from blockgen.outputs.drawing.strokes import Line, Text
from blockgen.outputs.drawing.tables import Column, row_height, table, table_height, wrapped

COLUMNS = (Column("No.", 10.0), Column("Words", 30.0))


@given(st.lists(st.text("abcde fgh", max_size=60), max_size=6).map(" ".join))
def test_wrapped_lines_fit_and_lose_no_letter(words):
    lines = wrapped(words, 30.0, 2.5)
    assert all(text_width(line, 2.5) <= 30.0 for line in lines)
    assert "".join("".join(lines).split()) == "".join(words.split())


def test_a_row_grows_with_its_longest_cell():
    short, long = row_height(("1", "a"), COLUMNS, 2.5), row_height(("1", "word " * 12), COLUMNS, 2.5)
    assert long > 2 * short


def test_the_height_told_beforehand_is_that_of_the_table():
    rows = [("1", "short"), ("2", "a text that goes on over more than one line")]
    strokes, low = table((5.0, 100.0), COLUMNS, rows, 2.5)
    assert low == 100.0 - table_height(rows, COLUMNS, 2.5)
    levels = [s.start[1] for s in strokes if isinstance(s, Line) and s.start[1] == s.end[1]]
    assert (max(levels), min(levels)) == (100.0, low)
    texts = [text_box(s) for s in strokes if isinstance(s, Text)]
    assert all(box.left > 5.0 and box.right < 45.0 and low < box.bottom and box.top < 100.0 for box in texts)
    words = [s.words for s in strokes if isinstance(s, Text)]
    assert words[:4] == ["No.", "Words", "1", "short"]
