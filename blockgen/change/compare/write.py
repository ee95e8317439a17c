"""Writes what ``compare --out`` asks for: document, data and picture; all of them or none."""

from __future__ import annotations

import tempfile
from collections.abc import Callable, Mapping
from contextlib import suppress
from functools import partial
from pathlib import Path

from blockgen.change.adapter.data import Adapter
from blockgen.change.adapter.files import adapter_file, write_adapter
from blockgen.change.compare.data import Comparison
from blockgen.change.compare.json import comparison_document
from blockgen.change.compare.md import comparison_md
from blockgen.change.compare.picture import write_picture
from blockgen.change.compare.volumes import Overlay
from blockgen.errors import InputError, MachineError, Problem
from blockgen.outputs.tidy import as_json
from blockgen.plan import Plan

Writer = Callable[[Path], object]
_LONGEST = 250


def change_stem(found: Comparison) -> str:
    """Return the name of the files without its ending.

    Raises:
        InputError: it is too long for a file name.
    """
    name = f"{found.old.stem}_to_{found.new.stem}_change"
    if len(name.encode()) > _LONGEST:
        text = f"both names together make a file name of {len(name.encode())} bytes"
        raise InputError(
            [Problem("command line", None, "--out", text, f"at most {_LONGEST} bytes", "shorten job.number")]
        )
    return name


def write_change(found: Comparison, over: Overlay, folder: Path) -> tuple[Path, ...]:
    """Write document, data, picture and the models of adapters into a folder; files of the same names are replaced.

    Args:
        found: The comparison with its volumes.
        over: Its solids.
        folder: Where they shall stand; made where it is missing.

    Returns:
        The files.

    Raises:
        InputError: the name is too long.
        MachineError: they cannot be written.
    """
    stem = change_stem(found)
    writers: dict[str, Writer] = {
        f"{stem}.md": lambda path: _write(path, comparison_md(found, f"{stem}.png")),
        f"{stem}.json": lambda path: _write(path, as_json(comparison_document(found))),
        f"{stem}.png": lambda path: write_picture(found, over, path),
        **_adapters(found),
    }
    try:
        return _all_or_none(folder, writers)
    except OSError as error:
        if isinstance(error, MachineError):
            raise
        remedy = "free some space, change the rights, or choose another folder with --out"
        raise MachineError(f"{folder}: cannot be written: {error.strerror or error}; {remedy}") from error


def _adapters(found: Comparison) -> dict[str, Writer]:
    """Return the writers of the adapters' models."""
    if found.rework is None or found.new.design is None:
        return {}
    plan = found.new.design.plan
    return {
        adapter_file(plan, number): partial(_write_adapter, adapter, plan, number)
        for number, adapter in enumerate(found.rework.adapters, start=1)
    }


def _write_adapter(adapter: Adapter, plan: Plan, number: int, path: Path) -> None:
    write_adapter(adapter, plan, path.parent, number)


def _all_or_none(folder: Path, writers: Mapping[str, Writer]) -> tuple[Path, ...]:
    """Write into a hidden folder beside the files, then move each of them into its place."""
    new = not folder.exists()
    folder.mkdir(parents=True, exist_ok=True)
    try:
        with tempfile.TemporaryDirectory(prefix=".change.", dir=folder) as hidden:
            for name, write in writers.items():
                write(Path(hidden) / name)
            return tuple((Path(hidden) / name).replace(folder / name) for name in writers)
    except BaseException:
        if new:
            with suppress(OSError):  # somebody else may use it by now
                folder.rmdir()
        raise


def _write(path: Path, text: str) -> None:
    path.write_text(text, encoding="utf-8", newline="\n")
