import math

import pytest

from blockgen.outputs import show
from blockgen.record import Input, Record


@pytest.mark.parametrize(
    ("value", "expected"),
    [(140.0, "140"), (0.25, "0.25"), (4, "4"), (-0.0, "0"), (23.4e-6, "2.34e-05"), (1 / 3, "0.3333"), (math.inf, "-")],
)
def test_numbers_have_no_needless_digits(value, expected):
    assert show.number(value) == expected


@pytest.mark.parametrize(
    ("value", "expected"), [(None, "-"), (0.0, "0"), (28123.4, "28123"), (0.0123461, "0.01235"), (12.0, "12")]
)
def test_significant_digits(value, expected):
    assert show.significant(value) == expected


def test_values_of_other_kinds():
    assert show.value(((1.0, -2.5), (3.0, 4.0))) == "((1, -2.5), (3, 4))"
    assert show.value(True) == "yes"
    assert show.with_unit(None, "mm") == "-"


def test_deviations():
    assert show.deviations("H7", 0.03, 0.0) == "H7 +0.03/0"
    assert show.deviations(None, 0.02, -0.02) == "\u00b10.02"
    assert show.deviations("h6", 0.0, -0.016) == "h6 0/-0.016"
    assert show.deviations(None, None, None) == ""


def made(rule, **inputs):
    named = {k.replace("__", "."): Input(v, "mm", "given", None) for k, v in inputs.items()}
    return Record("length", 65.0, "mm", "sized", rule, named)


def test_derivation_is_formula_substitution_result():
    record = made("journal_reach + shaft length", screw__journal_reach=35.0, motor__shaft_length=30.0)
    assert show.derivation(record) == "journal_reach + shaft length = 35 + 30 = 65 mm"


def test_a_rule_in_words_lists_its_inputs():
    record = made("the larger one", a__one=35.0, b__two=30.0)
    assert show.derivation(record) == "the larger one; from a.one = 35 mm, b.two = 30 mm; result 65 mm"


@pytest.mark.parametrize(
    ("rule", "expected"),
    [
        ("motor.pilot_length + motor pilot length", "3 + 3"),
        ("length - coupling length / 2", "90 - 50 / 2"),
        ("max(side_wall, 2 x length)", "max(20, 2 x 90)"),
        ("(length - side_wall) / 2", "(90 - 20) / 2"),
        ("screw length - side_wall", "25 - 20"),
        ("pilot_length + 1", ""),  # either of two
        ("side_wall + something else", ""),
        ("side_wall", ""),
        ("side_walls + length.x", ""),
    ],
)
def test_a_formula_is_shown_with_its_numbers(rule, expected):
    inputs = {"motor__pilot_length": 3.0, "bearing__pilot_length": 10.0, "length": 90.0, "coupling__length": 50.0}
    assert show.substitution(made(rule, **inputs, side_wall=20.0, base_screw_length=25.0)) == expected


@pytest.mark.parametrize(
    ("margin", "expected"),
    [(0.25, "25 %"), (-1.0, "-100 %"), (0.0, "0 %"), (-0.0001, "-0.01 %"), (None, "-"), (math.nan, "-")],
)
def test_a_small_margin_is_not_shown_as_none(margin, expected):
    assert show.margin(margin) == expected


@pytest.mark.parametrize(
    ("key", "points", "text"),
    [
        ("base_pattern", ((10.5, -39.5), (10.5, 39.5), (78.0, -39.5), (78.0, 39.5)), "x 10.5 / 78, y \u00b139.5 mm"),
        ("motor.bolt_positions", ((-32.0, 30.0), (32.0, 30.0)), "y \u00b132, z 30 mm"),
        ("base.hole_positions", ((10.0, -39.5), (78.0, 39.5)), "(x, y) (10, -39.5), (78, 39.5) mm"),
        ("base.hole_positions", ((10.0, 5.0), (10.0, 5.0)), "(x, y) (10, 5), (10, 5) mm"),
    ],
)
def test_a_pattern_of_holes_is_told_by_its_rows_and_columns(key, points, text):
    assert show.amount(Record(key, points, "mm", "sized", "")) == text


def test_an_amount_that_is_no_pattern_is_value_and_unit():
    assert show.amount(Record("base_torque", 24.9, "N*m", "sized", "")) == "24.9 N\u00b7m"
    assert show.amount(Record("x", (), "mm", "sized", "")) == "() mm"
    assert show.quantity(7.1, "N*m") == "7.1 N\u00b7m"
    assert show.unit_sign("kg/m^3") == "kg/m3"


def test_whole_numbers_keep_their_zeros():
    assert show.significant(2400.0) == "2400"
    assert show.significant(120000.0, 3) == "120000"
    assert show.number(30.0, 0) == "30"
