"""The whole way on one block: balance, envelope, bands, supports in the right order, the same on every run."""

from __future__ import annotations

import json
import math
import subprocess
import sys

import pytest

from blockgen.evidence.stiffness.envelope import (
    all_shares,
    greatest_slope,
    greatest_stress,
    judged,
    least_stiffness,
    lowest_frequency,
)
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
    assert made.stiffness.band == pytest.approx(max(end.band for end in judged(variants).values()), rel=1e-3)


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


def test_first_slip_is_that_of_the_worst_screw(made):
    found = {finding.id: finding for finding in made.findings}
    friction, sure = made.plan.number("base.friction"), made.plan.number("base_preload_least")
    safeties = [
        friction * (sure - max(z, 0)) / math.hypot(x, y)
        for _, case in all_shares(made.stiffness) for x, y, z in case.shares
    ]  # fmt: skip
    assert found["base_first_slip"].value == pytest.approx(min(safeties), abs=1e-3)
    assert found["base_first_slip"].value <= found["base_slip"].value


def test_what_decides_is_solved_on_the_finer_mesh(made):
    meshes = [mesh.unknowns for mesh in made.stiffness.meshes]
    assert len(meshes) == 2
    assert 1.2 * meshes[0] < meshes[1] < 3 * meshes[0]
    deciding = {id(end.variant) for end in judged(made.stiffness.variants).values()}
    for variant in made.stiffness.variants:
        assert variant.unknowns == meshes[-1 if id(variant) in deciding else 0]
    assert of(made, "heads", "rigid").axial_stiffness.share > 2 * made.stiffness.band


def test_stress_is_judged(made):
    found = {finding.id: finding for finding in made.findings}["block_stress"]
    assert found.value == pytest.approx(greatest_stress(made.stiffness.variants).value, rel=1e-3)
    assert found.verdict == "pass"


def test_field_is_a_closed_outside_with_the_greatest_slope(made):
    field = made.stiffness.field
    end = greatest_slope(made.stiffness.variants)
    assert (field.case, field.support, field.flanges) == (end.case.title, end.variant.title, end.variant.flanges)
    assert 500 < len(field.triangles) <= 8000
    sides = [tuple(sorted(t[i] for i in pair)) for t in field.triangles for pair in ((0, 1), (1, 2), (2, 0))]
    assert {sides.count(side) for side in set(sides[:60])} == {2}
    assert {i for triangle in field.triangles for i in triangle} == set(range(len(field.points)))
    assert len(field.points) == len(field.displacement) == len(field.stress)
    assert field.stress_away == end.case.stress.value


def test_field_moves_as_the_seat_does(made):
    """Thrust away pulls at the bearing seat: its corners go where the thrust goes, by about thrust over stiffness."""
    field = made.stiffness.field
    variant = next(v for v in made.stiffness.variants if v.title == field.support and v.flanges == field.flanges)
    thrust = next(c.thrust for c in variant.cases if c.title == field.case)
    seat = [move[0] for (x, _, _), move in zip(field.points, field.displacement, strict=True) if x == 0]
    assert max(seat, key=abs) * thrust > 0
    assert 0.2 < max(map(abs, seat)) / (abs(thrust) / variant.axial_stiffness.value / 1000) < 3


def test_picture_of_the_field(made):
    from blockgen.outputs.stiffness_picture import stiffness_png

    assert stiffness_png(made.stiffness.field).startswith(b"\x89PNG")


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
    assert document["field"]["triangles"] == len(made.stiffness.field.triangles)
    assert "displacement" not in document["field"]
