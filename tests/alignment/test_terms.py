"""Signs and arms of the chain, and terms from a plan's contributors."""

import pytest

from blockgen.alignment.scatter import known
from blockgen.alignment.terms import angles, coupling_centre, offsets, shift, terms_of, tilt
from tests.sizing.strategies import sized

LENGTH, CENTRE = 90.0, 50.0


def line_offset(shift_at, slope, seat, x):
    return shift_at + slope * (x - seat)


@pytest.mark.parametrize(
    ("o_m", "t_m", "o_b", "t_b"),
    [
        (0.1, 0.0, 0.0, 0.0),
        (0.0, 1e-3, 0.0, 0.0),
        (0.0, 0.0, 0.1, 0.0),
        (0.0, 0.0, 0.0, 1e-3),
        (0.03, -2e-3, -0.04, 1e-3),
    ],
)
def test_known_shafts_meet_where_two_lines_do(o_m, t_m, o_b, t_b):
    terms = [
        shift("m", "motor", known(0.0, o_m)), tilt("tm", "motor", known(0.0, t_m), CENTRE - LENGTH),
        shift("b", "bearing", known(0.0, o_b)), tilt("tb", "bearing", known(0.0, t_b), CENTRE),
    ]  # fmt: skip
    motor, journal = line_offset(o_m, t_m, LENGTH, CENTRE), line_offset(o_b, t_b, 0.0, CENTRE)
    assert sum(s.vector[1] for s in offsets(terms)) == pytest.approx(motor - journal)
    assert sum(s.vector[1] for s in angles(terms)) == pytest.approx(t_m - t_b)


def test_every_contributor_becomes_a_term():
    plan = sized()
    assert [t.id for t in terms_of(plan)] == [c.id for c in plan.contributors]


def test_arms_are_distances_to_the_coupling():
    plan = sized()
    terms = {t.id: t for t in terms_of(plan)}
    centre, length = coupling_centre(plan), plan.number("length")
    assert centre == plan.number("coupling_position") + 30.0
    assert terms["motor_face_runout"].offset_factor == pytest.approx(centre - length)
    assert terms["bearing_face_runout"].offset_factor == pytest.approx(-centre)
    assert terms["bore_coaxiality"].offset_factor == 1.0
    assert terms["bore_coaxiality"].angle_factor == 0.0


def test_clearances_know_hole_and_shaft_apart():
    terms = {t.id: t for t in terms_of(sized())}  # 50 H7 0.025, h6 0.016
    fit = terms["bearing_pilot_clearance"].scatter
    assert (fit.hole_tolerance, fit.shaft_tolerance) == pytest.approx((0.025, 0.016))


def test_heat_opens_a_clearance():
    cold, warm = terms_of(sized()), terms_of(sized(), {"motor": 0.025})
    fits = [{t.id: t.scatter for t in terms}["motor_pilot_clearance"] for terms in (cold, warm)]
    assert fits[1].high - fits[0].high == pytest.approx(0.025)
    assert fits[1].low - fits[0].low == pytest.approx(0.025)
