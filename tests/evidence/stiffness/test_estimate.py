"""The band of a value: about what its mesh lacks, wide on one mesh, narrower where a finer one bears it out."""

from __future__ import annotations

import numpy as np
import pytest
from hypothesis import given
from hypothesis import strategies as st

from blockgen.evidence.stiffness.estimate import ALONE, REFINED, SCATTER, Estimate, banded, estimate, rounded

values = st.floats(1, 1e4)


@given(plain=values, mended=values)
def test_one_mesh_alone_reaches_back_to_its_plain_value(plain, mended):
    middle, half = banded(np.array(plain), np.array(mended))
    assert middle == mended
    assert abs(plain - middle) <= half * (1 + 1e-12)
    assert half >= SCATTER * mended


@given(plain=values, mended=values, before=values)
def test_meshes_that_disagree_widen_the_band(plain, mended, before):
    _, half = banded(np.array(plain), np.array(mended), np.array(before))
    assert half >= abs(mended - before) / 2
    assert half >= REFINED * abs(mended - plain)
    assert half <= max(abs(mended - before) / 2, REFINED * abs(mended - plain), SCATTER * mended)


def test_worked_numbers():
    assert estimate(100.0, 110.0) == Estimate(110.0, 10.0 * ALONE)
    assert estimate(100.0, 110.0, 109.0) == Estimate(110.0, 5.5)
    assert estimate(100.0, 110.0, 90.0) == Estimate(110.0, 10.0)


def test_a_value_without_any_gap_still_has_a_band():
    assert estimate(50.0, 50.0, 50.0) == Estimate(50.0, 0.5)


def test_ends_share_and_digits():
    found = Estimate(-200.0, 5.0)
    assert (found.low, found.high) == (-205.0, -195.0)
    assert found.share == pytest.approx(0.025)
    assert Estimate(0.0, 1.0).share == 0.0
    assert rounded(123456.78) == 123460.0
