import pytest

from blockgen.making.cut import groups
from blockgen.making.drilling import drill, drill_remark, drilled_from_base, mouth, spot
from tests.sizing.strategies import sized

PLAN = sized()
GROUP = next(group for group in groups(PLAN) if group.name == "bearing_threads")


@pytest.mark.parametrize(("over", "word"), [(5.0, ""), (5.1, "peck, or"), (10.0, "peck, or"), (10.1, "guide hole")])
def test_deep_holes_say_how(over, word):
    assert word in drill_remark(over)
    assert (drill_remark(over) == "5.0 D") == (over == 5.0)


def test_reach_over_diameter_is_recorded():
    cut = drill(PLAN, GROUP, "ends", 5.0, 20.0, "hole")
    assert (cut.reach, cut.ratio, cut.records[0].value) == (20.0, 4.0, 4.0)
    assert cut.records[0].inputs["bearing_drill_depth"].ref == "bearing_drill_depth"


def test_spot_and_chamfer_in_one_where_there_is_a_chamfer():
    assert mouth(GROUP.first) == 6.0
    assert spot(GROUP, "ends", 5.0, 6.0).what == "spot and chamfer 4 x to diam 6"
    assert spot(GROUP, "ends", 5.0).what == "spot 4 x diam 5"


@pytest.mark.parametrize(("length", "below"), [(110.0, False), (110.1, True)])
def test_deep_through_holes_are_drilled_from_the_base(length, below):
    assert drilled_from_base(length, 11.0) == below
