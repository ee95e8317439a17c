"""The solvers in processes of their own: one task after the other, and what happens when one ends."""

from __future__ import annotations

import pytest

from blockgen.errors import MachineError
from blockgen.evidence.stiffness.parallel import two_processes
from blockgen.evidence.stiffness.run import task_of
from blockgen.evidence.stiffness.solver import Step
from tests.examples import STEPPER

pytestmark = pytest.mark.slow
pytest.importorskip("ngsolve")


@pytest.fixture(scope="module")
def task():
    from blockgen.geometry.analysis import analysis_shape
    from blockgen.pipeline import design

    plan = design(STEPPER).plan
    shape = analysis_shape(plan)
    return task_of(plan, shape.brep, shape.faces)


def test_the_same_task_again_in_the_same_processes_gives_the_same(task):
    found = []
    with two_processes() as pair:
        for _ in range(2):
            pair.give(task)
            used, raws = pair.step(Step((), (0, 2)))
            found.append((used, [(raw.plain.compliance, raw.mended.slopes.tolist()) for raw in raws.values()]))
    assert found[0] == found[1]


def test_a_process_that_ends_is_told(task):
    with two_processes() as pair:
        for process in pair._processes:
            process.kill()
            process.wait()
        with pytest.raises(MachineError, match="has ended"):
            _asked(pair, task)


def _asked(pair, task):
    pair.give(task)
    pair.step(Step((), (0,)))
