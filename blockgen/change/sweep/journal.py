"""The journal of a sweep: one line a finished variant, so that a sweep that was stopped goes on where it was.

The first line says which sweep it belongs to. A line counts when it is whole: what a killed process left half written
is cut off. Rows stay on the disk and are found by their place in it, so that memory does not grow with their number.
"""

from __future__ import annotations

import json
import os
from array import array
from collections.abc import Iterable, Iterator
from contextlib import contextmanager
from pathlib import Path
from typing import IO, Any

from blockgen.change.sweep.batch import Row
from blockgen.change.sweep.outcome import Outcome
from blockgen.errors import MachineError
from blockgen.outputs import lock

ENDING = ".journal"
_FORM = 1
_NOWHERE = -1
_CELLS = 1 + len(Outcome._fields)


class Journal:
    """Rows by number on the disk; made by ``open_journal``."""

    def __init__(self, stream: IO[bytes], key: str, count: int) -> None:
        """Take up what the stream holds.

        Args:
            stream: File open for reading and writing.
            key: Key of the sweep.
            count: Number of its variants.
        """
        self._stream = stream
        self._places = array("q", [_NOWHERE]) * count
        self._done = 0
        self.other = False
        """True where the file held another sweep, which is gone."""
        self._take_up(key)

    def _take_up(self, key: str) -> None:
        head = _line([_FORM, key, len(self._places)])
        first = self._stream.readline()
        end = len(head)
        if first != head:
            self.other = first.endswith(b"\n")
            self._stream.seek(0)
            self._stream.truncate()
            self._stream.write(head)
        for line in self._stream:
            if not line.endswith(b"\n"):
                break
            self._note(_number(line), end)
            end += len(line)
        self._stream.truncate(end)
        self._stream.flush()

    def _note(self, number: int | None, place: int) -> None:
        if number is not None and 0 <= number < len(self._places) and self._places[number] == _NOWHERE:
            self._places[number] = place
            self._done += 1

    def __len__(self) -> int:
        """Number of variants that are done."""
        return self._done

    def missing(self) -> list[int]:
        """Return the numbers of the variants that are not done."""
        return [number for number, place in enumerate(self._places) if place == _NOWHERE]

    def add(self, rows: Iterable[Row]) -> None:
        """Write rows; one of a number that is there already is left out.

        Raises:
            MachineError: the disk does not take it.
        """
        try:
            place = self._stream.seek(0, os.SEEK_END)
            text = b""
            for row in rows:
                if self._places[row[0]] == _NOWHERE:
                    self._note(row[0], place + len(text))
                    text += _line(list(row))
            self._stream.write(text)
            self._stream.flush()
        except OSError as error:
            raise MachineError(f"the journal cannot be written: {error.strerror or error}") from error

    def outcome(self, number: int) -> Outcome:
        """Return the outcome of a variant.

        Args:
            number: Its number, counted from 0.

        Raises:
            MachineError: it is not there.
        """
        if self._places[number] == _NOWHERE:
            raise MachineError(f"variant {number + 1} is not in the journal")
        self._stream.seek(self._places[number])
        return Outcome(*json.loads(self._stream.readline())[1:])

    def outcomes(self) -> Iterator[Outcome]:
        """Yield every outcome in the order of the variants.

        Raises:
            MachineError: a variant is not there.
        """
        return map(self.outcome, range(len(self._places)))


def journal_path(table: Path) -> Path:
    """Return the path of a table's journal."""
    return table.with_name(table.name + ENDING)


@contextmanager
def open_journal(table: Path, key: str, count: int) -> Iterator[Journal]:
    """Yield the journal of a table; it is gone at the end of the block unless an exception leaves it.

    Args:
        table: The table that the sweep shall write.
        key: Key of the sweep; rows of another one do not count.
        count: Number of variants.

    Raises:
        MachineError: another process writes it, or the disk does not let us.
    """
    path = journal_path(table)
    try:
        table.parent.mkdir(parents=True, exist_ok=True)
        stream = os.fdopen(os.open(path, os.O_RDWR | os.O_CREAT | getattr(os, "O_BINARY", 0), 0o666), "r+b")
    except OSError as error:
        raise MachineError(f"{path}: {error.strerror or error}") from error
    with stream, lock.hold(path, wait=False) as state:
        if state == "busy":
            raise MachineError(f"{path}: another sweep writes the same table; wait for it, or name another --out")
        yield Journal(stream, key, count)
        if os.name != "nt":
            path.unlink(missing_ok=True)  # while it is still held, so that no other sweep takes it up
    path.unlink(missing_ok=True)


def _line(cells: list[Any]) -> bytes:
    return (json.dumps(cells, ensure_ascii=True, allow_nan=False, separators=(",", ":")) + "\n").encode("ascii")


def _number(line: bytes) -> int | None:
    """Return the number of a row; None where the line is none, so that its variant is done again."""
    try:
        cells = json.loads(line)
    except ValueError:
        return None
    whole = isinstance(cells, list) and len(cells) == _CELLS and type(cells[0]) is int
    return cells[0] if whole else None
