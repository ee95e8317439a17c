from dataclasses import replace

import pytest

from blockgen.checks.finding import Finding
from blockgen.console import explain_page
from blockgen.console.plain import lines
from blockgen.errors import InputError
from blockgen.plan import Body, Feature, Plan
from blockgen.record import Input, Ledger, Record


@pytest.fixture
def plan():
    ledger = Ledger([Record("motor.shaft_length", 30.0, "mm", "given", "given in the spec", {}, "a.toml", line=7)])
    ledger.decide("grip", 14.0, "mm", "1 x shaft", (), "common practice", origin="assumed")
    ledger.decide("low", 85.0, "mm", "shaft length + grip + 41", ("motor.shaft_length", "grip"))
    inputs = {key: ledger[key].as_input() for key in ("low", "grip")}
    ledger.enter(Record("length", 86.0, "mm", "sized", "low + 1", inputs, upper=0.1, lower=-0.1))
    body = Body(86.0, 100.0, 100.0, 0.0, 0.5)
    thread = Feature(
        "motor_thread_1", "tapped_hole", "motor_threads", "motor_seat", (86.0, 32.0, 97.0), (-1.0, 0.0, 0.0), 5.0, 19.5,
        False, call_out="M6-6H depth 14", keys={"thread_depth": "grip", "gone": "not_there"},
    )  # fmt: skip
    return Plan(ledger.frozen(), ("length",), body, (thread,), (), (), (), (), {}, (), (), 2700.0)


FINDINGS = (
    Finding(
        "motor_grip_depth", "Depth of the motor shaft in its hub", 15.5, 14.0, "mm", 0.0968, "pass", "holds",
        {"grip": Input(14.0, "mm", "assumed", "grip"), "torque": Input(7.0, "N*m", "given")}, "coupling data",
    ),
)  # fmt: skip


def test_a_check_tells_value_limit_margin_verdict_and_inputs(plan):
    assert list(lines(explain_page.page(plan, FINDINGS, "motor_grip_depth"), 80)) == [
        "motor_grip_depth: Depth of the motor shaft in its hub [pass]",
        "|  value: 15.5 mm",
        "|  limit: 14 mm",
        "|  margin: 10 %",
        "|  says: holds",
        "|  source: coupling data",
        "|- grip = 14 mm [assumed]",
        "|     rule: 1 x shaft",
        "|     source: common practice",
        "`- torque = 7 N\u00b7m [given]",
    ]
    document = explain_page.document(plan, FINDINGS, "motor_grip_depth")
    assert (document["derivation"], document["feature"]) == (None, None)
    assert document["check"]["margin"] == 0.0968
    assert document["check"]["inputs"]["grip"]["derivation"]["rule"] == "1 x shaft"
    assert document["check"]["inputs"]["torque"]["derivation"] is None


def test_a_feature_tells_its_call_out_and_where_its_sizes_come_from(plan):
    assert list(lines(explain_page.page(plan, FINDINGS, "motor_thread_1"), 80)) == [
        "motor_thread_1: tapped hole",
        "|  call-out: M6-6H depth 14",
        "|  mouth: x, y, z = 86, 32, 97 mm on motor_seat",
        "|  size: diameter 5 mm",
        "|  depth: 19.5 mm",
        "|  group: motor_threads",
        "`- thread depth: grip = 14 mm [assumed]",
        "      rule: 1 x shaft",
        "      source: common practice",
    ]
    feature = explain_page.document(plan, FINDINGS, "motor_thread_1")["feature"]
    assert feature["call_out"] == "M6-6H depth 14"
    assert {name: node["value"] for name, node in feature["derivations"].items()} == {"thread_depth": 14.0}


def test_one_name_of_two_things_tells_both(plan):
    both = (replace(FINDINGS[0], id="grip"),)
    text = list(lines(explain_page.page(plan, both, "grip"), 80))
    assert text[0] == "grip = 14 mm [assumed]"
    assert "grip: Depth of the motor shaft in its hub [pass]" in text


def test_a_preset_is_told_once_and_then_named(plan):
    note = "preset servo-80: invented, check it (representative)"
    records = [
        Record(f"motor.{key}", 1.0, "mm", "preset", "taken from preset servo-80", {}, note) for key in ("one", "two")
    ]
    ledger = Ledger(records)
    ledger.decide("sum", 2.0, "mm", "motor.one + motor.two", ("motor.one", "motor.two"))
    text = list(lines(explain_page.page(replace(plan, records=ledger.frozen()), (), "sum"), 80))
    assert text[3:] == [
        "|- motor.one = 1 mm [preset]",
        f"|     source: {note}",
        "`- motor.two = 1 mm [preset]",
        "      source: preset servo-80 (see above)",
    ]


def test_the_tree_goes_back_to_what_was_given(plan):
    assert list(lines(explain_page.page(plan, FINDINGS, "length"), 80)) == [
        "length = 86 mm \u00b10.1 [sized]",
        "|  rule: low + 1",
        "|  numbers: 85 + 1",
        "|- low = 85 mm [sized]",
        "|  |  rule: shaft length + grip + 41",
        "|  |  numbers: 30 + 14 + 41",
        "|  |- motor.shaft_length = 30 mm [given]",
        "|  |     source: the spec, line 7",
        "|  `- grip = 14 mm [assumed]",
        "|        rule: 1 x shaft",
        "|        source: common practice",
        "`- grip = 14 mm [assumed] (see above)",
    ]


def test_the_document_nests_the_same_tree(plan):
    document = explain_page.document(plan, FINDINGS, "length")
    low = document["derivation"]["inputs"]["low"]
    assert low["derivation"]["inputs"]["motor.shaft_length"]["derivation"]["line"] == 7


def test_all_keys_checks_and_features_are_listed(plan):
    text = "\n".join(lines(explain_page.list_page(plan, FINDINGS), 80))
    assert all(name in text for name in (*plan.records, "motor_grip_depth", "motor_thread_1", "M6-6H depth 14"))
    document = explain_page.list_document(plan, FINDINGS)
    assert document["checks"] == {"motor_grip_depth": "pass"}
    assert document["features"] == {"motor_thread_1": "M6-6H depth 14"}
    assert document["keys"]["grip"] == {"value": 14.0, "unit": "mm", "origin": "assumed"}


@pytest.mark.parametrize(
    ("key", "near"),
    [("lenght", "length"), ("shaft_length", "motor.shaft_length"), ("motor_thread_2", "motor_thread_1")],
)
def test_an_unknown_key_names_the_nearest(plan, key, near):
    with pytest.raises(InputError, match=f'"{key}"\n.*\n.*did you mean {near}'):
        explain_page.page(plan, FINDINGS, key)


def test_a_ring_of_references_ends(plan):
    a = Record("a", 1.0, "mm", "sized", "b", {"b": Record("b", 1.0, "mm", "sized", "a").as_input()})
    b = Record("b", 1.0, "mm", "sized", "a", {"a": a.as_input()})
    ring = Plan({"a": a, "b": b}, ("a",), plan.body, (), (), (), (), (), {}, (), (), 2700.0)
    assert list(lines(explain_page.page(ring, (), "a"), 80))[-1] == "   `- a = 1 mm [sized] (see above)"
    assert (
        explain_page.document(ring, (), "a")["derivation"]["inputs"]["b"]["derivation"]["inputs"]["a"]["derivation"]
        is None
    )
