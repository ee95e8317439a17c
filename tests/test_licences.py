"""Nothing that is installed with blockgen is under the GPL or AGPL, and DEVELOPERS.md names what is."""

from __future__ import annotations

import re
from functools import cache
from importlib.metadata import PackageNotFoundError, distribution, requires
from pathlib import Path

import pytest
from packaging.requirements import Requirement  # pytest brings it

TEXT = (Path(__file__).resolve().parents[1] / "DEVELOPERS.md").read_text(encoding="utf-8")
# The LGPL and the exception of the GCC run-time libraries are allowed.
FORBIDDEN = re.compile(r"(?<!Lesser )General Public|(?<!L)\bA?GPL|Affero", re.IGNORECASE)


def plain(name):
    return re.sub(r"[-_.]+", "-", name).lower()


def needed(name):
    """Return the packages that one package asks for here, extras left out."""
    asked = [Requirement(line) for line in requires(name) or []]
    return {plain(r.name) for r in asked if r.marker is None or r.marker.evaluate({"extra": ""})}


@cache
def installed_whole():
    """Return the names of all packages that come with blockgen."""
    found, waiting = set(), needed("blockgen")
    while waiting:
        name = waiting.pop()
        found.add(name)
        waiting |= needed(name) - found
    return frozenset(found)


def statements(name):
    """Return what a package states about its licence: expression, classifiers, first line of the text."""
    metadata = distribution(name).metadata
    classifiers = [c for c in metadata.get_all("Classifier") or [] if c.startswith("License")]
    text = (metadata.get("License") or "").strip().splitlines()[:1]
    return [metadata.get("License-Expression") or "", *classifiers, *text]


def test_the_search_tells_gpl_from_lgpl():
    bad = ("GNU General Public License v3 (GPLv3)", "GPL-3.0-or-later", "AGPL-3.0", "GNU Affero General Public License")
    good = ("GNU Lesser General Public License v3 or later (LGPLv3+)", "LGPL-2.1-only", "MIT")
    assert all(FORBIDDEN.search(text) for text in bad)
    assert not any(FORBIDDEN.search(text) for text in good)


def test_no_package_is_under_the_gpl():
    try:
        stated = {name: statements(name) for name in installed_whole()}
    except PackageNotFoundError as error:
        pytest.fail(f"{error.name} is asked for and not installed")
    assert len(stated) > 20
    assert {name: texts for name, texts in stated.items() if any(FORBIDDEN.search(t) for t in texts)} == {}


def test_every_direct_dependency_is_named():
    rows = set(re.findall(r"^\| ([\w-]+) \| [^|]+ \| direct dependency \|$", TEXT, re.MULTILINE))
    assert rows == needed("blockgen")
