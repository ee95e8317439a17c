"""The inspection sheet: each row in its table, numbers as on the drawing, room to write."""

import pytest

from blockgen.evidence.characteristics import inspection_rows
from blockgen.outputs.drawing.figures import Figures
from blockgen.outputs.drawing.inspection_page import COLUMNS, inspection_parts
from blockgen.outputs.drawing.pages import width
from tests.sizing.strategies import sized


@pytest.fixture(scope="module")
def rows():
    return inspection_rows(sized())


def test_every_row_stands_in_one_table(rows):
    parts = {part.heading: part for part in inspection_parts(rows, Figures())}
    found = [row[1] for heading in ("Block", "Bought parts, where they can be measured") for row in parts[heading].rows]
    assert sorted(found) == sorted(row.id for row in rows)


def test_numbers_are_those_of_the_drawing(rows):
    plan = sized()
    block = next(part for part in inspection_parts(rows, Figures()) if part.heading == "Block")
    numbers = {row[1]: row[0] for row in block.rows}
    for note in plan.annotations:
        if note.number and note.id in numbers:
            assert numbers[note.id].split(".")[0] == str(note.number)


def test_columns_fill_the_page_and_the_last_are_empty(rows):
    assert sum(column.width for column in COLUMNS) == pytest.approx(width())
    block = inspection_parts(rows, Figures(comma=True))[0]
    assert all(row[-3:] == ("", "", "") for row in block.rows)
    assert all("." not in cell for row in block.rows for cell in row[3:6])


def test_equal_conventions_are_told_once(rows):
    part = next(p for p in inspection_parts(rows, Figures()) if p.heading == "Conventions")
    words = [row[1] for row in part.rows]
    assert words
    assert len(words) == len(set(words))
