"""Reads the two sides of a comparison: a spec is sized, of a built folder its summary and its spec are read."""

from __future__ import annotations

import json
from collections.abc import Mapping
from dataclasses import replace
from pathlib import Path
from typing import Any, NoReturn

from blockgen.change.compare.data import Asked, Side
from blockgen.change.compare.shapes import misfits
from blockgen.change.compare.values import same
from blockgen.checks.finding import Verdict
from blockgen.errors import InfeasibleError, InputError, Problem
from blockgen.outputs import names
from blockgen.outputs.manifest import file_sha256, listed_files
from blockgen.pipeline import Design, design
from blockgen.spec.load import Spec

_LARGEST = 20_000_000
_VERDICTS = frozenset(Verdict.__args__)  # type: ignore[attr-defined] # what a Literal allows has no typed name
_MANY = 5


def read_side(path: str | Path) -> Side:
    """Return one side of a comparison.

    Args:
        path: A spec file, or the folder of a set that was built.

    Raises:
        InputError: it is missing, or no spec and no set of ours.
        InfeasibleError: no block can exist for its spec.
    """
    return folder_side(Path(path)) if Path(path).is_dir() else spec_side(path)


def spec_side(path: str | Path) -> Side:
    """Return the side of a spec file.

    Raises:
        InputError: the spec is wrong.
        InfeasibleError: no block can exist for it.
    """
    return side_of(_designed(path), path)


def side_of(made: Design, path: str | Path) -> Side:
    """Return the side of a design; ``path`` is how it is named."""
    start = names.stem(made.plan)
    files = {**names.ALWAYS, **names.roles_by_file(start, names.CHOOSABLE)}
    return Side(str(path), "spec", document_of(made), asked_of(made.spec), files, design=made)


def document_of(made: Design) -> dict[str, Any]:
    """Return the summary of a design as plain data, the setup sheet included."""
    from blockgen.making.setup_sheet import setup_sheet
    from blockgen.outputs.making_json import with_making
    from blockgen.outputs.summary_json import summary

    document = summary(made.plan, made.findings, made.status, made.spec_sha256, made.alignment)
    return with_making(document, setup_sheet(made.plan))


def asked_of(spec: Spec) -> dict[str, Asked]:
    """Return what a spec asks for, preset values included, as plain data."""
    from blockgen.outputs.tidy import tidy

    known = {key: record for key, record in spec.records.items() if record.value is not None}
    return {key: Asked(tidy(record.value), record.unit) for key, record in known.items()}


def folder_side(folder: Path) -> Side:
    """Return the side of a set that was built: its summary as it was written, and what its spec asks for.

    Raises:
        InputError: summary or spec is missing or not as blockgen writes it.
        InfeasibleError: this version finds no block for its spec.
    """
    document = read_summary(folder)
    made = _designed(folder / names.SPEC_TOML)
    listed = listed_files(folder)
    damaged = damaged_files(folder, listed)
    hashes = {name: sha256 for name, sha256 in (listed or {}).items() if name not in damaged}
    side = Side(
        str(folder), "folder", document, asked_of(made.spec), _roles(folder, listed), hashes,
        listed is not None and not damaged, damaged_words(listed, damaged), damaged, made,
    )  # fmt: skip
    return replace(side, remarks=(*side.remarks, *_sized_otherwise(document, made)))


def _designed(path: str | Path) -> Design:
    """Size a spec; a conflict says of which of the two it is."""
    try:
        return design(path)
    except InfeasibleError as error:
        named = [replace(conflict, title=f"{path}: {conflict.title}") for conflict in error.conflicts]
        raise InfeasibleError(named, error.cures) from error


def read_summary(folder: Path) -> dict[str, Any]:
    """Return the summary of a built folder.

    Raises:
        InputError: it is missing or not as blockgen writes it.
    """
    file = folder / names.SUMMARY_JSON
    try:
        if file.stat().st_size > _LARGEST:
            _refuse(file, "", "a larger file", f"at most {_LARGEST} bytes")
        document = json.loads(file.read_text(encoding="utf-8"), parse_constant=_no_number)
    except OSError as error:
        _refuse(file, "", f"cannot be read: {error.strerror or error}", "the summary of a folder that blockgen built")
    except (ValueError, RecursionError) as error:
        if isinstance(error, InputError):
            raise
        _refuse(file, "", "no JSON document in UTF-8", "the summary of a folder that blockgen built")
    _insist_on_summary(file, document)
    return dict(document)


def _no_number(text: str) -> NoReturn:
    raise ValueError(text)


def _insist_on_summary(file: Path, document: Any) -> None:
    found = list(misfits(document))[:_MANY]
    if found:
        rebuild = "build the spec again"
        raise InputError([Problem(str(file), None, key, "something else", what, rebuild) for key, what in found])
    if document["schema"] != 1:
        _refuse(file, "schema", str(document["schema"]), "schema 1, which this version reads")
    for feature in (*document["features"], *document["base_features"]):
        if len(feature["position"]) != 3:
            _refuse(file, f"features.{feature['id']}.position", str(feature["position"]), "x, y and z")
    for check in document["checks"]:
        if check["verdict"] not in _VERDICTS:
            _refuse(file, f"checks.{check['id']}.verdict", check["verdict"], ", ".join(sorted(_VERDICTS)))


def _refuse(file: Path, key: str, found: str, expected: str) -> NoReturn:
    remedy = "name a spec file, or a folder that `blockgen build` wrote"
    raise InputError([Problem(str(file), None, key, found, expected, remedy)])


def damaged_files(folder: Path, listed: Mapping[str, str] | None) -> tuple[str, ...]:
    """Return the files that are missing, or not as the manifest has them."""
    return tuple(sorted(name for name, sha256 in (listed or {}).items() if _hash(folder / name) != sha256))


def damaged_words(listed: Mapping[str, str] | None, damaged: tuple[str, ...]) -> tuple[str, ...]:
    """Return in words why a set is not whole; empty where it is."""
    if listed is None:
        return (f"the set is not whole: {names.MANIFEST} is missing or cannot be used, so no file could be verified",)
    if damaged:
        return (f"the set is not whole: missing, or not as {names.MANIFEST} has them: {', '.join(damaged)}",)
    return ()


def _hash(path: Path) -> str | None:
    try:
        return file_sha256(path)
    except OSError:
        return None


def _roles(folder: Path, listed: Mapping[str, str] | None) -> dict[str, str]:
    """Return the role by name of the files that the manifest lists, by the names that we give."""
    known = {**names.ALWAYS, **{end: role for role, ends in names.ENDINGS.items() for end in ends}}
    found = {name: _role(name, known) for name in listed or () if (folder / name).exists()}
    return {name: role for name, role in sorted(found.items()) if role}


def _role(name: str, known: Mapping[str, str]) -> str:
    return next((role for end, role in known.items() if name.endswith(end)), "")


def _sized_otherwise(document: Mapping[str, Any], made: Design) -> tuple[str, ...]:
    """Tell where this version sizes the spec of a set otherwise than the version that built it."""
    now, then = document_of(made)["dimensions"], document["dimensions"]
    keys = [key for key in now if key in then and not same(now[key]["value"], then[key]["value"])]
    if not keys:
        return ()
    named = ", ".join(keys[:_MANY])
    made_now = "sizes are compared as they were built, volumes and rework are as this version makes them"
    return (f"built by {document['tool']}; this version sizes it otherwise ({named}): {made_now}",)
