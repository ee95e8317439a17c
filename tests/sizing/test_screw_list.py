"""The list of screws: groups, counts, lengths, torques."""

import pytest

from tests.sizing.strategies import sized


def rows(plan):
    return {f.where: f for f in plan.fasteners}


def test_groups_and_counts():
    found = rows(sized(motor={"bolt_count": 4}, base={"dowels": 6}))
    assert {where: row.count for where, row in found.items()} == {
        "base": 4, "bearing_flange": 4, "motor_flange": 4, "dowel": 2
    }  # fmt: skip


def test_torque_of_m10_8_8():
    base = rows(sized())["base"]  # about 50 N*m at 90 % of yield, friction 0.12
    assert base.torque == pytest.approx(50, rel=0.05)
    assert base.size == "M10"
    assert base.property_class == "8.8"


def test_screws_of_a_tapped_flange_pass_the_wall_and_engage():
    plan = sized(motor={"bolt_hole": None, "bolt_thread": "M6", "fastening": "tapped"})
    screw = rows(plan)["motor_flange"]
    assert screw.length - plan.number("motor_wall") == pytest.approx(screw.engagement)
    assert screw.engagement >= 1.0 * 6


def test_refs_are_records():
    plan = sized(base={"dowels": 6})
    for row in plan.fasteners:
        assert set(row.refs.values()) <= set(plan.records)
