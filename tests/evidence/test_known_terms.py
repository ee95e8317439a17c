"""What measured values make of the causes."""

import math

import pytest
from hypothesis import given
from hypothesis import strategies as st

from blockgen.alignment.terms import terms_of
from blockgen.evidence.known_terms import still_random, turned, vector_scatters, with_measured
from blockgen.evidence.measurement import Vector
from tests.evidence.samples import made, measured

PLAN = made().plan


def terms(growth=None, turn=0.0, **values):
    found = measured({key.replace("__", "."): value for key, value in values.items()})
    return {t.id: t for t in with_measured(PLAN, terms_of(PLAN), found.values, growth or {}, turn)}


def test_nothing_measured_changes_nothing():
    assert tuple(terms().values()) == terms_of(PLAN)


def test_an_offset_takes_the_place_of_the_zone():
    found = terms(motor_bore__offset_y=(0.006, 0.002), motor_bore__offset_z=(-0.004, 0.002))
    assert found["bore_coaxiality"].scatter.vector == (0.006, -0.004)
    doubt = found["bore_coaxiality_doubt_1"]
    assert (doubt.scatter.law, doubt.scatter.size, doubt.offset_factor) == ("gaussian", 0.001, 1)


def test_the_measured_seat_takes_the_place_of_both():
    found = terms(motor_seat__slope_y=(0.1, 0.0), motor_seat__slope_z=(0.2, 0.0))
    assert "bearing_seat_perpendicularity" not in found
    seat = found["motor_seat_perpendicularity"]
    assert seat.scatter.vector == pytest.approx((1e-4, 2e-4))
    assert seat.angle_factor == 1
    assert seat.offset_factor == pytest.approx(PLAN.number("coupling_position") + 29 - PLAN.number("length"))


def test_a_zone_alone_is_a_vector_of_known_length():
    found = terms(motor_bore__coaxiality=(0.012, 0.002), motor_seat__parallelism=(0.018, 0.0))
    ring = found["bore_coaxiality"].scatter
    assert (ring.law, ring.low, ring.high) == ("clearance", 0.012, 0.012)  # radius 0.006
    assert found["bore_coaxiality_doubt_1"].scatter.size == pytest.approx(0.0005)
    lean = found["motor_seat_perpendicularity"].scatter
    assert lean.high / 2 == pytest.approx(0.018 / 90)
    assert "motor_seat_perpendicularity_doubt_1" not in found
    assert "bearing_seat_perpendicularity" not in found


def test_a_measured_bore_narrows_the_clearance():
    found = terms(motor_bore__diameter=(70.02, 0.0))["motor_pilot_clearance"].scatter
    assert (found.low, found.high) == pytest.approx((0.02, 0.05))
    assert found.hole_tolerance == pytest.approx(0)


def test_both_sizes_leave_their_doubt_only():
    found = terms(motor_bore__diameter=(70.02, 0.002), motor__pilot_diameter=(69.99, 0.004))
    scatter = found["motor_pilot_clearance"].scatter
    assert (scatter.low + scatter.high) / 2 == pytest.approx(0.03)
    variance = (scatter.hole_tolerance**2 + scatter.shaft_tolerance**2) / 12
    assert variance == pytest.approx(0.001**2 + 0.002**2)


def test_heat_still_loosens_a_measured_clearance():
    found = terms({"motor": 0.004}, motor_bore__diameter=(70.02, 0.0))["motor_pilot_clearance"].scatter
    assert (found.low, found.high) == pytest.approx((0.024, 0.054))


def test_run_outs_by_indicator_and_by_vector():
    found = terms(motor__spigot_runout=(0.03, 0.0), bearing__face_runout=(0.0062, 0.0))
    assert found["motor_spigot_runout"].scatter.high / 2 == pytest.approx(0.015)
    assert found["bearing_face_runout"].scatter.high / 2 == pytest.approx(0.0001)
    vector = terms(motor__spigot_runout=(0.03, 0.0), motor__spigot_y=(0.015, 0.0), motor__spigot_z=(0.0, 0.0))
    assert vector["motor_spigot_runout"].scatter.vector == (0.015, 0.0)


def test_turning_turns_the_motor_and_nothing_else():
    of_motor = {"motor__spigot_y": (0.01, 0.002), "motor__spigot_z": (0.0, 0.002),
                "motor__face_slope_y": (0.0, 0.0), "motor__face_slope_z": (0.1, 0.0)}  # fmt: skip
    of_others = {"motor_bore__offset_y": (0.01, 0.0), "motor_bore__offset_z": (0.0, 0.0),
                 "bearing__offset_y": (0.003, 0.0), "bearing__offset_z": (0.0, 0.0)}  # fmt: skip
    found = terms(turn=90, **of_motor, **of_others)
    assert found["motor_spigot_runout"].scatter.vector == pytest.approx((0, 0.01))
    assert found["motor_face_runout"].scatter.vector == pytest.approx((-1e-4, 0))
    assert found["bore_coaxiality"].scatter.vector == (0.01, 0)
    assert found["bearing_runout"].scatter.vector == (0.003, 0)


def test_unequal_doubts_leave_the_rest_along_an_axis():
    known, round_one, line = vector_scatters(Vector(1.0, 2.0, 0.006, 0.01))
    assert known.vector == (1, 2)
    assert (round_one.law, round_one.size) == ("gaussian", 0.003)
    assert (line.law, line.size) == ("gaussian_z", pytest.approx(0.004))
    assert [s.law for s in vector_scatters(Vector(0, 0, 0.01, 0.0))] == ["known", "gaussian_y"]
    assert [s.law for s in vector_scatters(Vector(0, 0, 0.0, 0.0))] == ["known"]


@given(st.floats(-1, 1), st.floats(-1, 1), st.floats(-720, 720))
def test_turning_keeps_the_length_and_turns_back(y, z, angle):
    vector = turned(Vector(y, z, 0.1, 0.1), angle)
    assert math.hypot(vector.y, vector.z) == pytest.approx(math.hypot(y, z), abs=1e-12)
    back = turned(vector, -angle)
    assert (back.y, back.z) == pytest.approx((y, z), abs=1e-9)


def test_a_quarter_turn_is_counter_clockwise():
    found = turned(Vector(1.0, 0.0, 0.1, 0.2), 90)
    assert (found.y, found.z) == pytest.approx((0, 1))
    assert (found.uncertainty_y, found.uncertainty_z) == pytest.approx((0.2, 0.1))


def test_what_stays_random():
    after = tuple(terms(motor__spigot_runout=(0.03, 0.0)).values())
    before = terms_of(PLAN)
    assert set(still_random(before, after)) == {t.id for t in before} - {"motor_spigot_runout"}
