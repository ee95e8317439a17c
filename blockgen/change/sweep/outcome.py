"""What came of one variant: status, sizes, estimates and the worst check, as plain figures."""

from __future__ import annotations

import math
from collections.abc import Sequence
from typing import NamedTuple

from blockgen.alignment.chain import Alignment, align, chain_terms
from blockgen.alignment.heat import expansions_of, heat_effect, temperatures_of
from blockgen.alignment.scatter import root_mean_square, worst_case
from blockgen.alignment.shares import Share, shares
from blockgen.alignment.terms import angles, offsets
from blockgen.checks import check
from blockgen.checks.finding import Finding
from blockgen.checks.wall import block_stiffness
from blockgen.errors import InfeasibleError, InputError
from blockgen.mechanics.volume import reference_volume
from blockgen.plan import Plan
from blockgen.record import Value
from blockgen.sizing.size import size
from blockgen.spec.load import Spec

FEASIBLE, FAILED, INFEASIBLE, INVALID, ERROR = "feasible", "failed checks", "infeasible", "invalid", "error"
STATUSES = (FEASIBLE, FAILED, INFEASIBLE, INVALID, ERROR)

_DIGITS = 6
_CUBIC_METRES = 1e-9
_N_PER_UM = 1e-3
# P95 over root mean square of a length whose two components are alike and normal (Rayleigh): sqrt(ln 20).
_P95 = math.sqrt(math.log(20))
_WORST_FIRST = {"fail": 0, "warn": 1, "pass": 2}


class Outcome(NamedTuple):
    """What came of one variant; what does not exist is None.

    Args:
        status: feasible; failed checks; infeasible (no layout); invalid (parts that cannot be); error.
        reason: The failed checks, the conflict, or what cannot be.
        length: Chosen length, mm.
        length_min: Least feasible nominal length, mm.
        length_max: Greatest feasible nominal length, mm.
        length_low: Least length after tolerances, mm.
        length_high: Greatest length after tolerances, mm.
        width: mm.
        height: mm.
        mass: kg.
        stiffness: Estimate of the block's stiffness at the shaft along it, N/um.
        offset_worst: Worst case of the offset at the coupling, mm.
        offset_p95: Not exceeded with 95 %, mm: exact where statistics are asked for, else an estimate.
        angle_worst: Worst case of the angle at the coupling, mrad.
        angle_p95: As ``offset_p95``, mrad.
        cause: Cause with the greatest share in the offset.
        cause_share: That share of the variance, 0 to 1.
        screw: Thread of the base screws.
        screws: Number of base screws.
        worst_check: Failed check, else warning, else check that holds, with the least margin.
        worst_verdict: Its verdict.
        worst_margin: Its margin: 1 - use.
        failed: Number of failed checks.
        warned: Number of warnings.
        open: Number of checks that could not be assessed.
        files: Folder of its files; None where none were made.
    """

    status: str
    reason: str = ""
    length: float | None = None
    length_min: float | None = None
    length_max: float | None = None
    length_low: float | None = None
    length_high: float | None = None
    width: float | None = None
    height: float | None = None
    mass: float | None = None
    stiffness: float | None = None
    offset_worst: float | None = None
    offset_p95: float | None = None
    angle_worst: float | None = None
    angle_p95: float | None = None
    cause: str | None = None
    cause_share: float | None = None
    screw: str | None = None
    screws: int | None = None
    worst_check: str | None = None
    worst_verdict: str | None = None
    worst_margin: float | None = None
    failed: int | None = None
    warned: int | None = None
    open: int | None = None
    files: str | None = None


class _Spread(NamedTuple):
    """Worst case and P95 of offset (mm) and angle (mrad), and the cause with the greatest share in the offset."""

    offset_worst: float
    offset_p95: float
    angle_worst: float
    angle_p95: float
    cause: Share | None


def no_block(error: Exception) -> Outcome:
    """Return the outcome of a variant without a block."""
    if isinstance(error, InfeasibleError):
        return Outcome(INFEASIBLE, "; ".join(conflict.title for conflict in error.conflicts))
    if isinstance(error, InputError):
        return Outcome(INVALID, "; ".join(f"{p.key}: {p.found}; expected {p.expected}" for p in error.problems))
    return Outcome(ERROR, f"{type(error).__name__}: {error}")


def outcome(spec: Spec, *, statistics: bool) -> Outcome:
    """Size and check one variant.

    Args:
        spec: The variant.
        statistics: Exact statistics of the alignment, and checks that judge them; else worst case and an estimate.

    Raises:
        InputError: the parts cannot be.
        InfeasibleError: no block can exist for them.
    """
    plan = size(spec, brief=True)
    if not statistics:
        return of_plan(plan, check(plan), None)
    alignment = align(plan, expansions_of(plan), steps=False)
    return of_plan(plan, check(plan, alignment), alignment)


def of_plan(plan: Plan, findings: Sequence[Finding], alignment: Alignment | None) -> Outcome:
    """Return the outcome of a sized and checked variant; without an alignment its spread is estimated."""
    failed = [finding.id for finding in findings if finding.verdict == "fail"]
    spread = _estimated(plan) if alignment is None else _exact(alignment)
    base = next(fastener for fastener in plan.fasteners if fastener.where == "base")
    worst = _worst(findings)
    return Outcome(
        status=FAILED if failed else FEASIBLE,
        reason=", ".join(failed),
        length=_figure(plan, "length"),
        length_min=_figure(plan, "length_min"),
        length_max=_figure(plan, "length_max"),
        length_low=_figure(plan, "length_low"),
        length_high=_figure(plan, "length_high"),
        width=plan.body.width,
        height=plan.body.height,
        mass=_rounded(reference_volume(plan) * _CUBIC_METRES * plan.material_density),
        stiffness=_rounded(block_stiffness(plan)[1] * _N_PER_UM),
        offset_worst=_rounded(spread.offset_worst),
        offset_p95=_rounded(spread.offset_p95),
        angle_worst=_rounded(spread.angle_worst),
        angle_p95=_rounded(spread.angle_p95),
        cause=spread.cause.id if spread.cause else None,
        cause_share=_rounded(spread.cause.of_variance) if spread.cause else None,
        screw=base.size,
        screws=base.count,
        worst_check=worst.id if worst else None,
        worst_verdict=worst.verdict if worst else None,
        worst_margin=worst.margin if worst else None,
        failed=len(failed),
        warned=sum(finding.verdict == "warn" for finding in findings),
        open=sum(finding.verdict == "not_assessed" for finding in findings),
    )


def _rounded(value: float) -> float:
    return round(value, _DIGITS)


def _figure(plan: Plan, key: str) -> float | None:
    value: Value = plan.records[key].value if key in plan.records else None
    return float(value) if isinstance(value, (int, float)) else None


def _worst(findings: Sequence[Finding]) -> Finding | None:
    """Return the failure, else the warning, else the check that holds, with the least margin."""
    judged = [finding for finding in findings if finding.margin is not None]
    return min(judged, key=lambda finding: (_WORST_FIRST[finding.verdict], finding.margin), default=None)


def _exact(alignment: Alignment) -> _Spread:
    return _Spread(
        alignment.offset.worst,
        alignment.offset.p95,
        alignment.angle.worst * 1e3,
        alignment.angle.p95 * 1e3,
        next(iter(alignment.shares_offset), None),
    )


def _estimated(plan: Plan) -> _Spread:
    """Return the worst case as it is, and P95 from the mean square as if the sum were normal."""
    warm = temperatures_of(plan)
    terms = chain_terms(plan, heat_effect(plan, expansions_of(plan), warm) if warm else None)
    across, turned = offsets(terms), angles(terms)
    return _Spread(
        worst_case(across),
        root_mean_square(across) * _P95,
        worst_case(turned) * 1e3,
        root_mean_square(turned) * 1e3 * _P95,
        next(iter(shares(terms)), None),
    )
