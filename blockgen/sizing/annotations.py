"""The characteristics of the block: the one list for drawing, inspection sheet and tolerances in the model.

Datums: A the bearing seat plane, B the bearing bore's axis, C the base face. A short pilot bore cannot define a
direction, so the seat plane comes first and the bore second.
"""

from __future__ import annotations

from collections.abc import Iterable, Sequence

from blockgen.plan import Annotation, Feature
from blockgen.record import Ledger

DATUMS = (("A", "bearing_seat", "primary: gives the direction of the shaft"),
          ("B", "bearing_bore", "secondary: gives the centre of the shaft"),
          ("C", "base", "gives height and level"))  # fmt: skip
_POSITION_SHARE = 0.5


def annotate(ledger: Ledger, features: Sequence[Feature]) -> tuple[Annotation, ...]:
    """Return every characteristic of a sized block."""
    return (
        *_datums(),
        *_outside(ledger),
        *_geometry(ledger),
        *(note for end in ("bearing", "motor") for note in _bore(ledger, end)),
        *_textures(),
        *_holes(ledger, features),
    )


def _datums() -> Iterable[Annotation]:
    for letter, place, reason in DATUMS:
        face = f"{place}.bore" if place == "bearing_bore" else place
        yield Annotation(f"datum.{letter}", "datum", place, face, None, text=letter, reason=reason)


def _size(
    ledger: Ledger, identifier: str, kind: str, face: str, key: str, reason: str, tolerance: float | None = None
) -> Annotation:
    record = ledger[key]
    upper, lower = (record.upper, record.lower) if tolerance is None else (tolerance, -tolerance)
    return Annotation(
        identifier, kind, face.split(".", maxsplit=1)[0], face, ledger.number(key), "mm", upper, lower, record.fit,
        ref=key, reason=reason,
    )  # fmt: skip


def _outside(ledger: Ledger) -> Iterable[Annotation]:
    yield _size(ledger, "block.length", "distance", "motor_seat", "length", "distance of the seats: grips and gap")
    yield _size(ledger, "block.width", "distance", "side_plus_y", "width", "room for flanges and base screws")
    yield _size(ledger, "block.height", "distance", "top", "height", "room for the flanges")
    yield _size(ledger, "block.shaft_height", "distance", "bearing_bore.bore", "shaft_height", "shaft to guide")
    yield _size(ledger, "window.length", "distance", "window.bearing_wall", "window_length", "room for the coupling")
    yield _size(ledger, "window.width", "distance", "window.side_plus_y", "window_width", "room for coupling and keys")


def _geometry(ledger: Ledger) -> Iterable[Annotation]:
    coaxial, square = ledger.number("block.coaxiality"), ledger.number("block.seat_perpendicularity")
    flat = ledger.number("block.base_flatness")
    yield Annotation(
        "motor_bore.coaxiality", "coaxiality", "motor_bore", "motor_bore.bore", coaxial, datums=("A", "B"),
        diametral=True, ref="block.coaxiality", reason="offset between journal and motor shaft",
    )  # fmt: skip
    for end, datums in (("bearing", ("B",)), ("motor", ("A", "B"))):
        yield Annotation(
            f"{end}_seat.perpendicularity", "perpendicularity", f"{end}_seat", f"{end}_seat", square, datums=datums,
            ref="block.seat_perpendicularity", reason=f"angle of the {end} shaft",
        )  # fmt: skip
    yield Annotation("base.flatness", "flatness", "base", "base", flat, ref="block.base_flatness",
                     reason="block does not bend as it is screwed down")  # fmt: skip
    yield Annotation("bearing_bore.parallelism", "parallelism", "bearing_bore", "bearing_bore.bore", square,
                     datums=("C",), reason="shaft parallel to the guide")  # fmt: skip


def _bore(ledger: Ledger, end: str) -> Iterable[Annotation]:
    bore = f"{end}_bore"
    yield _size(ledger, f"{bore}.diameter", "size", f"{bore}.bore", bore, f"centres the {end} pilot")
    yield _size(
        ledger, f"{bore}.depth", "distance", f"{bore}.bore", f"{bore}_depth", "the pilot does not touch the bottom"
    )


def _textures() -> Iterable[Annotation]:
    for face, roughness, reason in (
        ("bearing_bore.bore", 1.6, "fitted bore"),
        ("motor_bore.bore", 1.6, "fitted bore"),
        ("bearing_seat", 1.6, "flange seat"),
        ("motor_seat", 1.6, "flange seat"),
        ("base", 1.6, "joint to the machine base"),
    ):
        feature = face.split(".", maxsplit=1)[0]
        yield Annotation(
            f"{feature}.texture", "texture", feature, face, roughness, "um", text=f"Ra {roughness:g}", reason=reason
        )


def _holes(ledger: Ledger, features: Sequence[Feature]) -> Iterable[Annotation]:
    """Yield one call-out and one position for each group of holes."""
    for feature in features:
        if feature.kind == "relief":
            yield Annotation("relief.depth", "distance", "relief", "relief", feature.depth, ref="block.relief",
                             text=feature.call_out, reason="the block stands on its two ends")  # fmt: skip
    groups: dict[str, Feature] = {}
    for feature in features:
        if feature.kind not in {"bore", "window", "relief"}:
            groups.setdefault(feature.group, feature)
    for group, feature in groups.items():
        count = sum(f.group == group for f in features)
        part = "thread" if feature.thread else "hole"
        datums = ("C", "A") if feature.face in {"top", "base"} else ("A", "B")
        kind = "thread" if feature.thread else "size"
        yield Annotation(f"{group}.call_out", kind, group, feature.face_id(part), feature.diameter, "mm",
                         text=f"{count} x {feature.call_out}", reason="holds the mating part")  # fmt: skip
        yield Annotation(f"{group}.position", "position", group, feature.face_id(part), position_zone(ledger, feature),
                         datums=datums, diametral=True, reason="screws enter without force")  # fmt: skip


def position_zone(ledger: Ledger, feature: Feature) -> float:
    """Return the position zone of a hole in mm: half the clearance of the screw in its hole, within 0.1 and 0.4."""
    end = feature.face.removesuffix("_seat")
    if not ledger.known(f"{end}.bolt_hole"):
        return 0.2
    nominal = feature.profile[0].start_radius * 2 if feature.thread else feature.diameter
    clearance = max(ledger.number(f"{end}.bolt_hole") - nominal, 0.0)
    return round(min(0.4, max(0.1, _POSITION_SHARE * clearance)), 2)
