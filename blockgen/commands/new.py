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
    free: Annotated[bool, typer.Option("--free", help="With --from: lock nothing of the old block.")] = False,
    quiet: Quiet = False,
) -> int:
    """Write a commented spec to start from.

    Example: blockgen new axis.toml --motor NAME (blockgen presets lists the names),
    blockgen new next.toml --from axis.toml --motor NAME

    With --from and another part, the base screws, the shaft height and the side of each part that stays are locked to
    what the old block has; where no block can exist so, the file is written all the same (exit code 1).
    """
    parts = {"motor": motor, "bearing": bearing, "coupling": coupling}
    if old is not None:
        return _from_old(file, old, parts, free=free, quiet=quiet)
    from blockgen.errors import InputError, Problem
    from blockgen.outputs.starter_file import write_starter

    if free:
        remedy = "name the old spec with --from, or leave --free out"
        raise InputError([Problem("command line", None, "--free", "--free without --from", "both or neither", remedy)])
    write_starter(file, parts)
    if not quiet:
        printer.say(f"{file} is written. Fill it in, then run: blockgen check {file}")
    return 0


def _from_old(file: Path, old: Path, parts: dict[str, str | None], *, free: bool, quiet: bool) -> int:
    from blockgen.change.swap.swap import swap
    from blockgen.console.new_page import outcome, swap_page
    from blockgen.console.plain import lines

    made = swap(file, old, parts, free=free)
    if not quiet:
        printer.show(swap_page(made))
    elif made.conflicts:
        printer.complain("\n".join(lines(list(outcome(made)), printer.width())))
    return 1 if made.conflicts else 0
