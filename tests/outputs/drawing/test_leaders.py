"""Leaders: where the tip lies, from where it may come, what they are in an exchange file."""

import math

import pytest

from blockgen.outputs.drawing.box import Box
from blockgen.outputs.drawing.label import Label, text_row
from blockgen.outputs.drawing.leaders import Target, candidates
from blockgen.outputs.drawing.strokes import Fill, Line

VIEW = Box(100.0, 100.0, 200.0, 180.0)
LABEL = Label((text_row("hole.size", "4 × ⌀9 through"), text_row("hole.place", "more")))


def ways(*targets, label=LABEL):
    return list(candidates(label, targets, VIEW))


def tip_of(way):
    item = next(i for i in way.build() if any(isinstance(s, Fill) for s in i.strokes))
    return next(s for s in item.strokes if isinstance(s, Fill)).outline[0]


def test_the_tip_lies_on_the_circle_towards_the_elbow():
    target = Target((150.0, 140.0), 6.0)
    assert target.tip((170.0, 140.0)) == pytest.approx((156.0, 140.0))
    for way in ways(target)[:60]:
        assert math.dist(tip_of(way), target.centre) == pytest.approx(6.0)


def test_a_face_is_seen_from_outside_the_material_only():
    target = Target((100.0, 140.0), normal=(-1.0, 0.0))
    assert target.sees((80.0, 145.0))
    assert not target.sees((120.0, 145.0))
    assert not target.sees((99.0, 170.0))
    assert all(way.boxes[0].right < 100.0 for way in ways(target))


def test_labels_stand_outside_the_view():
    found = ways(Target((150.0, 140.0), 6.0))
    assert found
    assert not any(way.boxes[0].touches(VIEW) for way in found)


def test_shelf_and_slant_join_and_the_shelf_starts_beside_the_label():
    for way in ways(Target((150.0, 140.0), 6.0))[:40]:
        leader = next(i for i in way.build() if i.id == "hole.size.leader")
        shelf, slant = [s for s in leader.strokes if isinstance(s, Line)]
        assert shelf.end == slant.start
        assert shelf.start[1] == shelf.end[1]
        box = way.boxes[0]
        assert box.left - 1.0 <= shelf.start[0] <= box.right + 1.0


def test_the_cheapest_way_is_near_and_costs_of_a_target_count():
    near, far = Target((195.0, 140.0), 2.0, cost=500.0), Target((105.0, 140.0), 2.0)
    best = min(ways(near, far), key=lambda way: way.cost)
    assert math.dist(tip_of(best), far.centre) == pytest.approx(2.0)


@pytest.mark.parametrize(("kind", "first"), [("diameter", "opposite"), ("radius", "centre")])
def test_a_leader_with_a_size_is_a_real_dimension(kind, first):
    target = Target((150.0, 140.0), 6.0, kind=kind)
    items = ways(target)[0].build()
    assert items[0].id == "hole.size"
    measure = items[0].measure
    assert measure.kind == kind
    assert math.dist(measure.first, measure.second) == pytest.approx(12.0 if first == "opposite" else 6.0)


def test_lines_in_the_field_stop_before_what_the_tip_touches():
    way = ways(Target((150.0, 140.0), 6.0))[0]
    end = way.lines[-1][1]
    assert 6.0 < math.dist(end, (150.0, 140.0)) <= 6.1 + 1e-9
