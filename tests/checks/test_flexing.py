"""Stress and slip judged by finite elements, on evidence that is made up."""

from __future__ import annotations

from dataclasses import replace

import pytest
from hypothesis import given
from hypothesis import strategies as st

from blockgen.checks import check
from blockgen.evidence.stiffness.estimate import Estimate
from blockgen.evidence.stiffness.result import Across, CaseResult, MeshUsed, Stiffness, Variant
from blockgen.pipeline import design
from blockgen.sizing.base_joint import base_slip, group_slip, slip_of_shares
from blockgen.standards.materials import material, material_names
from tests.examples import STEPPER

PLAN = design(STEPPER).plan
EVEN = ((100.0, 0.0, 0.0),) * 4


def evidence(stress=5.0, shares=EVEN):
    none = Across(1e-4, 0.0, 1e-6)
    case = CaseResult(
        "thrust away", 400.0, none, none, shares, Estimate(stress, 1.0), (1.0, 2.0, 3.0), (0.0, 0.0)
    )  # fmt: skip
    variant = Variant("heads", "held", "free", Estimate(500.0, 5.0), (), (case,), 1000)
    return Stiffness((variant,), (MeshUsed(10, 1000),), 0.05, 0.01, False)


def found(check_id, stiffness):
    return next(f for f in check(PLAN, stiffness=stiffness) if f.id == check_id)


def test_stress_is_held_against_what_may_alternate_for_ever():
    """0.3 of the tensile strength over 2, against the stress at the upper end of its band."""
    finding = found("block_stress", evidence(5.0))
    assert finding.value == pytest.approx(6.0)
    assert finding.limit == pytest.approx(0.3 * PLAN.number("block_tensile_strength") / 2)
    assert finding.verdict == "pass"
    assert finding.margin == pytest.approx(1 - finding.value / finding.limit, abs=1e-3)


def test_too_much_stress_fails_and_says_where():
    finding = found("block_stress", evidence(60.0))
    assert finding.verdict == "fail"
    assert "(1, 2, 3)" in finding.explanation
    assert "tensile strength" in finding.explanation


def test_the_allowed_stress_is_half_of_the_yield_point_at_most_for_every_listed_metal():
    listed = [material(name) for name in material_names()]
    assert len(listed) > 5
    assert all(0.3 * metal.tensile_strength / 2 <= metal.yield_strength / 2 for metal in listed)


def test_one_loaded_screw_lets_go_first_though_the_block_stays():
    """All of the force at one screw of four: it creeps at a quarter of what moves the block."""
    sure, friction = PLAN.number("base_preload_least"), PLAN.number("base.friction")
    shares = ((friction * sure, 0.0, 0.0), *((0.0, 0.0, 0.0),) * 3)
    first, whole = found("base_first_slip", evidence(shares=shares)), found("base_slip", evidence(shares=shares))
    assert first.value == pytest.approx(1.0, rel=1e-3)
    assert first.limit == pytest.approx(1.2)
    assert first.verdict == "warn"
    assert group_slip([shares], friction, sure) == pytest.approx(4.0)
    assert whole.verdict == "pass"


def test_slip_of_the_block_is_no_better_than_that_of_a_rigid_one():
    rigid = found("base_slip", None)
    assert found("base_slip", evidence()).value <= rigid.value
    lifted = tuple((100.0, 0.0, 0.999 * PLAN.number("base_preload_least")) for _ in range(4))
    assert found("base_slip", evidence(shares=lifted)).verdict == "fail"
    assert not any(f.id == "base_first_slip" for f in check(PLAN))


force = st.floats(-500, 500)


@given(st.lists(st.tuples(force, force, force), min_size=1, max_size=8))
def test_the_first_screw_lets_go_no_later_than_all(shares):
    assert slip_of_shares([shares], 0.15, 4000.0) <= group_slip([shares], 0.15, 4000.0) * (1 + 1e-9)


def test_rigid_sharing_keeps_the_balance():
    """Why the figure of a rigid block is a lower bound: its shares add up to the load, and none is above friction."""
    from blockgen.mechanics.slip import shear_shares

    places = ((0.0, 0.0), (40.0, 0.0), (40.0, 30.0), (0.0, 30.0))
    shares = shear_shares(places, (300.0, -50.0), 4.0)
    assert [sum(s[axis] for s in shares) for axis in (0, 1)] == pytest.approx([300.0, -50.0])
    turn = sum((x - 20) * fy - (y - 15) * fx for (x, y), (fx, fy) in zip(places, shares, strict=True))
    assert turn == pytest.approx(4000.0)


def test_evidence_is_frozen():
    with pytest.raises(AttributeError):
        evidence().band = 1.0
    assert replace(evidence(), band=0.02).band == 0.02


def test_base_slip_of_a_rigid_block_is_unchanged():
    places = tuple((float(x), float(y)) for x, y in PLAN.records["base_pattern"].value)
    value = base_slip(PLAN.records, places, PLAN.number("base_preload_least"))
    assert found("base_slip", None).value == pytest.approx(value, abs=1e-3)
