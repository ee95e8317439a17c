"""The setup sheet as the shop reads it."""

import pytest

from blockgen.making.setup_sheet import SetupSheet, SheetTable
from blockgen.outputs.drawing.figures import Figures
from blockgen.outputs.drawing.pages import width
from blockgen.outputs.drawing.setup_page import setup_parts, written

TOOLS = SheetTable("Tools", ("No.", "Tool"), (("1", "drill diam 5.5"), ("2", "mill " * 40)), "by hand")
EMPTY = SheetTable("Others", ("No.", "What"), (("1", "-"),))
SHEET = SetupSheet("GL-040-11", EMPTY, EMPTY, TOOLS, EMPTY, EMPTY, ("turn 90 deg",), ())


@pytest.mark.parametrize(
    ("plain", "signs"),
    [
        ("drill diam 5.5", "drill ⌀5.5"),
        ("4 x M6", "4 × M6"),
        ("90 deg", "90°"),
        ("box x axis", "box x axis"),
        ("2 x diam 8", "2 × ⌀8"),
    ],
)
def test_plain_words_become_signs(plain, signs):
    assert written(plain, Figures()) == signs


def test_the_decimal_sign_is_the_sheets_and_full_stops_stay():
    assert written("5.5 mm. Next", Figures(comma=True)) == "5,5 mm. Next"


def test_tables_fill_the_page_and_remarks_and_notes_follow():
    parts = setup_parts(SHEET, Figures())
    assert [p.heading for p in parts] == ["Others", "Others", "Tools", "Tools: remark", "Others", "Others", "Notes"]
    tools, remark, notes = parts[2], parts[3], parts[-1]
    assert sum(column.width for column in tools.columns) == pytest.approx(width())
    assert tools.rows[0] == ("1", "drill ⌀5.5")
    assert remark.rows == (("by hand",),)
    assert notes.rows == (("turn 90°",),)
