"""Pull and torque on the flange screws."""

import math

import pytest

from blockgen.record import Record
from blockgen.sizing import flange_joint as joint
from tests.sizing.strategies import sized

PLAN = sized(motor={"mass": 10.0, "centre_of_mass": 80.0})
SQUARE = ((30.0, 30.0), (-30.0, 30.0), (-30.0, -30.0), (30.0, -30.0))
WEIGHT = 98.0665


def down(way):
    return {**PLAN.records, "job.gravity": Record("job.gravity", way, "", "given", "for the test")}


@pytest.mark.parametrize(
    ("way", "pull"),
    [
        ("-z", (0, 0, 7.845)),
        ("+z", (0, 0, -7.845)),
        ("-y", (0, 7.845, 0)),
        ("+x", (WEIGHT, 0, 0)),
        ("-x", (-WEIGHT, 0, 0)),
    ],
)
def test_weight_opens_the_uphill_edge(way, pull):
    found = joint.motor_pull(down(way))
    assert (found.lift, found.open_u, found.open_v) == pytest.approx(pull, abs=1e-3)


def test_screws_of_a_hanging_motor_by_hand():
    assert joint.motor_screw_pull(down("-z"), SQUARE) == pytest.approx(WEIGHT * 80 * 30 / (4 * 900))
    assert joint.motor_screw_pull(down("+x"), SQUARE) == pytest.approx(WEIGHT / 4)
    assert joint.motor_screw_pull(down("-x"), SQUARE) == 0.0


def test_torque_slip_by_hand():
    assert joint.torque_slip(SQUARE, 1000.0, 0.1, 2.0) == pytest.approx(4 * 100 * math.hypot(30, 30) / 2000)
    assert joint.torque_slip(SQUARE, 1000.0, 0.1, -2.0) == joint.torque_slip(SQUARE, 1000.0, 0.1, 2.0)
    assert joint.torque_slip(SQUARE, 1000.0, 0.1, 0.0) == math.inf


def test_the_flange_sits_on_its_outline_less_the_bore():
    assert joint.flange_face(PLAN.records, "motor").area == pytest.approx(80**2 - math.pi * 35**2)
    round_ = sized(bearing={"flange_shape": "round", "flange_size": 84})
    assert joint.flange_face(round_.records, "bearing").area == pytest.approx(math.pi * (42**2 - 25**2))


def test_only_thrust_away_pulls_the_bearing():
    assert joint.bearing_pull(PLAN.records) == 3000
    assert joint.bearing_pull(sized(screw={"thrust_direction": "towards_motor"}).records) == 0
