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
    from blockgen.evidence.stiffness.mesh import LEVELS, mesh_of

    return [mesh_of(subject, level) for level in LEVELS[:2]]


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
    assert off[0] < 0.02
    assert off[1] < 0.003


def test_the_same_mesh_again(meshes, subject):
    from blockgen.evidence.stiffness.mesh import LEVELS, mesh_of

    again = mesh_of(subject, LEVELS[0])
    assert [v.point for v in again.vertices] == [v.point for v in meshes[0].vertices]


def test_a_mesh_that_fails_prints_nothing(subject, capfd):
    from blockgen.errors import KernelError
    from blockgen.evidence.stiffness.mesh import Level, mesh_of

    with pytest.raises(KernelError, match="cannot be meshed"):
        mesh_of(subject, Level(1 / 5, 0.2, 1.0, 0.5))
    assert capfd.readouterr() == ("", "")


def test_second_mesh_is_clearly_finer(meshes):
    """Two meshes that are nearly alike would make the band of an answer a matter of chance."""
    unknowns = [ngsolve.VectorH1(mesh, order=2).ndof for mesh in meshes]
    assert unknowns[1] > 1.5 * unknowns[0]
