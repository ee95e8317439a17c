"""Tests of packed arrays."""

from __future__ import annotations

import itertools

import numpy as np
from hypothesis import given
from hypothesis import strategies as st
from hypothesis.extra.numpy import arrays

from blockgen.outputs.report.scene_numbers import along, box_of, integers, quantised, runs
from tests.outputs.report import scene_reader as reader


@given(arrays(float, st.tuples(st.integers(1, 30), st.just(3)), elements=st.floats(-500, 500)))
def test_points_come_back_within_a_step(points):
    packed = quantised(points)
    assert np.abs(reader.points(packed) - points).max() <= 0.51 * max(*packed["step"], 1e-6) + 1e-5


@given(st.lists(st.integers(0, 5), min_size=1))
def test_runs_come_back(numbers):
    packed = runs(np.array(numbers))
    assert reader.faces(packed).tolist() == numbers
    assert all(one[0] != other[0] for one, other in itertools.pairwise(packed))


def test_numbers_take_32_bits_only_where_they_must():
    for greatest, bits in ((65535, 16), (65536, 32)):
        packed = integers(np.array([[0, greatest]]))
        assert packed["bits"] == bits
        assert reader.integers(packed, 2).tolist() == [[0, greatest]]


def test_length_along_an_axis_and_box():
    vectors = np.array([[(1.0, 2.0, 3.0)], [(0.0, -1.0, 4.0)]])
    assert along(vectors, (2.0, 0.5, -1.0)).tolist() == [[0.0], [-4.5]]
    assert box_of(vectors.reshape(-1, 3)) == (0.0, -1.0, 3.0, 1.0, 2.0, 4.0)
