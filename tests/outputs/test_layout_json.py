import pytest

from blockgen import pipeline
from blockgen.outputs.layout_json import with_layout
from tests.examples import SERVO


@pytest.fixture(scope="module")
def plan():
    return pipeline.design(SERVO).plan


@pytest.fixture(scope="module")
def rows(plan):
    return {row["name"]: row for row in with_layout({}, plan)["layout"]["constraints"]}


def test_grip_and_gap_are_those_of_the_plan(plan, rows):
    room = plan.number("journal_grip") - plan.number("coupling.journal_grip_min")
    assert rows["shallowest grip of the journal"]["room"] == pytest.approx(room)
    room = plan.number("motor_grip") - plan.number("coupling.motor_grip_min")
    assert rows["shallowest grip of the motor shaft"]["room"] == pytest.approx(room)
    room = plan.number("shaft_gap") - plan.number("coupling.gap_min")
    assert rows["gap between the shaft ends"]["room"] == pytest.approx(room)


def test_tolerances_make_room_smaller_and_the_tightest_come_first(rows):
    assert all(row["room_after_tolerances"] < row["room"] for row in rows.values())
    left = [row["room_after_tolerances"] for row in rows.values()]
    assert left == sorted(left)


def test_nothing_is_short_where_the_layout_is_feasible(rows):
    assert min(row["room_after_tolerances"] for row in rows.values()) >= 0


def test_limit_value_and_side_give_the_room(rows):
    for row in rows.values():
        sign = 1 if row["side"] == "least" else -1
        assert row["room"] == pytest.approx(sign * (row["value"] - row["limit"]))
