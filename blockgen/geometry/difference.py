"""What one block has and another one lacks: booleans of two solids, either of them moved along the shaft."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from math import fsum

from OCP.BRepAlgoAPI import BRepAlgoAPI_Cut
from OCP.gp import gp_Trsf, gp_Vec
from OCP.TopLoc import TopLoc_Location
from OCP.TopoDS import TopoDS_Shape, TopoDS_Solid

from blockgen.errors import KernelError
from blockgen.geometry.block import build_block, cavity_tool
from blockgen.geometry.kernel import bounding_box, kernel_errors, shape_list, solids_of, volume_of
from blockgen.plan import Feature, Plan

Box = tuple[float, float, float, float, float, float]


@dataclass(frozen=True, slots=True)
class Lump:
    """One connected piece of volume.

    Args:
        solid: The kernel's solid.
        volume: mm3.
        box: Least x, y, z and greatest x, y, z, mm.
    """

    solid: TopoDS_Solid
    volume: float
    box: Box


def lacking(first: TopoDS_Shape, *others: TopoDS_Shape) -> tuple[Lump, ...]:
    """Return the pieces of a solid that lie in none of the others, the greatest first.

    Raises:
        KernelError: the kernel could not cut them.
    """
    with kernel_errors("the kernel gave up while it compared two solids"):
        cut = BRepAlgoAPI_Cut()
        cut.SetArguments(shape_list([first]))
        cut.SetTools(shape_list(others))
        cut.Build()
        if not cut.IsDone():
            raise KernelError("the kernel could not compare the two solids")
        lumps = [Lump(solid, volume_of(solid), bounding_box(solid)) for solid in solids_of(cut.Shape())]
    return tuple(sorted(lumps, key=lambda lump: (-round(lump.volume, 3), lump.box)))


def volume_in(lumps: Sequence[Lump]) -> float:
    """Return the volume of all pieces, mm3."""
    return fsum(lump.volume for lump in lumps)


def moved(shape: TopoDS_Shape, along: float) -> TopoDS_Shape:
    """Return a shape moved along x by so many mm."""
    if along == 0:
        return shape
    step = gp_Trsf()
    step.SetTranslation(gp_Vec(along, 0.0, 0.0))
    return shape.Moved(TopLoc_Location(step))


def added_and_removed(
    old: Plan, new: Plan, shift: float = 0.0, staying: Sequence[Feature] = ()
) -> tuple[tuple[Lump, ...], tuple[Lump, ...]]:
    """Return what the new block needs beyond the old one, and what is cut off the old one.

    Args:
        old: Plan of the block that exists.
        new: Plan of the block that it shall become.
        shift: The new bearing seat plane lies at this x of the old block, mm.
        staying: Cavities of the old plan that may stay open in the new block.

    Returns:
        Pieces to add and pieces to remove, in the old block's coordinates.

    Raises:
        KernelError: a block cannot be built or cut.
    """
    before, after = build_block(old).shape, moved(build_block(new).shape, shift)
    tools = [cavity_tool(feature, old)[0] for feature in staying]
    return lacking(after, before, *tools), lacking(before, after)
