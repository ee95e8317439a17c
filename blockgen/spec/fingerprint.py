"""The hash of a spec: what was asked, whatever its spelling, its order of keys and the names of its presets."""

from __future__ import annotations

import hashlib
import os
from collections.abc import Mapping
from datetime import UTC, datetime

from blockgen.errors import InputError, Problem
from blockgen.record import Record, Value
from blockgen.spec.load import Spec, model_path, model_records

# Digits that count; conversions of units differ further down.
_DIGITS = 10


def spec_hash(spec: Spec) -> str:
    """Return the sha256 of the resolved values, the contents of model files and the date.

    Values of presets count as values, so a changed preset changes the hash, and the resolved spec without
    presets has the same hash as the spec it came from.

    Raises:
        InputError: SOURCE_DATE_EPOCH is not a number.
        OSError: a model file cannot be read.
    """
    digest = hashlib.sha256()
    models = {r.key for r in model_records(spec.records)}
    for key in sorted(spec.records):
        record = spec.records[key]
        if key != "drawing.date":
            value = _model_hash(spec, record) if key in models else _canonical(record.value)
            digest.update(f"{key}={value} {record.unit}\n".encode())
    digest.update(f"date={build_date(spec.records)}\n".encode())
    return digest.hexdigest()


def build_date(records: Mapping[str, Record]) -> str | None:
    """Return the date for drawing and file headers: drawing.date, else SOURCE_DATE_EPOCH in UTC, else None.

    Raises:
        InputError: SOURCE_DATE_EPOCH is not a number of seconds.
    """
    given = records.get("drawing.date")
    if given is not None and given.value is not None:
        return str(given.value)
    epoch = os.environ.get("SOURCE_DATE_EPOCH")
    if not epoch:
        return None
    try:
        return datetime.fromtimestamp(int(epoch), UTC).date().isoformat()
    except (ValueError, OverflowError, OSError):
        problem = Problem("SOURCE_DATE_EPOCH", None, "", repr(epoch), "seconds since 1970 as a whole number")
        raise InputError([problem]) from None


def _canonical(value: Value | object) -> str:
    if isinstance(value, tuple):
        return "[" + ", ".join(map(_canonical, value)) + "]"
    if isinstance(value, bool) or not isinstance(value, (int, float)):
        return repr(value)
    return f"{value + 0.0:.{_DIGITS}g}"


def _model_hash(spec: Spec, record: Record) -> str:
    return hashlib.sha256(model_path(spec.path, record).read_bytes()).hexdigest()
