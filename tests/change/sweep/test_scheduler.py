"""A sweep on a real cluster of this machine, by processes of their own."""

import csv
import os
import signal
import threading
import time

import pytest

from blockgen.change.sweep.batch import batches
from blockgen.change.sweep.journal import journal_path
from blockgen.change.sweep.scheduler import on_cluster
from blockgen.change.sweep.sweep import Wishes, prepare, sweep
from blockgen.errors import MachineError
from tests.sizing.strategies import COMPLETE, toml

VARY = ("base.shaft_height=60:75:0.25", "base.screw=M8,M10", "block.bearing_wall=20,24")
COUNT = 61 * 2 * 2


@pytest.fixture
def spec(tmp_path):
    path = tmp_path / "spec.toml"
    path.write_text(toml(COMPLETE), encoding="utf-8")
    return path


@pytest.fixture
def cluster():
    distributed = pytest.importorskip("distributed")
    with distributed.LocalCluster(
        n_workers=2, threads_per_worker=1, processes=True, dashboard_address=None, silence_logs=60
    ) as running:
        yield running


@pytest.mark.slow
def test_a_lost_worker_costs_no_variant_and_none_comes_twice(tmp_path, spec, cluster):
    with cluster.get_client() as client:
        pids = client.run(os.getpid)
    journal, killed = journal_path(tmp_path / "far.csv"), []

    def kill_one():
        for _ in range(1500):
            if journal.exists() and journal.read_bytes().count(b"\n") > 5:
                killed.append(min(pids.values()))
                os.kill(killed[0], signal.SIGKILL)
                return
            time.sleep(0.01)

    killer = threading.Thread(target=kill_one)
    killer.start()
    far = sweep(spec, Wishes(VARY, tmp_path / "far.csv", scheduler=cluster.scheduler_address, plot=False, workers=12))
    killer.join()
    assert killed, "the sweep was over before a worker could be killed"
    with (tmp_path / "far.csv").open(newline="") as file:
        assert [int(row["variant"]) for row in csv.DictReader(file)] == list(range(1, COUNT + 1))
    assert far.count == COUNT
    sweep(spec, Wishes(VARY, tmp_path / "near.csv", plot=False, workers=1))
    assert (tmp_path / "far.csv").read_bytes() == (tmp_path / "near.csv").read_bytes()


@pytest.mark.slow
def test_nobody_at_the_address_is_told(tmp_path, spec, monkeypatch):
    pytest.importorskip("distributed")
    monkeypatch.setattr("blockgen.change.sweep.scheduler._SECONDS", 1)
    with pytest.raises(MachineError, match=r"no scheduler answers at tcp://127\.0\.0\.1:1"):
        sweep(spec, Wishes(VARY, tmp_path / "t.csv", scheduler="tcp://127.0.0.1:1", plot=False))
    with pytest.raises(MachineError, match="no scheduler answers at nonsense://"):
        sweep(spec, Wishes(VARY, tmp_path / "t.csv", scheduler="nonsense://x", plot=False))


@pytest.mark.slow
def test_a_worker_of_another_version_is_told(tmp_path, spec, cluster):
    from dataclasses import replace

    task = prepare(spec, Wishes(VARY, tmp_path / "t.csv"))
    odd = replace(task.job, version="0.0.1")
    with pytest.raises(MachineError, match=r"blockgen 0\.0\.1 asks"):
        list(on_cluster(odd, batches([0, 1], task.points, 1), cluster.scheduler_address))


def test_without_the_package_it_is_told_how_to_install_it(tmp_path, spec, monkeypatch):
    monkeypatch.setitem(__import__("sys").modules, "distributed", None)
    with pytest.raises(MachineError, match=r"pip install .*sweep"):
        sweep(spec, Wishes(VARY, tmp_path / "t.csv", scheduler="tcp://127.0.0.1:1"))
