"""Tests of the ways on which parts are drawn apart."""

from __future__ import annotations

import itertools

import pytest

from blockgen.outputs.report.scene import scene
from blockgen.outputs.report.scene_explode import shifts
from tests.geometry.assemblies import assembly
from tests.sizing.strategies import sized

GREAT = ("block", "motor", "bearing_unit", "journal", "coupling", "base_plate")


@pytest.fixture(scope="module", params=("usual", "across", "below", "tapped"))
def drawn(request):
    made = assembly(request.param)
    return request.param, made, {p["id"]: p for p in scene(made.plan, made.block, made.parts)["parts"]}


def apart(one, other, share=1.0):
    """Return the greatest gap between two boxes in a direction of an axis; negative where they overlap in all."""
    (a, b), moves = (one["box"], other["box"]), (one["shift"], other["shift"])
    a, b = ([v + share * move[i % 3] for i, v in enumerate(box)] for box, move in zip((a, b), moves, strict=True))
    return max(max(b[i] - a[i + 3], a[i] - b[i + 3]) for i in range(3))


@pytest.mark.slow
def test_great_parts_come_clear_of_one_another(drawn):
    _, _, parts = drawn
    for one, other in itertools.combinations([parts[name] for name in GREAT], 2):
        assert apart(one, other) > 5.0, (one["id"], other["id"])


@pytest.mark.slow
def test_every_part_but_the_block_moves_along_one_axis(drawn):
    _, _, parts = drawn
    for part in parts.values():
        assert sum(way != 0.0 for way in part["shift"]) == (part["id"] != "block"), part["id"]


@pytest.mark.slow
def test_the_coupling_leaves_through_the_window(drawn):
    way, _, parts = drawn
    assert [v > 0 for v in parts["coupling"]["shift"]] == (
        [False, True, False] if way == "across" else [False, False, True]
    )


@pytest.mark.slow
def test_screws_leave_against_the_way_in_which_they_are_driven(drawn):
    way, made, parts = drawn
    down, tapped = way == "below", way == "tapped"
    assert (parts["base_screw_1"]["shift"][2] < 0) == down
    assert (parts["motor_screw_1"]["shift"][0] < 0) == tapped
    assert parts["bearing_screw_1"]["shift"][0] < parts["bearing_unit"]["shift"][0]
    if down:
        assert apart(parts["base_screw_1"], parts["base_plate"]) > 0
    else:
        low = parts["base_screw_1"]["box"][2] + parts["base_screw_1"]["shift"][2]
        assert low > made.plan.body.height


def test_a_washer_goes_with_its_screw_and_what_is_unknown_stays():
    plan = sized()
    screw, washer = (10.0, 10.0, 0.0, 20.0, 20.0, 60.0), (9.0, 9.0, 50.0, 21.0, 21.0, 52.0)
    ways = shifts(plan, {"base_screw_1": screw, "base_washer_1": washer, "guard": washer})
    assert ways["base_washer_1"] == ways["base_screw_1"] != (0.0, 0.0, 0.0)
    assert ways["guard"] == (0.0, 0.0, 0.0)
