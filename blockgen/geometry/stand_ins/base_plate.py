"""A patch of the base plate under the block, with its holes."""

from __future__ import annotations

from OCP.TopoDS import TopoDS_Solid

from blockgen.geometry.stand_ins.part import AssemblyPart, Colour
from blockgen.geometry.stand_ins.shapes import box, cut, moved
from blockgen.geometry.stand_ins.sizes import note_of
from blockgen.geometry.turned import turned_tool
from blockgen.plan import Plan
from blockgen.record import Ledger

BASE: Colour = (0.50, 0.55, 0.52)

_BEYOND = 1.0  # how far a tool goes on past the underside, mm


def base_plate(plan: Plan, sizes: Ledger) -> AssemblyPart:
    """Return the plate under the block; its own axes are the block's, z = 0 on its upper face.

    Raises:
        KernelError: the holes cut it in pieces.
    """
    name = f"base plate {sizes.number('base.thickness'):g}, {sizes.text('base.material')} (patch under the block)"
    return AssemblyPart(
        "base_plate", name, "base", plate_solid(plan, sizes), moved(plan.frames["base"].origin), BASE, stand_in=True,
        frame="base face under the bearing seat", note=note_of(sizes, plan, "base"),
    )  # fmt: skip


def plate_solid(plan: Plan, sizes: Ledger) -> TopoDS_Solid:
    """Return the plate with the holes of the plan."""
    margin, thick = sizes.number("base.plate_margin"), sizes.number("base.thickness")
    side = plan.body.width / 2 + margin
    patch = box((-margin, -side, -thick), (plan.body.length + margin, side, 0.0))
    tools = [turned_tool(f, _BEYOND if f.through and f.depth >= thick else 0.0)[0] for f in plan.base_features]
    return cut(patch, tools)
