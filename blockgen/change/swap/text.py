"""The text of a spec with other parts: every line stays or becomes a comment, and what is added says why."""

from __future__ import annotations

import os
import re
import tomllib
from collections.abc import Iterable, Mapping, Sequence
from dataclasses import dataclass
from pathlib import Path

from blockgen.errors import InputError, Problem
from blockgen.outputs.escape import one_line, toml_string
from blockgen.spec.read import Document

_QUOTED = re.compile(r"""(?P<before>[^#"']*=\s*)(?P<text>"(?:\\.|[^"\\])*"|'[^']*')(?P<after>[^\n]*)""")
_TAKEN_OUT = (
    "Taken out with the old {part}: values of two makes must not be mixed. Put back only what holds for the new one."
)

Keys = tuple[str | int, ...]


@dataclass(frozen=True, slots=True)
class Lock:
    """A value that the new spec is given so that what exists stays as it is.

    Args:
        table: Table of the key.
        key: The key.
        toml: Its value as TOML; empty for a key that is there already and is only commented.
        why: Why it is locked and how to free it.
    """

    table: str
    key: str
    toml: str
    why: str


@dataclass(slots=True)
class Edit:
    """Lines of a document and what becomes of them; lines are counted from 0.

    Args:
        document: The parsed document.
        lines: Its lines without their ends.
        before: Lines to put in before a line.
        after: Lines to put in after a line.
        end: Lines to put in at the end.
        ending: How its lines end.
    """

    document: Document
    lines: list[str]
    before: dict[int, list[str]]
    after: dict[int, list[str]]
    end: list[str]
    ending: str

    @classmethod
    def of(cls, document: Document) -> Edit:
        """Return an edit that changes nothing yet."""
        ending = "\r\n" if "\r\n" in document.text else "\n"
        text = document.text.replace("\r\n", "\n")
        return cls(document, text.removesuffix("\n").split("\n"), {}, {}, [], ending)

    def text(self) -> str:
        """Return the text as edited."""
        told: list[str] = []
        for number, line in enumerate(self.lines):
            told += [*self.before.get(number, ()), line, *self.after.get(number, ())]
        return self.ending.join([*told, *self.end]) + self.ending

    def start(self, path: Keys) -> int | None:
        """Return the line on which a key or header stands."""
        line = self.document.lines.get(path)
        return None if line is None else line - 1

    def extent(self, path: Keys) -> range:
        """Return the lines of a key and its value; comments behind it are left out."""
        first = self.document.lines[path] - 1
        starts = {line - 1 for keys, line in self.document.lines.items() if keys[: len(path)] != path}
        last = min((line for line in starts if line > first), default=len(self.lines)) - 1
        while last > first and self.lines[last].strip()[:1] in {"", "#"}:
            last -= 1
        return range(first, last + 1)

    def keys(self, table: str) -> list[Keys]:
        """Return the paths of the keys of a table, in the order of their lines."""
        if self.is_inline(table):
            return [(table,)]
        paths = [path for path in self.document.lines if len(path) == 2 and path[0] == table]
        return sorted(paths, key=lambda path: self.document.lines[path])

    def header(self, table: str) -> int | None:
        """Return the line of a table's header; None where it has none."""
        line = self.start((table,))
        return line if line is not None and self.lines[line].lstrip().startswith("[") else None

    def is_inline(self, table: str) -> bool:
        """Tell whether a table is written as ``table = { ... }``."""
        line = self.start((table,))
        return line is not None and re.match(rf"""\s*["']?{table}["']?\s*=""", self.lines[line]) is not None


def with_presets(edit: Edit, parts: Mapping[str, str]) -> None:
    """Put a preset in the place of what stands in each table; the old lines stay as comments."""
    for part, preset in parts.items():
        reference = f"preset = {toml_string(preset)}"
        header = edit.header(part)
        _take_out(edit, part)
        if header is None:
            edit.end += ["", f"[{part}]", reference]
        else:
            edit.after.setdefault(header, []).insert(0, reference)


def _take_out(edit: Edit, part: str) -> None:
    """Turn every key of a table into a comment."""
    extents = [edit.extent(path) for path in edit.keys(part)]
    for number in (line for extent in extents for line in extent):
        edit.lines[number] = f"# {edit.lines[number]}".rstrip()
    if extents:
        edit.before.setdefault(extents[0].start, []).append(f"# {_TAKEN_OUT.format(part=part)}")


def with_locks(edit: Edit, locks: Iterable[Lock]) -> None:
    """Put the locked keys behind the keys of their tables, each with its comment."""
    for lock in locks:
        comment = f"# {one_line(lock.why)}"
        if not lock.toml:
            edit.before.setdefault(edit.extent((lock.table, lock.key)).start, []).append(comment)
        else:
            _add(edit, lock.table, [comment, f"{lock.key} = {lock.toml}"])


def _add(edit: Edit, table: str, lines: Sequence[str]) -> None:
    """Put a key at the end of a table."""
    header, keys = edit.header(table), edit.keys(table)
    if edit.is_inline(table):
        raise InputError(
            [edit.document.problem((table,), "a table in one line", f"[{table}] with a line for each key")]
        )
    if header is None and keys:  # its keys are written with dots
        lines = [*lines[:-1], f"{table}.{lines[-1]}"]
    if keys or header is not None:
        last = edit.extent(keys[-1])[-1] if keys else header or 0
        edit.after.setdefault(last, []).extend(lines)
        return
    if f"[{table}]" not in edit.end:
        edit.end += ["", f"[{table}]"]
    edit.end += lines


def with_revision(edit: Edit, old: str, new: str, why: str) -> None:
    """Give the spec its next revision, with a comment that tells of the old one."""
    path: Keys = ("job", "revision")
    remark = f"# was {toml_string(old)}: {one_line(why)}"
    if path not in edit.document.lines:
        _add(edit, "job", [f"revision = {toml_string(new)}  {remark}"])
        return
    line = edit.extent(path).start
    found = _QUOTED.fullmatch(edit.lines[line])
    if found is None:
        raise InputError([edit.document.problem(path, "a revision in another form", "a text on a line of its own")])
    after = found["after"].strip().removeprefix("#").strip()
    more = f"; {after}" if after else ""
    edit.lines[line] = f"{found['before']}{toml_string(new)}  {remark}{more}"


def with_models(edit: Edit, old: Path, new: Path, gone: Iterable[str]) -> None:
    """Write the paths of makers' models as they are seen from the folder of the new file."""
    if old.resolve().parent == new.resolve().parent:
        return
    paths = [path for path in edit.document.lines if path[-1] == "model" and path[0] not in set(gone)]
    for path in paths:
        line = edit.extent(path).start
        found = _QUOTED.fullmatch(edit.lines[line])
        if found is not None:
            model = old.parent / str(tomllib.loads(f"k = {found['text']}")["k"])
            seen = Path(os.path.relpath(model.resolve(), new.resolve().parent)).as_posix()
            edit.lines[line] = f"{found['before']}{toml_string(seen)}{found['after']}"


def insist_on(text: str, edit: Edit, parts: Mapping[str, str], locks: Iterable[Lock]) -> None:
    """Make sure that the new text says what it should, and nothing else.

    Raises:
        InputError: the old text is written in a way that cannot be edited line by line.
    """
    expected = {**tomllib.loads(edit.document.text), **{part: {"preset": preset} for part, preset in parts.items()}}
    for lock in locks:
        if lock.toml:
            expected[lock.table] = {**expected.get(lock.table, {}), lock.key: tomllib.loads(f"k = {lock.toml}")["k"]}
    try:
        found = tomllib.loads(text)
    except ValueError:
        found = {}
    for either in (expected, found):
        either["job"] = {k: v for k, v in dict(either.get("job", {})).items() if k != "revision"}
    if _without_models(expected) != _without_models(found):
        remedy = "write each table with its own [header] and each key on lines of its own"
        raise InputError(
            [Problem(edit.document.file, None, "", "a form that cannot be edited line by line", remedy, "")]
        )


def _without_models(of: object) -> object:
    if isinstance(of, Mapping):
        return {key: _without_models(value) for key, value in of.items() if key != "model"}
    return [_without_models(part) for part in of] if isinstance(of, list) else of
