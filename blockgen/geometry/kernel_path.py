"""Paths as the kernel takes them: it knows UTF-8 only, while names on a disk are bytes of any kind."""

from __future__ import annotations

import os
import shutil
import tempfile
from collections.abc import Iterator
from contextlib import contextmanager
from pathlib import Path


@contextmanager
def to_write(path: Path) -> Iterator[str]:
    """Yield a path for the kernel to write to; afterwards the file stands at ``path``.

    Raises:
        OSError: it could not be moved there.
    """
    name = _as_utf8(path)
    if name is not None:
        yield name
        return
    with tempfile.TemporaryDirectory() as place:
        between = Path(place) / "file"
        yield str(between)
        if between.exists():
            shutil.copyfile(between, path)


@contextmanager
def to_read(path: Path) -> Iterator[str]:
    """Yield a path from which the kernel can read what stands at ``path``.

    Raises:
        OSError: it could not be read.
    """
    name = _as_utf8(path)
    if name is not None:
        yield name
        return
    with tempfile.TemporaryDirectory() as place:
        between = Path(place) / "file"
        shutil.copyfile(path, between)
        yield str(between)


def _as_utf8(path: Path) -> str | None:
    """Return the path so that its UTF-8 is the name on the disk, or None where that is no UTF-8."""
    try:
        return os.fsencode(path).decode("utf-8")
    except UnicodeDecodeError:
        return None
