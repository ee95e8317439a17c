import math

import pytest

from tests.geometry.stand_ins.sums import rod, sizes_of

pytestmark = pytest.mark.slow

# flange 75 x 75 x 12 with four holes 6.6, pilot 50 x 12, nut 30 to 20 mm, shoulder 28 behind the seat, seat 17
FLANGE = 12 * (75**2 - 4 * math.pi * 3.3**2)


def made(**changes):
    from blockgen.geometry.kernel import is_valid, volume_of
    from blockgen.geometry.stand_ins.bearing_unit import bearing_solid
    from blockgen.geometry.stand_ins.flange import hole_places

    plan, sizes = sizes_of(bearing=changes)
    solid = bearing_solid(sizes, hole_places(plan, "bearing"))
    assert is_valid(solid)
    return solid, volume_of(solid)


def test_pilot_in_the_wall():
    solid, volume = made()
    expected = FLANGE + rod(25, 12) + rod(25, 16) + rod(15, 8) - rod(8.5, 28 + 20)
    assert volume == pytest.approx(expected, rel=1e-6)
    from blockgen.geometry.kernel import bounding_box

    assert bounding_box(solid) == pytest.approx((-28, -37.5, -37.5, 20, 37.5, 37.5), abs=1e-6)


def test_pilot_away_from_the_wall():
    _, volume = made(pilot_direction="away", shoulder_offset=30)
    # flange 12, pilot 12 behind it, housing to 30, nut from the seat to 20
    expected = FLANGE + rod(25, 12) + rod(25, 6) + rod(15, 20) - rod(8.5, 50)
    assert volume == pytest.approx(expected, rel=1e-6)


def test_housing_behind_the_flange_leaves_the_screw_heads_room():
    _, volume = made(bolt_circle=60, bolt_hole=5.5, pilot_diameter=45, nut_outer_diameter=30)
    # M5: head 8.5, half a millimetre beside it: radius 30 - 4.25 - 0.5 is more than the pilot's
    flange = 12 * (75**2 - 4 * math.pi * 2.75**2)
    expected = flange + rod(22.5, 12) + rod(22.5, 16) + rod(15, 8) - rod(8.5, 48)
    assert volume == pytest.approx(expected, rel=1e-6)
    _, volume = made(bolt_circle=54, bolt_hole=5.5, pilot_diameter=45, nut_outer_diameter=30)
    expected += rod(27 - 4.75, 16) - rod(22.5, 16)
    assert volume == pytest.approx(expected, rel=1e-6)


def test_shoulder_inside_the_unit_widens_the_bore():
    _, volume = made(shoulder_offset=5)
    # the screw is 23 mm thick, so that the bore is wide from the flange's rear at 12 to the shoulder at 5
    expected = FLANGE + rod(25, 12) + rod(15, 8) - rod(8.5, 25) - rod(11.5, 7)
    assert volume == pytest.approx(expected, rel=1e-6)


def test_nut_inside_the_housing_is_not_seen():
    _, volume = made(nut_reach=12)
    assert volume == pytest.approx(FLANGE + rod(25, 12) + rod(25, 16) - rod(8.5, 40), rel=1e-6)


def test_recessed_unit():
    _, volume = made(pilot_form="recessed", pilot_fit="H7", pilot_length=4, stack_length=None, shoulder_offset=20)
    # nut from the seat to 20, recess 4 deep about it
    expected = FLANGE + rod(25, 8) + rod(15, 20) - rod(8.5, 40) - (rod(25, 4) - rod(15, 4))
    assert volume == pytest.approx(expected, rel=1e-6)
