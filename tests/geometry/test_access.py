"""Keys, heads and spanners: free where there is room, stopped at the right place by the right part where not."""

import math

import pytest

from tests.geometry.assemblies import assembly, of_plan, with_sizes
from tests.sizing.strategies import sized

pytestmark = pytest.mark.slow


def solids_of(made, *extra):
    from blockgen.geometry.interference import placed

    return {**placed(made.parts), **{part.id: part for part in extra}}


def wall(name, low, high):
    from blockgen.geometry.solid_part import solid_part
    from blockgen.geometry.stand_ins.shapes import box

    return solid_part(name, box(low, high))


def accesses(made, *extra):
    from blockgen.geometry.access import accesses as found

    return found(made.plan, made.parts, solids_of(made, *extra))


def of_part(found, part, word=""):
    return next(a for a in found if a.part == part and word in a.tool)


def test_a_wall_above_the_block_stops_head_and_key_of_base_screws_where_it_stands():
    made = assembly()
    top, seat = made.plan.body.height, made.plan.body.height - made.plan.number("base_counterbore_depth")
    above = 6.0
    found = accesses(made, wall("roof", (-50, -80, top + above), (200, 80, top + above + 5)))
    drawn = of_part(found, "base_screw_1", "drawn")
    assert not drawn.free
    assert drawn.in_way == ("roof",)
    head = seat + made.plan.number("base_washer_thickness") + 10  # an M10 has a head 10 high
    assert drawn.length == pytest.approx(top + above - head, abs=0.02)
    key = of_part(found, "base_screw_1", "key")
    assert not key.free
    assert key.in_way == ("roof",)


def test_a_wall_behind_the_flange_leaves_the_key_half_its_swing():
    from blockgen.geometry.access import free_swing
    from blockgen.geometry.tool_sweeps import axis_along

    axis = axis_along((0.0, 0.0, 0.0), (1.0, 0.0, 0.0))
    beside = {"wall": wall("wall", (-5, 8, -100), (50, 12, 100))}
    angle, ways = free_swing(axis, (10.0, 16.0), (60.0, 3.0), beside, set())
    # The arm of 60 mm is free where its tip with half its width stays before y = 8.
    least, most = 2 * (180 - math.degrees(math.acos((8 - 3) / 60))) - 30, 2 * (180 - math.degrees(math.acos(8 / 60)))
    assert least <= angle <= most
    assert ways == ("wall",)
    assert free_swing(axis, (20.0, 26.0), (7.0, 0.5), beside, set()) == (360.0, ())


def test_a_body_in_front_of_the_motor_screws_is_in_the_way():
    made = assembly()
    length = made.plan.number("length") + made.plan.number("motor.flange_thickness")
    found = accesses(made, wall("cover", (length + 15, -60, 0), (length + 20, 60, 130)))
    blocked = [a for a in found if a.where == "motor" and not a.free]
    assert {a.part for a in blocked} == {f"motor_screw_{n}" for n in range(1, 5)}
    assert {way for a in blocked for way in a.in_way} == {"cover"}
    drawn = of_part(found, "motor_screw_1", "drawn")
    assert drawn.length == pytest.approx(15 - 6, abs=0.02)  # the head of an M6 is 6 high


def test_screws_of_a_tapped_flange_are_driven_from_the_window():
    made = assembly("tapped")
    found = [a for a in accesses(made) if a.where == "motor"]
    assert all(a.free for a in found)
    start = made.plan.number("length") - made.plan.number("motor_wall")
    stopped = accesses(made, wall("bar", (start - 20, -60, 0), (start - 15, 60, 130)))
    drawn = of_part(stopped, "motor_screw_1", "drawn")
    assert not drawn.free
    assert drawn.in_way == ("bar",)
    assert drawn.length == pytest.approx(15 - 6, abs=0.02)


@pytest.mark.parametrize(("way", "direction"), [("usual", 90.0), ("pocket", 90.0), ("across", 0.0)])
def test_clamp_screws_are_reached_through_the_window(way, direction):
    found = [a for a in accesses(assembly(way)) if a.where == "coupling"]
    assert len(found) == 2
    for access in found:
        assert access.free
        assert any(low <= direction <= high for low, high in access.directions)
        assert not any(low <= direction + 90 <= high for low, high in access.directions)


def test_a_plate_over_the_window_leaves_no_way_to_the_clamp_screws():
    made = assembly()
    top = made.plan.body.height
    found = [a for a in accesses(made, wall("lid", (-50, -80, top), (200, 80, top + 5))) if a.where == "coupling"]
    assert [a.free for a in found] == [False, False]
    assert {way for a in found for way in a.in_way} == {"lid"}


def test_a_clamp_screw_too_near_the_wall_is_not_reached():
    made = assembly()
    wide = with_sizes(made.plan, coupling__clamp_access_radius=25.0)
    made = of_plan(wide)
    found = [a for a in accesses(made) if a.where == "coupling"]
    assert not any(a.free for a in found)
    assert all("block" in a.in_way for a in found)


def test_a_spanner_wider_than_the_bore_meets_the_block():
    made = assembly()
    assert of_part(accesses(made), "lock nut").free
    wide = made.plan.number("bearing_through_bore") + 2
    made = of_plan(with_sizes(made.plan, bearing__spanner_diameter=wide))
    found = of_part(accesses(made), "lock nut")
    assert not found.free
    assert found.in_way == ("block",)
    assert found.length == pytest.approx(0.0)


def test_without_a_spanner_diameter_nothing_is_said_of_the_nut():
    made = of_plan(sized(bearing={"spanner_diameter": None}))
    assert [a for a in accesses(made) if a.where == "lock_nut"] == []


def test_runs_on_a_ring():
    from blockgen.geometry.in_the_way import longest_run, runs

    assert runs((True, False, True, True)) == [(2, 4)]
    assert runs((False, True, True, False)) == [(1, 2)]
    assert runs((True, True, True)) == [(0, 2)]
    assert runs((False, False)) == []
    assert longest_run((True, False, True, True)) == 3
    assert longest_run((False, False)) == 0
    assert longest_run((True, True)) == 2


def test_a_key_that_turns_too_little_is_not_free_and_names_what_stops_it():
    from blockgen.geometry.access import key_access
    from blockgen.geometry.tool_sweeps import axis_along
    from blockgen.standards.screws import cap_screw

    axis = axis_along((0.0, 0.0, 0.0), (0.0, 0.0, 1.0))
    # A shaft of 16 mm clear width: the key goes down, its arm turns nowhere; a lid keeps a longer tool out.
    shaft = [
        wall("left", (-10, -10, 20), (-8, 10, 150)), wall("right", (8, -10, 20), (10, 10, 150)),
        wall("front", (-10, -10, 20), (10, -8, 150)), wall("back", (-10, 8, 20), (10, 10, 150)),
        wall("lid", (-20, -20, 150), (20, 20, 160)),
    ]  # fmt: skip
    solids = {part.id: part for part in shaft}
    found = key_access(assembly().plan, "base", "base_screw_1", cap_screw("M10"), axis, solids, 200.0)
    assert not found.free
    assert found.length == found.needed
    assert (found.angle, found.needed_angle) == (0.0, 60.0)
    assert set(found.in_way) == {"left", "right", "front", "back"}
    del solids["front"], solids["lid"]
    assert key_access(assembly().plan, "base", "base_screw_1", cap_screw("M10"), axis, solids, 200.0).free


def test_an_arm_sweeps_what_lies_between_its_directions():
    from blockgen.geometry.kernel import volume_of
    from blockgen.geometry.meeting import meets
    from blockgen.geometry.tool_sweeps import SLACK, axis_along, swung

    axis = axis_along((0.0, 0.0, 0.0), (0.0, 0.0, 1.0))
    length, half, turn = 50.0, 3.0, math.radians(15)
    swept = swung(axis, (0.0, 2.0 + 2 * SLACK), (length, half + SLACK), (0.0, turn))
    sector, sides = length**2 * turn / 2, 2 * length * half
    assert volume_of(swept.shape) / 2.0 == pytest.approx(sector + sides, rel=0.02)
    for angle, free in ((-10.0, True), (-2.0, False), (7.5, False), (17.0, False), (26.0, True)):
        x, y = 45 * math.cos(math.radians(angle)), 45 * math.sin(math.radians(angle))
        assert meets(swept, wall("post", (x - 0.1, y - 0.1, -5), (x + 0.1, y + 0.1, 5))) is not free
