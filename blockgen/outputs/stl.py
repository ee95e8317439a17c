"""The block as a binary STL file, in mm."""

from __future__ import annotations

from pathlib import Path
from typing import TYPE_CHECKING

from blockgen.outputs.step import part_name
from blockgen.plan import Plan

if TYPE_CHECKING:
    from blockgen.geometry.block import BlockSolid

HEADER_LENGTH = 80


def write_block_stl(block: BlockSolid, plan: Plan, path: Path) -> None:
    """Write the block as closed triangles, 0.05 mm and 0.1 rad from the true surface.

    Args:
        block: Solid of the plan.
        plan: Plan with the job's number and revision.
        path: File to write.

    Raises:
        KernelError: a face could not be meshed, or the triangles do not close.
        MachineError: the file could not be written.
    """
    from blockgen.geometry.mesh import write_solid_stl

    write_solid_stl(block.shape, path, header(plan))


def header(plan: Plan) -> bytes:
    """Return the 80 bytes at the head of the file: name of the part and unit, no date.

    The word "solid" must not stand first, since readers take such a file for text.
    """
    text = f"binary STL, unit mm, {part_name(plan)}".encode("ascii", "replace")
    return text[:HEADER_LENGTH].ljust(HEADER_LENGTH)
