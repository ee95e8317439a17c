"""Tapped holes of the seats: engagement, full thread, run-out and point."""

import math

import pytest

from blockgen.checks import check
from blockgen.sizing.seats import point_length
from blockgen.standards.screws import cap_screw
from blockgen.standards.threads import thread
from tests.sizing.strategies import sized


def test_the_point_of_a_twist_drill():
    assert point_length(10.0, 118.0) == pytest.approx(5 / math.tan(math.radians(59)))
    assert point_length(10.0, 90.0) == pytest.approx(5.0)


@pytest.mark.parametrize(("material", "least"), [("S355J2", 1.0), ("EN-GJL-250", 1.25), ("EN AW-6082-T6", 1.5)])
def test_engagement_has_the_floor_of_its_material(material, least):
    plan = sized(block={"material": material})
    for end in ("bearing", "motor"):
        assert plan.number(f"{end}_engagement_least") >= least * 6


def test_a_weaker_material_never_takes_less_engagement():
    found = [
        sized(block={"material": m}).number("motor_engagement_least") for m in ("S355J2", "EN-GJL-250", "EN AW-6082-T6")
    ]
    assert found == sorted(found)


@pytest.mark.parametrize("thickness", [6, 9, 10, 12.7, 15])
def test_screw_length_thread_and_drill_follow_the_flange(thickness):
    plan = sized(motor={"flange_thickness": thickness})
    length, engaged = plan.number("motor_screw_length"), plan.number("motor_engagement")
    assert length in cap_screw("M6").lengths
    assert engaged == pytest.approx(length - thickness)
    assert engaged >= plan.number("motor_engagement_least")
    assert plan.number("motor_thread_depth") >= engaged + 2 * 1.0
    assert plan.number("motor_drill_depth") > plan.number("motor_thread_depth") + 3 * 1.0


def test_the_screw_is_the_shortest_that_engages():
    plan = sized()
    shorter = [n for n in cap_screw("M6").lengths if n < plan.number("motor_screw_length")]
    assert shorter[-1] - 10 < plan.number("motor_engagement_least")


def test_without_a_flange_thickness_no_screw_length_is_made_up():
    plan = sized(motor={"flange_thickness": None})
    assert plan.records["motor_screw_length"].value is None
    assert next(f for f in plan.fasteners if f.where == "motor_flange").length is None


def test_a_tapped_flange_has_no_thread_in_the_block():
    plan = sized(motor={"bolt_hole": None, "bolt_thread": "M6", "fastening": "tapped"})
    assert plan.records["motor_thread_depth"].value is None
    assert not [f for f in plan.features if f.id.startswith("motor_thread")]


def test_the_hole_in_the_model_is_the_tap_drill():
    plan = sized()
    hole = plan.feature("motor_thread_1")
    assert hole.diameter == thread("M6").tap_drill == 5.0
    assert hole.thread == "M6-6H"
    assert max(s.start_radius for s in hole.profile) == pytest.approx(3.0)  # countersunk to the thread


def test_a_screw_that_breaks_out_engages_only_the_wall():
    plan = sized(block={"motor_wall": 5}, motor={"bolt_circle": None, "bolt_spacing_y": 30, "bolt_spacing_z": 73})
    assert plan.feature("motor_thread_1").through
    assert next(f for f in check(plan) if f.id == "motor_engagement").value <= 5.0
