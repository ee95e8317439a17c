"""How fast blockgen is, beside something that stands for the least it could take.

Run as ``python tests/benchmarks/run.py`` (``--runs``, ``--builds``, ``--only``); prints one table and decides nothing.
Each row is measured in turn with its peer, A B A B. Ratios carry over to another machine, times in ms do not; a goal in
ms is held against the quickest run, since whatever else a machine does only adds to it.
"""

from __future__ import annotations

import argparse
import json
import subprocess
import sys
import tempfile
import tomllib
from collections.abc import Iterator
from pathlib import Path
from typing import NamedTuple

from timing import Pair, blockgen, in_turn, modules_of, python

HERE = Path(__file__).resolve().parent
SPEC = HERE.parents[1] / "presets" / "examples" / "spray_carriage_servo.toml"
IMPORTS = "import pydantic, pint, typer"
HEAVY = {"OCP", "vtk", "vtkmodules", "cadquery", "scipy", "numpy"}


class Row(NamedTuple):
    """One line of the table; ``met`` is None where there is no goal."""

    what: str
    measured: str
    peer: str
    ratio: str
    goal: str
    met: bool | None = None


def timed(what: str, pair: Pair, peer: str, *, at_most: float | None = None, ms: float | None = None) -> Row:
    """Return the row of a measured pair with a goal for its ratio, or for its time in ms."""
    goal, met = "", None
    if at_most is not None:
        goal, met = f"ratio <= {at_most:g}", pair.ratio <= at_most
    elif ms is not None:
        goal, met = f"quickest <= {ms:g} ms", pair.quickest * 1e3 <= ms
    return Row(
        what,
        f"{_time(pair.first)} ({_time(pair.quickest)})",
        f"{peer}: {_time(pair.second)}",
        f"{pair.ratio:.2f}",
        goal,
        met,
    )


def _time(seconds: float) -> str:
    for unit, factor in (("s", 1.0), ("ms", 1e3)):
        if seconds * factor >= 1:
            return f"{seconds * factor:.3g} {unit}"
    return f"{seconds * 1e6:.3g} us"


def check_process(runs: int) -> Iterator[Row]:
    """``blockgen check`` as a whole process, and what it loads."""
    pair = in_turn(blockgen("check", str(SPEC)), python("-c", IMPORTS), runs)
    yield timed("check, whole process", pair, f'python -c "{IMPORTS}"', at_most=1.8)
    pair = in_turn(blockgen("check", str(SPEC), "--arrangement", "plate"), python("-c", f"{IMPORTS}, numpy"), runs)
    yield timed("check --arrangement plate, process", pair, f'python -c "{IMPORTS}, numpy"')
    loaded = sorted(modules_of("check", str(SPEC), "--quiet") & HEAVY)
    yield Row("check, heavy libraries loaded", ", ".join(loaded) or "none", "", "", "none", not loaded)


def build_process(runs: int) -> Iterator[Row]:
    """``blockgen build --only block,stl`` as a whole process beside a script written by hand."""
    with tempfile.TemporaryDirectory() as place:
        build = ("build", str(SPEC), "--out", place, "--only", "block,stl", "--quiet")
        loaded = modules_of(*build)
        summary = next(Path(place).glob("*/summary.json"))
        by_hand = python(str(HERE / "handwritten_block.py"), str(summary), place)
        goal = 1.10 if "vtkmodules" in loaded else 1.0
        yield timed("build block and stl, whole process", in_turn(blockgen(*build), by_hand, runs),
                    "cadquery script by hand", at_most=goal)  # fmt: skip


def sizing(runs: int) -> Iterator[Row]:
    """Reading, sizing and checking in a warm process; the alignment has its own rows."""
    from blockgen import check, load_spec, size
    from blockgen.checks.status import status
    from blockgen.outputs.summary_json import summary

    for path in sorted(SPEC.parent.glob("*.toml")):
        if "too_short" in path.stem:
            continue
        spec = load_spec(path)
        plan = size(spec)
        findings = check(plan)
        answer = summary(plan, findings, status(plan, findings), "")
        pair = in_turn(lambda s=spec: check(size(s)), lambda a=answer: json.dumps(a), runs, each=20)
        yield timed(f"size and check, {path.stem}", pair, "json.dumps of its summary", ms=2.0)
    text = SPEC.read_text(encoding="utf-8")
    yield timed("load spec with presets", in_turn(lambda: load_spec(SPEC), lambda: tomllib.loads(text), runs, each=20),
                "tomllib.loads of the spec alone")  # fmt: skip


def solid(runs: int) -> Iterator[Row]:
    """The solid in a warm process, checks of faces and volume included."""
    import handwritten_block

    from blockgen import check, load_spec, size
    from blockgen.geometry.block import build_block
    from blockgen.outputs.summary_json import summary

    plan = size(load_spec(SPEC))
    document = summary(plan, check(plan), "", "")
    by_hand = handwritten_block.block(document).val()
    pair = in_turn(lambda: build_block(plan), lambda: handwritten_block.block(document), runs * 2)
    yield timed("block solid", pair, "the same by hand, unchecked", ms=150)
    share = abs(by_hand.Volume() / build_block(plan).volume - 1)
    yield Row("volume of the solid by hand", f"{share:.3%} off", "", "", "<= 0.2% (mouth chamfers)", share <= 0.002)


def drawings(runs: int) -> Iterator[Row]:
    """All sheets of the demo and their files in a warm process, beside its solid, STEP and STL."""
    from blockgen.geometry.block import build_block
    from blockgen.outputs.drawing_set import drawing_set, pictures, write_base_holes, write_drawing
    from blockgen.outputs.step import write_block_step
    from blockgen.outputs.stl import write_block_stl
    from blockgen.pipeline import design

    made = design(SPEC)
    block = build_block(made.plan)
    with tempfile.TemporaryDirectory() as name:
        place = Path(name)

        def sheets() -> None:
            files = (place / f"d.{ending}" for ending in ("pdf", "dxf", "svg"))
            write_drawing(drawing_set(made.plan, pictures(block), made.status), *files, made.status)
            write_base_holes(made.plan, made.status, place / "b.dxf")

        def models() -> None:
            solid = build_block(made.plan)
            write_block_step(solid, made.plan, place / "b.step", made.status, "")
            write_block_stl(solid, made.plan, place / "b.stl")

        pair = in_turn(sheets, models, runs)
        yield timed("drawing, sheets and hole pattern", pair, "solid, STEP and STL", at_most=3.0)


def assemblies(runs: int) -> Iterator[Row]:
    """The parts about the block and the assembly's file, and their clearances, beside the block's solid."""
    from blockgen.geometry.block import build_block
    from blockgen.geometry.interference import clearances
    from blockgen.geometry.stand_ins.parts import parts
    from blockgen.outputs.assembly_step import write_assembly_step
    from blockgen.pipeline import design

    for path in sorted(SPEC.parent.glob("*.toml")):
        if "too_short" in path.stem:
            continue
        plan = design(path).plan
        block = build_block(plan)
        with tempfile.TemporaryDirectory() as name:
            file = Path(name) / "a.step"
            pair = in_turn(
                lambda p=plan, b=block, f=file: write_assembly_step(parts(p, b), p, f, "", ""),
                lambda p=plan: build_block(p),
                runs,
            )
        yield timed(f"assembly, {path.stem}", pair, "the block's solid", at_most=2.0)
        about = parts(plan, block)
        pair = in_turn(lambda p=plan, b=block, a=about: clearances(p, b, a), lambda p=plan: build_block(p), runs)
        yield timed(f"clearances, {path.stem}", pair, "the block's solid")


def reading(runs: int) -> Iterator[Row]:
    """A maker's file of about five megabytes, beside the kernel's own reading of it."""
    sys.path.insert(0, str(HERE.parents[1]))
    from OCP.STEPControl import STEPControl_Reader

    from blockgen.reading.part import read_part
    from tests.reading.made_large import write_large

    with tempfile.TemporaryDirectory() as name:
        file = Path(name) / "large.step"
        write_large(file)

        def kernel() -> None:
            reader = STEPControl_Reader()
            reader.ReadFile(str(file))
            reader.TransferRoots()
            reader.OneShape()

        pair = in_turn(lambda: read_part(file, "motor"), kernel, runs)
        what = f"read-motor, {file.stat().st_size / 1e6:.1f} MB"
    yield timed(what, pair, "the kernel's own reading", at_most=3.0)


def memory(builds: int) -> Iterator[Row]:
    """Memory over many builds in one process."""
    with tempfile.TemporaryDirectory() as place:
        command = [sys.executable, str(HERE / "memory.py"), str(SPEC), place, str(builds)]
        done = subprocess.run(command, check=True, capture_output=True, text=True)
    warm, end = map(float, done.stdout.split())
    what = f"memory, from build {max(builds // 10, 1)} to {builds}"
    yield Row(what, f"{end - warm:+.1f} MiB", f"resident: {warm:.0f} MiB", f"{end / warm:.3f}", "ratio <= 1.02",
              end <= 1.02 * warm)  # fmt: skip


def alignment(runs: int) -> Iterator[Row]:
    """The alignment of the demo in a warm process, beside a million draws of the same offsets."""
    from alignment import measure

    found = measure(runs)
    yield timed("alignment, whole answer", found.whole, "a million draws of the offset alone", ms=10)
    times = 1 / found.whole.ratio
    yield Row("alignment, times as quick", f"{times:.0f} x", "a million draws of the offset alone", "", ">= 50 x",
              times >= 50)  # fmt: skip
    yield timed("shares of variance alone", found.only_shares, "the whole answer", ms=0.5)
    worst = max(found.off.values())
    yield Row("draws off P50, P95, P99.73, at most", f"{worst:.1f} std errors", "the exact law", "", "<= 3", worst <= 3)


def lookups(runs: int) -> Iterator[Row]:
    """Standard tables: one command, and one answer in a warm process."""
    import isofits

    from blockgen.standards import iso286
    from blockgen.standards.lookup import look_up

    pair = in_turn(blockgen("lookup", "fit", "60H7/h6"), python("-c", IMPORTS), runs)
    yield timed("lookup fit, whole process", pair, f'python -c "{IMPORTS}"', at_most=1.0)
    sizes = [size / 10 for size in range(40, 4000)]

    def ours() -> None:
        iso286.limits.cache_clear()
        iso286.tolerance.cache_clear()
        for size in sizes:
            iso286.limits(size, "H7")

    pair = in_turn(ours, lambda: [isofits.isotol("hole", size, "H7", "both") for size in sizes], runs)
    yield timed(f"H7 limits of {len(sizes)} sizes, first time", pair, "isofits")
    data = Path(iso286.__file__).parent / "data" / "metric_threads.csv"
    pair = in_turn(lambda: look_up("thread", "M10"), data.read_bytes, runs, each=100)
    yield timed("lookup thread M10, warm", pair, "reading the table's file")


def stiffness(_runs: int) -> Iterator[Row]:
    """Stiffness of the demo by finite elements: one run, since it takes seconds."""
    command = [sys.executable, str(HERE / "stiffness.py"), str(SPEC), "0.03"]
    found = json.loads(subprocess.run(command, check=True, capture_output=True, text=True).stdout)
    sizes = " and ".join(f"{size // 1000}k" for size in found["unknowns"])
    good = found["tilt_band"] <= 0.03 and found["seconds"] <= 10
    yield Row("stiffness, band asked 3 %", f"{found['seconds']:.1f} s", f"meshes of {sizes} unknowns", "",
              "tilt 3 % in 10 s", good)  # fmt: skip
    met = found["tilt_band"] <= 0.03, found["band"] <= 0.03
    yield Row("band of the greatest tilt", f"{found['tilt_band']:.1%}", "", "", "<= 3 %", met[0])
    yield Row("widest band that is judged", f"{found['band']:.1%}", "stiffness, tilt, frequency", "", "<= 3 %", met[1])
    own, solvers = found["processor_seconds"]
    parts = f"first process {own:.1f} s, both solvers {solvers:.1f} s"
    yield Row("processor time", f"{own + solvers:.1f} s", parts, "", "")
    each = " + ".join(f"{size:.0f}" for size in found["peaks_mib"])
    yield Row("peak memory, three processes", f"{sum(found['peaks_mib']):.0f} MiB", f"{each} MiB", "", "")


GROUPS = (
    "check", "build", "sizing", "alignment", "solid", "drawings", "assemblies", "reading", "memory", "lookups",
    "stiffness",
)  # fmt: skip


def rows(only: list[str], runs: int, builds: int) -> Iterator[Row]:
    """Yield the rows of the chosen groups as they are measured."""
    measured = {
        "check": lambda: check_process(runs),
        "build": lambda: build_process(runs),
        "sizing": lambda: sizing(runs),
        "alignment": lambda: alignment(runs),
        "solid": lambda: solid(runs),
        "drawings": lambda: drawings(runs),
        "assemblies": lambda: assemblies(runs),
        "reading": lambda: reading(runs),
        "memory": lambda: memory(builds),
        "lookups": lambda: lookups(runs),
        "stiffness": lambda: stiffness(runs),
    }
    for name in only:
        yield from measured[name]()


def main() -> None:
    """Print the table, each row as soon as it is measured."""
    parser = argparse.ArgumentParser(description="Benchmarks of blockgen.")
    parser.add_argument("--runs", type=int, default=7, help="pairs for each row (default 7)")
    parser.add_argument("--builds", type=int, default=200, help="builds for the memory row (default 200)")
    parser.add_argument("--only", nargs="+", choices=GROUPS, default=list(GROUPS), help="groups to measure")
    chosen = parser.parse_args()
    form = "{:<38} {:>18}  {:<50} {:>6}  {:<24} {}"
    print(form.format("what", "median (quickest)", "peer", "ratio", "goal", "met"))
    for row in rows(chosen.only, chosen.runs, chosen.builds):
        print(form.format(*row[:5], {True: "yes", False: "NO", None: ""}[row.met]).rstrip(), flush=True)


if __name__ == "__main__":
    main()
