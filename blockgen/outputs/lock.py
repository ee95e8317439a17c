"""Locks on folders, so that two builds at once and the remains of a killed one can be told apart."""

from __future__ import annotations

import os
import sys
from collections.abc import Iterator
from contextlib import contextmanager
from pathlib import Path
from typing import Literal

if sys.platform != "win32":
    import fcntl

Hold = Literal["held", "busy", "impossible"]


@contextmanager
def hold(folder: Path, *, wait: bool) -> Iterator[Hold]:
    """Hold a folder's lock; the system lets it go when the process ends, however it ends.

    Args:
        folder: Existing folder.
        wait: Wait for another holder; otherwise yield ``busy`` at once.

    Yields:
        held; busy where another process holds it; impossible where the system has no locks on folders.
    """
    if sys.platform == "win32":
        yield "impossible"
        return
    descriptor = os.open(folder, os.O_RDONLY)
    try:
        yield _lock(descriptor, wait=wait)
    finally:
        os.close(descriptor)


def _lock(descriptor: int, *, wait: bool) -> Hold:
    if sys.platform == "win32":
        return "impossible"
    try:
        fcntl.flock(descriptor, fcntl.LOCK_EX if wait else fcntl.LOCK_EX | fcntl.LOCK_NB)
    except BlockingIOError:
        return "busy"
    except OSError:  # some network file systems lock nothing but files opened for writing
        return "impossible"
    return "held"
