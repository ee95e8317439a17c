from dataclasses import replace

import pytest

from blockgen.making.setups import setups
from blockgen.making.stock import stock
from blockgen.making.time_class import class_of, time_class
from blockgen.making.tools import cuts
from tests.sizing.strategies import sized


def of(plan):
    material = stock(plan)
    return time_class(plan, material, setups(plan, material, cuts(plan)))


@pytest.mark.parametrize(
    ("minutes", "name"),
    [(119.9, "short"), (120, "usual"), (239.9, "usual"), (240, "long"), (479.9, "long"), (480, "very long")],
)
def test_limits_belong_to_the_higher_class(minutes, name):
    assert class_of(minutes) == name


def test_the_sum_is_that_of_its_parts_and_is_recorded():
    found = of(sized())
    assert found.minutes == pytest.approx(sum(part.minutes for part in found.parts))
    assert [record.key for record in found.records] == ["making.machining_time", "making.time_class"]
    assert (found.records[0].value, found.records[1].value) == (round(found.minutes), found.name)


def test_steel_takes_longer_than_aluminium():
    assert of(sized(block={"material": "S355J2"})).minutes > of(sized()).minutes


def test_more_holes_take_longer():
    assert of(sized(base={"dowels": 6})).minutes > of(sized()).minutes


def test_a_deep_window_is_a_part_of_its_own():
    plan = sized()
    cutter = replace(plan.records["block.cutter_diameter"], value=10.0)
    deep = of(replace(plan, records={**plan.records, cutter.key: cutter}))
    assert "deep window" in {part.what for part in deep.parts}
    assert "deep window" not in {part.what for part in of(plan).parts}
