"""Published tables: CSV files in ``data/``, each with its source in ``data/index.csv``, read once when first used."""

from __future__ import annotations

import csv
from collections.abc import Iterable, Mapping
from dataclasses import dataclass
from difflib import get_close_matches
from functools import cache
from pathlib import Path
from typing import TypeVar

from blockgen.errors import BlockgenError

INCH = 25.4
DATA = Path(__file__).parent / "data"

Row = Mapping[str, str]
T = TypeVar("T")


class TableError(BlockgenError, ValueError):
    """A value lies outside a published table.

    Args:
        field: What was looked up, for instance ``tolerance class``.
        value: What was asked for.
        limit: What the table holds.
        remedy: What to do about it.
    """

    exit_code = 2

    def __init__(self, field: str, value: object, limit: str, remedy: str) -> None:
        """Keep the four parts and make the message from them."""
        self.field, self.value, self.limit, self.remedy = field, str(value), limit, remedy
        super().__init__(f"{field} {value!s}: {limit}; {remedy}")


@dataclass(frozen=True, slots=True)
class TableInfo:
    """Where a table comes from.

    Args:
        name: File name without its ending.
        standard: Standard that publishes it.
        edition: Edition meant.
        table: Table and subject.
        unit: Unit of the numbers in the file.
        source: How the numbers came here; addresses where they were read.
        status: read, computed, memory, or ``row`` where each row has its own.
    """

    name: str
    standard: str
    edition: str
    table: str
    unit: str
    source: str
    status: str

    @property
    def citation(self) -> str:
        """Standard, edition and status in one line for records and summaries."""
        edition = f"{self.edition} edition" if self.edition.isdigit() else self.edition
        return f"{self.standard} ({edition}) [{self.status}]" if edition else f"{self.standard} [{self.status}]"


@dataclass(frozen=True, slots=True)
class Table:
    """A published table: where it comes from, and its rows as text by column."""

    info: TableInfo
    rows: tuple[Row, ...]


def _read(name: str) -> tuple[Row, ...]:
    with (DATA / f"{name}.csv").open(encoding="utf-8", newline="") as file:
        return tuple(csv.DictReader(file))


@cache
def table_index() -> Mapping[str, TableInfo]:
    """Return the source of every table by its name."""
    return {row["name"]: TableInfo(**row) for row in _read("index")}


@cache
def load_table(name: str) -> Table:
    """Return a table with its source; the file is read at the first call only.

    Raises:
        TableError: there is no such table.
    """
    return Table(one_of("table", name, table_index()), _read(name))


@cache
def rows_by(name: str, column: str) -> Mapping[str, Row]:
    """Return the rows of a table by the text in one column."""
    return {row[column]: row for row in load_table(name).rows}


def number(row: Row, column: str) -> float:
    """Return a cell as a number."""
    return float(row[column])


def optional(row: Row, column: str) -> float | None:
    """Return a cell as a number; None where the cell is empty."""
    return float(row[column]) if row[column] else None


def millimetres(inches: float) -> float:
    """Return a length in mm, free of binary dust."""
    return round(inches * INCH, 6)


def row_for(rows: Iterable[Row], field: str, value: float, unit: str = "mm") -> Row:
    """Return the row whose range ``above < value <= to`` holds the value.

    Raises:
        TableError: no row holds it.
    """
    rows = tuple(rows)
    for row in rows:
        if float(row["above"]) < value <= float(row["to"]):
            return row
    limit = f"the table runs from above {rows[0]['above']} to {rows[-1]['to']} {unit}"
    raise TableError(field, f"{value:g} {unit}", limit, "take a value inside the table or agree the figure separately")


def quoted(text: str) -> str:
    """Return what was asked for as messages show it."""
    return f'"{text}"'


def one_of(field: str, value: str, known: Mapping[str, T]) -> T:
    """Return the entry of that name.

    Raises:
        TableError: there is none; the message names the nearest ones.
    """
    try:
        return known[value]
    except KeyError:
        near = get_close_matches(value, known, n=3, cutoff=0.5)
        remedy = f"nearest: {', '.join(near)}" if near else "take one of these"
        raise TableError(field, quoted(value), f"the table holds {', '.join(known)}", remedy) from None
