"""The card for the assembler."""

import pytest

from blockgen.outputs.torque_card import crosswise, torque_card
from tests.sizing.strategies import sized


def line(plan, where):
    return next(card for card in torque_card(plan) if card.where == where)


def test_three_rounds():
    plan = sized(base={"screw": "M10", "screw_count": 4})
    base = line(plan, "base")
    torque = plan.number("base_torque")
    assert base.steps == pytest.approx((0.3 * torque, 0.6 * torque, torque), abs=0.006)
    assert base.key_size == 8
    assert base.washer == "ISO 7092 M10 200 HV"
    assert base.tool == "torque wrench"
    assert base.preloads == (plan.number("base_preload_least"), plan.number("base_preload"))


def test_every_group_has_a_line_and_dowels_have_none():
    assert [card.where for card in torque_card(sized(base={"dowels": True}))] == [
        "base", "bearing_flange", "motor_flange",
    ]  # fmt: skip


@pytest.mark.parametrize("count", [4, 6])
def test_every_screw_once(count):
    plan = sized(base={"screw": "M6", "screw_count": count})
    assert sorted(line(plan, "base").order) == [f"base_screw_{i}" for i in range(1, count + 1)]


def test_four_screws_go_over_the_diagonal():
    plan = sized(base={"screw_count": 4})
    order = line(plan, "base").order
    place = {f.id: f.position for f in plan.features}
    for first, second in (order[:2], order[2:]):
        assert place[first][0] != place[second][0]
        assert place[first][1] == -place[second][1]


def test_a_circle_of_six_is_crossed():
    plan = sized(bearing={"bolt_count": 6, "bolt_angle": 0, "flange_size": 84})
    order = [int(name.rsplit("_", 1)[1]) for name in line(plan, "bearing_flange").order]
    assert all((b - a) % 6 == 3 for a, b in zip(order[::2], order[1::2], strict=True))


def test_no_hole_no_order():
    assert crosswise([]) == ()
