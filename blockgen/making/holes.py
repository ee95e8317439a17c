"""The tools of every group of holes: spot, drill, tap, counterbore, pilot and ream."""

from __future__ import annotations

from collections.abc import Iterator

from blockgen.making.cut import FACE_WORDS, HOLES, THREADS, Cut, Group, SetupId
from blockgen.making.drilling import drill, drilled_from_base, mouth, reach_record, spot
from blockgen.making.material import material_kind
from blockgen.making.practice import constant
from blockgen.making.words import mm, ratio
from blockgen.plan import Plan
from blockgen.standards.threads import thread


def hole_cuts(plan: Plan, group: Group) -> Iterator[Cut]:
    """Yield the cuts of one group of holes; none for bores, window and relief."""
    makers = {
        "tapped_hole": tapped,
        "clearance_hole": clearance,
        "counterbored_hole": counterbored,
        "dowel_hole": dowels,
    }
    maker = makers.get(group.first.kind)
    if maker is not None:
        yield from maker(plan, group)


def tapped(plan: Plan, group: Group) -> Iterator[Cut]:
    """Yield spot, tap drill and tap of tapped holes."""
    hole, setup = group.first, group.end
    rank = THREADS if setup == "ends" else HOLES
    yield spot(group, setup, hole.diameter, mouth(hole), rank=rank)
    depth = f"{mm(hole.depth)} {'through' if hole.through else 'deep'}"
    what = f"tap drill {group.times}diam {mm(hole.diameter)}, {depth}"
    yield drill(plan, group, setup, hole.diameter, hole.depth, what, rank=rank)
    yield _tap(plan, group, setup, rank)


def _tap(plan: Plan, group: Group, setup: SetupId, rank: int) -> Cut:
    hole = group.first
    designation, _, internal = (hole.thread or "").rpartition("-")
    full = hole.thread_depth or 0.0
    flute = "straight flutes" if material_kind(plan) == "cast_iron" else "spiral flutes"
    if hole.through and material_kind(plan) != "cast_iron":
        flute = "spiral point"
    diameter = thread(designation).diameter
    record = reach_record(plan, group, "tap", diameter, full)
    what = f"tap {group.times}{designation}, {'through' if hole.through else f'full thread {mm(full)}'}"
    remark = f"{FACE_WORDS[hole.face]}, {ratio(full / diameter)}"
    if hole.through and "window" in hole.opens_into:
        remark += "; deburr in the window"
    return Cut(
        setup, rank, group.name, what, f"tap {designation} {internal}, {flute}", remark, full,
        full / diameter, (record,),
    )  # fmt: skip


def clearance(plan: Plan, group: Group) -> Iterator[Cut]:
    """Yield spot and drill of plain through holes."""
    hole, setup = group.first, group.end
    rank = THREADS if setup == "ends" else HOLES
    yield spot(group, setup, hole.diameter, mouth(hole), rank=rank)
    what = f"drill {group.times}diam {mm(hole.diameter)} through {mm(hole.depth)}"
    cut = drill(plan, group, setup, hole.diameter, hole.depth, what, rank=rank)
    remark = f"{FACE_WORDS[hole.face]}, {cut.remark}; deburr in the window for the heads"
    yield Cut(cut.setup, rank, cut.group, what, cut.tool, remark, cut.reach, cut.ratio, cut.records)


def counterbored(plan: Plan, group: Group) -> Iterator[Cut]:
    """Yield through hole and counterbore of base screws; the hole from the base where it is too deep from above."""
    hole = group.first
    sunk, wide = hole.counterbore_depth or 0.0, hole.counterbore_diameter or hole.diameter
    if drilled_from_base(hole.depth, hole.diameter):
        left = hole.depth - sunk
        yield spot(group, "base", hole.diameter)
        # The floor of the counterbore clears the point of the drill away.
        what = f"drill {group.times}diam {mm(hole.diameter)}, {mm(left)} deep"
        yield drill(plan, group, "base", hole.diameter, left, what)
    else:
        yield spot(group, "top", hole.diameter)
        what = f"drill {group.times}diam {mm(hole.diameter)} through {mm(hole.depth)}"
        yield drill(plan, group, "top", hole.diameter, hole.depth, what)
    yield _counterbore(plan, group, wide, sunk)
    chamfer = mouth(hole)
    if chamfer is not None:
        yield Cut("top", HOLES, group.name, f"chamfer {group.times}to diam {mm(chamfer)}", "chamfer tool 90 deg")


def _counterbore(plan: Plan, group: Group, wide: float, sunk: float) -> Cut:
    over, hard = sunk / wide, plan.number("practice.counterbore_ratio")
    word = ""
    if over > hard:
        word = f": over {hard:g} D, ask the shop first"
    elif over > constant("counterbore_ratio"):
        word = ": long tool, flat floor is the seat of the head"
    limits = ("making.counterbore_ratio", "practice.counterbore_ratio")
    record = reach_record(plan, group, "counterbore", wide, sunk, limits)
    return Cut(
        "top", HOLES, group.name, f"counterbore {group.times}diam {mm(wide)}, {mm(sunk)} deep",
        f"counterbore cutter diam {mm(wide)}, flat", ratio(over) + word, sunk, over, (record,),
    )  # fmt: skip


def dowels(plan: Plan, group: Group) -> Iterator[Cut]:
    """Yield relief and pilot hole of dowels, and the reaming together with the base at assembly."""
    hole = group.first
    sunk, wide = hole.counterbore_depth or 0.0, hole.counterbore_diameter or hole.diameter
    seat = hole.depth - sunk
    what = f"drill {group.times}diam {mm(hole.diameter)}, {mm(seat)} deep"
    yield spot(group, "base", hole.diameter)
    pilot = drill(plan, group, "base", hole.diameter, seat, what)
    yield Cut("base", HOLES, group.name, what, pilot.tool, f"dowel pilot, {pilot.remark}; not reamed here",
              seat, pilot.ratio, pilot.records)  # fmt: skip
    yield spot(group, "top", wide)
    above = Group(f"{group.name}_relief", hole, group.count)
    yield drill(plan, above, "top", wide, sunk, f"drill {group.times}diam {mm(wide)}, {mm(sunk)} deep to the pilot")
    yield _ream(plan, group, seat)


def _ream(plan: Plan, group: Group, seat: float) -> Cut:
    """Return the reaming of the dowel holes: from above through the relief, or from below through the base."""
    pin = plan.number("dowel_diameter")
    below = next((f for f in plan.base_features if f.kind == "dowel_hole"), None)
    deep = seat + (below.depth if below else 0.0)
    reach = group.first.depth - seat + deep
    record = reach_record(plan, group, "reamer", pin, reach)
    remark = f"with the base; {mm(deep)} long, reach {mm(reach)} from above ({ratio(reach / pin)})"
    if below is not None and below.through:
        remark += " or from below"
    return Cut(
        "assembly", HOLES, group.name, f"ream {group.times}diam {mm(pin)} H7", f"reamer diam {mm(pin)} H7, long shank",
        remark, reach, reach / pin, (record,),
    )  # fmt: skip
