"""Designs that hold show no clash; each spoilt part is found by name, with the volume that geometry gives."""

import math
from dataclasses import replace
from types import SimpleNamespace

import pytest

from tests.geometry.assemblies import WAYS, assembly, of_plan, pair_of, with_shape, with_sizes

pytestmark = pytest.mark.slow


@pytest.mark.parametrize("way", WAYS)
def test_a_sound_design_shows_no_clash_and_every_planned_contact(way):
    from blockgen.geometry.interference import clearances

    made = assembly(way)
    found = clearances(made.plan, made.block, made.parts)
    assert found.clashes == ()
    assert found.not_made == ()
    assert [a for a in found.access if not a.free] == []
    engaged = [pair for pair in found.pairs if pair.kind == "engaged"]
    assert engaged
    assert all(pair.volume == pytest.approx(pair.expected, rel=1e-6) for pair in engaged)
    held = {(part.id, other) for part in made.parts for other in part.held_in}
    assert {frozenset(pair) for pair in held} == {frozenset((p.first, p.second)) for p in engaged}


def test_every_pair_is_either_measured_or_apart():
    from blockgen.geometry.interference import clearances

    made = assembly()
    found, count = clearances(made.plan, made.block, made.parts), len(made.parts)
    assert len(found.pairs) + found.apart == count * (count - 1) // 2


def test_a_coupling_too_large_cuts_into_both_sides_of_the_window():
    from blockgen.geometry.stand_ins.shapes import rod

    made = assembly()
    half, radius, length = made.plan.number("window_width") / 2, 40.0, 12.0
    made = SimpleNamespace(
        plan=made.plan,
        parts=with_shape(made.parts, "coupling", rod((-length / 2, 0, 0), (1, 0, 0), radius, length)),
    )
    pair = pair_of(made, "block", "coupling")
    angle = 2 * math.acos(half / radius)
    segments = 2 * radius**2 / 2 * (angle - math.sin(angle))
    assert pair.kind == "clash"
    assert (pair.first, pair.second) == ("block", "coupling")
    assert pair.volume == pytest.approx(segments * length, rel=1e-3)


def test_a_screw_too_long_goes_through_the_bottom_of_its_hole():
    from blockgen.geometry.stand_ins.fasteners import screw_solid
    from blockgen.mechanics.overlap import overlap_volume
    from blockgen.standards.screws import cap_screw

    made = assembly()
    longer = made.plan.number("bearing_screw_length") + 12.0
    deep = longer - made.plan.number("bearing.flange_thickness")
    spoilt = with_shape(made.parts, "bearing_screw_2", screw_solid(cap_screw("M6"), longer))
    pair = pair_of(SimpleNamespace(plan=made.plan, parts=spoilt), "block", "bearing_screw_2")
    hole = made.plan.feature("bearing_thread_2")
    pieces = [(p.start, p.start_radius, p.end, p.end_radius) for p in hole.profile if p.end > p.start]
    bottom = max(p.end for p in hole.profile)
    assert bottom < deep < made.plan.number("bearing_wall")
    inside = overlap_volume(((0.0, 3.0, deep, 3.0),), pieces)
    assert pair.kind == "clash"
    assert pair.volume == pytest.approx(inside + math.pi * 9 * (deep - bottom), rel=1e-3)
    assert pair.beyond == pytest.approx(pair.volume - pair.expected)
    assert pair_of(made, "block", "bearing_screw_2").kind == "engaged"


def test_a_screw_that_reaches_past_the_full_thread_clashes_before_it_meets_the_bottom():
    from blockgen.geometry.stand_ins.fasteners import screw_solid
    from blockgen.standards.screws import cap_screw

    made = assembly()
    full = made.plan.number("bearing_thread_depth") + made.plan.number("bearing.flange_thickness")
    for over, kind in ((0.0, "engaged"), (1.5, "clash")):
        spoilt = with_shape(made.parts, "bearing_screw_1", screw_solid(cap_screw("M6"), full + over))
        plan = with_sizes(made.plan, bearing_screw_length=full + over)
        assert pair_of(SimpleNamespace(plan=plan, parts=spoilt), "block", "bearing_screw_1").kind == kind


def test_a_nut_that_reaches_into_the_coupling():
    from blockgen.geometry.stand_ins.parts import parts
    from blockgen.geometry.stand_ins.sizes import stand_in_sizes

    made = assembly()
    into = 2.0  # before the pocket of the clamp screw
    plan = with_sizes(made.plan, bearing__nut_reach=made.plan.number("coupling_position") + into)
    pair = pair_of(SimpleNamespace(plan=plan, parts=parts(plan, made.block)), "bearing_unit", "coupling")
    seat = stand_in_sizes(plan).number("screw.seat_diameter") / 2
    assert pair.kind == "clash"
    assert pair.volume == pytest.approx(math.pi * (15.0**2 - seat**2) * into, rel=1e-3)


def test_a_motor_below_the_base_is_found_in_the_plate():
    from blockgen.geometry.stand_ins.shapes import box

    made = assembly()
    low = made.plan.number("shaft_height") + 5.0
    spoilt = with_shape(made.parts, "motor", box((0.0, -40.0, -low), (100.0, 40.0, 40.0)))
    pair = pair_of(SimpleNamespace(plan=made.plan, parts=spoilt), "base_plate", "motor")
    assert pair.kind == "clash"
    assert pair.volume == pytest.approx(20.0 * 80.0 * 5.0, rel=1e-6)  # the plate goes 20 mm on past the block


def test_a_counterbore_too_shallow_is_in_the_way_of_head_and_key():
    from blockgen.geometry.block import build_block
    from blockgen.geometry.interference import clearances
    from blockgen.standards.screws import cap_screw

    made = assembly()
    less = 15.0
    block = build_block(_shallower(made.plan, less))
    parts = with_shape(made.parts, "block", block.shape)
    found = clearances(made.plan, block, parts)
    worst = {pair.second: pair for pair in found.clashes}["base_screw_1"]
    screw, hole = cap_screw("M10"), made.plan.feature("base_screw_1").diameter
    assert worst.first == "block"
    # Head and the washer's shadow: the head lies wholly in the material that the counterbore should have taken.
    ring = math.pi / 4 * (screw.head_diameter**2 - hole**2) * screw.head_height
    assert worst.volume == pytest.approx(ring, rel=1e-3)
    blocked = [a for a in found.access if a.where == "base" and not a.free]
    assert {a.part for a in blocked} == {f"base_screw_{n}" for n in range(1, 5)}
    assert {way for a in blocked for way in a.in_way} == {"block"}


def _shallower(plan, less):
    """Return a plan whose base screws have counterbores that are not as deep."""

    def piece(p, deep):
        ends = {name: getattr(p, name) - (less if getattr(p, name) == deep else 0.0) for name in ("start", "end")}
        return replace(p, **ends)

    def feature(f):
        if f.group != "base_screws":
            return f
        profile = tuple(piece(p, f.counterbore_depth) for p in f.profile)
        return replace(f, profile=profile, counterbore_depth=f.counterbore_depth - less)

    return replace(plan, features=tuple(feature(f) for f in plan.features))


def test_parts_that_only_touch_without_being_planned_clash_with_no_volume():
    from blockgen.geometry.interference import measured_pair
    from blockgen.geometry.planned_contacts import Contact
    from blockgen.geometry.solid_part import solid_part
    from blockgen.geometry.stand_ins.shapes import box

    one, other = solid_part("a", box((0, 0, 0), (1, 1, 1))), solid_part("b", box((1, 0, 0), (2, 1, 1)))
    assert measured_pair(one, other).kind == "clash"
    assert measured_pair(one, other).volume == 0.0
    assert measured_pair(one, other, Contact("glued")).kind == "seated"


def test_a_seat_that_is_left_open_is_told_with_the_thread_that_is_lost():
    from OCP.gp import gp_Trsf, gp_Vec

    from blockgen.geometry.interference import clearances

    made = assembly()
    off = gp_Trsf()
    off.SetTranslation(gp_Vec(0.4, 0.0, 0.0))
    parts = tuple(
        replace(p, location=off.Multiplied(p.location)) if p.id == "motor_screw_1" else p for p in made.parts
    )  # fmt: skip
    found = clearances(made.plan, made.block, parts)
    assert len(found.not_made) == 2
    assert found.not_made[0].startswith("block and motor_screw_1 (thread in motor_thread_1)")
    # 0.3 mm lies between shank and hole, which is nearer than head and flange.
    assert found.not_made[1] == "motor and motor_screw_1 (head on the flange): 0.3 mm apart"


def test_an_assumed_screw_length_is_not_held_against_the_design():
    from tests.sizing.strategies import REQUIRED, sized

    made = of_plan(sized(REQUIRED))
    assert pair_of(made, "block", "bearing_screw_1").kind == "engaged"
