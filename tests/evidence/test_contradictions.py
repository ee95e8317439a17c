"""Values that cannot be true together."""

from blockgen.evidence.contradictions import contradictions
from tests.evidence.samples import made, measured


def told(**values):
    found = measured({key.replace("__", "."): value for key, value in values.items()})
    return [problem.key for problem in contradictions("m.csv", made().plan, found.values)]


def test_a_vector_needs_both_components():
    assert told(motor_bore__offset_y=(0.01, 0.001)) == ["motor_bore.offset_z"]
    assert told(motor__face_slope_z=(0.01, 0.001)) == ["motor.face_slope_y"]
    assert told(motor_bore__offset_y=(0.01, 0.001), motor_bore__offset_z=(0.0, 0.001)) == []


def coaxial(zone, doubt=0.001):
    return told(
        motor_bore__offset_y=(0.006, doubt), motor_bore__offset_z=(0.008, doubt), motor_bore__coaxiality=(zone, doubt)
    )


def test_a_zone_is_not_smaller_than_twice_its_offset():
    assert coaxial(0.0169) == ["motor_bore.coaxiality"]  # 0.020 less 0.001 and twice 0.001
    assert coaxial(0.0171) == []
    assert coaxial(0.0171, doubt=0.0005) == ["motor_bore.coaxiality"]


def test_nor_greater_by_more_than_a_lean_of_the_bore():
    assert coaxial(0.0429) == []
    assert coaxial(0.0431) == ["motor_bore.coaxiality"]  # 0.020 + 0.003 + 0.02 of squareness


def test_a_seat_may_have_form_beside_its_slope_but_not_less():
    slope = {"motor_seat__slope_y": (0.3, 0.0), "motor_seat__slope_z": (0.4, 0.0)}  # 0.045 mm over 90 mm
    assert told(**slope, motor_seat__parallelism=(0.044, 0.0)) == ["motor_seat.parallelism"]
    assert told(**slope, motor_seat__parallelism=(0.2, 0.0)) == []
    level = {"bearing_seat__slope_z": (0.5, 0.0)}  # 0.031 mm over 62 mm
    assert told(**level, bearing_seat__perpendicularity=(0.03, 0.0)) == ["bearing_seat.perpendicularity"]


def test_run_outs_of_the_motor():
    spigot = {"motor__spigot_y": (0.02, 0.0), "motor__spigot_z": (0.0, 0.0)}
    assert told(**spigot, motor__spigot_runout=(0.039, 0.0)) == ["motor.spigot_runout"]
    assert told(**spigot, motor__spigot_runout=(0.041, 0.0)) == []
