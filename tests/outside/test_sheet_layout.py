"""Sheet and frame against a public account of ISO 5457.

Wikibooks, "Technisches Zeichnen/ Zeichenblätter", sections "Gestaltung" and "Rahmen der Zeichenfläche",
de.wikibooks.org/wiki/Technisches_Zeichnen/_Zeichenblätter. Reached as an excerpt of a stored copy of that page. Line
and letters of the reference fields and their number were put right after it, so that those tests prove no more than
that the sheet holds them; sizes, drawing space and frame had been remembered.
"""

from itertools import pairwise

import pytest

from blockgen.outputs.drawing.paper import frame, paper
from blockgen.outputs.drawing.strokes import PEN_WIDTH, Line, Text

TRIMMED = {"A0": (841, 1189), "A1": (594, 841), "A2": (420, 594), "A3": (297, 420), "A4": (210, 297)}
DRAWING_SPACE = {"A0": (821, 1159), "A1": (574, 811), "A2": (400, 564), "A3": (277, 390), "A4": (180, 277)}
LONG_SIDE = {"A0": 24, "A1": 16, "A2": 12, "A3": 8, "A4": 6}
SHORT_SIDE = {"A0": 16, "A1": 12, "A2": 8, "A3": 6, "A4": 4}


def lines(sheet):
    return [stroke for stroke in frame(sheet).strokes if isinstance(stroke, Line)]


def marks(sheet):
    return [stroke for stroke in frame(sheet).strokes if isinstance(stroke, Text)]


def names(sheet, *, letters):
    """Return the names of the fields in their order, as they stand on both sides of the sheet."""
    words = [mark.words for mark in marks(sheet) if mark.words.isalpha() == letters]
    assert words[::2] == words[1::2]
    return words[::2]


def cuts(sheet, axis):
    """Return where the fields are parted along the lower or the left edge, without the ends."""
    area = sheet.area
    short = [s for s in lines(sheet) if s.pen == "medium" and abs(s.start[axis] - s.end[axis]) < 1e-9]
    low = (area.bottom, area.left)[axis]
    return sorted(s.start[axis] for s in short if max(s.start[1 - axis], s.end[1 - axis]) == low)


@pytest.mark.parametrize("size", TRIMMED)
def test_trimmed_size(size):
    assert sorted((paper(size).width, paper(size).height)) == list(TRIMMED[size])


@pytest.mark.parametrize("size", DRAWING_SPACE)
def test_drawing_space(size):
    area = paper(size).area
    assert sorted((area.right - area.left, area.top - area.bottom)) == list(DRAWING_SPACE[size])


@pytest.mark.parametrize("size", TRIMMED)
def test_the_frame_stands_20_mm_from_the_left_edge_and_10_mm_from_the_others_and_is_0_7_mm_wide(size):
    sheet = paper(size)
    left, bottom, right, top = 20, 10, sheet.width - 10, sheet.height - 10
    corners = {(left, bottom), (right, bottom), (right, top), (left, top)}
    sides = [line for line in lines(sheet) if line.start in corners and line.end in corners]
    assert {line.start for line in sides} == corners
    assert {PEN_WIDTH[line.pen] for line in sides} == {0.7}


@pytest.mark.parametrize("size", TRIMMED)
def test_number_of_fields(size):
    counts = (len(names(paper(size), letters=False)), len(names(paper(size), letters=True)))
    assert sorted(counts) == [SHORT_SIDE[size], LONG_SIDE[size]]


def test_an_a4_sheet_that_lies_lengthwise_has_the_same_number_of_fields():
    sheet = paper("A4", lengthwise=True)
    assert (len(names(sheet, letters=False)), len(names(sheet, letters=True))) == (6, 4)


@pytest.mark.parametrize("size", TRIMMED)
@pytest.mark.parametrize("axis", [0, 1])
def test_fields_are_50_mm_long_from_the_axis_of_the_sheet(size, axis):
    sheet = paper(size)
    middle = (sheet.width / 2, sheet.height / 2)[axis]
    found = cuts(sheet, axis)
    assert middle in found
    assert {round(b - a, 9) for a, b in pairwise(found)} == {50.0}


def test_letters_run_down_without_i_and_o_and_numerals_to_the_right():
    sheet = paper("A0")
    assert names(sheet, letters=True) == list("ABCDEFGHJKLMNPQR")
    assert names(sheet, letters=False) == [str(number) for number in range(1, 25)]
    heights = [mark.at[1] for mark in marks(sheet) if mark.words.isalpha()]
    places = [mark.at[0] for mark in marks(sheet) if mark.words.isdigit()]
    assert heights == sorted(heights, reverse=True)
    assert places == sorted(places)


def test_fields_have_lines_of_0_35_mm_and_letters_of_3_5_mm():
    sheet = paper("A2")
    fields = [line for line in lines(sheet) if line.pen != "border"]
    assert {PEN_WIDTH[line.pen] for line in fields} == {0.35}
    assert {mark.height for mark in marks(sheet)} == {3.5}
