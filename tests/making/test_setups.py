"""Order of setups: what moves metal comes before what must stay true."""

import pytest

from blockgen.making.cut import WINDOW
from blockgen.making.setups import clampings, rows, setups
from blockgen.making.stock import stock
from blockgen.making.tools import cuts
from tests.making.ways import WAYS
from tests.sizing.strategies import sized


def of(way):
    plan = sized(**WAYS[way])
    return setups(plan, stock(plan), cuts(plan))


def ids(way):
    return [setup.id for setup in of(way)]


@pytest.mark.parametrize("way", WAYS)
def test_every_cut_is_in_one_setup(way):
    plan = sized(**WAYS[way])
    assert sorted(c.what for s in of(way) for c in s.cuts) == sorted(c.what for c in cuts(plan))


@pytest.mark.parametrize("way", WAYS)
def test_roughing_then_relaxing_then_base_then_bores(way):
    found = ids(way)
    order = [found.index(name) for name in ("saw", "rough", "relax", "base", "top", "ends", "deburr", "inspect")]
    assert order == sorted(order)


@pytest.mark.parametrize("way", WAYS)
def test_window_is_finished_before_the_bores(way):
    made = [cut for setup in of(way) for cut in setup.cuts]
    window = max(i for i, cut in enumerate(made) if cut.group == "window")
    bores = min(i for i, cut in enumerate(made) if cut.what.startswith("finish-bore"))
    assert window < bores
    assert made[window].rank == WINDOW


@pytest.mark.parametrize("way", WAYS)
def test_threads_come_after_the_bores_of_their_setup(way):
    ends = [cut.what for setup in of(way) if setup.id == "ends" for cut in setup.cuts]
    assert max(i for i, w in enumerate(ends) if "bore" in w) < min(i for i, w in enumerate(ends) if "spot" in w)


def test_setups_that_only_some_blocks_need():
    usual = ids("usual")
    assert not {"sides", "far_end", "coat", "assembly"} & set(usual)
    assert "sides" in ids("across")
    assert "far_end" in ids("step")
    assert "assembly" in ids("dowels")
    coated = ids("coated")
    assert coated.index("deburr") < coated.index("coat") < coated.index("inspect")


def test_relaxing_follows_the_material():
    words = {way: next(s.hold for s in of(way) if s.id == "relax") for way in ("usual", "heavy", "iron")}
    assert "no heat" in words["usual"]
    assert "stress-relieve" in words["heavy"]
    assert len(set(words.values())) == 3


def test_dowel_holes_are_masked_only_where_there_are_any():
    plan = sized(base={"dowels": 6}, block={"finish": "hard anodised"})
    both = setups(plan, stock(plan), cuts(plan))
    assert "dowel holes" in next(s.why for s in both if s.id == "coat")
    assert "dowel holes" not in next(s.why for s in of("coated") if s.id == "coat")


def test_clampings_count_the_machine_only():
    assert clampings(of("usual")) == 5
    assert clampings(of("across")) == clampings(of("step")) == 6


def test_rows_number_the_setups_and_leave_the_cuts_without():
    lines = list(rows(of("usual")))
    heads = [line[0] for line in lines if line[0]]
    assert [head.split()[0] for head in heads] == [str(n) for n in range(1, len(heads) + 1)]
    assert all(tool for label, _, tool, _ in lines if not label)
