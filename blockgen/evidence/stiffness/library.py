"""The finite element library, loaded when it is first used; a clear word where it is not installed."""

from __future__ import annotations

import os
import sys
from collections.abc import Iterator
from contextlib import contextmanager
from importlib.util import find_spec
from typing import Any

from blockgen.errors import MachineError

EXTRA = 'pip install ".[fea]"'
"""What installs it, from the folder of the sources."""

_STREAMS = (1, 2)


def library() -> Any:
    """Return the module ``ngsolve``, silent and on one thread: with more its sums differ from run to run.

    Raises:
        MachineError: it is not installed.
    """
    try:
        import ngsolve
    except ImportError as error:
        raise _missing(str(error)) from error
    ngsolve.ngsglobals.msg_level = 0
    ngsolve.SetNumThreads(1)
    return ngsolve


def installed() -> None:
    """Do nothing where the library can be loaded, without loading it.

    Raises:
        MachineError: it is not installed.
    """
    for name in ("netgen", "ngsolve"):
        if name in sys.modules and sys.modules[name] is None:
            raise _missing(f"No module named '{name}'")
        if name not in sys.modules and find_spec(name) is None:
            raise _missing(f"No module named '{name}'")


def _missing(why: str) -> MachineError:
    return MachineError(
        f"the stiffness needs the packages netgen-mesher and ngsolve ({why}): install them with {EXTRA}, "
        "or with pip install netgen-mesher ngsolve"
    )


@contextmanager
def silence() -> Iterator[None]:
    """Send what the mesher prints past Python nowhere: it would stand in the middle of a JSON document."""
    sys.stdout.flush()
    kept, nowhere = [os.dup(number) for number in _STREAMS], os.open(os.devnull, os.O_WRONLY)
    try:
        for number in _STREAMS:
            os.dup2(nowhere, number)
        yield
    finally:
        for number, old in zip(_STREAMS, kept, strict=True):
            os.dup2(old, number)
        for opened in (*kept, nowhere):
            os.close(opened)
