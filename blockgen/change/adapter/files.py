"""The files of an adapter: its solid as STEP (ISO 10303 AP242, mm), faces named and coloured as those of the block."""

from __future__ import annotations

import re
from collections.abc import Sequence
from pathlib import Path
from typing import TYPE_CHECKING

from blockgen import __version__
from blockgen.change.adapter.data import Adapter
from blockgen.change.adapter.weight import outside_of
from blockgen.errors import MachineError
from blockgen.outputs.names import stem
from blockgen.outputs.part21 import quoted
from blockgen.outputs.step import BLANK, FITTED, SEAT, THREAD, header_text
from blockgen.plan import Feature, Plan

if TYPE_CHECKING:
    from blockgen.geometry.adapter_solid import AdapterSolid

_FACES = {"block_face": SEAT, "motor_face": SEAT, "outside": FITTED}


def write_adapter(adapter: Adapter, new: Plan, folder: str | Path, number: int = 1) -> Path:
    """Write the solid of an adapter beside the change report.

    Args:
        adapter: What to write.
        new: Plan of the block that is wanted; the files bear its number and revision.
        folder: Folder to write into.
        number: 1 for ``<number>_<revision>_adapter.step``, 2 for ``..._adapter_2.step`` and so on.

    Returns:
        Path of the file.

    Raises:
        KernelError: the solid does not come out as planned.
        MachineError: the file cannot be written.
    """
    from blockgen.geometry.step_document import NamedFace, StepPart, write_step_document

    path = Path(folder) / adapter_file(new, number)
    name, texts = path.stem, _Tokens()
    made = solid_of(adapter)
    faces = [
        NamedFace(face, texts.token(_call_out(adapter, face_id)), _colour(adapter, face_id))
        for face_id, group in made.faces.items()
        for face in group
    ]
    told = f"{adapter.title}; for review by a qualified engineer"
    part = StepPart(
        made.shape, texts.token(name), texts.token(told), texts.token(adapter.material), adapter.density, BLANK, faces
    )
    write_step_document(part, path)
    schema, data = _schema_and_data(path.read_text(encoding="ascii"))
    header = header_text(path.name, told, new, f"blockgen {__version__}", schema)
    path.write_text(header + texts.put_back(data), encoding="ascii", newline="\n")
    return path


def write_adapters(adapters: Sequence[Adapter], new: Plan, folder: str | Path) -> tuple[Path, ...]:
    """Write the solids of several adapters, the least pain first; see ``write_adapter``."""
    return tuple(write_adapter(each, new, folder, number) for number, each in enumerate(adapters, 1))


def adapter_file(new: Plan, number: int = 1) -> str:
    """Return the name of an adapter's file."""
    return f"{stem(new)}_adapter{'' if number == 1 else f'_{number}'}.step"


def solid_of(adapter: Adapter) -> AdapterSolid:
    """Return the solid of an adapter.

    Raises:
        KernelError: it does not come out as planned.
    """
    from blockgen.geometry.adapter_solid import Outline, plate_solid, ring_solid

    body = adapter.body
    if adapter.kind == "ring":
        return ring_solid(body.spigot_diameter, adapter.number("adapter.bore"), body.thickness, body.chamfer)
    outline = Outline(outside_of(adapter), body.bottom, body.spigot_diameter, body.spigot_length)
    return plate_solid(outline, adapter.features)


def _feature(adapter: Adapter, face_id: str) -> Feature | None:
    """Return the feature whose main surface a face is."""
    owner, _, part = face_id.rpartition(".")
    return next((f for f in adapter.features if f.id == owner and part in ("bore", "thread", "hole")), None)


def _call_out(adapter: Adapter, face_id: str) -> str:
    feature = _feature(adapter, face_id)
    if feature is not None:
        return f"{face_id}: {feature.call_out}"
    if face_id == "outside":
        size = adapter.records["adapter.outside"]
        return f"{face_id}: {size.value:g} {size.fit} ({size.upper or 0:+.3f}/{size.lower or 0:+.3f})"
    return face_id


def _colour(adapter: Adapter, face_id: str) -> tuple[float, float, float] | None:
    feature = _feature(adapter, face_id)
    if feature is None:
        return _FACES.get(face_id)
    return THREAD if feature.thread else FITTED if feature.fit else None


class _Tokens:
    """Texts that go through the kernel as short tokens: it would neither escape nor keep all of them whole."""

    def __init__(self) -> None:
        self._texts: list[str] = []

    def token(self, text: str) -> str:
        self._texts.append(text)
        return f"@{len(self._texts) - 1}@"

    def put_back(self, data: str) -> str:
        return re.sub(r"'@(\d+)@'", lambda match: quoted(self._texts[int(match[1])]), data)


def _schema_and_data(text: str) -> tuple[str, str]:
    """Return the FILE_SCHEMA line and everything from DATA on."""
    head, _, data = text.partition("DATA;")
    schema = re.search(r"FILE_SCHEMA\s*\(.*?\)\s*\)\s*;", head, re.DOTALL)
    if schema is None or not data.rstrip().endswith("END-ISO-10303-21;"):
        raise MachineError("the STEP file was cut short while it was written; is there room on the disk?")
    return re.sub(r"\s*\n\s*", "", schema[0]), "DATA;" + data
