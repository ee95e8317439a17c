"""First frequency from the compliance of the motor seat beside the whole eigenvalue problem of block and motor."""

from __future__ import annotations

import math

import numpy as np
import pytest

pytestmark = pytest.mark.slow
pytest.importorskip("ngsolve")


def test_first_frequency_is_near_the_full_answer():
    from blockgen.evidence.stiffness.frequencies import frequencies, motor_mass
    from blockgen.evidence.stiffness.mesh import COARSE, mesh_of
    from blockgen.evidence.stiffness.solve import Bench
    from blockgen.evidence.stiffness.subject import subject_of
    from blockgen.evidence.stiffness.supports import TIED, supports_of
    from blockgen.geometry.analysis import analysis_shape
    from blockgen.pipeline import design
    from tests.examples import STEPPER
    from tests.outside.modal import lowest

    plan = design(STEPPER).plan
    shape = analysis_shape(plan)
    subject = subject_of(plan, shape.brep, shape.faces)
    bench, mass = Bench(subject, mesh_of(subject, COARSE)), motor_mass(plan)
    bonded = supports_of(plan, subject)[1]
    quick = frequencies(bench.respond(bonded, "free").motor_flange[:, 1:], mass)[0]
    beds = [(bench.system.area_form(bonded.faces), TIED)]
    squares = lowest(bench.system, subject.density * 1e-12, 2, beds=beds, added=[(bench.seats[1], mass)])
    full = math.sqrt(squares[0]) / (2 * math.pi)
    assert np.isfinite(full)
    assert quick == pytest.approx(full, rel=0.05)
    assert quick > full  # the block's own mass pulls it down
