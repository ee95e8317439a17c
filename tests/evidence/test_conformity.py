"""In, out, cannot be told."""

import pytest
from hypothesis import given
from hypothesis import strategies as st

from blockgen.evidence.conformity import conformities, judged, limit_words, value_words
from tests.evidence.samples import changed, made, measured, rows_of


@pytest.mark.parametrize(
    ("identifier", "value", "doubt", "told"),
    [
        ("bearing_bore.diameter", 45.0125, 0.002, ("in", "")),
        ("bearing_bore.diameter", 45.023, 0.002, ("in", "")),
        ("bearing_bore.diameter", 45.0235, 0.002, ("cannot be told", "above")),
        ("bearing_bore.diameter", 45.0265, 0.002, ("cannot be told", "above")),
        ("bearing_bore.diameter", 45.0275, 0.002, ("out", "above")),
        ("bearing_bore.diameter", 44.9995, 0.002, ("cannot be told", "below")),
        ("bearing_bore.diameter", 44.997, 0.002, ("out", "below")),
        ("bearing_bore.diameter", 45.001, 0.03, ("cannot be told", "below")),
        ("motor_bore.coaxiality", 0.0, 0.002, ("in", "")),  # 0 is the best of a zone, not its edge
        ("motor_bore.coaxiality", 0.019, 0.002, ("cannot be told", "above")),
        ("base.texture", 0.4, 0.1, ("in", "")),
        ("base.texture", 1.8, 0.1, ("out", "above")),
        ("motor_bore.offset_y", 5.0, 0.1, ("no limit", "")),
        ("motor.spigot_runout", 0.001, 0.002, ("in", "")),
    ],
)
def test_the_rule(identifier, value, doubt, told):
    assert judged(rows_of()[identifier], value, doubt) == told


@given(st.floats(44.9, 45.1), st.floats(0, 0.02), st.floats(0, 0.02))
def test_more_doubt_never_tells_more(value, doubt, more):
    row = rows_of()["bearing_bore.diameter"]
    told, later = judged(row, value, doubt)[0], judged(row, value, doubt + more)[0]
    assert later in {told, "cannot be told"}


def test_a_zone_is_derived_where_it_was_not_measured():
    values = changed(motor_bore__coaxiality=None, motor_bore__offset_y=(0.02, 0.001), motor_bore__offset_z=(0, 0.001))
    one = next(c for c in conformities(made().plan, measured(values)) if c.row.id == "motor_bore.coaxiality")
    assert (one.told, one.side, one.value) == ("out", "above", pytest.approx(0.04))
    assert "measured offset" in one.rule
    assert value_words(one) == "0.04"


def test_every_row_has_an_entry():
    found = conformities(made().plan, measured({"base.flatness": (0.01, 0.002)}))
    assert [c.row.id for c in found] == list(rows_of())
    assert {c.told for c in found} == {"in", "not measured"}


def test_limits_in_words():
    rows = rows_of()
    assert limit_words(rows["bearing_bore.diameter"]) == "45 to 45.025"
    assert limit_words(rows["base.flatness"]) == "to 0.02"
    assert limit_words(rows["motor_bore.offset_y"]) == "-"
