import pytest
from hypothesis import given
from hypothesis import strategies as st

from blockgen.change.swap.revision import next_revision


@pytest.mark.parametrize(
    ("old", "new"),
    [
        ("A", "B"), ("H", "J"), ("N", "P"), ("Z", "AA"), ("AZ", "BA"), ("a", "b"), ("1", "2"), ("09", "10"),
        ("R3", "R4"), ("B.2", "B.3"), ("1-C", "1-D"), ("", None), ("-", None), ("draft", None), ("I", None),
        ("É", None), ("99999999999", None),
    ],
)  # fmt: skip
def test_the_next_revision(old, new):
    assert next_revision(old) == new


@given(st.text(max_size=6))
def test_a_next_revision_is_another_one(old):
    assert next_revision(old) != old
