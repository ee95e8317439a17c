import pytest

from blockgen.console import explain_page
from blockgen.console.plain import lines
from blockgen.errors import InputError
from blockgen.plan import Body, Plan
from blockgen.record import Ledger, Record


@pytest.fixture
def plan():
    ledger = Ledger([Record("motor.shaft_length", 30.0, "mm", "given", "given in the spec", {}, "a.toml", line=7)])
    ledger.decide("grip", 14.0, "mm", "1 x shaft", (), "common practice", origin="assumed")
    ledger.decide("low", 85.0, "mm", "shaft length + grip + 41", ("motor.shaft_length", "grip"))
    inputs = {key: ledger[key].as_input() for key in ("low", "grip")}
    ledger.enter(Record("length", 86.0, "mm", "sized", "low + 1", inputs, upper=0.1, lower=-0.1))
    body = Body(86.0, 100.0, 100.0, 0.0, 0.5)
    return Plan(ledger.frozen(), ("length",), body, (), (), (), (), (), {}, (), (), 2700.0)


def test_the_tree_goes_back_to_what_was_given(plan):
    assert list(lines(explain_page.key_page(plan, "length"), 80)) == [
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
    document = explain_page.key_document(plan, "length")
    low = document["derivation"]["inputs"]["low"]
    assert low["derivation"]["inputs"]["motor.shaft_length"]["derivation"]["line"] == 7


def test_all_keys_are_listed(plan):
    text = "\n".join(lines(explain_page.keys_page(plan), 80))
    assert all(key in text for key in plan.records)
    assert explain_page.keys_document(plan)["keys"]["grip"] == {"value": 14.0, "unit": "mm", "origin": "assumed"}


@pytest.mark.parametrize(("key", "near"), [("lenght", "length"), ("shaft_length", "motor.shaft_length")])
def test_an_unknown_key_names_the_nearest(plan, key, near):
    with pytest.raises(InputError, match=f'"{key}"\n.*\n.*did you mean {near}'):
        explain_page.key_page(plan, key)


def test_a_ring_of_references_ends(plan):
    a = Record("a", 1.0, "mm", "sized", "b", {"b": Record("b", 1.0, "mm", "sized", "a").as_input()})
    b = Record("b", 1.0, "mm", "sized", "a", {"a": a.as_input()})
    ring = Plan({"a": a, "b": b}, ("a",), plan.body, (), (), (), (), (), {}, (), (), 2700.0)
    assert list(lines(explain_page.key_page(ring, "a"), 80))[-1] == "   `- a = 1 mm [sized] (see above)"
    assert (
        explain_page.key_document(ring, "a")["derivation"]["inputs"]["b"]["derivation"]["inputs"]["a"]["derivation"]
        is None
    )
