"""Tests of rings, plates and what is refused."""

import math
from dataclasses import replace
from functools import cache

import pytest

from blockgen.alignment.scatter import worst_case
from blockgen.alignment.terms import offsets, terms_of
from blockgen.change.adapter.adapter import adapters
from blockgen.change.adapter.layout import PlateRoom, plate_layout
from blockgen.change.adapter.plate import plate
from blockgen.change.adapter.ring import ring
from blockgen.change.adapter.weight import volume_of_adapter
from tests.change import blocks
from tests.sizing.strategies import COMPLETE, sized


@cache
def a_ring():
    """Return the ring for a pilot of 60 in the bore of 70."""
    return ring(blocks.old(), blocks.other(pilot_diameter=60))


@cache
def far_motor():
    """Return a design with a longer shaft and a wider circle."""
    return blocks.other(shaft_length=52, bolt_circle=100, flange_size=100)


@cache
def a_plate():
    """Return the plate for it; its motor is turned, for two patterns would meet."""
    return plate(blocks.old(), far_motor(), 15.0)


def test_a_ring_fills_the_bore():
    made = a_ring()
    assert (made.number("adapter.outside"), made.number("adapter.bore")) == (70, 60)
    assert made.number("adapter.wall") == 5
    assert made.number("adapter.length") == blocks.old().number("motor_bore_depth") - 1
    assert made.records["adapter.outside"].fit == "k6"
    assert made.records["adapter.bore"].fit == "H7"
    assert made.operations == ()


def test_every_size_of_an_adapter_has_its_reason():
    for made in (a_ring(), a_plate()):
        for record in made.records.values():
            assert record.rule
            assert record.origin in ("sized", "assumed")
            if record.origin == "sized" and record.key != "adapter.wall":
                assert record.source
                assert record.inputs


def test_a_thin_ring_is_refused_with_its_wall():
    assert "wall would be 2 mm, 2.5 mm" in str(ring(blocks.old(), blocks.other(pilot_diameter=66)))


def test_a_pilot_wider_than_the_bore_takes_no_ring():
    assert "not wider" in str(ring(blocks.old(), blocks.other(pilot_diameter=75)))


def test_a_flange_without_a_seat_beside_the_bore_takes_no_ring():
    small = blocks.other(pilot_diameter=50, flange_size=72, bolt_circle=85)
    assert "seat of 0.5 mm" in str(ring(blocks.old(), small))


def test_worst_case_of_a_ring_by_hand():
    """k6 at 70: +0.002 to +0.021 in H7 0 to +0.030: clearance at most 0.028; coaxiality zone 0.015."""
    chain = a_ring().chain
    assert chain.terms == pytest.approx({"adapter_ring_clearance": 0.014, "adapter_coaxiality": 0.0075})
    assert chain.worst_after - chain.worst_before == pytest.approx(0.014 + 0.0075, abs=1e-9)
    assert chain.p95_before < chain.p95_after < chain.worst_after
    assert chain.angle_after == chain.angle_before


def test_worst_case_of_a_plate_by_hand():
    """h6 at 70: 0 to -0.019 in H7: at most 0.049; coaxiality 0.015; 0.02 over the circle of 100 times the arm.

    The seat of the block tilts over its own circle of 90, no longer over that of the motor.
    """
    made, chain = a_plate(), a_plate().chain
    low, high = plate_layout(far_motor(), room(made))[0].coupling_range(made.length)
    arm = made.length - ((low + high) / 2 + far_motor().number("coupling.length") / 2)
    assert chain.terms == pytest.approx(
        {"adapter_spigot_clearance": 0.0245, "adapter_coaxiality": 0.0075, "adapter_parallelism": 0.02 / 100 * arm},
        abs=1e-6,
    )
    assert chain.angle_after - chain.angle_before == pytest.approx(0.02 / 100 + 0.02 / 90 - 0.02 / 100, abs=1e-9)
    assert chain.worst_before == pytest.approx(worst_case(offsets(terms_of(far_motor()))))
    assert chain.worst_after > chain.worst_before


@pytest.mark.parametrize(("key", "zone"), [("coaxiality", 0.1), ("seat_perpendicularity", 0.1)])
def test_a_plate_stands_on_the_old_block_as_it_was_made(key, zone):
    """Zone over two as offset; over the old circle of 90 times the arm to the old seat as tilt, for that seat."""
    loose = sized(COMPLETE, block={key: zone})
    made, before = plate(loose, far_motor(), 15.0), a_plate()
    low, high = plate_layout(far_motor(), room(before))[0].coupling_range(before.length)
    centre = (low + high) / 2 + far_motor().number("coupling.length") / 2
    more = zone - 0.02
    tilt = more / 90 * (loose.body.length - centre) + more / 72 * centre  # bearing circle 72
    expected = more / 2 if key == "coaxiality" else tilt
    assert made.chain.worst_after - before.chain.worst_after == pytest.approx(expected, abs=1e-9)


@pytest.mark.parametrize(
    ("tables", "told"),
    [
        ({"coupling": {"outer_diameter": 75}}, "coupling.swing_diameter with its clearance asks for a window 79 mm"),
        ({"bearing": {"spanner_diameter": 75}}, "bearing.spanner_diameter with its clearance asks for a window 79 mm"),
    ],
)
def test_what_does_not_go_into_the_old_window_takes_no_plate(tables, told):
    wide = sized(COMPLETE, motor={"shaft_length": 52, "bolt_circle": 100, "flange_size": 100}, **tables)
    assert told in str(plate(blocks.old(), wide, 15.0))


def room(made):
    """Return what block and plate leave along the shaft."""
    old = blocks.old()
    end = old.number("length") - old.number("motor_wall")
    through, opening = old.number("motor_through_bore"), made.number("adapter.opening")
    bearing = old.number("bearing_wall"), old.number("bearing_through_bore")
    return PlateRoom(*bearing, end, old.body.length, made.body.spigot_length, through, opening, 0.05)


def test_a_plate_makes_the_block_longer_by_its_thickness():
    made = a_plate()
    assert made.length == blocks.old().body.length + made.number("adapter.thickness")
    assert made.length_interval[0] <= made.length <= made.length_interval[1]


def test_length_with_a_plate_by_hand():
    """The shallowest grip binds: L <= c + C + S - grip, and c ends where the key still reaches inside the window."""
    new, made = far_motor(), a_plate()
    nominal, _ = plate_layout(new, room(made))
    end = blocks.old().number("length") - blocks.old().number("motor_wall")
    reach = end - new.number("coupling.length") + new.number("coupling.clamp_position")
    key = reach - new.number("coupling.clamp_access_radius")
    grip = new.number("screw.journal_reach") - new.number("coupling.journal_grip_min")
    clear = end - new.number("coupling.length") - new.number("coupling.clearance")
    passes = room(made).opening >= new.number("coupling.swing_diameter") + 2 * new.number("coupling.clearance")
    most = min([key, grip] + ([] if passes else [clear]))
    deep = new.number("coupling.length") + new.number("motor.shaft_length") - new.number("coupling.motor_grip_min")
    assert nominal.limits["c_max"] == pytest.approx(most)
    assert nominal.high == pytest.approx(most + deep)


def test_a_plate_has_room_for_heads_pilot_and_threads():
    made = a_plate()
    thick = made.number("adapter.thickness")
    assert thick >= made.number("adapter.bore_depth") + made.number("adapter.shoulder")
    assert thick >= made.number("adapter.motor_screws_engagement")
    heads = [f for f in made.features if f.kind == "counterbored_hole"]
    assert len(heads) == 4
    assert all(thick - f.counterbore_depth >= made.number("adapter.clamp_least") for f in heads)


def test_holes_of_a_plate_that_meet_are_refused():
    refused = plate(blocks.old(), far_motor())
    assert isinstance(refused, str)
    assert "beside block_screws" in refused or "beside motor_screws" in refused


def test_a_motor_that_is_screwed_on_from_behind_hides_the_screws_of_its_plate():
    tapped = blocks.other(fastening="tapped", bolt_thread="M6", bolt_hole=None, shaft_length=52)
    assert "covers the screws" in str(plate(blocks.old(), tapped))


def test_other_shaft_heights_take_no_adapter():
    old = blocks.old()
    raised = {**old.records, "shaft_height": replace(old.records["shaft_height"], value=70.0)}
    found, why = adapters(old, replace(old, records=raised))
    assert not found
    assert "5 mm apart" in why[0]


def test_another_bearing_takes_no_adapter():
    from tests.sizing.strategies import COMPLETE, sized

    found, why = adapters(blocks.old(), sized(COMPLETE, bearing={"pilot_diameter": 48}))
    assert not found
    assert "bearing side" in why[0]


def test_adapters_come_in_order_of_pain_and_others_with_their_reason():
    found, why = adapters(blocks.old(), far_motor())
    assert [each.pain for each in found] == sorted(each.pain for each in found)
    assert [each.kind for each in found] == ["plate"]
    assert any(text.startswith("no ring") for text in why)


def test_weight_of_a_ring_by_hand():
    whole = math.pi / 4 * (70**2 - 60**2) * 3
    edges = 3 * math.pi * 65 * 0.5**2 / 2  # three edges of 0.5 mm, about
    assert volume_of_adapter(a_ring()) == pytest.approx(whole - edges, abs=2.0)


def test_drawing_data_hold_every_fit_and_zone():
    kinds = {(mark.feature, mark.kind) for mark in a_plate().annotations}
    assert {("outside", "size"), ("bore", "size"), ("bore", "coaxiality"), ("motor_face", "parallelism")} <= kinds
    assert {("block_face", "flatness"), ("block_screws", "position"), ("motor_screws", "thread")} <= kinds
    numbers = [mark.number for mark in a_plate().annotations if mark.number]
    assert numbers == list(range(1, len(numbers) + 1))
    datums = {letter for mark in a_plate().annotations if mark.kind == "datum" for letter in mark.datums}
    assert all(set(mark.datums) <= datums for mark in a_plate().annotations)


def test_a_shallow_bore_is_deepened_for_the_spigot():
    short = blocks.other(pilot_length=1.5)
    made = plate(short, far_motor(), 15.0)
    assert [op.text for op in made.operations] == ["deepen the motor seat 70 H7 to depth 3.5"]
    assert a_plate().operations == ()
    assert made.pain > a_plate().pain
