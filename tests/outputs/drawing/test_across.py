"""Dimension across a bore: beside the view on the side of its mouth, running on to its label."""

import pytest

from blockgen.outputs.drawing.across import Bore, candidates
from blockgen.outputs.drawing.box import Box
from blockgen.outputs.drawing.label import Label, text_row
from blockgen.outputs.drawing.strokes import Fill, Line

VIEW = Box(100.0, 100.0, 200.0, 180.0)
LABEL = Label((text_row("bore.diameter", "⌀40 H7"), text_row("bore.depth", "↧ 4")))


@pytest.mark.parametrize("side", [-1, 1])
def test_the_line_stands_beside_the_mouth_and_measures_the_bore(side):
    x = 100.0 if side < 0 else 200.0
    bore = Bore((x, 120.0), (x, 160.0), side)
    best = min(candidates(LABEL, bore, VIEW), key=lambda way: way.cost)
    item, depth = best.build()
    assert (item.id, depth.id) == ("bore.diameter", "bore.depth")
    assert item.measure.first == bore.low
    assert item.measure.second == bore.high
    heads = sorted(s.outline[0] for s in item.strokes if isinstance(s, Fill))
    assert heads == [pytest.approx((x + side * 10.0, 120.0)), pytest.approx((x + side * 10.0, 160.0))]
    assert not best.boxes[0].touches(VIEW)


def test_the_line_runs_on_to_the_height_of_the_first_row():
    bore = Bore((100.0, 120.0), (100.0, 160.0), -1)
    for way in list(candidates(LABEL, bore, VIEW))[:50]:
        lines = [s for s in way.build()[0].strokes if isinstance(s, Line)]
        upright, shelf = lines[2], lines[3]
        assert shelf.end in ((upright.start), (upright.end)) or shelf.end[0] == upright.start[0]
        assert shelf.start[1] == pytest.approx(way.boxes[0].bottom + LABEL.lead_height)


def test_extension_lines_run_from_both_edges_past_the_line():
    bore = Bore((200.0, 120.0), (200.0, 160.0), 1)
    way = next(iter(candidates(LABEL, bore, VIEW)))
    assert [line[0] for line in way.extensions] == [pytest.approx((200.8, 120.0)), pytest.approx((200.8, 160.0))]
    assert all(line[1][0] > 210.0 for line in way.extensions)
