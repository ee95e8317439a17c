"""The two bores: opened in the rough, finished after the window, the smaller one through the larger where it can."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass

from blockgen.making.cut import BORES, WINDOW, Cut, SetupId
from blockgen.making.drilling import mouth
from blockgen.making.practice import constant, decided
from blockgen.making.words import mm, plain, ratio
from blockgen.mechanics.reach import bar_ratio
from blockgen.plan import Feature, Plan
from blockgen.record import Record

_BAR = ("practice.bar_fraction", "practice.bar_ratio", "practice.bar_ratio_damped")


@dataclass(frozen=True, slots=True)
class Way:
    """How the smaller bore is reached.

    Args:
        large: Feature id of the larger bore.
        small: Feature id of the smaller bore.
        through: True where the smaller one is bored through the larger one, in one position.
        ratio: Bar length over bar diameter for that.
        reason: Why it is so, in words.
        record: How it came about.
    """

    large: str
    small: str
    through: bool
    ratio: float
    reason: str
    record: Record


def way(plan: Plan) -> Way:
    """Return how the smaller bore is reached: through the larger one, or from its own end.

    Source: limits of the bar from memory, as given by the plan's practice values.
    """
    ends = ("motor", "bearing") if plan.number("motor_bore") >= plan.number("bearing_bore") else ("bearing", "motor")
    large, small = (f"{end}_bore" for end in ends)
    opening, size = plan.number(f"{ends[0]}_through_bore"), plan.number(small)
    over = bar_ratio(plan.number("length"), size, plan.number("practice.bar_fraction"))
    reason, through = f"opening {mm(opening)} passes the bar for {mm(size)}", True
    if plan.number(f"{ends[1]}_through_bore") < size:
        reason, through = f"its step to {mm(plan.number(f'{ends[1]}_through_bore'))} faces away from there", False
    elif opening < size:
        reason, through = f"opening {mm(opening)} is smaller than {mm(size)}", False
    elif over > plan.number("practice.bar_ratio_damped"):
        reason, through = f"a bar of {ratio(over)} chatters", False
    using = ("length", small, f"{ends[1]}_through_bore", f"{ends[0]}_through_bore", *_BAR)
    rule = f"through the larger bore where opening, step and bar allow it; {reason}"
    record = decided(
        plan, "smaller_bore_way", f"through the {plain(large)}" if through else "from its own end", "", rule, using,
        source="limits of the bar from memory",
    )  # fmt: skip
    return Way(large, small, through, over, reason, record)


def bore_cuts(plan: Plan) -> Iterator[Cut]:
    """Yield the cuts of both bores, the larger one first."""
    found = way(plan)
    for name in (found.large, found.small):
        yield from _opened(plan, plan.feature(name))
    for name in (found.large, found.small):
        yield from _finished(plan, plan.feature(name), found)


def narrowest(bore: Feature) -> float:
    """Return the diameter of the narrowest piece of a bore, mm."""
    return 2 * min(s.end_radius for s in bore.profile)


def _opened(plan: Plan, bore: Feature) -> Iterator[Cut]:
    """Yield the roughing of a bore before the block is relaxed."""
    left = 2 * constant("rough_left")
    size = narrowest(bore) - left
    record = decided(
        plan, f"{bore.id}_opened", round(size, 4), "mm", "narrowest diameter - 2 x making.rough_left",
        (*bore.keys.values(), "making.rough_left"),
    )  # fmt: skip
    yield Cut(
        "rough", WINDOW, bore.id, f"open {plain(bore.id)} to diam {mm(size)}", "drill, then end mill on a circle",
        f"{mm(left)} left on the diameter", records=(record,),
    )  # fmt: skip


def _finished(plan: Plan, bore: Feature, found: Way) -> Iterator[Cut]:
    """Yield finishing of a bore: opening, fitted bore in two cuts, chamfer."""
    long_bar = bore.id == found.small and found.through
    own = bore.id == found.small and not found.through
    setup: SetupId = "far_end" if own else "ends"
    wall = bore.profile[-1].end
    if narrowest(bore) < bore.diameter:
        yield Cut(setup, BORES, bore.id, f"bore diam {mm(narrowest(bore))} through {mm(wall)}", "rough boring head",
                  f"opening behind the {plain(bore.id)}")  # fmt: skip
    reach = plan.number("length") if long_bar else bore.depth
    bar = _bar(plan, bore, reach)
    yield _rough(plan, bore, setup, bar)
    yield _fine(plan, bore, setup, bar, found)
    wide = mouth(bore)
    if wide is not None:
        yield Cut(setup, BORES, bore.id, f"chamfer {plain(bore.id)} to diam {mm(wide)}", "chamfer tool 90 deg",
                  f"lead-in for the pilot, from the {plain(bore.face).removesuffix(' seat')} end")  # fmt: skip


@dataclass(frozen=True, slots=True)
class _Bar:
    """A boring bar: greatest diameter and reach in mm, reach over diameter, records."""

    diameter: float
    reach: float
    ratio: float
    records: tuple[Record, ...]


def _bar(plan: Plan, bore: Feature, reach: float) -> _Bar:
    fraction = plan.number("practice.bar_fraction")
    diameter, over = fraction * bore.diameter, bar_ratio(reach, bore.diameter, fraction)
    size = decided(plan, f"{bore.id}_bar", round(diameter, 4), "mm", f"practice.bar_fraction x {bore.id}",
                   ("practice.bar_fraction", bore.id))  # fmt: skip
    facts = {"reach": (round(reach, 4), "mm")}
    using: tuple[str | Record, ...] = (size, "length", *bore.keys.values(), *_BAR)
    record = decided(plan, f"{bore.id}_bar_ratio", round(over, 3), "", f"reach / making.{bore.id}_bar", using, facts,
                     "definition; limits from memory")  # fmt: skip
    return _Bar(diameter, reach, over, (size, record))


def _rough(plan: Plan, bore: Feature, setup: SetupId, bar: _Bar) -> Cut:
    left = constant("bore_left")
    record = decided(plan, f"{bore.id}_rough", round(bore.diameter - left, 4), "mm", f"{bore.id} - making.bore_left",
                     (bore.id, "making.bore_left"))  # fmt: skip
    return Cut(
        setup, BORES, bore.id, f"rough-bore {plain(bore.id)} to {mm(bore.diameter - left)}, {mm(bore.depth)} deep",
        "rough boring head", f"{mm(left)} left on the diameter; then slacken, clamp lightly", bar.reach,
        bar.ratio, (record,),
    )  # fmt: skip


def _fine(plan: Plan, bore: Feature, setup: SetupId, bar: _Bar, found: Way) -> Cut:
    limits = f"{bore.fit} ({bore.upper or 0.0:+.3f}/{bore.lower or 0.0:+.3f})"
    remark = "from its own end" + (f", {ratio(bar.ratio)}" if bar.ratio >= 1 else "")
    if bore.id == found.small:
        remark = _small_remark(plan, found)
    return Cut(
        setup, BORES, bore.id, f"finish-bore {plain(bore.id)} {mm(bore.diameter)} {limits}",
        f"fine boring head, bar up to diam {mm(bar.diameter)}", remark, bar.reach, bar.ratio,
        (*bar.records, found.record),
    )  # fmt: skip


def _small_remark(plan: Plan, found: Way) -> str:
    if not found.through:
        return f"from its own end: {found.reason}; dial in on the {plain(found.large)}"
    steel = plan.number("practice.bar_ratio")
    bar = "steel bar" if found.ratio <= steel else f"damped bar, over {steel:g} D"
    return f"through the {plain(found.large)}, reach {mm(plan.number('length'))}, {ratio(found.ratio)}: {bar}"
