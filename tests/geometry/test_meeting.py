"""Distances and common volumes of two solids against what can be written down."""

import math
import random

import pytest

pytestmark = pytest.mark.slow


def box(low, high):
    from blockgen.geometry.solid_part import solid_part
    from blockgen.geometry.stand_ins.shapes import box as made

    return solid_part("box", made(low, high))


def rod(start, direction, radius, length):
    from blockgen.geometry.solid_part import solid_part
    from blockgen.geometry.stand_ins.shapes import rod as made

    return solid_part("rod", made(start, direction, radius, length))


def ball(centre, radius):
    from OCP.BRepPrimAPI import BRepPrimAPI_MakeSphere
    from OCP.gp import gp_Pnt

    from blockgen.geometry.solid_part import solid_part

    return solid_part("ball", BRepPrimAPI_MakeSphere(gp_Pnt(*centre), radius).Shape())


def distance(first, second, *within):
    from blockgen.geometry.meeting import least_distance

    return least_distance(first, second, *within)


@pytest.mark.parametrize("seed", range(12))
def test_boxes(seed):
    from blockgen.geometry.meeting import common_volume

    draw = random.Random(seed)
    corners = [[sorted(draw.uniform(-20, 20) for _ in range(2)) for _ in range(3)] for _ in range(2)]
    one, other = (box(tuple(c[0] for c in of), tuple(c[1] for c in of)) for of in corners)
    apart = [max(a[0] - b[1], b[0] - a[1], 0.0) for a, b in zip(*corners, strict=True)]
    inside = [max(0.0, min(a[1], b[1]) - max(a[0], b[0])) for a, b in zip(*corners, strict=True)]
    assert distance(one, other) == pytest.approx(math.hypot(*apart), abs=1e-9)
    assert common_volume(one, other) == pytest.approx(math.prod(inside), rel=1e-9, abs=1e-9)


def test_skew_rods_are_as_far_apart_as_their_axes_less_the_radii():
    assert distance(rod((-30, 0, 0), (1, 0, 0), 4, 60), rod((0, -30, 12.5), (0, 1, 0), 3, 60)) == pytest.approx(5.5)


def test_parallel_rods_and_a_tilted_one():
    upright = rod((0, 0, 0), (0, 0, 1), 5, 40)
    assert distance(upright, rod((20, 0, 5), (0, 0, 1), 4, 20)) == pytest.approx(11.0)
    tilted = rod((20, -30, 20), (0, math.sqrt(0.75), 0.5), 4, 70)
    assert distance(upright, tilted) == pytest.approx(11.0)


def test_a_rod_in_its_bore_is_off_by_the_difference_of_radii():
    from blockgen.geometry.solid_part import solid_part
    from blockgen.geometry.stand_ins.shapes import turned

    sleeve = solid_part("sleeve", turned(((0, 10), (0, 20), (30, 20), (30, 10))))
    assert distance(sleeve, rod((-10, 0, 0), (1, 0, 0), 8.5, 60)) == pytest.approx(1.5)
    assert distance(sleeve, rod((-10, 1, 0), (1, 0, 0), 8.5, 60)) == pytest.approx(0.5)


def test_balls_and_a_ball_in_a_plate():
    from blockgen.geometry.meeting import common_volume

    assert distance(ball((0, 0, 0), 5), ball((12, 5, 0), 6)) == pytest.approx(2.0)
    h = 3.0
    cap = math.pi * h**2 * (3 * 10 - h) / 3
    plate = box((-50, -50, 10 - h), (50, 50, 30))
    assert distance(plate, ball((0, 0, 0), 10)) == 0.0
    assert common_volume(plate, ball((0, 0, 0), 10)) == pytest.approx(cap, rel=1e-3)


def test_a_rod_through_a_plate_touches_it_though_no_edge_of_it_does():
    assert distance(box((-50, -50, -2), (50, 50, 2)), rod((0, 0, -30), (0, 0, 1), 3, 60)) == 0.0


def test_beyond_what_matters_the_distance_is_infinite():
    one, other = box((0, 0, 0), (1, 1, 1)), box((4, 0, 0), (5, 1, 1))
    assert distance(one, other, 2.9) == math.inf
    assert distance(one, other, 3.0) == pytest.approx(3.0)


def test_a_part_wholly_inside_another_meets_it():
    from blockgen.geometry.meeting import meets, one_in_other

    outer, inner = box((0, 0, 0), (10, 10, 10)), box((4, 4, 4), (6, 6, 6))
    assert distance(outer, inner) == pytest.approx(4.0)
    assert one_in_other(inner, outer)
    assert meets(outer, inner)
    assert not meets(outer, box((4, 4, 14), (6, 6, 16)))


@pytest.mark.parametrize("seed", range(6))
def test_the_same_distance_as_the_kernel_finds_for_whole_shapes(seed):
    from OCP.BRepExtrema import BRepExtrema_DistShapeShape
    from OCP.gp import gp_Ax1, gp_Dir, gp_Pnt, gp_Trsf, gp_Vec

    from blockgen.geometry.solid_part import solid_part
    from blockgen.geometry.stand_ins.fasteners import screw_solid
    from blockgen.standards.screws import cap_screw

    draw = random.Random(seed)
    parts = []
    for size, length in (("M8", 30.0), ("M6", 20.0)):
        turn, shift = gp_Trsf(), gp_Trsf()
        turn.SetRotation(gp_Ax1(gp_Pnt(), gp_Dir(draw.random(), draw.random(), 0.3)), draw.uniform(0, 6))
        shift.SetTranslation(gp_Vec(*(draw.uniform(-30, 30) for _ in range(3))))
        parts.append(solid_part(size, screw_solid(cap_screw(size), length), shift.Multiplied(turn)))
    whole = BRepExtrema_DistShapeShape(parts[0].shape, parts[1].shape).Value()
    assert distance(*parts) == pytest.approx(whole, abs=1e-5)
    assert distance(parts[1], parts[0]) == pytest.approx(whole, abs=1e-5)
