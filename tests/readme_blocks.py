"""The parts of README.md that are made, not written: outputs of commands, excerpts of files, tables from the code.

Each stands behind a marker that says how it is made. ``python -m tests.readme_blocks`` makes all of them again; the
tests compare README with what would be made.

    <!-- shown: blockgen lookup fit 60H7/h6 -->                  the whole output of a command
    <!-- shown: FILE [first line .. line after the last] -->     a piece of a file or of a command's output
    <!-- table: keys -->                                         a table of this module

Several pieces are joined by a line ``...``. A bound is the start of a line; an empty one is the end of the text.
"""

from __future__ import annotations

import os
import re
import shlex
import subprocess
import sys
from collections.abc import Callable, Iterable, Mapping
from pathlib import Path

from blockgen import load_spec, size
from blockgen.outputs.escape import markdown
from blockgen.outputs.markdown import table
from blockgen.outputs.show import with_unit
from blockgen.record import Record
from blockgen.sizing.defaults import PRACTICE
from blockgen.spec.keys import KeyInfo, key_table

ROOT = Path(__file__).resolve().parents[1]
README = ROOT / "README.md"
WIDTH = "100"

_MARK = re.compile(r"^<!-- (shown|table): (.+?) -->\n(.*?)^<!-- end -->$", re.MULTILINE | re.DOTALL)
_PIECE = re.compile(r"\[(.*?) \.\. (.*?)\]")


def remade(text: str, run: Callable[[str], str]) -> str:
    """Return a README with every made part made again; ``run`` gives the output of a command."""

    def part(match: re.Match[str]) -> str:
        kind, what = match.group(1), match.group(2)
        body = TABLES[what]() if kind == "table" else _shown(what, run)
        return f"<!-- {kind}: {what} -->\n{body}<!-- end -->"

    return _MARK.sub(part, text)


def shown_commands(text: str) -> tuple[str, ...]:
    """Return the commands whose output a README shows."""
    wanted = (_PIECE.sub("", match.group(2)).strip() for match in _MARK.finditer(text) if match.group(1) == "shown")
    return tuple(what for what in wanted if what.startswith("blockgen "))


def run(command: str, folder: Path = ROOT) -> str:
    """Return what a command prints, as it prints in a pipe of the width shown; messages of errors count."""
    words = [sys.executable, "-m", *shlex.split(command)]
    done = subprocess.run(
        words, cwd=folder, env=environment(), stdout=subprocess.PIPE, stderr=subprocess.STDOUT, text=True, check=False
    )
    return done.stdout


def environment() -> dict[str, str]:
    """Return an environment in which output depends on nothing of the user's."""
    kept = {key: value for key, value in os.environ.items() if not key.startswith("BLOCKGEN_")}
    return kept | {"COLUMNS": WIDTH, "BLOCKGEN_PRESETS": "my_presets", "PYTHONUTF8": "1"}


def _shown(what: str, run: Callable[[str], str]) -> str:
    pieces, source = _PIECE.findall(what), _PIECE.sub("", what).strip()
    is_command = source.startswith("blockgen ")
    text = run(source) if is_command else (ROOT / source).read_text(encoding="utf-8")
    is_page = source.endswith(".md") and not is_command
    body = _joined(text, pieces, "\n...\n\n" if is_page else "...\n") if pieces else text
    if is_page:
        return body
    head = f"```text\n$ {source}\n" if is_command else "```toml\n"
    return f"{head}{body.rstrip()}\n```\n"


def _joined(text: str, pieces: list[tuple[str, str]], gap: str) -> str:
    """Return pieces of a text; a gap at the end tells that there is more."""
    body = gap.join(_piece(text, first, stop) for first, stop in pieces)
    return body + gap.rstrip("\n") + "\n" if pieces[-1][1] else body


def _piece(text: str, first: str, stop: str) -> str:
    lines = text.splitlines(keepends=True)
    start = next(i for i, line in enumerate(lines) if line.startswith(first))
    rest = range(start + 1, len(lines))
    end = next((i for i in rest if stop and lines[i].startswith(stop)), len(lines))
    return "".join(lines[start:end]).rstrip("\n") + "\n"


def keys_markdown() -> str:
    """Return the key table, one fold a table of the spec."""
    tables: dict[str, list[KeyInfo]] = {}
    for info in key_table():
        tables.setdefault(info.key.rpartition(".")[0], []).append(info)
    return "".join(_fold(table, infos) for table, infos in tables.items())


def _fold(name: str, infos: Iterable[KeyInfo]) -> str:
    rows = [(f"`{_last(i)}`", "required" if i.required else "", i.unit, _meaning(i)) for i in infos]
    body = "".join(f"| {' | '.join(row)} |\n" for row in (("Key", "", "Unit", "Meaning"), ("---",) * 4, *rows))
    return f"<details><summary><code>[{name}]</code></summary>\n\n{body}\n</details>\n\n"


def _last(info: KeyInfo) -> str:
    return info.key.rpartition(".")[2]


def _meaning(info: KeyInfo) -> str:
    choices = f" One of: {', '.join(f'`{c}`' for c in info.choices)}." if info.choices else ""
    return f"{markdown(info.description)}{choices}"


def assumed_markdown() -> str:
    """Return what is assumed when only the required keys are given, with the rule."""
    records = size(load_spec(ROOT / "tests" / "required_keys.toml")).records
    assumed = (r for r in records.values() if r.origin == "assumed" and not r.key.startswith("practice."))
    return _records(assumed, "Assumed")


def practice_markdown() -> str:
    """Return the values of practice that the rules use."""
    return _records(PRACTICE.values(), "Value")


def _records(records: Iterable[Record], title: str) -> str:
    rows = [(r.key, with_unit(r.value, r.unit), _why(r), r.source) for r in records]
    return table(("Key", title, "Why", "Source"), rows, "None.")


def _why(record: Record) -> str:
    return f"equals {', '.join(record.inputs)}" if record.rule == "equals" else record.rule


TABLES: Mapping[str, Callable[[], str]] = {
    "keys": keys_markdown,
    "assumed": assumed_markdown,
    "practice": practice_markdown,
}


if __name__ == "__main__":
    README.write_text(remade(README.read_text(encoding="utf-8"), run), encoding="utf-8", newline="\n")
