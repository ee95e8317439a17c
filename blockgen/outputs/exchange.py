"""Puts a finished set in the place of the old one.

Three ways, the first that is possible:

1. Nothing stands at the target: the finished folder is renamed.
2. The system can exchange two folders in one step, and the target holds nothing but files: files that are not ours
   are linked into the finished folder, then both folders change places. At each moment the path leads to the whole
   old set or to the whole new one.
3. Otherwise, or where the working folder lies in the target, the files are moved in one by one, manifest last, with
   the old ones set aside (see ``move_in.py``). Folders that are not ours are never moved about.
"""

from __future__ import annotations

import os
import signal
import sys
import threading
from collections.abc import Iterator
from contextlib import contextmanager, suppress
from pathlib import Path

from blockgen.outputs import move_in
from blockgen.outputs.manifest import has_hash, listed_files
from blockgen.outputs.names import MANIFEST

_HERE = -100  # AT_FDCWD of Linux
_EXCHANGE = 2  # RENAME_EXCHANGE of Linux, RENAME_SWAP of macOS


def put_in_place(finished: Path, target: Path) -> None:
    """Put a finished set in the place of the old one; the interrupt key waits until it is done.

    Raises:
        OSError: it cannot be done; the old set stands as before.
    """
    with _interrupts_held():
        if not os.path.lexists(target):
            finished.rename(target)
        elif not _exchanged(finished, target):
            move_in.move_in(finished, target, retired_names(target, finished))


def give_back(old: Path, target: Path) -> None:
    """Move what is not ours from a folder that was exchanged out into the one that stands now."""
    ours = {*(listed_files(old) or ()), MANIFEST}
    for entry in sorted(old.iterdir()):
        if entry.name not in ours and not _same(entry, target / entry.name):
            entry.replace(target / entry.name)


def retired_names(target: Path, finished: Path) -> tuple[str, ...]:
    """Return the files of the old set that the new one lacks; a file changed since is no longer ours."""
    new = listed_files(finished) or {}
    old = listed_files(target) or {}
    return tuple(n for n, sha256 in sorted(old.items()) if n not in new and has_hash(target / n, sha256))


def _exchanged(finished: Path, target: Path) -> bool:
    """Exchange the folders; False where that is not possible."""
    if _working_folder_is_in(target):
        return False
    try:
        _link_foreign(target, finished)
        finished.chmod(target.stat().st_mode & 0o7777)
    except OSError:
        return False
    if not _exchange(finished, target):
        return False
    give_back_quietly(finished, target)
    return True


def give_back_quietly(old: Path, target: Path) -> None:
    """Move back what was saved during the exchange, file by file as far as it goes; the links stand already."""
    with suppress(OSError):
        give_back(old, target)


def _link_foreign(target: Path, finished: Path) -> None:
    """Link the files that are not ours into the finished folder.

    Raises:
        OSError: there is a folder among them, or the file system has no links.
    """
    gone = {*(listed_files(finished) or ()), *retired_names(target, finished), MANIFEST}
    for entry in sorted(target.iterdir()):
        if entry.name not in gone:
            os.link(entry, finished / entry.name, follow_symlinks=False)


def _exchange(one: Path, other: Path) -> bool:
    import ctypes

    library = ctypes.CDLL(None, use_errno=True)
    paths = (os.fsencode(one), os.fsencode(other))
    if sys.platform.startswith("linux") and hasattr(library, "renameat2"):
        return bool(library.renameat2(_HERE, paths[0], _HERE, paths[1], _EXCHANGE) == 0)
    if sys.platform == "darwin" and hasattr(library, "renamex_np"):
        return bool(library.renamex_np(*paths, _EXCHANGE) == 0)
    return False


def _working_folder_is_in(target: Path) -> bool:
    """Tell whether the user stands in the folder: exchanged away, it would be gone from under the shell."""
    try:
        return Path.cwd().is_relative_to(target)
    except OSError:
        return False


def _same(one: Path, other: Path) -> bool:
    try:
        return os.path.samestat(one.lstat(), other.lstat())
    except OSError:
        return False


@contextmanager
def _interrupts_held() -> Iterator[None]:
    """Keep the interrupt key and a request to end back until the block is done, then let them act.

    Blocking the signals in this thread is not enough: the system then hands them to any other thread that a library
    has started, and Python answers them in the main thread all the same. So they are noted and raised again. Only the
    main thread is ever interrupted, and only it may change what a signal does.
    """
    if threading.current_thread() is not threading.main_thread():
        yield
        return
    noted: list[int] = []
    numbers = (signal.SIGINT, signal.SIGTERM)
    before = {n: found for n in numbers if (found := signal.getsignal(n)) is not None}
    try:
        for held in before:
            signal.signal(held, lambda number, _: noted.append(number))
        yield
    finally:
        for held, handler in before.items():
            signal.signal(held, handler)
        for number in dict.fromkeys(noted):
            signal.raise_signal(number)
