import pytest

from blockgen.making.cut import Cut
from blockgen.making.tools import cuts, tools
from tests.making.ways import WAYS
from tests.sizing.strategies import sized


@pytest.mark.parametrize("way", WAYS)
def test_every_feature_is_cut(way):
    plan = sized(**WAYS[way])
    cut = {made.group for made in cuts(plan)}
    assert {f.group for f in plan.features} <= cut


@pytest.mark.parametrize("way", WAYS)
def test_every_cut_has_its_tool_among_those_laid_ready(way):
    made = cuts(sized(**WAYS[way]))
    laid = tools(made)
    assert {cut.tool for cut in made} == {tool.name for tool in laid}
    assert len({tool.name for tool in laid}) == len(laid)


def test_a_tool_is_laid_once_with_its_greatest_reach():
    short = Cut("top", 0, "a_holes", "x", "drill diam 5", reach=10.0, ratio=2.0)
    deep = Cut("base", 0, "b_holes", "x", "drill diam 5", reach=40.0, ratio=8.0)
    (tool,) = tools((short, deep, short))
    assert (tool.reach, tool.ratio, tool.used_for) == (40.0, 8.0, ("a holes", "b holes"))


def test_tools_are_in_order_of_size():
    made = tuple(Cut("top", 0, "h", "x", f"drill diam {d}") for d in ("13.5", "9", "10"))
    assert [tool.name for tool in tools(made)] == ["drill diam 9", "drill diam 10", "drill diam 13.5"]
