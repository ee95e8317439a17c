"""Base screws: thread by flange and thrust, length, counterbore, engagement."""

import pytest

from blockgen.checks import check
from blockgen.errors import InputError
from blockgen.standards.screws import cap_screw
from tests.sizing.strategies import sized


def finding(plan, name):
    return next(f for f in check(plan) if f.id == name)


def test_a_given_screw_is_kept():
    plan = sized(base={"screw": "M8"})
    assert plan.text("base_screw").startswith("M8")
    assert plan.records["base_screw"].origin == "given"


def test_more_thrust_never_gives_a_smaller_screw():
    sizes = [
        float(sized(base={"screw": None}, screw={"thrust": n}).text("base_screw").removeprefix("M"))
        for n in (100, 2000, 4000, 6000)
    ]
    assert sizes == sorted(sizes)
    assert sizes[-1] > sizes[0]


def test_the_chosen_screw_holds_the_thrust():
    plan = sized(base={"screw": None}, screw={"thrust": 5000})
    assert finding(plan, "base_slip").verdict == "pass"


def test_a_thrust_that_no_screw_holds_is_not_passed_over():
    plan = sized(base={"screw": None}, screw={"thrust": 200000})
    joint = {"base_slip", "base_opening", "base_head_pressure", "bearing_pull", "bearing_strip"}
    failed = {f.id for f in check(plan) if f.verdict == "fail"}
    assert "base_slip" in failed
    assert failed <= joint


def test_without_thrust_nothing_is_assumed():
    plan = sized(base={"screw": None}, screw={"thrust": None})
    assert "screw.thrust" not in plan.records
    assert "no thrust" in plan.records["base_screw"].rule


@pytest.mark.parametrize("shaft", [50, 65, 90, 120])
def test_length_counterbore_and_engagement_add_up(shaft):
    plan = sized(base={"shaft_height": shaft})
    screw = cap_screw("M10")
    assert plan.number("base_screw_length") in screw.lengths
    washer = plan.number("base_washer_thickness")
    clamped = plan.number("height") - plan.number("base_counterbore_depth") + washer
    assert clamped + plan.number("base_engagement") == pytest.approx(plan.number("base_screw_length"))
    assert plan.number("base_counterbore_depth") >= screw.head_height + washer
    assert plan.number("base_engagement") >= 10.0  # 1 d in steel


def test_the_counterbore_takes_the_head():
    plan = sized()
    assert plan.number("base_counterbore_diameter") > cap_screw("M10").head_diameter
    assert plan.number("base_screw_hole") == 11.0


def test_the_screw_does_not_bottom_in_the_plate():
    plan = sized()
    depth = plan.number("plate_thread_depth")
    assert plan.number("base_engagement") < depth < plan.number("plate_drill_depth")
    assert {f.thread for f in plan.base_features} == {"M10-6H"}


def test_from_below_the_block_is_tapped_and_the_plate_has_clearance_holes():
    plan = sized(base={"screw_from": "below"})
    assert {f.kind for f in plan.features if f.group == "base_threads"} == {"tapped_hole"}
    assert {f.kind for f in plan.base_features} == {"clearance_hole"}
    assert plan.number("base_screw_length") - 25 == plan.number("base_engagement")
    assert plan.number("base_engagement") < plan.number("base_thread_depth") < plan.number("base_drill_depth")


def test_a_thin_plate_does_not_give_more_engagement_than_it_is_thick():
    plan = sized(base={"thickness": 6})
    assert plan.number("base_engagement") <= 6 or finding(plan, "base_engagement").verdict == "fail"


def test_a_long_counterbore_is_not_passed_over_in_silence():
    plan = sized(base={"shaft_height": 250})
    feature = plan.feature("base_screw_1")
    if feature.counterbore_depth > 6 * feature.counterbore_diameter:
        assert any("counterbore" in f.title.lower() and f.verdict != "pass" for f in check(plan))


@pytest.mark.parametrize("name", ["M64", "M10x1"])
def test_a_screw_that_is_in_no_table_is_an_input_error(name):
    with pytest.raises(InputError, match="M"):
        sized(base={"screw": name})


@pytest.mark.parametrize("grade", ["8.8", "10.9", "12.9"])
def test_a_higher_class_engages_at_least_as_deep(grade):
    assert sized(base={"property_class": grade}).number("base_engagement_least") >= sized().number(
        "base_engagement_least"
    )
