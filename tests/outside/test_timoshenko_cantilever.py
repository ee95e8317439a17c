"""A cantilever and its reactions against Timoshenko's beam.

S. P. Timoshenko, Strength of Materials, part I: deflection of a cantilever with shear, w = F l^3/(3 E I) + F l/(k G A);
k = 10 (1 + nu)/(12 + 11 nu) for a rectangle (G. R. Cowper, J. Appl. Mech. 33, 1966, 335-340). Both from memory.
"""

from __future__ import annotations

import numpy as np
import pytest

pytestmark = pytest.mark.slow
pytest.importorskip("ngsolve")

MODULUS, POISSON = 70_000.0, 0.0  # without it the held end face gives a beam and nothing else
LENGTH, WIDTH, HEIGHT = 100.0, 20.0, 15.0


@pytest.fixture(scope="module")
def system():
    from blockgen.evidence.stiffness.supports import TIED
    from blockgen.evidence.stiffness.system import System
    from tests.outside.solids import bar, meshed

    found = System(meshed(bar(LENGTH, WIDTH, HEIGHT), 8), MODULUS, POISSON)
    found.hold([(found.area_form(("start",)), TIED)])
    return found


@pytest.fixture(scope="module")
def answers(system):
    """Unit wrenches on the end face: displacements, patches of both ends."""
    from blockgen.evidence.stiffness.rigid import patch_of

    end = patch_of(system.space, ("end",), (LENGTH, 0.0, 0.0))
    start = patch_of(system.space, ("start",), (0.0, 0.0, 0.0))
    return system.solve(end.spread(np.eye(6))), end, start


def test_deflection(answers):
    displacement, end, _ = answers
    inertia, area, shear = WIDTH * HEIGHT**3 / 12, WIDTH * HEIGHT, MODULUS / 2 / (1 + POISSON)
    factor = 10 * (1 + POISSON) / (12 + 11 * POISSON)
    beam = LENGTH**3 / (3 * MODULUS * inertia) + LENGTH / (factor * shear * area)
    assert end.motion(displacement)[2, 2] == pytest.approx(beam, rel=0.01)


def test_stretch_and_slope(answers):
    displacement, end, _ = answers
    motion = end.motion(displacement)
    assert motion[0, 0] == pytest.approx(LENGTH / (MODULUS * WIDTH * HEIGHT), rel=0.01)
    assert -motion[4, 2] == pytest.approx(LENGTH**2 / (2 * MODULUS * WIDTH * HEIGHT**3 / 12), rel=0.01)


def test_reactions_balance_the_loads(answers):
    from blockgen.evidence.stiffness.rigid import moved
    from blockgen.evidence.stiffness.supports import TIED

    displacement, _, start = answers
    whole = TIED * start.columns.T @ displacement
    there = np.eye(6)
    moments = there[3:] + np.cross((LENGTH, 0.0, 0.0), there[:3].T).T
    assert whole[:3] == pytest.approx(there[:3], abs=1e-6)
    assert whole[3:] == pytest.approx(moments, abs=1e-4)
    assert moved(np.eye(6), (0.0, 0.0, 0.0), (0.0, 0.0, 0.0)) == pytest.approx(np.eye(6))


def test_work_is_the_same_both_ways(answers):
    displacement, end, _ = answers
    compliance = end.motion(displacement)
    assert compliance == pytest.approx(compliance.T, rel=1e-6, abs=1e-12)


def test_a_free_body_has_six_rigid_motions(system):
    """Rigid motions cost no work, any other does: smallest eigenvalues of the stiffness of a free bar."""
    import ngsolve

    from blockgen.evidence.stiffness.rigid import rigid_motions
    from blockgen.evidence.stiffness.system import System

    free = System(system.space.mesh, MODULUS, POISSON)
    free.hold([])
    matrix = free.stiffness_matrix
    field = ngsolve.GridFunction(free.space)
    scale = max(abs(matrix.AsVector().FV().NumPy()))
    for motion in rigid_motions((50.0, 0.0, 0.0)):
        field.Set(motion)
        product = field.vec.CreateVector()
        product.data = matrix * field.vec
        assert max(abs(product.FV().NumPy())) < 1e-9 * scale * max(abs(field.vec.FV().NumPy()))
    field.Set(ngsolve.CF((ngsolve.x, 0, 0)))
    product.data = matrix * field.vec
    strained = MODULUS * (1 - POISSON) / ((1 + POISSON) * (1 - 2 * POISSON)) * LENGTH * WIDTH * HEIGHT
    assert ngsolve.InnerProduct(product, field.vec) == pytest.approx(strained, rel=1e-9)
