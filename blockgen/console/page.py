"""The parts of which a printed page is made; they know nothing of terminals."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from typing import Literal

Mark = Literal["", "pass", "warn", "fail", "not_assessed", "quiet", "title"]


@dataclass(frozen=True, slots=True)
class Line:
    """A paragraph.

    Args:
        text: Plain text; wrapped where it is longer than a line.
        mark: What it says about the design, for its colour.
        hang: Blanks before the second and later lines.
    """

    text: str
    mark: Mark = ""
    hang: int = 0


@dataclass(frozen=True, slots=True)
class Row:
    """A row of a table; ``mark`` colours its first cell."""

    cells: tuple[str, ...]
    mark: Mark = ""


@dataclass(frozen=True, slots=True)
class Table:
    """A table.

    Args:
        columns: Headings.
        rows: Its rows.
        right: Headings of the columns that are set to the right.
        title: Heading above; may be empty.
    """

    columns: tuple[str, ...]
    rows: tuple[Row, ...]
    right: tuple[str, ...] = ()
    title: str = ""


@dataclass(frozen=True, slots=True)
class Branch:
    """A node of a tree: a label, lines about it, and what hangs below."""

    label: str
    lines: tuple[str, ...] = ()
    below: tuple[Branch, ...] = ()


Part = Line | Table | Branch
Page = Sequence[Part]
BLANK = Line("")


def title(text: str) -> tuple[Line, Line]:
    """Return a heading with a blank line before it."""
    return (BLANK, Line(text, "title"))


def bullet(text: str, mark: Mark = "") -> Line:
    """Return an entry of a list."""
    return Line(f"- {text}", mark, hang=2)
