"""Errors as text for people and as documents for programs."""

from __future__ import annotations

import sys
import textwrap
from collections.abc import Iterator
from dataclasses import asdict
from pathlib import Path
from typing import Any

from blockgen import __version__
from blockgen.console import plain
from blockgen.console.family_page import split_document, split_parts
from blockgen.console.page import BLANK, Line, Part, bullet
from blockgen.errors import BlockgenError, FamilyError, InfeasibleError, InputError, Problem
from blockgen.outputs.escape import one_line

SCHEMA = 1


def as_text(error: BlockgenError, width: int = 100) -> str:
    """Return an error in words; whatever a file brought into it cannot steer a terminal.

    Args:
        error: What went wrong.
        width: Greatest number of characters in a line.
    """
    if isinstance(error, InfeasibleError):
        return "\n".join(plain.lines(_infeasible(error), width))
    if isinstance(error, InputError):
        lines = [line for problem in error.problems for line in _problem(problem, width)]
        return "\n".join([_count(len(error.problems)), *lines])
    return one_line(f"blockgen could not finish: {error}")


def as_document(error: BlockgenError) -> dict[str, Any]:
    """Return an error as plain data."""
    if isinstance(error, InfeasibleError):
        conflicts, cures = [asdict(c) for c in error.conflicts], [asdict(c) for c in error.cures]
        family = {"family": split_document(error)} if isinstance(error, FamilyError) else {}
        return {"schema": SCHEMA, "status": "infeasible", "conflicts": conflicts, "cures": cures, **family}
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


def _infeasible(error: InfeasibleError) -> list[Part]:
    page: list[Part] = split_parts(error) if isinstance(error, FamilyError) else _conflicts(error)
    cures = sorted(error.cures, key=lambda c: c.rank)
    if cures:
        what = "give one block" if isinstance(error, FamilyError) else "cure it"
        page += [BLANK, Line(f"What would {what}, the least trouble first:")]
    for number, cure in enumerate(cures, start=1):
        proof = "sized again: a block exists" if cure.verified else "not enough by itself"
        page.append(Line(f"{number}. {cure.text} ({proof})", hang=3))
    return page


def _conflicts(error: InfeasibleError) -> list[Part]:
    page: list[Part] = [Line("No block can exist for these facts; nothing was written.", "fail")]
    for conflict in error.conflicts:
        page += [BLANK, Line(conflict.title), *(bullet(fact) for fact in conflict.facts)]
    return page


def _count(problems: int) -> str:
    return "The input is wrong:" if problems == 1 else f"The input is wrong in {problems} places:"


def _problem(problem: Problem, width: int) -> Iterator[str]:
    place = problem.file if problem.line is None else f"{problem.file}:{problem.line}"
    yield one_line(": ".join(part for part in (place, problem.key) if part))
    for name, text in (("found:", problem.found), ("expected:", problem.expected), ("to do:", problem.remedy)):
        if text:
            yield from textwrap.wrap(
                one_line(text), width, initial_indent=f"  {name:10}", subsequent_indent=" " * 12, break_on_hyphens=False
            )
