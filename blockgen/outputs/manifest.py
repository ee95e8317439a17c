"""The manifest of a set of files, and the test whether a set is whole."""

from __future__ import annotations

import hashlib
import json
from collections.abc import Mapping
from importlib.metadata import PackageNotFoundError, version
from pathlib import Path
from typing import Any

from blockgen import __version__
from blockgen.outputs.names import MANIFEST

SCHEMA = 1
_LARGEST_MANIFEST = 1_000_000
_KERNEL_LIBRARIES = ("cadquery", "cadquery-ocp")


def manifest(folder: Path, roles: Mapping[str, str], spec_sha256: str, status: str) -> dict[str, Any]:
    """Return the manifest of the files that stand in a folder.

    Args:
        folder: Where the files stand.
        roles: Role by file name.
        spec_sha256: Hash of the resolved spec.
        status: Status line of the design.

    Raises:
        OSError: a file cannot be read.
    """
    return {
        "schema": SCHEMA,
        "tool": f"blockgen {__version__}",
        "libraries": _libraries() if set(roles.values()) & {"block", "stl"} else {},
        "spec_sha256": spec_sha256,
        "status": status,
        "files": [_entry(folder / name, roles[name]) for name in sorted(roles)],
    }


def listed_files(folder: Path) -> dict[str, str] | None:
    """Return the hashes by file name that a folder's manifest lists; None without a manifest that can be used."""
    path = folder / MANIFEST
    try:
        if path.stat().st_size > _LARGEST_MANIFEST:
            return None
        entries = json.loads(path.read_text(encoding="utf-8"))["files"]
        files = {entry["name"]: entry["sha256"] for entry in entries}
    except (OSError, ValueError, TypeError, KeyError, RecursionError):
        return None
    return files if all(_is_plain_name(name) for name in files) else None


def set_is_whole(folder: str | Path) -> bool:
    """Tell whether a folder holds every file that its manifest lists, each with the hash that stands there."""
    place = Path(folder)
    files = listed_files(place)
    return files is not None and all(has_hash(place / name, sha256) for name, sha256 in files.items())


def file_sha256(path: Path) -> str:
    """Return the SHA-256 of a file in hexadecimal digits.

    Raises:
        OSError: the file cannot be read.
    """
    with path.open("rb") as file:
        return hashlib.file_digest(file, "sha256").hexdigest()


def _entry(path: Path, role: str) -> dict[str, Any]:
    return {"name": path.name, "role": role, "sha256": file_sha256(path), "size": path.stat().st_size}


def has_hash(path: Path, sha256: object) -> bool:
    """Tell whether a file can be read and has this hash."""
    try:
        return file_sha256(path) == sha256
    except OSError:
        return False


def _is_plain_name(name: object) -> bool:
    """Refuse names that would leave the folder: a manifest may have been edited by anybody."""
    return isinstance(name, str) and name not in {"", ".", "..", MANIFEST} and not set(name) & {"/", "\\", "\0"}


def _libraries() -> dict[str, str]:
    versions = {}
    for name in _KERNEL_LIBRARIES:
        try:
            versions[name] = version(name)
        except PackageNotFoundError:  # the kernel can be installed without its package record
            versions[name] = "unknown"
    return versions
