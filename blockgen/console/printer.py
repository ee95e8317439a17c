"""Puts pages, JSON and messages on standard output and standard error."""

from __future__ import annotations

import json
import os
import shutil
import sys
from collections.abc import Callable, Mapping
from typing import Any, TextIO

from blockgen.console import plain
from blockgen.console.page import Page
from blockgen.errors import MachineError

_PIPE_WIDTH = 100


def show(page: Page) -> None:
    """Print a page: with rich on a terminal, as plain text elsewhere."""
    if sys.stdout.isatty() and os.environ.get("TERM") != "dumb":
        from blockgen.console.terminal import show as show_on_terminal

        _guarded(lambda: show_on_terminal(page))
    else:
        say("\n".join(plain.lines(page, width())))


def say(text: str) -> None:
    """Print a text and a line feed on standard output."""
    _guarded(lambda: _put(sys.stdout, text))


def say_json(document: Mapping[str, Any]) -> None:
    """Print one JSON document on standard output."""
    say(json.dumps(document, indent=2, ensure_ascii=not _is_unicode(sys.stdout), allow_nan=False))


def complain(text: str) -> None:
    """Print a message on standard error; there is no one to tell when that fails."""
    try:
        _put(sys.stderr, text)
    except (OSError, ValueError):
        return


def _put(stream: TextIO, text: str) -> None:
    encoding = stream.encoding or "utf-8"
    stream.write(text.encode(encoding, "replace").decode(encoding) + "\n")
    stream.flush()


def _guarded(action: Callable[[], None]) -> None:
    """Write; a reader that went away is no fault, a full disk is one.

    Raises:
        MachineError: standard output cannot be written.
    """
    try:
        action()
        sys.stdout.flush()
    except BrokenPipeError:
        _discard_the_rest()
    except OSError as error:
        _discard_the_rest()
        raise MachineError(f"standard output cannot be written: {error.strerror or error}") from error


def _discard_the_rest() -> None:
    """Send what is still buffered nowhere, so that the interpreter does not stumble over it as it ends."""
    nowhere = os.open(os.devnull, os.O_WRONLY)
    os.dup2(nowhere, sys.stdout.fileno())
    os.close(nowhere)


def width() -> int:
    """Return the number of characters in a line: the terminal's, COLUMNS, or that of a pipe."""
    return max(40, shutil.get_terminal_size((_PIPE_WIDTH, 24)).columns)


def _is_unicode(stream: TextIO) -> bool:
    return (stream.encoding or "").lower().replace("-", "").startswith("utf")
