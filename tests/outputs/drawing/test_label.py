"""Rows of labels: what is written, how wide it is, where a leader arrives."""

import pytest

from blockgen.outputs.drawing.figures import Figures
from blockgen.outputs.drawing.label import FORM, ROW, Label, row_of, sized_text, text_row, written
from blockgen.outputs.drawing.lettering import text_box
from blockgen.outputs.drawing.strokes import Arc, Fill, Line, Text
from blockgen.plan import Annotation
from tests.outputs.drawing.touching import chain, of_points


def note(kind="size", text="⌀{}", value=20.0, **more):
    return Annotation("a.b", kind, "a", "a.f", value, text=text, **more)


def words(row):
    return [s.words for s in row.strokes if isinstance(s, Text)]


@pytest.mark.parametrize(
    ("more", "expected"),
    [
        ({}, "⌀20"),
        ({"upper": 0.5, "lower": -0.5, "general": True}, "⌀20"),
        ({"upper": 0.02, "lower": -0.02}, "⌀20 ±0.02"),
        ({"upper": 0.021, "lower": 0.0, "fit": "H7"}, "⌀20 H7 +0.021/0"),
        ({"upper": 1.0, "lower": 0.0, "text": "{} deep"}, "20 +1/0 deep"),
    ],
)
def test_a_size_is_written_with_its_fit_and_its_own_deviations_only(more, expected):
    assert sized_text(note(**more), Figures())[2] == expected


def test_the_decimal_sign_reaches_value_and_deviations():
    assert sized_text(note(value=20.5, upper=0.02, lower=-0.02), Figures(comma=True))[2] == "⌀20,5 ±0,02"


@pytest.mark.parametrize("kind", sorted(FORM))
def test_a_frame_has_a_cell_for_symbol_zone_and_each_datum(kind):
    row = row_of(note(kind, "", 0.02, datums=("A", "B"), diametral=True, number=7), Figures())
    assert row.framed
    assert words(row) == ["7", "⌀0.02", "A", "B"]
    assert row.words == f"{kind} ⌀0.02 A B"
    upright = [s for s in row.strokes if isinstance(s, Line) and s.start[0] == s.end[0] and abs(s.start[1]) == 3.5]
    assert len(upright) == 5


def test_the_width_of_a_row_holds_all_its_strokes():
    for made in (
        row_of(note(number=12, upper=0.1, lower=0.0, fit="H8"), Figures()),
        row_of(note("texture", "Ra {}", 1.6, number=3), Figures()),
        row_of(note("flatness", "", 0.01, number=4), Figures()),
        text_row("x", "drill ↧ 20"),
    ):
        points = [p for s in made.strokes for p in corners(s)]
        assert of_points(points)[2] <= made.width + 0.01
        assert of_points(points)[0] >= -0.01


def corners(stroke):
    if isinstance(stroke, Text):
        box = text_box(stroke)
        return [(box.left, box.bottom), (box.right, box.top)]
    return stroke.outline if isinstance(stroke, Fill) else chain(stroke)


def test_the_sign_for_a_depth_is_drawn_and_not_written():
    strokes, _ = written("drill ↧ 20")
    assert [s.words for s in strokes if isinstance(s, Text)] == ["drill ", " 20"]
    assert sum(isinstance(s, Line) for s in strokes) == 4


def test_rows_stand_below_one_another_and_the_datum_hangs_below_the_last():
    label = Label((text_row("one", "first"), text_row("two", "second")), "C")
    first, second, datum = label.items((100.0, 50.0))
    assert (first.id, second.id, datum.id) == ("one", "two", "datum.C")
    assert first.strokes[0].at[1] - second.strokes[0].at[1] == pytest.approx(ROW)
    assert datum.strokes[-1].words == "C"
    assert 50.0 <= of_points([p for s in datum.strokes for p in corners(s)])[1] < second.strokes[0].at[1]
    assert label.height > 2 * ROW


def test_a_leader_arrives_at_the_frame_below_a_texture():
    texture = row_of(note("texture", "Ra {}", 1.6), Figures())
    frame = row_of(note("flatness", "", 0.01), Figures())
    assert Label((texture, frame)).lead is frame
    assert Label((texture, frame)).lead_height == pytest.approx(ROW / 2)
    assert Label((text_row("x", "words"), frame)).lead.id == "x"


def test_numbers_stand_in_circles():
    row = row_of(note(number=12), Figures())
    circle = next(s for s in row.strokes if isinstance(s, Arc))
    box = text_box(next(s for s in row.strokes if isinstance(s, Text) and s.words == "12"))
    assert circle.centre[0] - circle.radius < box.left
    assert box.right < circle.centre[0] + circle.radius
