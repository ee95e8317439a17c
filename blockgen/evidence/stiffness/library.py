"""The finite element library, loaded when it is first used; a clear word where it is not installed."""

from __future__ import annotations

from typing import Any

from blockgen.errors import MachineError

EXTRA = 'pip install ".[fea]"'
"""What installs it, from the folder of the sources."""


def library() -> Any:
    """Return the module ``ngsolve``, silent and on one thread: with more its sums differ from run to run.

    Raises:
        MachineError: it is not installed.
    """
    try:
        import ngsolve
    except ImportError as error:
        raise MachineError(
            f"the stiffness needs the packages netgen-mesher and ngsolve ({error}): install them with {EXTRA}, "
            "or with pip install netgen-mesher ngsolve"
        ) from error
    ngsolve.ngsglobals.msg_level = 0
    ngsolve.SetNumThreads(1)
    return ngsolve
