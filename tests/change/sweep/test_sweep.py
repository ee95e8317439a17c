import contextlib
import csv
import os
import signal
import subprocess
import sys
import time

import pytest

from blockgen.change.sweep import sweep as module
from blockgen.change.sweep.journal import journal_path
from blockgen.change.sweep.sweep import Wishes, sweep
from blockgen.checks import check
from blockgen.errors import InputError, MachineError
from blockgen.pipeline import design
from blockgen.sizing.size import size
from blockgen.spec.load import load_spec, parse_spec
from tests.sizing.strategies import COMPLETE, toml

VARY = (
    "base.shaft_height=30,60,65,70,72",
    "block.bearing_wall=18,24,60",
    "base.screw=M8,M10",
    "motor.shaft_length=40,58",
)
SMALL = ("base.shaft_height=60,65,70", "base.screw=M8,M10")


@pytest.fixture
def spec(tmp_path):
    path = tmp_path / "spec.toml"
    path.write_text(toml(COMPLETE), encoding="utf-8")
    return path


def wishes(tmp_path, vary=SMALL, **more):
    return Wishes(vary, more.pop("out", tmp_path / "t.csv"), plot=False, workers=1, **more)


def rows(path):
    with path.open(newline="", encoding="utf-8") as file:
        return list(csv.DictReader(file))


def test_every_variant_stands_in_the_table_with_what_its_own_spec_gives(tmp_path, spec):
    found = sweep(spec, wishes(tmp_path, statistics=True))
    table = rows(tmp_path / "t.csv")
    assert [int(row["variant"]) for row in table] == list(range(1, 7))
    for row in table:
        tables = COMPLETE | {"base": {"shaft_height": float(row["base.shaft_height [mm]"]), "screw": row["base.screw"]}}
        made = design(parse_spec(toml(tables)))
        assert float(row["length [mm]"]) == made.plan.number("length")
        assert float(row["offset_p95 [mm]"]) == round(made.alignment.offset.p95, 6)
        assert float(row["offset_worst [mm]"]) == round(made.alignment.offset.worst, 6)
        verdicts = [finding.verdict for finding in made.findings]
        counts = [int(row[name]) for name in ("failed", "warned", "open")]
        assert counts == [verdicts.count(v) for v in ("fail", "warn", "not_assessed")]
    assert sum(found.statuses.values()) == found.count == 6
    assert not journal_path(tmp_path / "t.csv").exists()


def test_what_cannot_be_is_a_row_with_its_reason(tmp_path, spec):
    vary = ("motor.shaft_diameter=19,71", "coupling.length=60,30", "motor.shaft_length=40,12")
    sweep(spec, wishes(tmp_path, vary))
    table = rows(tmp_path / "t.csv")
    assert len(table) == 8
    by_status = {row["status"]: row["reason"] for row in table}
    assert "shaft passes through the pilot" in by_status["invalid"] or "two grips" in by_status["invalid"]
    assert "missing" in by_status["infeasible"]


def test_an_error_in_one_variant_stops_no_other(tmp_path, spec, monkeypatch):
    from blockgen.change.sweep import batch as sweep_batch

    def odd(variant, *, statistics):
        if variant.records["base.screw"].value == "M10":
            raise ZeroDivisionError("odd")
        return true(variant, statistics=statistics)

    true = sweep_batch.outcome
    monkeypatch.setattr(sweep_batch, "outcome", odd)
    sweep(spec, wishes(tmp_path))
    assert [row["status"] for row in rows(tmp_path / "t.csv")] == ["feasible", "error"] * 3
    assert rows(tmp_path / "t.csv")[1]["reason"] == "ZeroDivisionError: odd"


def test_the_front_is_marked_and_holds_no_failure(tmp_path, spec):
    found = sweep(spec, wishes(tmp_path, VARY))
    table = rows(tmp_path / "t.csv")
    marked = [row for row in table if row["front"] == "yes"]
    assert [int(row["variant"]) for row in marked] == [best.number for best in found.front]
    assert {row["status"] for row in marked} == {"feasible"}
    for row in marked:
        assert not [other["variant"] for other in table if other["status"] == "feasible" and beats(other, row)]


def beats(one, other):
    names = ("mass [kg]", "stiffness_estimate [N/um]", "offset_p95_estimate [mm]", "screws")
    a, b = ([float(row[name]) * (-1 if "stiff" in name else 1) for name in names] for row in (one, other))
    return a != b and all(x <= y for x, y in zip(a, b, strict=True))


def test_a_brief_plan_gives_the_same_findings(spec):
    whole, brief = (size(load_spec(spec), brief=brief) for brief in (False, True))
    assert check(whole) == check(brief)
    assert (whole.body, whole.features, whole.fasteners) == (brief.body, brief.features, brief.fasteners)


class Killed(BaseException):
    """Ends a run as nothing else does."""


@pytest.mark.parametrize("after", [0, 1, 17, 50])
def test_a_run_that_was_stopped_goes_on_and_gives_the_same_bytes(tmp_path, spec, monkeypatch, after):
    sweep(spec, wishes(tmp_path, VARY, out=tmp_path / "whole.csv"))
    count = []

    def some(job, batch):
        if len(count) >= after:
            raise Killed
        found = true(job, batch)
        count.extend(found)
        return found

    true = module.here.__globals__["run_batch"]
    monkeypatch.setattr("blockgen.change.sweep.pool.run_batch", some)
    with pytest.raises(Killed):
        sweep(spec, wishes(tmp_path, VARY))
    monkeypatch.setattr("blockgen.change.sweep.pool.run_batch", true)
    assert not (tmp_path / "t.csv").exists()
    found = sweep(spec, wishes(tmp_path, VARY))
    assert found.resumed == len(count)
    assert (tmp_path / "t.csv").read_bytes() == (tmp_path / "whole.csv").read_bytes()


def test_a_changed_spec_starts_again(tmp_path, spec, monkeypatch):
    with monkeypatch.context() as broken:
        broken.setattr(module, "write_table", lambda *_: (_ for _ in ()).throw(MachineError("full")))
        with pytest.raises(MachineError, match="full"):
            sweep(spec, wishes(tmp_path))
    spec.write_text(toml(COMPLETE | {"limits": {"slip_safety": 2}}), encoding="utf-8")
    assert sweep(spec, wishes(tmp_path)).resumed == 0


def test_a_wrong_spec_or_value_is_told_before_anything_is_written(tmp_path, spec):
    for vary in (("base.nothing=1",), ()):
        with pytest.raises(InputError):
            sweep(spec, wishes(tmp_path, vary))
    with pytest.raises(InputError, match="1 or more"):
        sweep(spec, wishes(tmp_path, sample=0))
    assert [path.name for path in tmp_path.iterdir()] == ["spec.toml"]


@pytest.mark.slow
def test_two_processes_give_the_bytes_of_one(tmp_path, spec, monkeypatch):
    monkeypatch.setattr(module, "_WORTH_PROCESSES", 0)
    sweep(spec, wishes(tmp_path, VARY))
    sweep(spec, Wishes(VARY, tmp_path / "two.csv", plot=False, workers=2))
    assert (tmp_path / "two.csv").read_bytes() == (tmp_path / "t.csv").read_bytes()


def blockgen(*arguments):
    return [sys.executable, "-m", "blockgen", "sweep", *map(str, arguments)]


LONG = ("--vary", "base.shaft_height=60:80:0.1", "--vary", "base.screw=M8,M10", "--no-plot", "--quiet")


@pytest.mark.slow
@pytest.mark.parametrize("sign", [signal.SIGKILL, signal.SIGINT])
@pytest.mark.skipif(os.name == "nt", reason="signals of Linux and macOS")
def test_a_killed_command_goes_on_where_it_was(tmp_path, spec, sign):
    table = tmp_path / "t.csv"
    journal = journal_path(table)
    process = subprocess.Popen(
        blockgen(spec, *LONG, "--out", table, "--workers", 2), stderr=subprocess.PIPE, start_new_session=True
    )
    for _ in range(600):
        if journal.exists() and journal.stat().st_size > 5000:
            break
        time.sleep(0.02)
    os.killpg(process.pid, sign)
    _, said = process.communicate(timeout=30)
    assert process.returncode == (130 if sign == signal.SIGINT else -sign)
    assert b"Traceback" not in said
    assert (b"goes on where it was" in said) is (sign == signal.SIGINT)
    kept = journal.read_bytes().count(b"\n") - 1
    assert 0 < kept < 402
    with contextlib.suppress(FileNotFoundError):
        journal.write_bytes(journal.read_bytes()[:-7])
    done = subprocess.run(
        [arg for arg in blockgen(spec, *LONG, "--out", table, "--workers", 2, "--json") if arg != "--quiet"],
        capture_output=True, check=True, text=True, timeout=120,
    )  # fmt: skip
    assert f'"resumed": {kept - 1},' in done.stdout
    assert [int(row["variant"]) for row in rows(table)] == list(range(1, 403))


@pytest.mark.slow
def test_a_worker_that_dies_is_replaced(tmp_path, spec, monkeypatch):
    """A process of the pool is killed by its number while it works; no variant is lost or done twice."""
    import threading

    monkeypatch.setattr(module, "_WORTH_PROCESSES", 0)
    before = _children()

    def kill_one():
        for _ in range(400):
            new = _children() - before
            workers = [pid for pid in new if b"spawn_main" in _command(pid)]
            if workers and journal_path(tmp_path / "two.csv").exists() and _lines(tmp_path) > 20:
                os.kill(workers[0], signal.SIGKILL)
                killed.append(workers[0])
                return
            time.sleep(0.02)

    killed = []
    thread = threading.Thread(target=kill_one)
    thread.start()
    vary = ("base.shaft_height=60:80:0.1", "base.screw=M8,M10")
    found = sweep(spec, Wishes(vary, tmp_path / "two.csv", plot=False, workers=2))
    thread.join()
    assert killed
    assert found.count == len(rows(tmp_path / "two.csv")) == 402


def _lines(folder):
    return journal_path(folder / "two.csv").read_bytes().count(b"\n")


def _children():
    from pathlib import Path

    found = Path(f"/proc/self/task/{os.getpid()}/children")
    return set(map(int, found.read_text().split())) if found.exists() else set()


def _command(pid):
    from pathlib import Path

    try:
        return Path(f"/proc/{pid}/cmdline").read_bytes()
    except OSError:
        return b""


@pytest.mark.slow
def test_solids_stand_each_in_a_whole_set_and_are_the_same_again(tmp_path, spec):
    from blockgen.outputs.manifest import set_is_whole

    sweep(spec, wishes(tmp_path, ("base.screw=M8,M10",), solids=tmp_path / "solids"))
    folders = sorted((tmp_path / "solids").iterdir())
    assert [folder.name for folder in folders] == ["variant_000001", "variant_000002"]
    assert [row["files"] for row in rows(tmp_path / "t.csv")] == [folder.name for folder in folders]
    for folder in folders:
        assert set_is_whole(folder)
        assert sorted(path.suffix for path in folder.iterdir()) == [".json", ".step", ".stl"]
    first = (folders[0] / "manifest.json").read_bytes()
    sweep(spec, wishes(tmp_path, ("base.screw=M8,M10",), solids=tmp_path / "solids"))
    assert (folders[0] / "manifest.json").read_bytes() == first
