"""A set of files written whole or not at all.

The new set is written into a hidden folder beside the target, checked against its manifest, and then put in the
target's place in one step (see ``exchange.py``). Until that step the old set stands untouched; after it the new one
stands. Whatever stops a build before leaves nothing but the hidden folder, which is removed at once or, where the
process was killed, by the next build.
"""

from __future__ import annotations

import os
import secrets
import shutil
import time
from collections.abc import Iterator
from contextlib import ExitStack, contextmanager, suppress
from pathlib import Path

from blockgen.errors import BlockgenError, MachineError
from blockgen.outputs import exchange, lock, move_in
from blockgen.outputs.manifest import set_is_whole

_ENDING = ".part"
_OLD_AGE = 3600.0  # seconds after which remains count as such where nothing can be locked


@contextmanager
def new_set(folder: Path) -> Iterator[Path]:
    """Yield an empty folder to write a set into; at the end of the block the set takes the place of the old one.

    The block writes the files and, last, the manifest. An exception in it leaves the old set as it was. Files of the
    target that no manifest of ours lists stay where they are; files of the old set that the new one lacks go.

    Args:
        folder: Where the set shall stand; need not exist.

    Raises:
        MachineError: the folder cannot be written, or what was written does not read back.
    """
    target = Path(os.path.realpath(folder))
    with _machine_errors(folder), _parents_of(target), ExitStack() as held:
        staging = _staging_folder(target, held)
        try:
            with _named_as(folder, staging):
                yield staging
                _insist_on_whole(staging)
            with lock.hold(target.parent, wait=True):
                exchange.put_in_place(staging, target)
        finally:
            shutil.rmtree(staging, ignore_errors=True)


def _staging_folder(target: Path, held: ExitStack) -> Path:
    """Return a new hidden folder beside the target, locked for as long as ``held`` lasts."""
    with lock.hold(target.parent, wait=True):
        _clear_remains(target)
        staging = target.parent / f".{target.name}.{secrets.token_hex(4)}{_ENDING}"
        staging.mkdir()
        held.enter_context(lock.hold(staging, wait=False))
    return staging


def _clear_remains(target: Path) -> None:
    """Finish or undo what a killed build left behind."""
    if target.is_dir():
        move_in.recover(target)
    for place in sorted(target.parent.iterdir()):
        if place.name.startswith(f".{target.name}.") and place.name.endswith(_ENDING) and place.is_dir():
            _clear_one(place, target)


def _clear_one(place: Path, target: Path) -> None:
    with lock.hold(place, wait=False) as state:
        if state == "busy" or (state == "impossible" and time.time() - place.stat().st_mtime < _OLD_AGE):
            return
        if set_is_whole(place) and target.is_dir():
            exchange.give_back(place, target)
        shutil.rmtree(place, ignore_errors=True)


@contextmanager
def _named_as(folder: Path, staging: Path) -> Iterator[None]:
    """Let messages name the folder that the user knows."""
    try:
        yield
    except MachineError as error:
        raise MachineError(str(error).replace(str(staging), str(folder))) from error


def _insist_on_whole(staging: Path) -> None:
    if not set_is_whole(staging):
        raise MachineError(
            f"{staging}: the files do not read back as they were written; nothing was changed. "
            "Check the disk, or choose another folder with --out."
        )


@contextmanager
def _parents_of(target: Path) -> Iterator[None]:
    """Make the parents that are missing; take them away again when the block fails."""
    missing = [place for place in target.parents if not place.exists()]
    try:
        target.parent.mkdir(parents=True, exist_ok=True)
        yield
    except BaseException:
        for place in missing:
            with suppress(OSError):  # somebody else may use it by now
                place.rmdir()
        raise


@contextmanager
def _machine_errors(folder: Path) -> Iterator[None]:
    try:
        yield
    except BlockgenError:
        raise
    except OSError as error:
        reason = error.strerror or str(error)
        raise MachineError(
            f"{folder}: cannot be written: {reason}. The files that stood there were left as they are. "
            "Free some space, change the rights, or choose another folder with --out."
        ) from error
