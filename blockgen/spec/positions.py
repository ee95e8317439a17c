"""Line numbers of the keys in a TOML text.

The text has been parsed before, so this scanner need not judge it: it only finds where each key stands.
"""

from __future__ import annotations

import re
from collections.abc import Mapping

Path = tuple[str | int, ...]

#: Most keys and array items of a file; a family of forty motors has half as many.
MOST_KEYS = 3000

_BLANK = re.compile(r"(?:[ \t\r\n]|#[^\n]*)*")
_SPACE = re.compile(r"[ \t]*")
_STRING = re.compile(
    "|".join((r'"""(?:\\.|[^\\])*?"""(?!")', r"\'\'\'.*?\'\'\'(?!')", r'"(?:\\.|[^"\\\n])*"', r"'[^'\n]*'")), re.DOTALL
)
_BARE = re.compile(r"[A-Za-z0-9_-]+")
_PLAIN = re.compile(r"[^,\]}#\r\n]*")


def line_numbers(text: str) -> Mapping[Path, int]:
    """Return the line of every table header, key and array item.

    Args:
        text: A valid TOML document.

    Returns:
        Lines counted from 1, by path: names of tables and keys, and places in arrays.

    Raises:
        OverflowError: there are more than MOST_KEYS keys and items.
    """
    return _Scanner(text).scan()


def line_of(lines: Mapping[Path, int], path: Path) -> int | None:
    """Return the line of a path, or of the nearest thing around it that has one."""
    for length in range(len(path), 0, -1):
        if path[:length] in lines:
            return lines[path[:length]]
    return None


class _Scanner:
    """One pass over a text; ``place`` only moves forward."""

    def __init__(self, text: str) -> None:
        self.text = text
        self.place = 0
        self.lines: dict[Path, int] = {}
        self.arrays: dict[Path, int] = {}
        self.counted = (0, 1)  # place up to which newlines are counted, line there

    def scan(self) -> Mapping[Path, int]:
        table: Path = ()
        self.skip(_BLANK)
        while self.place < len(self.text):
            if self.text[self.place] == "[":
                table = self.header()
            else:
                self.pair(table)
            self.skip(_BLANK)
        return self.lines

    def skip(self, pattern: re.Pattern[str]) -> str:
        match = pattern.match(self.text, self.place)
        if match is None:
            return ""
        self.place = match.end()
        return match.group()

    def line(self) -> int:
        place, line = self.counted
        line += self.text.count("\n", place, self.place)
        self.counted = (self.place, line)
        return line

    def header(self) -> Path:
        double = self.text.startswith("[[", self.place)
        self.place += 2 if double else 1
        line = self.line()
        path = self.resolved((), self.dotted())
        if double:
            path = (*path[:-1], path[-1]) if isinstance(path[-1], str) else path[:-1]
            self.arrays[path] = self.arrays.get(path, -1) + 1
            path = (*path, self.arrays[path])
        self.note(path, line)
        self.place += 2 if double else 1
        return path

    def resolved(self, base: Path, names: list[str]) -> Path:
        """Return the path of dotted names; a name of an array of tables means its last table."""
        path = base
        for name in names:
            path = (*path, name)
            if path in self.arrays:
                path = (*path, self.arrays[path])
        return path

    def note(self, path: Path, line: int) -> None:
        for length in range(1, len(path) + 1):
            self.lines.setdefault(path[:length], line)
            if len(self.lines) > MOST_KEYS:
                raise OverflowError(f"more than {MOST_KEYS} keys and items")

    def dotted(self) -> list[str]:
        """Read a key with its dots and leave the place behind the blanks after it."""
        names = [self.name()]
        while self.place < len(self.text) and self.text[self.place] == ".":
            self.place += 1
            names.append(self.name())
        return names

    def name(self) -> str:
        self.skip(_SPACE)
        quoted = self.skip(_STRING)
        name = _unquoted(quoted) if quoted else self.skip(_BARE)
        self.skip(_SPACE)
        return name

    def pair(self, table: Path) -> None:
        line = self.line()
        path = (*table, *self.dotted())
        self.note(path, line)
        self.place += 1  # the equals sign
        self.value(path)

    def value(self, path: Path) -> None:
        self.skip(_SPACE)
        if self.text.startswith("[", self.place):
            self.array(path)
        elif self.text.startswith("{", self.place):
            self.inline(path)
        elif not self.skip(_STRING):
            self.skip(_PLAIN)

    def array(self, path: Path) -> None:
        self.place += 1
        self.skip(_BLANK)
        index = 0
        while not self.text.startswith("]", self.place):
            item = (*path, index)
            self.note(item, self.line())
            self.value(item)
            self.separator()
            index += 1
        self.place += 1

    def inline(self, path: Path) -> None:
        self.place += 1
        self.skip(_BLANK)
        while not self.text.startswith("}", self.place):
            self.pair(path)
            self.separator()
        self.place += 1

    def separator(self) -> None:
        self.skip(_BLANK)
        if self.text.startswith(",", self.place):
            self.place += 1
        self.skip(_BLANK)


def _unquoted(quoted: str) -> str:
    if quoted.startswith("'"):
        return quoted.strip("'")
    import tomllib

    return str(tomllib.loads(f"k = {quoted}")["k"])
