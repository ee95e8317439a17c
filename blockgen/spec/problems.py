"""From what pydantic found to a problem that names file, line, key, found, expected and a remedy."""

from __future__ import annotations

import difflib
from collections.abc import Iterable, Mapping
from typing import Any

from pydantic import ValidationError

from blockgen.errors import Problem
from blockgen.spec.read import Document
from blockgen.spec.table import Table
from blockgen.spec.tables import MODELS


def validated(
    document: Document, table: str, path: tuple[str | int, ...], raw: object, problems: list[Problem]
) -> dict[str, Any]:
    """Return what a table gives, in default units; what is wrong is added to the problems.

    Args:
        document: The file, for lines.
        table: Name of the table's model.
        path: Where it stands in the file.
        raw: What stands there.
        problems: Collects what is wrong.
    """
    if not isinstance(raw, Mapping):
        problems.append(document.problem(path, show(raw), f"a table [{path[0]}]"))
        return {}
    try:
        model = MODELS[table].model_validate(raw)
    except ValidationError as error:
        found = error.errors(include_url=False)
        problems.extend(_problem(document, table, path, item) for item in found)
        return _good_part(table, raw, {str(item["loc"][0]) for item in found})
    return _given(model)


def _given(model: Table) -> dict[str, Any]:
    """Return the values given, in the order of the model, so that the order in a file changes nothing."""
    given = model.model_fields_set
    return {name: getattr(model, name) for name in type(model).model_fields if name in given}


def _good_part(table: str, raw: Mapping[str, object], bad: set[str]) -> dict[str, Any]:
    """Return what else the table gives, so that one wrong key is not reported as a missing one too."""
    good = MODELS[table].model_validate({k: v for k, v in raw.items() if k not in bad})
    named = bad & MODELS[table].model_fields.keys()
    return {**_given(good), **dict.fromkeys(named)}


def _problem(document: Document, table: str, path: tuple[str | int, ...], item: Any) -> Problem:
    where = (*path, *item["loc"])
    context = item.get("ctx", {})
    if item["type"] == "extra_forbidden":
        name = str(item["loc"][0])
        return document.problem(where, f"unknown key {name}", f"a key of [{table}]", nearest_key(name, table))
    if item["type"] == "literal_error":
        choices = literal_choices(MODELS[table], str(item["loc"][0]))
        return document.problem(where, show(item["input"]), f"one of {', '.join(choices)}", _nearest(item, choices))
    if item["type"] == "blockgen":
        return document.problem(where, show(item["input"]), context["wanted"], context["remedy"])
    return document.problem(where, show(item["input"]), item["msg"])


def _nearest(item: Any, choices: tuple[str, ...]) -> str:
    near = closest(str(item["input"]), choices)
    return f'did you mean "{near[0]}"?' if near else ""


def closest(text: str, names: Iterable[str], count: int = 1) -> list[str]:
    """Return the names nearest to a text, whatever its case."""
    by_fold = {name.casefold(): name for name in names}
    return [by_fold[n] for n in difflib.get_close_matches(text.casefold(), by_fold, n=count, cutoff=0.55)]


def literal_choices(model: type[Table], name: str) -> tuple[str, ...]:
    """Return the texts that a key may take; empty where it is no choice."""
    from typing import Literal, get_args, get_origin

    field = model.model_fields[name]
    for part in (field.annotation, *get_args(field.annotation)):
        if get_origin(part) is Literal:
            return get_args(part)
    return ()


def nearest_key(name: str, table: str = "") -> str:
    """Return in words which key was probably meant; without a table it stood outside every table."""
    homes = [t for t, model in MODELS.items() if name in model.model_fields and t not in {table, "family"}]
    if homes:
        return f"{name} belongs in {' or '.join(f'[{h}]' for h in homes)}"
    near = closest(name, MODELS[table].model_fields if table else ())
    if near:
        return f"did you mean {near[0]}?"
    every = {k: t for t, model in MODELS.items() for k in model.model_fields if t != "family"}
    other = closest(name, every)
    return f"the nearest key is {every[other[0]]}.{other[0]}" if other else "remove it"


def show(value: object) -> str:
    """Return a value as it may be shown in a message."""
    text = f'"{value}"' if isinstance(value, str) else _toml_like(value)
    text = "".join(c if c.isprintable() else "?" for c in text)
    return text if len(text) <= 60 else f"{text[:57]}..."


def _toml_like(value: object) -> str:
    if isinstance(value, bool):
        return str(value).lower()
    if isinstance(value, Mapping):
        return "a table"
    if isinstance(value, int) and abs(value) >= 10**20:
        return "a very large number"
    return str(value)
