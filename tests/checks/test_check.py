"""All checks of a plan together."""

import copy

import pytest

from blockgen.checks import check
from tests.sizing.strategies import REQUIRED, sized

PLANS = {
    "complete": {},
    "across": {"block": {"window_axis": "y"}},
    "below": {"base": {"screw_from": "below"}},
    "tapped": {"motor": {"bolt_hole": None, "bolt_thread": "M6", "fastening": "tapped"}},
    "narrow": {"block": {"width": 60}},
}


@pytest.mark.parametrize("way", PLANS)
def test_findings_are_well_formed(way):
    findings = check(sized(**PLANS[way]))
    assert len({f.id for f in findings}) == len(findings)
    for found in findings:
        assert found.title
        assert found.explanation
        assert found.source
        assert found.verdict in {"pass", "warn", "fail", "not_assessed"}
        if found.margin is not None:
            assert (found.margin >= 0) == (found.verdict == "pass"), found.id
        if found.verdict == "not_assessed":
            assert found.value is None


@pytest.mark.parametrize("way", PLANS)
def test_inputs_of_findings_are_records(way):
    plan = sized(**PLANS[way])
    for found in check(plan):
        assert set(found.inputs) <= set(plan.records)


def test_a_complete_spec_fails_nothing():
    assert not [f for f in check(sized()) if f.verdict == "fail"]


def test_the_required_keys_fail_and_warn_of_nothing_avoidable():
    found = {f.id: f.verdict for f in check(sized(REQUIRED))}
    assert "fail" not in found.values()
    assert found["coupling_swing"] == "pass"


def test_no_load_is_assumed():
    found = {f.id: f.verdict for f in check(sized(REQUIRED))}
    assert found["base_slip"] == found["coupling_rating"] == found["stack_on_seat"] == "not_assessed"


def test_a_check_never_changes_the_plan():
    plan = sized()
    before = copy.deepcopy(plan)
    check(plan)
    assert plan == before


def test_the_same_plan_gives_the_same_findings():
    plan = sized()
    assert check(plan) == check(plan)
