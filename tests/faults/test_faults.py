"""A few real builds under faults; ``python -m tests.faults.run`` tries as many as one likes."""

import os

import pytest

from tests.faults.run import full_disk, kills, together

pytestmark = [pytest.mark.slow, pytest.mark.skipif(not hasattr(os, "fork"), reason="needs a system that can fork")]


def in_a_fresh_process(function, *arguments):
    """Run in a process of its own: the kernel's threads of this one would not live on in a fork."""
    import multiprocessing

    with multiprocessing.get_context("spawn").Pool(1) as pool:
        return pool.apply(function, arguments)


def test_killed_at_random_moments_a_whole_set_stands(tmp_path):
    outcomes, faults = in_a_fresh_process(kills, tmp_path, 3, 8)
    assert faults == []
    assert outcomes.total() == 8


def test_two_builds_of_one_job_at_once_leave_a_whole_set(tmp_path):
    looks, faults = in_a_fresh_process(together, tmp_path, 1)
    assert faults == []
    assert looks["reader looked"] > 5


def test_a_full_disk_leaves_the_old_set(tmp_path):
    faults = in_a_fresh_process(full_disk, tmp_path, 12)
    if faults is None:
        pytest.skip("no small disk can be mounted here")
    assert faults == []
