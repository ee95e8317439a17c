"""The parts together: where they stand, that they fill no room twice, and that nothing stands there by itself."""

import itertools

import pytest

from tests.geometry.stand_ins.sums import box_of, placed
from tests.sizing.strategies import REQUIRED, sized
from tests.sizing.test_annotations import WAYS

pytestmark = pytest.mark.slow

MORE = {
    "recessed": {"motor": {"pilot_form": "recessed", "pilot_fit": "H7"}},
    "recessed bearing": {"bearing": {"pilot_form": "recessed", "pilot_fit": "H7", "pilot_length": 4}},
    "away": {"bearing": {"pilot_direction": "away"}},
    "keyed": {"motor": {"shaft_end": "keyed", "key_width": 6, "key_length": 20}},
    "flat": {"motor": {"shaft_end": "flat"}},
    "round": {"motor": {"flange_shape": "round", "flange_size": 105, "body_size": 80}},
    "eight": {"motor": {"bolt_count": 8, "bolt_angle": 22.5, "flange_size": 100, "body_size": 98}},
    "inch": {"motor": {"bolt_hole": None, "bolt_thread": "1/4-20 UNC"}},
}


def made(plan):
    from blockgen.geometry.block import build_block
    from blockgen.geometry.stand_ins.parts import parts

    return parts(plan, build_block(plan))


def shared_volume(one, other):
    from OCP.BRepAlgoAPI import BRepAlgoAPI_Common

    from blockgen.geometry.kernel import solids_of, volume_of

    common = BRepAlgoAPI_Common(one, other).Shape()
    return sum(volume_of(solid) for solid in solids_of(common))


def overlaps(found):
    """Yield pairs that share room, with the volume."""
    boxes, shapes = [box_of(part) for part in found], [placed(part) for part in found]
    for i, j in itertools.combinations(range(len(found)), 2):
        one, other = boxes[i], boxes[j]
        if all(one[k] < other[k + 3] - 1e-6 and other[k] < one[k + 3] - 1e-6 for k in range(3)):
            volume = shared_volume(shapes[i], shapes[j])
            if volume > 1e-3:
                yield found[i], found[j], volume


@pytest.mark.parametrize("way", [*WAYS, *MORE, "required"])
def test_parts_share_no_room_but_threads_and_reamed_holes(way):
    from blockgen.geometry.kernel import is_valid, solids_of

    found = made(sized(REQUIRED) if way == "required" else sized(**(WAYS | MORE)[way]))
    assert all(is_valid(part.shape) and len(solids_of(part.shape)) == 1 for part in found)
    held = {(other, part.id) for part in found for other in part.held_in}
    shared = {(one.id, other.id) for one, other, _ in overlaps(found)}
    assert shared == held


def test_a_motor_that_is_moved_into_the_block_is_seen():
    """The test above can fail."""
    from dataclasses import replace

    from blockgen.geometry.stand_ins.shapes import moved

    found = {part.id: part for part in made(sized())}
    motor = replace(found["motor"], location=moved((100.0, 0.0, 65.0)))
    assert ("block", "motor") in {(a.id, b.id) for a, b, _ in overlaps([found["block"], motor])}


def test_everything_stands_where_the_plan_has_it():
    plan = sized()
    found = {part.id: box_of(part) for part in made(plan)}
    length = plan.body.length
    assert found["block"][:3] == pytest.approx((0, -plan.body.width / 2, 0), abs=1e-4)
    assert found["motor"][0] == pytest.approx(length - 40, abs=1e-6)
    assert found["journal"][3] == pytest.approx(44, abs=1e-6)
    start = plan.number("coupling_position")
    assert (found["coupling"][0], found["coupling"][3]) == pytest.approx((start, start + 60), abs=1e-6)
    # the grips of both shafts and the gap between them
    assert found["journal"][3] - start == pytest.approx(plan.number("journal_grip"), abs=1e-6)
    assert start + 60 - found["motor"][0] == pytest.approx(plan.number("motor_grip"), abs=1e-6)
    assert found["motor"][0] - found["journal"][3] == pytest.approx(plan.number("shaft_gap"), abs=1e-6)
    assert found["bearing_unit"][3] == pytest.approx(plan.number("bearing.nut_reach"), abs=1e-6)
    for name in ("motor", "bearing_unit", "journal", "coupling"):
        box = found[name]
        assert (box[1] + box[4]) / 2 == pytest.approx(0, abs=1e-6), name
        assert (box[2] + box[5]) / 2 == pytest.approx(65, abs=1e-6), name


def test_ids_are_unique_and_parts_of_one_name_have_one_shape():
    found = made(sized(base={"dowels": 6}))
    assert len({part.id for part in found}) == len(found)
    shapes = {}
    for part in found:
        assert shapes.setdefault(part.name, part.shape) is part.shape
    kinds = list(shapes.values())
    assert not any(a.IsSame(b) for a, b in itertools.combinations(kinds, 2))


def test_what_was_assumed_is_told_with_its_part():
    found = {part.id: part for part in made(sized(REQUIRED))}
    assert "motor.body_length 120 mm" in found["motor"].note
    assert "screw.seat_diameter 17 mm" in found["journal"].note
    assert found["block"].note == ""
    assert not found["block"].stand_in
    assert all(part.stand_in for part_id, part in found.items() if part_id != "block")


def test_ring_joins_recess_and_bore():
    found = {part.id: part for part in made(sized(**MORE["recessed"]))}
    plan = sized(**MORE["recessed"])
    box = box_of(found["motor_centring_ring"])
    assert (box[0], box[3]) == pytest.approx((plan.body.length - 3, plan.body.length + 3), abs=1e-6)
    assert box[5] - box[2] == pytest.approx(70, abs=1e-6)
