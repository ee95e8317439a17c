"""A line on standard error that says what a long command is doing; on a terminal only."""

from __future__ import annotations

import sys
from collections.abc import Callable, Iterator
from contextlib import contextmanager

from blockgen.outputs.escape import one_line


@contextmanager
def progress(*, quiet: bool) -> Iterator[Callable[[str], None]]:
    """Yield a function that shows a step in place of the one before; the line is gone at the end."""
    if quiet or not sys.stderr.isatty():
        yield _ignore
        return
    try:
        yield _show
    finally:
        _show("")


def _show(step: str) -> None:
    sys.stderr.write("\r\x1b[2K" + (f"{one_line(step)} ..." if step else ""))
    sys.stderr.flush()


def _ignore(step: str) -> None:
    del step
