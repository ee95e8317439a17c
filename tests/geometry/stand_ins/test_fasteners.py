import math

import pytest

from tests.geometry.stand_ins.sums import box_of, rod, sizes_of

pytestmark = pytest.mark.slow

TAPPED = {"bolt_hole": None, "bolt_thread": "M6", "fastening": "tapped"}


def made(**changes):
    from blockgen.geometry.stand_ins.fasteners import fasteners

    plan, sizes = sizes_of(**changes)
    return plan, {part.id: part for part in fasteners(plan, sizes)}


def test_volumes_of_screw_washer_and_pin():
    from blockgen.geometry.kernel import volume_of
    from blockgen.geometry.stand_ins.fasteners import pin_solid, screw_solid, washer_solid
    from blockgen.standards.screws import cap_screw
    from blockgen.standards.washers import washer

    socket = 2 * math.sqrt(3) * 4**2 * 5  # hexagon 8 across flats, 5 deep
    assert volume_of(screw_solid(cap_screw("M10"), 50)) == pytest.approx(rod(8, 10) + rod(5, 50) - socket, rel=1e-6)
    assert volume_of(washer_solid(washer("M8", "ISO 7092"))) == pytest.approx(
        1.6 * math.pi * (7.5**2 - 4.2**2), rel=1e-6
    )
    cone = math.pi * 0.8 / 3 * (4**2 + 4 * 3.2 + 3.2**2)
    assert volume_of(pin_solid(8, 32)) == pytest.approx(rod(4, 32 - 1.6) + 2 * cone, rel=1e-6)


def test_heads_of_base_screws_rest_on_washers_in_their_counterbores():
    plan, parts = made()
    holes = [f for f in plan.features if f.group == "base_screws"]
    length = plan.number("base_screw_length")
    for number, hole in enumerate(holes, 1):
        floor = hole.position[2] - hole.counterbore_depth
        ring, screw = box_of(parts[f"base_washer_{number}"]), box_of(parts[f"base_screw_{number}"])
        thick = plan.number("base_washer_thickness")
        assert (ring[2], ring[5]) == pytest.approx((floor, floor + thick), abs=1e-6)
        assert (screw[2], screw[5]) == pytest.approx((floor + thick - length, floor + thick + 10), abs=1e-6)
        assert (screw[0] + screw[3]) / 2 == pytest.approx(hole.position[0], abs=1e-6)
        assert (screw[1] + screw[4]) / 2 == pytest.approx(hole.position[1], abs=1e-6)
        assert -screw[2] == pytest.approx(plan.number("base_engagement"), abs=1e-6)
        assert screw[5] < plan.body.height


def test_base_screws_from_below_press_on_the_plate():
    plan, parts = made(base={"screw_from": "below", "thickness": 25})
    screws = [part for part in parts.values() if part.id.startswith("base_screw")]
    assert len(screws) == 4
    for part in screws:
        box = box_of(part)
        assert box[2] == pytest.approx(-25 - 10, abs=1e-6)
        assert box[5] == pytest.approx(plan.number("base_engagement"), abs=1e-6)
        assert part.held_in == ("block",)


def test_flange_screws_press_on_their_flanges():
    plan, parts = made()
    length = plan.body.length
    motor, bearing = box_of(parts["motor_screw_1"]), box_of(parts["bearing_screw_1"])
    reach = plan.number("motor_screw_length")
    assert (motor[0], motor[3]) == pytest.approx((length + 10 - reach, length + 10 + 6), abs=1e-6)
    reach = plan.number("bearing_screw_length")
    assert (bearing[0], bearing[3]) == pytest.approx((-12 - 6, -12 + reach), abs=1e-6)
    assert length - motor[0] == pytest.approx(plan.number("motor_engagement"), abs=1e-6)


def test_screws_of_a_tapped_flange_come_from_the_window():
    plan, parts = made(motor=TAPPED)
    wall, length = plan.number("motor_wall"), plan.body.length
    box = box_of(parts["motor_screw_1"])
    reach = length - wall + plan.number("motor_screw_length")
    assert (box[0], box[3]) == pytest.approx((length - wall - 6, reach), abs=1e-6)
    assert parts["motor_screw_1"].held_in == ("motor",)


def test_pins_cross_the_joint_half_in_each_part():
    _, parts = made(base={"dowels": 6})
    box = box_of(parts["dowel_1"])
    assert box[5] == pytest.approx(-box[2], abs=1e-6)
    assert parts["dowel_2"].held_in == ("block", "base_plate")


def test_pins_end_with_a_thin_plate():
    _, parts = made(base={"dowels": 10, "thickness": 12})
    assert box_of(parts["dowel_1"])[2] == pytest.approx(-12, abs=1e-6)


def test_alike_screws_are_one_shape_whatever_they_hold():
    _, parts = made(motor={"flange_thickness": 12})
    one, other = parts["motor_screw_1"], parts["bearing_screw_3"]
    assert one.name == other.name == "ISO 4762 M6 x 25 - 8.8"
    assert one.shape is other.shape
    assert one.shape is not parts["base_screw_1"].shape


def test_inch_screws_are_named_in_inches():
    _, parts = made(motor={"bolt_hole": None, "bolt_thread": "1/4-20 UNC"})
    assert parts["motor_screw_1"].name == "ASME B18.3 1/4 x 1 in - 8.8"
