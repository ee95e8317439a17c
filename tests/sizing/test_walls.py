"""End walls: what makes them thicker, and what they may not go below."""

import pytest

from blockgen.sizing.mating import flange
from blockgen.sizing.walls import behind_window, hole_place
from blockgen.sizing.window import decide_window_width
from tests.sizing.strategies import ledger, sized


def prepared(**changes):
    start = ledger(**changes)
    decide_window_width(start, flange(start, "motor"))
    return start


def test_places_of_holes_before_the_window():
    start = prepared()  # half width 24.5
    screw = sized_thread(start)
    assert hole_place(start, screw, 2.5, 10.0, 10.0) == "inside"
    assert hole_place(start, screw, 2.5, 24.5, 0.0) == "straddling"
    assert hole_place(start, screw, 2.5, -40.0, 0.0) == "outside"


def sized_thread(start):
    other = start.copy()
    return flange(other, "bearing").thread


def test_a_hole_below_a_pocket_floor_is_outside():
    start = prepared(block={"window_floor": 30})
    assert hole_place(start, sized_thread(start), 2.5, 0.0, -45.0) == "outside"


def test_across_the_height_counts():
    start = prepared(block={"window_axis": "y"})
    assert hole_place(start, sized_thread(start), 2.5, 40.0, 0.0) == "inside"
    assert hole_place(start, sized_thread(start), 2.5, 0.0, 40.0) == "outside"


def test_the_worst_hole_of_a_flange_counts():
    start = prepared()
    assert behind_window(start, flange(start, "bearing")) == "straddling"


def test_the_bearing_wall_carries_a_long_pilot():
    walls = [
        sized(bearing={"pilot_length": n, "nut_reach": n + 4}, block={"material": "S355J2"}).number("bearing_wall")
        for n in (8, 14, 18, 20)
    ]
    assert walls == sorted(walls)
    assert walls[-1] >= 20


def test_blind_threads_before_the_window_make_the_wall_thick():
    plan = sized()
    hole = plan.feature("bearing_thread_1")
    if not hole.through:
        tip = max(s.end for s in hole.profile)
        assert plan.number("bearing_wall") > tip


@pytest.mark.parametrize("end", ["bearing", "motor"])
def test_a_given_wall_is_kept(end):
    plan = sized(block={f"{end}_wall": 26})
    assert plan.number(f"{end}_wall") == 26.0
    assert plan.records[f"{end}_wall"].origin == "given"


def test_walls_for_upright_screws_hold_them_with_a_window_across():
    plan = sized(block={"window_axis": "y"})
    head = plan.number("base_counterbore_diameter")
    for end in ("bearing", "motor"):
        assert plan.number(f"{end}_wall") >= head + 2 * 2.5
