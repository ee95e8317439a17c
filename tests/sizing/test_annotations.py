"""The list of characteristics: datums defined once before they are named, every cavity covered."""

import pytest

from tests.sizing.strategies import REQUIRED, sized

WAYS = {
    "usual": {},
    "across": {"block": {"window_axis": "y"}},
    "below": {"base": {"screw_from": "below"}},
    "dowels": {"base": {"dowels": 6}},
    "relief": {"block": {"relief": 0.5}},
    "tapped": {"motor": {"bolt_hole": None, "bolt_thread": "M6", "fastening": "tapped"}},
}


@pytest.mark.parametrize("way", WAYS)
def test_each_datum_that_is_named_is_defined_once(way):
    notes = sized(**WAYS[way]).annotations
    defined = [n.text for n in notes if n.kind == "datum"]
    assert len(defined) == len(set(defined))
    assert {letter for n in notes for letter in n.datums} <= set(defined)


@pytest.mark.parametrize("way", WAYS)
def test_ids_are_unique_and_have_reasons(way):
    notes = sized(**WAYS[way]).annotations
    assert len({n.id for n in notes}) == len(notes)
    assert all(n.reason for n in notes)


@pytest.mark.parametrize("way", WAYS)
def test_each_cavity_has_a_characteristic(way):
    plan = sized(**WAYS[way])
    covered = {n.feature for n in plan.annotations}
    for feature in plan.features:
        assert {feature.id, feature.group} & covered, feature.id


@pytest.mark.parametrize("way", WAYS)
def test_each_characteristic_stands_on_something_that_exists(way):
    plan = sized(**WAYS[way])
    known = {f.id for f in plan.features} | {f.group for f in plan.features}
    known |= {"bearing_seat", "motor_seat", "base", "top", "side_plus_y", "side_minus_y"}
    for note in plan.annotations:
        assert note.feature in known, note.id
        assert note.ref is None or note.ref in plan.records, note.id


def test_faces_of_turned_cavities_are_pieces_of_their_profile():
    plan = sized()
    faces = {f.face_id(s.part) for f in plan.features for s in f.profile}
    for note in plan.annotations:
        if note.feature in {"bearing_bore", "motor_bore"}:
            assert note.face in faces, note.id


def test_fits_reach_the_characteristic_of_the_bore():
    note = next(n for n in sized().annotations if n.id == "motor_bore.diameter")
    assert (note.value, note.fit, note.upper, note.lower) == (70, "H7", 0.03, 0.0)


def test_no_tolerance_zone_is_negative_or_empty():
    for start in ({}, {"motor": {"bolt_hole": 6.6}}):
        for note in sized(REQUIRED, **start).annotations:
            if note.kind in {"position", "coaxiality", "perpendicularity", "flatness", "parallelism"}:
                assert note.value > 0, note.id


def test_texture_is_in_micrometres():
    assert {n.unit for n in sized().annotations if n.kind == "texture"} == {"um"}
