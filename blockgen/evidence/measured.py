"""Reads a filled inspection sheet: what was measured, in the units of the rows."""

from __future__ import annotations

import csv
import difflib
import io
from collections.abc import Iterator, Mapping, Sequence
from dataclasses import dataclass
from pathlib import Path

from blockgen.errors import InputError, MachineError, Problem
from blockgen.evidence.cells import CellProblem, measurement_of
from blockgen.evidence.characteristics import InspectionRow, inspection_rows
from blockgen.evidence.contradictions import contradictions
from blockgen.evidence.measurement import Measured, Measurement
from blockgen.plan import Plan

COLUMNS = ("spec_hash", "id", "value", "unit", "uncertainty")
_MANY = 6


@dataclass(frozen=True, slots=True)
class _Line:
    """One line of the file: its number, and its cells by column."""

    number: int
    cells: Mapping[str, str]


def read_measured(path: str | Path, plan: Plan, spec_sha256: str) -> Measured:
    """Return what a filled inspection sheet says.

    Args:
        path: The CSV file; columns beside spec_hash, id, value, unit, uncertainty are skipped, and so are lines that
            start with ``#``.
        plan: Plan of the block that was measured.
        spec_sha256: Hash of its spec.

    Raises:
        InputError: with everything that is wrong in the file.
        MachineError: it cannot be read.
    """
    name = str(path)
    lines = _lines(name, _text(Path(path), name))
    rows = {row.id: row for row in inspection_rows(plan)}
    problems = [*_other_spec(name, lines, spec_sha256)]
    if problems and not any(line.cells["spec_hash"].lower() == spec_sha256 for line in lines):
        raise InputError(problems)  # the sheet of another block: that its ids differ too is no news
    values, wrong = _values(name, lines, rows)
    problems += [*_wrong_ids(name, lines, rows), *wrong]
    if not problems:
        problems = [*contradictions(name, plan, values)]
    if not problems and not values:
        remedy = "fill in value and uncertainty of what was measured"
        problems = [Problem(name, None, "value", "no value at all", "at least one measured value", remedy)]
    if problems:
        raise InputError(sorted(problems, key=lambda p: (p.line is None, p.line or 0)))
    return Measured(name, values)


def _values(
    name: str, lines: Sequence[_Line], rows: Mapping[str, InspectionRow]
) -> tuple[dict[str, Measurement], list[Problem]]:
    """Return the measurements by id, and what is wrong with the cells of the others."""
    values: dict[str, Measurement] = {}
    problems: list[Problem] = []
    for line in lines:
        row = rows.get(line.cells["id"])
        if row is None or row.id in values:
            continue
        try:
            found = measurement_of(row, line.cells, line.number)
        except CellProblem as problem:
            problems.append(Problem(name, line.number, row.id, problem.found, problem.expected, problem.remedy))
        else:
            values.update({row.id: found} if found else {})
    return values, problems


def _text(path: Path, name: str) -> str:
    try:
        return path.read_bytes().decode("utf-8-sig")
    except UnicodeDecodeError as error:
        expected = "text in UTF-8"
        raise InputError(
            [Problem(name, None, "", f"byte {error.start + 1} is none of UTF-8", expected, "save it as CSV UTF-8")]
        ) from None
    except (FileNotFoundError, IsADirectoryError):
        what = "a folder" if path.is_dir() else "no such file"
        remedy = "give the path of the filled inspection sheet"
        raise InputError([Problem(name, None, "", what, "a CSV file", remedy)]) from None
    except OSError as error:
        raise MachineError(f"{name} cannot be read: {error.strerror or error}") from error


def _lines(name: str, text: str) -> list[_Line]:
    """Return the lines below the heading, comments and blank ones left out.

    Raises:
        InputError: there is no heading, it lacks a column, or the quoting is broken.
    """
    reader = csv.reader(io.StringIO(text, newline=""), strict=True)
    found: list[tuple[int, list[str]]] = []
    try:
        found += [(reader.line_num, [c.strip() for c in cells]) for cells in reader if _counts(cells)]
    except csv.Error as error:
        remedy = "a text with a comma or a quotation mark stands in quotation marks"
        raise InputError([Problem(name, reader.line_num, "", str(error), "comma-separated values", remedy)]) from None
    number, heading = found[0] if found else (None, [])
    columns = [column.lower() for column in heading]
    problems = list(_wrong_heading(name, number, columns))
    if problems:
        raise InputError(problems)
    return [
        _Line(place, {c: cells[columns.index(c)] if columns.index(c) < len(cells) else "" for c in COLUMNS})
        for place, cells in found[1:]
    ]


def _counts(cells: Sequence[str]) -> bool:
    return any(cell.strip() for cell in cells) and not cells[0].lstrip().startswith("#")


def _wrong_heading(name: str, line: int | None, columns: Sequence[str]) -> Iterator[Problem]:
    expected = f"a heading with the columns {', '.join(COLUMNS)}"
    if line is None:
        yield Problem(name, None, "", "an empty file", expected, "fill in the inspection sheet that the build writes")
        return
    for sign, word in ((";", "semicolons"), ("\t", "tabs")):
        if len(columns) == 1 and sign in columns[0]:
            remedy = "save it with commas between the columns and a point in decimals"
            yield Problem(name, line, "", f"columns separated by {word}", "columns separated by commas", remedy)
            return
    for column in COLUMNS:
        if columns.count(column) != 1:
            found = "no such column" if column not in columns else "the column stands there more than once"
            yield Problem(name, line, column, found, expected, "keep the heading of the inspection sheet")


def _other_spec(name: str, lines: Sequence[_Line], spec_sha256: str) -> Iterator[Problem]:
    """Yield one problem for each other hash: the sheet belongs to another block, or to an older state of it."""
    told: set[str] = set()
    for line in lines:
        found = line.cells["spec_hash"].lower()
        if found != spec_sha256 and found not in told:
            told.add(found)
            remedy = "give the spec that the sheet was made from, or make a new sheet: blockgen build"
            yield Problem(name, line.number, "spec_hash", found or "nothing", spec_sha256, remedy)


def _wrong_ids(name: str, lines: Sequence[_Line], rows: Mapping[str, InspectionRow]) -> Iterator[Problem]:
    """Yield what is unknown, what stands there twice, and what is missing."""
    first: dict[str, int] = {}
    for line in lines:
        identifier = line.cells["id"]
        if identifier not in rows:
            near = difflib.get_close_matches(identifier, rows, n=1, cutoff=0.6)
            remedy = f"write {near[0]}" if near else "leave the line out"
            yield Problem(name, line.number, "id", identifier or "nothing", "an id of the inspection sheet", remedy)
        elif identifier in first:
            remedy = "keep one of them"
            yield Problem(name, line.number, identifier, f"again; first in line {first[identifier]}", "once", remedy)
        first.setdefault(identifier, line.number)
    yield from _missing(name, [row.id for row in rows.values() if row.needed == "block" and row.id not in first])


def _missing(name: str, ids: Sequence[str]) -> Iterator[Problem]:
    """Yield the rows of the block that are missing, each by itself where they are few."""
    remedy = "keep every row of the sheet; leave the value empty where nothing was measured"
    if len(ids) > _MANY:
        yield Problem(name, None, "id", f"{len(ids)} rows are missing: {', '.join(ids)}", "a row for each", remedy)
        return
    for identifier in ids:
        yield Problem(name, None, identifier, "no such row", "a row for each characteristic of the block", remedy)
