"""The files that a spec uses, and whether their contents have changed.

They are looked at again and again, not reported by the system: that is the same on every system, needs no further
package, and works on network drives, from which no system reports what another computer writes. What decides is the
hash of the contents. Time and size only spare reading a file again, and only once it has stood for a while: some file
systems count times in steps of two seconds.
"""

from __future__ import annotations

import hashlib
import os
import time
import tomllib
from collections.abc import Iterator, Mapping
from dataclasses import dataclass, field
from pathlib import Path

from blockgen.spec.presets import preset_paths
from blockgen.spec.read import GREATEST_SIZE

SURE = 2.5
"""Seconds that a file must have stood with one time and size before these are trusted."""

MISSING = ""
"""What stands in place of the hash of a file that is not there."""

_Stamp = tuple[int, int, int]


@dataclass(frozen=True, slots=True)
class Named:
    """What a spec names: presets (and materials, which may be presets), and makers' models by their paths."""

    presets: tuple[str, ...] = ()
    models: tuple[str, ...] = ()


@dataclass(frozen=True, slots=True)
class Seen:
    """A file as it was read: time, size and number; when these were first met; its hash."""

    stamp: _Stamp
    first: float
    sha256: str


@dataclass(slots=True)
class Look:
    """The files of one spec, as they were when last looked at.

    Args:
        spec: The spec file.
        seen: What was read by path.
        named: What the spec names, and the hash of the text that named it.
    """

    spec: Path
    seen: dict[Path, Seen] = field(default_factory=dict)
    named: tuple[str, Named] = (MISSING, Named())

    def contents(self) -> Mapping[Path, str]:
        """Return the hash of the spec and of each file that it uses, by path; ``MISSING`` for one that is not there."""
        sha256 = self._hash(self.spec)
        if sha256 not in {MISSING, self.named[0]}:
            self.named = (sha256, named_in(self.spec))
        return {self.spec: sha256, **{path: self._hash(path) for path in self._used(self.named[1])}}

    def _used(self, named: Named) -> Iterator[Path]:
        paths = preset_paths() if named.presets else {}
        yield from (paths[name.casefold()] for name in named.presets if name.casefold() in paths)
        yield from (self.spec.parent / model for model in named.models)

    def _hash(self, path: Path) -> str:
        try:
            found = path.stat()
            stamp, now = (found.st_mtime_ns, found.st_size, found.st_ino), time.monotonic()
            known = self.seen.get(path)
            if known is not None and known.stamp == stamp and now - known.first > SURE:
                return known.sha256
            first = known.first if known is not None and known.stamp == stamp else now
            self.seen[path] = Seen(stamp, first, _sha256(path))
        except (OSError, ValueError):  # not there, or a name that cannot be one
            self.seen.pop(path, None)
            return MISSING
        return self.seen[path].sha256


def named_in(spec: Path) -> Named:
    """Return what a spec file names, as far as it can be read; whether it is right is for others to say."""
    try:
        with spec.open("rb") as file:
            data = tomllib.loads(file.read(GREATEST_SIZE).decode("utf-8-sig"))
    except (OSError, ValueError, RecursionError):
        return Named()
    tables = list(_tables(data))
    return Named(_texts(tables, "preset", "material"), _texts(tables, "model"))


def _tables(data: Mapping[str, object]) -> Iterator[Mapping[str, object]]:
    """Yield the tables in a table, those of arrays and those in tables too."""
    for value in data.values():
        for part in value if isinstance(value, list) else [value]:
            if isinstance(part, Mapping):
                yield part
                yield from _tables(part)


def _texts(tables: list[Mapping[str, object]], *keys: str) -> tuple[str, ...]:
    found = (table.get(key) for table in tables for key in keys)
    return tuple(dict.fromkeys(text for text in found if isinstance(text, str)))


def _sha256(path: Path) -> str:
    if not path.is_file():  # a pipe would keep us waiting
        raise FileNotFoundError(os.fspath(path))
    with path.open("rb") as file:
        return hashlib.file_digest(file, "sha256").hexdigest()
