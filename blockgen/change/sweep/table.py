"""The table of a sweep: one row a variant, as CSV or Parquet, written whole or not at all."""

from __future__ import annotations

import csv
import json
import os
import secrets
from collections.abc import Iterable, Iterator, Mapping, Sequence
from contextlib import contextmanager
from pathlib import Path
from types import MappingProxyType
from typing import Any

from blockgen.change.sweep.axes import WHERE, Axis
from blockgen.change.sweep.outcome import Outcome
from blockgen.change.sweep.points import Point
from blockgen.change.sweep.scheduler import EXTRA
from blockgen.errors import InputError, MachineError, Problem
from blockgen.outputs.escape import one_line

FORMS = (".csv", ".parquet")
Line = tuple[Any, ...]

_FORMULA = ("=", "+", "-", "@")
_ROWS_AT_ONCE = 5000
_UNITS: Mapping[str, str] = MappingProxyType(
    {
        **dict.fromkeys(("length", "length_min", "length_max", "length_low", "length_high", "width", "height"), "mm"),
        "mass": "kg",
        "stiffness": "N/um",
        "offset_worst": "mm",
        "offset_p95": "mm",
        "angle_worst": "mrad",
        "angle_p95": "mrad",
    }
)
_ESTIMATES = frozenset({"stiffness"})
_ESTIMATED_WITHOUT_STATISTICS = frozenset({"offset_p95", "angle_p95"})
_TEXTS = frozenset({"status", "reason", "cause", "screw", "worst_check", "worst_verdict", "files"})
_COUNTS = frozenset({"screws", "failed", "warned", "open"})


def headings(axes: Sequence[Axis], *, statistics: bool) -> tuple[str, ...]:
    """Return the headings: name and unit; what is only an estimate is called so."""
    estimates = _ESTIMATES if statistics else _ESTIMATES | _ESTIMATED_WITHOUT_STATISTICS
    own = (heading(f"{name}_estimate" if name in estimates else name, _UNITS.get(name, "")) for name in Outcome._fields)
    return ("variant", *(heading(axis.key, axis.unit) for axis in axes), *own, "front")


def heading(name: str, unit: str) -> str:
    """Return a heading with its unit."""
    return f"{name} [{unit}]" if unit else name


def lines(points: Iterable[Point], outcomes: Iterable[Outcome], front: Iterable[int]) -> Iterator[Line]:
    """Yield the cells of each row.

    Args:
        points: Values of the variants in their order.
        outcomes: What came of them, in the same order.
        front: Numbers of those on the front, counted from 0.
    """
    best = frozenset(front)
    for number, (point, found) in enumerate(zip(points, outcomes, strict=True)):
        yield (number + 1, *map(_plain, point), *found, number in best)


def _plain(value: object) -> object:
    """Return a value that a cell can hold: lists of pairs become text."""
    return json.dumps(value) if isinstance(value, tuple) else value


def usable(path: Path) -> None:
    """Do nothing where a table of that name can be written.

    Raises:
        InputError: its ending is none of ours.
        MachineError: the package for it is not installed, or a folder has its name.
    """
    if path.suffix not in FORMS:
        raise InputError([Problem(WHERE, None, "--out", str(path), f"a file name with {' or '.join(FORMS)}")])
    if path.is_dir():
        raise MachineError(f"{path} is a folder; name another --out")
    if path.suffix == ".parquet":
        _pyarrow()


def write_table(path: Path, names: Sequence[str], rows: Iterable[Line], axes: Sequence[Axis]) -> None:
    """Write the table in place of an old one, by its ending.

    Args:
        path: The file.
        names: Headings.
        rows: Cells of each row.
        axes: What is varied, for the types of their columns.

    Raises:
        MachineError: it cannot be written, or the package for Parquet is not installed.
    """
    with in_its_place(path) as beside:
        if path.suffix == ".parquet":
            _write_parquet(beside, names, rows, axes)
        else:
            _write_csv(beside, names, rows)


@contextmanager
def in_its_place(path: Path) -> Iterator[Path]:
    """Yield a path beside a file; what was written there takes the file's place at the end of the block.

    Raises:
        MachineError: it cannot be written.
    """
    beside = path.with_name(f".{path.name}.{secrets.token_hex(4)}.part")
    try:
        yield beside
        beside.replace(path)
    except OSError as error:
        if isinstance(error, MachineError):
            raise
        raise MachineError(f"{path}: {error.strerror or error}") from error
    finally:
        beside.unlink(missing_ok=True)


def _write_csv(path: Path, names: Sequence[str], rows: Iterable[Line]) -> None:
    with path.open("w", encoding="utf-8", newline="") as file:
        writer = csv.writer(file, lineterminator="\n")
        writer.writerow(names)
        writer.writerows([_csv_cell(cell) for cell in row] for row in rows)
        file.flush()
        os.fsync(file.fileno())


def _csv_cell(cell: object) -> object:
    """Return a cell as a spreadsheet may read it: text that would be taken for a formula gets an apostrophe."""
    if isinstance(cell, bool):
        return "yes" if cell else "no"
    if isinstance(cell, str):
        text = one_line(cell)
        return f"'{text}" if text.startswith(_FORMULA) else text
    return cell


def _write_parquet(path: Path, names: Sequence[str], rows: Iterable[Line], axes: Sequence[Axis]) -> None:
    arrow, parquet = _pyarrow()
    kinds = ("int64", *(_kind(axis) for axis in axes), *map(_own_kind, Outcome._fields), "bool_")
    schema = arrow.schema([(name, getattr(arrow, kind)()) for name, kind in zip(names, kinds, strict=True)])
    with parquet.ParquetWriter(path, schema) as writer:
        for some in _in_groups(rows):
            columns = [_typed(kind, column) for kind, column in zip(kinds, zip(*some, strict=True), strict=True)]
            writer.write_table(arrow.table(columns, schema=schema))


def _typed(kind: str, column: Iterable[object]) -> list[object]:
    """Return the cells of a column; in one of texts what is none is written as in a spec."""
    if kind != "string":
        return list(column)
    return [cell if cell is None or isinstance(cell, str) else json.dumps(cell) for cell in column]


def _in_groups(rows: Iterable[Line]) -> Iterator[list[Line]]:
    some: list[Line] = []
    for row in rows:
        some.append(row)
        if len(some) == _ROWS_AT_ONCE:
            yield some
            some = []
    if some:
        yield some


def _kind(axis: Axis) -> str:
    """Return the type of an axis' column: text where values are not all alike."""
    kinds = {type(value) for value in axis.values}
    names = {float: "float64", int: "int64", bool: "bool_"}
    return names.get(kinds.pop(), "string") if len(kinds) == 1 else "string"


def _own_kind(name: str) -> str:
    return "string" if name in _TEXTS else "int64" if name in _COUNTS else "float64"


def _pyarrow() -> tuple[Any, Any]:
    try:
        import pyarrow as arrow
        from pyarrow import parquet
    except ImportError as error:
        raise MachineError(f"a .parquet table needs the package pyarrow ({error}): install it with {EXTRA}") from error
    return arrow, parquet
