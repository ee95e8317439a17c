"""What ``read-motor`` and ``read-bearing`` print: value, confidence and evidence, then what was not found."""

from __future__ import annotations

import os
from collections.abc import Iterator
from pathlib import Path
from typing import Any

from blockgen.console.page import BLANK, Line, Mark, Part, Row, Table, bullet, title
from blockgen.outputs.escape import one_line, toml_string
from blockgen.outputs.tidy import tidy
from blockgen.reading.confidence import RULES, Confidence
from blockgen.reading.draft import digits, draft
from blockgen.reading.found import Found, Reading

SCHEMA = 1

_MARKS: dict[Confidence, Mark] = {"high": "pass", "fair": "warn", "low": "fail"}
_NAMES = {"motor": "motor", "bearing": "bearing unit"}


def reading_page(reading: Reading, written: str | None) -> list[Part]:
    """Return the page of a reading.

    Args:
        reading: What was found.
        written: File to which the draft was written; None where it was not.
    """
    return [*_head(reading), *_values(reading), *_missing(reading), *_notes(reading), *_next(reading, written)]


def reading_document(reading: Reading, written: str | None) -> dict[str, Any]:
    """Return a reading as plain data.

    Args:
        reading: What was found.
        written: File to which the draft was written; None where it was not.
    """
    document: dict[str, Any] = tidy(
        {
            "schema": SCHEMA,
            "part": reading.part,
            "file": reading.file,
            "unit": reading.unit,
            "solids": reading.solids,
            "mounting": {
                "origin": reading.origin, "axis": reading.axis, "up": reading.up, "evidence": reading.evidence,
            },
            "values": [_as_data(found) for found in reading.found],
            "not_found": [{"key": m.key, "why": m.why} for m in reading.missing],
            "notes": reading.notes,
            "confidence": dict(RULES),
            "draft": draft_text(reading, written),
            "written": written,
        }
    )  # fmt: skip
    return document


def draft_text(reading: Reading, written: str | None) -> str:
    """Return the draft of the spec's table as TOML.

    Args:
        reading: What was found.
        written: File that it goes into; the model's path is told from its folder. None for the folder of now.
    """
    folder = Path.cwd() if written is None else Path(written).absolute().parent
    try:
        model = Path(os.path.relpath(reading.file, folder)).as_posix()
    except ValueError:  # another drive
        model = Path(reading.file).absolute().as_posix()
    return draft(reading, model, toml_string, one_line)


def _as_data(found: Found) -> dict[str, Any]:
    return {
        "key": found.key, "value": found.value, "unit": found.unit, "confidence": found.confidence,
        "evidence": found.evidence, "faces": found.faces, "residual": found.residual,
    }  # fmt: skip


def _head(reading: Reading) -> Iterator[Part]:
    unit = "inches" if reading.unit == "in" else f"in {reading.unit}"
    solids = f"{reading.solids} solid{'s' if reading.solids != 1 else ''}"
    yield Line(f"{_NAMES[reading.part].capitalize()} in {reading.file} ({unit}, {solids})", "title")
    yield BLANK
    yield Line(f"Mounting face: {'; '.join(reading.evidence)}.")
    place = ", ".join(f"{c:.3f}" for c in reading.origin)
    yield Line(f"Its centre is at ({place}) mm, it looks along {_vector(reading.axis)}, up is {_vector(reading.up)}.")
    yield BLANK


def _vector(of: tuple[float, float, float]) -> str:
    return "(" + ", ".join(f"{round(c, 4) + 0.0:g}" for c in of) + ")"


def _values(reading: Reading) -> Iterator[Part]:
    rows = tuple(Row((f.key, _words(f), f.confidence, f.evidence), _MARKS[f.confidence]) for f in reading.found)
    yield Table(("Key", "Value", "Sure", "Evidence"), rows, right=("Value",))
    yield BLANK
    used = {f.confidence for f in reading.found}
    yield from (bullet(f"{level}: {rule}", "quiet") for level, rule in RULES.items() if level in used)


def _words(found: Found) -> str:
    if isinstance(found.value, tuple):
        return ", ".join(f"({digits(y)}, {digits(z)})" for y, z in found.value)
    text = found.value if isinstance(found.value, str) else digits(found.value)
    return f"{text} {found.unit}".strip()


def _missing(reading: Reading) -> Iterator[Part]:
    yield from title("Not found")
    reasons: dict[str, list[str]] = {}
    for missing in reading.missing:
        reasons.setdefault(missing.why, []).append(missing.key)
    yield from (bullet(f"{', '.join(keys)}: {why}") for why, keys in reasons.items())


def _notes(reading: Reading) -> Iterator[Part]:
    if reading.notes:
        yield from title("Notes")
        yield from (bullet(note, "warn") for note in reading.notes)


def _next(reading: Reading, written: str | None) -> Iterator[Part]:
    yield BLANK
    if written is not None:
        yield Line(f"{written} is written: the table [{reading.part}] of a spec. Compare it with the data sheet.")
    else:
        yield Line(f"--out FILE writes the table [{reading.part}] of a spec with these values and their evidence.")
