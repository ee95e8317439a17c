"""Cavities: contiguous profiles, mouths on their faces, holes inside the body."""

import math

import pytest

from tests.sizing.strategies import sized

PLANS = {
    "usual": {},
    "across": {"block": {"window_axis": "y"}},
    "below": {"base": {"screw_from": "below"}},
    "relief": {"block": {"relief": 0.5}},
    "tapped": {"motor": {"bolt_hole": None, "bolt_thread": "M6", "fastening": "tapped"}},
}


@pytest.mark.parametrize("way", PLANS)
def test_profiles_are_contiguous_and_reach_the_depth(way):
    for feature in sized(**PLANS[way]).features:
        if feature.pocket is not None:
            assert not feature.profile
            continue
        assert feature.profile[0].start == 0.0
        for one, two in zip(feature.profile, feature.profile[1:], strict=False):
            assert one.end == pytest.approx(two.start)
            assert one.end_radius == pytest.approx(two.start_radius)
        assert feature.profile[-1].end >= feature.depth - 1e-9


@pytest.mark.parametrize("way", PLANS)
def test_ids_are_unique_and_axes_are_unit_vectors(way):
    plan = sized(**PLANS[way])
    assert len({f.id for f in plan.features}) == len(plan.features)
    for feature in plan.features:
        assert math.hypot(*feature.axis) == pytest.approx(1.0)


@pytest.mark.parametrize("way", PLANS)
def test_mouths_lie_in_their_faces(way):
    plan = sized(**PLANS[way])
    body = plan.body
    planes = {"bearing_seat": (0, 0.0), "motor_seat": (0, body.length), "base": (2, 0.0), "top": (2, body.height),
              "side_plus_y": (1, body.width / 2), "side_minus_y": (1, -body.width / 2)}  # fmt: skip
    for feature in plan.features:
        index, at = planes[feature.face]
        assert feature.position[index] == pytest.approx(at)
        assert feature.axis[index] == pytest.approx(1.0 if at <= 0 else -1.0)


@pytest.mark.parametrize("way", PLANS)
def test_what_a_cavity_opens_into_exists(way):
    plan = sized(**PLANS[way])
    known = {f.id for f in plan.features} | {"bearing_seat", "motor_seat", "base", "top", "side_plus_y", "side_minus_y"}
    assert not {name for f in plan.features for name in f.opens_into} - known


def test_keys_of_features_are_records():
    plan = sized(base={"dowels": 6}, block={"relief": 0.5})
    for feature in (*plan.features, *plan.base_features):
        assert not set(feature.keys.values()) - set(plan.records), feature.id


def test_a_blind_hole_ends_in_a_point_and_a_through_hole_at_the_window():
    blind = sized().feature("bearing_thread_1")
    assert (blind.through, blind.profile[-1].part, blind.profile[-1].end_radius) == (False, "point", 0.0)
    through = sized(motor={"bolt_hole": None, "bolt_thread": "M6", "fastening": "tapped"}).feature("motor_hole_1")
    assert through.through
    assert through.profile[-1].end == pytest.approx(20.0)


@pytest.mark.parametrize("count", [4, 6])
def test_the_relief_keeps_clear_of_the_base_screws(count):
    plan = sized(block={"relief": 0.5}, base={"screw_count": count})
    boxes = [f.pocket for f in plan.features if f.id == "relief"]
    for screw in (f for f in plan.features if f.group == "base_screws"):
        for box in boxes:
            assert not box.low[0] - 6 < screw.position[0] < box.high[0] + 6


def test_call_outs_name_thread_and_depth():
    plan = sized()
    assert plan.feature("bearing_thread_1").call_out.startswith("M6-6H depth")
    assert plan.feature("motor_bore").call_out.startswith("70 H7")
    assert "counterbore" in plan.feature("base_screw_1").call_out
