"""Named distances against sums of the sizes in the plan."""

import math

import pytest

from tests.geometry.assemblies import assembly, of_plan, with_shape
from tests.sizing.strategies import sized

pytestmark = pytest.mark.slow


def named(made):
    from blockgen.geometry.interference import placed
    from blockgen.geometry.named_clearances import named_clearances

    found = named_clearances(made.plan, made.block, made.parts, placed(made.parts))
    assert len({one.id for one in found}) == len(found)
    return {one.id: one for one in found}


def test_distances_along_the_shaft_are_those_of_the_plan():
    made, number = assembly(), assembly().plan.number
    found = named(made)
    assert found["shaft_ends"].distance == pytest.approx(number("shaft_gap"))
    assert found["coupling_bearing"].distance == pytest.approx(
        number("coupling_position") - number("bearing.nut_reach")
    )
    end = number("coupling_position") + number("coupling.length")
    assert found["coupling_motor"].distance == pytest.approx(number("length") - number("motor.pilot_length") - end)


def test_distances_across_the_shaft_are_those_of_the_plan():
    made, number = assembly(), assembly().plan.number
    found, high = named(made), assembly().plan.number("shaft_height")
    assert found["coupling_base"].distance == pytest.approx(high - number("coupling.outer_diameter") / 2)
    assert found["motor_base_plane"].distance == pytest.approx(high - number("motor.body_size") / 2)
    assert found["motor_base_plate"].distance == pytest.approx(high - number("motor.body_size") / 2)
    nut = (number("bearing_through_bore") - number("bearing.nut_outer_diameter")) / 2
    assert found["nut_bore"].distance == pytest.approx(nut)


def test_heads_stand_off_their_counterbores_by_half_the_play():
    from blockgen.standards.screws import cap_screw

    made = assembly()
    play = made.plan.number("base_counterbore_diameter") - cap_screw("M10").head_diameter
    assert named(made)["base_heads"].distance == pytest.approx(play / 2)


def test_the_floor_of_a_pocket_is_named_apart_from_its_walls():
    made, number = assembly("pocket"), assembly("pocket").plan.number
    found = named(made)
    over = number("shaft_height") - number("block.window_floor") - number("coupling.outer_diameter") / 2
    assert found["coupling_floor"].distance == pytest.approx(over)
    assert "coupling_floor" not in named(assembly())


def test_room_beside_the_coupling_is_that_of_the_window_or_its_corners():
    number = assembly().plan.number
    side = (number("window_width") - number("coupling.outer_diameter")) / 2
    assert 0 < named(assembly())["coupling_walls"].distance <= side + 1e-6


def test_space_is_what_the_parts_leave_of_it():
    limits = {"height_limit": 140, "width_available": 160, "length_available": 300}
    made = of_plan(sized(base=limits))
    found, body = named(made), made.plan.body
    assert found["height_limit"].distance == pytest.approx(140 - body.height)
    assert found["width_available"].distance == pytest.approx(160 - body.width)
    assert found["length_available"].asked is None
    from blockgen.geometry.stand_ins.shapes import box

    high = with_shape(made.parts, "motor", box((0.0, -40.0, -40.0), (100.0, 40.0, 90.0)))
    made.parts = high
    spoilt = named(made)["height_limit"]
    assert spoilt.first == "motor"
    assert spoilt.distance == pytest.approx(140 - made.plan.number("shaft_height") - 90)


def test_the_shaft_of_the_motor_is_left_out_and_nothing_else():
    from blockgen.geometry.interference import placed
    from blockgen.geometry.named_clearances import motor_without_shaft

    made = assembly()
    rest = motor_without_shaft(made.plan, placed(made.parts))
    pilot = made.plan.number("length") - made.plan.number("motor.pilot_length")
    assert rest.box[0] == pytest.approx(pilot)
    assert math.isfinite(rest.box[3])
