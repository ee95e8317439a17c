"""The parts of an assembly against each other: what is clear, seated, engaged or clashes, and what tools reach."""

from __future__ import annotations

import math
from collections.abc import Iterable, Mapping, Sequence
from itertools import combinations

from blockgen.evidence.clearance_limits import limit
from blockgen.evidence.clearances import Clearances, Kind, Pair
from blockgen.geometry.access import accesses
from blockgen.geometry.block import BlockSolid
from blockgen.geometry.kernel import kernel_errors
from blockgen.geometry.meeting import common_volume, least_distance, one_in_other
from blockgen.geometry.named_clearances import named_clearances
from blockgen.geometry.planned_contacts import Contact, Contacts, planned_contacts
from blockgen.geometry.solid_part import SolidPart, gap, solid_part
from blockgen.geometry.stand_ins.part import AssemblyPart
from blockgen.plan import Plan

_UNPLANNED = Contact("")


def clearances(plan: Plan, block: BlockSolid, parts: Sequence[AssemblyPart]) -> Clearances:
    """Return what the solids of an assembly show.

    Args:
        plan: Sized plan; it says which contacts are planned.
        block: Solid of the block with its named faces.
        parts: Every part where it stands, the block among them.

    Raises:
        KernelError: the kernel could not measure two parts.
    """
    with kernel_errors("the kernel gave up while it measured the parts against each other"):
        solids = placed(parts)
        planned = planned_contacts(plan, parts)
        pairs, apart = measured_pairs(solids.values(), planned)
        named = named_clearances(plan, block, parts, solids)
        return Clearances(pairs, named, accesses(plan, parts, solids), apart, tuple(not_made(pairs, planned, solids)))


def placed(parts: Iterable[AssemblyPart]) -> Mapping[str, SolidPart]:
    """Return the parts by id where they stand, in order."""
    return {part.id: solid_part(part.id, part.shape, part.location) for part in parts}


def measured_pairs(solids: Iterable[SolidPart], planned: Contacts) -> tuple[tuple[Pair, ...], int]:
    """Return the pairs that come near, and how many do not.

    Args:
        solids: Parts where they stand.
        planned: Planned contacts by the ids of both parts.
    """
    every = list(combinations(solids, 2))
    near = [(a, b) for a, b in every if gap(a.box, b.box) <= limit("practice.near_distance")]
    found = [measured_pair(a, b, planned.get(frozenset((a.id, b.id)), _UNPLANNED)) for a, b in near]
    pairs = tuple(pair for pair in found if pair.distance < math.inf)
    return pairs, len(every) - len(pairs)


def measured_pair(first: SolidPart, second: SolidPart, contact: Contact = _UNPLANNED) -> Pair:
    """Return two parts measured against each other; distances beyond ``practice.near_distance`` are infinite.

    Args:
        first: Part where it stands.
        second: Part where it stands.
        contact: What the plan says of them.
    """
    near = limit("practice.near_distance")
    distance = 0.0 if contact.overlaps else least_distance(first, second, near)
    touch = distance <= limit("practice.contact_distance")
    volume = common_volume(first, second) if touch or one_in_other(first, second) else 0.0
    if volume > limit("practice.clash_volume"):
        distance = 0.0
    elif contact.overlaps:
        distance = least_distance(first, second, near)
    expected = contact.volume if contact.overlaps else None
    kind = _kind(contact, distance, volume)
    return Pair(first.id, second.id, kind, round(distance, 6), round(volume, 6), expected, contact.why)


def _kind(contact: Contact, distance: float, volume: float) -> Kind:
    """Return the kind of a pair; what touches without being planned clashes even where nothing overlaps."""
    allowed = limit("practice.clash_volume")
    if contact.overlaps:
        planned = volume if contact.volume is None else contact.volume
        if volume > planned + allowed + limit("practice.engaged_difference") * planned:
            return "clash"
        return "engaged" if volume > allowed else "clear"
    if volume > allowed:
        return "clash"
    if distance > limit("practice.contact_distance"):
        return "clear"
    return "seated" if contact.why else "clash"


def not_made(pairs: Iterable[Pair], planned: Contacts, solids: Mapping[str, SolidPart]) -> list[str]:
    """Return the planned contacts that the solids do not show, in words and in order."""
    found = {frozenset((pair.first, pair.second)): pair for pair in pairs}
    told = []
    for first, second in combinations(solids, 2):
        contact = planned.get(frozenset((first, second)))
        if contact is not None:
            told += _missed(found.get(frozenset((first, second))), contact, f"{first} and {second}")
    return told


def _missed(pair: Pair | None, contact: Contact, name: str) -> list[str]:
    if pair is None or pair.kind == "clear":
        apart = "far apart" if pair is None else f"{pair.distance:.3g} mm apart"
        return [f"{name} ({contact.why}): {apart}"]
    least = (contact.volume or 0.0) * (1 - limit("practice.engaged_difference")) - limit("practice.clash_volume")
    if pair.volume < least:
        return [f"{name} ({contact.why}): {pair.volume:.3g} mm3 engaged, {contact.volume:.3g} mm3 planned"]
    return []
