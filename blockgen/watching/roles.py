"""Which roles a watch writes, and which of them at once."""

from __future__ import annotations

import json
from collections.abc import Sequence
from pathlib import Path

from blockgen.outputs import names

FIRST = ("block", "stl")
"""Roles that are written at once; the others take seconds and follow."""


def roles_of(folder: Path) -> tuple[str, ...]:
    """Return the roles of the set that stands in a folder, in their fixed order; none where there is no set."""
    try:
        entries = json.loads((folder / names.MANIFEST).read_text(encoding="utf-8"))["files"]
        found = {entry["role"] for entry in entries}
    except (OSError, ValueError, TypeError, KeyError, RecursionError):
        return ()
    return tuple(role for role in names.CHOOSABLE if role in found)


def has_stiffness(folder: Path) -> bool:
    """Tell whether the set that stands in a folder has the stiffness by finite elements."""
    try:
        return bool(json.loads((folder / names.SUMMARY_JSON).read_text(encoding="utf-8")).get("stiffness"))
    except (OSError, ValueError, AttributeError, RecursionError):
        return False


def wanted(only: Sequence[str] | None, standing: Sequence[str], shown: bool) -> tuple[str, ...]:
    """Return the roles of the set in their fixed order.

    Args:
        only: What the user named; None where nothing was named.
        standing: Roles that the set in the folder has: whoever has built a drawing wants to keep one.
        shown: True where the report page is shown.
    """
    if only is not None:
        return tuple(only)
    asked = {*FIRST, *standing, *(("report",) if shown else ())}
    return tuple(role for role in names.CHOOSABLE if role in asked)


def at_once(roles: Sequence[str]) -> tuple[str, ...]:
    """Return the roles to write at once: block and STL where they are among them, else all."""
    first = tuple(role for role in roles if role in FIRST)
    return first or tuple(roles)
