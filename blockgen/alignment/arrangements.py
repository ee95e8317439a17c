"""Arrangements side by side: the line-bored block, and a separate motor plate with a foot-mounted bearing unit."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass, replace

from blockgen.alignment.planar import exceeding_circle, percentile_of, planar_law
from blockgen.alignment.plate import PlateValues, dowelled, plate_values, screwed, separate_terms
from blockgen.alignment.radial import exceeding, percentile, radial_law
from blockgen.alignment.shares import Share, shares
from blockgen.alignment.terms import Term, offsets, terms_of
from blockgen.plan import Plan

LEVELS = (0.5, 0.95, 0.9973)


@dataclass(frozen=True, slots=True)
class Held:
    """A tolerance that must be held: what, and its value in mm as it is written."""

    what: str
    value: str


@dataclass(frozen=True, slots=True)
class Arrangement:
    """One row of the table.

    Args:
        id: block, plate_dowelled or plate_screwed.
        title: In words.
        worst: Worst case of the offset at the coupling, mm.
        p50: Median, mm.
        p95: Not exceeded with a probability of 95 %, mm.
        p9973: The same with 99.73 %.
        exceeding: Probability of exceeding the allowance; None where there is none.
        held: Tolerances that must be held in making.
        setups: Settings on the machine, all parts together.
        fitted: Bores and pin holes finished to a fit, all parts together.
        remark: What the figure does not say.
        shares: Share of each term in the offset.
    """

    id: str
    title: str
    worst: float
    p50: float
    p95: float
    p9973: float
    exceeding: float | None
    held: tuple[Held, ...]
    setups: int
    fitted: int
    remark: str
    shares: tuple[Share, ...]


@dataclass(frozen=True, slots=True)
class _Making:
    """What the shop has to do: counts are common practice without a source."""

    id: str
    title: str
    setups: int
    fitted: int
    remark: str


_BLOCK = _Making("block", "one-piece block, bores in one setting", 3, 2,
                 "base face; both bores and seats; window and holes")  # fmt: skip
_DOWELLED = _Making(
    "plate_dowelled", "motor plate and foot-mounted unit, dowelled", 4, 9,
    "plate: foot, then face and bore; unit: pin holes; base: pin holes; one bore and eight pin holes",
)  # fmt: skip
_SCREWED = _Making("plate_screwed", "motor plate and foot-mounted unit, screws in clearance holes", 3, 1,
                   "as it falls; aligned by indicator it is better, and lost when a part comes off")  # fmt: skip


def arrangements(plan: Plan, limit: float | None = None) -> tuple[Arrangement, ...]:
    """Return the three arrangements of a plan; cold, without load.

    Args:
        plan: Plan of the block; motor, coupling, shaft height and length serve the separate arrangement too.
        limit: Parallel offset allowed, mm.
    """
    known = plate_values(plan)
    with_pins = separate_terms(plan, known, dowelled(known))
    loose = separate_terms(plan, known, screwed(plan))
    return (
        _isotropic_row(_of_block(plan), terms_of(plan), _held_block(plan), limit),
        _planar_row(_DOWELLED, with_pins, (*_held_plate(plan, known), *_held_pins(known)), limit),
        _planar_row(_SCREWED, loose, _held_plate(plan, known), limit),
    )


def _of_block(plan: Plan) -> _Making:
    """Return the block's making; its own dowels are fitted holes too, two in the block and two in the base."""
    pins = sum(feature.kind == "dowel_hole" for feature in (*plan.features, *plan.base_features))
    return replace(_BLOCK, fitted=_BLOCK.fitted + pins)


def _isotropic_row(making: _Making, terms: Sequence[Term], held: tuple[Held, ...], limit: float | None) -> Arrangement:
    law = radial_law(offsets(terms))
    figures = [percentile(law, level) for level in LEVELS]
    over = None if limit is None else exceeding(law, limit)
    return _row(making, terms, held, (law.worst, *figures), over)


def _planar_row(making: _Making, terms: Sequence[Term], held: tuple[Held, ...], limit: float | None) -> Arrangement:
    law = planar_law(offsets(terms))
    figures = [percentile_of(law, level) for level in LEVELS]
    over = None if limit is None else exceeding_circle(law, limit)
    return _row(making, terms, held, (law.worst, *figures), over)


def _row(
    making: _Making, terms: Sequence[Term], held: tuple[Held, ...], figures: Sequence[float], over: float | None
) -> Arrangement:
    worst, p50, p95, p9973 = figures
    return Arrangement(
        making.id, making.title, worst, p50, p95, p9973, over, held, making.setups, making.fitted, making.remark,
        shares(terms),
    )  # fmt: skip


def _held_block(plan: Plan) -> tuple[Held, ...]:
    return (
        Held("both bores", plan.text("block.bore_fit")),
        Held("coaxiality of the bores, diameter", f"{plan.number('block.coaxiality'):g}"),
        Held("squareness of both seats", f"{plan.number('block.seat_perpendicularity'):g}"),
    )


def _held_plate(plan: Plan, values: PlateValues) -> tuple[Held, ...]:
    return (
        Held("motor bore", plan.text("block.bore_fit")),
        Held("axis height of the plate", f"+-{values.plate_height_tolerance:g}"),
        Held("axis height of the unit", f"+-{values.unit_height_tolerance:g}"),
        Held("squareness of the plate to its foot", f"{values.plate_perpendicularity:g}"),
        Held("flatness of both feet and of the base under them", f"{values.foot_flatness:g}"),
    )


def _held_pins(values: PlateValues) -> tuple[Held, ...]:
    return (
        Held("pin holes across the axis, both parts and base", f"+-{values.dowel_position:g}"),
        Held("fit of the pins", values.dowel_fit),
        Held("fit of the slots", values.slot_fit),
    )
