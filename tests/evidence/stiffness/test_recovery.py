"""What a mesh lacks by its own estimate, beside what it really lacks."""

from __future__ import annotations

import numpy as np
import pytest

from blockgen.evidence.stiffness.recovery import compliance_root


def energy(stress):
    part = compliance_root(200.0, 0.25) @ np.array(stress, dtype=float)
    return float(part @ part)


def test_energy_of_plain_stresses():
    """Pull: s^2/E. Shear: t^2/G with G = E/2(1 + nu). Even pressure: 3 p^2 (1 - 2 nu)/E."""
    assert energy([10, 0, 0, 0, 0, 0]) == pytest.approx(100 / 200)
    assert energy([0, 0, 0, 0, 10, 0]) == pytest.approx(100 / 80)
    assert energy([10, 10, 10, 0, 0, 0]) == pytest.approx(3 * 100 * 0.5 / 200)


def beam(maxh):
    """Return tip compliance as the mesh gives it and what it lacks by its own estimate, of a short cantilever."""
    from netgen.occ import Box, Pnt

    from blockgen.evidence.stiffness.recovery import Recovery
    from blockgen.evidence.stiffness.rigid import patch_of
    from blockgen.evidence.stiffness.stress import Probe
    from blockgen.evidence.stiffness.system import System
    from tests.outside.solids import meshed

    ngsolve = pytest.importorskip("ngsolve")
    bar = Box(Pnt(0, 0, 0), Pnt(60, 20, 20))
    for face in bar.faces:
        face.name = "root" if face.center.x < 1 else "tip" if face.center.x > 59 else "side"
    mesh = meshed(bar, maxh)
    system = System(mesh, 70_000.0, 0.33)
    system.hold([(system.area_form(("root",)), 1e8)])
    load = patch_of(system.space, ("tip",), (60.0, 10.0, 10.0)).spread(np.eye(6)[:, 2:3])
    found = system.solve(load)
    rule = ngsolve.IntegrationRule(ngsolve.TET, 2)
    probe = Probe(rule, mesh.MapToAllElements(rule, ngsolve.VOL), np.zeros((mesh.ne * len(rule), 3)), np.empty((0, 3)))
    recovery = Recovery(mesh, probe, 70_000.0, 0.33)
    stress = probe.stresses(system, found)
    gaps = recovery.gaps(stress, recovery.smooth(stress))
    return float(load[:, 0] @ found[:, 0]), float(np.einsum("epl,epl->", gaps, gaps))


@pytest.mark.slow
def test_estimate_is_near_what_is_lacking():
    pytest.importorskip("ngsolve")
    exact = sum(beam(4.0))
    for maxh in (20.0, 12.0):
        plain, lacking = beam(maxh)
        assert plain < exact
        assert 0.4 < lacking / (exact - plain) < 1.8
        assert abs(plain + lacking - exact) < exact - plain
