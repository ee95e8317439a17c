"""Tests of the faces that a characteristic stands on."""

import pytest

from blockgen.outputs.step_tolerances.records import Target
from blockgen.outputs.step_tolerances.targets import edge_faces, ends_of, target_of
from tests.outputs.step_tolerances.faces import all_faces
from tests.sizing.strategies import sized


def note(plan, identifier):
    return next(n for n in plan.annotations if n.id == identifier)


def ends(plan, identifier):
    return tuple(target.faces for target in ends_of(note(plan, identifier), plan))


def test_a_group_has_the_faces_of_all_its_members():
    plan = sized()
    assert target_of(note(plan, "motor_threads.position"), plan) == Target(
        "motor_threads", tuple(f"motor_thread_{n}.thread" for n in range(1, 5)), pattern=True
    )


def test_a_bore_is_no_pattern():
    plan = sized()
    assert target_of(note(plan, "motor_bore.coaxiality"), plan) == Target("motor_bore", ("motor_bore.bore",))


def test_an_outside_face_is_its_own_target():
    plan = sized()
    assert target_of(note(plan, "datum.C"), plan) == Target("base", ("base",))


def test_corners_of_window_and_block():
    plan = sized(block={"outer_fillet": 4})
    assert target_of(note(plan, "window.corner_radius"), plan).faces[0] == "window.corner_1"
    assert target_of(note(plan, "block.outer_fillet"), plan).faces == ("corner.1", "corner.2", "corner.3", "corner.4")


@pytest.mark.parametrize(
    ("identifier", "expected"),
    [
        ("block.length", (("bearing_seat",), ("motor_seat",))),
        ("motor_bore.depth", (("motor_seat",), ("motor_bore.shoulder",))),
        ("window.across", (("side_minus_y",), ("window.side_minus_y",))),
    ],
)
def test_ends_of_a_distance(identifier, expected):
    assert ends(sized(), identifier) == expected


def test_a_window_through_the_sides_is_measured_upwards():
    plan = sized(block={"window_axis": "y"})
    assert ends(plan, "window.across") == (("base",), ("window.floor",))
    assert ends(plan, "window.width") == (("window.floor",), ("window.roof",))


def test_the_shaft_is_an_axis():
    plan = sized()
    start, end = ends_of(note(plan, "block.shaft_height"), plan)
    assert (start.axis, end.axis, end.faces) == (False, True, ("bearing_bore.bore",))


def test_the_depth_of_counterbores_runs_from_the_face_of_their_mouths_to_all_seats():
    plan = sized()
    start, end = ends_of(note(plan, "base_screws.counterbore_depth"), plan)
    assert start.faces == ("top",)
    assert end.pattern
    assert all(face.endswith(".seat") for face in end.faces)


def test_no_two_faces_define_a_drilled_depth():
    plan = sized()
    assert ends_of(note(plan, "bearing_threads.drill_depth"), plan) is None


def test_chamfers_of_the_outside_take_in_the_upright_edges_unless_they_are_rounded():
    for fillet, upright in ((0, True), (4, False)):
        plan = sized(block={"outer_fillet": fillet})
        faces = edge_faces(note(plan, "block.edge_chamfer"), plan, all_faces(plan)).faces
        assert ("corner.1" in faces) == upright
        assert "edge_break.1" in faces


def test_mouths_that_were_cut_away_are_not_named():
    plan = sized()
    there = [face for face in all_faces(plan) if face != "motor_bore.mouth_chamfer"]
    faces = edge_faces(note(plan, "mouths_1.chamfer"), plan, there).faces
    assert "bearing_bore.mouth_chamfer" in faces
    assert "motor_bore.mouth_chamfer" not in faces
