"""The commands: parse, call the pipeline, print."""

from __future__ import annotations

from collections.abc import Sequence
from pathlib import Path
from typing import TYPE_CHECKING, Annotated

import typer

from blockgen import __version__
from blockgen.console import printer

if TYPE_CHECKING:
    from blockgen.checks.finding import Finding

app = typer.Typer(
    name="blockgen",
    add_completion=False,
    rich_markup_mode=None,  # keeps rich out of --help
    pretty_exceptions_enable=False,
    context_settings={"help_option_names": ["-h", "--help"]},
)

SpecFile = Annotated[Path, typer.Argument(metavar="SPEC", help="The spec, a TOML file.")]
Json = Annotated[bool, typer.Option("--json", help="Print one JSON document and nothing else.")]
Strict = Annotated[bool, typer.Option("--strict", help="Count warnings as failures.")]
Quiet = Annotated[bool, typer.Option("--quiet", help="Print nothing but errors.")]


def names() -> tuple[str, ...]:
    """Return the names of the commands."""
    return tuple(c.name or c.callback.__name__ for c in app.registered_commands if c.callback)


def _print_version(asked: bool) -> None:
    if asked:
        printer.say(f"blockgen {__version__}")
        raise typer.Exit


@app.callback(invoke_without_command=True)
def blockgen(
    context: typer.Context,
    version: Annotated[
        bool, typer.Option("--version", callback=_print_version, is_eager=True, help="Print the version.")
    ] = False,
) -> int:
    """Size, check and model the one-piece mounting block of a ball-screw axis.

    Example: blockgen new axis.toml, fill it in, blockgen check axis.toml, blockgen build axis.toml
    """
    del version
    if context.invoked_subcommand is None:
        printer.say(context.get_help())
    return 0


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


@app.command()
def check(spec: SpecFile, as_json: Json = False, strict: Strict = False, quiet: Quiet = False) -> int:
    """Size the block and check it, without modelling it.

    Example: blockgen check axis.toml --strict
    """
    from blockgen.console.check_page import check_page
    from blockgen.outputs.summary_json import summary
    from blockgen.pipeline import design

    made = design(spec)
    if as_json:
        printer.say_json(summary(made.plan, made.findings, made.status, made.spec_sha256))
    elif not quiet:
        printer.show(check_page(made.plan, made.findings, made.status))
    return _exit_code(made.findings, strict=strict)


@app.command()
def build(
    spec: SpecFile,
    out: Annotated[Path, typer.Option(metavar="DIR", help="Folder for the set's own folder.")] = Path("out"),
    only: Annotated[str | None, typer.Option(metavar="ROLES", help="Roles to write, such as block,stl.")] = None,
    strict: Strict = False,
    quiet: Quiet = False,
) -> int:
    """Build all files of the block; an old set is replaced as a whole.

    Example: blockgen build axis.toml --out out --only block,stl
    """
    from blockgen.console.check_page import build_page
    from blockgen.console.progress import progress
    from blockgen.pipeline import build as build_set

    with progress(quiet=quiet) as told:
        made = build_set(spec, out, None if only is None else only.split(","), told)
    if not quiet:
        printer.show(build_page(made.folder, made.files, made.findings, made.status))
    return _exit_code(made.findings, strict=strict)


@app.command()
def explain(
    spec: SpecFile,
    key: Annotated[str | None, typer.Argument(metavar="[KEY]", help="A dimension or input; without it all.")] = None,
    as_json: Json = False,
) -> int:
    """Show how a dimension came about.

    Example: blockgen explain axis.toml length
    """
    from blockgen.console import explain_page
    from blockgen.pipeline import design

    plan = design(spec).plan
    if as_json:
        printer.say_json(explain_page.key_document(plan, key) if key else explain_page.keys_document(plan))
    else:
        printer.show(explain_page.key_page(plan, key) if key else explain_page.keys_page(plan))
    return 0


@app.command()
def presets(
    name: Annotated[str | None, typer.Argument(metavar="[NAME]", help="A preset; without it all of them.")] = None,
) -> int:
    """List the presets, or show what is in one.

    Example: blockgen presets
    """
    from blockgen.console import preset_page

    printer.show(preset_page.one_page(name) if name else preset_page.list_page())
    return 0


@app.command()
def lookup(
    kind: Annotated[str, typer.Argument(metavar="KIND", help="fit, thread, screw or material.")],
    what: Annotated[list[str], typer.Argument(metavar="WHAT", help="What to look up.")],
    as_json: Json = False,
) -> int:
    """Look a fit, thread, screw or material up in the tables.

    Example: blockgen lookup fit 60H7/h6, blockgen lookup thread M10, blockgen lookup screw M10
    """
    from blockgen.console import lookup_page

    if as_json:
        printer.say_json(lookup_page.document(kind, " ".join(what)))
    else:
        printer.show(lookup_page.page(kind, " ".join(what)))
    return 0


def _exit_code(findings: Sequence[Finding], *, strict: bool) -> int:
    bad = {"fail", "warn"} if strict else {"fail"}
    return 1 if any(finding.verdict in bad for finding in findings) else 0
