"""What a drawing of an adapter shows: sizes, fits and geometrical tolerances as data."""

from __future__ import annotations

from collections.abc import Iterator, Sequence

from blockgen.plan import Annotation, Feature
from blockgen.record import Ledger

A, B = "A", "B"


def ring_annotations(ledger: Ledger, bore: Feature) -> tuple[Annotation, ...]:
    """Return the characteristics of a ring: its outside is the datum, for it sits in the bore."""
    return _numbered(
        (
            Annotation("outside.datum", "datum", "outside", "outside", None, datums=(A,), text=A),
            _size(ledger, "outside", "adapter.outside", "sits in the old bore"),
            _size(ledger, bore.id, "adapter.bore", "centres the motor pilot"),
            _zone(ledger, bore.id, "coaxiality", "adapter.coaxiality", (A,), "offset of the shafts", diametral=True),
            _length(ledger, "length", "adapter.length", "does not touch the bottom of the bore"),
        )
    )


def plate_annotations(ledger: Ledger, features: Sequence[Feature]) -> tuple[Annotation, ...]:
    """Return the characteristics of a plate: face towards the block A, spigot B, all else held to them."""
    return _numbered(
        (
            Annotation("block_face.datum", "datum", "block_face", "block_face", None, datums=(A,), text=A),
            _zone(ledger, "block_face", "flatness", "adapter.flatness", (), "lies flat on the seat of the block"),
            Annotation("outside.datum", "datum", "outside", "outside", None, datums=(B,), text=B),
            _size(ledger, "outside", "adapter.outside", "sits in the old bore"),
            _zone(
                ledger, "outside", "perpendicularity", "adapter.parallelism", (A,), "enters while the face lies flat"
            ),
            _length(ledger, "spigot", "adapter.spigot", "does not touch the bottom of the bore"),
            _size(ledger, "bore", "adapter.bore", "centres the motor pilot"),
            _zone(ledger, "bore", "coaxiality", "adapter.coaxiality", (A, B), "offset of the shafts", diametral=True),
            _length(ledger, "bore_depth", "adapter.bore_depth", "the pilot does not touch the bottom"),
            _zone(ledger, "motor_face", "parallelism", "adapter.parallelism", (A,), "angle of the motor shaft"),
            _length(ledger, "thickness", "adapter.thickness", "place of the motor along the shaft"),
            *_groups(ledger, features),
        )
    )


def _groups(ledger: Ledger, features: Sequence[Feature]) -> Iterator[Annotation]:
    """Yield call-out and position of each group of holes."""
    groups: dict[str, list[Feature]] = {}
    for feature in features:
        if feature.kind != "bore":
            groups.setdefault(feature.group, []).append(feature)
    for name, members in groups.items():
        first = members[0]
        kind = "thread" if first.thread else "size"
        text = f"{len(members)} x {first.call_out}"
        yield Annotation(
            f"{name}.{kind}", kind, name, first.face, first.diameter, text=text, reason="screws pass or hold"
        )
        yield _zone(ledger, name, "position", "adapter.position", (A, B), "screws enter without force", diametral=True)


def _size(ledger: Ledger, feature: str, key: str, reason: str) -> Annotation:
    record = ledger[key]
    return Annotation(
        f"{feature}.diameter", "size", feature, feature, ledger.number(key), upper=record.upper, lower=record.lower,
        fit=record.fit, ref=key, reason=reason,
    )  # fmt: skip


def _length(ledger: Ledger, feature: str, key: str, reason: str) -> Annotation:
    record = ledger[key]
    return Annotation(
        f"{feature}.distance", "distance", feature, feature, ledger.number(key), upper=record.upper,
        lower=record.lower, general=record.upper is None, ref=key, reason=reason,
    )  # fmt: skip


def _zone(
    ledger: Ledger, feature: str, kind: str, key: str, datums: tuple[str, ...], reason: str, *, diametral: bool = False
) -> Annotation:
    return Annotation(
        f"{feature}.{kind}", kind, feature, feature, ledger.number(key), datums=datums, diametral=diametral, ref=key,
        reason=reason,
    )  # fmt: skip


def _numbered(entries: Sequence[Annotation]) -> tuple[Annotation, ...]:
    """Return the entries with numbers for all that is measured."""
    from dataclasses import replace

    found, number = [], 0
    for entry in entries:
        number += entry.kind != "datum"
        found.append(entry if entry.kind == "datum" else replace(entry, number=number))
    return tuple(found)
