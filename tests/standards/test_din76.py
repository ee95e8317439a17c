import pytest
from hypothesis import given
from hypothesis import strategies as st

from blockgen.standards.din76 import drill_runout, runout
from blockgen.standards.threads import thread


def test_metric_is_as_printed():
    assert drill_runout(thread("M10")) == 7.3


def test_inch_pitch_lies_between_the_metric_ones():
    assert runout(1.25) < drill_runout(thread("1/4-20 UNC")) < runout(1.5)


@given(st.floats(0.1, 6), st.floats(0.1, 6))
def test_runout_grows_with_the_pitch(first, second):
    small, large = sorted((first, second))
    assert runout(small) <= runout(large) + 1e-12


@pytest.mark.parametrize("pitch", [0.1, 0.35, 1, 4, 6])
def test_runout_is_four_to_six_pitches(pitch):
    assert 4 <= runout(pitch) / pitch <= 6.1
