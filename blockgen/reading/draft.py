"""The table of a spec that a maker's file gives: each line with its confidence and its evidence."""

from __future__ import annotations

import textwrap
from collections.abc import Iterator
from pathlib import Path
from typing import Protocol

from blockgen.errors import InputError, MachineError, Problem
from blockgen.reading.confidence import RULES
from blockgen.reading.found import Found, Missing, Reading, Value

_NAMES = {"motor": "motor", "bearing": "bearing unit"}
_WIDTH = 110


class _Text(Protocol):
    def __call__(self, text: str) -> str: ...


def draft(reading: Reading, model: str, quoted: _Text, plain: _Text) -> str:
    """Return the table as TOML text.

    Args:
        reading: What was found.
        model: Path of the maker's file, from the folder where the draft will stand.
        quoted: Makes a text a TOML string.
        plain: Makes a text harmless within a line.
    """
    return "\n".join([*_head(reading, plain), f"[{reading.part}]", *_lines(reading, model, quoted, plain)]) + "\n"


def _head(reading: Reading, plain: _Text) -> Iterator[str]:
    name = plain(Path(reading.file).name)
    yield f"# Draft of a {_NAMES[reading.part]}, read from the faces of {name} (in {reading.unit}). A STEP model has"
    yield "# nominal sizes only and may be simplified: compare each value with the data sheet."
    for level, rule in RULES.items():
        yield from textwrap.wrap(f"{level}: {rule}", _WIDTH, initial_indent="# ", subsequent_indent="#   ")
    for note in reading.notes:
        yield from textwrap.wrap(plain(note), _WIDTH, initial_indent="# Note: ", subsequent_indent="#   ")


def _lines(reading: Reading, model: str, quoted: _Text, plain: _Text) -> Iterator[str]:
    yield f"data_source = {quoted(f'read from {plain(Path(reading.file).name)}')}"
    yield f"model = {quoted(model)}"
    for found in reading.found:
        yield f"{found.key} = {_toml(found, quoted)}  # {found.confidence}: {plain(found.evidence)}"
    for missing in reading.missing:
        yield _absent(missing, plain)


def _absent(missing: Missing, plain: _Text) -> str:
    return f'# {missing.key} = ""  # not found: {plain(missing.why)}'


def _toml(found: Found, quoted: _Text) -> str:
    value = found.value
    if isinstance(value, str):
        return quoted(value)
    if isinstance(value, tuple):
        return "[" + ", ".join(f"[{digits(y)}, {digits(z)}]" for y, z in value) + "]"
    return f'"{digits(value)} {found.unit}"' if found.unit else digits(value)


def digits(value: Value) -> str:
    """Return the fewest digits that read back to the same number, without ``.0``."""
    return repr(value).removesuffix(".0")


def write_draft(text: str, file: Path) -> None:
    """Write a draft; a file that is there already is never touched.

    Raises:
        InputError: the file exists, or its folder does not.
        MachineError: it cannot be written.
    """
    try:
        with file.open("x", encoding="utf-8", newline="\n") as stream:
            stream.write(text)
    except FileExistsError:
        raise _refused(file, "a file or folder that exists", "choose another name, or move it away first") from None
    except (FileNotFoundError, NotADirectoryError):
        raise _refused(file, "a folder that does not exist", f"make it first: {file.parent}") from None
    except OSError as error:
        raise MachineError(f"{file}: cannot be written: {error.strerror or error}") from error


def _refused(file: Path, found: str, remedy: str) -> InputError:
    return InputError([Problem(str(file), None, "", found, "the name of a new file in a folder that exists", remedy)])
