"""Names of the folder and the files of a build, and the roles that this version can write."""

from __future__ import annotations

from collections.abc import Iterable

from blockgen.errors import InputError, Problem
from blockgen.plan import Plan

SUMMARY_JSON = "summary.json"
SUMMARY_MD = "summary.md"
SPEC_TOML = "spec.toml"
MANIFEST = "manifest.json"

ALWAYS = {SUMMARY_MD: "summary", SUMMARY_JSON: "summary", SPEC_TOML: "spec"}
ENDINGS = {
    "block": ("_block.step",),
    "stl": ("_block.stl",),
    "assembly": ("_assembly.step",),
    "drawing": ("_drawing.pdf", "_drawing.dxf", "_drawing.svg"),
    "base_holes": ("_base_holes.dxf",),
    "inspection": ("_inspection.csv",),
    "report": ("_report.html",),
}
CHOOSABLE = tuple(ENDINGS)
FROM_THE_SOLID = ("block", "stl", "assembly", "drawing", "report")
"""Roles that need the solid."""

WITH_PARTS = frozenset({"assembly", "report"})
"""Roles that need the parts about the block too."""

WITH_DRAWING = frozenset({"drawing", "report"})
"""Roles that show the drawing."""

# Most file systems take 255 bytes; the longest ending and the marks of the hidden folder need room.
_LONGEST = 230


def stem(plan: Plan) -> str:
    """Return ``<number>_<revision>``, the name of the folder and the start of the file names.

    Raises:
        InputError: it is too long for a file name.
    """
    text = f"{plan.text('job.number')}_{plan.text('job.revision')}"
    size = len(text.encode())
    if size > _LONGEST:
        raise InputError([_too_long(plan, size)])
    return text


def file_names(start: str, role: str) -> tuple[str, ...]:
    """Return the names of the files of a role that can be chosen."""
    return tuple(start + ending for ending in ENDINGS[role])


def roles_by_file(start: str, roles: Iterable[str]) -> dict[str, str]:
    """Return the role by file name, in the order of the roles."""
    return {name: role for role in roles for name in file_names(start, role)}


def chosen_roles(only: Iterable[str] | None) -> tuple[str, ...]:
    """Return the roles to write, in their fixed order; None stands for all that this version knows.

    Raises:
        InputError: a role is not known in this version.
    """
    if only is None:
        return CHOOSABLE
    named = [role.strip() for role in only]
    if named and not any(named):
        raise InputError([_unknown_role("")])
    asked = set(named) - {"", *ALWAYS.values(), "manifest"}
    unknown = sorted(asked - set(CHOOSABLE))
    if unknown:
        raise InputError([_unknown_role(role) for role in unknown])
    return tuple(role for role in CHOOSABLE if role in asked)


def _unknown_role(role: str) -> Problem:
    return Problem(
        file="command line",
        line=None,
        key="--only",
        found=f'"{role}"',
        expected=f"roles that this version writes, with commas between: {', '.join(CHOOSABLE)}",
        remedy="leave --only out to get all of them; summary, spec and manifest are always written, "
        "--only summary writes nothing else",
    )


def _too_long(plan: Plan, size: int) -> Problem:
    return Problem(
        file="spec",
        line=plan.records["job.number"].line,
        key="job.number",
        found=f"number and revision make a name of {size} bytes",
        expected=f"at most {_LONGEST} bytes, since they name folder and files",
        remedy="shorten job.number or job.revision",
    )
