"""Checks of a plan: coded findings, never a change of the plan."""

from __future__ import annotations

from blockgen.alignment.chain import Alignment, align
from blockgen.alignment.heat import expansions_of
from blockgen.checks.base_joint import base_joint
from blockgen.checks.clashes import clashes
from blockgen.checks.data_sheets import data_sheets
from blockgen.checks.drive import drive
from blockgen.checks.family import of_further_motor
from blockgen.checks.finding import Finding
from blockgen.checks.flange_joints import flange_joints
from blockgen.checks.flexing import flexing
from blockgen.checks.joints import joints
from blockgen.checks.making import making
from blockgen.checks.seating import seating
from blockgen.checks.shaft_line import shaft_line
from blockgen.checks.shafts_in_line import shafts_in_line
from blockgen.checks.sizes import sizes
from blockgen.checks.wall import wall
from blockgen.checks.window import window
from blockgen.evidence.clearances import Clearances
from blockgen.evidence.stiffness.result import Stiffness
from blockgen.plan import Plan

__all__ = ["Finding", "check"]


def check(
    plan: Plan,
    alignment: Alignment | None = None,
    clearances: Clearances | None = None,
    stiffness: Stiffness | None = None,
) -> tuple[Finding, ...]:
    """Check a plan.

    Args:
        plan: A sized block.
        alignment: Evidence about the shafts, ``alignment.chain.align(plan)``; without it they are not judged.
        clearances: Evidence from the solids, ``geometry.interference.clearances(...)``; without it they are not judged.
        stiffness: Evidence from finite elements; without it the wall is estimated and the base joint is taken as rigid.

    Returns:
        Every finding, in the order data sheets, shaft line, seats, alignment, sizes, screws, base joint, flange joints,
        drive, wall, window, making, solids; then, for a family, what is otherwise with each further motor mounted.
        Solids and finite elements are those of the first motor.
    """
    found = _with_one_motor(plan, alignment, clearances, stiffness)
    further: list[Finding] = []
    for number, other in enumerate(plan.others):
        judged = None if alignment is None else align(other, expansions_of(other))
        further += of_further_motor(plan, number, _with_one_motor(other, judged), _as_estimated(plan, found, stiffness))
    return (*found, *further)


def _as_estimated(plan: Plan, found: tuple[Finding, ...], stiffness: Stiffness | None) -> tuple[Finding, ...]:
    """Return the findings with estimates in place of finite elements, since the further motors have no others."""
    return found if stiffness is None else (*found, *base_joint(plan), *wall(plan))


def _with_one_motor(
    plan: Plan,
    alignment: Alignment | None = None,
    clearances: Clearances | None = None,
    stiffness: Stiffness | None = None,
) -> tuple[Finding, ...]:
    """Check a plan with its first motor mounted."""
    return (
        *data_sheets(plan),
        *shaft_line(plan),
        *seating(plan),
        *(() if alignment is None else shafts_in_line(plan, alignment)),
        *sizes(plan),
        *joints(plan),
        *base_joint(plan, stiffness),
        *flange_joints(plan),
        *drive(plan),
        *(wall(plan) if stiffness is None else flexing(plan, stiffness)),
        *window(plan),
        *making(plan),
        *(() if clearances is None else clashes(plan, clearances)),
    )
