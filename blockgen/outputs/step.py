"""The block as a STEP file (ISO 10303 AP242, mm): named part, status, material, faces that carry their call-outs."""

from __future__ import annotations

import re
from collections.abc import Iterable, Mapping
from pathlib import Path
from typing import TYPE_CHECKING

from blockgen.errors import MachineError
from blockgen.outputs.names import stem
from blockgen.outputs.part21 import quoted
from blockgen.plan import Feature, Plan
from blockgen.spec.fingerprint import build_date

if TYPE_CHECKING:
    from blockgen.geometry.block import BlockSolid
    from blockgen.geometry.step_document import NamedFace

Colour = tuple[float, float, float]

BLANK: Colour = (0.72, 0.74, 0.76)
FITTED: Colour = (0.15, 0.40, 0.70)
SEAT: Colour = (0.40, 0.65, 0.35)
THREAD: Colour = (0.85, 0.55, 0.15)

SEATS = ("bearing_seat", "motor_seat", "base")
"""Outside faces that other parts stand on."""

NO_DATE = "1970-01-01"
"""Time stamp where no date is known; the form of the file asks for one, and the clock would change the bytes."""


class _Texts:
    """Texts that go through the kernel as short tokens: it would neither escape nor keep all of them whole."""

    def __init__(self) -> None:
        self._texts: list[str] = []

    def token(self, text: str) -> str:
        self._texts.append(text)
        return f"@{len(self._texts) - 1}@"

    def put_back(self, data: str) -> str:
        return re.sub(r"'@(\d+)@'", lambda match: quoted(self._texts[int(match[1])]), data)


def write_block_step(
    block: BlockSolid, plan: Plan, path: Path, status: str, tool_version: str, *, tolerances: bool = True
) -> None:
    """Write the block. Lengths are mm, whatever the units of the spec.

    Args:
        block: Solid of the plan.
        plan: Plan with the job's texts, features and material.
        path: File to write.
        status: Status of the design, goes into the product description.
        tool_version: Version of blockgen for the header.
        tolerances: Write the tolerances so that a program can read them; without them all else stays as it is.

    Raises:
        KernelError: the kernel could not translate the solid.
        MachineError: the file could not be written.
    """
    from blockgen.geometry.step_document import StepPart, write_step_document

    texts = _Texts()
    name, description = part_name(plan), part_description(plan, status)
    faces = _named_faces(block, plan, texts)
    part = StepPart(
        block.shape,
        texts.token(name),
        texts.token(description),
        texts.token(plan.text("block.material") or "not stated"),
        plan.material_density,
        BLANK,
        [face for _, face in faces],
    )
    write_step_document(part, path)
    kernel_text = path.read_text(encoding="ascii")
    schema, data = _schema_and_data(kernel_text)
    header = header_text(f"{name}.step", description, plan, f"blockgen {tool_version}", schema)
    added = _tolerances(plan, block, data, {face.name: face_id for face_id, face in faces}) if tolerances else ""
    path.write_text(header + _with_entities(texts.put_back(data), added), encoding="ascii", newline="\n")


def part_name(plan: Plan) -> str:
    """Return the name of the part and of its files: ``<number>_<revision>_block``."""
    return f"{stem(plan)}_block"


def part_description(plan: Plan, status: str) -> str:
    """Return title and status in one line."""
    return "; ".join(text for text in (plan.text("job.title"), status) if text)


def face_names(plan: Plan) -> Mapping[str, str]:
    """Return the name in the file by face id for the faces that carry a call-out: ``<face id>: <call-out>``."""
    return {
        feature.face_id(part): f"{feature.face_id(part)}: {feature.call_out}"
        for feature in plan.features
        if feature.call_out
        for part in _main_parts(feature)
    }


def face_colours(plan: Plan) -> Mapping[str, Colour]:
    """Return the colour by face id: fitted surfaces and dowel holes, threads, the faces that other parts stand on."""
    colours = dict.fromkeys(SEATS, SEAT)
    for feature in plan.features:
        colour = _role_colour(feature)
        if colour is not None:
            colours.update((feature.face_id(part), colour) for part in _main_parts(feature))
    return colours


def _role_colour(feature: Feature) -> Colour | None:
    if feature.thread:
        return THREAD
    return FITTED if feature.fit or feature.kind == "dowel_hole" else None


def _main_parts(feature: Feature) -> Iterable[str]:
    """Return the turned pieces that have the feature's diameter."""
    radius = feature.diameter / 2
    return dict.fromkeys(
        s.part for s in feature.profile if s.start_radius == s.end_radius and abs(s.end_radius - radius) < 1e-6
    )


def _named_faces(block: BlockSolid, plan: Plan, texts: _Texts) -> list[tuple[str, NamedFace]]:
    """Return every face with its id; its name is a token of its own."""
    from blockgen.geometry.step_document import NamedFace

    names, colours = face_names(plan), face_colours(plan)
    return [
        (face_id, NamedFace(face, texts.token(names.get(face_id, face_id)), colours.get(face_id)))
        for face_id, faces in block.faces.items()
        for face in faces
    ]


def _tolerances(plan: Plan, block: BlockSolid, data: str, tokens: Mapping[str, str]) -> str:
    """Return the entities of the tolerances; ``tokens`` has the face id by the token in the data."""
    from blockgen.outputs.step_tolerances.entities import entities_of
    from blockgen.outputs.step_tolerances.from_plan import tolerances_of
    from blockgen.outputs.step_tolerances.model import read_model

    found = tolerances_of(plan, tuple(block.faces))
    return entities_of(found, read_model(data, tokens)) if found.records else ""


def _with_entities(data: str, added: str) -> str:
    """Return the data with more entities behind the last one."""
    before, end, after = data.rpartition("ENDSEC;")
    return before + added + end + after


def _schema_and_data(kernel_text: str) -> tuple[str, str]:
    """Return the FILE_SCHEMA line and everything from DATA on."""
    header, _, data = kernel_text.partition("DATA;")
    schema = re.search(r"FILE_SCHEMA\s*\(.*?\)\s*\)\s*;", header, re.DOTALL)
    if schema is None or not data.rstrip().endswith("END-ISO-10303-21;"):
        raise MachineError("the STEP file was cut short while it was written; is there room on the disk?")
    return re.sub(r"\s*\n\s*", "", schema[0]), "DATA;" + data


def header_text(file_name: str, description: str, plan: Plan, system: str, schema: str) -> str:
    """Return the head of the file up to the data.

    Args:
        file_name: Name of the file.
        description: What the file holds.
        plan: Plan with author, project and date.
        system: Name and version of this tool.
        schema: FILE_SCHEMA line.
    """
    author, project = plan.text("job.author") or "not stated", plan.text("job.project") or "not stated"
    place = ",".join((quoted(file_name), quoted(time_stamp(plan)), f"({quoted(author)})"))
    return (
        "ISO-10303-21;\nHEADER;\n"
        f"FILE_DESCRIPTION(({quoted(description)}),'2;1');\n"
        f"FILE_NAME({place},({quoted(project)}),{quoted(system)},{quoted(system)},'');\n"
        f"{schema}\nENDSEC;\n"
    )


def time_stamp(plan: Plan) -> str:
    """Return the build date (date of the drawing, else SOURCE_DATE_EPOCH), else a fixed one, as ISO 8601 text."""
    return f"{build_date(plan.records) or NO_DATE}T00:00:00"
