"""Reach of tools."""

import pytest

from blockgen.mechanics.reach import bar_ratio, cutter_ratio, greatest_cutter_diameter, pocket_reach


def test_bar_is_thinner_than_its_bore():
    assert bar_ratio(120.0, 40.0, 0.75) == pytest.approx(4.0)
    assert bar_ratio(120.0, 30.0, 0.75) > bar_ratio(120.0, 40.0, 0.75)


def test_window_cut_from_both_sides_needs_half_the_reach():
    assert cutter_ratio(pocket_reach(90.0, both_sides=True), 15.0) == pytest.approx(3.0)
    assert cutter_ratio(pocket_reach(90.0, both_sides=False), 15.0) == pytest.approx(6.0)


def test_cutter_rolls_round_the_corner():
    assert greatest_cutter_diameter(8.8, 1.1) == pytest.approx(16.0)
