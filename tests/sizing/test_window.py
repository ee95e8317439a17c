"""Window width, length and corners."""

import math

import pytest

from blockgen.checks import check
from blockgen.errors import InfeasibleError, InputError
from blockgen.sizing.window import decide_corner_radius
from tests.sizing.strategies import COMPLETE, REQUIRED, ledger, sized

TAPPED = {"bolt_hole": None, "bolt_thread": "M6", "fastening": "tapped"}


def test_the_swing_turns_in_the_window():
    plan = sized(coupling={"swing_diameter": 52}, motor={"shaft_length": 46}, screw={"journal_reach": 48})
    assert plan.number("window_width") >= 52 + 2 * plan.number("coupling.clearance")


def test_the_spanner_goes_round_the_nut_in_the_window():
    plan = sized(bearing={"spanner_diameter": 56}, motor={"shaft_length": 46})
    assert plan.number("window_width") >= 56


def test_heads_of_a_tapped_flange_lie_in_the_window():
    plan = sized(motor=TAPPED)
    heads = max(abs(f.position[1]) for f in plan.features if f.group == "motor_holes") + 10.0 / 2
    assert plan.number("window_width") / 2 > heads


def test_screws_of_a_tapped_flange_can_be_put_in():
    plan = sized(motor=TAPPED)
    screw = next(f for f in plan.fasteners if f.where == "motor_flange")
    assert plan.number("window_length") > screw.length + 6.0  # with its head


def test_corner_radius_lets_the_cutter_roll():
    plan = sized()
    radius, cutter = plan.number("window_corner_radius"), plan.number("block.cutter_diameter")
    assert radius > cutter / 2
    assert 2 * radius <= plan.number("window_width")


def corner_gap(plan):
    """Return the least distance from the swing's rim at the coupling's ends to the window's outline, by sampling."""
    start, end = plan.number("bearing_wall"), plan.number("length") - plan.number("motor_wall")
    radius, half = plan.number("window_corner_radius"), plan.number("window_width") / 2
    low = plan.number("coupling_position")
    gaps = []
    for x in (low, low + plan.number("coupling.length")):
        into = min(x - start, end - x)
        if into < 0:
            continue  # it ends in a bore
        narrowed = radius - math.sqrt(radius**2 - max(radius - into, 0.0) ** 2)
        gaps.append(half - narrowed - plan.number("coupling.swing_diameter") / 2)
    return min(gaps)


def test_the_basic_spec_keeps_the_whole_clearance_in_the_corners():
    plan = sized(REQUIRED)
    assert plan.number("bearing_through_bore") < plan.number("coupling.swing_diameter") + 4
    assert corner_gap(plan) >= plan.number("coupling.clearance") - 1e-6
    assert next(f for f in check(plan) if f.id == "coupling_swing").verdict == "pass"


def test_a_given_width_is_kept_and_judged():
    plan = sized(block={"window_width": 47})
    assert plan.number("window_width") == 47.0
    assert next(f for f in check(plan) if f.id == "window_width_size").verdict == "fail"


def test_window_across_and_pocket_have_their_boxes():
    across = sized(block={"window_axis": "y"}).feature("window")
    assert across.pocket.axis == "y"
    assert (across.pocket.open_low, across.pocket.open_high) == (True, True)
    pocket = sized(block={"window_floor": 30}).feature("window")
    assert pocket.pocket.low[2] == 30.0
    assert (pocket.pocket.open_low, pocket.pocket.open_high, pocket.through) == (False, True, False)


def test_a_floor_that_touches_the_coupling_fails():
    findings = check(sized(block={"window_floor": 44}))  # the hubs reach down to 65 - 22.5
    assert "fail" in {f.verdict for f in findings if f.id != "window_cut"}


def test_a_corner_radius_larger_than_the_window_is_an_input_error():
    with pytest.raises(InputError, match="corner_radius"):
        sized(block={"window_corner_radius": 50})


def test_a_window_across_that_cuts_the_base_is_not_passed_over():
    changes = {"base": {"shaft_height": 46}, "bearing": {"spanner_diameter": 90}, "block": {"window_axis": "y"}}
    try:
        findings = check(sized(**changes))
    except (InputError, InfeasibleError):
        return
    assert any(f.verdict == "fail" and "window" in f.title.lower() for f in findings)


@pytest.mark.parametrize("axis", ["z", "y"])
def test_a_sized_width_can_be_given_back_for_a_tapped_flange(axis):
    plan = sized(motor=TAPPED, block={"window_axis": axis})
    sizes = {key: plan.number(key) for key in ("window_width", "width")}
    again = sized(motor=TAPPED, block={"window_axis": axis, **sizes})
    assert again.number("window_width") == sizes["window_width"]
    assert not [f.title for f in check(again) if f.verdict == "fail"]


def test_a_window_across_may_be_higher_than_the_block_is_wide():
    plan = sized(block={"window_axis": "y", "window_width": 84, "width": 83})
    assert plan.number("window_width") == 84


def outline(plan, side, points=4000):
    """Return points of the window's outline in plan view at one end: its side wall and its corner radius.

    What the bore behind the end wall takes away is left out.
    """
    radius, half = plan.number("window_corner_radius"), plan.number("window_width") / 2
    at_bearing = side == "bearing"
    wall = plan.number("bearing_wall") if at_bearing else plan.number("length") - plan.number("motor_wall")
    inward = 1.0 if at_bearing else -1.0
    turns = [math.pi / 2 * i / points for i in range(points + 1)]
    arc = [
        (wall + inward * radius * (1 - math.sin(a)), half - radius * (1 - math.cos(a)))
        for a in turns
    ]  # fmt: skip
    straight = [
        (wall + inward * (radius + i * 0.01), half) for i in range(int(100 * (plan.number("window_length") / 2)))
    ]
    bore = plan.number(f"{side}_through_bore") / 2
    return [(x, y) for x, y in (*arc, *straight) if y >= bore]


def nearest(plan):
    """Return the least distance from the coupling, set as far off as allowed, to the window's outline."""
    swing, setting = plan.number("coupling.swing_diameter") / 2, plan.number("practice.setting_tolerance")
    points = [*outline(plan, "bearing"), *outline(plan, "motor")]
    found = []
    for off in (-setting, setting):
        low = plan.number("coupling_position") + off
        high = low + plan.number("coupling.length")
        found += [math.hypot(max(low - x, 0.0, x - high), max(y - swing, 0.0)) for x, y in points]
    return min(found)


def ends_in_the_window(plan):
    """Tell whether both ends stand inside the window, and no bore takes its corners away."""
    setting, start = plan.number("practice.setting_tolerance"), plan.number("coupling_position")
    end = plan.number("length") - start - plan.number("coupling.length")
    asked = plan.number("coupling.swing_diameter") / 2 + plan.number("coupling.clearance")
    free = ((start, "bearing"), (end, "motor"))
    return all(
        x - setting > plan.number(f"{side}_wall") and plan.number(f"{side}_through_bore") / 2 < asked
        for x, side in free
    )


# Bores too narrow for the coupling, so that both corners are whole; shafts long enough for some room along the axis.
ROOMY = {"motor": {"shaft_length": 48, "pilot_diameter": 50}, "screw": {"journal_reach": 50}}


@pytest.mark.parametrize("length", [118, 124])
@pytest.mark.parametrize("swing", [51, 54])  # wider than the flat of the end wall between its corners
@pytest.mark.parametrize("radius", [6, 8, 11, 14])
@pytest.mark.parametrize("width", [58, 62])
def test_room_in_the_corners_is_the_least_distance_that_sampling_finds(length, swing, radius, width):
    block = {"window_width": width, "window_corner_radius": radius, "length": length}
    plan = sized(coupling={"swing_diameter": swing}, block=block, **ROOMY)
    assert ends_in_the_window(plan)
    told = plan.number("coupling_clearance_in_window")
    if told > 0:
        assert told == pytest.approx(nearest(plan), abs=2e-3)
    else:
        assert nearest(plan) < 2e-3


@pytest.mark.parametrize("swing", [46, 50, 54])
@pytest.mark.parametrize("start", [REQUIRED, COMPLETE], ids=["required", "complete"])
def test_a_sized_window_keeps_the_clearance_that_sampling_finds(start, swing):
    changes = ROOMY if start is COMPLETE else {}
    plan = sized(start, coupling={"swing_diameter": swing}, **changes)
    assert nearest(plan) >= plan.number("coupling.clearance") - 2e-3


def test_a_given_cutter_that_does_not_go_round_is_a_conflict_with_a_narrower_one_as_cure():
    with pytest.raises(InfeasibleError, match="cutter against the lesser side of the window") as caught:
        decide_corner_radius(ledger(block={"cutter_diameter": 20}), depth=40, width=18)
    (cure,) = caught.value.cures
    assert cure.changes == (("block.cutter_diameter", 16.0),)
    assert decide_corner_radius(ledger(block={"cutter_diameter": 16}), depth=40, width=18) == 8.95
