"""The hole pattern of the base plate: true size, tagged, with its table, touching nothing."""

import pytest

from blockgen.outputs.drawing.base_holes import base_holes_sheet
from blockgen.outputs.drawing.figures import Figures
from blockgen.outputs.drawing.paper import paper
from blockgen.outputs.drawing.strokes import Arc, Text
from blockgen.outputs.drawing.words import words_of
from tests.outputs.drawing.touching import outside_frame, over_fixed, overlaps
from tests.sizing.strategies import sized
from tests.sizing.test_annotations import WAYS


@pytest.fixture(scope="module", params=sorted(WAYS))
def case(request):
    plan = sized(**WAYS[request.param])
    return plan, base_holes_sheet(plan, words_of(plan, "PRELIMINARY", "", 1).titles, Figures())


def test_nothing_touches_anything_and_all_is_in_the_frame(case):
    sheet = case[1]
    area = paper(sheet.size).area
    assert overlaps(sheet) == []
    assert over_fixed(sheet) == []
    assert outside_frame(sheet, (area.left, area.bottom, area.right, area.top)) == []


def test_each_hole_stands_at_its_place_from_the_origin_in_true_size(case):
    plan, sheet = case
    assert sheet.scale == 1.0
    circles = {
        (round(s.centre[0] - sheet.origin[0], 6), round(s.centre[1] - sheet.origin[1], 6), round(2 * s.radius, 6))
        for item in sheet.items if item.id == "view.holes"
        for s in item.strokes if isinstance(s, Arc) and s.pen == "outline"
    }  # fmt: skip
    assert circles == {
        (round(f.position[0], 6), round(f.position[1], 6), round(f.diameter, 6)) for f in plan.base_features
    }


def test_each_hole_has_a_tag_and_the_status_stands_there(case):
    plan, sheet = case
    assert sum(item.id.startswith("tag.") for item in sheet.items) == len(plan.base_features)
    words = [s.words for item in sheet.items for s in item.strokes if isinstance(s, Text)]
    assert "PRELIMINARY" in words
    assert "1:1" in words


def test_pages_of_holes_grow_with_the_block():
    plan = sized(block={"width": 300})
    assert base_holes_sheet(plan, words_of(plan, "x", "", 1).titles, Figures()).size != "A3"
