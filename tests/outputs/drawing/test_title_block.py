"""The title block: all its fields, and texts that stay in their cells."""

import pytest

from blockgen.outputs.drawing.strokes import Sheet, Text
from blockgen.outputs.drawing.title_block import WIDTH, Titles, title_block
from tests.outputs.drawing.touching import outside_frame, overlaps


def titles(**changes):
    given = {
        "owner": "Tile glazing line", "number": "GL-040-11", "revision": "A", "title": "Bearing block",
        "kind": "Part drawing", "status": "released for review", "creator": "M. Keller", "date": "2026-02-03",
        "language": "en", "sheet": 1, "sheets": 7, "size": "A2", "scale": "1:1", "projection": "first",
        "tolerances": "ISO 2768-mK", "mass": "1.8 kg", "material": "EN AW-6082-T6",
    }  # fmt: skip
    return Titles(**(given | changes))


def made(**changes):
    item, height = title_block((584.0, 10.0), titles(**changes))
    return Sheet("x", "t", "A2", 594.0, 420.0, 1.0, (item,)), height


def words(sheet):
    return [s.words for s in sheet.items[0].strokes if isinstance(s, Text)]


def test_every_value_stands_in_it():
    found = words(made()[0])
    for value in ("Tile glazing line", "GL-040-11", "Bearing block", "Part drawing", "released for review", "M. Keller",
                  "2026-02-03", "1/7", "A2", "1:1", "ISO 2768-mK", "1.8 kg", "EN AW-6082-T6"):  # fmt: skip
        assert value in found


@pytest.mark.parametrize(
    "changes",
    [
        {},
        {"status": "PRELIMINARY: " + "a reason that is long, " * 12},
        {"status": "NOT FOR MANUFACTURE: " + "many reasons " * 60},
        dict.fromkeys(("owner", "number", "title", "creator", "material", "revision"), "unbreakable" * 18),
        dict.fromkeys(("owner", "number", "title", "creator", "material", "tolerances"), "many short words " * 12),
        {"projection": "", "scale": ""},
    ],
)
def test_texts_of_any_length_stay_in_their_cells(changes):
    sheet, height = made(**changes)
    assert overlaps(sheet) == []
    assert outside_frame(sheet, (584.0 - WIDTH, 10.0, 584.0, 10.0 + height)) == []


def test_what_is_cut_ends_with_dots():
    assert any(line.endswith("...") for line in words(made(owner="many short words " * 12)[0]))
    assert not any(line.endswith("...") for line in words(made()[0]))


def test_a_warning_is_written_larger_and_makes_the_block_higher():
    _, high = made()
    warned, higher = made(status="PRELIMINARY: sizes are assumed " * 6)
    assert higher > high
    letters = [s.height for s in warned.items[0].strokes if isinstance(s, Text) and "PRELIMINARY" in s.words]
    assert min(letters) == 3.5
