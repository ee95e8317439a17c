"""Stripping: the weaker thread decides, and the force is linear in the engagement."""

import pytest
from hypothesis import given
from hypothesis import strategies as st

from blockgen.mechanics.stripping import (
    ThreadLimits,
    external_shear_area,
    internal_shear_area,
    least_engagement_against_stripping,
    shear_force,
    stripping_force,
)

M8 = ThreadLimits(1.25, 7.760, 7.042, 7.348, 6.912)
lengths = st.floats(1.0, 50.0)
strengths = st.floats(100.0, 1200.0)


@given(lengths, st.floats(1.0, 20.0), strengths, strengths)
def test_longer_engagement_holds_more(length, more, internal, external):
    assert stripping_force(M8, length + more, internal, external) > stripping_force(M8, length, internal, external)


@given(st.floats(100.0, 1e5), st.floats(1.0, 4.0), strengths, strengths)
def test_least_engagement_just_holds(force, safety, internal, external):
    length = least_engagement_against_stripping(force, safety, M8, internal, external)
    assert stripping_force(M8, length, internal, external) == pytest.approx(safety * force)


@given(lengths)
def test_weaker_thread_decides(length):
    soft_block = stripping_force(M8, length, 310.0, 800.0)
    assert soft_block == pytest.approx(shear_force(internal_shear_area(M8, length), 310.0))
    soft_screw = stripping_force(M8, length, 800.0, 400.0)
    assert soft_screw == pytest.approx(shear_force(external_shear_area(M8, length), 400.0))


def test_shear_ratio_scales_the_force():
    assert stripping_force(M8, 10.0, 310.0, 800.0, 0.5) == pytest.approx(
        stripping_force(M8, 10.0, 310.0, 800.0) * 5 / 6
    )


def test_sharp_threads_of_nominal_size_shear_over_seven_eighths_of_the_turn():
    """With basic diameters the internal thread is 7/8 of the pitch thick where the screw's crest cuts it."""
    basic = ThreadLimits(1.25, 8.0, 7.1881, 7.1881, 6.6468)
    assert internal_shear_area(basic, 1.25) == pytest.approx(3.14159265 * 8.0 * 1.25 * 7 / 8, rel=1e-4)
    assert external_shear_area(basic, 1.25) == pytest.approx(3.14159265 * 6.6468 * 1.25 * 3 / 4, rel=1e-4)
