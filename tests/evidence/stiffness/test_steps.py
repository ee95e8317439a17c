"""What is solved next: only what decides, on the same mesh where it lags behind, else on a finer one."""

from __future__ import annotations

from dataclasses import replace

import numpy as np
from hypothesis import given
from hypothesis import strategies as st

from blockgen.evidence.stiffness.answers import Figures, Raw, Task
from blockgen.evidence.stiffness.loads import Case
from blockgen.evidence.stiffness.result import MeshUsed
from blockgen.evidence.stiffness.run import Found, State, marked, next_step
from blockgen.evidence.stiffness.solver import Step
from blockgen.evidence.stiffness.supports import Support

TASK = Task(
    subject=None,  # nothing is solved here
    kinds=((Support("heads", "", (), 1.0), "free"), (Support("bonded", "", (), 1.0), "free")),
    cases=(Case("thrust", 1.0, (1.0,) * 7),),
    mass=None,
)
BLAME = np.array([0.0] * 30 + [0.05, 0.9, 0.05] + [0.0] * 7)


def raw(compliance, slope, lacking=0.0):
    def figures(share):
        none = np.zeros((1, 2))
        return Figures(compliance * share, np.array([]), none, np.array([[0.0, slope * share]]))

    stresses = ((1.0, 0.0, (0.0, 0.0, 0.0)),)
    return Raw(
        figures(1 - lacking), figures(1.0), np.zeros((1, 4, 3)), stresses, np.zeros((1, 2)),
        {"stiffness": BLAME, "slope": BLAME[::-1]},
    )  # fmt: skip


def state(*found, unknowns=(1000,)):
    return State(tuple(MeshUsed(10, n) for n in unknowns), dict(enumerate(found)))


def test_after_the_first_mesh_only_what_decides_goes_on():
    """The first kind is the softer one and tilts more: the other one decides nothing."""
    step = next_step(TASK, state(Found(raw(2.0, 2.0), 0), Found(raw(1.0, 1.0), 0)), 0.05)
    assert step.kinds == (0,)
    assert step.marked
    assert set(step.marked) <= {8, 31}


def test_both_go_on_where_each_decides_something():
    step = next_step(TASK, state(Found(raw(2.0, 1.0), 0), Found(raw(1.0, 2.0), 0)), 0.05)
    assert step.kinds == (0, 1)


def test_done_where_two_meshes_meet_the_band():
    good = raw(2.0, 2.0, lacking=0.01)
    assert next_step(TASK, state(Found(good, 1, good), Found(raw(1.0, 1.0), 0), unknowns=(1000, 2000)), 0.05) is None


def test_a_kind_that_comes_to_decide_is_first_solved_on_the_present_mesh():
    ahead, behind = Found(raw(2.0, 2.0), 1, raw(2.0, 2.0)), Found(raw(1.9, 1.9, lacking=0.2), 0)
    step = next_step(TASK, state(ahead, behind, unknowns=(1000, 2000)), 0.05)
    assert step == Step((), (1,))


def test_no_mesh_is_made_that_is_too_large():
    wide = raw(2.0, 2.0, lacking=0.3)
    found = state(Found(wide, 1, wide), Found(raw(1.0, 1.0), 0), unknowns=(50_000, 100_000))
    assert next_step(TASK, found, 0.05) is None
    assert next_step(TASK, replace(found, meshes=found.meshes[:1] * 2), 0.05) is not None


@given(st.lists(st.floats(0, 1), min_size=1, max_size=300))
def test_the_worst_elements_are_cut_and_few(blame):
    blame = np.array(blame)
    chosen = set(marked(blame))
    assert 1 <= len(chosen) <= 0.045 * len(blame) + 1
    left = [blame[i] for i in range(len(blame)) if i not in chosen]
    assert min(blame[i] for i in chosen) >= max(left, default=0.0)
