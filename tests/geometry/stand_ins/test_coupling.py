import math

import pytest

from tests.geometry.stand_ins.sums import integral, rod, sizes_of

pytestmark = pytest.mark.slow


def made(**changes):
    from blockgen.geometry.kernel import is_valid, volume_of
    from blockgen.geometry.stand_ins.coupling import coupling_solid

    _, sizes = sizes_of(**changes)
    solid = coupling_solid(sizes)
    assert is_valid(solid)
    return volume_of(solid), sizes


def hole(shaft, outer=22.5, radius=2.5):
    """Return what a clamp screw's pocket and hole take out of a hub, half way between shaft and outside."""
    beside, wide = (shaft + outer) / 2, 1.7 * radius
    floor = math.sqrt(outer**2 - (beside + wide) ** 2) / 2
    pocket = integral(lambda y: math.sqrt(outer**2 - y**2) - floor, beside - wide, beside + wide)
    return 2 * wide * pocket + rod(radius, floor)


def bores(sizes):
    """Return journal and motor bores, with a gap of the wider one."""
    grips = [sizes.number(f"{end}_grip") for end in ("journal", "motor")]
    gap = 60 - sum(grips)
    return rod(7.5, grips[0]) + rod(9.5, gap + grips[1])


def test_rigid_coupling():
    volume, sizes = made(coupling={"kind": "rigid"})
    assert sizes.number("coupling.clamp_hole") == 5
    assert volume == pytest.approx(rod(22.5, 60) - bores(sizes) - hole(7.5) - hole(9.5), rel=1e-6)


def test_flexing_part_between_the_hubs():
    volume, sizes = made(coupling={"hub_length": 20, "grip_max": 20})
    waist = rod(22.5, 20) - rod(0.92 * 22.5, 20)
    assert volume == pytest.approx(rod(22.5, 60) - waist - bores(sizes) - hole(7.5) - hole(9.5), rel=1e-6)


def test_no_clamp_holes_where_the_hub_is_thin():
    volume, sizes = made(coupling={"kind": "rigid", "outer_diameter": 24, "bore_max": 20})
    assert volume == pytest.approx(rod(12, 60) - bores(sizes), rel=1e-6)


def test_slot_for_the_motors_key():
    _, sizes = made(coupling={"kind": "rigid"})
    keyed, _ = made(coupling={"kind": "rigid"}, motor={"shaft_end": "keyed", "key_width": 6, "key_length": 20})
    plain, _ = made(coupling={"kind": "rigid"})
    grip, smooth = sizes.number("motor_grip"), sizes.number("motor.shaft_smooth_length")
    start = (smooth - 20) / 2  # the key lies in the middle of the smooth length; the shaft's end lies in the coupling
    inside = min(start + 20, grip) - start
    section = integral(lambda y: 9.5 + 2.4 - math.sqrt(9.5**2 - y**2), -3, 3)
    assert plain - keyed == pytest.approx(inside * section, rel=1e-3)


def test_a_shaft_too_thick_for_the_coupling_leaves_it_whole():
    volume, sizes = made(coupling={"kind": "rigid", "outer_diameter": 18, "bore_max": 14, "bore_min": 8})
    grip = sizes.number("journal_grip")
    # shafts 15 and 19: a wall of 1 mm is left
    assert volume == pytest.approx(rod(9, 60) - rod(7.5, grip) - rod(8, 60 - grip), rel=1e-6)
