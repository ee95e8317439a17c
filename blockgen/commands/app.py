"""The application to which the commands belong, and its own options."""

from __future__ import annotations

from typing import Annotated

import typer

from blockgen import __version__
from blockgen.console import printer

app = typer.Typer(
    name="blockgen",
    add_completion=True,  # tab completion: --install-completion
    rich_markup_mode=None,  # keeps rich out of --help
    pretty_exceptions_enable=False,
    context_settings={"help_option_names": ["-h", "--help"]},
)


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

    Exit codes: 0 done; 1 the design fails; 2 the input is wrong; 3 the machine or the tool failed; 130 interrupted.
    """
    del version
    if context.invoked_subcommand is None:
        printer.say(context.get_help())
    return 0
