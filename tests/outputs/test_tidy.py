import math

import pytest

from blockgen.outputs.tidy import as_json, tidy


@pytest.mark.parametrize(
    ("number", "expected"),
    [(math.nan, None), (math.inf, None), (-1e-17, 0.0), (1.23456789, 1.234568), (2.345678901e-5, 2.34568e-05), (3, 3)],
)
def test_numbers_are_rounded_and_finite(number, expected):
    assert tidy({"a": (number,)}) == {"a": [expected]}


def test_json_refuses_what_no_reader_knows():
    with pytest.raises(ValueError, match="not JSON compliant"):
        as_json({"a": math.nan})
