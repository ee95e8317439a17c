import pytest
from hypothesis import given
from hypothesis import strategies as st

from blockgen.change.compare.data import Change
from blockgen.change.compare.values import changes, entries, same


@pytest.mark.parametrize(
    ("one", "other", "equal"),
    [
        (113.0, 113, True),
        (113.0, 113.000001, True),
        (113.0, 113.00001, False),
        (0.000322581, 0.000322582, True),
        (0.000322581, 0.0003226, False),
        (True, 1, False),
        (True, True, True),
        (None, 0, False),
        ("M6", "M6", True),
        ([1.0, 2.0], (1.0, 2.0), True),
        ([1.0], [1.0, 2.0], False),
        ({"a": 1.0}, {"a": 1.0000001}, True),
        ({"a": 1.0}, {"b": 1.0}, False),
        ("113", 113, False),
    ],
)
def test_the_last_written_digit_does_not_count(one, other, equal):
    assert same(one, other) is equal
    assert same(other, one) is equal


@given(st.floats(1e-9, 1e9), st.floats(1.001, 2.0))
def test_a_thousandth_always_counts(value, factor):
    assert not same(value, value * factor + 2e-6 * (value >= 1e-3))


def test_only_named_attributes_are_compared():
    old, new = {"a": 1, "b": 2, "c": 3}, {"a": 1, "b": 3, "c": 4}
    assert changes(old, new, ("a", "b")) == (Change("b", 2, 3),)


def test_entries_keep_the_old_order_and_add_the_new_ones():
    found = entries({"b": {"v": 1}, "a": {"v": 1}}, {"c": {"v": 1}, "a": {"v": 2}}, ("v",))
    assert [(e.id, e.state) for e in found] == [("b", "removed"), ("a", "changed"), ("c", "added")]
