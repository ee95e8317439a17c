"""``blockgen new``."""

from __future__ import annotations

from pathlib import Path
from typing import Annotated

import typer

from blockgen.commands.app import app
from blockgen.commands.options import Quiet
from blockgen.console import printer


@app.command()
def new(
    file: Annotated[Path, typer.Argument(metavar="FILE", help="The spec to write; must not exist yet.")],
    motor: Annotated[str | None, typer.Option(metavar="PRESET", help="Preset of the motor.")] = None,
    bearing: Annotated[str | None, typer.Option(metavar="PRESET", help="Preset of the bearing unit.")] = None,
    coupling: Annotated[str | None, typer.Option(metavar="PRESET", help="Preset of the coupling.")] = None,
    old: Annotated[Path | None, typer.Option("--from", metavar="OLD", help="Start from this spec.")] = None,
    quiet: Quiet = False,
) -> int:
    """Write a commented spec to start from.

    Example: blockgen new axis.toml --motor NAME (blockgen presets lists the names)
    """
    from blockgen.outputs.starter_file import write_starter

    write_starter(file, {"motor": motor, "bearing": bearing, "coupling": coupling}, old)
    if not quiet:
        printer.say(f"{file} is written. Fill it in, then run: blockgen check {file}")
    return 0
