import pytest

from blockgen.outputs import show
from blockgen.record import Input, Record


@pytest.mark.parametrize(
    ("value", "expected"),
    [(140.0, "140"), (0.25, "0.25"), (4, "4"), (-0.0, "0"), (23.4e-6, "2.34e-05"), (1 / 3, "0.3333"), (float("inf"), "-")],
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
    assert show.derivation(record) == "journal_reach + shaft length | 35 + 30 = 65 mm"


def test_a_rule_in_words_lists_its_inputs():
    record = made("the larger one", a__one=35.0, b__two=30.0)
    assert show.derivation(record) == "the larger one | a.one = 35 mm, b.two = 30 mm = 65 mm"


def test_names_that_could_mean_either_are_left_alone():
    record = made("pilot_length + motor.pilot_length + 1", motor__pilot_length=3.0, bearing__pilot_length=10.0)
    assert show.substitution(record) == "pilot_length + 3 + 1"


def test_parts_of_longer_names_are_left_alone():
    assert show.substitution(made("2 * wall + side_wall + wall.x", a__wall=3.0)) == "2 * 3 + side_wall + wall.x"
