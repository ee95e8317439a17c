"""``blockgen build``."""

from __future__ import annotations

from pathlib import Path
from typing import Annotated

import typer

from blockgen.commands.app import app
from blockgen.commands.options import ONLY, BandAsked, Quiet, SpecFile, Strict, WithStiffness, share
from blockgen.commands.outcome import exit_code
from blockgen.console import printer


@app.command()
def build(
    spec: SpecFile,
    out: Annotated[Path, typer.Option(metavar="DIR", help="Folder for the set's own folder.")] = Path("out"),
    only: Annotated[str | None, typer.Option(metavar="ROLES", help=ONLY)] = None,
    no_pmi: Annotated[bool, typer.Option("--no-pmi", help="Leave the tolerances out of the STEP file.")] = False,
    strict: Strict = False,
    quiet: Quiet = False,
    stiffness: WithStiffness = False,
    band: BandAsked = None,
) -> int:
    """Build all files of the block; an old set is replaced as a whole.

    Example: blockgen build axis.toml --out out --only block,drawing
    """
    from blockgen.change.family import told_of_family
    from blockgen.console.check_page import build_page
    from blockgen.console.progress import progress
    from blockgen.pipeline import build as build_set

    with told_of_family(spec), progress(quiet=quiet) as told:
        roles = None if only is None else only.split(",")
        made = build_set(spec, out, roles, told, tolerances=not no_pmi, stiffness=stiffness, band=share(band))
    if not quiet:
        printer.show(build_page(made.folder, made.files, made.findings, made.status))
    return exit_code(made.findings, made.status, strict=strict, told=not quiet)
