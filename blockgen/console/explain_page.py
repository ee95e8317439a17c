"""How a dimension came about: a tree of rule, inputs with origin, and source."""

from __future__ import annotations

import difflib
from typing import Any

from blockgen.console.page import Branch, Line, Part, Row, Table, title
from blockgen.errors import InputError, Problem
from blockgen.outputs import show
from blockgen.outputs.summary_json import SCHEMA, source
from blockgen.outputs.tidy import tidy
from blockgen.plan import Plan
from blockgen.record import Input, Record


def keys_page(plan: Plan) -> list[Part]:
    """Return the page that lists every key with its value."""
    inputs = [key for key in plan.records if key not in plan.dimensions and not key.startswith("practice.")]
    practice = [key for key in plan.records if key.startswith("practice.")]
    parts: list[Part] = [Line("blockgen explain SPEC KEY shows how one of these came about.", "quiet")]
    for heading, keys in (("Dimensions", plan.dimensions), ("Inputs", inputs), ("Values of practice", practice)):
        parts += [*title(heading), Table(("Key", "Value", "Limits", "Origin"), tuple(_row(plan, k) for k in keys))]
    return parts


def keys_document(plan: Plan) -> dict[str, Any]:
    """Return every key with value, unit and origin as plain data."""
    keys = {k: {"value": r.value, "unit": r.unit, "origin": r.origin} for k, r in plan.records.items()}
    document: dict[str, Any] = tidy({"schema": SCHEMA, "keys": keys})
    return document


def key_page(plan: Plan, key: str) -> list[Part]:
    """Return the page with the derivation of one key.

    Raises:
        InputError: there is no such key.
    """
    return [_branch(plan, _record(plan, key), set())]


def key_document(plan: Plan, key: str) -> dict[str, Any]:
    """Return the derivation of one key as nested plain data.

    Raises:
        InputError: there is no such key.
    """
    tree = _node(plan, _record(plan, key), ())
    document: dict[str, Any] = tidy({"schema": SCHEMA, "key": key, "derivation": tree})
    return document


def _row(plan: Plan, key: str) -> Row:
    record = plan.records[key]
    return Row((key, show.with_unit(record.value, record.unit), show.limits(record), record.origin))


def _record(plan: Plan, key: str) -> Record:
    if key in plan.records:
        return plan.records[key]
    by_last = [k for k in plan.records if k.rpartition(".")[2] == key]
    near = by_last or difflib.get_close_matches(key, plan.records, n=3, cutoff=0.5)
    remedy = f"did you mean {' or '.join(near)}? " if near else ""
    remedy += "blockgen explain SPEC lists all keys"
    raise InputError([Problem("command line", None, "KEY", f'"{key}"', "a key of the plan", remedy)])


def _branch(plan: Plan, record: Record, shown: set[str]) -> Branch:
    label = show.joined((f"{record.key} = {show.with_unit(record.value, record.unit)}", show.limits(record)), "  ")
    label += f"  [{record.origin}]"
    if record.key in shown:
        return Branch(f"{label}  (see above)")
    shown.add(record.key)
    below = tuple(_input(plan, name, of, shown) for name, of in record.inputs.items())
    return Branch(label, tuple(_lines(record)), below)


def _lines(record: Record) -> list[str]:
    about = {
        "rule": record.rule if record.origin != "given" else "",
        "numbers": show.substitution(record),
        "source": source(record) + (f", line {record.line}" if record.line is not None else ""),
    }
    return [f"{name + ':':9}{text}" for name, text in about.items() if text]


def _input(plan: Plan, name: str, of: Input, shown: set[str]) -> Branch:
    if of.ref in plan.records and of.ref is not None:
        return _branch(plan, plan.records[of.ref], shown)
    return Branch(f"{name} = {show.with_unit(of.value, of.unit)}  [{of.origin}]")


def _node(plan: Plan, record: Record, above: tuple[str, ...]) -> dict[str, Any]:
    inputs = {
        name: {
            "value": of.value,
            "unit": of.unit,
            "origin": of.origin,
            "ref": of.ref,
            "derivation": _node(plan, plan.records[of.ref], (*above, record.key))
            if of.ref is not None and of.ref in plan.records and of.ref not in above
            else None,
        }
        for name, of in record.inputs.items()
    }
    return {
        "key": record.key,
        "value": record.value,
        "unit": record.unit,
        "upper": record.upper,
        "lower": record.lower,
        "fit": record.fit,
        "rule": record.rule,
        "inputs": inputs,
        "source": source(record),
        "origin": record.origin,
        "line": record.line,
    }
