"""``blockgen compare``."""

from __future__ import annotations

from pathlib import Path
from typing import Annotated

import typer

from blockgen.commands.app import app
from blockgen.commands.options import Json, Quiet
from blockgen.console import printer


@app.command()
def compare(
    old: Annotated[Path, typer.Argument(metavar="OLD", help="The old design: a spec, or a folder that was built.")],
    new: Annotated[Path, typer.Argument(metavar="NEW", help="The new design: a spec, or a folder that was built.")],
    out: Annotated[
        Path | None, typer.Option(metavar="DIR", help="Write document, data and picture here; models both blocks.")
    ] = None,
    as_json: Json = False,
    quiet: Quiet = False,
) -> int:
    """Tell what differs between two designs, what stays, and what became obsolete.

    Example: blockgen compare old.toml new.toml, blockgen compare out/J-001_A new.toml --out changes

    Exit code 0 where they differ and where they do not; 1 where no block can exist for one of them.
    """
    from blockgen.change.compare.compare import compare_paths, with_rework, with_volumes
    from blockgen.change.compare.json import comparison_document
    from blockgen.change.compare.write import change_stem, write_change
    from blockgen.console.compare_page import compare_page
    from blockgen.console.progress import progress

    found = compare_paths(old, new)
    files: tuple[Path, ...] = ()
    with progress(quiet=quiet) as told:
        if out is not None:
            change_stem(found)  # before anything slow
            told("modelling both blocks")
            found, over = with_volumes(found)
        found = with_rework(found, prove=out is not None)
        if out is not None:
            told("writing the change")
            files = write_change(found, over, out)
    if as_json:
        printer.say_json(comparison_document(found))
    elif not quiet:
        printer.show(compare_page(found, files))
    return 0
