"""Where base screws stand: inside the block, clear of everything, in pairs across the axis."""

import math

import pytest

from blockgen.checks import check
from blockgen.errors import InputError
from blockgen.mechanics.ligaments import least_wall
from tests.sizing.strategies import sized

WAYS = {
    "usual": {},
    "six": {"base": {"screw_count": 6}},
    "below": {"base": {"screw_from": "below"}},
    "across": {"block": {"window_axis": "y"}},
    "pocket": {"block": {"window_floor": 30}},
    "tapped flange": {"motor": {"bolt_hole": None, "bolt_thread": "M6", "fastening": "tapped"}},
    "three holes": {"motor": {"bolt_count": 3, "flange_size": 100}, "base": {"screw_count": 6}},
    "large screws": {"base": {"screw": "M16"}},
    "small screws": {"base": {"screw": "M6"}},
}


def screws(plan):
    return [f for f in plan.features if f.group in {"base_screws", "base_threads"}]


@pytest.mark.parametrize("way", WAYS)
def test_screws_stand_inside_and_clear(way):
    plan = sized(**WAYS[way])
    found = screws(plan)
    for screw in found:
        radius = max(s.start_radius for s in screw.profile)
        x, y, _ = screw.position
        assert radius + 2 <= x <= plan.body.length - radius - 2
        assert abs(y) + radius + 2 <= plan.body.width / 2
        for other in plan.features:
            if other is not screw and screw.id not in other.opens_into:
                assert least_wall(screw, other) >= 2.4, (screw.id, other.id)


@pytest.mark.parametrize("way", WAYS)
def test_screws_stand_alike_on_both_sides(way):
    points = sized(**WAYS[way]).records["base_pattern"].value
    assert {(x, -y) for x, y in points} == set(points)


@pytest.mark.parametrize(("count", "axis"), [(2, "z"), (4, "z"), (6, "z"), (8, "z"), (4, "y")])
def test_as_many_screws_as_asked_for(count, axis):
    plan = sized(base={"screw_count": count, "screw": "M6"}, block={"window_axis": axis})
    assert len(screws(plan)) == count
    assert next(f for f in plan.fasteners if f.where == "base").count == count


@pytest.mark.parametrize(("count", "axis"), [(1, "z"), (5, "z"), (6, "y")])
def test_a_count_that_has_no_pattern_is_an_input_error(count, axis):
    with pytest.raises(InputError, match="screw_count"):
        sized(base={"screw_count": count, "screw": "M6"}, block={"window_axis": axis})


def test_the_screws_span_most_of_the_block():
    plan = sized()
    places = [f.position[0] for f in screws(plan)]
    assert max(places) - min(places) >= 0.4 * plan.number("length")


LOCKED = [[15, 50], [15, -50], [90, 50], [90, -50]]


def test_given_positions_are_locked():
    plan = sized(base={"hole_positions": LOCKED})
    assert [[f.position[0], f.position[1]] for f in screws(plan)] == LOCKED
    assert [[f.position[0], f.position[1]] for f in plan.base_features] == LOCKED
    assert plan.records["base_pattern"].origin == "given"


def test_the_width_follows_a_locked_pattern():
    plan = sized(base={"hole_positions": LOCKED})
    assert plan.number("width") / 2 >= 50 + plan.number("base_counterbore_diameter") / 2 + 2


def test_a_locked_hole_beside_the_block_fails():
    plan = sized(base={"hole_positions": [[15, 50], [15, -50], [300, 50], [300, -50]]})
    assert any(f.verdict == "fail" and "base_screw_3" in f.title for f in check(plan))


def test_a_given_width_is_kept_and_the_trouble_named():
    plan = sized(block={"width": 60})
    assert plan.number("width") == 60
    assert "fail" in {f.verdict for f in check(plan)}


def test_screws_stay_in_a_given_narrow_block_or_fail_with_a_window_across():
    plan = sized(block={"width": 90, "window_axis": "y"})
    for screw in screws(plan):
        if abs(screw.position[1]) + 9 > 45:
            assert any(f.verdict == "fail" and screw.id in f.title for f in check(plan))


def test_the_preload_of_given_positions_counts_every_screw():
    three = [[15, 50], [15, -50], [90, 50]]
    safety = {n: slip(sized(base={"hole_positions": p})) for n, p in ((3, three), (4, LOCKED))}
    assert safety[4] / safety[3] > 4 / 3  # the thrust turns three screws about their centre as well


def test_two_rows_of_given_positions_share_alike():
    safety = {y: slip(sized(base={"hole_positions": [[15, y], [15, -y], [90, y], [90, -y]]})) for y in (48, 50)}
    assert math.isclose(safety[48], safety[50], rel_tol=1e-3)


def slip(plan):
    return next(f for f in check(plan) if f.id == "base_slip").value
