"""Checks of the alignment: what is compared with what, what a miss weighs, what is left open."""

import math

import pytest

from blockgen.alignment.chain import align
from blockgen.alignment.heat import expansions_of
from blockgen.checks import check
from blockgen.checks.shafts_in_line import shafts_in_line
from tests.sizing.strategies import sized

ALLOWED = {"allow_parallel": 0.2, "allow_angular": 1.0, "allow_axial": 0.5, "radial_stiffness": 0.35}
WARM = {"assembly_temperature": 20, "block_temperature": 50, "nut_side_temperature": 30}


def found(coupling=None, **changes):
    plan = sized(coupling=ALLOWED if coupling is None else coupling, **changes)
    alignment = align(plan, expansions_of(plan))
    return alignment, {finding.id: finding for finding in shafts_in_line(plan, alignment)}


@pytest.mark.parametrize(
    ("name", "allowance", "unit", "scale"),
    [("offset", "allow_parallel", "mm", 1.0), ("angle", "allow_angular", "deg", 180 / math.pi)],
)
def test_the_percentile_is_held_against_the_allowance(name, allowance, unit, scale):
    alignment, findings = found()
    finding = findings[f"shaft_{name}"]
    assert finding.value == pytest.approx(getattr(alignment, name).p95 * scale, abs=1e-4)
    assert (finding.limit, finding.unit) == (ALLOWED[allowance], unit)
    assert finding.verdict == "pass"
    assert "95 %" in finding.title


@pytest.mark.parametrize("name", ["offset", "angle"])
def test_more_than_the_allowance_fails(name):
    tight = ALLOWED | {"offset": {"allow_parallel": 0.02}, "angle": {"allow_angular": 0.01}}[name]
    finding = found(tight)[1][f"shaft_{name}"]
    assert finding.verdict == "fail"
    assert finding.margin < 0


def test_limits_of_the_machine_win_over_the_coupling_s():
    finding = found(limits={"parallel": 0.1})[1]["shaft_offset"]
    assert finding.limit == 0.1
    assert {"limits.parallel", "coupling.allow_parallel"} <= set(finding.inputs)


def test_another_probability_is_another_percentile():
    alignment, findings = found(limits={"probability": 0.9973})
    assert findings["shaft_offset"].value == pytest.approx(alignment.offset.p9973, abs=1e-4)
    assert "99.73 %" in findings["shaft_offset"].title


@pytest.mark.parametrize("name", ["parallel", "angular", "axial"])
def test_a_missing_allowance_is_named_and_nothing_is_passed(name):
    _, findings = found({key: value for key, value in ALLOWED.items() if key != f"allow_{name}"})
    waiting = [f for f in findings.values() if f"coupling.allow_{name}" in f.explanation]
    assert {f.verdict for f in waiting} == {"not_assessed"}
    wanted = {"parallel": "shaft_offset", "angular": "shaft_angle"}.get(name)
    assert {f.id for f in waiting} == {"coupling_use_likely", "coupling_use_worst"} | ({wanted} - {None})


def test_use_of_the_coupling_by_hand():
    alignment, findings = found()
    likely = alignment.offset.p95 / 0.2 + math.degrees(alignment.angle.p95) / 1.0 + alignment.axial_judged / 0.5
    worst = alignment.offset.worst / 0.2 + math.degrees(alignment.angle.worst) / 1.0 + alignment.axial_worst / 0.5
    assert findings["coupling_use_likely"].value == pytest.approx(likely, abs=1e-4)
    assert findings["coupling_use_worst"].value == pytest.approx(worst, abs=1e-4)
    assert findings["coupling_use_likely"].limit == 0.8
    assert findings["coupling_use_worst"].limit == 1.0


def test_only_the_likely_use_fails_the_worst_case_warns():
    _, findings = found(ALLOWED | {"allow_parallel": 0.09})
    assert findings["coupling_use_worst"].verdict == "warn"
    assert findings["coupling_use_likely"].verdict == "fail"
    assert "estimate" in findings["coupling_use_likely"].source
    assert "estimate" not in findings["coupling_use_worst"].source


def test_heat_is_told_and_has_no_limit():
    alignment, findings = found(thermal=WARM, screw={"nut_distance_min": 200})
    told = findings["heat"]
    assert (told.verdict, told.limit) == ("pass", None)
    assert f"{alignment.heat.height_error:+.4f} mm" in told.explanation
    assert "over 200 mm to the nut" in told.explanation
    assert "needs screw.nut_distance_min" in found(thermal=WARM)[1]["heat"].explanation


def test_heat_without_temperatures_is_not_assessed():
    assert found()[1]["heat"].verdict == "not_assessed"


def test_ball_life_by_hand():
    alignment, findings = found()
    force = 350 * alignment.offset.p95  # 0.35 N/um
    assert f"ratio {(3000 / (3000 + force)) ** 3:.3f}" in findings["ball_life"].explanation
    assert f"{force:.1f} N" in findings["ball_life"].explanation


@pytest.mark.parametrize("changes", [{"screw": {"thrust": None}}, {"coupling": {"allow_parallel": 0.2}}])
def test_ball_life_needs_thrust_and_stiffness(changes):
    assert found(**changes)[1]["ball_life"].verdict == "not_assessed"


def test_without_evidence_the_shafts_are_not_judged():
    plan = sized(coupling=ALLOWED)
    with_it = {finding.id for finding in check(plan, align(plan))}
    without = {finding.id for finding in check(plan)}
    assert with_it - without == {f.id for f in shafts_in_line(plan, align(plan))}
    assert without < with_it
