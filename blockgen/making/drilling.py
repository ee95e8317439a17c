"""Drills: spotting, reach over diameter, and from which face a deep hole is drilled."""

from __future__ import annotations

from blockgen.making.cut import HOLES, Cut, Group, SetupId
from blockgen.making.practice import constant, decided
from blockgen.making.words import mm, ratio
from blockgen.plan import Feature, Plan
from blockgen.record import Record


def drill(
    plan: Plan, group: Group, setup: SetupId, diameter: float, depth: float, what: str, *, rank: int = HOLES
) -> Cut:
    """Return the drilling of a group of holes.

    Args:
        plan: What was decided about the block.
        group: The holes.
        setup: Setup in which they are drilled.
        diameter: Drill diameter, mm.
        depth: Depth from the face that is up, mm; also the reach of the drill.
        what: What becomes of it, in words.
        rank: Order inside the setup.
    """
    record = reach_record(plan, group, "drill", diameter, depth, ("making.drill_ratio", "making.drill_ratio_long"))
    over = depth / diameter
    tool = f"drill diam {mm(diameter)}"
    return Cut(setup, rank, group.name, what, tool, drill_remark(over), depth, over, (record,))


def drill_remark(over: float) -> str:
    """Return what a depth over diameter means for a drill."""
    if over <= constant("drill_ratio"):
        return ratio(over)
    if over <= constant("drill_ratio_long"):
        return f"{ratio(over)}: peck, or coolant through the drill"
    return f"{ratio(over)}: short guide hole first, long drill, peck"


def reach_record(
    plan: Plan, group: Group, kind: str, diameter: float, reach: float, limits: tuple[str, ...] = ()
) -> Record:
    """Return the record of a tool's reach over its diameter, both in mm, for a group of holes."""
    first = group.first
    using = (*(key for key in first.keys.values() if key in plan.records), *limits)
    facts = {"reach": (round(reach, 4), "mm"), "tool diameter": (round(diameter, 4), "mm")}
    key = f"{group.name}_{kind}_ratio"
    return decided(plan, key, round(reach / diameter, 3), "", "reach / tool diameter", using, facts, "definition")


def mouth(feature: Feature) -> float | None:
    """Return the diameter of the chamfer at the mouth of a hole in mm; None without one."""
    first = feature.profile[0]
    return 2 * first.start_radius if first.part == "mouth_chamfer" else None


def spot(group: Group, setup: SetupId, diameter: float, chamfer: float | None = None, *, rank: int = HOLES) -> Cut:
    """Return the spotting of holes of a drill diameter; with a chamfer at the mouth both in one; diameters in mm."""
    if chamfer is None:
        return Cut(setup, rank, group.name, f"spot {group.times}diam {mm(diameter)}", "spot drill 90 deg")
    what = f"spot and chamfer {group.times}to diam {mm(chamfer)}"
    return Cut(setup, rank, group.name, what, f"spot drill 90 deg, over diam {mm(chamfer)}")


def drilled_from_base(length: float, diameter: float) -> bool:
    """Tell whether a through hole of a length and diameter in mm is too deep to be drilled from above in one go."""
    return length / diameter > constant("drill_ratio_long")
