"""The file that ``new`` writes; a file that is there already is never touched."""

from __future__ import annotations

from collections.abc import Mapping
from pathlib import Path
from typing import TextIO

from blockgen.errors import InputError, MachineError, Problem
from blockgen.spec.starter import starter_spec


def write_starter(file: Path, parts: Mapping[str, str | None]) -> None:
    """Write a commented spec to start from.

    Args:
        file: File to write; must not exist.
        parts: Preset names of motor, bearing and coupling; None where none is chosen.

    Raises:
        InputError: the file exists, its folder does not, or there is no such preset.
        MachineError: the file cannot be written.
    """
    write_new(file, starter_spec(**parts))


def write_new(file: Path, text: str) -> None:
    """Write a file that does not exist yet.

    Raises:
        InputError: the file exists, or its folder does not.
        MachineError: it cannot be written.
    """
    try:
        stream = file.open("x", encoding="utf-8", newline="\n")
    except FileExistsError:
        raise _refused(file, "a file or folder that exists", "choose another name, or move it away first") from None
    except (FileNotFoundError, NotADirectoryError):
        raise _refused(file, "a folder that does not exist", f"make it first: {file.parent}") from None
    except OSError as error:
        raise _unwritable(file, error) from error
    _fill(stream, text, file)


def _fill(stream: TextIO, text: str, file: Path) -> None:
    """Write the text; half a file is worse than none."""
    try:
        with stream:
            stream.write(text)
    except BaseException as error:
        file.unlink(missing_ok=True)
        if isinstance(error, OSError):
            raise _unwritable(file, error) from error
        raise


def _unwritable(file: Path, error: OSError) -> MachineError:
    return MachineError(f"{file}: cannot be written: {error.strerror or error}")


def _refused(file: Path, found: str, remedy: str) -> InputError:
    return InputError([Problem(str(file), None, "", found, "the name of a new file in a folder that exists", remedy)])
