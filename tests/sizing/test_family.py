"""A family block: every motor has its place on one and the same block, whichever of them stands first."""

import math
from dataclasses import replace
from itertools import permutations

import pytest
from hypothesis import HealthCheck, given, settings
from hypothesis import strategies as st

from blockgen.checks import check
from blockgen.errors import InfeasibleError, InputError
from blockgen.record import Record
from blockgen.sizing.family import (
    FIRST,
    alone,
    entries,
    entry_of,
    graft,
    is_of_motor,
    name_of,
    renamed,
    require_one_pilot,
    swapped,
    title_of,
)
from blockgen.sizing.family_members import family_start
from blockgen.sizing.family_pattern import clocked
from blockgen.sizing.rounds import decide_sizes
from blockgen.sizing.size import plan_from, size
from blockgen.spec.load import parse_spec
from tests.sizing.families import family_records, family_text, motors
from tests.sizing.strategies import sized, tables

FEW = settings(max_examples=20, deadline=None, derandomize=True, suppress_health_check=list(HealthCheck))
# Far enough apart that the holes of both go into one seat without turning.
TWO = [{}, {"bolt_circle": 110, "flange_size": 98, "bolt_hole": 5.5, "shaft_length": 42, "pilot_length": 4}]


def holes(plan):
    """Return what is drilled into the motor seat, whoever uses it."""
    own = [f for f in plan.features if f.face == "motor_seat" and f.kind != "bore"]
    return {(*(round(v, 6) for v in f.position), f.diameter, f.depth, f.thread) for f in own}


def block(plan):
    """Return the block without the names of its holes."""
    rest = [replace(f, keys={}) for f in plan.features if f.face != "motor_seat" or f.kind == "bore"]
    return plan.body, holes(plan), rest, plan.base_features


def test_the_motors_of_a_spec_are_told_apart_by_their_tables():
    records = family_records([{}, {}, {"name": "the other"}])
    assert entries(records) == ("motor", "family.0", "family.1")
    assert [name_of(entry) for entry in entries(records)] == ["motor", "motor_2", "motor_3"]
    assert title_of(records, "motor") == "motor 1"
    assert title_of(records, "family.1") == "motor 3 (the other)"


@pytest.mark.parametrize(
    ("single", "of_second"),
    [
        ("motor.shaft_length", "family.0.shaft_length"),
        ("motor_thread_depth", "motor_2_thread_depth"),
        ("coupling.motor_grip_min", "coupling.motor_2_grip_min"),
        ("length - motor_grip", "length - motor_2_grip"),
        ("coupling_position", "motor_2_coupling_position"),
        ("(coupling_low + coupling_high) / 2", "(motor_2_coupling_low + motor_2_coupling_high) / 2"),
    ],
)
def test_keys_of_one_motor_are_renamed_once(single, of_second):
    assert renamed(single, "family.0") == of_second
    assert renamed(of_second, "family.1") == of_second
    assert renamed(single, FIRST) == single


@pytest.mark.parametrize(
    "key", ["motor_wall", "motor_bore", "motor_bore_depth", "motor_through_bore", "base.motor_shaft_height", "length",
            "family_motor_pilot_length", "coupling.length", "motor_wall_least"],
)  # fmt: skip
def test_what_all_motors_share_keeps_its_name(key):
    assert not is_of_motor(key)


def test_names_lead_back_to_tables():
    assert entry_of("motor_2_threads") == "family.0"
    assert entry_of("motor_12_flange") == "family.10"
    assert entry_of("motor_threads") is None


def test_a_record_is_grafted_with_its_inputs():
    start = Record("motor.mass", 2.0, "kg", "given", "given in the spec")
    made = Record("motor_grip", 3.0, "mm", "sized", "2 x motor.mass", {"motor.mass": start.as_input()})
    found = graft(made, "family.0")
    assert (found.key, found.rule) == ("motor_2_grip", "2 x family.0.mass")
    assert found.inputs["family.0.mass"].ref == "family.0.mass"


def test_a_motor_alone_and_a_change_of_places_keep_every_value():
    records = family_records(TWO)
    assert {key.partition(".")[0] for key in alone(records, "family.0")}.isdisjoint({"family"})
    assert alone(records, "family.0")["motor.bolt_circle"].value == 110
    there = swapped(records, "family.0")
    assert there["motor.bolt_circle"].value == 110
    assert there["family.0.bolt_circle"].value == 90
    assert {k: r.value for k, r in swapped(there, "family.0").items()} == {k: r.value for k, r in records.items()}


def test_both_patterns_are_in_the_block_and_the_holes_of_both_keep_their_walls():
    plan = plan_from(family_records(TWO))
    groups = [f.group for f in plan.features if f.face == "motor_seat"]
    assert groups.count("motor_threads") == groups.count("motor_2_threads") == 4
    assert {f.thread for f in plan.features if f.group == "motor_2_threads"} == {"M5-6H"}
    assert all(wall.wall >= wall.required - 1e-6 for wall in plan.ligaments)
    ids = {note.id for note in plan.annotations}
    assert {"motor_2_threads.thread", "motor_2_threads.position", "motor_2_threads.drill_depth"} <= ids


def test_the_flange_of_the_greatest_motor_lies_wholly_on_the_seat():
    plan, single = plan_from(family_records(TWO)), sized()
    assert plan.body.height == 116  # 65 + 98 / 2 + margin 1 + edge break 0.5, up to the next millimetre
    assert plan.body.height > single.body.height


def test_the_bore_is_deep_enough_for_the_longest_pilot():
    plan = plan_from(family_records(TWO))
    assert plan.number("motor_bore_depth") >= 4 + 1
    assert "family_motor_pilot_length" in plan.records["motor_bore_depth"].inputs


def test_equal_holes_are_one_hole_and_equal_threads_are_drilled_alike():
    plan = plan_from(family_records([{"flange_thickness": 10}, {"flange_thickness": 8}]))
    on_seat = [f for f in plan.features if f.face == "motor_seat" and f.thread]
    assert {f.group for f in on_seat} == {"motor_threads"}
    assert len(on_seat) == 4
    single = [sized(motor={"flange_thickness": thick}).number("motor_thread_depth") for thick in (10, 8)]
    assert plan.number("motor_thread_depth") == plan.number("motor_2_thread_depth") == max(single)


def test_a_family_of_equal_motors_is_the_plain_block():
    plan, single = plan_from(family_records([{}, {}])), sized()
    assert (plan.body, plan.features, plan.fasteners) == (single.body, single.features, single.fasteners)
    own, further = check(plan)[: len(check(single))], check(plan)[len(check(single)) :]
    assert own == check(single)
    assert all(f.verdict == "not_assessed" and all(key.startswith("family.0.") for key in f.missing) for f in further)
    assert all(plan.records[key].value == single.records[key].value for key in single.dimensions)


def test_a_spec_without_family_has_no_other_plans():
    assert sized().others == ()


@pytest.mark.slow
@FEW
@given(motors(2, 3, circles=(90, 112)))
def test_every_motor_sees_the_same_block(drawn):
    try:
        plan = plan_from(family_records(drawn), brief=True)
    except InfeasibleError:
        return
    assert len(plan.others) == len(drawn) - 1
    assert all(block(other) == block(plan) for other in plan.others)


SIZES = ("length", "width", "height", "length_min", "length_max", "motor_wall", "bearing_wall", "window_width",
         "motor_bore_depth", "base_pattern")  # fmt: skip


@pytest.mark.slow
@FEW
@given(motors(3, 3, circles=(90, 112)))
def test_the_order_of_the_motors_does_not_matter(drawn):
    found = []
    for order in permutations(drawn):
        try:
            ledger, _, _ = decide_sizes(*family_start(clocked(family_records(list(order)))[0]))
            found.append([ledger[key].value for key in SIZES])
        except InfeasibleError as error:
            found.append(["none", max(c.deficit for c in error.conflicts)])
    assert all(one == found[0] for one in found)


@pytest.mark.slow
@FEW
@given(motors(2, 3, circles=(90, 112)))
def test_the_interval_is_what_the_motors_alone_allow_with_these_walls(drawn):
    try:
        plan = plan_from(family_records(drawn), brief=True)
    except InfeasibleError:
        return
    names = ("motor", *(f"motor_{n}" for n in range(2, len(drawn) + 1)))
    assert plan.number("length_min") == max(plan.number(f"{name}_length_min") for name in names)
    assert plan.number("length_max") == min(plan.number(f"{name}_length_max") for name in names)


def test_different_pilots_need_two_bores_and_a_ring_is_proposed():
    records = family_records([{}, {"pilot_diameter": 80, "bolt_circle": 112, "flange_size": 98}])
    with pytest.raises(InfeasibleError, match="one bore cannot centre both pilots, 10 mm apart") as caught:
        require_one_pilot(records)
    assert caught.value.conflicts[0].keys == ("motor.pilot_diameter", "family.0.pilot_diameter")
    assert "80 / 70 mm for motor 1, wall 5 mm" in caught.value.cures[0].text
    assert not caught.value.cures[0].verified


def test_pilots_too_near_for_a_ring_get_none():
    records = family_records([{}, {"pilot_diameter": 73}])
    with pytest.raises(InfeasibleError, match="3 mm apart") as caught:
        require_one_pilot(records)
    assert caught.value.cures == ()


def test_two_lengths_that_do_not_meet_are_told_with_both_motors_and_cured_by_either_shaft():
    apart = [{"shaft_length": 41}, {"shaft_length": 60}]
    with pytest.raises(InfeasibleError, match=r"motor 2 asks for a block of at least .* motor 1 allows") as caught:
        plan_from(family_records(apart))
    error = caught.value
    assert {cure.key for cure in error.cures} == {"motor.shaft_length", "family.0.shaft_length"}
    for cure in error.cures:
        cured = dict(family_records(apart))
        cured[cure.key] = replace(cured[cure.key], value=cure.after)
        plan_from(cured)  # a block exists
        short = 0.2 if cure.after < cure.before else -0.2
        cured[cure.key] = replace(cured[cure.key], value=cure.after + short)
        with pytest.raises(InfeasibleError):
            plan_from(cured)


def test_a_motor_that_fits_no_block_is_named():
    with pytest.raises(InfeasibleError, match=r"motor 2 alone: .* missing") as caught:
        plan_from(family_records([{}, {"shaft_length": 20}]))
    assert any(key.startswith("family.0.") for key in caught.value.conflicts[0].keys)


def test_the_base_screws_hold_the_heaviest_motor_whichever_stands_first():
    heavy = {"mass": 60, "centre_of_mass": 150, "body_length": 300, "peak_torque": 40}
    plans = [plan_from(family_records(order)) for order in ([{}, heavy], [heavy, {}])]
    assert plans[0].records["base_screw"].value == plans[1].records["base_screw"].value
    assert plans[0].number("base_screw_count") == plans[1].number("base_screw_count")


def test_the_base_screws_stand_clear_of_the_holes_of_every_motor():
    plan = plan_from(family_records([{}, {"bolt_circle": 118, "flange_size": 104, "bolt_hole": 9}]))
    holes_there = [f for f in plan.features if f.group == "motor_2_threads"]
    screws = [f for f in plan.features if f.group == "base_screws"]
    for hole in holes_there:
        for screw in screws:
            beside = abs(screw.position[1] - hole.position[1]) >= (screw.counterbore_diameter + 8) / 2
            before = plan.body.length - screw.position[0] >= hole.depth + screw.counterbore_diameter / 2
            assert beside or before


def test_findings_of_a_further_motor_name_it_and_its_keys():
    plan = plan_from(family_records([{}, {"shaft_length": 41, "peak_torque": 60, "name": "big"}]))
    found = {finding.id: finding for finding in check(plan)}
    torque = found["motor_2.coupling_rating"]
    assert torque.verdict != "pass"
    assert torque.title.endswith("motor 2 (big)")
    assert "family.0.peak_torque" in torque.inputs
    assert torque.inputs["family.0.peak_torque"].value == 60
    assert found["coupling_rating"].verdict == "pass"
    assert "motor_2.bearing_engagement" not in found
    assert not any(code.startswith("motor_2.thin_wall") for code in found)


def test_the_records_of_a_further_motor_stand_under_its_own_keys():
    plan = plan_from(family_records(TWO))
    end = plan.number("motor_2_coupling_position") + plan.number("coupling.length")
    depth = end - (plan.number("length") - plan.number("family.0.shaft_length"))
    assert math.isclose(plan.number("motor_2_grip"), depth, abs_tol=1e-6)
    assert {"motor_2_grip", "motor_2_shaft_gap", "motor_2_thread", "motor_2_length_min"} <= set(plan.dimensions)
    refs = [of.ref for r in plan.records.values() for of in r.inputs.values() if of.ref]
    assert all(ref in plan.records for ref in refs)


@pytest.mark.parametrize(("key", "value"), [("bolt_thread", "M7"), ("pilot_fit", "zc3")])
def test_wrong_input_of_a_further_motor_is_told_at_its_own_key_and_line(key, value):
    wrong = {"bolt_hole": None, key: value} if key == "bolt_thread" else {key: value}
    spec = parse_spec(family_text([{}, wrong]), "axis.toml")
    with pytest.raises(InputError, match=rf"axis.toml:\d+: family\.0\.{key}"):
        size(spec)


OTHER = st.fixed_dictionaries({}, optional={
    "shaft_length": st.sampled_from((-3, 4, 9)), "pilot_length": st.sampled_from((1, 2.5)),
    "flange_size": st.sampled_from((6, 20)), "mass": st.sampled_from((1, 20)),
})  # fmt: skip


@pytest.mark.slow
@FEW
@given(tables(), OTHER)
def test_any_spec_with_a_further_motor_gives_one_block_or_says_why_not(drawn, more):
    own = drawn["motor"]
    grown = {key: own[key] + value for key, value in more.items() if key in own}
    grown |= {key: own["shaft_length"] for key in ("shaft_smooth_length",) if key in own and "shaft_length" in grown}
    try:
        records = dict(parse_spec(family_text([{}, grown], drawn)).records)
        plan = plan_from(records, brief=True)
    except (InputError, InfeasibleError):
        return
    assert block(plan.others[0]) == block(plan)
    assert all(f.verdict in {"pass", "warn", "fail", "not_assessed"} for f in check(plan))


@pytest.mark.parametrize("order", [("2.8740 in", 73), (73, "2.8740 in")])
def test_a_pilot_of_a_sheet_in_inches_is_the_pilot_in_mm_but_for_its_last_digit(order):
    plan = plan_from(family_records([{"pilot_diameter": size} for size in order]))  # 2.8740 in = 72.9996 mm
    assert plan.number("motor_bore") == plan.others[0].number("motor_bore") == 73
    rounded = [plan.records[f"{entry}.pilot_diameter"] for entry in ("motor", "family.0")]
    assert [("72.9996 mm, taken as the 73 mm" in record.rule) for record in rounded] == [size != 73 for size in order]


def test_pilots_further_apart_than_the_last_digit_in_inches_are_two():
    with pytest.raises(InfeasibleError, match=r"0\.00254 mm apart"):
        require_one_pilot(family_records([{"pilot_diameter": "2.8739 in"}, {"pilot_diameter": 72.9996}]))


def test_the_depth_of_equal_threads_is_explained_where_the_first_motor_has_another_thread():
    wide = {"bolt_circle": 110, "flange_size": 98, "bolt_hole": 5.5}
    plan = plan_from(family_records([{}, {**wide, "flange_thickness": 6}, {**wide, "flange_thickness": 8}]))
    assert (
        plan.number("motor_2_thread_depth") == plan.number("motor_3_thread_depth") != plan.number("motor_thread_depth")
    )
    told = [of for r in plan.records.values() for of in r.inputs.values() if of.ref]
    assert all(plan.records[of.ref].value == of.value for of in told)
    assert any(of.ref and of.ref.endswith("_thread_depth_alike") for of in told)


def test_the_longest_pilot_names_that_of_every_motor_even_where_it_was_not_given():
    plan = plan_from(family_records([{}, {"pilot_length": None}]))
    inputs = plan.records["family_motor_pilot_length"].inputs
    assert {key: of.origin for key, of in inputs.items()} == {
        "motor.pilot_length": "given", "family.0.pilot_length": "assumed",
    }  # fmt: skip


def test_a_ring_and_a_hub_that_only_a_further_motor_needs_are_told():
    other = {"pilot_form": "recessed", "pilot_fit": None, "shaft_diameter": 16}
    notes = plan_from(family_records([{"shaft_diameter": 19}, {**other, "name": "next"}])).notes
    ring = "The flange of motor 2 (next) has a recess: a loose centring ring of diam 70 joins it to the bore."
    assert ring in notes
    assert any("a motor-side hub bored for each: 19 mm for motor 1, 16 mm for motor 2 (next)." in n for n in notes)
    assert not any("hub" in note or "ring" in note for note in plan_from(family_records([{}, {}])).notes)


def test_a_value_that_no_motor_has_is_asked_for_each_of_them():
    plan = plan_from(family_records([{"mass": None}, {"mass": None}], screw={"thrust": 800}))
    asked = {key for finding in check(plan) for key in finding.missing}
    assert {"motor.mass", "family.0.mass"} <= asked
