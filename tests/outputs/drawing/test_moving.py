"""Strokes moved and turned keep their shape."""

from blockgen.outputs.drawing.lettering import text_box
from blockgen.outputs.drawing.moving import moved, turned, turned_back, turned_point
from blockgen.outputs.drawing.strokes import Arc, Fill, Hatch, Line, Text
from tests.outputs.drawing.touching import chain

LINE, ARC = Line((1, 2), (5, 2), "outline"), Arc((3, 4), 2, 10, 80, "hidden")
ALL = (LINE, ARC, Text("H7", (1, 1), 3.5), Fill(((0, 0), (1, 0), (0, 1))), Hatch(((LINE, ARC),), 3.0, 45.0))


def test_a_vector_moves_every_point():
    line, arc, text, fill, hatch = moved(ALL, (10, 20))
    assert line == Line((11, 22), (15, 22), "outline")
    assert arc == Arc((13, 24), 2, 10, 80, "hidden")
    assert text.at == (11, 21)
    assert fill.outline[1] == (11, 20)
    assert hatch.loops == ((line, arc),)


def test_a_quarter_turn_takes_each_point_where_it_belongs():
    line, arc, text, fill, hatch = turned(ALL)
    assert line == Line((-2, 1), (-2, 5), "outline")
    assert (arc.start, arc.end) == (100, 170)
    before, after = chain(ARC)[0], chain(arc)[0]
    assert abs(turned_point(before)[0] - after[0]) + abs(turned_point(before)[1] - after[1]) < 1e-9
    assert text.angle == 90
    assert text_box(text).right <= 0
    assert fill.outline[1] == (0, 1)
    assert hatch.angle == 135.0


def test_whole_circles_stay_whole_and_a_turn_back_undoes_a_turn():
    assert turned((Arc((1, 0), 2),)) == (Arc((0, 1), 2),)
    assert turned_back(turned_point((3, 4))) == (3, 4)
