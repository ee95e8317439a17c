"""Arrangement of views and size of the projection sign against a textbook.

"Print Reading for Industry" (2016), Goodheart-Willcox, page 85,
g-wonlinetextbooks.com/print-reading-for-industry-2016/101: in first-angle projection the top view stands below the
front view and the view from the right to its left; the smaller end of the cone of the sign is about as large as the
main lettering. Reached as an excerpt of the publisher's open preview.
"""

import pytest

from blockgen.outputs.drawing.box import Box
from blockgen.outputs.drawing.layout import layout
from blockgen.outputs.drawing.strokes import Arc
from blockgen.outputs.drawing.symbols import LETTER, projection_symbol
from tests.sizing.strategies import sized


def corners(projection):
    body = sized().body
    found = layout(body, Box(20.0, 10.0, 1179.0, 831.0), 1.0, projection, 60.0)
    return {name: view.corner for name, view in found.views.items()}


@pytest.mark.parametrize(("projection", "side"), [("first", 1), ("third", -1)])
def test_where_the_views_stand(projection, side):
    """The front view has the bearing on its left, so that the view from the left is that of the bearing end."""
    found = corners(projection)
    assert (found["top"][1] < found["front"][1]) == (side == 1)
    assert (found["bearing_end"][0] > found["front"][0]) == (side == 1)
    assert (found["motor_end"][0] < found["front"][0]) == (side == 1)


def test_the_smaller_end_of_the_cone_is_about_as_large_as_the_letters():
    radius = min(stroke.radius for stroke in projection_symbol("first") if isinstance(stroke, Arc))
    assert 2 * radius == pytest.approx(LETTER, rel=0.2)
