"""Pages: tables run on with their heading, no row is lost, the foot tells number and status."""

import pytest

from blockgen.outputs.drawing.pages import Part, paginated, sheet, width
from blockgen.outputs.drawing.strokes import Text
from blockgen.outputs.drawing.tables import Column
from tests.outputs.drawing.test_title_block import titles
from tests.outputs.drawing.touching import outside_frame, overlaps

COLUMNS = (Column("No.", 20.0), Column("Words", 247.0))


def part(count, heading="Rows"):
    return Part(heading, COLUMNS, tuple((str(n), f"row {n}") for n in range(count)))


def test_rows_run_on_in_order_with_their_heading():
    pages = paginated([part(90), part(3, "Others")])
    assert len(pages) > 2
    assert [row[0] for page in pages for p in page.parts if p.heading == "Rows" for row in p.rows] == [
        str(n) for n in range(90)
    ]
    assert all(page.parts[0].heading in {"Rows", "Others"} for page in pages)


def test_a_table_does_not_start_with_a_single_row_at_the_foot_of_a_page():
    for count in range(20, 60):
        pages = paginated([part(count), part(5, "Others")])
        first = next(p for page in pages for p in page.parts if p.heading == "Others")
        assert len(first.rows) > 1


@pytest.mark.parametrize("status", ["released for review", "NOT FOR MANUFACTURE: " + "reason, " * 80])
def test_a_page_touches_nothing_and_tells_its_status(status):
    paragraphs = Part("Notes", (), (("words " * 90,), ("more",)))
    for number, page in enumerate(paginated([part(70), paragraphs])):
        made = sheet(page, f"x_{number}", titles(status=status, sheet=number + 2))
        assert overlaps(made) == []
        assert outside_frame(made, (20, 10, 287, 200)) == []
        words = [s.words for i in made.items for s in i.strokes if isinstance(s, Text)]
        assert any(line.startswith(f"Status: {status[:15]}") for line in words)
        assert f"{number + 2}/7" in words


def test_tables_are_as_wide_as_the_page():
    assert width() == 267.0
