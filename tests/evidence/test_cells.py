"""Units and numbers of a measured line."""

import math

import pytest
from hypothesis import given
from hypothesis import strategies as st

from blockgen.evidence.cells import CellProblem, in_unit, measurement_of
from tests.evidence.samples import rows_of


@pytest.mark.parametrize(
    ("text", "written", "unit", "value"),
    [("12", "um", "mm", 0.012), ("1", "in", "mm", 25.4), ("0.0016", "mm", "um", 1.6), ("0.05", "mm/m", "mm/m", 0.05),
     ("50", "um/m", "mm/m", 0.05), ("0.05", "mrad", "mm/m", 0.05), ("1", "deg", "mm/m", 1000 * math.pi / 180),
     ("1", "", "", 1)],
)  # fmt: skip
def test_units_are_converted(text, written, unit, value):
    assert in_unit(text, written, unit) == pytest.approx(value)


def cells(value="45.01", unit="mm", uncertainty="0.002"):
    return {"value": value, "unit": unit, "uncertainty": uncertainty}


def test_an_empty_value_is_not_measured():
    assert measurement_of(rows_of()["bearing_bore.diameter"], cells(value="", uncertainty=""), 3) is None


@given(st.floats(0, 1000).map(lambda v: round(v, 4)))
def test_what_the_sheet_holds_comes_back(value):
    found = measurement_of(rows_of()["bearing_bore.diameter"], cells(value=f"{value:.4f}"), 3)
    assert found.value == pytest.approx(value)
    assert (found.uncertainty, found.line) == (0.002, 3)


@pytest.mark.parametrize(
    ("given", "row", "expected", "remedy"),
    [
        ({"value": "45,012"}, "bearing_bore.diameter", "a number with a decimal point", "write 45.012"),
        ({"uncertainty": "0,002"}, "bearing_bore.diameter", "a number with a decimal point", "write 0.002"),
        ({"value": "nan"}, "bearing_bore.diameter", "a finite number", ""),
        ({"value": "inf"}, "bearing_bore.diameter", "a finite number", ""),
        ({"value": "1e999"}, "bearing_bore.diameter", "finite and at most", ""),
        ({"value": "ok"}, "bearing_bore.diameter", "a finite number", ""),
        ({"value": "=1+1"}, "bearing_bore.diameter", "a finite number", ""),
        ({"unit": ""}, "bearing_bore.diameter", "a unit, mm", ""),
        ({"unit": "N"}, "bearing_bore.diameter", "a length", '"N" is a unit of force'),
        ({"unit": "furlong"}, "bearing_bore.diameter", "a length", '"furlong" is not a known unit'),
        ({"unit": "mm"}, "motor_seat.slope_y", "a slope", '"mm" is a unit of length'),
        ({"uncertainty": ""}, "bearing_bore.diameter", "a number, 0 or more", "0.0025 mm would do"),
        ({"uncertainty": "-0.002"}, "bearing_bore.diameter", "0 or more", "without a sign"),
        ({"value": "-0.01"}, "motor_bore.coaxiality", "0 or more", "only offsets and slopes have a sign"),
    ],
)
def test_wrong_cells(given, row, expected, remedy):
    with pytest.raises(CellProblem, match="expected") as told:
        measurement_of(rows_of()[row], cells(**given), 3)
    assert expected in told.value.expected
    assert remedy in told.value.remedy


def test_an_offset_may_be_negative():
    assert measurement_of(rows_of()["motor_bore.offset_y"], cells(value="-0.01"), 3).value == -0.01
