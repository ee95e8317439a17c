"""The lowest version of each direct dependency, as requirements for pip.

To see that the lower bounds of pyproject.toml hold, in a fresh environment:

    python -m tests.lowest_versions > lowest.txt
    pip install -r lowest.txt -e ".[test]"
    python -m pytest -m "not slow and not wheel"
"""

from __future__ import annotations

import tomllib
from pathlib import Path

from packaging.requirements import Requirement

PROJECT = Path(__file__).resolve().parents[1] / "pyproject.toml"


def lowest(requirement: str) -> str:
    """Return ``name==bound`` for a requirement with a lower bound.

    Raises:
        ValueError: it has none, or more than one.
    """
    asked = Requirement(requirement)
    bounds = [s.version for s in asked.specifier if s.operator in {">=", "=="}]
    if len(bounds) != 1:
        raise ValueError(f"{requirement}: expected one lower bound, found {len(bounds)}")
    extras = f"[{','.join(sorted(asked.extras))}]" if asked.extras else ""
    return f"{asked.name}{extras}=={bounds[0]}"


def all_lowest() -> list[str]:
    """Return the lowest versions of the direct dependencies of pyproject.toml."""
    project = tomllib.loads(PROJECT.read_text(encoding="utf-8"))["project"]
    return [lowest(line) for line in project["dependencies"]]


if __name__ == "__main__":
    print("\n".join(all_lowest()))
