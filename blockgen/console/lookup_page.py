"""What ``lookup`` prints."""

from __future__ import annotations

from typing import Any

from blockgen.console.page import BLANK, Line, Part, Row, Table
from blockgen.outputs import show
from blockgen.outputs.tidy import tidy
from blockgen.standards.lookup import look_up

SCHEMA = 1


def page(kind: str, what: str) -> list[Part]:
    """Return the page of an answer.

    Raises:
        InputError: the tables do not hold it.
    """
    answer = look_up(kind, what)
    rows = tuple(Row((label, show.with_unit(value, unit), source)) for label, value, unit, source in answer.rows)
    parts: list[Part] = [Line(answer.title, "title"), BLANK, Table(("Quantity", "Value", "Source"), rows, ("Value",))]
    return [*parts, BLANK, Line(answer.note)] if answer.note else parts


def document(kind: str, what: str) -> dict[str, Any]:
    """Return an answer as plain data.

    Raises:
        InputError: the tables do not hold it.
    """
    answer = look_up(kind, what)
    names = ("label", "value", "unit", "source")
    rows = [dict(zip(names, row, strict=True)) for row in answer.rows]
    document: dict[str, Any] = tidy(
        {"schema": SCHEMA, "kind": kind, "title": answer.title, "rows": rows, "note": answer.note}
    )
    return document
