"""A STEP file as solids in mm; every way in which a file can be useless is told apart."""

from __future__ import annotations

import re
from collections.abc import Iterator
from contextlib import contextmanager
from dataclasses import dataclass
from pathlib import Path

from OCP.IFSelect import IFSelect_RetDone
from OCP.Message import Message
from OCP.STEPControl import STEPControl_Reader
from OCP.TColStd import TColStd_SequenceOfAsciiString
from OCP.TopAbs import TopAbs_FACE
from OCP.TopoDS import TopoDS_Shape

from blockgen.errors import InputError, Problem
from blockgen.geometry.kernel import indexed, kernel_errors, solids_of
from blockgen.geometry.kernel_path import to_read

_HEAD = re.compile(rb"\A(?:\xef\xbb\xbf)?\s*(?:/\*.*?\*/\s*)*ISO-10303-21\s*;", re.DOTALL)
_END = re.compile(rb"END-ISO-10303-21\s*;")
_PACKED = {b"PK": "a zip archive", b"\x1f\x8b": "a gzip archive"}
_MILLIMETRE = 1.0
_NAMES = {
    "millimetre": "mm", "mm": "mm", "metre": "m", "m": "m", "centimetre": "cm", "inch": "in", "in": "in", "foot": "ft",
    "micrometre": "um",
}  # fmt: skip


@dataclass(frozen=True, slots=True)
class StepModel:
    """What a STEP file holds.

    Args:
        shape: All solids, mm.
        unit: Length unit that the file states.
        solids: Number of solids.
    """

    shape: TopoDS_Shape
    unit: str
    solids: int


def read_step(path: Path) -> StepModel:
    """Read a STEP file.

    Args:
        path: The file.

    Raises:
        InputError: it is not there, cannot be read, is empty, packed, cut off or no STEP file, states no unit of
            length, or holds no solid.
        KernelError: the kernel fails on it.
    """
    _look(path)
    reader = STEPControl_Reader()
    with kernel_errors(f"{path}: the CAD kernel fails on this file"), _silence():
        reader.SetSystemLengthUnit(_MILLIMETRE)  # whatever another reader in this process left behind
        with to_read(path) as name:
            read = reader.ReadFile(name) == IFSelect_RetDone
        if not read:
            raise _wrong(path, "a file that starts like STEP, but cannot be read", "export it again")
        unit = _unit(reader, path)
        reader.TransferRoots()
        shape = reader.OneShape() if reader.NbShapes() else TopoDS_Shape()
    return StepModel(shape, unit, _count(shape, path))


@contextmanager
def _silence() -> Iterator[None]:
    """Keep the kernel from printing on standard output, where JSON may be expected."""
    messenger = Message.DefaultMessenger_s()
    printers = list(messenger.Printers())
    for printer in printers:
        messenger.RemovePrinter(printer)
    try:
        yield
    finally:
        for printer in printers:
            messenger.AddPrinter(printer)


def _look(path: Path) -> None:
    """Read the file's beginning and end, before the kernel says no more than that it failed."""
    try:
        content = path.read_bytes()
    except FileNotFoundError:
        raise _wrong(path, "nothing: there is no such file", "check the path") from None
    except IsADirectoryError:
        raise _wrong(path, "a folder", "name the file in it") from None
    except OSError as error:
        raise _wrong(path, f"a file that cannot be opened: {error.strerror or error}", "check its rights") from error
    if not content.strip():
        raise _wrong(path, "an empty file", "download or export it again")
    packed = next((what for start, what in _PACKED.items() if content.startswith(start)), None)
    if packed:
        raise _wrong(path, packed, "unpack it and name the STEP file in it")
    if not _HEAD.match(content[:65536]):
        raise _wrong(path, f"a file that does not start with ISO-10303-21; {_first_words(content)}", _EXPORT)
    if not _END.search(content[-65536:]):
        raise _wrong(path, "a STEP file that is cut off: its last line is missing", "download or export it again")


_EXPORT = "export the model as STEP (AP203, AP214 or AP242)"


def _first_words(content: bytes) -> str:
    text = content[:40].decode("ascii", "replace").split("\n")[0]
    return f"it starts with {text!r}" if text.isprintable() else "it is binary"


def _unit(reader: STEPControl_Reader, path: Path) -> str:
    lengths, angles, solid_angles = (TColStd_SequenceOfAsciiString() for _ in range(3))
    reader.FileUnits(lengths, angles, solid_angles)
    stated = [lengths.Value(i).ToCString().strip().lower() for i in range(1, lengths.Length() + 1)]
    names = sorted({_NAMES.get(name, name) for name in stated if name})
    if not names:
        raise _wrong(path, "no unit of length, so that its size is open", "export it again with a unit: mm or inch")
    return " and ".join(names)


def _count(shape: TopoDS_Shape, path: Path) -> int:
    solids = len(solids_of(shape)) if not shape.IsNull() else 0
    if solids:
        return solids
    faces = 0 if shape.IsNull() else indexed(shape, TopAbs_FACE).Extent()
    found = f"{faces} surfaces, but no solid" if faces else "no shape at all"
    raise _wrong(path, found, "ask the maker for a solid model, or export it as a solid")


def _wrong(path: Path, found: str, remedy: str) -> InputError:
    return InputError([Problem(str(path), None, "", found, "a STEP file (ISO 10303-21) with a solid in it", remedy)])
