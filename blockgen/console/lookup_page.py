"""What ``lookup`` prints."""

from __future__ import annotations

from typing import Any

from blockgen.console.page import BLANK, Line, Part, Row, Table
from blockgen.console.sources import numbered
from blockgen.outputs import show
from blockgen.outputs.tidy import tidy
from blockgen.standards.lookup import LookupAnswer, look_up

SCHEMA = 1


def page(kind: str, what: str) -> list[Part]:
    """Return the page of an answer.

    Raises:
        InputError: the tables do not hold it.
    """
    answer = _answer(kind, what)
    numbers, sources = numbered([source for _, _, _, source in answer.rows])
    rows = tuple(
        Row((label, show.with_unit(value, unit), n))
        for (label, value, unit, _), n in zip(answer.rows, numbers, strict=True)
    )
    table = Table(("Quantity", "Value", "Source"), rows, ("Value", "Source"))
    parts: list[Part] = [Line(answer.title, "title"), BLANK, table, *sources]
    return [*parts, BLANK, Line(answer.note)] if answer.note else parts


def document(kind: str, what: str) -> dict[str, Any]:
    """Return an answer as plain data.

    Raises:
        InputError: the tables do not hold it.
    """
    answer = _answer(kind, what)
    names = ("label", "value", "unit", "source")
    rows = [dict(zip(names, row, strict=True)) for row in answer.rows]
    document: dict[str, Any] = tidy(
        {"schema": SCHEMA, "kind": kind, "title": answer.title, "rows": rows, "note": answer.note}
    )
    return document


def _answer(kind: str, what: str) -> LookupAnswer:
    if kind != "material":
        return look_up(kind, what)
    from blockgen.console.preset_material import material_answer  # loads the models of the spec

    return material_answer(what)
