"""Pieces of Markdown, with every text in them made harmless."""

from __future__ import annotations

from collections.abc import Iterable, Sequence

from blockgen.outputs.escape import markdown, markdown_start


def heading(text: str, level: int = 2) -> str:
    """Return a heading with its blank line."""
    return f"{'#' * level} {markdown(text)}\n"


def paragraph(text: str) -> str:
    """Return a paragraph with its blank line."""
    return markdown_start(text) + "\n"


def strong(text: str) -> str:
    """Return a paragraph in bold."""
    return f"**{markdown(text)}**\n"


def bullets(texts: Iterable[str], none: str) -> str:
    """Return a list, or the sentence ``none`` when there is nothing in it."""
    lines = [f"- {markdown_start(text)}" for text in texts]
    return "\n".join(lines) + "\n" if lines else paragraph(none)


def table(columns: Sequence[str], rows: Iterable[Sequence[str]], none: str, right: Sequence[str] = ()) -> str:
    """Return a table, or the sentence ``none`` when it has no rows.

    Args:
        columns: Headings.
        rows: Cells as plain text.
        none: What to say without rows.
        right: Headings of the columns that are set to the right.
    """
    body = [_row(cells) for cells in rows]
    if not body:
        return paragraph(none)
    rule = "|" + "|".join("---:" if column in right else "---" for column in columns) + "|"
    return "\n".join([_row(columns), rule, *body]) + "\n"


def _row(cells: Sequence[str]) -> str:
    return "| " + " | ".join(markdown(cell) for cell in cells) + " |"
