"""The whole way on one block: balance, envelope, bands, supports in the right order, the same on every run."""

from __future__ import annotations

import json
import math
import subprocess
import sys

import pytest

from blockgen.evidence.stiffness.envelope import all_shares, greatest_slope, judged, least_stiffness, lowest_frequency
from blockgen.evidence.stiffness.loads import cases_of
from tests.evidence.stiffness.blocks import stepper, stepper_text

pytestmark = pytest.mark.slow
pytest.importorskip("ngsolve")


@pytest.fixture(scope="module")
def made():
    return stepper()


def of(made, support, flanges):
    return next(v for v in made.stiffness.variants if (v.support, v.flanges) == (support, flanges))


def test_all_supports_with_free_and_rigid_flanges(made):
    kinds = [(v.support, v.flanges) for v in made.stiffness.variants]
    assert kinds == [(s, f) for s in ("heads", "bonded", "bed") for f in ("free", "rigid")]


def test_shares_balance_the_loads(made):
    cases = {case.title: case.factors for case in cases_of(made.plan)}
    for _, found in all_shares(made.stiffness):
        thrust, fx, fy, fz, *_ = cases[found.title]
        sums = [sum(share[axis] for share in found.shares) for axis in range(3)]
        assert sums == pytest.approx([thrust + fx, fy, fz], abs=0.5)


def test_more_held_is_stiffer_and_a_rigid_flange_too(made):
    for support in ("heads", "bonded", "bed"):
        assert of(made, support, "rigid").axial_stiffness.value > of(made, support, "free").axial_stiffness.value
    for flanges in ("free", "rigid"):
        bonded = of(made, "bonded", flanges).axial_stiffness.value
        assert bonded > of(made, "heads", flanges).axial_stiffness.value
        assert bonded > of(made, "bed", flanges).axial_stiffness.value


def test_frequencies_rise_and_the_held_block_is_higher(made):
    for variant in made.stiffness.variants:
        values = [f.value for f in variant.frequencies]
        assert values == sorted(values)
        assert len(values) == 3
    assert of(made, "bonded", "free").frequencies[0].value > of(made, "heads", "free").frequencies[0].value


def test_the_ends_are_the_worst_of_the_table(made):
    variants = made.stiffness.variants
    assert least_stiffness(variants).value == min(v.axial_stiffness.low for v in variants)
    assert greatest_slope(variants).value == max(c.slope.most for v in variants for c in v.cases)
    assert lowest_frequency(variants).value == min(v.frequencies[0].low for v in variants)
    assert made.stiffness.band == pytest.approx(max(end.band for end in judged(variants)), rel=1e-3)


def test_thrust_tilts_in_its_own_plane(made):
    """The block is alike on both sides of y = 0: thrust alone lifts or lowers, never turns sideways."""
    for variant in made.stiffness.variants:
        for case in variant.cases:
            if case.thrust and "torque" not in case.title:
                assert abs(case.offset.y) < 0.02 * abs(case.offset.z)


def test_elastic_terms_lengthen_the_chain(made):
    terms = {term.id: term for term in made.alignment.terms}
    slope = greatest_slope(made.stiffness.variants)
    assert math.hypot(*terms["elastic_slope"].scatter.vector) == pytest.approx(slope.value, rel=1e-6)
    assert terms["elastic_slope"].offset_factor == 0
    assert terms["elastic_offset"].angle_factor == 0


def test_checks_use_the_evidence(made):
    found = {finding.id: finding for finding in made.findings}
    assert {"axial_stiffness", "elastic_tilt", "elastic_shift", "first_frequency", "block_stress"} <= set(found)
    assert not {"block_stiffness", "motor_frequency"} & set(found)
    drive = 1 / (1 / 60 + 1 / 80)
    value = least_stiffness(made.stiffness.variants).value / drive
    assert found["axial_stiffness"].value == pytest.approx(value, abs=1e-3)
    assert "finite elements" in found["base_slip"].explanation


def test_slip_is_that_of_the_worst_screw(made):
    found = {finding.id: finding for finding in made.findings}["base_slip"]
    friction, sure = made.plan.number("base.friction"), made.plan.number("base_preload_least")
    safeties = [
        friction * (sure - max(z, 0)) / math.hypot(x, y)
        for _, case in all_shares(made.stiffness) for x, y, z in case.shares
    ]  # fmt: skip
    assert found.value == pytest.approx(min(safeties), abs=1e-3)


SCRIPT = """
import sys
from blockgen.pipeline import design
from blockgen.spec.load import parse_spec
found = design(parse_spec(sys.stdin.read()), stiffness=True, band=1.0).stiffness
print(repr(found))
"""


def test_another_process_finds_the_same(made):
    run = subprocess.run(
        [sys.executable, "-c", SCRIPT], input=stepper_text(), capture_output=True, text=True, check=True, timeout=300,
        env={"PYTHONHASHSEED": "7", "PATH": "", **_path()},
    )  # fmt: skip
    assert run.stdout == f"{made.stiffness!r}\n"


def _path():
    import os

    return {key: os.environ[key] for key in ("PYTHONPATH", "HOME", "LD_LIBRARY_PATH") if key in os.environ}


def test_summary_has_it_and_is_plain_data(made):
    from blockgen.outputs.stiffness_rows import with_stiffness

    document = json.loads(json.dumps(with_stiffness({}, made.stiffness)))["stiffness"]
    assert document["units"].startswith("stiffness N/um")
    assert len(document["variants"]) == 6
