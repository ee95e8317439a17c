"""From a file on disk to a TOML document, or a problem in words."""

from __future__ import annotations

import hashlib
import re
import tomllib
from collections.abc import Mapping
from dataclasses import dataclass
from pathlib import Path

from blockgen.errors import InputError, Problem
from blockgen.spec.positions import line_numbers, line_of

#: Greatest size of a spec or preset file in bytes.
GREATEST_SIZE = 1_000_000
#: Longest line, and most dots before its equals sign.
LONGEST_LINE = 10_000
MOST_DOTS = 30
_PLACE = re.compile(r"\(at line (\d+), column \d+\)")


@dataclass(frozen=True, slots=True)
class Document:
    """A parsed TOML file.

    Args:
        file: Path as the user gave it.
        text: Its text.
        data: What it holds.
        lines: Lines of its keys.
        sha256: Hash of its bytes.
    """

    file: str
    text: str
    data: Mapping[str, object]
    lines: Mapping[tuple[str | int, ...], int]
    sha256: str

    def line(self, *path: str | int) -> int | None:
        """Return the line of a key, or of what stands around it."""
        return line_of(self.lines, path)

    def problem(self, path: tuple[str | int, ...], found: str, expected: str, remedy: str = "") -> Problem:
        """Return a problem at a key of this file."""
        return Problem(self.file, self.line(*path), ".".join(map(str, path)), found, expected, remedy)


def read_document(path: str | Path) -> Document:
    """Read and parse a TOML file.

    Raises:
        InputError: it is missing, a folder, unreadable, too large, not UTF-8 or not TOML.
    """
    file = str(path)
    raw = _read_bytes(Path(path), file)
    return parse_document(_decode(raw, file), file, hashlib.sha256(raw).hexdigest())


def parse_document(text: str, file: str, sha256: str = "") -> Document:
    """Parse a TOML text.

    Raises:
        InputError: it is not TOML, holds a key twice or is nested too deeply.
    """
    _refuse_long_lines(text, file)
    try:
        data = tomllib.loads(text)
        lines = line_numbers(text)
    except RecursionError:
        raise _error(file, None, "brackets nested too deeply", "tables of plain values") from None
    except OverflowError as error:
        raise _error(file, None, str(error), "about thirty keys", "is this the right file?") from None
    except ValueError as error:
        raise _syntax_error(text, file, str(error)) from None
    return Document(file, text, data, lines, sha256)


def _error(file: str, line: int | None, found: str, expected: str, remedy: str = "") -> InputError:
    return InputError([Problem(file, line, "", found, expected, remedy)])


def _read_bytes(path: Path, file: str) -> bytes:
    try:
        if path.is_dir():
            raise _error(file, None, "a folder", "a TOML file", "name the spec file in it")
        if not path.is_file():
            raise _error(file, None, "no such file", "a TOML file", "`blockgen new FILE` writes a spec to start from")
        with path.open("rb") as stream:
            raw = stream.read(GREATEST_SIZE + 1)
    except (OSError, ValueError) as error:
        if isinstance(error, InputError):
            raise
        raise _error(file, None, f"cannot be read: {error}", "a readable TOML file") from None
    if len(raw) > GREATEST_SIZE:
        limit = f"at most {GREATEST_SIZE} bytes"
        raise _error(file, None, "a larger file", limit, "a spec needs about thirty lines: is this the right file?")
    return raw


def _decode(raw: bytes, file: str) -> str:
    try:
        return raw.decode("utf-8-sig")
    except UnicodeDecodeError as error:
        line = raw.count(b"\n", 0, error.start) + 1
        raise _error(file, line, "bytes that are not UTF-8", "text in UTF-8", "save the file as UTF-8") from None


def _refuse_long_lines(text: str, file: str) -> None:
    """Refuse keys of so many parts that parsing would take minutes."""
    for number, line in enumerate(text.split("\n"), 1):
        key = line.split("=", 1)[0].split("#", 1)[0]
        if len(line) > LONGEST_LINE or key.count(".") > MOST_DOTS:
            expected = f"at most {LONGEST_LINE} characters, and {MOST_DOTS} dots in a key"
            raise _error(file, number, "a line that is too long", expected)


def _syntax_error(text: str, file: str, message: str) -> InputError:
    place = _PLACE.search(message)
    at_end = "at end of document" in message
    line = int(place[1]) if place else (text.count("\n") + 1 if at_end else None)
    found = _PLACE.sub("", message).replace("(at end of document)", "at the end of the file").strip()
    if "overwrite" in message or "twice" in message:
        return _error(file, line, "a key or table that was given before", "each key once", "remove one of them")
    return _error(file, line, found, "TOML", 'text and quantities stand in quotes: key = "40 mm"')
