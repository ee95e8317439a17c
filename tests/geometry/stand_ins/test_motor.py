import math

import pytest

from tests.geometry.stand_ins.sums import integral, rod, sizes_of

pytestmark = pytest.mark.slow


def made(**changes):
    from blockgen.geometry.stand_ins.flange import hole_places
    from blockgen.geometry.stand_ins.motor import motor_solid

    plan, sizes = sizes_of(motor=changes)
    places = hole_places(plan, "motor")
    return motor_solid(sizes, places), sizes, places


def volume(solid):
    from blockgen.geometry.kernel import is_valid, volume_of

    assert is_valid(solid)
    return volume_of(solid)


def usual(*, flange=80.0**2, hole=6.6, body):
    """Return the volume of the usual motor, flange 10 mm, body to 120 mm, with another flange or body."""
    return rod(9.5, 37) + rod(35, 3) + 10 * (flange - 4 * math.pi * (hole / 2) ** 2) + 110 * body


def octagon():
    """Return the area of the usual body: 80 mm square, corners cut 6 mm from the axes of the screws on circle 90."""
    corner = 2 * 45 * math.sqrt(0.5) - 6 * math.sqrt(2) - 40  # head 10 mm, 1 mm of room
    return 80**2 - 2 * (40 - corner) ** 2


def test_square_motor():
    solid, *_ = made()
    assert volume(solid) == pytest.approx(usual(body=octagon()), rel=1e-6)


def test_round_flange_has_a_round_body():
    solid, *_ = made(flange_shape="round", flange_size=105, body_size=70, body_length=120)
    expected = usual(flange=math.pi * 52.5**2, body=math.pi * 35**2)
    assert volume(solid) == pytest.approx(expected, rel=1e-6)


def test_tapped_flange_has_tap_drill_holes_and_a_whole_body():
    solid, *_ = made(bolt_hole=None, bolt_thread="M6", fastening="tapped")
    assert volume(solid) == pytest.approx(usual(body=80**2, hole=5.0), rel=1e-6)


def test_recess_is_cut_into_the_flange_round_the_shaft():
    solid, *_ = made(pilot_form="recessed", pilot_fit="H7")
    expected = usual(body=octagon()) - rod(9.5, 37) - rod(35, 3) + rod(9.5, 40) - rod(35, 3) + rod(9.5, 3)
    assert volume(solid) == pytest.approx(expected, rel=1e-6)


def test_key_stands_out_of_the_shaft():
    plain = volume(made()[0])
    solid, *_ = made(shaft_end="keyed", key_width=6, key_length=20)
    # stands out by 2.4 mm
    section = integral(lambda y: 9.5 + 2.4 - math.sqrt(9.5**2 - y**2), -3, 3)
    assert volume(solid) - plain == pytest.approx(20 * section, rel=1e-4)


def test_flat_is_cut_off_the_shaft_end():
    plain = volume(made()[0])
    solid, *_ = made(shaft_end="flat", shaft_smooth_length=30)
    # depth 1.5 mm
    angle = 2 * math.acos(8 / 9.5)
    segment = 9.5**2 / 2 * (angle - math.sin(angle))
    assert plain - volume(solid) == pytest.approx(30 * segment, rel=1e-4)


def test_shaft_ends_at_its_length_from_the_mounting_face():
    from blockgen.geometry.kernel import bounding_box

    solid, *_ = made(body_length=133)
    assert bounding_box(solid) == pytest.approx((-40, -40, -40, 133, 40, 40), abs=1e-6)


@pytest.mark.parametrize(
    "changes",
    [
        {},
        {"body_size": 100},
        {"bolt_angle": 0, "flange_size": 105},
        {"bolt_count": 8, "bolt_angle": 22.5, "flange_size": 100, "body_size": 98},
        {"bolt_count": 3, "bolt_angle": 30, "flange_size": 105, "body_size": 100},
        {"bolt_count": 3, "bolt_angle": 30, "flange_size": 105, "flange_shape": "round", "body_size": 100},
        {"flange_size": None, "flange_shape": "rectangle", "flange_width": 84, "flange_height": 100, "body_size": 84},
    ],
)
def test_body_leaves_heads_and_keys_free(changes):
    """No corner of the flange's holes, widened to head and key, lies in the body's outline."""
    from OCP.BRepAlgoAPI import BRepAlgoAPI_Common

    from blockgen.geometry.kernel import solids_of
    from blockgen.geometry.stand_ins.shapes import X
    from blockgen.geometry.stand_ins.shapes import rod as cylinder

    solid, sizes, places = made(**changes)
    thick = sizes.number("motor.flange_thickness")
    for y, z in places:
        key = cylinder((thick + 0.01, y, z), X, 6.0 - 1e-4, 200)  # M6: head 10, 1 mm of room
        assert not solids_of(BRepAlgoAPI_Common(solid, key).Shape())


def test_body_keeps_its_size_where_the_screws_are_out_of_its_way():
    from blockgen.geometry.stand_ins.motor import BodyForm, body_form

    _, sizes, places = made(body_size=50)
    assert body_form(sizes, places) == BodyForm(25, 25)
