"""Checks of the screws: each can hold and each can miss."""

from dataclasses import replace

import pytest

from blockgen.checks.joints import joints
from tests.sizing.strategies import sized


def found(plan, name):
    return next(f for f in joints(plan) if f.id == name)


def with_fastener(plan, where, **values):
    rows = tuple(replace(f, **values) if f.where == where else f for f in plan.fasteners)
    return replace(plan, fasteners=rows)


@pytest.mark.parametrize("end", ["base", "bearing", "motor"])
def test_engagement(end):
    plan = sized()
    assert found(plan, f"{end}_engagement").verdict == "pass"
    where = "base" if end == "base" else f"{end}_flange"
    assert found(with_fastener(plan, where, engagement=4.0), f"{end}_engagement").verdict == "fail"


def test_engagement_is_not_assessed_without_a_flange_thickness():
    plan = sized(motor={"flange_thickness": None})
    finding = found(plan, "motor_engagement")
    assert finding.verdict == "not_assessed"
    assert "motor.flange_thickness" in finding.explanation


def test_engagement_in_a_tapped_flange():
    plan = sized(motor={"bolt_hole": None, "bolt_thread": "M6", "fastening": "tapped"})
    assert found(plan, "motor_engagement").verdict == "pass"
    assert found(with_fastener(plan, "motor_flange", engagement=5.0), "motor_engagement").verdict == "warn"


@pytest.mark.parametrize("end", ["bearing", "motor"])
def test_bottoming(end):
    plan = sized()
    assert found(plan, f"{end}_screw_bottoming").verdict == "pass"
    long = with_fastener(plan, f"{end}_flange", engagement=40.0)
    assert found(long, f"{end}_screw_bottoming").verdict == "fail"


@pytest.mark.parametrize("way", ["above", "below"])
def test_base_screws_do_not_bottom(way):
    plan = sized(base={"screw_from": way})
    assert found(plan, "base_screw_bottoming").verdict == "pass"
