"""Moves a finished set into a folder file by file, with the old set kept aside until the manifest is in.

The way for systems that cannot exchange folders, and for folders in which there is more than our files. An exception
puts the old set back at once; after a killed process the next build does so.
"""

from __future__ import annotations

import os
import shutil
from collections.abc import Iterable
from pathlib import Path

from blockgen.outputs.manifest import has_hash, listed_files, set_is_whole
from blockgen.outputs.names import MANIFEST

_WORK = ".blockgen-swap"


def move_in(finished: Path, target: Path, retired: Iterable[str]) -> None:
    """Move a finished set into a folder.

    Args:
        finished: Folder with the set and its manifest.
        target: Existing folder.
        retired: Names of files in the target to take away.

    Raises:
        OSError: it cannot be done; the old set stands as before.
    """
    names = [*sorted(listed_files(finished) or ()), MANIFEST]
    new, old = target / _WORK / "new", target / _WORK / "old"
    try:
        new.mkdir(parents=True)
        for name in names:
            shutil.copy2(finished / name, new / name)
        _set_aside(target, old, [*names, *retired])
        _replace_all(new, old, target, names)
    except BaseException:
        shutil.rmtree(target / _WORK, ignore_errors=True)
        raise
    for name in retired:
        (target / name).unlink(missing_ok=True)
    shutil.rmtree(target / _WORK, ignore_errors=True)


def recover(target: Path) -> None:
    """Put the old set back where a killed process left a mixture, else finish; take the working folder away.

    Raises:
        OSError: it cannot be done.
    """
    old = target / _WORK / "old"
    if old.is_dir() and not set_is_whole(target) and set_is_whole(old):
        _put_back(old, target, [])
    elif set_is_whole(target):
        _retire(old, target)
    if os.path.lexists(target / _WORK):
        shutil.rmtree(target / _WORK)


def _retire(old: Path, target: Path) -> None:
    """Take away files of the old set that the new one lacks and that nobody has changed since."""
    standing = listed_files(target) or {}
    for name, sha256 in (listed_files(old) or {}).items():
        if name not in standing and has_hash(target / name, sha256):
            (target / name).unlink()


def _set_aside(target: Path, old: Path, names: Iterable[str]) -> None:
    """Keep a second name (or a copy) of each old file; made under another name so that it is there whole or not."""
    making = old.with_name("making")
    making.mkdir()
    for name in names:
        if (target / name).is_file():
            _link_or_copy(target / name, making / name)
    making.rename(old)


def _link_or_copy(source: Path, destination: Path) -> None:
    try:
        os.link(source, destination)
    except OSError:
        shutil.copy2(source, destination)


def _replace_all(new: Path, old: Path, target: Path, names: Iterable[str]) -> None:
    done: list[str] = []
    try:
        for name in names:
            (new / name).replace(target / name)
            done.append(name)
    except BaseException:
        _put_back(old, target, done)
        raise


def _put_back(old: Path, target: Path, done: Iterable[str]) -> None:
    """Put every old file back and take away new ones that had no forerunner."""
    kept = {entry.name for entry in old.iterdir()}
    for name in sorted(kept, key=lambda n: (n == MANIFEST, n)):
        (old / name).replace(target / name)
    for name in done:
        if name not in kept:
            (target / name).unlink(missing_ok=True)
