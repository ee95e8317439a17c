"""``blockgen lookup``."""

from __future__ import annotations

from typing import Annotated

import typer

from blockgen.commands.app import app
from blockgen.commands.options import Json
from blockgen.console import printer


@app.command()
def lookup(
    kind: Annotated[str, typer.Argument(metavar="KIND", help="fit, thread, screw or material.")],
    what: Annotated[list[str], typer.Argument(metavar="WHAT", help="What to look up.")],
    as_json: Json = False,
) -> int:
    """Look up a fit, thread, screw or material.

    A material may be one of the tables or a preset.

    Example: blockgen lookup fit 60H7/h6, blockgen lookup thread M10, blockgen lookup material S235JR

    Materials of your own are presets: blockgen presets --help says where they go.
    """
    from blockgen.console import lookup_page

    if as_json:
        printer.say_json(lookup_page.document(kind, " ".join(what)))
    else:
        printer.show(lookup_page.page(kind, " ".join(what)))
    return 0
