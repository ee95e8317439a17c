"""Reach of tools."""

import pytest

from blockgen.mechanics.reach import bar_ratio


def test_bar_is_thinner_than_its_bore():
    assert bar_ratio(120.0, 40.0, 0.75) == pytest.approx(4.0)
    assert bar_ratio(120.0, 30.0, 0.75) > bar_ratio(120.0, 40.0, 0.75)
