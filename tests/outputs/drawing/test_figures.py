"""Numbers on the sheet."""

import pytest
from hypothesis import given
from hypothesis import strategies as st

from blockgen.outputs.drawing.figures import Figures


@pytest.mark.parametrize(
    ("value", "text"), [(20.0, "20"), (0.5, "0.5"), (-0.0001, "0"), (100.0, "100"), (31.8199, "31.82"), (0.0, "0")]
)
def test_needless_zeros_are_left_out(value, text):
    assert Figures().number(value) == text
    assert Figures(comma=True).number(value) == text.replace(".", ",")


def test_deviations_have_signs_but_nought_has_none():
    assert [Figures().deviation(v) for v in (0.02, -0.02, 0.0, 0.00001)] == ["+0.02", "-0.02", "0", "0"]


@given(st.floats(-1e4, 1e4), st.integers(0, 4))
def test_what_is_written_is_the_number_rounded(value, digits):
    assert float(Figures().number(value, digits)) == pytest.approx(value, abs=0.5001 * 10.0**-digits)
