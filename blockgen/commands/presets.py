"""``blockgen presets``."""

from __future__ import annotations

from typing import Annotated

import typer

from blockgen.commands.app import app
from blockgen.console import printer


@app.command()
def presets(
    name: Annotated[str | None, typer.Argument(metavar="[NAME]", help="A preset; without it all of them.")] = None,
) -> int:
    """List the presets, or show what is in one.

    Example: blockgen presets

    Presets of your own are TOML files in the folder that the environment variable BLOCKGEN_PRESETS names, else in
    the folder that the list ends with. One of yours hides a shipped one of the same name.
    """
    from blockgen.console import preset_page
    from blockgen.errors import InputError
    from blockgen.spec.presets import readable_presets

    if name:
        printer.show(preset_page.one_page(name))
        return 0
    presets, problems = readable_presets()
    printer.show(preset_page.list_page(presets))
    if problems:
        raise InputError(problems)
    return 0
