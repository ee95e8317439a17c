"""The command line: runs a command and turns whatever happens into a message and an exit code.

The commands are loaded inside ``run``, so that the interrupt key is answered properly while they load.
"""

from __future__ import annotations

import sys
from collections.abc import Sequence
from typing import TYPE_CHECKING

if TYPE_CHECKING:
    from blockgen.errors import BlockgenError

_INTERRUPTED = 130


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
        from blockgen.commands import app

        code = app(args=list(arguments), prog_name="blockgen", standalone_mode=False)
    except KeyboardInterrupt:
        code = _INTERRUPTED
    except Exception as error:  # noqa: BLE001 # a traceback never reaches a user
        code = _INTERRUPTED if _came_from_interrupt(error) else _report(_as_ours(error, arguments), arguments)
    if code == _INTERRUPTED:
        sys.stderr.write("Interrupted; nothing was left half written.\n")
    return code if isinstance(code, int) else 0


def _came_from_interrupt(error: BaseException | None) -> bool:
    """Tell whether the interrupt key is behind an error: the kernel's libraries and typer turn it into others."""
    while error is not None:
        if isinstance(error, KeyboardInterrupt) or type(error).__name__ == "Abort":
            return True
        error = error.__cause__ or error.__context__
    return False


def _as_ours(error: Exception, arguments: Sequence[str]) -> BlockgenError:
    """Return any error as one of ours."""
    from blockgen.console.trouble import unforeseen, usage
    from blockgen.errors import BlockgenError, MachineError

    if isinstance(error, BlockgenError):
        return error
    message = getattr(error, "format_message", None)  # what wrong usage has; its class has no public name
    if callable(message):
        return usage(str(message()), _command(arguments))
    if isinstance(error, OSError):
        return MachineError(f"{error.filename or 'the system'}: {error.strerror or error}")
    return unforeseen(error)


def _report(error: BlockgenError, arguments: Sequence[str]) -> int:
    """Tell what went wrong and return the exit code."""
    from blockgen.console import printer
    from blockgen.console.trouble import as_document, as_text
    from blockgen.errors import MachineError

    if "--json" in arguments:
        try:
            printer.say_json(as_document(error))
        except MachineError as another:
            printer.complain(as_text(another))
    else:
        printer.complain(as_text(error, printer.width()))
    return error.exit_code


def _command(arguments: Sequence[str]) -> str:
    from blockgen.commands import names

    first = next((a for a in arguments if not a.startswith("-")), "")
    return f"blockgen {first}" if first in names() else "blockgen"
