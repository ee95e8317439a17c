"""Motors with one thing each that rules can trip over."""

import cadquery as cq
import pytest

from blockgen.reading.part import reading_of
from blockgen.reading.read_file import StepModel
from tests.reading.made_motors import posed

pytestmark = pytest.mark.slow

PLACES = [(x * 32, y * 32) for x, y in ((1, 1), (-1, 1), (-1, -1), (1, -1))]


def rod(radius, low, high, at=(0, 0)):
    return cq.Solid.makeCylinder(radius, high - low, cq.Vector(*at, low), cq.Vector(0, 0, 1))


def box(width, tall, low, high, at=(0, 0)):
    return cq.Solid.makeBox(width, tall, high - low, cq.Vector(at[0] - width / 2, at[1] - tall / 2, low))


def motor(*more, holes=None, pilot=35.0, shaft=9.5):
    """Return a plain motor with further solids fused on and holes cut out."""
    base = box(80, 80, -10, 0).fuse(
        rod(shaft, -10, 43), rod(32, -90, -10), *([rod(pilot, -5, 3)] if pilot else []), *more
    )
    return base.cut(*(holes or [rod(3.3, -11, 1, p) for p in PLACES]))


def read(shape):
    return reading_of(StepModel(posed(shape.wrapped, 9), "mm", 1), "a motor", "motor")


def sure(reading, key):
    return next(f.confidence for f in reading.found if f.key == key)


def test_a_stepped_shaft_is_told():
    reading = read(motor(rod(6, 43, 58)))
    assert reading.value("shaft_diameter") == 19.0
    assert sure(reading, "shaft_diameter") == "fair"
    assert reading.value("shaft_length") == 58.0
    assert "shaft_smooth_length" in {m.key for m in reading.missing}


def test_slots_open_to_the_edge_count_as_holes():
    slots = [
        s for x, y in PLACES for s in (rod(3.3, -11, 1, (x, y)), box(20, 6.6, -11, 1, (x + (10 if x > 0 else -10), y)))
    ]
    reading = read(motor(holes=slots))
    assert (reading.value("bolt_count"), reading.value("bolt_hole")) == (4, 6.6)
    assert sure(reading, "bolt_hole") == "fair"


def test_a_second_pattern_of_as_many_holes_is_a_rival():
    holes = [rod(3.3, -11, 1, p) for p in PLACES] + [rod(2.1, -8, 1, p) for p in ((38, 0), (0, 38), (-38, 0), (0, -38))]
    reading = read(motor(holes=holes, pilot=30.0))
    assert reading.value("bolt_circle") == pytest.approx(90.51, abs=1e-3)
    assert sure(reading, "bolt_circle") == "fair"
    assert any("Another hole pattern in the same face: 4 holes of 4.20 mm on 76.00 mm" in n for n in reading.notes)


def test_one_more_hole_beside_the_pattern():
    reading = read(motor(holes=[rod(3.3, -11, 1, p) for p in [*PLACES, (0, 38)]]))
    assert (reading.value("bolt_count"), reading.value("bolt_circle")) == (4, pytest.approx(90.51, abs=1e-3))


def test_holes_in_no_order_come_as_places():
    places = [(33, 20), (-25, 33), (-33, -28), (30, -33)]
    reading = read(motor(box(30, 30, -60, -20, (0, 32)), holes=[rod(3.3, -11, 1, p) for p in places], pilot=20.0))
    # y counts to the right as one looks along the shaft from the motor: against the file's own x.
    assert reading.value("bolt_positions") == tuple(sorted((float(-x), float(y)) for x, y in places))


def test_a_motor_without_a_pilot():
    reading = read(motor(pilot=None))
    assert reading.value("pilot_diameter") is None
    assert "pilot_diameter" in {m.key for m in reading.missing}
    assert (reading.value("shaft_diameter"), reading.value("shaft_length")) == (19.0, 43.0)


def test_a_motor_without_a_shaft():
    reading = read(
        box(80, 80, -10, 0).fuse(rod(35, -5, 3), rod(32, -90, -10)).cut(*(rod(3.3, -11, 1, p) for p in PLACES))
    )
    assert reading.value("pilot_diameter") == 70.0
    assert {"shaft_diameter", "shaft_length"} <= {m.key for m in reading.missing}


def test_pads_about_the_holes_are_the_mounting_face():
    pads = [box(14, 14, 0, 1, p) for p in PLACES]
    reading = read(motor(*pads, holes=[rod(3.3, -11, 2, p) for p in PLACES]))
    assert reading.value("pilot_length") == 2.0
    assert reading.value("shaft_length") == 42.0
    assert reading.value("flange_size") == 80.0 or sure(reading, "flange_size") == "low"


def test_a_split_pilot_is_one():
    halves = motor().cut(box(6, 90, 0, 5), box(90, 6, 0, 5))
    halves = halves.fuse(rod(9.5, -10, 43))
    reading = read(halves)
    assert reading.value("pilot_diameter") == 70.0
    assert sure(reading, "pilot_diameter") == "fair"
