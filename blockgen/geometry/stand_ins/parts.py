"""Every part of the assembly: the block, the makers' models or stand-ins about it, and what holds them."""

from __future__ import annotations

from collections.abc import Mapping

from blockgen.geometry.block import BlockSolid
from blockgen.geometry.kernel import kernel_errors
from blockgen.geometry.stand_ins.base_plate import base_plate
from blockgen.geometry.stand_ins.bearing_unit import bearing_unit
from blockgen.geometry.stand_ins.coupling import coupling
from blockgen.geometry.stand_ins.fasteners import fasteners
from blockgen.geometry.stand_ins.flange import centring_ring
from blockgen.geometry.stand_ins.makers_model import MakersModel, with_model
from blockgen.geometry.stand_ins.motor import motor
from blockgen.geometry.stand_ins.part import AssemblyPart, Colour
from blockgen.geometry.stand_ins.screw_journal import screw_journal
from blockgen.geometry.stand_ins.shapes import moved
from blockgen.geometry.stand_ins.sizes import stand_in_sizes
from blockgen.plan import Plan

BLOCK: Colour = (0.72, 0.74, 0.76)

NO_MODELS: Mapping[str, MakersModel] = {}


def parts(plan: Plan, block: BlockSolid, models: Mapping[str, MakersModel] = NO_MODELS) -> tuple[AssemblyPart, ...]:
    """Return every part of the assembly where it stands, in a fixed order.

    Args:
        plan: Sized plan.
        block: Its solid.
        models: Makers' models by ``motor`` and ``bearing``; a stand-in is built where there is none.

    Raises:
        KernelError: a stand-in could not be built from its sizes.
    """
    sizes = stand_in_sizes(plan)
    with kernel_errors("the kernel gave up while it built the parts about the block"):
        ends = {"bearing": bearing_unit(plan, sizes), "motor": motor(plan, sizes)}
        ends |= {end: with_model(ends[end], model, plan, end) for end, model in sorted(models.items())}
        rings = [ring for end in ends for ring in centring_ring(plan, sizes, end)]
        return (
            _block(plan, block), base_plate(plan, sizes), *ends.values(), *rings, screw_journal(plan, sizes),
            coupling(plan, sizes), *fasteners(plan, sizes),
        )  # fmt: skip


def _block(plan: Plan, block: BlockSolid) -> AssemblyPart:
    name = f"{plan.text('job.number')}_{plan.text('job.revision')}_block"
    return AssemblyPart(
        "block", name, "block", block.shape, moved((0.0, 0.0, 0.0)), BLOCK, stand_in=False,
        frame="base face under the bearing seat",
    )  # fmt: skip
