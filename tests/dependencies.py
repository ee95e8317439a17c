"""What each direct dependency is for, its licence, its size on disk and what importing it costs.

``python -m tests.dependencies`` prints the table of DEVELOPERS.md, and the size of the installed whole for README.md.
Sizes are those of the files that a package lists as its own. Import costs are the quickest of five fresh processes,
less the quickest of five that import nothing.
"""

from __future__ import annotations

import subprocess
import sys
import time
from functools import cache
from importlib.metadata import distribution, requires

from packaging.requirements import Requirement

PURPOSE = {
    "cadquery": ("cadquery", "the CAD kernel (OCP) with its wheels; solids, STEP, STL"),
    "distributed": ("distributed", "extra `sweep`: variants on a cluster"),
    "ezdxf": ("ezdxf", "drawing and hole pattern as DXF"),
    "fonttools": ("fontTools.ttLib", "outlines and widths of the drawing's letters"),
    "matplotlib": ("matplotlib.figure", "pictures: stress, change, sweep"),
    "netgen-mesher": ("netgen", "extra `fea`: meshes"),
    "ngsolve": ("ngsolve", "extra `fea`: finite elements"),
    "numpy": ("numpy", "the separate arrangement's statistics; projection; meshes"),
    "pint": ("pint", "units of the spec"),
    "platformdirs": ("platformdirs", "folder of the user's own presets"),
    "pyarrow": ("pyarrow.parquet", "extra `sweep`: tables as Parquet"),
    "pydantic": ("pydantic", "tables and keys of the spec"),
    "reportlab": ("reportlab.pdfgen.canvas", "drawing as PDF"),
    "rich": ("rich.console", "colour and tables on a terminal"),
    "typer": ("typer", "command line"),
}
RUNS = 5


def direct() -> tuple[str, ...]:
    """Return the direct dependencies, those of the extras for users included."""
    asked = [Requirement(line) for line in requires("blockgen") or []]
    return tuple(sorted({r.name for r in asked if r.marker is None or _for_users(r)}))


def _for_users(asked: Requirement) -> bool:
    marker = asked.marker
    return marker is not None and any(marker.evaluate({"extra": extra}) for extra in ("fea", "sweep"))


@cache
def size(name: str) -> float:
    """Return the size of a package's own files in MB."""
    files = distribution(name).files or []
    return sum(path.stat().st_size for f in files if (path := f.locate()).is_file()) / 1e6


def import_cost(module: str) -> float:
    """Return what importing a module costs in ms."""
    return (_quickest(f"import {module}") - _quickest("pass")) * 1e3


@cache
def _quickest(code: str) -> float:
    return min(_seconds(code) for _ in range(RUNS))


def _seconds(code: str) -> float:
    started = time.perf_counter()
    subprocess.run([sys.executable, "-c", code], check=True)
    return time.perf_counter() - started


def whole(name: str = "blockgen") -> set[str]:
    """Return the names of all packages that come with one, extras left out."""
    found: set[str] = set()
    waiting = [name]
    while waiting:
        asked = [Requirement(line) for line in requires(waiting.pop()) or []]
        needed = {r.name.lower() for r in asked if r.marker is None or r.marker.evaluate({"extra": ""})}
        waiting += needed - found
        found |= needed
    return found


def licence(name: str) -> str:
    """Return the licence that a package states, in a few words."""
    metadata = distribution(name).metadata
    classifiers = [c for c in metadata.get_all("Classifier") or [] if c.startswith("License")]
    said = metadata.get("License-Expression") or (classifiers or [metadata.get("License") or "?"])[0]
    return said.rsplit("::", 1)[-1].strip().splitlines()[0]


def main() -> None:
    """Print the table and the size of the whole."""
    print("| Package | For | Licence | MB | Import, ms |\n|---|---|---|---|---|")
    for name in direct():
        module, purpose = PURPOSE[name]
        print(f"| {name} | {purpose} | {licence(name)} | {size(name):.1f} | {import_cost(module):.0f} |")
    print(f"\nAll that `pip install .` brings: {sum(size(name) for name in whole()) / 1e3:.2f} GB")


if __name__ == "__main__":
    main()
