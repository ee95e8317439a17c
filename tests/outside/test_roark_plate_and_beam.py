"""A clamped circular plate and a beam held at both ends.

W. C. Young, R. G. Budynas, Roark's Formulas for Stress and Strain, 7th ed., 2002: table 11.2 case 10b, clamped circular
plate under uniform pressure, y_c = -q a^4/(64 D), D = E t^3/(12 (1 - nu^2)); table 8.1 case 1d, both ends fixed, load
in the middle, y = W l^3/(192 E I). Written down from memory, the book is not free. Shear adds, by Timoshenko and
Mindlin with k = 5/6: q a^2/(4 k G t) and W l/(4 k G A).
"""

from __future__ import annotations

import numpy as np
import pytest

pytestmark = pytest.mark.slow
pytest.importorskip("ngsolve")

MODULUS, POISSON = 200_000.0, 0.3
SHEAR = MODULUS / 2 / (1 + POISSON)


def deflected(system, loads):
    """Return the displacement as a function under nodal forces."""
    import ngsolve

    field = ngsolve.GridFunction(system.space)
    field.vec.FV().NumPy()[:] = system.solve(loads[:, None])[:, 0]
    return field


def test_clamped_plate():
    import ngsolve
    from netgen.occ import Cylinder, Z

    from blockgen.evidence.stiffness.rigid import linear_form
    from blockgen.evidence.stiffness.supports import TIED
    from blockgen.evidence.stiffness.system import System
    from tests.outside.solids import meshed

    radius, thick, pressure = 100.0, 8.0, 1.0
    shape = Cylinder((0, 0, 0), Z, r=radius, h=thick)
    for face in shape.faces:
        face.name = "rim"
    shape.faces.Max(Z).name, shape.faces.Min(Z).name = "top", "under"
    system = System(meshed(shape, 5), MODULUS, POISSON)
    system.hold([(system.area_form(("rim",)), TIED)])
    down = ngsolve.CF((0, 0, -pressure)) * system.space.TestFunction() * ngsolve.ds("top")
    field = deflected(system, linear_form(system.space, down))
    rigidity = MODULUS * thick**3 / (12 * (1 - POISSON**2))
    expected = pressure * (radius**4 / (64 * rigidity) + radius**2 / (4 * 5 / 6 * SHEAR * thick))
    assert -field(system.space.mesh(0, 0, thick / 2))[2] == pytest.approx(expected, rel=0.015)


def test_beam_held_at_both_ends():
    from netgen.occ import Box, Glue

    from blockgen.evidence.stiffness.rigid import patch_of
    from blockgen.evidence.stiffness.supports import TIED
    from blockgen.evidence.stiffness.system import System
    from tests.outside.solids import meshed

    length, width, height = 300.0, 20.0, 20.0
    halves = [Box((x, -width / 2, -height / 2), (x + length / 2, width / 2, height / 2)) for x in (0, length / 2)]
    shape = Glue(halves)
    for face in shape.faces:
        x = face.center.x
        face.name = "ends" if x < 1 or x > length - 1 else "middle" if abs(x - length / 2) < 1e-6 else "sides"
    system = System(meshed(shape, 10), MODULUS, 0.0)  # else the held ends stiffen more than a beam's
    system.hold([(system.area_form(("ends",)), TIED)])
    middle = patch_of(system.space, ("middle",), (length / 2, 0.0, 0.0))
    moved = middle.motion(system.solve(middle.spread(np.eye(6)[:, 2:3])))
    inertia, area = width * height**3 / 12, width * height
    expected = length**3 / (192 * MODULUS * inertia) + length / (4 * 5 / 6 * MODULUS / 2 * area)
    assert moved[2, 0] == pytest.approx(expected, rel=0.015)
