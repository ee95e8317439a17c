"""``blockgen inspect``."""

from __future__ import annotations

from pathlib import Path
from typing import Annotated

import typer

from blockgen.commands.app import app
from blockgen.commands.options import Json, Quiet, SpecFile
from blockgen.console import printer


@app.command()
def inspect(
    spec: SpecFile,
    measured: Annotated[Path, typer.Argument(metavar="MEASURED", help="The filled inspection sheet, a CSV file.")],
    as_json: Json = False,
    quiet: Quiet = False,
) -> int:
    """Judge a block that was made, from what was measured on it.

    Example: blockgen inspect axis.toml measured.csv

    Accept, use with note, or reject (exit code 1); with the offset and angle that this one block gives, how to turn
    the motor, and the shim under the base.
    """
    from blockgen.alignment.heat import expansions_of
    from blockgen.console import inspect_page
    from blockgen.evidence.measured import read_measured
    from blockgen.evidence.verdict import verdict
    from blockgen.outputs.family_rows import mounted_motor
    from blockgen.outputs.inspect_json import inspect_document
    from blockgen.pipeline import design

    made = design(spec)
    faults = [finding.title for finding in made.findings if finding.verdict == "fail"]
    values = read_measured(measured, made.plan, made.spec_sha256)
    found = verdict(made.plan, values, expansions_of(made.plan), faults)
    mounted = mounted_motor(made.plan)
    if as_json:
        printer.say_json(inspect_document(found, str(measured), made.spec_sha256, made.status, mounted))
    elif not quiet:
        printer.show(inspect_page.inspect_page(found, made.status, mounted))
    elif found.decision == "reject":
        from blockgen.console.plain import lines

        printer.complain("\n".join(lines(inspect_page.rejection(found), printer.width())))
    return 1 if found.decision == "reject" else 0
