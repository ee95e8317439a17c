import math
from itertools import product

import pytest
from hypothesis import given
from hypothesis import strategies as st

from blockgen.change.sweep.axes import Axis
from blockgen.change.sweep.points import MOST, Points, latin_hypercube, shuffled
from blockgen.errors import InputError


def axis(*values, continuous=False):
    return Axis(f"base.{len(values)}", "base", ("base", "x"), "mm", values, continuous)


def test_a_grid_runs_through_the_last_key_first():
    grid = Points((axis(1.0, 2.0), axis("a", "b", "c")))
    assert list(grid) == list(product((1.0, 2.0), "abc"))
    assert len(grid) == 6


def test_a_large_grid_is_not_made_beforehand():
    grid = Points((axis(*range(1000)), axis(*range(1000))))
    assert grid[MOST - 1] == (999, 999)
    with pytest.raises(InputError, match="at most 1000000"):
        Points((axis(*range(1000)), axis(*range(1001))))


@given(st.integers(1, 40), st.integers(0, 2**32))
def test_a_sample_is_the_same_on_every_run_and_takes_nothing_twice(count, seed):
    axes = (axis(*range(7)), axis(*range(9)))
    found = list(Points(axes, count, seed))
    assert found == list(Points(axes, count, seed))
    assert len(set(found)) == count
    assert set(found) <= set(Points(axes))


def test_another_seed_takes_another_sample():
    axes = (axis(0.0, 1.0, continuous=True), axis(*range(50)))
    assert list(Points(axes, 20, 1)) != list(Points(axes, 20, 2))


def test_a_known_seed_gives_known_numbers():
    # Written down once, so that a change of the method does not go unseen: journals and tables hang on it.
    assert list(Points((axis(0.0, 10.0, continuous=True), axis("a", "b")), 4, 0)) == KNOWN


KNOWN = [(8.6915, "b"), (7.2703, "a"), (3.2046, "a"), (1.5459, "b")]


def test_a_sample_as_large_as_the_grid_is_the_grid():
    axes = (axis(1, 2, 3), axis("a", "b"))
    assert list(Points(axes, 6)) == list(Points(axes)) == list(Points(axes, 100))


def test_a_sample_that_cannot_differ_is_told():
    with pytest.raises(InputError, match="wider ranges"):
        Points((axis(1000.0, 1000.001, continuous=True),), 50)


@given(st.integers(1, 60), st.integers(1, 4), st.integers(0, 999))
def test_each_slice_of_a_hypercube_holds_one_point(count, width, seed):
    import random

    cube = list(latin_hypercube(count, width, random.Random(seed)))
    for places in zip(*cube, strict=True):
        assert sorted(math.floor(place * count) for place in places) == list(range(count))


def test_a_continuous_sample_stays_inside():
    found = [x for (x,) in Points((axis(2.0, 3.0, continuous=True),), 200)]
    assert 2.0 <= min(found) < 2.01
    assert 2.99 < max(found) <= 3.0


@given(st.integers(0, 200))
def test_a_shuffle_keeps_all(count):
    import random

    assert sorted(shuffled(count, random.Random(1))) == list(range(count))
