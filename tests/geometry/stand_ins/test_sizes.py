import pytest

from blockgen.geometry.stand_ins.sizes import assumed_sizes, note_of, stand_in_sizes
from tests.geometry.stand_ins.sums import sizes_of
from tests.sizing.strategies import REQUIRED, sized


def by_key(plan):
    return {record.key: record for record in assumed_sizes(plan)}


def test_what_the_plan_has_is_kept():
    plan, sizes = sizes_of()
    for key, record in plan.records.items():
        assert record.value is None or sizes[key] is record


def test_each_size_that_is_added_has_a_rule_and_a_source_and_is_marked_as_assumed():
    records = assumed_sizes(sized(REQUIRED))
    assert {"motor.body_size", "motor.body_length", "motor.flange_thickness", "bearing.nut_outer_diameter"} <= {
        record.key for record in records
    }
    assert all(r.rule and r.source and r.origin == "assumed" and r.unit == "mm" for r in records)


def test_the_rules_by_hand():
    found = by_key(sized(REQUIRED))
    assert found["motor.body_size"].value == 80
    assert found["motor.body_length"].value == 120
    assert found["motor.flange_thickness"].value == 8
    assert found["bearing.flange_thickness"].value == 10  # 0.15 x 66 = 9.9
    assert found["screw.seat_diameter"].value == 17  # journal 15: next bearing bore
    assert found["screw.diameter"].value == 23  # 22.1, up


def test_given_sizes_are_not_assumed():
    found = by_key(sized(motor={"body_size": 80, "body_length": 111}, bearing={"nut_outer_diameter": 33}))
    assert {"motor.body_size", "motor.body_length", "bearing.nut_outer_diameter"}.isdisjoint(found)


@pytest.mark.parametrize(
    ("journal", "nut", "seat"), [(8, 30, 10), (12, 30, 15), (20, 40, 25), (15, 18, 15), (9.5, 30, 10)]
)
def test_seat_is_the_next_bearing_bore_that_the_nut_leaves_room_for(journal, nut, seat):
    _, sizes = sizes_of(
        screw={"journal_diameter": journal}, bearing={"nut_outer_diameter": nut, "spanner_diameter": 42}
    )
    assert sizes.number("screw.seat_diameter") == seat


def test_screw_lengths_are_there_where_the_plan_could_choose_none():
    plan = sized(REQUIRED)
    assert plan.records["motor_screw_length"].value is None
    # flange 8 mm and 12 mm of thread: M6 x 20
    assert stand_in_sizes(plan).number("motor_screw_length") == 20


def test_shoulder_lies_where_the_stack_ends_with_the_housing():
    _, sizes = sizes_of(bearing={"stack_length": 40, "pilot_length": 12})
    assert sizes.number("bearing.shoulder_offset") == 28
    _, sizes = sizes_of(bearing={"stack_length": None, "flange_thickness": 12}, screw={"seat_length": None})
    assert sizes.number("bearing.shoulder_offset") == 12


def test_rectangular_flange_goes_by_its_shorter_side():
    flange = {
        "flange_size": None,
        "flange_shape": "rectangle",
        "flange_width": 80,
        "flange_height": 100,
        "body_size": None,
    }
    _, sizes = sizes_of(motor=flange)
    assert sizes.number("motor.body_size") == 80


def test_note_tells_what_was_assumed_about_one_part_only():
    plan = sized(REQUIRED)
    note = note_of(stand_in_sizes(plan), plan, "motor")
    assert "motor.body_length 120 mm" in note
    assert "bearing." not in note
    assert note_of(stand_in_sizes(plan), plan, "block") == ""
