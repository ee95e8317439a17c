"""The block as a solid: the plan's body less its cavities, every face named by the plan, checked against the plan."""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from dataclasses import dataclass
from typing import Any

from OCP.BRepAlgoAPI import BRepAlgoAPI_Cut
from OCP.TopAbs import TopAbs_FACE
from OCP.TopoDS import TopoDS, TopoDS_Face, TopoDS_Shape, TopoDS_Solid

from blockgen.errors import KernelError
from blockgen.geometry.body import body_solid
from blockgen.geometry.diagnosis import splitting_feature, volume_suspects
from blockgen.geometry.kernel import (
    Named,
    faces_of,
    gathered,
    indexed,
    is_valid,
    items,
    kernel_errors,
    shape_list,
    solids_of,
    volume_of,
)
from blockgen.geometry.pockets import pocket_tool
from blockgen.geometry.turned import turned_tool
from blockgen.mechanics.volume import reference_volume, run_out, volume_tolerance
from blockgen.plan import Feature, Plan

MAY_BE_SWALLOWED = ("mouth_chamfer", "run_out")
"""Pieces that another cavity may take away as a whole: a mouth inside a relief, a tool end in the open."""


_HAIR = 1e-6


@dataclass(frozen=True, slots=True)
class BlockSolid:
    """A solid and its faces by id.

    Args:
        shape: The kernel's solid (``TopoDS_Solid``).
        faces: Faces of that solid by face id; several where a cavity cuts a face into pieces.
        volume: Volume of the solid, mm3.
    """

    shape: TopoDS_Solid
    faces: Mapping[str, tuple[TopoDS_Face, ...]]
    volume: float


def build_block(plan: Plan) -> BlockSolid:
    """Return the solid of a plan.

    Raises:
        KernelError: the result is not one valid solid, lacks a face of the plan, or has another volume than the plan.
    """
    with kernel_errors("the kernel gave up while it built the block"):
        body, named = body_solid(plan.body)
        made = [cavity_tool(feature, plan) for feature in plan.features]
        tools = [tool for tool, _ in made]
        named = [*named, *(item for _, faces in made for item in faces)]
        solid, faces = _cut(body, tools, named, plan)
        block = BlockSolid(solid, faces, volume_of(solid))
        _check_faces(block, {face_id for face_id, _ in named}, plan)
        if not _too_thin(plan):
            _check_volume(block, plan, body, tools)
    return block


def cavity_tool(feature: Feature, plan: Plan) -> tuple[TopoDS_Shape, list[Named]]:
    """Return the tool that cuts one feature, and its named faces."""
    if feature.pocket is not None:
        return pocket_tool(feature, feature.pocket, plan.body)
    return turned_tool(feature, run_out(feature, plan))


def to_cadquery(block: BlockSolid) -> Any:
    """Return the block as a ``cadquery.Solid``; cadquery is loaded here and nowhere else."""
    from cadquery import Solid

    return Solid(block.shape)


def _cut(
    body: TopoDS_Solid, tools: Sequence[TopoDS_Shape], named: Sequence[Named], plan: Plan
) -> tuple[TopoDS_Solid, Mapping[str, tuple[TopoDS_Face, ...]]]:
    """Cut all tools at once and carry the names over by the history.

    The tools stay apart in the argument list: a compound of tools that overlap gives a wrong solid without a word.
    """
    if not tools:
        return body, gathered(named)
    cut = BRepAlgoAPI_Cut()
    cut.SetArguments(shape_list([body]))
    cut.SetTools(shape_list(tools))
    cut.SetRunParallel(True)
    cut.SetUseOBB(True)  # sorts out pairs that cannot meet; it halves the time and changes no result
    cut.Build()
    if not cut.IsDone():
        raise KernelError("the kernel could not cut the cavities out of the block")
    solids = solids_of(cut.Shape())
    if len(solids) != 1:
        raise KernelError(splitting_feature(plan, body, tools))
    return solids[0], gathered(_traced(cut, solids[0], named))


def _traced(cut: BRepAlgoAPI_Cut, solid: TopoDS_Solid, named: Sequence[Named]) -> list[Named]:
    """Return what has become of the named faces, as they lie in the solid.

    Where walls of two cavities lie in one plane the kernel makes one face of them; it keeps the first name.
    """
    present = indexed(solid, TopAbs_FACE)
    traced: dict[int, Named] = {}
    for face_id, face in named:
        for successor in items(cut.Modified(face)) or [face]:
            index = present.FindIndex(successor)
            if index and index not in traced:
                traced[index] = (face_id, TopoDS.Face_s(present.FindKey(index)))
    return list(traced.values())


def _too_thin(plan: Plan) -> bool:
    """Tell whether the plan itself holds a wall that fails: cavities may meet unplanned, so no sum can be exact.

    Such a block is still wanted for a look at it; its status says that it is not for manufacture.
    """
    return any(ligament.wall < ligament.required - _HAIR for ligament in plan.ligaments)


def _check_faces(block: BlockSolid, face_ids: set[str], plan: Plan) -> None:
    if not is_valid(block.shape):
        raise KernelError("the kernel finds the block's solid inconsistent; two cavities may touch along a line")
    if _too_thin(plan):
        return
    missing = sorted(face_id for face_id in face_ids if face_id not in block.faces and not _may_be_gone(face_id))
    if missing:
        raise KernelError(
            f"faces of the plan are missing from the solid: {', '.join(missing)}; another cavity took them"
        )
    nameless = len(faces_of(block.shape)) - sum(len(faces) for faces in block.faces.values())
    if nameless:
        raise KernelError(f"{nameless} faces of the solid belong to no feature of the plan")


def _check_volume(block: BlockSolid, plan: Plan, body: TopoDS_Solid, tools: Sequence[TopoDS_Shape]) -> None:
    expected, tolerance = reference_volume(plan), volume_tolerance(plan)
    if abs(block.volume - expected) > tolerance:
        suspects = volume_suspects(plan, body, tools, tolerance) or ["no single cavity is to blame"]
        raise KernelError(
            f"volume of the solid is {block.volume:.3f} mm3, the plan's sum is {expected:.3f} mm3, "
            f"allowed difference {tolerance:.3f} mm3: {'; '.join(suspects)}"
        )


def _may_be_gone(face_id: str) -> bool:
    return face_id.rpartition(".")[2] in MAY_BE_SWALLOWED
