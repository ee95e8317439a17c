"""Comparing designs as data: with itself, the other way round, and what a designer works out by hand."""

import copy
from dataclasses import replace

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from blockgen.change.compare.compare import compare, compare_paths
from blockgen.change.compare.data import Asked, Change, changed
from blockgen.change.compare.json import SECTIONS
from blockgen.errors import InfeasibleError, InputError
from tests.change.sides import SERVO_TEXT, altered, side, with_keys
from tests.examples import EXAMPLES, FOLDER, SERVO


@pytest.mark.parametrize("spec", EXAMPLES, ids=lambda path: path.stem)
def test_a_spec_compared_with_itself_has_nothing_that_changed(spec):
    found = compare_paths(spec, spec)
    assert found.same
    assert not any(changed(getattr(found, name)) for name in SECTIONS)
    assert {d.fate for d in found.documents} == {"valid"}


def test_another_motor_is_told_with_all_that_follows():
    found = compare(side(), side(SERVO_TEXT.replace("servo-80", "servo-100")))
    sizes = {e.id: e for e in found.dimensions}
    assert sizes["motor_bore"].changes == (Change("value", 70.0, 80.0, "mm"),)
    assert sizes["motor_bore"].because == ("motor.pilot_diameter",)
    assert sizes["bearing_bore"].state == "same"
    assert next(e for e in found.fasteners if e.id == "motor_flange").title == "4 x ISO 4762 M8 x 30 - 8.8"
    assert not found.same


def test_an_infeasible_design_says_which_one_it_is():
    short = FOLDER / "spray_carriage_too_short.toml"
    with pytest.raises(InfeasibleError, match=r"spray_carriage_too_short\.toml: "):
        compare_paths(SERVO, short)


def test_what_is_no_spec_is_wrong_input(tmp_path):
    with pytest.raises(InputError, match="no such file"):
        compare_paths(SERVO, tmp_path / "none.toml")
    with pytest.raises(InputError, match=r"summary.json\n.*cannot be read"):
        compare_paths(SERVO, tmp_path)


def test_a_check_that_needs_solids_is_set_aside_where_one_side_has_none():
    def built(document):
        document["clearances"] = {"pairs": []}
        document["checks"].append({**document["checks"][0], "id": "clash_free", "title": "Clashes", "verdict": "pass"})

    found = compare(side(), altered(built))
    assert found.same
    assert found.not_comparable == (
        "Clashes (clash_free): pass in the new design; the other one was not judged by the solids of the assembly",
    )


LOCKED = with_keys("block", 'length = "113 mm"', "bearing_wall = 26.5", "motor_wall = 24.5", "window_width = 60",
                   "window_corner_radius = 8", text=SERVO_TEXT.replace(
                       "dowels = true",
                       "dowels = false\nhole_positions = [[11, 41], [77.5, 41], [11, -41], [77.5, -41]]"))  # fmt: skip


def test_a_block_that_is_shortened_is_as_one_works_out_by_hand():
    """Walls, window width and base screws stay, so 1.5 mm go out of the two side walls, and out of the shafts' gap.

    Each side wall is (104 - 60) / 2 = 22 mm thick and 107 mm high, and the four long edges carry 0.5 mm chamfers:
    1.5 * (2 * 22 * 107 - 4 * 0.5 ** 2 / 2) = 7061.25 mm3.
    """
    found = compare(side(LOCKED), side(LOCKED.replace('"113 mm"', '"111.5 mm"')))
    assert [e.id for e in changed(found.spec)] == ["block.length"]
    sizes = {e.id: (e.changes[0].old, e.changes[0].new) for e in changed(found.dimensions)}
    assert sizes.pop("journal_grip") == (15.5, 17.0)
    assert sizes.pop("coupling_position") == (30.5, 29.0)
    assert sizes == {"length": (113.0, 111.5), "window_length": (62.0, 60.5), "shaft_gap": (27.0, 25.5)}
    assert {e.id: e.state for e in changed(found.features)} == {
        "window": "changed", "motor_bore": "moved", **{f"motor_thread_{n}": "moved" for n in range(1, 5)},
    }  # fmt: skip
    assert not changed(found.base_features)
    volume = next(e for e in found.mass if e.id == "volume").changes[0]
    assert volume.old - volume.new == pytest.approx(7061.25, abs=0.01)
    mass = next(e for e in found.mass if e.id == "mass").changes[0]
    assert mass.old - mass.new == pytest.approx(7061.25e-9 * 2700, abs=1e-5)


TURNS = {"worse": "better", "better": "worse"}
STATES = {"added": "removed", "removed": "added"}


def mirrored(entries):
    """Return entries as the comparison the other way round should have them, by what they are."""
    return {
        (e.new_id or e.id, STATES.get(e.state, e.state), TURNS.get(e.note, e.note), e.because,
         tuple((c.name, repr(c.new), repr(c.old), c.unit) for c in e.changes))
        for e in entries
    }  # fmt: skip


def as_told(entries):
    return {
        (e.id, e.state, e.note, e.because, tuple((c.name, repr(c.old), repr(c.new), c.unit) for c in e.changes))
        for e in entries
    }


def swap_ids(document, first, second):
    names = {f"base_screw_{first}": f"base_screw_{second}", f"base_screw_{second}": f"base_screw_{first}"}
    for feature in document["features"]:
        feature["id"] = names.get(feature["id"], feature["id"])


def edits(document):
    numbers = st.floats(0.1, 500.0).map(lambda v: round(v, 3))
    sizes = st.tuples(st.just("size"), st.sampled_from(sorted(document["dimensions"])), numbers)
    ids = st.integers(0, len(document["features"]) - 1)
    moves = st.tuples(st.just("move"), ids, numbers)
    drops = st.tuples(st.just("drop"), ids, st.none())
    verdicts = st.sampled_from(["pass", "warn", "fail", "not_assessed"])
    judged = st.tuples(st.just("check"), st.integers(0, len(document["checks"]) - 1), st.tuples(verdicts, numbers))
    screws = st.integers(1, 6)
    return st.lists(st.one_of(sizes, moves, drops, judged, st.tuples(st.just("ids"), screws, screws)), max_size=8)


def edited(document, wanted):
    gone = {place for what, place, _ in wanted if what == "drop"}
    for what, place, value in wanted:
        if what == "size":
            document["dimensions"][place]["value"] = value
        elif what == "move":
            document["features"][place]["position"][0] = value
        elif what == "check":
            document["checks"][place] |= {"verdict": value[0], "margin": value[1] / 500}
        elif what == "ids":
            swap_ids(document, place, value)
    document["features"] = [f for number, f in enumerate(document["features"]) if number not in gone]


@pytest.mark.slow
@settings(max_examples=40, deadline=None)
@given(st.data())
def test_comparing_the_other_way_round_mirrors_everything(data):
    before, after = (altered(lambda d: edited(d, data.draw(edits(d)))) for _ in range(2))
    after = replace(after, asked={**after.asked, "motor.mass": Asked(data.draw(st.floats(1.0, 9.0)), "kg")})
    there, back = compare(before, after), compare(after, before)
    assert there.same == back.same
    for name in SECTIONS:
        assert mirrored(getattr(there, name)) == as_told(getattr(back, name)), name
    fates = {d.role: d.fate for d in there.documents}
    assert fates == {d.role: d.fate for d in back.documents}


def test_the_sides_are_left_as_they_were():
    before = copy.deepcopy(side().document)
    compare(side(), altered(lambda d: d["features"].clear()))
    assert side().document == before
