"""The block of one variant as STEP and STL in a folder of its own."""

from __future__ import annotations

from pathlib import Path

from blockgen import __version__
from blockgen.change.sweep.outcome import ERROR, Outcome, of_plan
from blockgen.errors import KernelError
from blockgen.outputs import names
from blockgen.outputs.folder import new_set
from blockgen.outputs.manifest import manifest
from blockgen.outputs.tidy import as_json
from blockgen.pipeline import Design, design
from blockgen.spec.load import Spec


def with_solid(spec: Spec, folder: str, number: int) -> Outcome:
    """Return the outcome of a variant with exact statistics, and write its block.

    The folder of the variant is written whole or not at all, with a manifest as every set of files has it.

    Args:
        spec: The variant.
        folder: Folder of all variants.
        number: Number of the variant, counted from 0.

    Raises:
        InputError: the parts cannot be.
        InfeasibleError: no block can exist for them.
        MachineError: the files cannot be written.
    """
    made = design(spec)
    found = of_plan(made.plan, made.findings, made.alignment)
    name = folder_name(number)
    try:
        _write(made, Path(folder) / name)
    except KernelError as error:
        return found._replace(status=ERROR, reason=f"no solid: {error}")
    return found._replace(files=name)


def folder_name(number: int) -> str:
    """Return the name of a variant's folder; ``number`` is counted from 0, names from 1."""
    return f"variant_{number + 1:06d}"


def _write(made: Design, folder: Path) -> None:
    from blockgen.geometry.block import build_block
    from blockgen.outputs.step import write_block_step
    from blockgen.outputs.stl import write_block_stl

    block, start = build_block(made.plan), names.stem(made.plan)
    roles = names.roles_by_file(start, ("block", "stl"))
    step, stl = roles
    with new_set(folder) as place:
        write_block_step(block, made.plan, place / step, made.status, __version__)
        write_block_stl(block, made.plan, place / stl)
        text = as_json(manifest(place, roles, made.spec_sha256, made.status))
        (place / names.MANIFEST).write_text(text, encoding="utf-8", newline="\n")
