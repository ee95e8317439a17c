"""``blockgen sweep``."""

from __future__ import annotations

from pathlib import Path
from typing import Annotated

import typer

from blockgen.commands.app import app
from blockgen.commands.options import Json, Quiet, SpecFile
from blockgen.console import printer

_VARY = "A key and its values, KEY=A,B,C or KEY=lo:hi:step; again for each further key."


@app.command()
def sweep(  # noqa: PLR0913, PLR0917 # one argument an option
    spec: SpecFile,
    vary: Annotated[list[str] | None, typer.Option(metavar="KEY=VALUES", help=_VARY)] = None,
    out: Annotated[Path, typer.Option(metavar="FILE", help="The table, .csv or .parquet.")] = Path("sweep.csv"),
    sample: Annotated[
        int | None, typer.Option(metavar="N", min=1, help="Take N variants, spread evenly, instead of all.")
    ] = None,
    seed: Annotated[int, typer.Option(metavar="N", min=0, help="Another seed takes another sample.")] = 0,
    statistics: Annotated[
        bool, typer.Option("--statistics", help="Exact statistics of the alignment, and its checks.")
    ] = False,
    solids: Annotated[
        Path | None, typer.Option(metavar="DIR", help="Write STEP and STL of each block here; with --statistics.")
    ] = None,
    workers: Annotated[
        int | None, typer.Option(metavar="N", min=1, help="Processes; all processors without it.")
    ] = None,
    scheduler: Annotated[
        str | None,
        typer.Option(metavar="ADDRESS", help='Work on the Dask cluster there; needs pip install ".[sweep]".'),
    ] = None,
    no_plot: Annotated[bool, typer.Option("--no-plot", help="Draw no picture of the front.")] = False,
    as_json: Json = False,
    quiet: Quiet = False,
) -> int:
    """Try many variants of a spec: a table of all, the best ones marked.

    Stopped or killed, the same command goes on where it was.

    Example: blockgen sweep axis.toml --vary base.shaft_height=60:80:5 --vary base.screw=M8,M10
    """
    from blockgen.change.sweep.sweep import Wishes
    from blockgen.change.sweep.sweep import sweep as try_all
    from blockgen.console.progress import progress
    from blockgen.console.sweep_page import sweep_page

    wishes = Wishes(
        tuple(vary or ()), out, sample, seed, statistics, solids, workers, scheduler, plot=not no_plot,
    )  # fmt: skip
    try:
        with progress(quiet=quiet) as told:
            found = try_all(spec, wishes, told)
    except KeyboardInterrupt:
        printer.complain("What was done is kept: the same command goes on where it was.")
        raise
    if as_json:
        from blockgen.change.sweep.json import sweep_json

        printer.say_json(sweep_json(found))
    elif not quiet:
        printer.show(sweep_page(found))
    return 0
