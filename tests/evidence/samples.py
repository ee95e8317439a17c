"""Measured blocks for tests: the servo example, sheets as text, measurements without a file."""

from __future__ import annotations

import csv
import io
from functools import lru_cache
from pathlib import Path

from blockgen.evidence.characteristics import inspection_rows
from blockgen.evidence.measurement import Measured, Measurement
from blockgen.outputs.inspection_csv import inspection_csv
from blockgen.pipeline import design

EXAMPLES = Path(__file__).parents[2] / "presets" / "examples"
SERVO = EXAMPLES / "spray_carriage_servo.toml"
ZONES = ("motor_bore.coaxiality", "motor_seat.parallelism", "bearing_seat.perpendicularity")


@lru_cache(maxsize=4)
def made(name="servo"):
    """Return the design of an example."""
    return design(EXAMPLES / f"spray_carriage_{name}.toml")


@lru_cache(maxsize=4)
def rows_of(name="servo"):
    """Return the rows of its inspection sheet by id."""
    return {row.id: row for row in inspection_rows(made(name).plan)}


def measured(values, name="servo"):
    """Return measurements from ``{id: (value, uncertainty)}``."""
    rows = rows_of(name)
    return Measured("made up", {i: Measurement(rows[i], float(v), float(u)) for i, (v, u) in values.items()})


def usual(row):
    """Return a value in the middle of a row's limits."""
    if row.kind in {"offset", "slope"}:
        return 0.0
    if row.lower is not None and row.upper is not None:
        return round((row.lower + row.upper) / 2, 6)
    return row.lower if row.upper is None else 0.6 * row.upper


def good(name="servo", scale=1.0):
    """Return a good block, every row of it measured, zones and vectors both."""
    rows = [row for row in rows_of(name).values() if row.needed == "block"]
    return {row.id: (usual(row), scale * (row.uncertainty_wanted or 0.0)) for row in rows}


def changed(**values):
    """Return the good block with some values changed, ``__`` for the dot of an id; None takes one out."""
    all_of_it = good() | {key.replace("__", "."): value for key, value in values.items()}
    return {key: value for key, value in all_of_it.items() if value is not None}


def vectors(scale=1.0, **values):
    """Return every size and vector of block and bought parts; others than the given ones are 0."""
    found = {}
    for row in rows_of().values():
        if row.kind in {"offset", "slope", "size", "pilot"}:
            found[row.id] = (usual(row), scale * row.uncertainty_wanted)
    return found | {key.replace("__", "."): value for key, value in values.items()}


def sheet(values, name="servo", spec_sha256=None):
    """Return the text of a sheet filled with ``{id: (value, uncertainty[, unit])}``."""
    of = made(name)
    lines = list(csv.reader(io.StringIO(inspection_csv(of.plan, spec_sha256 or of.spec_sha256, of.status))))
    for cells in lines:
        if len(cells) > 4 and cells[1] in values:
            value, uncertainty, *unit = values[cells[1]]
            cells[2], cells[4] = str(value), str(uncertainty)
            cells[3] = unit[0] if unit else cells[3]
    out = io.StringIO()
    csv.writer(out, lineterminator="\n").writerows(lines)
    return out.getvalue()
