"""Views: points of the block and curves of the projection on the sheet."""

import pytest

from blockgen.geometry.curves import ArcCurve, Chain, Segment
from blockgen.outputs.drawing.strokes import Arc, Line
from blockgen.outputs.drawing.views import AXES, View, extent

TOP = View("top", (100.0, 200.0), (0.0, -40.0), (120.0, 80.0), 0.5)


def test_the_corner_of_the_outline_stands_at_its_place():
    assert TOP.point(0.0, -40.0, 7.0) == (100.0, 200.0)
    assert TOP.point(120.0, 40.0, 7.0) == (160.0, 240.0)
    assert (TOP.box.right, TOP.box.top) == (160.0, 240.0)


@pytest.mark.parametrize("name", AXES)
def test_the_outline_of_each_view_starts_at_its_least_coordinates(name):
    low, size = extent(name, 100.0, 60.0, 80.0)
    view = View(name, (0.0, 0.0), low, size, 1.0)
    corners = [view.flat(x, y, z) for x in (0.0, 100.0) for y in (-30.0, 30.0) for z in (0.0, 80.0)]
    assert (min(u for u, _ in corners), min(v for _, v in corners)) == low
    assert (max(u for u, _ in corners) - low[0], max(v for _, v in corners) - low[1]) == size


def test_curves_keep_their_kind_and_come_to_the_scale():
    curves = (Segment((0.0, 0.0), (10.0, 0.0)), ArcCurve((10.0, 10.0), 4.0, 0.0, 90.0))
    line, arc = TOP.strokes(curves, "outline")
    assert line == Line((100.0, 220.0), (105.0, 220.0), "outline")
    assert arc == Arc((105.0, 225.0), 2.0, 0.0, 90.0, "outline")


def test_a_hidden_chain_is_dashed_and_a_visible_one_is_whole():
    chain = Chain(tuple((0.5 * i, 0.0) for i in range(61)))
    covered = {pen: sum(s.end[0] - s.start[0] for s in TOP.strokes((chain,), pen)) for pen in ("outline", "hidden")}
    assert covered["outline"] == pytest.approx(15.0)
    assert covered["hidden"] == pytest.approx(12.0)
