"""Errors as text for people and as documents for programs."""

from __future__ import annotations

import sys
from collections.abc import Iterator
from dataclasses import asdict
from pathlib import Path
from typing import Any

from blockgen import __version__
from blockgen.errors import BlockgenError, Conflict, Cure, InfeasibleError, InputError, Problem
from blockgen.outputs.escape import one_line

SCHEMA = 1


def as_text(error: BlockgenError) -> str:
    """Return an error in words; whatever a file brought into it cannot steer a terminal."""
    if isinstance(error, InfeasibleError):
        lines = _infeasible(error)
    elif isinstance(error, InputError):
        lines = iter([_count(len(error.problems)), *(str(p) for p in error.problems)])
    else:
        lines = iter([f"blockgen could not finish: {error}"])
    return "\n".join(_harmless(line) for text in lines for line in text.split("\n"))


def as_document(error: BlockgenError) -> dict[str, Any]:
    """Return an error as plain data."""
    if isinstance(error, InfeasibleError):
        conflicts, cures = [asdict(c) for c in error.conflicts], [asdict(c) for c in error.cures]
        return {"schema": SCHEMA, "status": "infeasible", "conflicts": conflicts, "cures": cures}
    if isinstance(error, InputError):
        return {"schema": SCHEMA, "status": "wrong_input", "problems": [asdict(p) for p in error.problems]}
    return {"schema": SCHEMA, "status": "failed", "message": str(error)}


def usage(message: str, command: str) -> InputError:
    """Return wrong usage of the command line as an error of ours."""
    remedy = f"{command} --help shows what it takes"
    return InputError([Problem("command line", None, "", message, "a command as its help shows it", remedy)])


def unforeseen(error: BaseException) -> BlockgenError:
    """Return an error for what nobody thought of: one line with what is needed to report it."""
    trace = error.__traceback__
    while trace is not None and trace.tb_next is not None:
        trace = trace.tb_next
    place = "" if trace is None else f" at {Path(trace.tb_frame.f_code.co_filename).name}:{trace.tb_lineno}"
    version = ".".join(map(str, sys.version_info[:3]))
    return BlockgenError(
        f"a fault in blockgen itself ({type(error).__name__}: {error}{place}). Please report it with this line, the "
        f"spec and the command; blockgen {__version__}, Python {version}."
    )


def _infeasible(error: InfeasibleError) -> Iterator[str]:
    yield "No block can exist for these facts; nothing was written."
    for conflict in error.conflicts:
        yield from _conflict(conflict)
    cures = sorted(error.cures, key=lambda c: c.rank)
    if cures:
        yield ""
        yield "What would cure it, the least trouble first:"
    for number, cure in enumerate(cures, start=1):
        yield f"  {number}. {_cure(cure)}"


def _conflict(conflict: Conflict) -> Iterator[str]:
    yield ""
    yield f"{conflict.title} ({conflict.deficit:.4g} mm short)"
    yield from (f"  - {fact}" for fact in conflict.facts)


def _cure(cure: Cure) -> str:
    proof = "solved again: it fits" if cure.verified else "not enough by itself"
    return f"{cure.kind}: {cure.text} ({proof})"


def _count(problems: int) -> str:
    return "The input is wrong:" if problems == 1 else f"The input is wrong in {problems} places:"


def _harmless(line: str) -> str:
    indent = line[: len(line) - len(line.lstrip(" "))]
    head, colon, rest = line.strip(" ").partition(":")
    blanks = rest[: len(rest) - len(rest.lstrip(" "))]
    return f"{indent}{one_line(head)}{colon}{blanks}{one_line(rest)}"
