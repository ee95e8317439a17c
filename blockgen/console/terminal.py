"""A page on a terminal, by rich: the same parts with modest colour."""

from __future__ import annotations

from typing import TYPE_CHECKING

from blockgen.console.page import Branch, Line, Page, Part, Table
from blockgen.console.plain import tree_lines, wrapped
from blockgen.outputs.escape import one_line

if TYPE_CHECKING:
    from rich.console import Console, RenderableType

_STYLES = {
    "": "",
    "pass": "green",
    "warn": "yellow",
    "fail": "bold red",
    "not_assessed": "dim",
    "quiet": "dim",
    "title": "bold",
}


def show(page: Page) -> None:
    """Print a page on standard output."""
    from rich.console import Console

    console = Console(highlight=False, markup=False, emoji=False)
    for part in page:
        console.print(_part(part, console), soft_wrap=not isinstance(part, Table))


def _part(part: Part, console: Console) -> RenderableType:
    from rich.text import Text

    if isinstance(part, Line):
        return Text("\n".join(wrapped(part.text, console.width, part.hang)), _STYLES[part.mark])
    if isinstance(part, Branch):
        return Text("\n".join(tree_lines(part, console.width)))
    return _table(part)


def _table(part: Table) -> RenderableType:
    from rich import box
    from rich.table import Table as RichTable
    from rich.text import Text

    table = RichTable(
        box=box.SIMPLE_HEAD, show_edge=False, title=part.title or None, title_justify="left", pad_edge=False
    )
    for heading in part.columns:
        table.add_column(heading, justify="right" if heading in part.right else "left", overflow="fold")
    for row in part.rows:
        first, *others = (Text(one_line(cell)) for cell in row.cells)
        first.stylize(_STYLES[row.mark])
        table.add_row(first, *others)
    return table
