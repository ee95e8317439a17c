"""What better would buy: the offset's P95 after one step tighter, cause by cause and decision by decision."""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from dataclasses import dataclass

from blockgen.alignment.radial import RadialLaw, WaveTable, column, law_of, law_with, percentile
from blockgen.alignment.scatter import Scatter, scaled
from blockgen.alignment.steps import CostClass, Step, step_of
from blockgen.alignment.terms import Term
from blockgen.plan import Plan

LEVEL = 0.95


@dataclass(frozen=True, slots=True)
class Buy:
    """One step tighter.

    Args:
        step: What is asked for.
        p95: P95 of the offset after it, mm.
        gain: How much smaller that is than now, mm.
    """

    step: Step
    p95: float
    gain: float


@dataclass(frozen=True, slots=True)
class Purchase:
    """What one decision tightens at once, for instance the class of the motor.

    Args:
        id: Spec key, or the part whose class is bought.
        reason: What the money buys.
        cost: small, moderate or large.
        causes: Ids of the terms that it tightens.
        p95: P95 of the offset after it, mm.
        gain: How much smaller that is than now, mm.
    """

    id: str
    reason: str
    cost: CostClass
    causes: tuple[str, ...]
    p95: float
    gain: float


@dataclass(frozen=True, slots=True)
class _Offer:
    step: Step
    place: int
    after: tuple[Scatter, tuple[float, ...]]


@dataclass(frozen=True, slots=True)
class _Market:
    """The offset as it is, and the steps on offer with their places in its table."""

    table: WaveTable
    law: RadialLaw
    p95: float
    offers: tuple[_Offer, ...]


def buys(plan: Plan, terms: Sequence[Term], table: WaveTable) -> tuple[tuple[Buy, ...], tuple[Purchase, ...]]:
    """Return what each step buys, and what each decision buys, the greatest gain first.

    Args:
        plan: Plan that says what is asked for now.
        terms: Terms of the chain.
        table: Transforms of the offsets of these terms; those of the causes that stay are used again.
    """
    law = law_of(table)
    market = _Market(table, law, percentile(law, LEVEL), _offers(plan, terms, table))
    found = _steps(market)
    return found, _decisions(market, {buy.step.id: buy.p95 for buy in found})


def _offers(plan: Plan, terms: Sequence[Term], table: WaveTable) -> tuple[_Offer, ...]:
    found, free = [], list(range(len(table.scatters)))
    for term in terms:
        now = scaled(term.scatter, term.offset_factor)
        place = next((i for i in free if table.scatters[i] == now), None)
        if place is None:
            continue
        free.remove(place)
        step = step_of(plan, term)
        if step is not None:
            after = scaled(step.scatter, term.offset_factor)
            found.append(_Offer(step, place, (after, column(after, table.waves))))
    return tuple(found)


def _p95_with(market: _Market, instead: Mapping[int, tuple[Scatter, tuple[float, ...]]]) -> float:
    law = law_with(market.table, instead)
    return percentile(law, LEVEL, market.p95 * law.rms / market.law.rms)


def _steps(market: _Market) -> tuple[Buy, ...]:
    found = []
    for offer in market.offers:
        after = _p95_with(market, {offer.place: offer.after})
        found.append(Buy(offer.step, after, market.p95 - after))
    return tuple(sorted(found, key=lambda buy: (-buy.gain, buy.step.id)))


def _decisions(market: _Market, alone: Mapping[str, float]) -> tuple[Purchase, ...]:
    groups: dict[str, list[_Offer]] = {}
    for offer in market.offers:
        groups.setdefault(offer.step.purchase, []).append(offer)
    found = [_purchase(market, name, group, alone) for name, group in groups.items()]
    return tuple(sorted(found, key=lambda bought: (-bought.gain, bought.id)))


def _purchase(market: _Market, name: str, group: Sequence[_Offer], alone: Mapping[str, float]) -> Purchase:
    together = {offer.place: offer.after for offer in group}
    after = alone[group[0].step.id] if len(group) == 1 else _p95_with(market, together)
    order: tuple[CostClass, ...] = ("small", "moderate", "large")
    dearest = max((offer.step for offer in group), key=lambda step: order.index(step.cost))
    causes = tuple(offer.step.id for offer in group)
    return Purchase(name, dearest.reason, dearest.cost, causes, after, market.p95 - after)
