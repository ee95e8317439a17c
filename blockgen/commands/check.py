"""``blockgen check``."""

from __future__ import annotations

from typing import Annotated

import typer

from blockgen.commands.app import app
from blockgen.commands.options import BandAsked, Json, Quiet, SpecFile, Strict, WithStiffness, share
from blockgen.commands.outcome import exit_code
from blockgen.console import printer


@app.command()
def check(
    spec: SpecFile,
    as_json: Json = False,
    strict: Strict = False,
    quiet: Quiet = False,
    arrangement: Annotated[
        str, typer.Option(metavar="NAME", help="block, or plate to compare with a separate plate and unit.")
    ] = "block",
    stiffness: WithStiffness = False,
    band: BandAsked = None,
    advice: Annotated[
        bool, typer.Option("--advise", help="Tell what makes it stiffer or lighter, by finite elements.")
    ] = False,
) -> int:
    """Size the block and check it, without modelling it unless the stiffness is asked for.

    Example: blockgen check axis.toml --strict, blockgen check axis.toml --arrangement plate,
    blockgen check axis.toml --stiffness, blockgen check axis.toml --advise
    """
    from blockgen.advise import advise
    from blockgen.change.family import told_of_family
    from blockgen.console.alignment_page import alignment_parts, arrangement_parts
    from blockgen.console.check_page import check_page
    from blockgen.console.family_page import family_parts
    from blockgen.console.progress import progress
    from blockgen.console.stiffness_page import advice_parts, stiffness_parts
    from blockgen.outputs.advice_rows import with_advice
    from blockgen.outputs.alignment_json import with_arrangements
    from blockgen.outputs.stiffness_rows import with_stiffness
    from blockgen.outputs.summary_json import summary
    from blockgen.pipeline import compare_arrangements, design

    with told_of_family(spec), progress(quiet=quiet) as told:
        made = design(spec, stiffness=True, band=share(band), progress=told) if stiffness else design(spec)
        found = advise(made.spec, made.plan, told) if advice else None
    rows = compare_arrangements(made, arrangement)
    if as_json:
        from blockgen.making.setup_sheet import setup_sheet
        from blockgen.outputs.layout_json import with_layout
        from blockgen.outputs.making_json import with_making

        document = summary(made.plan, made.findings, made.status, made.spec_sha256, made.alignment)
        document = with_stiffness(with_arrangements(with_layout(document, made.plan), rows), made.stiffness)
        printer.say_json(with_advice(with_making(document, setup_sheet(made.plan)), found))
    elif not quiet:
        beside = [
            *family_parts(made.plan, made.findings),
            *alignment_parts(made.alignment),
            *(arrangement_parts(rows) if rows else ()),
        ]
        beside += [] if made.stiffness is None else stiffness_parts(made.stiffness)
        beside += [] if found is None else advice_parts(found)
        printer.show(check_page(made.plan, made.findings, made.status, beside))
    return exit_code(made.findings, made.status, strict=strict, told=as_json or not quiet)
