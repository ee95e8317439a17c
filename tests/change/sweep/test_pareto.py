from hypothesis import given
from hypothesis import strategies as st

from blockgen.change.sweep.pareto import front

FIGURES = st.lists(st.tuples(*(st.integers(0, 4).map(float) for _ in range(3))), max_size=40)


def beaten(row, other):
    return all(o <= r for o, r in zip(other, row, strict=True)) and other != row


@given(FIGURES)
def test_the_front_is_what_brute_force_finds(rows):
    assert front(rows) == [i for i, row in enumerate(rows) if not any(beaten(row, other) for other in rows)]


def test_equal_rows_stand_on_the_front_together():
    assert front([(1.0, 2.0), (2.0, 1.0), (1.0, 2.0), (2.0, 2.0)]) == [0, 1, 2]


def test_nothing_has_no_front():
    assert front([]) == []
