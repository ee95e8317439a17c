"""Clearances, clashes and access in rows of words, for the summary to read and for the terminal."""

from __future__ import annotations

from collections.abc import Iterator, Sequence

from blockgen.checks.clashes import directions_words
from blockgen.evidence.clearances import Access, Clearance, Clearances, Pair
from blockgen.outputs import show

NAMED_COLUMNS = ("Clearance", "Least", "Asked for", "Between")
CLASH_COLUMNS = ("Clash", "Common volume", "Planned", "Beyond it")
TIGHT_COLUMNS = ("Parts that are clear", "Distance")
ACCESS_COLUMNS = ("Tool at", "Tool", "Reaches", "Swing", "In the way")

_TIGHT = 6


def counts(clearances: Clearances) -> str:
    """Return in one sentence how many pairs were measured and what they are."""
    kinds = {
        kind: sum(pair.kind == kind for pair in clearances.pairs) for kind in ("seated", "engaged", "clear", "clash")
    }
    told = f"{kinds['seated']} seated, {kinds['engaged']} engaged, {kinds['clear']} clear, {kinds['clash']} clash"
    missed = f"; not made as planned: {len(clearances.not_made)}" if clearances.not_made else ""
    return f"{len(clearances.pairs)} pairs of parts come near: {told}; {clearances.apart} are further apart{missed}."


def named_rows(clearances: Clearances) -> Iterator[tuple[str, ...]]:
    """Yield the distances with a name."""
    for one in clearances.named:
        asked = "-" if one.asked is None else f"{show.number(one.asked, 2)} mm"
        yield (one.title, f"{show.number(one.distance, 2)} mm", asked, _between(one))


def _between(one: Clearance) -> str:
    return f"{show.plain_id(one.first)}, {show.plain_id(one.second)}"


def clash_rows(clearances: Clearances) -> Iterator[tuple[str, ...]]:
    """Yield the clashes, the greatest first."""
    for pair in clearances.clashes:
        planned = "-" if pair.expected is None else f"{show.number(pair.expected, 1)} mm3"
        yield (_name(pair), f"{show.number(pair.volume, 1)} mm3", planned, f"{show.number(pair.beyond, 1)} mm3")


def tight_rows(clearances: Clearances) -> Iterator[tuple[str, ...]]:
    """Yield the pairs that are clear by least, alike ones in one row."""
    groups: dict[tuple[object, ...], list[Pair]] = {}
    for pair in sorted(clearances.pairs, key=lambda p: (round(p.distance, 3), p.first, p.second)):
        if pair.kind == "clear":
            groups.setdefault((_stem(pair.first), _stem(pair.second), round(pair.distance, 3)), []).append(pair)
    for members in list(groups.values())[:_TIGHT]:
        more = f" and {len(members) - 1} more" if len(members) > 1 else ""
        yield (f"{_name(members[0])}{more}", f"{show.number(members[0].distance, 2)} mm")


def _stem(part: str) -> str:
    """Return an id without its number."""
    return part.rstrip("0123456789")


def _name(pair: Pair) -> str:
    return f"{show.plain_id(pair.first)}, {show.plain_id(pair.second)}"


def access_rows(clearances: Clearances) -> Iterator[tuple[str, ...]]:
    """Yield the tools, alike ones in one row."""
    groups: dict[tuple[object, ...], list[Access]] = {}
    for access in clearances.access:
        groups.setdefault(_alike(access), []).append(access)
    for members in groups.values():
        first = members[0]
        reach = "yes" if first.free else f"no: {first.length:.3g} of {first.needed:.3g} mm"
        yield (_places(members), first.tool, reach, _swing(first), ", ".join(map(show.plain_id, first.in_way)) or "-")


def _alike(access: Access) -> tuple[object, ...]:
    """Return what two tools must have in common to stand in one row."""
    angle = None if access.angle is None else round(access.angle)
    own = access.part if access.where in {"coupling", "lock_nut"} else ""
    ways = tuple(_stem(way) for way in access.in_way)
    return (access.where, own, access.tool, access.free, round(access.length, 3), angle, ways)


def _places(members: Sequence[Access]) -> str:
    if len(members) == 1:
        return show.plain_id(members[0].part)
    return f"{show.plain_id(members[0].part)} and {len(members) - 1} more"


def _swing(access: Access) -> str:
    """Return swing or free directions."""
    if access.directions:
        return f"from {directions_words(access).partition(' (')[0]}"
    return "-" if access.angle is None else f"{access.angle:.0f} deg"
