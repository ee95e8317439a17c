"""Tests of the reference volume: closed forms, brute-force sums and textbook areas; no kernel is loaded."""

from __future__ import annotations

import math
from dataclasses import replace

import pytest

from blockgen.mechanics.volume import (
    body_volume,
    circle_in_rectangle,
    corner_height,
    feature_volume,
    frustum,
    integral,
    pocket_box,
    reference_volume,
    run_out,
    run_out_volume,
    volume_tolerance,
)
from blockgen.plan import Body
from tests.geometry import sample_plans as samples


def test_frustum_of_cylinder_and_cone():
    assert frustum(2.0, 2.0, 3.0) == pytest.approx(12 * math.pi)
    assert frustum(3.0, 0.0, 5.0) == pytest.approx(15 * math.pi)


def test_sharp_box():
    assert body_volume(Body(10.0, 20.0, 30.0, 0.0, 0.0)) == pytest.approx(6000.0)


def test_rounded_box_without_chamfer():
    assert body_volume(Body(10.0, 20.0, 30.0, 2.0, 0.0)) == pytest.approx(6000 - 30 * (4 - math.pi) * 4)


def test_rounded_box_with_chamfer_loses_prisms_and_four_turned_corners():
    length, width, height, fillet, chamfer = 40.0, 30.0, 20.0, 5.0, 1.0
    straight = 4 * (length + width - 4 * fillet) * chamfer**2 / 2
    # By Pappus: a triangle of area c^2/2 whose centroid turns at fillet - c/3 about the corner's axis, once round.
    turned = 2 * 2 * math.pi * (fillet - chamfer / 3) * chamfer**2 / 2
    sharp = length * width * height - height * (4 - math.pi) * fillet**2
    assert body_volume(Body(length, width, height, fillet, chamfer)) == pytest.approx(sharp - straight - turned)


def test_chamfered_box_by_counting_cells():
    cells = 81  # odd, so that no cell's centre lies on a chamfer
    body, step = Body(4.0, 4.0, 4.0, 0.0, 1.0), 2.0 / cells
    depths = [(i + 0.5) * step for i in range(cells)]
    inside = 0
    for a in depths:  # one eighth of the cube, depths counted from the three faces of a corner
        for b in depths:
            for c in depths:
                kept = min(a + b, a + c, b + c) >= body.edge_chamfer and a + b + c >= 2 * body.edge_chamfer
                inside += kept
    assert body_volume(body) == pytest.approx(8 * inside * step**3, rel=2e-3)


@pytest.mark.parametrize(
    ("x", "y", "share"),
    [
        ((-9.0, 9.0), (-9.0, 9.0), 1.0),
        ((0.0, 9.0), (-9.0, 9.0), 0.5),
        ((0.0, 9.0), (0.0, 9.0), 0.25),
        ((3.0, 9.0), (0.0, 9.0), 0.0),
    ],
)
def test_circle_in_rectangle_quarters(x, y, share):
    assert circle_in_rectangle((0.0, 0.0), 2.0, x, y) == pytest.approx(share * 4 * math.pi, abs=1e-12)


def test_circle_in_rectangle_segment():
    radius, distance = 5.0, 3.0
    segment = radius**2 * math.acos(distance / radius) - distance * math.sqrt(radius**2 - distance**2)
    assert circle_in_rectangle((1.0, 2.0), radius, (4.0, 99.0), (-99.0, 99.0)) == pytest.approx(segment)


def test_integral_of_half_circle():
    assert integral(lambda u: math.sqrt(max(0.0, 1 - u * u)), (-1.0, 1.0)) == pytest.approx(math.pi / 2, abs=1e-13)


def test_corner_height_at_side_wall_middle_and_flat():
    assert corner_height(0.0, 8.0, 9.0) == 9.0
    assert corner_height(1e-12, 8.0, 9.0) == pytest.approx(8.0, abs=1e-5)
    assert corner_height(8.0, 8.0, 9.0) == 0.0
    assert corner_height(8 - 8 / math.sqrt(2), 8.0, 9.0) == pytest.approx(8 - 8 / math.sqrt(2))


def test_window_volume_has_round_corners():
    window = samples.window(corner=8.0)
    assert feature_volume(window, samples.usual().body) == pytest.approx((91 * 60 - (4 - math.pi) * 64) * 110)


def test_drilled_hole_volume():
    hole = samples.lifting_thread()
    chamfer = math.pi * 0.8 / 3 * (4.2**2 + 4.2 * 3.4 + 3.4**2)
    cylinder, point = math.pi * 3.4**2 * 17.2, math.pi * 3.4**3 / samples.POINT_SLOPE / 3
    assert feature_volume(hole, samples.usual().body) == pytest.approx(chamfer + cylinder + point)


def test_relief_leaves_out_the_edge_breaks():
    body = Body(140.0, 120.0, 110.0, 6.0, 0.5)
    assert feature_volume(samples.relief(depth=2.0), body) == pytest.approx(60 * 120 * 2 - 2 * 60 * 0.125)
    assert feature_volume(samples.relief(depth=0.3), body) == pytest.approx(60 * 120 * 0.3 - 2 * 60 * 0.105)


def test_pocket_box_is_cut_at_the_outside():
    pocket = replace(samples.relief().pocket, low=(40.0, -70.0, -1.0))
    low, high, open_ends = pocket_box(pocket, samples.usual().body)
    assert low == (40.0, -60.0, 0.0)
    assert high == (100.0, 60.0, 2.0)
    assert open_ends == ((False, False), (True, True), (True, False))


def test_run_out_by_kind_of_end():
    plan = samples.usual()
    assert run_out(plan.feature("dowel_1"), plan) == 0.0
    assert run_out(plan.feature("base_screw_1"), plan) == 1.0
    assert run_out(plan.feature("bearing_bore"), plan) == 9.0


def test_a_through_hole_that_misses_the_window_has_no_run_out():
    hole = replace(samples.bearing_bore(4.0), id="bearing_hole_1", position=(0.0, 45.0, samples.SHAFT_HEIGHT))
    plan = samples.plan_of([hole, samples.window()])
    assert run_out(hole, plan) == 0.0
    partly = replace(hole, position=(0.0, 31.0, samples.SHAFT_HEIGHT))
    assert run_out(partly, samples.plan_of([partly, samples.window()])) == 1.0


@pytest.mark.parametrize(("radius", "reach"), [(20.0, 9.0), (29.5, 9.0), (29.6, 1.0), (30.0, 1.0), (35.0, 1.0)])
def test_wide_bores_do_not_cut_deep_into_the_side_walls(radius, reach):
    plan = samples.plan_of([samples.bearing_bore(radius), samples.window()])
    assert run_out(plan.feature("bearing_bore"), plan) == reach


def test_run_out_stops_in_the_middle_of_the_window():
    window = samples.window()
    window = replace(window, pocket=replace(window.pocket, high=(41.5, 30.0, 110.0)))
    plan = samples.plan_of([samples.bearing_bore(), window])
    assert run_out(plan.feature("bearing_bore"), plan) == pytest.approx(8.25)


def test_bore_within_the_flat_of_the_wall_takes_nothing_more():
    plan = samples.plan_of([samples.bearing_bore(21.9), samples.window()])
    assert run_out_volume(plan.feature("bearing_bore"), plan) == pytest.approx(0.0, abs=1e-9)


@pytest.mark.parametrize(
    ("radius", "window"),
    [
        (25.0, samples.window()),
        (30.0, samples.window()),
        (33.0, samples.window()),
        (29.0, samples.window(floor=30.0)),
        (25.0, samples.window("y", floor=27.0)),
    ],
)
def test_run_out_volume_by_counting_columns(radius, window):
    plan, pocket = samples.plan_of([samples.bearing_bore(radius), window]), window.pocket
    centre = (0.0, samples.SHAFT_HEIGHT) if pocket.axis == "z" else (samples.SHAFT_HEIGHT, 0.0)
    floor = -math.inf if pocket.axis == "y" or pocket.open_low else pocket.low[2]
    step, total = 0.05, 0.0
    reach = 9.0 if radius < 29.5 else 1.0
    for i in range(int(2 * radius / step)):
        u = centre[0] - radius + (i + 0.5) * step
        half = math.sqrt(radius**2 - (u - centre[0]) ** 2)
        below = min(max(floor - (centre[1] - half), 0.0), 2 * half)
        total += (_material_beyond_wall(u, pocket, reach) * (2 * half - below) + reach * below) * step
    assert run_out_volume(plan.feature("bearing_bore"), plan) == pytest.approx(total, rel=0.01)


def _material_beyond_wall(u, pocket, reach):
    """Walk inwards from the wall in small steps and count what is not window."""
    step = reach / 400
    return step * sum(not _in_window(25.0 + (k + 0.5) * step, u, pocket) for k in range(400))


def _in_window(x, u, pocket):
    low, high = (pocket.low[1], pocket.high[1]) if pocket.axis == "z" else (pocket.low[2], pocket.high[2])
    r = pocket.corner_radius
    from_side, from_wall = min(u - low, high - u), x - pocket.low[0]
    rounded = (r - from_side) ** 2 + (r - from_wall) ** 2 < r * r
    return from_side > 0 and (from_side >= r or from_wall >= r or rounded)


def test_relief_over_a_hole_is_counted_once():
    hole, relief = samples.dowels()[0], samples.relief(depth=2.0)
    body = samples.plan_of([]).body
    alone = [feature_volume(f, body) for f in (hole, relief)]
    in_relief = math.pi * 0.3 / 3 * (4.2**2 + 4.2 * 3.9 + 3.9**2) + math.pi * 3.9**2 * 1.7
    together = body_volume(body) - reference_volume(samples.plan_of([hole, relief]))
    assert together == pytest.approx(sum(alone) - in_relief)


def test_relief_over_a_window_is_counted_once():
    window, relief = samples.window(corner=8.0), samples.relief(low_x=10.0, high_x=130.0, depth=2.0)
    body = samples.plan_of([]).body
    alone = [feature_volume(f, body) for f in (window, relief)]
    together = body_volume(body) - reference_volume(samples.plan_of([window, relief]))
    assert together == pytest.approx(sum(alone) - 2 * (91 * 60 - (4 - math.pi) * 64))


def test_tolerance_is_a_tenth_of_the_smallest_cavity():
    plan = samples.usual()
    smallest = min(feature_volume(f, plan.body) for f in plan.features)
    assert volume_tolerance(plan) == pytest.approx(smallest / 10)
    assert 0 < volume_tolerance(samples.plain()) < 0.01
