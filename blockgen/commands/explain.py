"""``blockgen explain``."""

from __future__ import annotations

from typing import Annotated

import typer

from blockgen.commands.app import app
from blockgen.commands.options import Json, SpecFile
from blockgen.console import printer


@app.command()
def explain(
    spec: SpecFile,
    key: Annotated[
        str | None,
        typer.Argument(metavar="[KEY]", help="A dimension, an input, a check or a feature; without it all are listed."),
    ] = None,
    as_json: Json = False,
) -> int:
    """Show how a dimension, a check or a feature came about.

    Example: blockgen explain axis.toml length, blockgen explain axis.toml base_slip
    """
    from blockgen.change.family import told_of_family
    from blockgen.console import explain_page
    from blockgen.pipeline import design

    with told_of_family(spec):
        made = design(spec)
    about = (made.plan, made.findings)
    if as_json:
        printer.say_json(explain_page.document(*about, key) if key else explain_page.list_document(*about))
    else:
        printer.show(explain_page.page(*about, key) if key else explain_page.list_page(*about))
    return 0
