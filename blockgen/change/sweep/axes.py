"""What is varied: ``KEY=A,B,C`` and ``KEY=lo:hi:step`` read, checked against the spec's keys and in default units."""

from __future__ import annotations

import re
from collections.abc import Iterable, Sequence
from dataclasses import dataclass, replace
from typing import Any

from blockgen.change.sweep.values import Wrong, number_range, read_values, split_list
from blockgen.errors import InputError, Problem
from blockgen.record import Value
from blockgen.spec.load import Loading, Shelf, unit_of
from blockgen.spec.problems import closest, nearest_key, validated
from blockgen.spec.read import Document
from blockgen.spec.tables import MODELS, TABLES

WHERE = "command line"
_RANGE = re.compile(r"\s*([^:\[\]\"]+):([^:\[\]\"]+)(?::([^:\[\]\"]+))?\s*")
_FORM = "KEY=A,B,C or KEY=lo:hi:step, such as base.shaft_height=60,65,70 or block.bearing_wall=20:30:2"
_MOST_VALUES = 100_000
Place = tuple[str | int, ...]


@dataclass(frozen=True, slots=True)
class Axis:
    """One key that is varied.

    Args:
        key: Dotted key.
        table: Name of the table's model.
        place: Where the key stands in the spec.
        unit: Default unit of its values; empty for words, flags and plain numbers.
        values: Its values in default units, in the order given; for a range without step its two ends.
        continuous: True for a range without step, from which a sample takes any value.
    """

    key: str
    table: str
    place: Place
    unit: str
    values: tuple[Value, ...]
    continuous: bool = False


def read_axes(asked: Sequence[str], document: Document, shelf: Shelf, *, sampled: bool) -> tuple[Axis, ...]:
    """Return what is varied.

    Args:
        asked: One ``KEY=...`` for each key.
        document: The spec, for its own materials and its family.
        shelf: Presets that may be named.
        sampled: True where a sample is taken, so that a range needs no step.

    Raises:
        InputError: nothing is varied, or a key or value is wrong; all that is wrong at once.
    """
    if not asked:
        raise InputError([Problem(WHERE, None, "--vary", "nothing", _FORM)])
    axes: list[Axis] = []
    problems: list[Problem] = []
    for text in asked:
        try:
            axes.append(_axis(text, document, shelf, sampled=sampled))
        except InputError as error:
            problems.extend(error.problems)
    problems.extend(_twice(axis.key for axis in axes))
    if problems:
        raise InputError(problems)
    return tuple(axes)


def _twice(keys: Iterable[str]) -> list[Problem]:
    seen: set[str] = set()
    again = [key for key in keys if key in seen or seen.add(key)]  # type: ignore[func-returns-value]
    return [
        Problem(WHERE, None, key, "varied twice", "each key once", "put all its values in one list") for key in again
    ]


def _axis(text: str, document: Document, shelf: Shelf, *, sampled: bool) -> Axis:
    key, sign, words = (part.strip() for part in text.partition("="))
    if not sign or not key or not words:
        raise InputError([Problem(WHERE, None, key or "--vary", f'"{text}"', _FORM)])
    table, place = _place(key, document)
    name = str(place[-1])
    try:
        values, continuous = _values(table, name, words)
    except Wrong as wrong:
        raise InputError([Problem(WHERE, None, key, f'"{words}"', wrong.expected, wrong.remedy)]) from None
    if continuous and not sampled:
        remedy = f"give a step, {key}={words}:STEP, or a number of samples, --sample N"
        raise InputError([Problem(WHERE, None, key, f'"{words}"', "a range with a step", remedy)])
    kept = _checked(document, shelf, table, place, values)
    return Axis(key, table, place, unit_of(table, name, kept[0]), kept, continuous)


def _place(key: str, document: Document) -> tuple[str, Place]:
    """Return the model and the place of a key.

    Raises:
        InputError: there is no such key, or a sweep cannot vary it.
    """
    table, _, rest = key.partition(".")
    if table in TABLES:
        return _known(key, table, (table, rest))
    inner, _, name = rest.rpartition(".")
    owner: Any = document.data.get(table)
    if table == "material" and isinstance(owner, dict) and inner in owner:
        return _known(key, table, (table, inner, name))
    if table == "family" and isinstance(owner, list) and inner.isdecimal() and int(inner) < len(owner):
        return _known(key, table, (table, int(inner), name))
    if table in MODELS:
        expected = "a table of the spec: family.0.KEY is the first [[family]], material.NAME.KEY is [material.NAME]"
        raise InputError([Problem(WHERE, None, key, f"no table {table}.{inner}", expected)])
    near = closest(table, MODELS)
    remedy = f"did you mean {near[0]}.{rest}?" if near else nearest_key(rest or table)
    raise InputError([Problem(WHERE, None, key, f"unknown table {table}", "TABLE.KEY of the spec", remedy)])


def _known(key: str, table: str, place: Place) -> tuple[str, Place]:
    name = str(place[-1])
    if name not in MODELS[table].model_fields:
        found = f"unknown key {name}" if name else "a table without a key"
        remedy = (
            nearest_key(name, table)
            if name
            else f"name a key of it, such as {key}.{next(iter(MODELS[table].model_fields))}"
        )
        raise InputError([Problem(WHERE, None, key, found, f"a key of [{table}]", remedy)])
    if name == "model" and table != "material":
        raise InputError([Problem(WHERE, None, key, "a maker's STEP file", "a key that sizing or checks use")])
    return table, place


def _values(table: str, name: str, words: str) -> tuple[list[object], bool]:
    """Return raw values, and whether they are the ends of a range without step."""
    match = _RANGE.fullmatch(words)
    if match is None:
        return read_values(MODELS[table], name, split_list(words)), False
    low, high, step = match[1], match[2], match[3]
    ends = number_range(MODELS[table], name, (low, high, step), _MOST_VALUES)
    return ends, step is None and isinstance(ends[0], float)


def _checked(document: Document, shelf: Shelf, table: str, place: Place, raws: Sequence[object]) -> tuple[Value, ...]:
    """Return the values as the spec keeps them.

    Raises:
        InputError: one of them is no value of the key, or one stands there twice.
    """
    name, found = str(place[-1]), []
    problems: list[Problem] = []
    for raw in raws:
        loading = Loading(document, shelf)
        given = validated(document, table, place[:-1], {name: raw}, loading.problems)
        if name == "preset" and not loading.problems:
            loading.preset(given[name], MODELS[table], place[:-1])
        problems.extend(loading.problems)
        found.append(given.get(name))
    key = ".".join(map(str, place))
    if problems:
        raise InputError([replace(problem, file=WHERE, line=None, key=key) for problem in problems])
    again = next((value for i, value in enumerate(found) if repr(value) in map(repr, found[:i])), None)
    if again is not None:
        raise InputError([Problem(WHERE, None, key, f"{again} twice", "each value once")])
    return tuple(found)
