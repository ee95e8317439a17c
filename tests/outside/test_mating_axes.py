"""Holes of the block against the axes of the mating parts, computed here from the spec alone.

Source: the convention of the spec file: seen from the motor along -x, y points to the right and z up from the base;
the angles count from +y counter-clockwise. Cosine and sine come from a table of usual angles, not from the package.
"""

import math

import pytest

from blockgen.sizing.size import size
from blockgen.spec.load import parse_spec

HALF, ROOT_2, ROOT_3 = 0.5, math.sqrt(2) / 2, math.sqrt(3) / 2
# Unit vectors (y, z) by angle in degrees.
UNIT = {
    0: (1, 0), 30: (ROOT_3, HALF), 45: (ROOT_2, ROOT_2), 60: (HALF, ROOT_3), 90: (0, 1), 120: (-HALF, ROOT_3),
    135: (-ROOT_2, ROOT_2), 150: (-ROOT_3, HALF), 180: (-1, 0), 210: (-ROOT_3, -HALF), 225: (-ROOT_2, -ROOT_2),
    240: (-HALF, -ROOT_3), 270: (0, -1), 300: (HALF, -ROOT_3), 315: (ROOT_2, -ROOT_2), 330: (ROOT_3, -HALF),
}  # fmt: skip

SPEC = """
[job]
number = "AX-1"
[motor]
pilot_diameter = {motor_pilot}
flange_size = 110
flange_shape = "{shape}"
shaft_diameter = 19
shaft_length = 40
pilot_length = 3
{motor}
[bearing]
pilot_diameter = 50
flange_size = 90
pilot_length = 10
{bearing}
[screw]
journal_diameter = 15
journal_reach = 46
[coupling]
outer_diameter = 40
length = 60
[base]
shaft_height = {height}
[block]
window_axis = "{axis}"
"""


def plan_of(motor, bearing="bolt_circle = 74\nbolt_hole = 6.6", *, pilot=60, height=72.5, axis="z", shape="square"):
    text = SPEC.format(motor=motor, bearing=bearing, motor_pilot=pilot, height=height, axis=axis, shape=shape)
    return size(parse_spec(text))


def axes(plan, seat):
    """Return hole centres (y, z) of a seat, from the spec's axes: z counted from the shaft."""
    height = plan.number("base.shaft_height")
    return [(f.position[1], f.position[2] - height) for f in plan.features if f.face == seat and f.kind != "bore"]


def same(found, wanted):
    assert len(found) == len(wanted)
    for place in wanted:
        assert min(math.dist(place, other) for other in found) < 1e-6, place


@pytest.mark.parametrize(
    ("count", "start", "angles"),
    [
        (4, 45, (45, 135, 225, 315)),
        (4, 0, (0, 90, 180, 270)),
        (3, 30, (30, 150, 270)),
        (6, 0, (0, 60, 120, 180, 240, 300)),
        (2, 45, (45, 225)),
        (3, 0, (0, 120, 240)),
    ],
)
def test_bolt_circles(count, start, angles):
    plan = plan_of(f"bolt_circle = 92\nbolt_count = {count}\nbolt_angle = {start}\nbolt_hole = 6.6")
    same(axes(plan, "motor_seat"), [(46 * UNIT[a][0], 46 * UNIT[a][1]) for a in angles])


def test_the_default_circle_has_four_holes_on_the_diagonals():
    same(
        axes(plan_of("bolt_circle = 92\nbolt_hole = 6.6"), "bearing_seat"),
        [(37 * UNIT[a][0], 37 * UNIT[a][1]) for a in (45, 135, 225, 315)],
    )


def test_angles_count_counter_clockwise_seen_from_the_motor():
    """Seen along -x with z up, +y lies to the right: from +y counter-clockwise is towards +z, on both seats."""
    one_hole_high = "bolt_circle = 74\nbolt_count = 3\nbolt_angle = 90\nbolt_hole = 5.5"
    plan = plan_of("bolt_circle = 92\nbolt_count = 3\nbolt_angle = 90\nbolt_hole = 6.6", one_hole_high)
    for seat, radius in (("motor_seat", 46), ("bearing_seat", 37)):
        first, second, third = axes(plan, seat)
        assert first == pytest.approx((0, radius), abs=1e-6)
        assert second == pytest.approx((radius * UNIT[210][0], radius * UNIT[210][1]))
        assert third == pytest.approx((radius * UNIT[330][0], radius * UNIT[330][1]))


def test_rectangular_spacing():
    plan = plan_of("bolt_spacing_y = 80\nbolt_spacing_z = 70\nbolt_hole = 6.6")
    same(axes(plan, "motor_seat"), [(40, 35), (-40, 35), (-40, -35), (40, -35)])


def test_free_positions_and_inches():
    plan = plan_of('bolt_positions = [[40, 20], [-40, 20], ["0 mm", "-1.75 in"]]\nbolt_hole = 6.6')
    same(axes(plan, "motor_seat"), [(40, 20), (-40, 20), (0, -44.45)])


@pytest.mark.parametrize("axis", ["z", "y"])
def test_a_tapped_flange_has_its_clearance_holes_on_the_same_axes(axis):
    plan = plan_of('bolt_circle = 92\nfastening = "tapped"\nbolt_thread = "M6"', axis=axis)
    same(axes(plan, "motor_seat"), [(46 * UNIT[a][0], 46 * UNIT[a][1]) for a in (45, 135, 225, 315)])


def test_bores_and_seats_lie_on_the_shaft():
    plan = plan_of("bolt_circle = 92\nbolt_hole = 6.6", height=81.25)
    bores = {f.face: f for f in plan.features if f.kind == "bore"}
    assert bores["bearing_seat"].position == (0.0, 0.0, 81.25)
    assert bores["motor_seat"].position == (plan.number("length"), 0.0, 81.25)
    assert bores["bearing_seat"].axis == (1.0, 0.0, 0.0)
    assert bores["motor_seat"].axis == (-1.0, 0.0, 0.0)


def test_shaft_ends_meet_in_the_coupling():
    plan = plan_of("bolt_circle = 92\nbolt_hole = 6.6")
    journal_end, motor_end = 46, plan.number("length") - 40
    start = plan.number("coupling_position")
    assert start < journal_end < motor_end < start + 60
    assert motor_end - journal_end == pytest.approx(plan.number("shaft_gap"))
