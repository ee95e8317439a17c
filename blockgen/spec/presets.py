"""Presets: parts whose data were written down once, one TOML file each, in the user's folder or shipped."""

from __future__ import annotations

import os
from collections.abc import Iterator
from dataclasses import dataclass
from pathlib import Path
from typing import Any

from blockgen.errors import InputError, Problem
from blockgen.spec.problems import closest, show, validated
from blockgen.spec.read import Document, read_document
from blockgen.spec.tables import PRESET_KINDS
from blockgen.spec.values import is_file_name

#: How far the data of a preset can be trusted.
STATUSES = ("standard", "read", "remembered", "representative")
_HEAD = ("kind", "name", "source", "status")


@dataclass(frozen=True, slots=True)
class Preset:
    """One preset.

    Args:
        kind: motor, bearing, coupling or material.
        name: Its name, also the name of its file.
        source: Where its values come from.
        status: standard, read, remembered or representative.
        values: Its values by key, in default units.
        document: Its file.
    """

    kind: str
    name: str
    source: str
    status: str
    values: dict[str, Any]
    document: Document

    @property
    def note(self) -> str:
        """The source as it is shown beside each value."""
        return f"preset {self.name}: {self.source} ({self.status})"


def user_folder() -> Path:
    """Return the user's own preset folder; it need not exist."""
    named = os.environ.get("BLOCKGEN_PRESETS")
    if named:
        return Path(named)
    import platformdirs

    return Path(platformdirs.user_config_dir("blockgen", appauthor=False)) / "presets"


def shipped_folder() -> Path:
    """Return the folder of the presets that come with the package, in a wheel or in a checkout."""
    package = Path(__file__).resolve().parent.parent
    inside = package / "shipped_presets"
    return inside if inside.is_dir() else package.parent / "presets"


def preset_folders(folder: str | Path | None = None) -> tuple[Path, ...]:
    """Return the folders in the order in which they are searched.

    Raises:
        InputError: the folder named is none.
    """
    if folder is not None and not Path(folder).is_dir():
        raise InputError([Problem(str(folder), None, "", "no such folder", "a folder of presets")])
    return (Path(folder) if folder is not None else user_folder(), shipped_folder())


def preset_paths(folder: str | Path | None = None) -> dict[str, Path]:
    """Return the files by small-letter name; the user's own hide shipped ones of the same name."""
    paths: dict[str, Path] = {}
    for place in preset_folders(folder):
        for path in _files(place):
            paths.setdefault(path.stem.casefold(), path)
    return paths


def _files(place: Path) -> Iterator[Path]:
    try:
        names = sorted(os.listdir(place))  # noqa: PTH208 - a name needs no Path until it is asked for
    except OSError:
        return
    for name in names:
        if name.endswith(".toml") and is_file_name(name.removesuffix(".toml")):
            yield place / name


def list_presets(folder: str | Path | None = None) -> tuple[Preset, ...]:
    """Return all presets by kind and name.

    Raises:
        InputError: one of the files is broken.
    """
    found, problems = readable_presets(folder)
    if problems:
        raise InputError(problems)
    return found


def readable_presets(folder: str | Path | None = None) -> tuple[tuple[Preset, ...], tuple[Problem, ...]]:
    """Return the presets that can be read, by kind and name, and what is wrong with the others."""
    found: list[Preset] = []
    problems: list[Problem] = []
    for path in preset_paths(folder).values():
        try:
            found.append(load_preset(path))
        except InputError as error:
            problems.extend(error.problems)
    return tuple(sorted(found, key=lambda p: (PRESET_KINDS.index(p.kind), p.name))), tuple(problems)


def read_preset(name: str, folder: str | Path | None = None, kind: str | None = None) -> Preset:
    """Return one preset by its name, whatever its case.

    Args:
        name: Its name.
        folder: The user's own presets.
        kind: What it must be a preset of; None for any kind.

    Raises:
        InputError: there is none of that name, it is of another kind, or its file is broken.
    """
    paths = preset_paths(folder)
    path = paths.get(name.casefold())
    if path is None:
        raise InputError([Problem("", None, "preset", show(name), "the name of a preset", suggestion(name, paths))])
    preset = load_preset(path)
    if kind not in {None, preset.kind}:
        found, remedy = (
            f"{show(name)}, a preset of kind {preset.kind}",
            "`blockgen presets` lists them with their kinds",
        )
        raise InputError([Problem("", None, "preset", found, f"a preset of kind {kind}", remedy)])
    return preset


def suggestion(name: str, paths: dict[str, Path]) -> str:
    """Return in words which preset was probably meant."""
    near = closest(name, [p.stem for p in paths.values()], 3)
    return f"did you mean {' or '.join(near)}?" if near else "`blockgen presets` lists them"


def load_preset(path: Path) -> Preset:
    """Read one preset file.

    Raises:
        InputError: the file is broken; every problem names the preset's file and line.
    """
    document = read_document(path)
    problems: list[Problem] = []
    head = {k: _head(document, k, problems) for k in _HEAD}
    kind = head["kind"]
    if problems or kind is None:
        raise InputError(problems)
    expected = f"{', '.join(_HEAD)} and [{kind}]"
    unknown = [name for name in document.data if name not in {*_HEAD, kind}]
    problems.extend(document.problem((name,), f"unknown key {name}", expected) for name in unknown)
    values = validated(document, kind, (kind,), document.data.get(kind), problems)
    if "preset" in values:
        problems.append(document.problem((kind, "preset"), "a preset in a preset", "the values themselves"))
    if problems:
        raise InputError(problems)
    return Preset(kind, path.stem, head["source"] or "", head["status"] or "", values, document)


def _head(document: Document, key: str, problems: list[Problem]) -> str | None:
    value = document.data.get(key)
    expected = {
        "kind": f"one of {', '.join(PRESET_KINDS)}",
        "status": f"one of {', '.join(STATUSES)}",
        "name": "the name of its file without .toml",
        "source": "in words where the values come from",
    }[key]
    good = isinstance(value, str) and bool(value.strip()) and _fits(document, key, value)
    if not good:
        found = "nothing" if value is None else show(value)
        problems.append(document.problem((key,), found, expected))
        return None
    return str(value)


def _fits(document: Document, key: str, value: str) -> bool:
    if key == "kind":
        return value in PRESET_KINDS
    if key == "status":
        return value in STATUSES
    return key != "name" or value.casefold() == Path(document.file).stem.casefold()
