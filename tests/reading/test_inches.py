"""Which sizes are said to be round in inches."""

import pytest
from hypothesis import given
from hypothesis import strategies as st

from blockgen.reading.inches import inch_words


@pytest.mark.parametrize(
    ("value", "inch_file", "words"),
    [
        (73.025, False, "2.875 in"),
        (73.03, False, "2.875 in"),
        (73.04, False, ""),
        (38.1, False, "1.5 in"),
        (127.0, False, ""),
        (127.0, True, "5 in"),
        (92.0, True, ""),
        (0.866 * 25.4, False, ""),
        (0.866 * 25.4, True, "0.866 in"),
        (0.0, True, ""),
    ],
)
def test_words(value, inch_file, words):
    assert inch_words(value, inch_file=inch_file) == words


@given(st.integers(1, 64 * 20).filter(lambda n: n % 64 and (n * 25.4 / 64) % 0.5 > 0.01))
def test_every_sixty_fourth_is_named(number):
    words = inch_words(number * 25.4 / 64, inch_file=True)
    assert words.endswith(" in")
    assert abs(float(words.removesuffix(" in")) - number / 64) < 1e-5
