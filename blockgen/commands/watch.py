"""``blockgen watch``."""

from __future__ import annotations

import time
from contextlib import nullcontext
from pathlib import Path
from typing import TYPE_CHECKING, Annotated

import typer

from blockgen.commands.app import app
from blockgen.commands.options import Quiet, SpecFile
from blockgen.console import printer

if TYPE_CHECKING:
    from collections.abc import Callable

    from blockgen.watching.board import Board
    from blockgen.watching.events import Event

_UNBROKEN = 1000  # characters in a line for a browser, which breaks lines itself


@app.command()
def watch(
    spec: SpecFile,
    out: Annotated[Path, typer.Option(metavar="DIR", help="Folder for the set's own folder.")] = Path("out"),
    only: Annotated[
        str | None,
        typer.Option(metavar="ROLES", help="Write these only; without it block, stl and what the set has already."),
    ] = None,
    serve: Annotated[bool, typer.Option("--serve", help="Show the page in a browser on this computer.")] = False,
    port: Annotated[
        int | None, typer.Option(metavar="N", min=0, max=65535, help="Port for --serve; without it a free one.")
    ] = None,
    quiet: Quiet = False,
) -> int:
    """Build the block again each time the spec is saved, and tell what changed.

    Block, STL and checks come at once; the other files of the set follow when the spec is left alone. A wrong spec is
    told and leaves the set as it stands. Presets and makers' models that the spec uses are watched too.

    Example: blockgen watch axis.toml --serve

    The interrupt key (Ctrl-C) is the way to end it, so that ends with exit code 0; files that are still to follow are
    waited for unless it is pressed again.
    """
    from blockgen.console.watch_page import started
    from blockgen.outputs.names import chosen_roles
    from blockgen.watching.board import Board
    from blockgen.watching.ending import ended_by_key
    from blockgen.watching.server import served
    from blockgen.watching.watch import Asked, needs_a_spec
    from blockgen.watching.watch import watch as watch_spec

    roles = None if only is None else chosen_roles(only.split(","))
    _needs_serve(port, serve=serve)
    needs_a_spec(spec)
    board = Board() if serve else None
    with ended_by_key() as ending, nullcontext() if board is None else served(board, port or 0) as address:
        if serve or not quiet:
            printer.show(started(spec, address))
        watch_spec(Asked(spec, out, roles, serve), _teller(spec, board, quiet=quiet), ending)
    return 0


def _needs_serve(port: int | None, *, serve: bool) -> None:
    """Refuse a port without a server.

    Raises:
        InputError: there is one.
    """
    from blockgen.errors import InputError, Problem

    if port is not None and not serve:
        raise InputError([Problem("command line", None, "--port", str(port), "--serve beside it", "add --serve")])


def _teller(spec: Path, board: Board | None, *, quiet: bool) -> Callable[[Event], None]:
    """Return what tells each event: on the terminal, and on the board where there is one."""
    from blockgen.console.watch_page import watch_page, watch_text
    from blockgen.watching.events import Unfinished, Wrong
    from blockgen.watching.live import put_up

    def tell(event: Event) -> None:
        at = time.strftime("%H:%M:%S")
        if board is not None:
            put_up(board, event, watch_text(event, spec, at, _UNBROKEN).strip())
        if isinstance(event, Wrong | Unfinished):
            printer.complain(watch_text(event, spec, at, printer.width()))
        elif not quiet:
            printer.show(watch_page(event, spec, at))

    return tell
