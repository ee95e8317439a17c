"""Checks of the flange joints."""

import pytest

from blockgen.checks.flange_joints import flange_joints, screw_places
from tests.sizing.strategies import sized

MOTOR = {"mass": 4.0, "centre_of_mass": 70.0}
TAPPED = {"bolt_hole": None, "bolt_thread": "M6", "fastening": "tapped"}


def found(plan, name):
    return next(f for f in flange_joints(plan) if f.id == name)


def test_thrust_away_from_the_motor_pulls_on_the_bearing_s_screws():
    plan = sized(screw={"thrust_direction": "away"})
    finding = found(plan, "bearing_pull")
    assert finding.value == pytest.approx(4 * plan.number("bearing_preload_least") / 3000, rel=1e-3)
    assert finding.verdict == "pass"


def test_thrust_towards_the_motor_seats_the_bearing():
    finding = found(sized(screw={"thrust_direction": "towards_motor"}), "bearing_pull")
    assert (finding.verdict, finding.value) == ("pass", None)
    assert "presses the flange" in finding.explanation


def test_an_unknown_direction_is_taken_as_the_worse():
    both, away = sized(), sized(screw={"thrust_direction": "away"})
    assert found(both, "bearing_pull").value == found(away, "bearing_pull").value


@pytest.mark.parametrize(("thrust", "word"), [(60000, "fail"), (None, "not_assessed")])
def test_pull_can_miss_and_be_left_open(thrust, word):
    assert found(sized(screw={"thrust": thrust}), "bearing_pull").verdict == word


def test_a_hanging_load_pulls_although_the_thrust_presses():
    upright = {"job": {"gravity": "-x"}, "screw": {"thrust_direction": "towards_motor", "moved_mass": 200}}
    finding = found(sized(**upright), "bearing_pull")
    assert finding.value is not None
    del upright["screw"]["moved_mass"]
    assert found(sized(**upright), "bearing_pull").verdict == "not_assessed"


def test_torque_reaction_by_hand():
    """Friction at four screws on a circle of 90 mm."""
    plan = sized(motor={"peak_torque": 8})
    sure = plan.number("motor_preload_least")
    finding = found(plan, "motor_torque_slip")
    assert finding.value == pytest.approx(0.12 * 4 * sure * 0.045 / 8, rel=1e-3)
    assert finding.limit == pytest.approx(1.8)


@pytest.mark.parametrize(("torque", "word"), [(8, "pass"), (400, "fail"), (None, "not_assessed")])
def test_torque_reaction(torque, word):
    assert found(sized(motor={"peak_torque": torque}), "motor_torque_slip").verdict == word


def test_the_rated_torque_alone_proves_nothing():
    finding = found(sized(motor={"peak_torque": None, "rated_torque": 3}), "motor_torque_slip")
    assert finding.verdict == "not_assessed"
    assert finding.missing == ("motor.peak_torque",)


def test_without_thrust_the_torque_still_reverses():
    assert found(sized(screw={"thrust": None}), "motor_torque_slip").limit == pytest.approx(1.8)
    assert found(sized(screw={"thrust": None, "reversing": False}), "motor_torque_slip").limit == 1.5


@pytest.mark.parametrize(("mass", "word"), [(4.0, "pass"), (4000.0, "fail")])
def test_a_heavy_motor_opens_its_flange(mass, word):
    assert found(sized(motor=MOTOR | {"mass": mass}), "motor_opening").verdict == word


def test_a_motor_that_hangs_or_stands():
    plain = found(sized(motor=MOTOR), "motor_opening").value
    hanging = found(sized(motor=MOTOR, job={"gravity": "+x"}), "motor_opening")
    standing = found(sized(motor=MOTOR, job={"gravity": "-x"}), "motor_opening")
    assert hanging.value > plain
    assert (standing.verdict, standing.value) == ("pass", None)


def test_an_unknown_motor_is_not_assessed():
    assert found(sized(), "motor_opening").missing == ("motor.mass", "motor.centre_of_mass")


@pytest.mark.parametrize("end", ["bearing", "motor"])
def test_threads_of_the_block_hold(end):
    assert found(sized(motor=MOTOR), f"{end}_strip").verdict == "pass"


def test_a_pull_asks_the_bearing_thread_for_more():
    safer = {"limits": {"strip_safety": 2.5}}
    plain = sized(screw={"thrust": 8000, "thrust_direction": "towards_motor"}, **safer)
    pulled = sized(screw={"thrust": 8000, "thrust_direction": "away"}, **safer)
    assert pulled.number("bearing_engagement_least") > plain.number("bearing_engagement_least")
    assert found(pulled, "bearing_strip").value >= 2.5


def test_a_pull_beyond_the_screw_is_no_reason_for_a_longer_thread():
    strong, absurd = (sized(screw={"thrust": t}) for t in (20000, 200000))
    assert absurd.number("bearing_engagement_least") == strong.number("bearing_engagement_least")
    assert found(absurd, "bearing_strip").verdict == "fail"


def test_the_maker_knows_the_flange():
    for end in ("bearing", "motor"):
        finding = found(sized(), f"{end}_head_pressure")
        assert finding.verdict == "not_assessed"
        assert "maker" in finding.missing[0]


def test_heads_on_the_block_of_a_tapped_motor_flange():
    assert found(sized(motor=TAPPED), "motor_head_pressure").limit == 260
    assert found(sized(motor=TAPPED), "motor_strip").verdict == "not_assessed"
    unknown = sized(motor=TAPPED, block={"material": "EN AW-6061-T6"})
    assert found(unknown, "motor_head_pressure").verdict == "not_assessed"


def test_screws_of_a_seat_are_counted_from_the_axis():
    places = screw_places(sized(), "motor")
    assert len(places) == 4
    assert all(abs(y**2 + z**2 - 45**2) < 1e-6 for y, z in places)
