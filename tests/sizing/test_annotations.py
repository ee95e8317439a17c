"""The list of characteristics: datums defined once before they are named, every cavity covered."""

import pytest

from tests.sizing.strategies import REQUIRED, sized

WAYS = {
    "usual": {},
    "across": {"block": {"window_axis": "y"}},
    "below": {"base": {"screw_from": "below"}},
    "dowels": {"base": {"dowels": 6}},
    "relief": {"block": {"relief": 0.5}},
    "fillet": {"block": {"outer_fillet": 4}},
    "pocket": {"block": {"window_floor": 20}},
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


def needed(plan):
    """Return what must be fixed for the shape of a plan, from its profiles and boxes alone."""
    body, found = plan.body, {"block.length", "block.width", "block.height"}
    found |= {"block.edge_chamfer"} if body.edge_chamfer else set()
    found |= {"block.outer_fillet"} if body.outer_fillet else set()
    for feature in plan.features:
        if feature.kind == "window":
            found |= {f"window.{name}" for name in ("position", "length", "across", "width", "corner_radius")}
            found |= set() if feature.pocket.open_low else {"window.floor"}
        elif feature.kind == "relief":
            found |= {"relief.position", "relief.length", "relief.depth"}
        else:
            found |= {f"{feature.group}.{name}" for name in turned(feature)}
    return found


def turned(feature):
    """Return the sizes of a turned cavity: one for each radius, one for each blind end, its mouth, its place."""
    parts = {piece.part for piece in feature.profile}
    sizes = {"mouth"} if "mouth_chamfer" in parts else set()
    if feature.kind != "bore":
        sizes |= {"location"}
    if feature.thread:
        return sizes | {"thread"} | (set() if feature.through else {"drill_depth"})
    radii = {piece.start_radius for piece in feature.profile if piece.start_radius == piece.end_radius}
    names = {"bore": ("through_diameter", "depth"), "dowel_hole": ("relief_diameter", "relief_depth")}
    more = names.get(feature.kind, ("counterbore_diameter", "counterbore_depth"))
    return sizes | {"diameter"} | (set(more) if len(radii) > 1 else set())


@pytest.mark.parametrize("way", WAYS)
def test_each_size_of_the_shape_is_fixed_once(way):
    plan = sized(**WAYS[way])
    fixed = [what for note in plan.annotations for what in note.covers]
    assert len(fixed) == len(set(fixed))
    assert needed(plan) - set(fixed) == set()


@pytest.mark.parametrize("way", WAYS)
def test_what_is_fixed_beyond_the_shape_is_form_place_or_texture(way):
    plan = sized(**WAYS[way])
    fixed = {what for note in plan.annotations for what in note.covers} - needed(plan)
    kinds = (
        "texture",
        "flatness",
        "perpendicularity",
        "coaxiality",
        "parallelism",
        "ream",
        "shaft_height",
        "axis_to_side",
    )
    assert all(what.endswith(kinds) for what in fixed), fixed


@pytest.mark.parametrize("way", WAYS)
def test_numbers_run_from_one_without_gaps(way):
    numbers = [note.number for note in sized(**WAYS[way]).annotations if note.number is not None]
    assert numbers == list(range(1, len(numbers) + 1))


def test_only_own_deviations_are_written_the_others_come_from_the_general_tolerance():
    notes = {note.id: note for note in sized().annotations}
    assert (notes["block.width"].value, notes["block.width"].general, notes["block.width"].upper) == (121, True, 0.5)
    assert not notes["block.length"].general


def test_a_finer_general_tolerance_narrows_the_deviations():
    notes = {note.id: note for note in sized(drawing={"general_tolerance": "ISO 2768-fH"}).annotations}
    assert notes["block.width"].upper == 0.2


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
    known |= {"bearing_seat", "motor_seat", "base", "top", "side_plus_y", "side_minus_y", "block"}
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
