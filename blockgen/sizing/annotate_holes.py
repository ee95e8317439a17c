"""Characteristics of the bores and of each group of equal holes, in the order in which they are called out."""

from __future__ import annotations

from collections.abc import Iterable, Mapping, Sequence

from blockgen.plan import Annotation, Feature
from blockgen.record import Band, Ledger
from blockgen.sizing.characteristic import with_limits
from blockgen.sizing.family import entry_of
from blockgen.sizing.sources import CP
from blockgen.standards.threads import thread

_POSITION_SHARE = 0.5


def bore(ledger: Ledger, feature: Feature) -> Iterable[Annotation]:
    """Yield diameter of a pilot bore, and depth and diameter behind it where it has a shoulder."""
    end = feature.id.removesuffix("_bore")
    stepped = any(piece.part == "shoulder" for piece in feature.profile)
    text = "⌀{}" if stepped else "⌀{} through"
    yield _of(ledger, feature, ("diameter", "size", "bore"), ledger.number(feature.id), f"centres the {end} pilot",
              feature.id, text)  # fmt: skip
    if stepped:
        depth = ledger.number(f"{feature.id}_depth")
        yield _of(ledger, feature, ("depth", "depth", "shoulder"), depth, "the pilot does not touch the bottom",
                  f"{feature.id}_depth", "↧ {}")  # fmt: skip
        behind = f"{end}_through_bore"
        yield _of(ledger, feature, ("through_diameter", "size", "through"), ledger.number(behind),
                  "coupling, nut and boring bar pass", behind, "⌀{} through")  # fmt: skip


def hole_groups(features: Sequence[Feature]) -> Mapping[str, tuple[Feature, ...]]:
    """Return the groups of equal holes by name, bores and milled openings left out."""
    groups: dict[str, list[Feature]] = {}
    for feature in features:
        if feature.kind not in {"bore", "window", "relief"}:
            groups.setdefault(feature.group, []).append(feature)
    return {name: tuple(members) for name, members in groups.items()}


def group(ledger: Ledger, members: Sequence[Feature]) -> Iterable[Annotation]:
    """Yield the call-outs of a group of equal holes and its position."""
    first, count = members[0], len(members)
    if first.thread:
        yield from _thread(ledger, first, count)
    elif first.kind == "dowel_hole":
        yield from _dowel(ledger, first, count)
    else:
        yield from _plain(ledger, first, count)
    yield _position(ledger, first)


def times(count: int) -> str:
    """Return how often, as a call-out begins; nothing for a single one."""
    return f"{count} × " if count > 1 else ""


def _thread(ledger: Ledger, feature: Feature, count: int) -> Iterable[Annotation]:
    screw, depth = feature.thread or "", feature.thread_depth
    if depth is None or feature.through:
        yield _of(ledger, feature, ("thread", "thread", "thread"), feature.diameter, "holds the mating part", None,
                  f"{times(count)}{screw} through", Band(0.0, 0.0))  # fmt: skip
        return
    pitch = thread(screw.rpartition("-")[0]).pitch
    yield _of(ledger, feature, ("thread", "thread", "thread"), depth, "holds the mating part",
              feature.keys.get("thread_depth"), f"{times(count)}{screw} ↧ {{}}",
              Band(round(pitch, 1) if pitch > 1 else pitch, 0.0))  # fmt: skip
    yield _of(ledger, feature, ("drill_depth", "depth", "thread"), feature.depth, "room for the tap, wall behind it",
              feature.keys.get("depth"), "drill ↧ {}")  # fmt: skip


def _plain(ledger: Ledger, feature: Feature, count: int) -> Iterable[Annotation]:
    yield _of(ledger, feature, ("diameter", "size", "hole"), feature.diameter, "screw passes",
              feature.keys.get("diameter"), f"{times(count)}⌀{{}} through")  # fmt: skip
    if feature.counterbore_diameter is not None and feature.counterbore_depth is not None:
        yield _of(ledger, feature, ("counterbore_diameter", "size", "counterbore"), feature.counterbore_diameter,
                  "head, washer and key enter", feature.keys.get("counterbore_diameter"), "⌴ ⌀{}")  # fmt: skip
        yield _of(ledger, feature, ("counterbore_depth", "depth", "seat"), feature.counterbore_depth,
                  "the screw's length reaches", feature.keys.get("counterbore_depth"), "↧ {}")  # fmt: skip


def _dowel(ledger: Ledger, feature: Feature, count: int) -> Iterable[Annotation]:
    pin = ledger.number("dowel_diameter")
    yield _of(ledger, feature, ("diameter", "size", "hole"), feature.diameter, "leaves stock for the reamer", None,
              f"{times(count)}⌀{{}} through")  # fmt: skip
    if feature.counterbore_diameter is not None and feature.counterbore_depth is not None:
        yield _of(ledger, feature, ("relief_diameter", "size", "relief"), feature.counterbore_diameter,
                  "the reamer reaches", None, "above it ⌀{}")  # fmt: skip
        yield _of(ledger, feature, ("relief_depth", "depth", "seat"), feature.counterbore_depth,
                  "leaves a seat two pins long", None, "↧ {}")  # fmt: skip
    yield _of(ledger, feature, ("ream", "note", "hole"), pin, "both parts are reamed in one pass", "dowel_diameter",
              "ream ⌀{} H7 with the base at assembly", Band(0.0, 0.0))  # fmt: skip


def _of(
    ledger: Ledger,
    feature: Feature,
    where: tuple[str, str, str],
    value: float,
    reason: str,
    ref: str | None,
    text: str,
    band: Band | None = None,
) -> Annotation:
    """Return one characteristic of a group of holes; ``where`` is its name, its kind and the piece of the profile."""
    name, kind, part = where
    identifier = f"{feature.group}.{name}"
    note = Annotation(
        identifier, kind, feature.group, feature.face_id(part), value, covers=(identifier,), text=text, ref=ref,
        reason=reason,
    )  # fmt: skip
    return with_limits(ledger, note, band)


def _position(ledger: Ledger, feature: Feature) -> Annotation:
    """Return the position of a group; its exact places stand in the hole table."""
    datums = ("C", "A", "B") if feature.face in {"top", "base"} else ("A", "B", "C")
    key, (zone, rule) = f"{feature.group}_position", _zone(ledger, feature)
    ledger.decide(key, zone, "mm", rule, (_flange_hole(feature),), CP)
    part = "thread" if feature.thread else "hole"
    return Annotation(
        f"{feature.group}.position", "position", feature.group, feature.face_id(part), zone, "mm", zone, 0.0,
        covers=(f"{feature.group}.location",), datums=datums, diametral=True, ref=key,
        reason="screws enter without force",
    )  # fmt: skip


def _flange_hole(feature: Feature) -> str:
    """Return the key of the flange hole through which the screw of a hole in the block passes."""
    return f"{entry_of(feature.group) or feature.face.removesuffix('_seat')}.bolt_hole"


def _zone(ledger: Ledger, feature: Feature) -> tuple[float, str]:
    """Return the position zone of a hole in mm and its rule: half the clearance of the screw in its hole."""
    key = _flange_hole(feature)
    if not ledger.known(key):
        return 0.2, "usual zone of screw holes"
    nominal = feature.profile[0].start_radius * 2 if feature.thread else feature.diameter
    clearance = max(ledger.number(key) - nominal, 0.0)
    zone = round(min(0.4, max(0.1, _POSITION_SHARE * clearance)), 2)
    return zone, "half the clearance of the screw in its hole, within 0.1 and 0.4"
