"""Dowels and lifting threads: only where asked or needed, clear of everything, never in the window."""

import pytest

from blockgen.checks import check
from blockgen.errors import InputError
from blockgen.mechanics.ligaments import least_wall, wall_to_face
from tests.sizing.strategies import sized

HEAVY = {
    "motor": {"flange_size": 200, "flange_shape": "square"},
    "base": {"shaft_height": 120},
    "block": {"material": "S355J2"},
}


def group(plan, name):
    return [f for f in plan.features if f.group == name]


def test_no_dowels_unless_asked_for():
    assert not group(sized(), "dowels")
    assert not group(sized(base={"dowels": False}), "dowels")


@pytest.mark.parametrize("more", [{}, {"block": {"window_axis": "y"}}, {"block": {"relief": 0.5}}])
@pytest.mark.parametrize("asked", [True, 6])
def test_two_dowels_stand_clear(asked, more):
    plan = sized(**{"base": {"dowels": asked}, **more})
    dowels = group(plan, "dowels")
    if len(dowels) < 2:
        assert more, "there is room in the usual block"
        assert any("dowel" in f.title.lower() and f.verdict in {"warn", "fail"} for f in check(plan))
        return
    assert dowels[0].position[1] * dowels[1].position[1] < 0
    assert dowels[0].position[0] != dowels[1].position[0]
    for dowel in dowels:
        for other in plan.features:
            if other is not dowel:
                assert least_wall(dowel, other) >= 2.4, (dowel.id, other.id)
        for face in ("bearing_seat", "motor_seat", "side_plus_y", "side_minus_y"):
            assert wall_to_face(dowel, plan.body, face) >= 2.4


def test_dowel_holes_are_pilot_drilled_for_reaming_with_the_base():
    plan = sized(base={"dowels": 6})
    dowel = group(plan, "dowels")[0]
    assert 5.0 <= dowel.diameter < 6.0
    assert "ream diam 6 H7" in dowel.call_out
    plate = [f for f in plan.base_features if f.group == "plate_dowels"]
    assert [f.position[:2] for f in plate] == [f.position[:2] for f in group(plan, "dowels")]
    assert next(f for f in plan.fasteners if f.where == "dowel").count == 2


def test_dowels_with_all_screws_on_one_side():
    plan = sized(base={"hole_positions": [[15, 50], [80, 50]], "dowels": True})
    assert len(group(plan, "dowels")) in {0, 2} or any(f.verdict == "fail" for f in check(plan))


def test_a_pin_that_nobody_makes_is_an_input_error():
    with pytest.raises(InputError, match="dowel"):
        sized(base={"dowels": 7})


def test_a_light_block_has_no_lifting_threads():
    assert not group(sized(), "lifting_threads")


@pytest.mark.parametrize("axis", ["z", "y"])
def test_a_heavy_block_is_lifted_by_two_threads_in_the_top(axis):
    plan = sized(**{**HEAVY, "block": {"material": "S355J2", "window_axis": axis}})
    threads = group(plan, "lifting_threads")
    assert len(threads) == 2
    for one in threads:
        assert one.face == "top"
        for other in plan.features:
            if other is not one:
                assert least_wall(one, other) >= 2.4, (one.id, other.id)
