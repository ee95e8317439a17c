"""How a dimension, an input, a check or a feature came about: rule, inputs with origin, and source."""

from __future__ import annotations

import difflib
from collections.abc import Sequence
from typing import Any

from blockgen.checks.finding import Finding
from blockgen.console.explain_tree import Tree
from blockgen.console.page import BLANK, Line, Part, Row, Table, title
from blockgen.errors import InputError, Problem
from blockgen.outputs import show
from blockgen.outputs.summary_json import SCHEMA, feature_document, finding_document, source
from blockgen.outputs.tidy import tidy
from blockgen.plan import Feature, Plan
from blockgen.record import Input, Record

Found = Record | Finding | Feature


def list_page(plan: Plan, findings: Sequence[Finding]) -> list[Part]:
    """Return the page that lists every key with its value, every check and every feature."""
    inputs = [key for key in plan.records if key not in plan.dimensions and not key.startswith("practice.")]
    practice = [key for key in plan.records if key.startswith("practice.")]
    parts: list[Part] = [Line("blockgen explain SPEC KEY shows how one of these came about.", "quiet")]
    for heading, keys in (("Dimensions", plan.dimensions), ("Inputs", inputs), ("Values of practice", practice)):
        parts += [*title(heading), Table(("Key", "Value", "Limits", "Origin"), tuple(_row(plan, k) for k in keys))]
    checks = tuple(Row((f.id, show.verdict(f.verdict), f.title)) for f in findings)
    features = tuple(Row((f.id, show.plain_id(f.kind), f.call_out)) for f in _features(plan))
    return [
        *parts,
        *title("Checks"),
        Table(("Check", "Verdict", "What it compares"), checks),
        *title("Features"),
        Table(("Feature", "Kind", "Call-out"), features),
    ]


def list_document(plan: Plan, findings: Sequence[Finding]) -> dict[str, Any]:
    """Return every key with value, unit and origin, and the ids of checks and features, as plain data."""
    keys = {k: {"value": r.value, "unit": r.unit, "origin": r.origin} for k, r in plan.records.items()}
    checks = {f.id: f.verdict for f in findings}
    features = {f.id: f.call_out for f in _features(plan)}
    document: dict[str, Any] = tidy({"schema": SCHEMA, "keys": keys, "checks": checks, "features": features})
    return document


def page(plan: Plan, findings: Sequence[Finding], name: str) -> list[Part]:
    """Return the page about a key, a check or a feature; where several have the name, about each.

    Raises:
        InputError: there is nothing of that name.
    """
    tree = Tree(plan)
    parts: list[Part] = []
    for found in _found(plan, findings, name):
        parts += [BLANK] if parts else []
        if isinstance(found, Record):
            parts.append(tree.record(found))
        else:
            parts.append(tree.check(found) if isinstance(found, Finding) else tree.feature(found))
    return parts


def document(plan: Plan, findings: Sequence[Finding], name: str) -> dict[str, Any]:
    """Return the same as nested plain data: ``derivation`` of a key, ``check``, ``feature``; None where there is none.

    Raises:
        InputError: there is nothing of that name.
    """
    made: dict[str, Any] = {"schema": SCHEMA, "key": name, "derivation": None, "check": None, "feature": None}
    for found in _found(plan, findings, name):
        if isinstance(found, Record):
            made |= {"key": found.key, "derivation": _node(plan, found, ())}
        elif isinstance(found, Finding):
            inputs = {key: _input(plan, of, ()) for key, of in found.inputs.items()}
            made["check"] = finding_document(found) | {"inputs": inputs}
        else:
            sizes = {
                size: _node(plan, plan.records[key], ()) for size, key in found.keys.items() if key in plan.records
            }
            made["feature"] = feature_document(found) | {"derivations": sizes}
    tidied: dict[str, Any] = tidy(made)
    return tidied


def _row(plan: Plan, key: str) -> Row:
    record = plan.records[key]
    return Row((key, show.amount(record), show.limits(record), record.origin))


def _features(plan: Plan) -> tuple[Feature, ...]:
    return (*plan.features, *plan.base_features)


def _found(plan: Plan, findings: Sequence[Finding], name: str) -> list[Found]:
    """Return the key, the checks and the features of a name.

    Raises:
        InputError: there is nothing of that name.
    """
    found: list[Found] = [plan.records[name]] if name in plan.records else []
    found += [finding for finding in findings if finding.id == name]
    found += [feature for feature in _features(plan) if feature.id == name]
    if found:
        return found
    names = [*plan.records, *(f.id for f in findings), *(f.id for f in _features(plan))]
    raise InputError([_unknown(name, names)])


def _unknown(name: str, names: Sequence[str]) -> Problem:
    by_last = [k for k in names if k.rpartition(".")[2] == name]
    near = by_last or difflib.get_close_matches(name, names, n=3, cutoff=0.5)
    remedy = f"did you mean {' or '.join(near)}? " if near else ""
    remedy += "blockgen explain SPEC lists all of them"
    return Problem("command line", None, "KEY", f'"{name}"', "a key, a check or a feature of the plan", remedy)


def _input(plan: Plan, of: Input, above: tuple[str, ...]) -> dict[str, Any]:
    known = of.ref is not None and of.ref in plan.records and of.ref not in above
    return {
        "value": of.value,
        "unit": of.unit,
        "origin": of.origin,
        "ref": of.ref,
        "derivation": _node(plan, plan.records[of.ref], above) if known and of.ref is not None else None,
    }


def _node(plan: Plan, record: Record, above: tuple[str, ...]) -> dict[str, Any]:
    return {
        "key": record.key,
        "value": record.value,
        "unit": record.unit,
        "upper": record.upper,
        "lower": record.lower,
        "fit": record.fit,
        "rule": record.rule,
        "inputs": {name: _input(plan, of, (*above, record.key)) for name, of in record.inputs.items()},
        "source": source(record),
        "origin": record.origin,
        "line": record.line,
    }
