"""Causes of misalignment: each names its characteristic; run-outs count half."""

import pytest

from blockgen.alignment.chain import align
from blockgen.checks import check
from tests.sizing.strategies import sized


def by_id(plan):
    return {c.id: c for c in plan.contributors}


def test_each_contributor_names_a_characteristic_or_an_input():
    plan = sized()
    known = {n.id for n in plan.annotations} | set(plan.records)
    for cause in plan.contributors:
        assert cause.characteristic in known, cause.id


def test_ids_are_unique():
    plan = sized()
    assert len(by_id(plan)) == len(plan.contributors) >= 10


def test_clearance_of_a_70_h7_pilot_in_h7():
    cause = by_id(sized())["motor_pilot_clearance"]  # ISO 286-1: H7 0/+0.030, h7 -0.030/0
    assert cause.limits == pytest.approx((0.0, 0.060))


def test_clearance_of_given_deviations():
    plan = sized(motor={"pilot_fit": None, "pilot_upper": -0.01, "pilot_lower": -0.029})
    assert by_id(plan)["motor_pilot_clearance"].limits == pytest.approx((0.01, 0.059))


def test_a_run_out_counts_half_as_eccentricity_and_whole_over_its_diameter():
    causes = by_id(sized(motor={"spigot_runout": 0.08, "face_runout": 0.09}))
    assert causes["motor_spigot_runout"].size == pytest.approx(0.04)
    assert causes["motor_face_runout"].size == pytest.approx(0.09 / 90)


def test_arms_count_from_the_seats():
    plan = sized()
    for cause in plan.contributors:
        if cause.end != "both":
            assert cause.seat_x == (0.0 if cause.end == "bearing" else plan.number("length"))


def test_only_the_shaft_s_own_run_out_turns_with_it():
    assert {c.id for c in sized().contributors if c.rotating} == {"motor_shaft_runout"}


def test_a_given_run_out_of_the_journal_turns_with_the_screw():
    plan = sized(screw={"journal_runout": 0.03})
    cause = by_id(plan)["screw_journal_runout"]
    assert (cause.size, cause.quantity, cause.end) == (pytest.approx(0.015), "offset", "bearing")
    assert cause.rotating
    assert cause.characteristic == "screw.journal_runout"
    assert {c.id for c in plan.contributors if c.rotating} == {"motor_shaft_runout", "screw_journal_runout"}


def test_no_run_out_of_the_journal_is_assumed():
    plan = sized()
    assert "screw_journal_runout" not in by_id(plan)
    assert "screw.journal_runout" not in plan.records


def test_the_journal_s_run_out_makes_what_turns_larger_and_leaves_the_rest():
    before, after = align(sized()), align(sized(screw={"journal_runout": 0.03}))
    assert after.offset_rotating.worst == pytest.approx(before.offset_rotating.worst + 0.015)
    assert after.offset_static.p95 == pytest.approx(before.offset_static.p95)
    assert after.offset.p95 > before.offset.p95


def test_assumed_run_outs_follow_the_normal_class():
    plan = sized()  # IEC 60072-1 as reprinted: spigot 40 to 100: 0.08; shaft 18 to 30: 0.040
    assert plan.number("motor.spigot_runout") == 0.08
    assert plan.number("motor.shaft_runout") == 0.04
    assert plan.records["motor.spigot_runout"].origin == "assumed"


def test_an_interference_fit_is_pointed_out():
    plan = sized(block={"bore_fit": "N7"}, motor={"pilot_fit": "k6"})
    found = [f for f in check(plan) if f.id == "motor_pilot_fit"]
    assert [f.verdict for f in found] == ["warn"]
