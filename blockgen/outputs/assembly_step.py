"""The assembly as a STEP file (ISO 10303 AP242, mm): a tree of named, coloured parts and named frames."""

from __future__ import annotations

import re
from collections.abc import Iterable, Iterator, Sequence
from pathlib import Path
from typing import TYPE_CHECKING

from blockgen.errors import MachineError
from blockgen.outputs.names import stem
from blockgen.outputs.part21 import quoted
from blockgen.outputs.part21_order import in_fixed_order
from blockgen.outputs.step import header_text, part_description
from blockgen.plan import Frame, Plan

if TYPE_CHECKING:
    from blockgen.geometry.assembly_document import Assembly, Occurrence, Product
    from blockgen.geometry.stand_ins.part import AssemblyPart

FRAMES = ("bearing_seat", "motor_seat", "base", "coupling_centre")
"""Frames that the file names, in order."""

_STAND_IN = "stand-in, built from the sizes of the spec"


def write_assembly_step(parts: Sequence[AssemblyPart], plan: Plan, path: Path, status: str, tool_version: str) -> None:
    """Write the assembly. Lengths are mm, whatever the units of the spec.

    Args:
        parts: Parts with their places; alike parts share one shape.
        plan: Plan with the job's texts and the frames.
        path: File to write.
        status: Status of the design, goes into the description of the assembly.
        tool_version: Version of blockgen for the header.

    Raises:
        KernelError: the kernel could not translate a part.
        MachineError: the file could not be written.
    """
    from blockgen.geometry.assembly_document import write_assembly_document

    texts, name, description = _Texts(), assembly_name(plan), part_description(plan, status)
    root = _tree(parts, plan, texts, (name, description))
    write_assembly_document(root, path)
    schema, data = _schema_and_data(path.read_text(encoding="ascii"))
    header = header_text(f"{name}.step", description, plan, f"blockgen {tool_version}", schema)
    path.write_text(header + texts.put_back(in_fixed_order(data)), encoding="ascii", newline="\n")


def assembly_name(plan: Plan) -> str:
    """Return the name of the assembly and of its file: ``<number>_<revision>_assembly``."""
    return f"{stem(plan)}_assembly"


def coupling_centre(plan: Plan) -> Frame:
    """Return the frame at the middle of the coupling, from the plan or from its place along the axis."""
    known = plan.frames.get("coupling_centre")
    if known is not None:
        return known
    x = plan.number("coupling_position") + plan.number("coupling.length") / 2
    return Frame((x, 0.0, plan.number("shaft_height")), (1.0, 0.0, 0.0), (0.0, 0.0, 1.0))


class _Texts:
    """Texts that go through the kernel as short tokens, equal ones as one: it would neither escape nor keep them."""

    def __init__(self) -> None:
        self._numbers: dict[str, int] = {}

    def token(self, text: str) -> str:
        return f"@{self._numbers.setdefault(text, len(self._numbers))}@"

    def put_back(self, data: str) -> str:
        texts = list(self._numbers)
        return re.sub(r"'@(\d+)@'", lambda match: quoted(texts[int(match[1])]), data)


def _tree(parts: Iterable[AssemblyPart], plan: Plan, texts: _Texts, root: tuple[str, str]) -> Assembly:
    """Return the parts by groups, in the order of the parts; a group of one part is that part itself."""
    from blockgen.geometry.assembly_document import Assembly

    products: dict[str, Product] = {}
    groups: dict[str, list[Occurrence]] = {}
    for part in parts:
        groups.setdefault(part.group, []).append(_occurrence(part, products, texts))
    members: list[Assembly | Occurrence] = [
        members[0] if len(members) == 1 else Assembly(texts.token(group), texts.token(""), members)
        for group, members in groups.items()
    ]
    members.append(Assembly(texts.token("frames"), texts.token("named coordinate frames"), list(_frames(plan, texts))))
    return Assembly(texts.token(root[0]), texts.token(root[1]), members)


def _occurrence(part: AssemblyPart, products: dict[str, Product], texts: _Texts) -> Occurrence:
    from blockgen.geometry.assembly_document import Occurrence, Product

    if part.name not in products:
        name, description = texts.token(part.name), texts.token(product_description(part))
        products[part.name] = Product(part.shape, name, description, part.colour)
    return Occurrence(texts.token(part.id), products[part.name], part.location)


def product_description(part: AssemblyPart) -> str:
    """Return what stands behind a part: a stand-in with what was assumed about it, or a maker's model."""
    told = [_STAND_IN] if part.stand_in else []
    if part.note:
        told.append(f"assumed: {part.note}" if part.stand_in else part.note)
    return "; ".join((*told, part.warning) if part.warning else told)


def _frames(plan: Plan, texts: _Texts) -> Iterator[Occurrence]:
    from blockgen.geometry.assembly_document import Occurrence, frame_product
    from blockgen.geometry.stand_ins.shapes import standing

    frames = {**plan.frames, "coupling_centre": coupling_centre(plan)}
    for name in FRAMES:
        frame, told = frames[name], texts.token(f"frame {name}")
        product = frame_product(told, texts.token("x along the long edge, z upwards"))
        yield Occurrence(texts.token(name), product, standing(frame.origin, frame.z, frame.x))


def _schema_and_data(kernel_text: str) -> tuple[str, str]:
    """Return the FILE_SCHEMA line and everything from DATA on."""
    header, _, data = kernel_text.partition("DATA;")
    schema = re.search(r"FILE_SCHEMA\s*\(.*?\)\s*\)\s*;", header, re.DOTALL)
    if schema is None or not data.rstrip().endswith("END-ISO-10303-21;"):
        raise MachineError("the STEP file was cut short while it was written; is there room on the disk?")
    return re.sub(r"\s*\n\s*", "", schema[0]), "DATA;" + data
