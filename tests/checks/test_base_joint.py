"""Checks of the base joint: each can hold, miss and be left open, and moves the right way."""

import pytest
from hypothesis import HealthCheck, given, settings
from hypothesis import strategies as st

from blockgen.checks.base_joint import base_joint
from tests.sizing.strategies import sized

FEW = settings(max_examples=25, derandomize=True, deadline=None, suppress_health_check=list(HealthCheck))
FOUR = {"screw": "M10", "screw_count": 4}
MOTOR = {"mass": 4.0, "centre_of_mass": 70.0}


def found(plan, name):
    return next(f for f in base_joint(plan) if f.id == name)


def four(**changes):
    changes["base"] = FOUR | changes.get("base", {})
    changes["motor"] = MOTOR | changes.get("motor", {})
    return sized(**changes)


@pytest.mark.parametrize(
    ("thrust", "word"), [(3000, "pass"), (9000, "fail"), (None, "not_assessed"), (0, "not_assessed")]
)
def test_slip(thrust, word):
    finding = found(four(screw={"thrust": thrust}), "base_slip")
    assert finding.verdict == word
    assert ("screw.thrust" in finding.missing) is (word == "not_assessed")


def test_slip_by_hand():
    """Four screws, preload over scatter less embedding, friction 0.12."""
    plan = four()
    sure = plan.number("base_preload") / 1.8 - 0.1 * plan.number("base_preload")
    assert found(plan, "base_slip").value == pytest.approx(4 * sure * 0.12 / 3000, rel=1e-3)
    assert found(plan, "base_slip").limit == pytest.approx(1.8)


WAYS = [
    ({"base": {"property_class": "12.9"}}, True),
    ({"base": {"screw_count": 6}}, True),
    ({"base": {"tightening": "angle"}}, True),
    ({"base": {"tightening": "hand"}}, False),
    ({"screw": {"thrust": 4000}}, False),
]


@pytest.mark.parametrize(("change", "better"), [*WAYS, ({"base": {"friction": 0.2}}, True)])
def test_slip_goes_the_right_way(change, better):
    assert (found(four(**change), "base_slip").value > found(four(), "base_slip").value) is better


@pytest.mark.parametrize(("change", "better"), [*WAYS, ({"motor": {"peak_torque": 80}}, False)])
def test_opening_goes_the_right_way(change, better):
    assert (found(four(**change), "base_opening").value > found(four(), "base_opening").value) is better


@FEW
@given(st.floats(100, 8000), st.floats(1.01, 3))
def test_more_thrust_is_never_better(thrust, more):
    low, high = (four(screw={"thrust": round(t, 1)}) for t in (thrust, thrust * more))
    for name in ("base_slip", "base_opening", "base_strip"):
        assert found(high, name).value <= found(low, name).value + 1e-3


def test_dowels_are_not_added_to_friction():
    assert found(four(base={"dowels": 6}), "base_slip").value == found(four(), "base_slip").value


def test_a_thrust_that_does_not_reverse_asks_for_less():
    assert found(four(screw={"reversing": False}), "base_slip").limit == 1.5


def test_a_given_safety_is_taken_as_it_stands():
    assert found(four(limits={"slip_safety": 1.6}), "base_slip").limit == 1.6


def test_a_vertical_axis_carries_its_load():
    flat = found(four(), "base_slip").value
    upright = found(four(job={"gravity": "-x"}, screw={"moved_mass": 100}), "base_slip").value
    assert upright == pytest.approx(flat * 3000 / (3000 + 104 * 9.80665), rel=1e-3)
    falling = found(four(job={"gravity": "-x"}, screw={"moved_mass": 100}), "falling_load")
    assert falling.verdict == "warn"
    assert "100 kg" in falling.explanation


def test_a_vertical_axis_without_its_mass_is_not_passed():
    finding = found(four(job={"gravity": "+x"}), "base_slip")
    assert finding.verdict == "not_assessed"
    assert finding.missing == ("screw.moved_mass",)


def test_what_fails_without_all_loads_fails():
    assert found(four(job={"gravity": "+x"}, screw={"thrust": 20000}), "base_slip").verdict == "fail"


def test_a_block_on_its_side_slips_sooner_about_its_screws():
    flat = found(four(motor={"mass": 40}), "base_slip").value
    assert found(four(motor={"mass": 40}, job={"gravity": "+y"}), "base_slip").value < flat


@pytest.mark.parametrize(
    ("without", "missing"),
    [
        ({"peak_torque": None}, ("motor.peak_torque",)),
        ({"mass": None, "centre_of_mass": None}, ("motor.mass", "motor.centre_of_mass")),
    ],
)
def test_opening_is_not_passed_without_a_load(without, missing):
    plan = sized(base=FOUR, motor={k: v for k, v in (MOTOR | without).items() if v is not None or k == "peak_torque"})
    finding = found(plan, "base_opening")
    assert finding.verdict == "not_assessed"
    assert finding.missing == missing
    assert "against 1.2" in finding.explanation


def test_opening_with_every_load_is_assessed():
    assert found(four(), "base_opening").verdict == "pass"


def test_a_tall_block_with_much_thrust_gapes():
    tall = four(base={"shaft_height": 250}, screw={"thrust": 6000})
    assert found(tall, "base_opening").verdict == "fail"


def test_a_relief_between_two_pads_leaves_less_face():
    plain, relieved = found(four(), "base_opening"), found(four(block={"relief": 0.5}), "base_opening")
    assert relieved.value != plain.value


def test_screws_bear_what_tilting_adds():
    assert found(four(), "base_screw_load").verdict == "pass"
    hot = {"assembly_temperature": 20, "block_temperature": 140}
    finding = found(four(thermal=hot), "base_screw_load")
    assert finding.verdict == "warn"


def test_a_colder_block_loses_preload():
    cold = four(thermal={"assembly_temperature": 20, "block_temperature": 0})
    assert found(cold, "base_slip").value < found(four(), "base_slip").value
    warm = four(thermal={"assembly_temperature": 20, "block_temperature": 40})
    assert found(warm, "base_slip").value == found(four(), "base_slip").value


def test_pressure_under_the_heads_by_hand():
    """M10 of 8.8 in 6082 on an ISO 7092 washer: as wide as the head's face and 1.6 times its thickness."""
    plan = four(screw={"thrust": None})
    finding = found(plan, "base_head_pressure")
    outer = plan.number("base_bearing_diameter")
    assert finding.value == pytest.approx(plan.number("base_preload") / (3.14159265 / 4 * (outer**2 - 11**2)), rel=1e-3)
    assert finding.verdict == "pass"


def test_a_screw_too_strong_for_its_washer_is_tightened_to_less():
    plan = four(base={"property_class": "12.9"}, block={"material": "EN AW-5083"})
    finding = found(plan, "base_head_pressure")
    assert finding.verdict == "fail"
    assert "N*m" in finding.explanation
    most = float(finding.explanation.rsplit("at most ", 1)[1].split()[0])
    assert most == pytest.approx(plan.number("base_torque") * finding.limit / finding.value, rel=1e-2)


def test_pressure_is_not_assessed_where_the_material_tells_none():
    finding = found(four(block={"material": "EN AW-6061-T6"}), "base_head_pressure")
    assert finding.verdict == "not_assessed"
    assert finding.missing == ("material.EN AW-6061-T6.bearing_pressure",)


def test_from_below_the_heads_press_on_the_base_plate():
    finding = found(four(base={"screw_from": "below"}), "base_head_pressure")
    assert "base_bearing_pressure" in finding.inputs
    assert finding.limit == 490


def test_stripping_names_both_threads_and_the_model():
    finding = found(four(), "base_strip")
    assert finding.verdict == "pass"
    assert "thread in the base" in finding.explanation
    assert "thread of the screw" in finding.explanation
    assert "H28" in finding.source


def test_a_thin_plate_strips():
    assert found(four(base={"thickness": 3}), "base_strip").verdict == "fail"


def test_a_sized_block_holds_its_threads_and_screws():
    for grade in ("8.8", "10.9", "12.9"):
        plan = four(base={"property_class": grade})
        assert found(plan, "base_strip").verdict == "pass"
        assert found(plan, "base_screw_load").verdict == "pass"


@pytest.mark.parametrize("gravity", ["-x", "+x"])
def test_an_upright_axis_warns_of_what_falls(gravity):
    told = found(four(job={"gravity": gravity}, screw={"moved_mass": 38}), "falling_load")
    assert (told.verdict, told.value) == ("warn", None)
    assert "38 kg falls when the coupling is opened" in told.explanation


@pytest.mark.parametrize("gravity", ["-z", "+z", "-y", "+y"])
def test_a_level_axis_has_nothing_to_fall(gravity):
    assert "falling_load" not in {f.id for f in base_joint(four(job={"gravity": gravity}))}


@pytest.mark.parametrize(("brake", "told"), [(True, "does not hold it"), (False, "no brake"), (None, "no brake")])
def test_a_brake_on_the_motor_does_not_hold_what_hangs_on_the_screw(brake, told):
    motor = {} if brake is None else {"brake": brake}
    assert told in found(four(job={"gravity": "-x"}, motor=motor), "falling_load").explanation


def test_a_mass_that_is_not_given_falls_all_the_same():
    assert "a mass that is not given falls" in found(four(job={"gravity": "-x"}), "falling_load").explanation
