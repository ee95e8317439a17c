"""Tags and table of the holes."""

import pytest

from blockgen.outputs.drawing.figures import Figures
from blockgen.outputs.drawing.hole_table import COLUMNS, hole_rows, hole_tags, plate_rows, tag_candidates
from blockgen.outputs.drawing.lettering import text_box
from blockgen.outputs.drawing.views import View
from tests.sizing.strategies import sized


@pytest.fixture(scope="module")
def plan():
    return sized(base={"dowels": 6})


def test_each_group_has_a_letter_of_its_own_and_none_of_a_datum(plan):
    tags = hole_tags(plan.features)
    letters = {}
    for feature in plan.features:
        if feature.id in tags:
            letters.setdefault(tags[feature.id][0], set()).add(feature.group)
    assert all(len(groups) == 1 for groups in letters.values())
    assert len(letters) == 4
    assert not set(letters) & set("ABCS")
    assert len(set(tags.values())) == len(tags)


def test_rows_hold_the_places_and_a_dash_along_the_hole(plan):
    rows = {row[0]: row for row in hole_rows(plan.features, Figures())}
    tags = hole_tags(plan.features)
    for feature in plan.features:
        if feature.id in tags:
            row = rows[tags[feature.id]]
            assert len(row) == len(COLUMNS)
            for axis in range(3):
                along = abs(feature.axis[axis]) > 0.5
                assert (row[1 + axis] == "–") == along
                assert along or float(row[1 + axis]) == pytest.approx(feature.position[axis], abs=5e-4)


def test_holes_of_a_flange_name_their_circle_and_those_of_the_base_do_not(plan):
    words = [row[-1] for row in hole_rows(plan.features, Figures())]
    assert "M6-6H, bearing seat (on ⌀72)" in words
    assert all("(on" not in line for line in words if line.endswith("top"))


def test_rows_of_the_plate_tell_place_and_call_out(plan):
    rows = plate_rows(plan.base_features, plan.features, Figures(comma=True))
    assert len(rows) == len(plan.base_features)
    assert all(row[3] for row in rows)
    assert not any("." in row[1] for row in rows)


def test_tags_stand_beside_their_hole_the_nearest_first(plan):
    hole = next(f for f in plan.features if f.kind == "counterbored_hole")
    view = View("top", (100.0, 100.0), (0.0, -plan.body.width / 2), (plan.body.length, plan.body.width), 1.0)
    x, y = view.point(*hole.position)
    radius = hole.counterbore_diameter / 2
    found = list(tag_candidates(view, hole, "J1"))
    best = min(found, key=lambda way: way.cost)
    (item,) = best.build()
    box = text_box(item.strokes[0])
    assert item.strokes[0].words == "J1"
    assert box.left > x
    assert box.bottom > y
    for way in found:
        side = way.boxes[0]
        away = (max(side.left - x, x - side.right, 0.0), max(side.bottom - y, y - side.top, 0.0))
        assert (away[0] ** 2 + away[1] ** 2) ** 0.5 > radius
