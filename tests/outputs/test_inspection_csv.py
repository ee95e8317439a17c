"""The inspection sheet as a file."""

import csv
import io
from dataclasses import replace

import pytest

from blockgen.evidence.measured import COLUMNS as NEEDED
from blockgen.outputs.inspection_csv import COLUMNS, inspection_csv, safe
from tests.evidence.samples import made, rows_of

HASH = "a" * 64


def lines(text):
    return [cells for cells in csv.reader(io.StringIO(text)) if not cells[0].startswith("#")]


def test_every_row_with_empty_value_and_uncertainty():
    heading, *rows = lines(inspection_csv(made().plan, HASH, "released for review"))
    assert tuple(heading) == COLUMNS
    assert COLUMNS[: len(NEEDED)] == NEEDED
    assert [row[1] for row in rows] == list(rows_of())
    assert all(len(row) == len(COLUMNS) and row[0] == HASH and row[2] == row[4] == "" for row in rows)


def test_limits_and_units_stand_there():
    rows = {row[1]: dict(zip(COLUMNS, row, strict=True)) for row in lines(inspection_csv(made().plan, HASH, "x"))}
    bore = rows["motor_bore.diameter"]
    assert (bore["nominal"], bore["lower"], bore["upper"], bore["unit"]) == ("70", "70", "70.03", "mm")
    assert rows["motor_bore.coaxiality"]["datums"] == "A B"
    assert rows["base.texture"]["lower"] == ""
    assert rows["motor_bore.offset_y"]["number"] == f"{rows['motor_bore.coaxiality']['number']}.1"


def test_the_status_stands_in_a_remark():
    text = inspection_csv(made().plan, HASH, "NOT FOR MANUFACTURE: it slips, it bends")
    first = next(csv.reader(io.StringIO(text)))
    assert first == ["# Status: NOT FOR MANUFACTURE: it slips, it bends"]


def test_line_ends_and_bytes():
    text = inspection_csv(made().plan, HASH, "x")
    assert "\r" not in text
    assert text.endswith("\n")
    assert text == inspection_csv(made().plan, HASH, "x")


def test_the_users_text_starts_no_formula_and_no_line():
    plan = made().plan
    title = replace(plan.records["job.title"], value='=HYPERLINK("x")\nspec_hash,evil\n@1')
    text = inspection_csv(replace(plan, records={**plan.records, "job.title": title}), HASH, "=1+1\n+2")
    cells = [cell for row in csv.reader(io.StringIO(text)) for cell in row]
    assert not [cell for cell in cells if cell.startswith(("=", "+", "-", "@"))]
    assert lines(text)[0] == list(COLUMNS)


@pytest.mark.parametrize("text", ["=1", "+1", "-1", "@x", "\t=1", " =1"])
def test_formulas_are_made_text(text):
    assert safe(text) == f"'{text.strip()}"


def test_other_text_stays():
    assert safe("a, b = c") == "a, b = c"
