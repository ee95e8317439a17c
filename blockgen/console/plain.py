"""A page as lines of plain text of a given width; cells wrap, nothing is cut off."""

from __future__ import annotations

import textwrap
from collections.abc import Iterator, Sequence

from blockgen.console.page import Branch, Line, Page, Part, Row, Table
from blockgen.outputs.escape import one_line

_GAP = "  "
_NARROWEST = 6


def lines(page: Page, width: int) -> Iterator[str]:
    """Yield the lines of a page.

    Args:
        page: What to print.
        width: Greatest number of characters in a line.
    """
    for part in page:
        yield from _part(part, width)


def _part(part: Part, width: int) -> Iterator[str]:
    if isinstance(part, Line):
        yield from wrapped(part.text, width, part.hang)
    elif isinstance(part, Table):
        yield from _table(part, width)
    else:
        yield from tree_lines(part, width)


def wrapped(text: str, width: int, hang: int = 0) -> list[str]:
    """Return a text in lines of at most ``width`` characters."""
    lead = text[: len(text) - len(text.lstrip(" "))]
    body = one_line(text)
    room = max(width, hang + _NARROWEST)
    return textwrap.wrap(lead + body, room, subsequent_indent=" " * (len(lead) + hang), break_on_hyphens=False) or [""]


def _table(table: Table, width: int) -> Iterator[str]:
    if table.title:
        yield ""
        yield table.title
    rows = [Row(table.columns), *table.rows]
    widths = column_widths([row.cells for row in rows], width)
    yield from _row(table, table.columns, widths)
    yield _GAP.join("-" * w for w in widths)
    for row in table.rows:
        yield from _row(table, row.cells, widths)


def column_widths(rows: Sequence[Sequence[str]], width: int) -> list[int]:
    """Return the width of each column; the widest give way until the table fits."""
    widths = [max(len(one_line(cell)) for cell in column) for column in zip(*rows, strict=True)]
    room = width - len(_GAP) * (len(widths) - 1)
    while sum(widths) > room and max(widths) > _NARROWEST:
        widths[widths.index(max(widths))] -= 1
    return widths


def _row(table: Table, cells: Sequence[str], widths: Sequence[int]) -> Iterator[str]:
    columns = [_cell(text, w) for text, w in zip(cells, widths, strict=True)]
    for number in range(max(map(len, columns))):
        texts = [column[number] if number < len(column) else "" for column in columns]
        yield _GAP.join(
            text.rjust(w) if heading in table.right else text.ljust(w)
            for text, w, heading in zip(texts, widths, table.columns, strict=True)
        ).rstrip()


def _cell(text: str, width: int) -> list[str]:
    return textwrap.wrap(one_line(text), width, break_on_hyphens=False) or [""]


def tree_lines(branch: Branch, width: int, first: str = "", rest: str = "") -> Iterator[str]:
    """Yield the lines of a tree with guides of plain characters.

    Args:
        branch: The tree.
        width: Greatest number of characters in a line.
        first: What stands before the label.
        rest: What stands before every later line.
    """
    own = rest + ("|  " if branch.below else "   ")
    yield from _guided(branch.label, width, first, own)
    for line in branch.lines:
        yield from _guided(line, width, own, own)
    for number, below in enumerate(branch.below, start=1):
        last = number == len(branch.below)
        yield from tree_lines(below, width, rest + ("`- " if last else "|- "), rest + ("   " if last else "|  "))


def _guided(text: str, width: int, first: str, rest: str) -> list[str]:
    room = max(width - len(rest), 4 * _NARROWEST)
    texts = _cell(text, room)
    return [first + texts[0], *(rest + text for text in texts[1:])]
