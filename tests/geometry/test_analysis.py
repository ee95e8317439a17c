"""The solid for finite elements: every face named, rings and footprints of the right area, nothing small left."""

from __future__ import annotations

import math

import pytest

from blockgen.geometry.analysis import analysis_shape, plain_plan
from blockgen.pipeline import design
from blockgen.sizing.flange_joint import flange_face
from tests.examples import EXAMPLES

pytestmark = pytest.mark.slow


@pytest.fixture(scope="module", params=EXAMPLES, ids=lambda p: p.stem)
def made(request):
    plan = design(request.param).plan
    return plan, analysis_shape(plan)


def areas(shape, tmp_path):
    """Return the area of each face by its name, as another reader of the text finds it."""
    occ = pytest.importorskip("netgen.occ")
    path = tmp_path / "solid.brep"
    path.write_bytes(shape.brep)
    faces = list(occ.OCCGeometry(str(path)).shape.faces)
    assert len(faces) == len(shape.faces)
    found: dict[str, float] = {}
    for name, face in zip(shape.faces, faces, strict=True):
        found[name] = found.get(name, 0.0) + face.mass
    return found


def test_every_face_has_a_name(made):
    _, shape = made
    assert all(shape.faces)


def test_rings_and_footprints_have_their_areas(made, tmp_path):
    plan, shape = made
    found = areas(shape, tmp_path)
    hole, head = plan.number("base_screw_hole"), plan.number("base_bearing_diameter")
    for index in range(1, int(plan.number("base_screw_count")) + 1):
        assert found[f"ring_{index}"] == pytest.approx(math.pi * (head**2 - hole**2) / 4, rel=1e-6)
    for end in ("bearing", "motor"):
        assert found[f"{end}_flange"] == pytest.approx(flange_face(plan.records, end).area, rel=1e-6)


def test_base_and_its_rings_are_the_face_under_the_block(made, tmp_path):
    plan, shape = made
    whole = sum(area for name, area in areas(shape, tmp_path).items() if name == "base" or name.startswith("ring_"))
    assert 0 < whole < plan.body.length * plan.body.width


def test_threads_and_mouths_are_left_out(made):
    plan, shape = made
    assert any(f.thread for f in plan.features)
    assert not any("thread" in name or name.endswith("mouth_chamfer") or "edge_break" in name for name in shape.faces)
    assert all(f.profile[0].start == 0 for f in plain_plan(plan).features if f.profile)


def test_same_plan_same_text(made):
    plan, shape = made
    assert analysis_shape(plan) == shape
