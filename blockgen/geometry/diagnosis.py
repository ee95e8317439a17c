"""What is to blame when a solid is not what the plan asks for; slow, and only called when it is not."""

from __future__ import annotations

from collections.abc import Sequence
from itertools import combinations

from OCP.BRepAlgoAPI import BRepAlgoAPI_Common, BRepAlgoAPI_Cut
from OCP.TopoDS import TopoDS_Shape, TopoDS_Solid

from blockgen.geometry.kernel import bounding_box, solids_of, volume_of
from blockgen.mechanics.volume import feature_volume, run_out_volume
from blockgen.plan import Feature, Plan


def splitting_feature(plan: Plan, body: TopoDS_Solid, tools: Sequence[TopoDS_Shape]) -> str:
    """Say which feature parts the block, found by cutting one after the other."""
    for feature, tool in zip(plan.features, tools, strict=True):
        solids = solids_of(BRepAlgoAPI_Cut(body, tool).Shape())
        if not solids:
            return f"{feature.id} leaves nothing of the block; make it smaller"
        if len(solids) > 1:
            return f"{feature.id} cuts the block into {len(solids)} pieces; keep it inside the walls"
        body = solids[0]
    return "the cavities together cut the block into pieces; keep them apart from one another"


def volume_suspects(plan: Plan, body: TopoDS_Solid, tools: Sequence[TopoDS_Shape], tolerance: float) -> list[str]:
    """Say which cavities take more or less than planned out of the uncut block, and which meet unplanned.

    Args:
        plan: Plan.
        body: Uncut block.
        tools: Tool of each feature, in the plan's order.
        tolerance: Volume that does not matter, mm3.
    """
    cut = list(zip(plan.features, tools, strict=True))
    alone = [_breaks_out(feature, tool, plan, body, tolerance) for feature, tool in cut]
    pairs = [_meet(one, other, tolerance) for one, other in combinations(cut, 2)]
    return [text for text in (*alone, *pairs) if text]


def _breaks_out(feature: Feature, tool: TopoDS_Shape, plan: Plan, body: TopoDS_Solid, tolerance: float) -> str:
    if feature.through and feature.profile:
        return ""  # what lies past its end in the window counts for both
    taken = volume_of(BRepAlgoAPI_Common(body, tool).Shape())
    planned = feature_volume(feature, plan.body) + run_out_volume(feature, plan)
    if abs(taken - planned) <= tolerance:
        return ""
    return f"{feature.id} takes {taken:.1f} mm3 out of the block, planned {planned:.1f} mm3"


def _meet(one: tuple[Feature, TopoDS_Shape], other: tuple[Feature, TopoDS_Shape], tolerance: float) -> str:
    (first, first_tool), (second, second_tool) = one, other
    planned = second.id in first.opens_into or first.id in second.opens_into or "relief" in (first.kind, second.kind)
    if planned or not _boxes_meet(first_tool, second_tool):
        return ""
    shared = volume_of(BRepAlgoAPI_Common(first_tool, second_tool).Shape())
    return f"{first.id} and {second.id} share {shared:.1f} mm3" if shared > tolerance / 10 else ""


def _boxes_meet(first: TopoDS_Shape, second: TopoDS_Shape) -> bool:
    one, other = bounding_box(first), bounding_box(second)
    return all(one[i] < other[i + 3] and other[i] < one[i + 3] for i in range(3))
