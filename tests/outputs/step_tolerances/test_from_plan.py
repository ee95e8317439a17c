"""Tests of the records: each characteristic once, with its own limits only."""

from dataclasses import replace

import pytest

from blockgen.outputs.step_tolerances.from_plan import tolerances_of
from blockgen.outputs.step_tolerances.records import CallOut, Datum, Distance, Size, Texture, Zone
from tests.geometry import sample_plans
from tests.outputs.step_tolerances.faces import all_faces
from tests.sizing.strategies import sized
from tests.sizing.test_annotations import WAYS


def records(plan, without=()):
    faces = tuple(face for face in all_faces(plan) if face not in without)
    return {record.id: record for record in tolerances_of(plan, faces).records}


@pytest.mark.parametrize("way", WAYS)
def test_every_characteristic_has_its_record(way):
    plan = sized(**WAYS[way])
    found = tolerances_of(plan, all_faces(plan))
    assert found.left_out == ()
    assert [record.id for record in found.records] == [note.id for note in plan.annotations]


@pytest.mark.parametrize("way", WAYS)
def test_values_are_those_of_the_plan(way):
    plan = sized(**WAYS[way])
    notes = {note.id: note for note in plan.annotations}
    for record in records(plan).values():
        note = notes[record.id]
        if isinstance(record, (Size, Distance)):
            own = (None, None) if note.general else (note.upper, note.lower)
            assert (record.value, record.upper, record.lower) == (note.value, *own)
        elif isinstance(record, Zone):
            assert (record.kind, record.width, record.datums) == (note.kind, note.value, note.datums)


def test_each_kind_becomes_what_the_format_has_for_it():
    found = records(sized())
    assert isinstance(found["datum.A"], Datum)
    assert isinstance(found["motor_bore.diameter"], Size)
    assert isinstance(found["motor_bore.depth"], Distance)
    assert isinstance(found["motor_bore.coaxiality"], Zone)
    assert isinstance(found["base.texture"], Texture)
    assert isinstance(found["motor_threads.thread"], CallOut)


@pytest.mark.parametrize("way", WAYS)
def test_a_group_is_meant_as_a_whole(way):
    plan = sized(**WAYS[way])
    groups = [feature.group for feature in plan.features]
    for record in records(plan).values():
        target = getattr(record, "target", None)
        if target and target.name in groups and target.name not in {"window", "relief"}:
            assert len(target.faces) == groups.count(target.name), record.id
            assert target.pattern == (groups.count(target.name) > 1), record.id


def test_distances_to_the_shaft_end_at_its_axis():
    found = records(sized())
    assert [key for key, r in found.items() if isinstance(r, Distance) and r.end.axis] == [
        "block.shaft_height",
        "block.axis_to_side",
    ]


def test_a_fit_keeps_class_and_limits():
    size = records(sized())["motor_bore.diameter"]
    assert (size.fit, size.value, size.upper, size.lower) == ("H7", 70.0, 0.03, 0.0)


def test_a_blind_thread_has_depth_and_deviations_a_through_one_says_so():
    found = records(sized())
    blind, through = found["bearing_threads.thread"], found["motor_threads.thread"]
    assert (blind.name, blind.texts) == ("thread", {"designation": "M6-6H"})
    assert set(blind.lengths) == {"depth", "upper deviation", "lower deviation"}
    assert (through.texts["depth"], through.lengths) == ("through", {})


def test_a_drilled_depth_under_the_general_tolerance_has_no_deviations():
    drilled = records(sized())["bearing_threads.drill_depth"]
    assert (drilled.name, set(drilled.lengths)) == ("drilled depth", {"depth"})


def test_words_have_their_number_in_place():
    found = records(sized())["block.edge_chamfer"]
    assert list(found.texts.values()) == ["outside edges 0.5 × 45°"]


def test_the_texture_of_all_other_faces_has_no_target():
    assert records(sized())["block.texture"].target is None


def test_what_has_no_face_is_left_out_and_told():
    plan = sized()
    there = [face for face in all_faces(plan) if face != "motor_bore.shoulder"]
    assert tolerances_of(plan, there).left_out == ("motor_bore.depth",)


def test_a_zone_does_not_outlive_its_datum():
    plan = sized()
    found = tolerances_of(plan, [face for face in all_faces(plan) if face != "base"])
    assert {"datum.C", "base.flatness", "bearing_seat.perpendicularity", "base_screws.position"} <= set(found.left_out)
    letters = {record.letter for record in found.records if isinstance(record, Datum)}
    assert all(set(record.datums) <= letters for record in found.records if isinstance(record, Zone))


def test_a_kind_that_the_file_has_no_form_for_is_told():
    plan = sized()
    odd = replace(plan.annotations[-1], id="odd", kind="sound")
    assert tolerances_of(replace(plan, annotations=(odd,)), all_faces(plan)).left_out == ("odd",)


def test_a_plan_without_characteristics_has_no_general_tolerance():
    found = tolerances_of(sample_plans.usual(), ())
    assert (found.records, found.general) == ((), "")


def test_the_class_of_the_general_tolerance():
    plan = sized(drawing={"general_tolerance": "ISO 2768-fH"})
    assert tolerances_of(plan, all_faces(plan)).general == "ISO 2768-fH"
