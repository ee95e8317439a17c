"""The commands: parse, call the pipeline, print."""

from __future__ import annotations

import sys
from collections.abc import Sequence
from pathlib import Path
from typing import TYPE_CHECKING, Annotated

import typer

from blockgen import __version__
from blockgen.console import printer
from blockgen.console.trouble import as_document, as_text, unforeseen, usage
from blockgen.errors import BlockgenError, MachineError

if TYPE_CHECKING:
    from blockgen.checks.finding import Finding

_INTERRUPTED = 130

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


def main() -> None:
    """Run the command line and end the process with its exit code."""
    sys.exit(run(sys.argv[1:]))


def run(arguments: Sequence[str]) -> int:
    """Run one command.

    Args:
        arguments: The command line without the program's name.

    Returns:
        0 done, 1 the design fails, 2 the input is wrong, 3 the machine or the tool failed, 130 interrupted.
    """
    try:
        code = app(args=list(arguments), prog_name="blockgen", standalone_mode=False)
    except BlockgenError as error:
        return _report(error, arguments)
    except (KeyboardInterrupt, typer.Abort):
        code = _INTERRUPTED
    except Exception as error:  # noqa: BLE001 # a traceback never reaches a user
        return _report(_as_ours(error, arguments), arguments)
    if code == _INTERRUPTED:
        printer.complain("Interrupted; nothing was left half written.")
    return code if isinstance(code, int) else 0


def _as_ours(error: Exception, arguments: Sequence[str]) -> BlockgenError:
    """Return somebody else's error as one of ours."""
    message = getattr(error, "format_message", None)  # what wrong usage has; its class has no public name
    if callable(message):
        return usage(str(message()), _command(arguments))
    if isinstance(error, OSError):
        return MachineError(f"{error.filename or 'the system'}: {error.strerror or error}")
    return unforeseen(error)


def _report(error: BlockgenError, arguments: Sequence[str]) -> int:
    """Tell what went wrong and return the exit code."""
    if "--json" in arguments:
        try:
            printer.say_json(as_document(error))
        except MachineError as another:
            printer.complain(as_text(another))
    else:
        printer.complain(as_text(error, printer.width()))
    return error.exit_code


def _command(arguments: Sequence[str]) -> str:
    names = {command.name or command.callback.__name__ for command in app.registered_commands if command.callback}
    first = next((a for a in arguments if not a.startswith("-")), "")
    return f"blockgen {first}" if first in names else "blockgen"


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
