"""Each direct dependency is used, and its purpose is told."""

import ast
import sys
from pathlib import Path

import pytest

import blockgen
from tests.dependencies import PURPOSE, direct, size

ROOT = Path(__file__).resolve().parents[1]
DEVELOPERS = (ROOT / "DEVELOPERS.md").read_text(encoding="utf-8")


def imported():
    """Return the first names of all modules that the package imports."""
    found = set()
    for path in Path(blockgen.__file__).parent.rglob("*.py"):
        for node in ast.walk(ast.parse(path.read_text(encoding="utf-8"))):
            if isinstance(node, ast.Import):
                found |= {alias.name.split(".")[0] for alias in node.names}
            elif isinstance(node, ast.ImportFrom):
                found.add(node.module.split(".")[0])
    return found


@pytest.mark.parametrize("name", direct())
def test_a_direct_dependency_is_imported_somewhere(name):
    assert PURPOSE[name][0].split(".")[0] in imported()


def test_nothing_is_imported_that_is_not_asked_for():
    ours = {"blockgen", "OCP", "pydantic_core"}  # cadquery and pydantic are asked for to bring the last two
    named = {PURPOSE[name][0].split(".")[0] for name in direct()}
    assert imported() - ours - named - set(sys.stdlib_module_names) == set()


@pytest.mark.parametrize("name", direct())
def test_developers_md_tells_what_it_is_for(name):
    assert f"| {name} | {PURPOSE[name][1]} |" in DEVELOPERS


def test_sizes_are_those_of_files():
    assert 1 < size("numpy") < 500
