"""Bores: opened small, finished to the fit, the smaller one through the larger where opening, step and bar allow."""

from dataclasses import replace

import pytest

from blockgen.making.boring import bore_cuts, narrowest, way
from tests.making.ways import WAYS
from tests.sizing.strategies import sized


def with_value(plan, **values):
    records = {**plan.records, **{k: replace(plan.records[k], value=v) for k, v in values.items()}}
    return replace(plan, records=records)


def test_smaller_bore_goes_through_the_larger():
    found = way(sized())
    assert (found.large, found.small, found.through) == ("motor_bore", "bearing_bore", True)


@pytest.mark.parametrize(
    ("values", "reason"),
    [
        ({"motor_through_bore": 49.0}, "opening 49 is smaller"),
        ({"bearing_through_bore": 40.0}, "its step to 40"),
        ({"length": 300.0}, "chatters"),
    ],
)
def test_what_keeps_the_bar_out(values, reason):
    found = way(with_value(sized(), **values))
    assert not found.through
    assert reason in found.reason
    assert found.record.value == "from its own end"


def test_larger_bore_may_be_the_bearings():
    plan = with_value(sized(), bearing_bore=80.0, bearing_through_bore=76.0, motor_through_bore=70.0)
    assert (way(plan).large, way(plan).small) == ("bearing_bore", "motor_bore")


def test_length_over_diameter_of_the_bar():
    plan = sized()
    fine = next(c for c in bore_cuts(plan) if c.what.startswith("finish-bore bearing"))
    assert fine.ratio == pytest.approx(plan.number("length") / (0.75 * 50))
    assert "steel bar" in fine.remark


def test_a_slender_bar_is_damped():
    fine = next(c for c in bore_cuts(with_value(sized(), length=200.0)) if c.what.startswith("finish-bore bearing"))
    assert "damped bar, over 4 D" in fine.remark


def test_a_step_that_faces_away_asks_for_the_other_end():
    made = list(bore_cuts(sized(**WAYS["step"])))
    far = [cut for cut in made if cut.setup == "far_end"]
    assert {cut.group for cut in far} == {"bearing_bore"}
    assert "dial in on the motor bore" in next(c for c in far if c.what.startswith("finish")).remark


@pytest.mark.parametrize("way_name", WAYS)
def test_each_bore_is_opened_small_and_finished_after(way_name):
    plan = sized(**WAYS[way_name])
    made = list(bore_cuts(plan))
    for name in ("bearing_bore", "motor_bore"):
        bore = plan.feature(name)
        opened = next(r for c in made for r in c.records if r.key == f"making.{name}_opened")
        assert opened.value < narrowest(bore) <= bore.diameter
        finish = next(c for c in made if c.group == name and c.what.startswith("finish"))
        assert f"{bore.diameter:g} {bore.fit}" in finish.what
        assert next(c for c in made if c.group == name).setup == "rough"
