"""Tests of the shop's words."""

import math

import pytest

from blockgen.change.rework.operations import circle_words, operations
from blockgen.change.rework.screen import screen
from tests.change import blocks


@pytest.mark.parametrize(("start", "count"), [(0.0, 3), (45.0, 4), (10.0, 6)])
def test_places_on_a_circle_are_told_by_diameter_and_first_angle(start, count):
    angles = [math.radians(start + i * 360 / count) for i in range(count)]
    places = [(45 * math.cos(a), 45 * math.sin(a)) for a in angles]
    assert circle_words(places) == f"on circle 90 at {start:g} deg"


def test_other_places_are_listed():
    assert circle_words([(30.0, 20.0), (-30.0, 20.0)]) == "at y, z = (30, 20), (-30, 20)"


def test_a_new_pattern_is_drilled_and_tapped_with_the_plans_figures():
    old, new = blocks.round_flange(), blocks.round_flange(bolt_circle=100)
    todo = operations(old, new, screen(old, new, 0.0).made, 0.0)
    tapped = [op for op in todo if op.id == "drill_tap" and "motor seat" in op.text]
    assert sum(int(op.values["count"]) for op in tapped) == 4
    assert "on circle 100 at 45 deg, motor seat" in tapped[0].text
    hole = new.feature("motor_thread_1")
    assert tapped[0].values["drill_depth"] == hole.depth


def test_nothing_to_do_has_no_operation_not_even_edges():
    old = blocks.old()
    assert operations(old, old, screen(old, old, 0.0).made, 0.0) == ()
