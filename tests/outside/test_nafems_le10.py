"""Thick plate under pressure, NAFEMS benchmark LE10.

NAFEMS, The Standard NAFEMS Benchmarks, TNSB Rev. 3, 1990, test LE10: quarter of an elliptic plate with an elliptic
hole, 0.6 m thick, E = 210 GPa, nu = 0.3, pressure of 1 MPa on the upper face; outer rim held in its plane and, at half
height, upwards. Target: direct stress yy at D (2, 0, 0.6) = -5.38 MPa. Written down from memory: the publication is not
free; the target stands in many solvers' own verification manuals.
"""

from __future__ import annotations

import pytest

pytestmark = pytest.mark.slow
pytest.importorskip("ngsolve")

MILLIMETRES = 1000.0


def ellipse(along, across, height):
    """Return an elliptic cylinder about z, mm."""
    from netgen.occ import Axes, WorkPlane, X, Z

    face = WorkPlane(Axes((0, 0, 0), n=Z, h=X)).Ellipse(along * MILLIMETRES, across * MILLIMETRES).Face()
    return face.Extrude(height * MILLIMETRES)


def plate():
    """Return the quarter plate with its faces named and the rim split at half height."""
    from netgen.occ import Box, Glue

    ring = ellipse(3.25, 2.75, 0.6) - ellipse(2.0, 1.0, 0.6)
    quarter = ring * Box((0, 0, 0), (4000, 4000, 600))
    middle = Box((0, 0, 0), (4000, 4000, 300))
    solid = Glue([quarter * middle, quarter - middle])
    for face in solid.faces:
        x, y, z = face.center.x, face.center.y, face.center.z
        if abs(x) < 1e-3:
            face.name = "on_x0"
        elif abs(y) < 1e-3:
            face.name = "on_y0"
        elif abs(z - 600) < 1e-3:
            face.name = "top"
        elif abs(z) < 1e-3 or abs(z - 300) < 1e-3:
            face.name = "level"
        else:
            face.name = "rim" if (x / 3250) ** 2 + (y / 2750) ** 2 > 0.75 else "hole"
    for face in solid.faces:
        if face.name == "rim":
            for edge in face.edges:
                if abs(edge.center.z - 300) < 1e-3 and edge.center.x > 1 and edge.center.y > 1:
                    edge.name = "half_height"
    return solid


def test_stress_at_the_edge_of_the_hole():
    import ngsolve

    from blockgen.evidence.stiffness.rigid import linear_form
    from blockgen.evidence.stiffness.system import System
    from tests.outside.solids import meshed

    mesh = meshed(plate(), 120)
    system = System(mesh, 210_000, 0.3, dirichletx="on_x0|rim", dirichlety="on_y0|rim", dirichletz_bbnd="half_height")
    pressure = ngsolve.CF((0, 0, -1)) * system.space.TestFunction() * ngsolve.ds("top")
    system.hold([])
    displacement = system.solve(linear_form(system.space, pressure)[:, None])
    field = ngsolve.GridFunction(system.space)
    field.vec.FV().NumPy()[:] = displacement[:, 0]
    found = system.stress(field)[1, 1](mesh(2000 + 1e-3, 1e-3, 600 - 1e-3))
    assert found == pytest.approx(-5.38, rel=0.01)
