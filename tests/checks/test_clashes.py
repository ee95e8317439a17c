"""Findings from what the solids showed."""

from dataclasses import replace

import pytest

from blockgen.checks import check
from blockgen.checks.clashes import clashes
from blockgen.checks.formulas import formula_of
from blockgen.evidence.clearances import Access, Clearance, Clearances, Pair
from tests.sizing.strategies import sized

SEATED = Pair("block", "motor", "seated", 0.0, 0.0, None, "flange on its seat")
CLASH = Pair("block", "coupling", "clash", 0.0, 812.4)
THREAD = Pair("block", "motor_screw_1", "clash", 0.0, 130.0, 100.0, "thread in motor_thread_1")
TOUCH = Pair("coupling", "motor_screw_1", "clash", 0.0, 0.0)
PLATE = Pair("base_plate", "motor", "clash", 0.0, 8000.0)
KEY = Access("base", "base_screw_1", "hexagon key 8, long arm in the socket", True, 90.0, 90.0, 360.0, 60.0)
BLOCKED = Access("motor", "motor_screw_2", "hexagon key 5", False, 20.0, 70.0, 0.0, 60.0, ("motor",))
TURNS = Access("motor", "motor_screw_3", "hexagon key 5", False, 70.0, 70.0, 45.0, 60.0, ("motor",))
HUB = Access("coupling", "journal hub", "hexagon key", True, 30.0, 30.0, directions=((75.0, 105.0),))


@pytest.fixture(scope="module")
def plan():
    return sized()


def found(plan, **parts):
    base = {"pairs": (SEATED,), "named": (), "access": (), "apart": 3}
    return {finding.id: finding for finding in clashes(plan, Clearances(**{**base, **parts}))}


def test_without_a_clash_it_passes_and_says_how_much_was_measured(plan):
    clean = found(plan)["clash_free"]
    assert clean.verdict == "pass"
    assert clean.explanation == "1 pairs measured, 3 further apart"


def test_a_clash_fails_with_names_and_volume(plan):
    finding = found(plan, pairs=(SEATED, CLASH, THREAD))["clash_free"]
    assert finding.verdict == "fail"
    assert finding.value == pytest.approx(842.4)
    assert finding.unit == "mm3"
    assert "block and coupling by 812.4 mm3" in finding.explanation
    assert "block and motor_screw_1 by 30 mm3 beyond the planned overlap of 100 mm3" in finding.explanation
    assert "practice.clash_volume" in finding.inputs


def test_mere_contact_warns(plan):
    finding = found(plan, pairs=(TOUCH,))["clash_free"]
    assert finding.verdict == "warn"
    assert "coupling and motor_screw_1 touch" in finding.explanation


def test_the_motor_in_the_base_plate_warns_apart_since_the_plate_may_end(plan):
    low = Clearance("motor_base_plane", "t", -5.0, 1.0, "practice.body_clearance", "motor", "plane")
    findings = found(plan, pairs=(PLATE,), named=(low,))
    assert findings["clash_free"].verdict == "pass"
    assert findings["motor_over_base"].verdict == "warn"
    assert "motor and base_plate clash by 8000 mm3" in findings["motor_over_base"].explanation


def test_the_motor_is_not_told_again_where_its_body_says_the_same(plan):
    free = plan.number("shaft_height") - plan.number("motor.body_size") / 2
    same = Clearance("motor_base_plane", "t", free, 1.0, "practice.body_clearance", "motor", "plane")
    assert "motor_over_base" not in found(plan, named=(same,))
    assert found(plan, named=(replace(same, distance=free - 30),))["motor_over_base"].verdict == "warn"


def test_contacts_that_are_not_made_warn(plan):
    finding = found(plan, not_made=("block and motor (flange on its seat): 0.4 mm apart",))["contacts_made"]
    assert finding.verdict == "warn"
    assert "0.4 mm apart" in finding.explanation


def test_the_least_clearance_is_the_one_with_least_over_what_is_asked(plan):
    named = (
        Clearance("coupling_base", "Coupling to the base plate", 4.0, 2.0, "coupling.clearance", "coupling", "p"),
        Clearance("shaft_ends", "Journal end to motor shaft end", 5.0, 4.5, "coupling.gap_min", "journal", "motor"),
        Clearance("nut_bore", "Nut", 0.1, None, "", "bearing_unit", "block"),
    )
    finding = found(plan, named=named)["least_clearance"]
    assert (finding.value, finding.limit, finding.verdict) == (5.0, 4.5, "pass")
    assert "Journal end" in finding.explanation
    near = replace(named[0], distance=1.5)
    assert found(plan, named=(near, *named[1:]))["least_clearance"].verdict == "warn"


def test_space_is_judged_only_where_another_part_than_the_block_reaches_furthest():
    plan = sized(base={"height_limit": 150, "width_available": 150})
    block = Clearance("height_limit", "t", 10.0, 0.0, "base.height_limit", "block", "limit")
    assert "height_limit" not in found(plan, named=(block,))
    motor = replace(block, first="motor", distance=-3.0)
    finding = found(plan, named=(motor,))["height_limit"]
    assert (finding.value, finding.limit, finding.verdict) == (153.0, 150.0, "warn")
    wide = Clearance("width_available", "t", 4.0, 0.0, "base.width_available", "motor", "limit")
    assert found(plan, named=(wide,))["width_limit"].verdict == "pass"


def test_tools_without_room_warn_and_name_what_is_in_the_way(plan):
    findings = found(plan, access=(KEY, BLOCKED, TURNS, HUB))
    assert findings["key_access_base"].verdict == "pass"
    motor = findings["key_access_motor"]
    assert (motor.value, motor.limit, motor.verdict) == (0.0, 2.0, "warn")
    assert "motor_screw_2: hexagon key 5 gets 20 of 70 mm, motor in the way" in motor.explanation
    assert "motor_screw_3: hexagon key 5 turns 45 of 60 deg, motor in the way" in motor.explanation
    assert findings["key_access_coupling"].explanation == "free from 75 to 105 deg (journal hub)"
    assert "key_access_bearing" not in findings


def test_each_finding_has_formula_source_and_known_inputs(plan):
    low = Clearance("motor_base_plane", "t", -5.0, 1.0, "practice.body_clearance", "motor", "plane")
    near = Clearance("coupling_base", "t", 4.0, 2.0, "coupling.clearance", "coupling", "p")
    findings = found(plan, pairs=(CLASH, PLATE), named=(low, near), access=(KEY, BLOCKED, HUB))
    assert len(findings) >= 6
    for finding in findings.values():
        assert formula_of(finding.id)
        assert finding.source
        assert all(given.ref is None or given.ref in plan.records for given in finding.inputs.values())


def test_a_plan_is_checked_without_them_as_before(plan):
    before = check(plan)
    after = check(plan, None, Clearances((SEATED, CLASH), (), (), 0))
    assert after[: len(before)] == before
    assert [finding.id for finding in after[len(before) :]] == ["clash_free", "contacts_made"]
