"""The sign of the projection method against teaching material.

"Symbol of Orthographic Projection", mech.poriyaan.in/topic/symbol-of-orthographic-projection-30308: the view from the
left of a truncated cone stands to the right of its front view in first-angle projection and to the left in
third-angle projection. Reached as an excerpt of a stored copy; its pictures were not seen. Both circles of the end
view are visible, so that the narrow end is the one looked at, the left one.
"""

import pytest

from blockgen.outputs.drawing.strokes import Arc, Line
from blockgen.outputs.drawing.symbols import projection_symbol


def parts(method):
    """Return x of the circles, of the narrow and of the wide end of the cone."""
    strokes = projection_symbol(method)
    circles = {arc.centre[0] for arc in strokes if isinstance(arc, Arc)}
    ends = [s for s in strokes if isinstance(s, Line) and s.pen == "outline" and s.start[0] == s.end[0]]
    narrow, wide = sorted(ends, key=lambda end: abs(end.end[1] - end.start[1]))
    return circles.pop(), narrow.start[0], wide.start[0]


@pytest.mark.parametrize(("method", "side"), [("first", 1), ("third", -1)])
def test_where_the_view_from_the_narrow_end_stands(method, side):
    circles, narrow, wide = parts(method)
    cone = (narrow + wide) / 2
    looked_from = -1 if narrow < wide else 1  # the side on which the narrow end is
    assert (circles - cone) * looked_from * side < 0


def test_the_circles_are_the_ends_of_the_cone():
    strokes = projection_symbol("first")
    radii = sorted(arc.radius for arc in strokes if isinstance(arc, Arc))
    ends = [s for s in strokes if isinstance(s, Line) and s.pen == "outline" and s.start[0] == s.end[0]]
    assert radii == sorted(abs(end.end[1] - end.start[1]) / 2 for end in ends)
