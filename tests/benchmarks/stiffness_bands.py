"""Whether the bands of the stiffness hold; run as ``python stiffness_bands.py SPEC [UNKNOWNS]``.

Refines again and again up to a number of unknowns (default 250000, about 80 s and 4 GB) and prints for the two supports
that decide, flanges free: the value of the mesh, the same with what it lacks put right, and the band that would be
stated. The last line is the reference for those above it.
"""

from __future__ import annotations

import sys

import numpy as np

from blockgen.evidence.stiffness.answers import Figures, Raw
from blockgen.evidence.stiffness.estimate import banded
from blockgen.evidence.stiffness.run import marked, task_of
from blockgen.evidence.stiffness.solver import Solver, Step


def figures(found: Figures) -> np.ndarray:
    """Return stiffness in N/um, greatest slope in urad, first frequency in Hz."""
    slope = 1e6 * np.linalg.norm(found.slopes, axis=1).max()
    return np.array([1e-3 / found.compliance, slope, found.frequencies[0] if len(found.frequencies) else np.nan])


def line(raw: Raw, before: Raw | None) -> str:
    """Return one support as text."""
    plain, mended = figures(raw.plain), figures(raw.mended)
    middle, half = banded(plain, mended, None if before is None else figures(before.mended))
    return "  ".join(f"{p:.5g} -> {m:.5g} +-{h / m:.1%}" for p, m, h in zip(plain, middle, half, strict=True))


def main(spec: str, most: int) -> None:
    """Refine and print."""
    task = prepared(spec)
    kinds = tuple(place for place, kind in enumerate(task.kinds) if kind[1] == "free")[:2]
    solver, cut, before = Solver(task), (), dict.fromkeys(kinds)
    while True:
        used, raws = solver.step(Step(cut, kinds))
        for kind, raw in raws.items():
            print(f"{used.unknowns:>7}  {task.kinds[kind][0].id:<7} {line(raw, before[kind])}", flush=True)
        if used.unknowns > most:
            return
        before = raws
        cut = marked(sum(blame for raw in raws.values() for blame in raw.blame.values()))


def prepared(spec: str):  # a task
    """Return the task of a spec; its solid is made in another process, since two CAD kernels quarrel."""
    import pickle
    import subprocess

    script = (
        "import sys, pickle\nfrom blockgen import load_spec, size\n"
        "from blockgen.geometry.analysis import analysis_shape\n"
        "plan = size(load_spec(sys.argv[1]))\nshape = analysis_shape(plan)\n"
        "sys.stdout.buffer.write(pickle.dumps((plan, shape.brep, shape.faces)))"
    )
    made = subprocess.run([sys.executable, "-c", script, spec], check=True, capture_output=True).stdout
    return task_of(*pickle.loads(made))


if __name__ == "__main__":
    main(sys.argv[1], int(sys.argv[2]) if len(sys.argv) > 2 else 250_000)
