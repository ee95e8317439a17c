"""The cheapest way that touches nothing is taken, and is an obstacle from then on."""

import pytest

from blockgen.outputs.drawing.box import Box
from blockgen.outputs.drawing.field import THIN, Field
from blockgen.outputs.drawing.placement import Candidate, NoRoomError, inside, place
from blockgen.outputs.drawing.strokes import Item

AREA = Box(0, 0, 100, 100)


def way(name, cost, box, lines=(), extensions=()):
    return Candidate(cost, (box,), tuple(lines), lambda: (Item(name, "label", ()),), tuple(extensions))


def placed(field, *ways):
    return place("it", ways, field, AREA)[0].id


NEAR, FAR = Box(10, 10, 20, 14), Box(60, 60, 70, 64)


def test_the_cheapest_is_taken_whatever_the_order():
    assert placed(Field(), way("far", 5, FAR), way("near", 1, NEAR)) == "near"


def test_what_was_placed_is_in_the_way_of_the_next():
    field = Field()
    placed(field, way("one", 1, NEAR))
    assert placed(field, way("near", 1, NEAR), way("far", 5, FAR)) == "far"


def test_a_crossing_can_make_the_nearer_one_dearer():
    field = Field()
    field.add_line(((0, 30), (100, 30)), THIN)
    across = way("near", 1, NEAR, [((15, 15), (15, 40))])
    assert placed(field, across, way("far", 5, FAR)) == "far"


def test_lines_and_extension_lines_stay_in_the_area_too():
    out = ((15, 14), (15, 101))
    assert placed(Field(), way("near", 1, NEAR, [out]), way("far", 5, FAR)) == "far"
    assert placed(Field(), way("near", 1, NEAR, (), [out]), way("far", 5, FAR)) == "far"


def test_no_room_names_what_found_none():
    with pytest.raises(NoRoomError, match="it"):
        placed(Field(), way("out", 1, Box(95, 0, 101, 4)))


def test_a_box_on_the_edge_is_inside():
    assert inside(AREA, AREA)
    assert not inside(AREA.grown(0.01), AREA)
