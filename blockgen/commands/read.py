"""``blockgen read-motor`` and ``blockgen read-bearing``."""

from __future__ import annotations

from pathlib import Path
from typing import Literal

from blockgen.commands.app import app
from blockgen.commands.options import DraftFile, Json, Quiet, StepFile
from blockgen.console import printer


@app.command("read-motor")
def read_motor(
    file: StepFile,
    out: DraftFile = None,
    as_json: Json = False,
    quiet: Quiet = False,
) -> int:
    """Read a motor's sizes from its maker's STEP file.

    Example: blockgen read-motor motor.step --out motor.toml

    Finds mounting face, pilot, bolt pattern, flange and shaft end, says how sure each value is and why, and writes
    them as the table [motor] of a spec. Exit code 2 when there is no mounting face in the file.
    """
    return _read("motor", file, out, as_json=as_json, quiet=quiet)


@app.command("read-bearing")
def read_bearing(
    file: StepFile,
    out: DraftFile = None,
    as_json: Json = False,
    quiet: Quiet = False,
) -> int:
    """Read a bearing unit's sizes from its maker's STEP file.

    Example: blockgen read-bearing unit.step --out bearing.toml

    Finds mounting face, pilot, bolt pattern, flange and nut, says how sure each value is and why, and writes them as
    the table [bearing] of a spec. Exit code 2 when there is no mounting face in the file.
    """
    return _read("bearing", file, out, as_json=as_json, quiet=quiet)


def _read(part: Literal["motor", "bearing"], file: Path, out: Path | None, *, as_json: bool, quiet: bool) -> int:
    """Read a maker's file, write the draft where one is wanted, and print what was found."""
    from blockgen.console.reading_page import draft_text, reading_document, reading_page
    from blockgen.reading.draft import write_draft
    from blockgen.reading.part import read_part

    reading = read_part(file, part)
    written = None if out is None else str(out)
    if out is not None:
        write_draft(draft_text(reading, written), out)
    if as_json:
        printer.say_json(reading_document(reading, written))
    elif not quiet:
        printer.show(reading_page(reading, written))
    return 0
