"""What is written beside the views."""

import pytest

from blockgen.outputs.drawing.box import Box
from blockgen.outputs.drawing.paper import paper
from blockgen.outputs.drawing.placement import NoRoomError
from blockgen.outputs.drawing.strokes import Text
from blockgen.outputs.drawing.words import words_of
from tests.sizing.strategies import sized


@pytest.fixture(scope="module")
def plan():
    return sized(drawing={"number_format": "comma"})


def written(item):
    return [s.words for s in item.strokes if isinstance(s, Text)]


def test_title_block_tells_sheet_scale_and_mass_with_the_decimal_sign(plan):
    (title,), height = words_of(plan, "PRELIMINARY", "", 7).at_foot(paper("A2"), 0.5)
    found = written(title)
    assert {"A2", "1:2", "1/7", "PRELIMINARY"} <= set(found)
    assert any(line.endswith(" kg") and "," in line for line in found)
    assert 40 < height < 80


def test_notes_and_table_stand_in_their_column_one_above_the_other(plan):
    column = Box(300.0, 10.0, 584.0, 300.0)
    notes, table = words_of(plan, "x", "", 1).in_column(plan, column, 50.0, "first")
    low = [s.at[1] for s in notes.strokes if isinstance(s, Text)]
    high = [s.at[1] for s in table.strokes if isinstance(s, Text)]
    assert min(low) > 60.0
    assert max(low) < min(high)
    assert max(high) < 300.0
    edge = [words for words in written(notes) if words in {"outside -0,3", "inside +0,2"}]
    assert edge == ["outside -0,3", "inside +0,2"]


def test_a_column_that_is_too_low_has_no_room(plan):
    with pytest.raises(NoRoomError):
        words_of(plan, "x", "", 1).in_column(plan, Box(300, 10, 584, 120), 50.0, "first")
