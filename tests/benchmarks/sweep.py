"""How fast a sweep is, beside the same sizing and checks in a bare loop, and a cluster beside processes.

Run as ``python tests/benchmarks/sweep.py`` (``--variants``, ``--solids``, ``--runs``, ``--only``); prints one table.
Each row is measured in turn with its peer, A B A B. Ratios carry over to another machine, rates do not: they fall with
whatever else the machine does.
"""

from __future__ import annotations

import argparse
import os
import subprocess
import sys
import tempfile
from collections.abc import Callable, Iterator
from concurrent.futures import ProcessPoolExecutor
from multiprocessing import get_context
from pathlib import Path
from statistics import median
from time import process_time
from typing import NamedTuple

from memory import resident
from timing import Pair, in_turn

from blockgen.change.sweep.batch import batches, run_batch
from blockgen.change.sweep.pool import processors
from blockgen.change.sweep.sweep import Wishes, prepare, sweep

SPEC = Path(__file__).resolve().parents[2] / "presets" / "examples" / "spray_carriage_servo.toml"
RANGES = ("block.bearing_wall=20:28", "base.shaft_height=60:75", "motor.shaft_length=38:44")


class Row(NamedTuple):
    """One line of the table."""

    what: str
    measured: str
    peer: str
    ratio: str
    goal: str


def wishes(place: Path, count: int, **more: object) -> Wishes:
    """Return the wish for a sample of the demo, in as many processes as there are processors."""
    return Wishes(RANGES, place / "t.csv", sample=count, plot=False, **more)  # type: ignore[arg-type]


def rate(what: str, pair: Pair, count: int, peer: str, goal: str) -> Row:
    """Return a row of rates; the ratio is time over time of the peer."""
    return Row(
        what,
        f"{count / pair.first:.0f}/s ({count / pair.quickest:.0f}/s at best)",
        f"{peer}: {count / pair.second:.0f}/s",
        f"{pair.ratio:.2f}",
        goal,
    )


def loop(count: int) -> None:
    """Size and check the demo again and again."""
    from blockgen import check, load_spec, size

    spec = load_spec(SPEC)
    for _ in range(count):
        check(size(spec))


def loop_of_solids(count: int) -> None:
    """Model and write the demo again and again, without any checks of its alignment or files beside."""
    from blockgen import check, load_spec, size
    from blockgen.checks.status import status
    from blockgen.geometry.block import build_block
    from blockgen.outputs.step import write_block_step
    from blockgen.outputs.stl import write_block_stl

    plan = size(load_spec(SPEC))
    words = status(plan, check(plan))
    with tempfile.TemporaryDirectory() as place:
        for _ in range(count):
            block = build_block(plan)
            write_block_step(block, plan, Path(place) / "block.step", words, "0")
            write_block_stl(block, plan, Path(place) / "block.stl")


def by_all(action: object, count: int) -> None:
    """Do a count of something in as many new processes as there are processors."""
    many = processors()
    with ProcessPoolExecutor(many, get_context("spawn")) as pool:
        list(pool.map(action, [count // many] * many))  # type: ignore[arg-type]


def checks(place: Path, count: int, runs: int) -> Iterator[Row]:
    """Sizing, checks and an estimate of the alignment, processes started and table written."""
    pair = in_turn(lambda: sweep(SPEC, wishes(place, count)), lambda: by_all(loop, count), runs)
    yield rate("sweep, checks only", pair, count, "check(size(spec)) in a loop", "1000/s")


def cpu(place: Path, count: int, runs: int) -> Iterator[Row]:
    """Time of one processor for a variant, which says more than a rate where others use the machine too."""
    from blockgen import check, load_spec, size

    spec, some = load_spec(SPEC), min(count, 200)
    for exact in (False, True):
        task = prepare(SPEC, wishes(place, some, statistics=exact))
        (batch,) = batches(range(some), task.points, some)
        mine, other = [], []
        for _ in range(runs + 1):
            mine.append(processor_time(lambda t=task, b=batch: run_batch(t.job, b)) / some * 1e3)
            other.append(processor_time(lambda: [check(size(spec)) for _ in range(some)]) / some * 1e3)
        ratio = median(m / o for m, o in zip(mine[1:], other[1:], strict=True))
        what = f"processor time a variant{', --statistics' if exact else ''}"
        yield Row(what, f"{min(mine):.2f} ms at best", f"check(size(spec)): {min(other):.2f} ms", f"{ratio:.2f}", "")


def processor_time(action: Callable[[], object]) -> float:
    """Return the time of the processor that an action takes, s."""
    start = process_time()
    action()
    return process_time() - start


def statistics(place: Path, count: int, runs: int) -> Iterator[Row]:
    """The same with exact statistics."""
    some = count // 4
    pair = in_turn(lambda: sweep(SPEC, wishes(place, some, statistics=True)), lambda: by_all(loop, some), runs)
    yield rate("sweep --statistics", pair, some, "check(size(spec)) in a loop", "150/s")


def solids(place: Path, count: int, runs: int) -> Iterator[Row]:
    """STEP and STL of each block."""
    wish = wishes(place, count, solids=place / "solids")
    pair = in_turn(lambda: sweep(SPEC, wish), lambda: by_all(loop_of_solids, count), runs)
    yield rate("sweep --solids", pair, count, "build_block, STEP, STL in a loop", "8/s")


def cluster(place: Path, count: int, runs: int) -> Iterator[Row]:
    """A cluster of this machine's processors that stands already, beside processes that are started."""
    from distributed import LocalCluster

    with LocalCluster(
        n_workers=processors(), threads_per_worker=1, processes=True, dashboard_address=None, silence_logs=60
    ) as running:
        far = wishes(place, count, scheduler=running.scheduler_address)
        pair = in_turn(lambda: sweep(SPEC, far), lambda: sweep(SPEC, wishes(place, count)), runs)
    yield rate("sweep --scheduler", pair, count, "the same in processes", "ratio <= 1.2")


def memory(place: Path, count: int, runs: int) -> Iterator[Row]:
    """Memory of one process after a tenth of the variants and after all of them."""
    del runs
    command = [sys.executable, __file__, "--resident", str(place / "t.csv"), "--variants", str(count)]
    said = subprocess.run(command, check=True, capture_output=True, text=True).stdout.split()
    first, last = map(float, said)
    yield Row(f"memory over {count} variants", f"{last:.1f} MiB", f"after a tenth: {first:.1f} MiB",
              f"{last / first:.3f}", "flat")  # fmt: skip


def print_resident(table: Path, count: int) -> None:
    """Work through variants in this process and print the memory, MiB."""
    task = prepare(SPEC, Wishes(RANGES, table, sample=count))
    for batch in batches(range(count), task.points, max(count // 10, 1)):
        run_batch(task.job, batch)
        if not batch.numbers[0]:
            print(f"{resident():.1f}", flush=True)
    print(f"{resident():.1f}")


PARTS = {"cpu": cpu, "checks": checks, "statistics": statistics, "solids": solids, "cluster": cluster, "memory": memory}


def main() -> None:
    """Measure and print."""
    parser = argparse.ArgumentParser(description=__doc__)
    parser.add_argument("--variants", type=int, default=5000)
    parser.add_argument("--solids", type=int, default=24)
    parser.add_argument("--runs", type=int, default=3)
    parser.add_argument("--only", choices=PARTS, nargs="+", default=list(PARTS))
    parser.add_argument("--resident", type=Path, help=argparse.SUPPRESS)
    asked = parser.parse_args()
    if asked.resident:
        print_resident(asked.resident, asked.variants)
        return
    print(f"{processors()} processors, load {os.getloadavg()[0]:.1f} before", flush=True)
    print("\t".join(Row._fields), flush=True)
    for name in asked.only:
        with tempfile.TemporaryDirectory() as place:
            count = asked.solids if name == "solids" else asked.variants
            for row in PARTS[name](Path(place), count, asked.runs):
                print("\t".join(row), flush=True)


if __name__ == "__main__":
    main()
