"""What summary and torque card say of each motor of a family."""

import pytest

from blockgen.checks import check
from blockgen.outputs.family_rows import family_document, family_rows, further_fasteners, holes_of
from blockgen.outputs.summary_json import summary
from blockgen.outputs.torque_card import torque_card
from blockgen.sizing.size import plan_from
from tests.sizing.families import family_records
from tests.sizing.strategies import sized

TWO = [{}, {"bolt_circle": 112, "flange_size": 98, "bolt_hole": 5.5, "shaft_length": 42, "name": "next"}]


@pytest.fixture(scope="module")
def plan():
    return plan_from(family_records(TWO))


def test_each_motor_has_a_row_with_its_own_layout(plan):
    first, second = family_rows(plan, check(plan))
    assert (first.entry, second.entry) == ("motor", "family.0")
    assert second.motor == "motor 2 (next)"
    for row, shaft in ((first, 40), (second, 42)):
        assert row.shaft_gap == pytest.approx(plan.number("length") - shaft - plan.number("screw.journal_reach"))
        assert row.length_min <= plan.number("length") <= row.length_max
    assert second.coupling_position == plan.number("motor_2_coupling_position")
    assert (first.holes, second.holes) == (("motor_threads",), ("motor_2_threads",))
    assert second.screws.startswith("4 x M5")


def test_the_worst_check_of_a_motor_is_one_of_its_own():
    plan = plan_from(family_records([{}, {"peak_torque": 90}]))
    first, second = family_rows(plan, check(plan))
    assert (second.worst, second.verdict) == ("motor_2.coupling_rating", "fail")
    assert not first.worst.startswith("motor_2")


def test_a_turned_motor_is_told():
    plan = plan_from(family_records([{}, {"bolt_circle": 96, "flange_size": 78, "bolt_hole": 5.5}]))
    first, second = family_rows(plan, check(plan))
    assert first.turned == ""
    assert second.turned.startswith("mounted turned by 45 deg")


def test_holes_that_two_motors_share_belong_to_both():
    plan = plan_from(family_records([{}, {}]))
    assert holes_of(plan, "family.0") == holes_of(plan, "motor") == ("motor_threads",)


def test_the_screws_of_every_motor_are_listed_and_on_the_card(plan):
    (screws,) = further_fasteners(plan)
    assert (screws.where, screws.size, screws.count) == ("motor_2_flange", "M5", 4)
    card = {line.where: line for line in torque_card(plan)}
    assert card["motor_2_flange"].order == ("motor_2_thread_1", "motor_2_thread_3", "motor_2_thread_2",
                                            "motor_2_thread_4")  # fmt: skip
    assert card["motor_2_flange"].preloads == (
        plan.number("motor_2_preload_least"), plan.number("motor_2_preload"),
    )  # fmt: skip


def test_screws_into_a_tapped_further_motor_have_its_caution():
    tapped = {"bolt_hole": None, "bolt_thread": "M6", "fastening": "tapped", "bolt_circle": 116, "flange_size": 100}
    card = {line.where: line for line in torque_card(plan_from(family_records([{}, tapped])))}
    assert "not above what the motor's maker allows" in card["motor_2_flange"].tool
    assert "maker" not in card["motor_flange"].tool


def test_the_summary_has_the_family_only_where_there_is_one(plan):
    document = summary(plan, check(plan), "status", "0" * 64)
    assert [row["entry"] for row in document["family"]] == ["motor", "family.0"]
    assert [row["where"] for row in document["fasteners"]].count("motor_2_flange") == 1
    assert {"motor_2_grip", "motor_2_coupling_position"} <= set(document["dimensions"])
    single = sized()
    assert "family" not in summary(single, (), "status", "0" * 64)
    assert family_document(single, ()) == []
