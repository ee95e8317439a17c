"""Meshes: none of the elements inside out, volume near the solid's, the same again, and no word on the terminal."""

from __future__ import annotations

import numpy as np
import pytest

from tests.examples import SERVO

pytestmark = pytest.mark.slow
ngsolve = pytest.importorskip("ngsolve")


@pytest.fixture(scope="module")
def subject():
    from blockgen.evidence.stiffness.subject import subject_of
    from blockgen.geometry.analysis import analysis_shape
    from blockgen.pipeline import design

    plan = design(SERVO).plan
    shape = analysis_shape(plan)
    return subject_of(plan, shape.brep, shape.faces)


@pytest.fixture(scope="module")
def meshes(subject):
    """The coarse mesh, and the same with every fifteenth element cut."""
    from blockgen.evidence.stiffness.mesh import COARSE, mesh_of, refine

    coarse, fine = (mesh_of(subject, COARSE) for _ in range(2))
    refine(fine, range(0, fine.ne, 15))
    return [coarse, fine]


def test_no_element_is_inside_out(meshes):
    for mesh in meshes:
        points = mesh.MapToAllElements(ngsolve.IntegrationRule(ngsolve.TET, 7), ngsolve.VOL)
        assert np.min(ngsolve.Det(ngsolve.specialcf.JacobianMatrix(3))(points)) > 0


def test_volume_nears_the_solids(meshes, subject, tmp_path):
    from netgen.occ import OCCGeometry

    path = tmp_path / "solid.brep"
    path.write_bytes(subject.brep)
    exact = OCCGeometry(str(path)).shape.mass
    off = [abs(ngsolve.Integrate(ngsolve.CF(1), mesh) / exact - 1) for mesh in meshes]
    assert off[0] < 0.004
    assert off[1] < 0.004


def test_the_same_mesh_again(meshes, subject):
    from blockgen.evidence.stiffness.mesh import COARSE, mesh_of, refine

    again = mesh_of(subject, COARSE)
    assert [v.point for v in again.vertices] == [v.point for v in meshes[0].vertices]
    refine(again, range(0, again.ne, 15))
    assert [v.point for v in again.vertices] == [v.point for v in meshes[1].vertices]


def test_a_cut_keeps_the_corners_and_their_numbers(meshes):
    before, after = ([v.point for v in mesh.vertices] for mesh in meshes)
    assert after[: len(before)] == before
    assert len(after) > 1.3 * len(before)


def test_edges_are_bent_as_far_as_they_may_be(subject, monkeypatch):
    """Straight edges on the rounds would leave 3 % too much volume; those of bad elements alone, some 0.5 %."""
    from blockgen.evidence.stiffness import mesh as module

    eased = module.mesh_of(subject, module.COARSE)
    monkeypatch.setattr(module, "_EASINGS", 0)
    straight = module.mesh_of(subject, module.COARSE)
    volumes = [ngsolve.Integrate(ngsolve.CF(1), mesh) for mesh in (eased, straight)]
    assert volumes[0] < volumes[1]


def test_a_mesh_that_fails_prints_nothing(subject, capfd):
    from blockgen.errors import KernelError
    from blockgen.evidence.stiffness.mesh import Level, mesh_of

    with pytest.raises(KernelError, match="cannot be meshed"):
        mesh_of(subject, Level(1 / 5, 0.2, 1.0))
    assert capfd.readouterr() == ("", "")
