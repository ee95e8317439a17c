"""The direction of imports, and what a check may load."""

import ast
import subprocess
import sys
from pathlib import Path

import pytest

import blockgen

ROOT = Path(blockgen.__file__).parent
# From the bottom up; alike numbers must not import one another.
LAYERS = {
    "errors": 0, "units": 0, "record": 0, "plan": 1, "spec": 2, "standards": 2, "mechanics": 2, "sizing": 3,
    "alignment": 3, "making": 3,
    "evidence": 4, "checks": 4, "geometry": 5, "advise": 5, "reading": 5.5, "outputs": 6, "pipeline": 7,
    "change": 7.5, "watching": 7.5, "console": 8, "commands": 9, "cli": 10,
    "__main__": 11,
}  # fmt: skip
# Packages that stand on the same floor and still may not see one another; spec looks threads and fits up.
APART = {
    ("standards", "spec"),
    ("mechanics", "spec"),
    ("standards", "sizing"),
    ("mechanics", "sizing"),
    ("alignment", "sizing"),
    ("sizing", "alignment"),
    ("making", "spec"),
    ("making", "sizing"),
    ("making", "alignment"),
    ("sizing", "making"),
    ("alignment", "making"),
    ("evidence", "spec"),
    ("evidence", "sizing"),
    ("evidence", "making"),
    ("evidence", "checks"),
    *(("reading", part) for part in ("spec", "sizing", "checks", "alignment", "making", "evidence", "plan")),
}
KERNEL = {"geometry", "reading"}
HEAVY = {"OCP", "cadquery", "netgen", "ngsolve", "numpy", "scipy", "vtk", "ezdxf", "rich", "tomlkit", "trimesh",
         "distributed", "matplotlib", "pyarrow"}  # fmt: skip
FILES = sorted(ROOT.rglob("*.py"))


def part_of(path):
    return path.relative_to(ROOT).parts[0].removesuffix(".py")


def imports(path, *, top_level=False):
    """Return the full names of the modules that a file imports."""
    tree = ast.parse(path.read_text(encoding="utf-8"))
    nodes = _at_load(tree) if top_level else ast.walk(tree)
    names = []
    for node in nodes:
        if isinstance(node, ast.Import):
            names += [alias.name for alias in node.names]
        elif isinstance(node, ast.ImportFrom):
            assert node.level == 0, f"{path}: relative import"
            names += [f"{node.module}.{alias.name}" for alias in node.names]
    return names


def _at_load(tree):
    """Yield the nodes that run as the module is imported: not functions, not blocks for type checkers."""
    waiting = list(tree.body)
    while waiting:
        node = waiting.pop()
        if isinstance(node, (ast.FunctionDef, ast.AsyncFunctionDef, ast.Lambda)):
            continue
        if isinstance(node, ast.If) and "TYPE_CHECKING" in ast.unparse(node.test):
            continue
        yield node
        waiting += ast.iter_child_nodes(node)


def parts_imported(path):
    return {name.split(".")[1] for name in imports(path) if name.startswith("blockgen.")} & set(LAYERS)


@pytest.mark.parametrize("path", FILES, ids=lambda p: str(p.relative_to(ROOT)))
def test_imports_run_downwards(path):
    part = part_of(path)
    if part == "__init__":
        assert not [n for n in imports(path, top_level=True) if n.startswith("blockgen.")]
        return
    assert part in LAYERS, f"{part} has no place in the order of imports"
    above = {other for other in parts_imported(path) - {part} if LAYERS[other] > LAYERS[part]}
    assert not above


@pytest.mark.parametrize("path", FILES, ids=lambda p: str(p.relative_to(ROOT)))
def test_standards_and_mechanics_see_neither_spec_nor_sizing(path):
    part = part_of(path)
    assert not {(part, other) for other in parts_imported(path)} & APART


def test_the_plan_imports_only_records():
    assert parts_imported(ROOT / "plan.py") == {"record"}


def test_records_errors_and_units_import_nothing_of_ours():
    for name in ("record", "errors", "units"):
        assert parts_imported(ROOT / f"{name}.py") <= {"errors"}


@pytest.mark.parametrize("path", FILES, ids=lambda p: str(p.relative_to(ROOT)))
def test_heavy_libraries_load_late(path):
    if part_of(path) not in KERNEL:
        assert not {name.split(".")[0] for name in imports(path, top_level=True)} & HEAVY


def test_only_geometry_reading_and_outputs_name_the_kernel():
    for path in FILES:
        if part_of(path) not in {*KERNEL, "outputs"}:
            assert not {name.split(".")[0] for name in imports(path)} & {"OCP", "cadquery"}, path


SCRIPT = """
import sys
import blockgen
from blockgen import check, load_spec, size
from blockgen.checks.status import status
plan = size(load_spec(sys.argv[1]))
print(status(plan, check(plan)))
print(sorted({name.split(".")[0] for name in sys.modules} & set(sys.argv[2:])))
"""


def test_sizing_and_checks_load_no_heavy_library(tmp_path):
    from tests.sizing.strategies import COMPLETE, toml

    spec = tmp_path / "spec.toml"
    spec.write_text(toml(COMPLETE), encoding="utf-8")
    run = subprocess.run(
        [sys.executable, "-c", SCRIPT, str(spec), *sorted(HEAVY)],
        capture_output=True,
        text=True,
        check=True,
        timeout=60,
    )
    assert run.stdout.splitlines() == ["released for review", "[]"]
